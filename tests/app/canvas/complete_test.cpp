// Nothing is left out of a drawing without a word: letters stay with their joints, the board says
// how many values have no room, and a saved picture holds them all.
#include "app/canvas/scene_checks.hpp"
#include "app/page/page_text.hpp"
#include "phrases/drawing.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/strip_truss.hpp"
#include "ui/whole_picture.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

const std::vector<Vec2> kSheets{{390, 844}, {768, 1024}, {1024, 768}, {1366, 768}, {1920, 1080}};

struct Subject {
    std::string name;
    Truss truss;
};

// All examples, and trusses of 10, 16 and 22 panels.
std::vector<Subject> subjects() {
    std::vector<Subject> all;
    for (const Truss& example : exampleTrusses()) {
        all.push_back({example.title, example});
    }
    for (const int panels : {10, 16, 22}) {
        all.push_back({std::to_string(panels) + " panels", stripTruss(Web::Pratt, panels)});
    }
    return all;
}

Scene drawn(Board& board) {
    derive(board.state, board.derived);
    return buildScene(board.state, board.derived, measure);
}

long countOf(const std::vector<LabelMark>& labels, LabelKind kind) {
    return std::count_if(labels.begin(), labels.end(),
                         [&](const LabelMark& label) { return label.kind == kind; });
}

std::string notesOf(const Scene& scene) {
    std::string notes;
    for (const LabelMark& label : scene.labels) {
        notes += label.kind == LabelKind::Note ? label.text + " " : "";
    }
    return notes;
}

std::string svgOf(Board& board) {
    derive(board.state, board.derived);
    const MeasureText measuring = measure;
    return wholePicture(board.state, board.derived, measuring, paletteOf(PaletteName::Paper));
}

bool holdsText(const std::string& svg, const std::string& text) {
    return svg.find(text) != std::string::npos;
}

} // namespace

TEST_CASE("a letter is within 28 px of its joint, and its middle nearer to it than to any other") {
    for (const auto& subject : subjects()) {
        const auto& name = subject.name;
        const auto& truss = subject.truss; // clang 14 captures no structured binding
        for (const Vec2 page : kSheets) {
            Board board = boardOn(truss, page);
            const Scene scene = drawn(board);
            for (const LabelMark& label : scene.labels) {
                const JointId own = hitOf<JointId>(label.of);
                if (label.kind != LabelKind::Joint) {
                    continue;
                }
                CAPTURE(name, page.x, label.text);
                REQUIRE(own.valid());
                const auto from = [&](std::size_t joint) {
                    return label.at - toPixel(scene.camera, truss.joints[joint].at);
                };
                const Vec2 half = 0.5 * measure(label.text, label.kind) + Vec2{kTagPad, 0};
                const Vec2 off = from(own.at());
                const Vec2 edge{std::max(std::abs(off.x) - half.x, 0.0),
                                std::max(std::abs(off.y) - half.y, 0.0)};
                CHECK(length(edge) <= 28);
                for (std::size_t other = 0; other < truss.joints.size(); ++other) {
                    CHECK((other == own.at() || length(from(other)) > length(off)));
                }
            }
        }
    }
}

TEST_CASE("every joint, member, load and reaction has its value on the board or in its count") {
    for (const auto& [name, truss] : subjects()) {
        for (const Vec2 page : kSheets) {
            Board board = boardOn(truss, page);
            const Scene scene = drawn(board);
            CAPTURE(name, page.x, notesOf(scene));
            const auto all = [&](LabelKind kind) {
                return countOf(scene.labels, kind) + countOf(scene.unplaced, kind);
            };
            CHECK(all(LabelKind::Joint) == static_cast<long>(truss.joints.size()));
            if (board.derived.solution.solved) {
                CHECK(all(LabelKind::Force) == static_cast<long>(truss.members.size()));
            }
            struct Said {
                LabelKind kind;
                decltype(phrase::kForcesOf) says;
            };
            for (const Said& said : {Said{LabelKind::Force, phrase::kForcesOf},
                                     Said{LabelKind::Joint, phrase::kLettersOf},
                                     Said{LabelKind::Load, phrase::kLoadsOf},
                                     Said{LabelKind::Reaction, phrase::kReactionsOf},
                                     Said{LabelKind::Dimension, phrase::kDimensionsOf}}) {
                const long left = countOf(scene.unplaced, said.kind);
                const std::string count =
                    sayPlain(englishPhrases(), said.says,
                             {{"n", countOf(scene.labels, said.kind)}, {"total", all(said.kind)}});
                CHECK(holdsText(notesOf(scene), count) == (left > 0));
            }
        }
    }
}

TEST_CASE("a saved picture holds every letter, force, load, reaction and dimension") {
    for (const auto& [name, truss] : subjects()) {
        Board board = boardOn(truss, {390, 844}); // the page's size has no part in it
        const std::string svg = svgOf(board);
        const MeasureText measuring = measure;
        const Scene scene = wholeScene(board.state, board.derived, measuring);
        CAPTURE(name);
        for (const Joint& joint : truss.joints) {
            CHECK(holdsText(svg, ">" + joint.label + "</text>"));
        }
        for (const ForceRow& row : board.derived.forces) {
            const bool shown =
                std::any_of(scene.labels.begin(), scene.labels.end(), [&](const LabelMark& label) {
                    return label.kind == LabelKind::Force &&
                           hitOf<MemberId>(label.of) == row.member;
                });
            CAPTURE(row.name);
            CHECK((shown || holdsText(svg, row.name + " ")));
        }
        for (std::size_t i = 0; i < truss.loads.size(); ++i) {
            const bool shown =
                std::any_of(scene.labels.begin(), scene.labels.end(), [&](const LabelMark& label) {
                    return hitOf<LoadId>(label.of) == LoadId{static_cast<int>(i)};
                });
            const bool weight = std::holds_alternative<SelfWeight>(truss.loads[i].what);
            CAPTURE(i);
            CHECK((shown || (weight && holdsText(svg, "self-weight"))));
        }
        CHECK(countOf(scene.labels, LabelKind::Dimension) > 0);
        CHECK(countOf(scene.unplaced, LabelKind::Dimension) == 0);
        CHECK(countOf(scene.unplaced, LabelKind::Reaction) == 0);
        CHECK(overlapsIn(scene, truss) == std::vector<std::string>{});
    }
}

TEST_CASE("a saved picture says its title, its loads and how tension and compression are drawn") {
    Truss truss = roof();
    truss.title = "A roof";
    truss.loads.push_back({JointForce{JointId{2}, 3, 0}, "wind", {}});
    Board board = boardOn(truss, {1366, 768});
    board.act(SetChoice{OneCase{"wind"}});
    const std::string svg = svgOf(board);
    for (const char* text : {">A roof<", ">under wind<", "Member forces in kN", "tension<",
                             "compression<", "no force<"}) {
        CAPTURE(text);
        CHECK(holdsText(svg, text));
    }
}

TEST_CASE("a picture is on white paper, or on the theme's if that is chosen") {
    Board board = boardOn(roof(), {1366, 768});
    CHECK(picturePalette(PaletteName::Dark, true).board.red == 255);
    // Ink that is read on white, not the pale ink of dark paper.
    CHECK(contrast(picturePalette(PaletteName::Dark, true).ink, {255, 255, 255}) > 7);
    CHECK(picturePalette(PaletteName::Dark, false).board.red ==
          paletteOf(PaletteName::Dark).board.red);
}
