#include "app/board.hpp"
#include "app/canvas/scene_checks.hpp"
#include "canvas/scene/symbols.hpp"
#include "exchange/files/model_file.hpp"
#include "support/files.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

const std::vector<Vec2> kPages{{1366, 768}, {1024, 768}, {768, 1024}, {390, 844}};

Scene sceneOf(Board& board) {
    derive(board.state, board.derived);
    return buildScene(board.state, board.derived, measure);
}

bool shows(const Scene& scene, const std::string& text) {
    return std::any_of(scene.labels.begin(), scene.labels.end(),
                       [&](const LabelMark& label) { return label.text == text; });
}

int countInk(const Scene& scene, Ink ink) {
    return static_cast<int>(std::count_if(scene.lines.begin(), scene.lines.end(),
                                          [&](const LineMark& line) { return line.ink == ink; }));
}

} // namespace

TEST_CASE("labels overlap neither members nor joints nor one another, at any zoom and page size") {
    for (std::uint64_t seed = 1; seed <= 60; ++seed) {
        Truss truss = randomDeterminateTruss(seed);
        addRandomLoads(truss, seed);
        for (const Vec2 page : kPages) {
            for (const double zoom : {0.3, 1.0, 2.5}) {
                Board board = boardOn(truss, page);
                board.act(SetCamera{zoomAbout(board.state.view.camera, 0.4 * page, zoom)});
                CAPTURE(seed, page.x, zoom);
                CHECK(overlapsIn(sceneOf(board), truss) == std::vector<std::string>{});
            }
        }
    }
}

TEST_CASE("no label of an example overlaps anything, and on a wide page each joint has its name") {
    for (const char* name :
         {"braced_tower", "chapel_roof", "conveyor_gallery", "cottage_roof", "farm_bridge",
          "footbridge", "garage_roof", "hillside_shed", "hoist_frame", "missing_diagonal",
          "pavilion_roof", "pipe_bridge", "porch_roof", "siding_bridge", "sign_gantry"}) {
        const Outcome<Reading> reading =
            readModel(repositoryFile("site/examples/" + std::string(name) + ".json"));
        REQUIRE(reading.ok());
        const Truss& truss = reading.value().truss;
        for (const Vec2 page : kPages) {
            for (const double zoom : {0.4, 1.0, 1.7, 4.0}) {
                Board board = boardOn(truss, page);
                board.act(SetCamera{zoomAbout(board.state.view.camera, 0.4 * page, zoom)});
                CAPTURE(name, page.x, zoom);
                CHECK(overlapsIn(sceneOf(board), truss) == std::vector<std::string>{});
            }
        }
        Board board = boardOn(truss, {1366, 768});
        const Scene scene = sceneOf(board);
        for (const Joint& joint : truss.joints) {
            CAPTURE(name, joint.label);
            CHECK(shows(scene, joint.label));
        }
    }
}

TEST_CASE("where there is room every joint, force, load and reaction has its label") {
    Board board = boardOn(roof(), {1366, 768});
    const Scene scene = sceneOf(board);
    for (const char* text :
         {"A", "B", "C", "3.75 T", "6.25 C", "10\u2009kN", "5\u2009kN", "6\u2009m", "4\u2009m"}) {
        CAPTURE(text);
        CHECK(shows(scene, text));
    }
}

TEST_CASE("tension is a single line, compression a twin line, a zero member a thin dashed one") {
    Truss truss = roof();
    truss.loads = {{JointForce{JointId{1}, 0, -10}, {}, {}}}; // straight into the roller: all zero
    Board idle = boardOn(truss, {1366, 768});
    const Scene zeros = sceneOf(idle);
    CHECK(countInk(zeros, Ink::Zero) == 3);
    for (const LineMark& line : zeros.lines) {
        CHECK((line.ink != Ink::Zero || line.dash > 0));
    }
    Board board = boardOn(roof(), {1366, 768});
    const Scene scene = sceneOf(board);
    CHECK(countInk(scene, Ink::Tension) == 1);
    CHECK(countInk(scene, Ink::Compression) == 4); // two rafters, two lines each
}

TEST_CASE("the board never shows forces of another model than the one on it") {
    Board board = boardOn(roof(), {1366, 768});
    derive(board.state, board.derived);
    board.act(Commit{MoveJoint{JointId{2}, {3, 3}}}); // not solved again
    const Scene scene = buildScene(board.state, board.derived, measure);
    CHECK(countInk(scene, Ink::Tension) + countInk(scene, Ink::Compression) == 0);
    for (const LabelMark& label : scene.labels) {
        CHECK(label.kind != LabelKind::Force);
        CHECK(label.kind != LabelKind::Reaction);
    }
}

TEST_CASE("a mechanism shows how its joints move and no forces that it can't have") {
    for (std::uint64_t seed = 1; seed <= 10; ++seed) {
        Truss truss = randomMechanism(seed);
        addRandomLoads(truss, seed);
        Board board = boardOn(truss, {1366, 768});
        const Scene scene = sceneOf(board);
        CAPTURE(seed);
        CHECK(countInk(scene, Ink::Warning) > 0);
        if (!board.derived.solution.solved) {
            CHECK(countInk(scene, Ink::Tension) + countInk(scene, Ink::Compression) == 0);
        }
    }
}

TEST_CASE("the same board is always the same drawing") {
    const Truss truss = randomDeterminateTruss(7);
    Board one = boardOn(truss, {1024, 768});
    Board other = boardOn(truss, {1024, 768});
    const Scene a = sceneOf(one);
    const Scene b = sceneOf(other);
    REQUIRE(a.labels.size() == b.labels.size());
    for (std::size_t i = 0; i < a.labels.size(); ++i) {
        CHECK(a.labels[i].text == b.labels[i].text);
        CHECK(a.labels[i].at == b.labels[i].at);
    }
}

TEST_CASE("nothing is drawn at coordinates that a float can't hold to a hundredth of a pixel") {
    Board board = boardOn(roof(), {1366, 768});
    const Vec2 middleOfTie = toPixel(board.state.view.camera, {3, 0});
    board.act(SetCamera{zoomAbout(board.state.view.camera, middleOfTie, 1e6)});
    for (const LineMark& line : sceneOf(board).lines) {
        for (const Vec2 end : {line.a, line.b}) {
            CHECK(std::max(std::abs(end.x), std::abs(end.y)) < 1e5);
        }
    }
}

TEST_CASE("of more joints than it can show as many are drawn as the board has room for, and none "
          "is far from a ring") {
    Truss truss;
    for (int i = 0; i < 20000; ++i) {
        truss.joints.push_back({"J" + std::to_string(i), {i % 200 * 0.1, i / 200 * 0.05}, {}});
    }
    truss.supports = {{JointId{0}, SupportKind::Pin, 0, {}, 0, {}, {}},
                      {JointId{1}, SupportKind::Pin, 0, {}, 0, {}, {}}};
    Board board = boardOn(truss, {390, 844});
    const Scene scene = sceneOf(board);
    // At most 390 px wide and, for 19.9 m by 4.95 m, 98 px high: cells as wide as a ring's radius.
    CHECK(scene.discs.size() <= (390 / 5 + 1) * (98 / 5 + 2));
    CHECK(scene.triangles.size() >= 4); // both supports: there are only a few
    for (const Joint& joint : truss.joints) {
        const Vec2 at = toPixel(board.state.view.camera, joint.at);
        const bool near =
            std::any_of(scene.discs.begin(), scene.discs.end(), [&](const auto& disc) {
                return length(disc.at - at) <= 1.5 * kJointRadius; // the diagonal of a cell
            });
        REQUIRE(near);
    }
    truss.joints.resize(4000); // fewer joints are all drawn
    board = boardOn(truss, {390, 844});
    CHECK(sceneOf(board).discs.size() >= 4000);
}

TEST_CASE("a reaction points the way it acts") {
    Truss truss = roof();
    truss.loads = {{JointForce{JointId{2}, 6, 0}, {}, {}}};
    // ΣM about A: 6·4 = B·6, so B = 4 up; A_y = 4 down, A_x = 6 to the left.
    Board board = boardOn(truss, {1366, 768});
    const Scene scene = sceneOf(board);
    const Vec2 a = toPixel(board.state.view.camera, {0, 0});
    const Vec2 b = toPixel(board.state.view.camera, {6, 0});
    int down = 0;
    int left = 0;
    int up = 0;
    for (const TriangleMark& head : scene.triangles) {
        if (head.ink != Ink::Reaction) {
            continue;
        }
        const Vec2 way = head.a - 0.5 * (head.b + head.c); // the first corner is the tip
        down += way.y > 1 && std::abs(head.a.x - a.x) < 1;
        left += way.x < -1 && head.a.x < a.x;
        up += way.y < -1 && std::abs(head.a.x - b.x) < 1;
    }
    CHECK(down == 1);
    CHECK(left == 1);
    CHECK(up == 1);
}

TEST_CASE("a chord's load is a row of arrows on it, with its size a length") {
    Truss truss = roof();
    truss.loads = {{ChordLoad{{JointId{0}, JointId{2}, JointId{1}}, -4}, {}, {}}};
    Board board = boardOn(truss, {1366, 768});
    const Scene scene = sceneOf(board);
    CHECK(shows(scene, "4\u2009kN/m"));
    CHECK(shows(scene, "C")); // above the row
    int heads = 0;
    for (const TriangleMark& head : scene.triangles) {
        if (head.ink == Ink::Load) {
            ++heads;
            const Vec2 way = head.a - 0.5 * (head.b + head.c);
            CHECK(way.y > 0); // down on the board
        }
    }
    CHECK(heads >= 4);
    CHECK(overlapsIn(scene, truss) == std::vector<std::string>{});
}

TEST_CASE("a chord's load can be picked and erased, and is not dragged") {
    Truss truss = roof();
    truss.loads = {{ChordLoad{{JointId{0}, JointId{2}, JointId{1}}, -4}, {}, {}}};
    Board board = boardOn(truss, {1366, 768});
    const Vec2 above = toPixel(board.state.view.camera, {1.5, 2}) - Vec2{0, 33};
    for (const Tool tool : {Tool::Select, Tool::Load}) {
        board.use(tool);
        board.feedPixel(PointerPhase::Down, above);
        board.feedPixel(PointerPhase::Up, above);
        CHECK(board.state.selection.loads == std::vector{LoadId{0}});
        CHECK(board.state.truss == truss);
    }
    board.use(Tool::Erase);
    board.feedPixel(PointerPhase::Down, above);
    board.feedPixel(PointerPhase::Up, above);
    CHECK(board.state.truss.loads.empty());
}

TEST_CASE("a load on a member between its joints stands where it acts, can be picked, and is not "
          "dragged") {
    Truss truss = roof();
    truss.loads = {{MemberForce{JointId{0}, JointId{1}, 2, 0, -6}, {}, {}}};
    Board board = boardOn(truss, {1366, 768});
    CHECK(shows(sceneOf(board), "6\u2009kN"));
    const Vec2 place = toPixel(board.state.view.camera, {2, 0});
    const Vec2 above = place - Vec2{0, 40};
    board.feedPixel(PointerPhase::Down, above);
    board.feedPixel(PointerPhase::Up, above);
    CHECK(board.state.selection.loads == std::vector{LoadId{0}});
    board.feedPixel(PointerPhase::Down, above);
    board.feedPixel(PointerPhase::Move, above - Vec2{0, 60});
    board.feedPixel(PointerPhase::Up, above - Vec2{0, 60});
    CHECK(board.state.truss == truss);
}
