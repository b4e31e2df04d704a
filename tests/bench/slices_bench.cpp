// How long the longest unit of each long calculation takes at 1,000 members: a frame of the page
// may exceed its slice by that much. Prints, for each family and task, the number of units, the
// total time and the longest unit.

#include "design/member_checks.hpp"
#include "hand/polygon/force_polygon.hpp"
#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/influence_by_hand.hpp"
#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/text/phrases.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/moving/influence_report.hpp"
#include "statics/moving/load_paths.hpp"
#include "support/trusses/family_truss.hpp"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

using Clock = std::chrono::steady_clock;
double since(Clock::time_point start) {
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

void line(Family family, const char* what, int units, double whole, double longest) {
    std::printf("%-9s %-22s %7d units %9.1f ms, longest %8.2f ms\n",
                std::string(nameOf(family)).c_str(), what, units, whole, longest);
}

template <class Task>
void measure(Family family, const char* what, Task& task) {
    double whole = 0;
    double longest = 0;
    int units = 0;
    for (bool done = false; !done; ++units) {
        const auto start = Clock::now();
        done = task.advance();
        const double took = since(start);
        whole += took;
        longest = std::max(longest, took);
    }
    line(family, what, units, whole, longest);
}

template <class Work>
void measureOnce(Family family, const char* what, Work work) {
    const auto start = Clock::now();
    work();
    line(family, what, 1, since(start), since(start));
}

// The loads shared among `count` cases, and a combination of each case alone.
Truss withChoices(Truss truss, int count) {
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        truss.loads[i].caseId = "case " + std::to_string(i % static_cast<std::size_t>(count));
    }
    for (int i = 0; i < count; ++i) {
        Combination combination;
        combination.id = "combination " + std::to_string(i);
        combination.factors.push_back({"case " + std::to_string(i), 1.5});
        truss.combinations.push_back(combination);
    }
    return truss;
}

void measurePaths(Family family, const Truss& truss) {
    const std::vector<JointId> path = lowestPath(truss);
    if (path.size() < 2) {
        return;
    }
    PathAnalysisTask paths(truss, path);
    measure(family, "path", paths);
    const Outcome<PathAnalysis> analysis = paths.take();
    if (!analysis) {
        return;
    }
    MovingLoad load;
    load.path = path;
    for (const double at : {0.0, 1.0, 3.0}) {
        load.axles.push_back({at, -10, {}});
    }
    MembersUnderTask members(truss, analysis.value(), load);
    measure(family, "members under a load", members);
    Effect effect;
    effect.member = MemberId{static_cast<int>(truss.members.size() / 2)};
    InfluenceByHandTask byHand(truss, path, effect);
    measure(family, "influence by hand", byHand);
}

void measureFamily(Family family, int size) {
    const Truss truss = familyTruss(family, size);
    const Solution solution = solve(truss);
    if (solution.status == Status::Indeterminate) {
        ForceMethodTask force(truss, {}, solution);
        measure(family, "force method", force);
    } else {
        WorkingTask task(truss, {}, solution);
        measure(family, "working", task);
        const Working working = task.take();
        WorkingPassagesTask passages({englishPhrases(), truss}, working, SketchPaper::Column);
        measure(family, "its steps", passages);
        ForcePolygon polygon;
        measureOnce(family, "polygon", [&] { polygon = forcePolygon(truss, working); });
        measureOnce(family, "polygon in words", [&] {
            (void)forcePolygonPassage({englishPhrases(), truss}, polygon);
        });
        if (polygon.refusal == PolygonRefusal::None) {
            measureOnce(family, "spaces", [&] {
                (void)spacesSketch(notationOf({englishPhrases(), truss}, working), polygon,
                                   SketchPaper::Column);
            });
            measureOnce(family, "polygon drawn", [&] {
                (void)polygonDrawing({englishPhrases(), truss}, polygon,
                                     {.width = 300, .height = 300});
            });
        }
        const JointId middle{static_cast<int>(truss.joints.size() / 2)};
        UnitLoadTask unit(truss, {}, solution, middle, DisplacementAxis::Y);
        measure(family, "unit load", unit);
    }
    const Truss many = withChoices(withOneSection(truss), 100);
    EnvelopeTask envelope(many, combinationChoices(many));
    measure(family, "envelope of 100", envelope);
    WorstChecksTask checks(many, combinationChoices(many));
    measure(family, "checks of 100", checks);
    measurePaths(family, truss);
}

} // namespace

int main(int count, char** words) {
    const int size = count > 1 ? std::atoi(words[1]) : 1000;
    for (const Family family : kFamilies) {
        measureFamily(family, size);
    }
    return 0;
}
