// Envelopes, influence lines and member checks are as open about their accuracy as a single
// solution: right, refused, or flagged in words.

#include "statics/solve/reliance.hpp"

#include "design/member_checks.hpp"
#include "exchange/results/json_checks.hpp"
#include "exchange/results/json_statics.hpp"
#include "report/results/check_text.hpp"
#include "report/results/envelope_text.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sketch/influence_sketch.hpp"
#include "support/english.hpp"
#include "support/trusses/exact_truss.hpp"
#include "support/trusses/extreme_truss.hpp"
#include "support/trusses/hard_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

std::vector<JointId> overArch(const Truss& truss) {
    return {JointId{0}, JointId{static_cast<int>(jointAt(truss, "C"))}, JointId{1}};
}

Effect lineOfForce(const Truss& truss, const char* a, const char* b) {
    Effect effect;
    effect.member = MemberId{static_cast<int>(memberAt(truss, a, b))};
    return effect;
}

// Every number with more than six significant digits claims too much.
bool tellsMoreThanSix(const std::string& text) {
    std::string digits;
    for (const char c : text + " ") {
        if (c >= '0' && c <= '9') {
            digits += c;
        } else if (c != '.') {
            digits.erase(0, digits.find_first_not_of('0'));
            digits.erase(digits.find_last_not_of('0') + 1);
            if (digits.size() > 6) {
                return true;
            }
            digits.clear();
        }
    }
    return false;
}

Truss withSections(Truss truss) {
    truss.materials.push_back({"steel", 210e3, 235, {}, {}, {}});
    truss.sections.push_back({"bar", "steel", 1000, {}, "", {}, {}});
    for (Member& bar : truss.members) {
        bar.section = "bar";
    }
    return truss;
}

// Members 0, 3, 6 … are `ratio` times as stiff as the others.
Truss unevenStrip(double ratio) {
    Truss truss = withSections(stripTruss(Web::Double, 3));
    truss.sections.push_back({"stiff", "steel", 1000 * ratio, {}, "", {}, {}});
    for (std::size_t i = 0; i < truss.members.size(); i += 3) {
        truss.members[i].section = "stiff";
    }
    return truss;
}

double largestSizeOf(const std::vector<double>& values) {
    double largest = 0;
    for (const double value : values) {
        largest = std::max(largest, std::abs(value));
    }
    return largest;
}

// Compares reported forces with exact ones, both in N; empty if nothing is wrong. `error` is the
// reported bound for every force, `scale` the largest force or reaction.
std::string wrongIn(const std::vector<double>& told, const std::vector<double>& exact, double scale,
                    double error, bool hasWords) {
    // The bound is an estimate, in practice within a factor of three
    // (statics/matrix/norm_estimate).
    constexpr double kSlack = 10;
    constexpr double kFloor = 1e-13;
    constexpr double kRight = 1e-6;
    double off = 0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        off = std::max(off, std::abs(told[i] - exact[i]));
    }
    if (off > std::max(kSlack * error, kFloor * scale)) {
        return "off by " + shortestNumber(off / scale) + ", bound " + shortestNumber(error / scale);
    }
    return off > kRight * scale && !hasWords ? "off without a word" : "";
}

double scaleOf(const ExactResponse& exact) {
    return std::max(largestSizeOf(exact.forces), largestSizeOf(exact.reactions));
}

// Without temperature changes, settlements and misfits: influence lines are for loads only.
Truss hardTruss(std::uint64_t seed) {
    Truss truss = extremeTruss(seed);
    for (Member& each : truss.members) {
        each.warming = each.misfit = 0;
    }
    for (Support& each : truss.supports) {
        each.settle = {};
        each.settleAlong = 0;
    }
    return truss;
}

struct Told {
    int answered = 0;
    int flagged = 0;
    std::string wrong;

    void note(std::uint64_t seed, bool hasWords, const std::string& fault) {
        ++answered;
        flagged += hasWords ? 1 : 0;
        wrong += fault.empty() ? fault : "seed " + std::to_string(seed) + ": " + fault + "\n";
    }
};

// A unit load along the first member that is not vertical.
void walkOne(std::uint64_t seed, Told& told) {
    const Truss truss = hardTruss(seed);
    const auto leads = [&](const Member& bar) {
        return truss.joints[bar.a.at()].at.x < truss.joints[bar.b.at()].at.x;
    };
    const auto bar = std::find_if(truss.members.begin(), truss.members.end(), leads);
    if (bar == truss.members.end()) {
        return;
    }
    const Outcome<PathAnalysis> found = analysePath(truss, {bar->a, bar->b});
    if (!found) {
        return;
    }
    const PathAnalysis& path = found.value();
    const bool hasWords = !trustSentences({englishPhrases(), truss}, path.reliance).empty();
    const double unit = toNewton(truss.units.force);
    for (std::size_t i = 0; i < path.path.size(); ++i) {
        const auto exact = exactResponse(withUnitLoad(truss, path.path[i]));
        if (!exact) {
            told.note(seed, hasWords, "a mechanism in fractions");
            continue;
        }
        std::vector<double> forces = path.responses[i].found.forces;
        for (double& each : forces) {
            each *= unit;
        }
        told.note(seed, hasWords,
                  wrongIn(forces, exact->forces, std::max(unit, scaleOf(*exact)),
                          unit * forceErrorOf(path.reliance), hasWords));
    }
}

// Each load as a case of its own.
void envelopOne(std::uint64_t seed, Told& told) {
    Truss truss = hardTruss(seed);
    std::vector<double> most(truss.members.size());
    std::vector<double> least(truss.members.size());
    double scale = 0;
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        Truss alone = truss;
        alone.loads = {truss.loads[i]};
        truss.loads[i].caseId = std::to_string(i);
        const auto exact = exactResponse(alone);
        if (!exact) {
            return;
        }
        scale = std::max(scale, scaleOf(*exact));
        for (std::size_t m = 0; m < exact->forces.size(); ++m) {
            most[m] = std::max(most[m], exact->forces[m]);
            least[m] = std::min(least[m], exact->forces[m]);
        }
    }
    const Outcome<Envelope> found = envelopeOf(truss, envelopeChoices(truss));
    if (!found) {
        return;
    }
    most.insert(most.end(), least.begin(), least.end());
    std::vector<double> given;
    for (const MemberEnvelope& each : found.value().members) {
        given.push_back(each.tension.force);
    }
    for (const MemberEnvelope& each : found.value().members) {
        given.push_back(each.compression.force);
    }
    const bool hasWords = !trustSentences({englishPhrases(), truss}, found.value()).empty();
    told.note(seed, hasWords,
              wrongIn(given, most, scale, forceErrorOf(found.value().reliance), hasWords));
}

} // namespace

TEST_CASE("an envelope close to a mechanism says so, and keeps the figures that are left") {
    const Truss truss = archOnStilts();
    const Envelope envelope = envelopeOf(truss, envelopeChoices(truss)).value();
    // 0.5 kN over 1e-9, off by at most half a unit in the last place of 1.
    CHECK_THAT(envelope.members[0].compression.force, WithinRel(-0.5e3 / 1e-9, 2e-7));
    CHECK(envelope.reliance.trust.error >= 1e-7);
    const std::string text = envelopeText({englishPhrases(), truss}, envelope);
    CHECK_THAT(text, ContainsSubstring("Close to a mechanism at joint C"));
    CHECK_THAT(text, ContainsSubstring("Rounding leaves 6 figures"));
    CHECK_FALSE(tellsMoreThanSix(text));
    const std::string json = writeEnvelope(englishPhrases(), truss, envelope);
    CHECK_THAT(json, ContainsSubstring("\"figures\": 6"));
    CHECK_THAT(json, ContainsSubstring("\"tension\": 0,"));
    CHECK_FALSE(tellsMoreThanSix(json.substr(0, json.find("\"condition\""))));
    for (const EnvelopeRow& row : envelopeRows(truss, envelope)) {
        CHECK_FALSE(tellsMoreThanSix(row.compression));
    }
}

TEST_CASE("an influence line close to a mechanism says so, and keeps the figures that are left") {
    const Truss truss = archOnStilts();
    const InfluenceReport report =
        influenceReport(truss, overArch(truss), lineOfForce(truss, "A", "C")).value();
    CHECK_THAT(report.line.ordinates[1], WithinRel(-0.5 / 1e-9, 2e-7));
    CHECK(trustOf(report).error >= 1e-7);
    const std::vector<std::string> warnings = lineWarnings({englishPhrases(), truss}, report);
    REQUIRE(warnings.size() == 2);
    CHECK_THAT(warnings[0], ContainsSubstring("Close to a mechanism at joint C"));
    CHECK_THAT(warnings[1], ContainsSubstring("Rounding leaves 6 figures of the largest ordinate"));
    CHECK_THAT(influenceText({englishPhrases(), truss}, report), ContainsSubstring(warnings[1]));
    CHECK_FALSE(tellsMoreThanSix(signedOrdinate(truss, report, report.line.ordinates[1])));
    CHECK_FALSE(tellsMoreThanSix(areaSentence({englishPhrases(), truss}, report)));
    const std::string json = writeInfluence(englishPhrases(), truss, report);
    CHECK_THAT(json, ContainsSubstring("\"figures\": 6"));
}

TEST_CASE("what moves along an influence line keeps no more figures than the line") {
    Truss truss = archOnStilts();
    MovingLoad cart;
    cart.id = "cart";
    cart.path = overArch(truss);
    cart.axles = {{0, -3, {}}, {0.7, -4, {}}};
    truss.moving = {cart};
    const InfluenceReport report =
        influenceReport(truss, cart.path, lineOfForce(truss, "A", "C")).value();
    REQUIRE(report.moving.size() == 1);
    CHECK_THAT(report.moving[0].error, WithinRel(7e3 * report.error, 1e-12)); // two axles, 7 kN
    for (const std::string& line : movingLines({englishPhrases(), truss}, report)) {
        CHECK_FALSE(tellsMoreThanSix(line));
    }
    const PathAnalysis analysis = analysePath(truss, cart.path).value();
    for (const EnvelopeRow& row :
         movingRows({englishPhrases(), truss}, cart.path, membersUnder(truss, analysis, cart))) {
        CHECK_FALSE(tellsMoreThanSix(row.compression));
    }
}

TEST_CASE("checks of members say how far their forces can be relied on") {
    const Truss truss = withSections(archOnStilts());
    const std::vector<LoadChoice> choices = envelopeChoices(truss);
    const MemberChecks worst = checkMembers(truss, envelopeOf(truss, choices).value(), choices);
    const MemberChecks shown = checkMembers(truss, solve(truss), {});
    for (const MemberChecks& checks : {worst, shown}) {
        REQUIRE(checks.members.size() == 2);
        const std::string text = checksText({englishPhrases(), truss}, checks, {});
        CHECK_THAT(text, ContainsSubstring("Close to a mechanism at joint C"));
        CHECK_THAT(text, ContainsSubstring("Rounding leaves 6 figures"));
        CHECK_THAT(checksHtml({englishPhrases(), truss}, checks, {}),
                   ContainsSubstring("Rounding leaves 6 figures"));
        CHECK_THAT(checksCsv({englishPhrases(), truss}, checks), ContainsSubstring("\nfigures,6,"));
        CHECK_THAT(writeChecks(englishPhrases(), truss, checks,
                               {cautionLines(englishPhrases()), {"mind"}}),
                   ContainsSubstring("\"figures\": 6"));
        for (const CheckRow& row : checkRows({englishPhrases(), truss}, checks)) {
            CHECK_FALSE(tellsMoreThanSix(row.force));
        }
    }
}

TEST_CASE("of ordinary trusses nothing is said, and all figures are kept") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    const Envelope envelope = envelopeOf(truss, {{}}).value();
    CHECK(envelopeWarnings({englishPhrases(), truss}, envelope).empty());
    CHECK_THAT(writeEnvelope(englishPhrases(), truss, envelope), !ContainsSubstring("figures"));
    const InfluenceReport report =
        influenceReport(truss, bottomChord(truss, 6), lineOfForce(truss, "B2", "B3")).value();
    CHECK(lineWarnings({englishPhrases(), truss}, report).empty());
    CHECK_THAT(writeInfluence(englishPhrases(), truss, report), !ContainsSubstring("figures"));
}

TEST_CASE("an envelope is told by the worst of its choices, whichever comes first") {
    const Truss truss = archOnStilts();
    const LoadChoice snow = OneCase{"snow"};
    const LoadChoice wind = OneCase{"wind"};
    const auto errorOver = [&](const std::vector<LoadChoice>& choices) {
        return forceErrorOf(envelopeOf(truss, choices).value().reliance);
    };
    CHECK(errorOver({snow, wind}) == std::max(errorOver({snow}), errorOver({wind})));
    CHECK(errorOver({wind, snow}) == errorOver({snow, wind}));
}

TEST_CASE("an envelope without E and A says what it rests on, and one of a mechanism that it is") {
    Truss square = stripTruss(Web::Double, 1);
    CHECK_THAT(envelopeText({englishPhrases(), square}, envelopeOf(square, {{}}).value()),
               ContainsSubstring("E·A is taken to be the same"));
    Truss slides = gable();
    slides.supports[0].kind = SupportKind::Roller; // both vertical: 12 kN each, no tie force
    const Envelope envelope = envelopeOf(slides, {{}}).value();
    CHECK(envelope.reliance.status == Status::Mechanism);
    CHECK_THAT(envelopeText({englishPhrases(), slides}, envelope),
               ContainsSubstring("mechanism on which these loads happen to be in balance"));
}

TEST_CASE("unit loads on a strip of very different members are answered each as it should be") {
    // Where stiff members are effectively rigid, forces no longer depend on how stiff they are.
    const Truss truss = unevenStrip(1e9);
    const auto path = bottomChord(truss, 3);
    const PathAnalysis much = analysePath(truss, path).value();
    const PathAnalysis more = analysePath(unevenStrip(1e12), path).value();
    CHECK(much.reliance.trust.wide);
    CHECK(much.reliance.standsOut);
    for (std::size_t i = 0; i < path.size(); ++i) {
        const std::vector<double>& one = much.responses[i].found.forces;
        for (std::size_t bar = 0; bar < one.size(); ++bar) {
            CHECK(std::abs(one[bar] - more.responses[i].found.forces[bar]) <= 1e-6);
        }
    }
    const Outcome<PathAnalysis> none = analysePath(unevenStrip(1e27), path);
    REQUIRE_FALSE(none.ok());
    CHECK_THAT(english(none.issues().front().says), ContainsSubstring("that of member B0–B1 most"));
    CHECK(english(envelopeOf(unevenStrip(1e27), {{}}).issues().front().says) ==
          english(none.issues().front().says));
}

TEST_CASE("displacements that rounding spoils are refused for that, and not for want of E and A") {
    const Truss truss = withSections(archOnStilts());
    PathAnalysis analysis = analysePath(truss, overArch(truss)).value();
    Effect move;
    move.kind = EffectKind::Displacement;
    move.joint = JointId{static_cast<int>(jointAt(truss, "C"))};
    CHECK(influenceReport(truss, analysis, move).ok());
    analysis.movesDoubtful = true;
    const auto refused = influenceReport(truss, analysis, move);
    REQUIRE_FALSE(refused.ok());
    CHECK_THAT(english(refused.issues().front().says),
               ContainsSubstring("fewer than three figures"));
}

TEST_CASE("influence lines of trusses that are hard on arithmetic are right, or in words") {
    Told told;
    for (std::uint64_t seed = 0; seed < 250; ++seed) {
        walkOne(200000 + seed, told);
    }
    CHECK(told.wrong == "");
    CHECK(told.answered > 100);
    CHECK(told.flagged > 0);
}

TEST_CASE("envelopes of trusses that are hard on arithmetic are right, or in words") {
    Told told;
    for (std::uint64_t seed = 0; seed < 250; ++seed) {
        envelopOne(300000 + seed, told);
    }
    CHECK(told.wrong == "");
    CHECK(told.answered > 100);
    CHECK(told.flagged > 0);
}

TEST_CASE("a truss of one joint is counted as one") {
    Truss truss;
    joint(truss, "A", 0, 0);
    pin(truss, "A");
    const std::string words = resultsText({englishPhrases(), truss}, solve(truss));
    CHECK_THAT(words, ContainsSubstring("0 members + 2 reactions = 2 × 1 joint."));
}
