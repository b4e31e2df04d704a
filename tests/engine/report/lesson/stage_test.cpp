// A lesson on the stage: what a room must be able to read, on every screen.

#include "report/lesson/shown.hpp"
#include "report/lesson/stage.hpp"

#include "support/english.hpp"
#include "support/reading/sketch_checks.hpp"
#include "support/trusses/example_trusses.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
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

std::vector<LessonItem> itemsFor(const Truss& truss) {
    std::vector<LessonItem> items(1);
    items.push_back({ShowMember{MemberId{static_cast<int>(truss.members.size() / 2)}}, {}, {}});
    items.push_back({ShowDisplacement{JointId{1}, false}, {}, {}});
    items.push_back({ShowPolygon{}, {}, {}});
    return items;
}

std::string at(const Truss& truss, std::size_t item, const LessonShown& lesson,
               const StagePlace& place, const StageSize& size) {
    return truss.title + ", item " + std::to_string(item) + ", " +
           lesson.steps[place.step].subject + ", stroke " + std::to_string(place.stroke) + ", " +
           std::to_string(static_cast<int>(size.width));
}

} // namespace

TEST_CASE("everything on the stage can be read from the last row, on every screen") {
    for (const Truss& truss : exampleTrusses()) {
        const Solution solution = solve(truss, {});
        const std::vector<LessonItem> items = itemsFor(truss);
        for (std::size_t item = 0; item < items.size(); ++item) {
            const Outcome<LessonShown> lesson =
                lessonFor(englishPhrases(), truss, {}, solution, items[item]);
            REQUIRE(lesson);
            for (std::size_t i = 0; i < lesson.value().steps.size(); ++i) {
                const std::size_t strokes = lesson.value().steps[i].strokes.size();
                REQUIRE(strokes > 0);
                for (const StageSize& size : kSizes) {
                    const StagePlace place{i, strokes - 1, false};
                    const Sketch stage =
                        stageOf(englishPhrases(), lesson.value(), place, size).sketch;
                    INFO(at(truss, item, lesson.value(), place, size));
                    CHECK(stage.width == size.width);
                    CHECK(stage.height == size.height);
                    CHECK(faultOfSketch(stage) == "");
                    CHECK(smallestIn(stage) >= smallestLetters(size));
                }
            }
        }
    }
}
