// One cell of the table of growth. growth_bench FAMILY COMMAND MEMBERS prints the number of members
// and the shortest processor time, in milliseconds, that the command takes on a truss of the family
// of about that size. Without arguments it prints the names of all families, then of all commands.
// growth_bench.mjs fills the table, and stops what takes too long.

#include "bench/shortest.hpp"
#include "design/member_checks.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "hand/polygon/force_polygon.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "hand/virtual_work/influence_by_hand.hpp"
#include "model/validate/validate.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/check_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "statics/moving/influence_report.hpp"
#include "statics/moving/load_paths.hpp"
#include "statics/solve/exact.hpp"
#include "support/trusses/family_truss.hpp"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

using namespace gusset;
using support::Family;

namespace {

// The input of a command, prepared before the clock starts.
struct Given {
    Truss truss;
    Truss manyCases; // one case per load, and as many combinations, each of all cases
    Solution solution;
    std::vector<JointId> path;
    MovingLoad train;
    Working working;
    std::string json;
};

MemberId middleMember(const Given& given) {
    return {static_cast<int>(given.truss.members.size() / 2)};
}

Effect middleEffect(const Given& given) {
    Effect effect;
    effect.member = middleMember(given);
    return effect;
}

Truss withManyCases(Truss truss) {
    std::vector<std::pair<std::string, double>> factors;
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        truss.loads[i].caseId = "case " + std::to_string(i);
        factors.push_back({truss.loads[i].caseId, 1 + 0.01 * static_cast<double>(i % 50)});
    }
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        factors[i].second = -1;
        truss.combinations.push_back({"all but " + std::to_string(i), factors, {}});
    }
    return truss;
}

Given givenFor(const Truss& truss) {
    Given given{truss, withManyCases(truss), solve(truss), lowestPath(truss), {}, {}, {}};
    given.train.id = "train";
    given.train.path = given.path;
    for (int i = 0; i < 4; ++i) {
        given.train.axles.push_back({1.5 * i, -50, {}});
    }
    given.train.uniform = MovingUniform{-5, 10, {}};
    given.json = writeModel(truss);
    return given;
}

// Returns whether it gave an answer.
using Run = bool (*)(const Given&);
struct Measured {
    std::string_view name;
    Run run;
    bool needsWorking = false;
};

bool runSections(const Given& given) {
    std::size_t found = 0;
    for (std::size_t i = 0; i < given.truss.members.size(); ++i) {
        found += workSection(given.truss, {}, given.solution, {static_cast<int>(i)}).steps.size();
    }
    return found > 0;
}

bool runWorst(const Given& given) {
    const auto choices = envelopeChoices(given.manyCases);
    const auto envelope = envelopeOf(given.manyCases, choices);
    return envelope &&
           !checksText({englishPhrases(), given.manyCases},
                       checkMembers(given.manyCases, envelope.value(), choices), {choices, true})
                .empty();
}

bool runInfluence(const Given& given) {
    const auto analysis = analysePath(given.truss, given.path);
    return analysis && !membersUnder(given.truss, analysis.value(), given.train).empty();
}

bool runSvg(const Given& given) {
    const ForcePolygon polygon = forcePolygon(given.truss, {}, given.solution);
    if (polygon.refusal != PolygonRefusal::None) {
        return true;
    }
    const Notation notation = notationOf({englishPhrases(), given.truss}, given.working);
    return !svgOf(spacesSketch(notation, polygon)).empty() &&
           !svgOf(polygonDrawing({englishPhrases(), given.truss}, polygon, {}).sketch).empty();
}

constexpr std::array kMeasured{
    Measured{"read", [](const Given& given) { return static_cast<bool>(readModel(given.json)); }},
    Measured{"validate", [](const Given& given) { return validate(given.truss).errors.empty(); }},
    Measured{"link",
             [](const Given& given) { // too large for a link: refused, with an issue
                 const auto reading = readLink(writeLink(given.truss));
                 return reading || !reading.issues().empty();
             }},
    Measured{"solve", [](const Given& given) { return solve(given.truss).solved; }},
    Measured{"check",
             [](const Given& given) {
                 return !verdict({englishPhrases(), given.truss}, solve(given.truss)).empty();
             }},
    Measured{"exact",
             [](const Given& given) { // beyond its limits: no forces, and the reason
                 const ExactSolution exact = solveExactly(given.truss);
                 return exact.solved || exact.forces.empty();
             }},
    Measured{"envelope",
             [](const Given& given) {
                 return static_cast<bool>(
                     envelopeOf(given.manyCases, envelopeChoices(given.manyCases)));
             }},
    Measured{"worst", runWorst},
    Measured{"influence", runInfluence},
    Measured{"ordinates",
             [](const Given& given) {
                 return given.path.empty() ||
                        !influenceByHand(given.truss, given.path, middleEffect(given)).path.empty();
             }},
    Measured{
        "working",
        [](const Given& given) { return !workOut(given.truss, {}, given.solution).steps.empty(); }},
    Measured{"text",
             [](const Given& given) {
                 return !workingText({englishPhrases(), given.truss}, given.working).empty();
             },
             true},
    Measured{"explain",
             [](const Given& given) {
                 const Symbol force{.kind = SymbolKind::MemberForce, .member = middleMember(given)};
                 return !explain(given.truss, {}, given.solution, force).steps.empty();
             }},
    Measured{"sections", runSections},
    Measured{"polygon",
             [](const Given& given) {
                 const ForcePolygon polygon = forcePolygon(given.truss, {}, given.solution);
                 return polygon.refusal != PolygonRefusal::None || !polygon.lines.empty();
             }},
    Measured{"svg", runSvg, true},
};

int listAll() {
    for (const Family family : support::kFamilies) {
        std::printf("%s ", std::string(nameOf(family)).c_str());
    }
    std::printf("\n");
    for (const Measured& measured : kMeasured) {
        std::printf("%s ", std::string(measured.name).c_str());
    }
    std::printf("\n");
    return 0;
}

} // namespace

int main(int count, char** arguments) {
    if (count != 4) {
        return listAll();
    }
    const std::string_view family = arguments[1];
    const std::string_view command = arguments[2];
    const auto which = std::find_if(support::kFamilies.begin(), support::kFamilies.end(),
                                    [&](Family one) { return nameOf(one) == family; });
    const auto measured = std::find_if(kMeasured.begin(), kMeasured.end(),
                                       [&](const Measured& one) { return one.name == command; });
    const int members = std::atoi(arguments[3]);
    if (which == support::kFamilies.end() || measured == kMeasured.end() || members < 30) {
        std::fprintf(stderr, "There is no such cell.\n");
        return 1;
    }
    Given given = givenFor(support::withOneSection(support::familyTruss(*which, members)));
    if (measured->needsWorking) {
        given.working = workOut(given.truss, {}, given.solution);
    }
    bool answered = true;
    const double micro = bench::shortest<bench::ProcessorClock>(
        [&] { answered &= measured->run(given); }, {.leastRuns = 1, .leastMilliseconds = 20});
    if (!answered) {
        std::fprintf(stderr, "%s %s: no answer\n", arguments[1], arguments[2]);
        return 1;
    }
    std::printf("%zu %.4f\n", given.truss.members.size(), micro / 1000);
}
