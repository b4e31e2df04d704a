// A lesson on the stage: what a room must be able to read, on every screen.

#include "report/lesson/shown.hpp"
#include "report/lesson/stage.hpp"
#include "statics/moving/load_paths.hpp"

#include "support/build.hpp"
#include "support/english.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr StageSize kSizes[] = {{1366, 768}, {1920, 1080}, {1024, 768}, {390, 844}, {2560, 1080}};

double smallestIn(const Sketch& sketch) {
    double smallest = 1e9;
    for (const SketchWords& words : sketch.words) {
        for (const Run& run : words.words) {
            smallest =
                std::min(smallest, run.style == RunStyle::Subscript ? kSubscriptSize * words.size
                                                                    : words.size);
        }
    }
    return smallest;
}

// The examples, and the trusses whose workings were reviewed by hand.
std::vector<Truss> allTrusses() {
    std::vector<Truss> trusses = exampleTrusses();
    for (const auto& several : {workedTrusses(), redundantTrusses()}) {
        for (const WorkedTruss& worked : several) {
            trusses.push_back(worked.truss);
        }
    }
    return trusses;
}

// Members that an upright line crosses, right of the leftmost joints.
std::vector<MemberId> cutBehindTheLeftEnd(const Truss& truss) {
    std::set<double> places;
    for (const Joint& joint : truss.joints) {
        places.insert(joint.at.x);
    }
    const double at = 0.5 * (*places.begin() + *std::next(places.begin()));
    std::vector<MemberId> cut;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const double a = truss.joints[truss.members[i].a.at()].at.x;
        const double b = truss.joints[truss.members[i].b.at()].at.x;
        if ((a - at) * (b - at) < 0) {
            cut.push_back({static_cast<int>(i)});
        }
    }
    return cut;
}

// Every kind of derivation.
std::vector<LessonItem> itemsFor(const Truss& truss) {
    const MemberId middle{static_cast<int>(truss.members.size() / 2)};
    std::vector<Shown> all{ShowAll{},
                           ShowMember{middle},
                           ShowCut{cutBehindTheLeftEnd(truss)},
                           ShowDisplacement{JointId{1}, false},
                           ShowForceMethod{},
                           ShowPolygon{}};
    if (const std::vector<JointId> path = lowestPath(truss); path.size() > 1) {
        all.emplace_back(ShowInfluence{{EffectKind::MemberForce, middle, {}, false}, path});
    }
    std::vector<LessonItem> items;
    for (Shown& shown : all) {
        items.push_back({std::move(shown), {}, {}, {}, {}});
    }
    return items;
}

// All of them that can be shown of a truss.
std::vector<LessonShown> lessonsOf(const Truss& truss) {
    const Solution solution = solve(truss, {});
    std::vector<LessonShown> lessons;
    for (const LessonItem& item : itemsFor(truss)) {
        if (Outcome<LessonShown> lesson = lessonFor(englishPhrases(), truss, {}, solution, item)) {
            lessons.push_back(std::move(lesson).value());
        }
    }
    return lessons;
}

std::string at(const LessonShown& lesson, const StagePlace& place, const StageSize& size) {
    return lesson.truss.title + ", " + lesson.steps[place.step].subject + ", stroke " +
           std::to_string(place.stroke) + ", " + std::to_string(static_cast<int>(size.width));
}

// Strokes of which the page shows no other picture than of these: the first and the last of a step
// and all whose drawing grows.
std::vector<std::size_t> strokesToSee(const LessonStep& step) {
    std::vector<std::size_t> strokes;
    for (std::size_t i = 0; i < step.strokes.size(); ++i) {
        const Stroke& stroke = step.strokes[i];
        if (i == 0 || i + 1 == step.strokes.size() || stroke.table || stroke.drawn ||
            stroke.traced) {
            strokes.push_back(i);
        }
    }
    return strokes;
}

bool isSame(const OnStage& a, const OnStage& b) {
    constexpr double kNear = 1e-6; // px
    return length(a.origin - b.origin) < kNear && std::fabs(a.scale - b.scale) < kNear;
}

} // namespace

TEST_CASE("everything on the stage can be read from the last row, on every screen") {
    std::size_t pictures = 0;
    constexpr std::size_t kStride = kSanitized ? 4 : 1; // of the steps
    for (const Truss& truss : exampleTrusses()) {
        for (const LessonShown& lesson : lessonsOf(truss)) {
            for (std::size_t i = 0; i < lesson.steps.size(); i += kStride) {
                REQUIRE(!lesson.steps[i].strokes.empty());
                for (const std::size_t stroke : strokesToSee(lesson.steps[i])) {
                    for (const StageSize& size : kSizes) {
                        const StagePlace place{i, stroke};
                        const Sketch stage = stageOf(englishPhrases(), lesson, place, size).sketch;
                        INFO(at(lesson, place, size));
                        CHECK(stage.width == size.width);
                        CHECK(stage.height == size.height);
                        CHECK(faultOfSketch(stage) == "");
                        CHECK(smallestIn(stage) >= smallestLetters(size));
                        ++pictures;
                    }
                }
            }
        }
    }
    CHECK(pictures > 5000 / kStride);
}

TEST_CASE("a free body stays in its place through its steps, and the truss through the strokes") {
    for (const Truss& truss : kSanitized ? exampleTrusses() : allTrusses()) {
        for (const LessonShown& lesson : lessonsOf(truss)) {
            std::optional<OnStage> body;
            std::optional<std::size_t> of;
            for (std::size_t i = 0; i < lesson.steps.size(); ++i) {
                std::optional<OnStage> board;
                for (std::size_t stroke = 0; stroke < lesson.steps[i].strokes.size(); ++stroke) {
                    const StagePlace place{i, stroke};
                    const StageSize size{1366, 768};
                    const StagePicture stage = stageOf(englishPhrases(), lesson, place, size);
                    INFO(at(lesson, place, size));
                    if (stage.board && board) {
                        CHECK(isSame(*stage.board, *board));
                    }
                    board = stage.board;
                    if (stage.body && body && lesson.steps[i].body && of == lesson.steps[i].body) {
                        CHECK(isSame(*stage.body, *body));
                    }
                    body = stage.body;
                    of = lesson.steps[i].body;
                }
            }
        }
    }
}

TEST_CASE("while a load rolls to the next joint, truss and line stay where they are") {
    for (const Truss& truss : exampleTrusses()) {
        for (const LessonShown& lesson : lessonsOf(truss)) {
            const LessonStep& step = lesson.steps.back();
            if (!step.strokes.back().traced) {
                continue;
            }
            std::optional<SketchLine> member;
            for (std::size_t stroke = 0; stroke < step.strokes.size(); ++stroke) {
                for (const double along : {0.0, 0.3, 1.0}) {
                    const StagePlace place{lesson.steps.size() - 1, stroke, false, 0.25, along};
                    const StageSize size{1366, 768};
                    const Sketch stage = stageOf(englishPhrases(), lesson, place, size).sketch;
                    INFO(at(lesson, place, size) << ", along " << along);
                    CHECK(faultOfSketch(stage) == "");
                    if (member) { // the first line is a member
                        CHECK(length(stage.lines.front().a - member->a) < 1e-6);
                        CHECK(length(stage.lines.front().b - member->b) < 1e-6);
                    }
                    member = stage.lines.front();
                }
            }
        }
    }
}

namespace {

std::string wordsOf(const Sketch& sketch) {
    std::string words;
    for (const SketchWords& each : sketch.words) {
        words += plainText(each.words) + "|";
    }
    return words;
}

std::size_t indexOfStep(const LessonShown& lesson, const std::string& subject) {
    const auto found =
        std::find_if(lesson.steps.begin(), lesson.steps.end(),
                     [&](const LessonStep& step) { return step.subject == subject; });
    REQUIRE(found != lesson.steps.end());
    return static_cast<std::size_t>(found - lesson.steps.begin());
}

LessonShown lessonOn(const Truss& truss, LessonItem item) {
    const Outcome<LessonShown> lesson =
        lessonFor(englishPhrases(), truss, {}, solve(truss, {}), item);
    REQUIRE(lesson);
    return lesson.value();
}

} // namespace

// A gable 8 m wide and 3 m high: at C one rafter is known by symmetry of the other.
TEST_CASE("what is asked, what is known and what is not are told apart without colour") {
    Truss truss = gable();
    truss.joints[2].at.x = 3; // no symmetry
    const LessonShown lesson = lessonOn(truss, {});
    const std::size_t step = indexOfStep(lesson, "joint A");
    const StageSize size{1366, 768};
    const auto marks = [&](bool hides) {
        const Sketch stage = stageOf(englishPhrases(), lesson, {step, 0, hides}, size).sketch;
        std::set<double> widths;
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            widths.insert(stage.lines[i].width);
        }
        return std::pair{wordsOf(stage), widths.size()};
    };
    // Asked at A: two members. The third is neither known nor asked, and thin.
    const auto [words, weights] = marks(false);
    CHECK(std::count(words.begin(), words.end(), '?') == 2);
    CHECK(weights == 2);
    // With hidden values, those that are known have a tick.
    const StagePlace last{lesson.steps.size() - 1, 0, true};
    const std::string hidden = wordsOf(stageOf(englishPhrases(), lesson, last, size).sketch);
    CHECK(hidden.find("\u2713|") != std::string::npos);
    CHECK(hidden.find(" C|") == std::string::npos);
}

TEST_CASE("a fraction stands with one number over the other, between the words beside it") {
    const Truss truss = gable(); // slope 3 in 4: F_AC = −12/0.6
    const LessonShown lesson = lessonOn(truss, {});
    const std::size_t step = indexOfStep(lesson, "joint-sum A y");
    const StagePlace place{step, lesson.steps[step].strokes.size() - 1};
    for (const StageSize& size : kSizes) {
        const Sketch stage = stageOf(englishPhrases(), lesson, place, size).sketch;
        const auto wordsAt = [&](const std::string& text) {
            const auto found =
                std::find_if(stage.words.begin(), stage.words.end(),
                             [&](const auto& words) { return plainText(words.words) == text; });
            REQUIRE(found != stage.words.end());
            return *found;
        };
        INFO(wordsOf(stage));
        CHECK(wordsOf(stage).find('/') == std::string::npos);
        const SketchWords above = wordsAt("\u221212.00");
        const SketchWords below = wordsAt("0.6");
        CHECK(above.at.x == below.at.x);
        CHECK(above.at.y < below.at.y);
        CHECK(above.size >= smallestLetters(size));
        const auto bar =
            std::find_if(stage.lines.begin(), stage.lines.end(), [&](const SketchLine& line) {
                return line.a.y == line.b.y && line.a.y > above.at.y && line.a.y < below.at.y;
            });
        REQUIRE(bar != stage.lines.end());
        constexpr double kRounding = 1e-6; // px
        CHECK(bar->a.x <= boxOf(above).low.x + kRounding);
        CHECK(bar->b.x >= boxOf(above).high.x - kRounding);
    }
}

TEST_CASE("a section is drawn through the truss, and the part that is kept is lit") {
    const Truss truss = gable();
    LessonItem item;
    item.shown = ShowCut{cutBehindTheLeftEnd(truss)};
    const LessonShown lesson = lessonOn(truss, item);
    const auto intro =
        std::find_if(lesson.steps.begin(), lesson.steps.end(), [&](const LessonStep& step) {
            return step.step && lesson.working.steps[*step.step].kind == StepKind::SectionEquation;
        });
    REQUIRE(intro != lesson.steps.end());
    const auto at = static_cast<std::size_t>(intro - lesson.steps.begin());
    const Sketch stage = stageOf(englishPhrases(), lesson, {at, 0}, {1366, 768}).sketch;
    // Through two members: from beyond the one, and between, to beyond the other.
    CHECK(std::count_if(stage.lines.begin(), stage.lines.end(), [](const SketchLine& line) {
              return line.dashed && line.ink == SketchInk::Accent;
          }) == 3);
}
