#include "hand/virtual_work/influence_by_hand.hpp"
#include "report/derivation/influence_by_hand_text.hpp"

#include "support/reading/formula_value.hpp"
#include "support/reading/working_reader.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

Effect forceIn(MemberId member) {
    Effect effect;
    effect.member = member;
    return effect;
}

Effect reactionAt(const Truss& truss, const char* joint, bool horizontal = false) {
    Effect effect;
    effect.kind = EffectKind::Reaction;
    effect.joint = findJoint(truss, joint);
    effect.horizontal = horizontal;
    return effect;
}

std::string lineTextOf(const Truss& truss, const std::vector<JointId>& path, const Effect& effect) {
    return passagesText(
        influencePassages({englishPhrases(), truss}, influenceByHand(truss, path, effect)));
}

// Up to `most` joints in a row, each connected to the next, always going to the right.
std::vector<JointId> pathThrough(const Truss& truss, std::size_t most) {
    std::vector<JointId> path{{0}};
    for (bool grown = true; grown && path.size() < most;) {
        grown = false;
        for (const Member& member : truss.members) {
            const JointId last = path.back();
            const JointId next = member.a == last ? member.b : member.a;
            const bool joins = member.a == last || member.b == last;
            if (joins && truss.joints[next.at()].at.x > truss.joints[last.at()].at.x) {
                path.push_back(next);
                grown = true;
                break;
            }
        }
    }
    return path;
}

// Every chain of steps, read as that of the truss with the load there. The statements of the
// opening hold for all of them.
std::string objectionTo(const InfluenceByHand& line) {
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        Truss loaded = line.unloaded;
        Load load;
        load.what = JointForce{ordinate.at, 0, -1};
        loaded.loads = {load};
        const std::string text =
            objectionToChain(loaded, ordinate.chain, solve(loaded), {line.symbol});
        if (!text.empty()) {
            return text;
        }
    }
    return {};
}

// Both printed formulas of the law, worked out with x and the reaction of this place.
std::string objectionToLaw(const std::vector<Passage>& passages, const InfluenceByHand& line,
                           const InfluenceOrdinate& ordinate) {
    const auto number = [](const std::string& text, NumberPlace) -> std::optional<Rounded> {
        const auto digits = digitsOf(text);
        return digits ? std::optional(Rounded{digits->value, 0.5001 * digits->figureStep(4)})
                      : std::nullopt;
    };
    int formulas = 0;
    for (const Passage& passage : passages) {
        for (const auto& part : passage.parts) {
            const auto* it = std::get_if<WorkingLine>(&part);
            if (!it || it->formula.empty() || plainText(passage.title) != "Load at x") {
                continue;
            }
            Names names{{"x", {ordinate.place, 0}}};
            for (const Token& token : it->formula) {
                if (token.kind == TokenKind::Variable && token.text != "x") {
                    names[printedName(token)] = {ordinate.value, 0};
                }
            }
            const PrintedEquation sides = equationsOf(it->formula).front();
            const auto left = worthOf(sides[0].formula, names, number);
            const auto right = worthOf(sides[1].formula, names, number);
            if (sides.size() != 2 || !left || !right || !agree(*left, *right)) {
                return plainText(it->runs);
            }
            ++formulas;
        }
    }
    return formulas == 2 && line.law ? "" : "not two formulas";
}

} // namespace

TEST_CASE("the ordinates by hand are those of the solver, and every equation balances") {
    int sections = 0;
    int ordinates = 0;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        const std::vector<JointId> path = pathThrough(truss, 5);
        if (path.size() < 2) {
            continue;
        }
        const Effect effect = forceIn({static_cast<int>(seed % truss.members.size())});
        INFO("seed " << seed);
        const InfluenceByHand line = influenceByHand(truss, path, effect);
        REQUIRE(line.end == InfluenceEnd::Complete);
        REQUIRE(objectionTo(line) == "");
        const InfluenceLine solved = influenceLine(analysePath(truss, path).value(), effect);
        double largest = 1;
        for (const double ordinate : solved.ordinates) {
            largest = std::max(largest, std::abs(ordinate));
        }
        for (std::size_t i = 0; i < path.size(); ++i) {
            REQUIRE(std::abs(line.ordinates[i].value - solved.ordinates[i]) <= 1e-9 * largest);
            if (!line.exact.empty()) {
                REQUIRE(std::abs(line.exact[i].value - line.ordinates[i].value) <= 1e-9 * largest);
            }
            ++ordinates;
        }
        sections += line.way == InfluenceWay::Section ? 1 : 0;
    }
    CHECK(ordinates > 800);
    CHECK(sections > 100);
}

TEST_CASE("the path sinks by the ordinates when the member's ends part by 1, or the support moves "
          "by 1 against its reaction") {
    int compared = 0;
    for (std::uint64_t seed = 0; seed < 60; ++seed) {
        const Truss truss = withSections(randomDeterminateTruss(seed), seed);
        const std::vector<JointId> path = pathThrough(truss, 4);
        if (path.size() < 2) {
            continue;
        }
        const MemberId member{static_cast<int>(seed % truss.members.size())};
        const InfluenceByHand line = influenceByHand(truss, path, forceIn(member));
        REQUIRE(line.end == InfluenceEnd::Complete);
        Truss moved = line.unloaded;
        moved.members[member.at()].misfit = 1;
        const Solution solution = solve(moved);
        REQUIRE(solution.displaced);
        const double unit = toMetre(moved.units.displacement);
        for (const InfluenceOrdinate& ordinate : line.ordinates) {
            INFO("seed " << seed);
            const double sinks = -solution.displacements[ordinate.at.at()].y / unit;
            REQUIRE(std::abs(sinks - ordinate.value) <= 1e-9 * (1 + std::abs(ordinate.value)));
            ++compared;
        }
    }
    CHECK(compared > 80);

    Truss truss = withSections(gable(), 0);
    const std::vector<JointId> path{findJoint(truss, "A"), findJoint(truss, "B")};
    const InfluenceByHand line = influenceByHand(truss, path, reactionAt(truss, "B"));
    REQUIRE(line.end == InfluenceEnd::Complete);
    truss.loads.clear();
    truss.supports.back().settleAlong = -1;
    const Solution solution = solve(truss);
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        const double unit = toMetre(truss.units.displacement);
        const double sinks = -solution.displacements[ordinate.at.at()].y / unit;
        CHECK(std::abs(sinks - ordinate.value) < 1e-12);
    }
}

TEST_CASE("a reaction's line is straight, one equation of moments for every place") {
    const Truss truss = redundantTrusses().front().truss; // 16 m; here without its middle support
    Truss simple = truss;
    simple.supports.erase(simple.supports.begin() + 1);
    std::vector<JointId> path;
    for (const char* label : {"A", "B", "C", "D", "E"}) {
        path.push_back(findJoint(simple, label));
    }
    const InfluenceByHand line = influenceByHand(simple, path, reactionAt(simple, "A"));
    REQUIRE(line.end == InfluenceEnd::Complete);
    CHECK(line.way == InfluenceWay::Reaction);
    CHECK(line.corners.empty());
    for (std::size_t i = 0; i < path.size(); ++i) {
        const Working& chain = line.ordinates[i].chain;
        REQUIRE(chain.steps.size() == 1);
        CHECK(chain.steps[0].kind == StepKind::ReactionMoment);
        CHECK(chain.steps[0].joint == findJoint(simple, "E"));
        CHECK(line.ordinates[i].value == 1 - 0.25 * static_cast<double>(i));
    }
    // The bottom chord beside midspan: moments about the top joint above it, a(L−a)/(L·h).
    const MemberId chord{static_cast<int>(memberAt(simple, "A", "B"))};
    const InfluenceByHand force = influenceByHand(simple, path, forceIn(chord));
    CHECK(force.way == InfluenceWay::Section);
    CHECK(std::abs(force.ordinates[1].value - 4.0 * 12 / (16 * 3)) < 1e-12);
    CHECK(force.corners == std::vector<JointId>{path[1]});
}

TEST_CASE("the one equation for a reaction gives the ordinates of every place, as it is printed") {
    int read = 0;
    for (std::uint64_t seed = 0; seed < 400; ++seed) {
        const Truss truss = randomDeterminateTruss(seed);
        std::vector<JointId> path = pathThrough(truss, 5);
        if (path.size() < 2) {
            continue;
        }
        if (seed % 2 == 0) {
            std::reverse(path.begin(), path.end());
        }
        for (const Support& support : truss.supports) {
            Effect effect = reactionAt(truss, "A");
            effect.joint = support.joint;
            const InfluenceByHand line = influenceByHand(truss, path, effect);
            if (line.end != InfluenceEnd::Complete || !line.law) {
                continue;
            }
            const auto passages = influencePassages({englishPhrases(), truss}, line);
            for (const InfluenceOrdinate& ordinate : line.ordinates) {
                INFO("seed " << seed << ", x = " << ordinate.place << "\n"
                             << passagesText(passages));
                REQUIRE(std::abs(valueAt(*line.law, ordinate.place) - ordinate.value) < 1e-9);
                REQUIRE(objectionToLaw(passages, line, ordinate) == "");
                ++read;
            }
        }
    }
    CHECK(read > 400);
}

TEST_CASE("the equation for a reaction reads as on the board") {
    Truss simple = redundantTrusses().front().truss; // 16 m from A to E
    simple.supports.erase(simple.supports.begin() + 1);
    std::vector<JointId> path;
    for (const char* label : {"B", "C", "D"}) {
        path.push_back(findJoint(simple, label));
    }
    const std::string text = lineTextOf(simple, path, reactionAt(simple, "A"));
    // The path begins 4 m from A, so E is 12 m from there.
    CHECK(contains(text, "\u03A3M_E = 0:  \u2212A_y\u2009\u00B7\u200916 + "
                         "1\u2009\u00B7\u2009(12 \u2212 x) = 0\n"));
    CHECK(contains(text, "    A_y = 0.75 \u2212 x/16\n"));
    CHECK(contains(text, "This holds from B, x = 0, to D, x = 8\u2009m.\n"));
    const std::string other = lineTextOf(simple, path, reactionAt(simple, "E"));
    CHECK(contains(other, "E_y\u2009\u00B7\u200916 \u2212 1\u2009\u00B7\u2009(x + 4) = 0\n"));
    CHECK(contains(other, "    E_y = 0.25 + x/16\n"));
}

TEST_CASE("no hand finds the influence line of these, and it is said why") {
    Truss truss = gable();
    const std::vector<JointId> path{findJoint(truss, "A"), findJoint(truss, "B")};
    Effect sag = reactionAt(truss, "C");
    sag.kind = EffectKind::Displacement;
    CHECK(contains(lineTextOf(truss, path, sag), "A displacement has no equation of equilibrium."));
    CHECK(contains(lineTextOf(truss, path, reactionAt(truss, "C")), "No support holds C"));
    CHECK(contains(lineTextOf(truss, path, reactionAt(truss, "B", true)), "No support holds B"));
    truss.supports.back().reaction = 60;
    CHECK(contains(lineTextOf(truss, path, reactionAt(truss, "B")), "or by one at an angle"));
    truss.supports.back().kind = SupportKind::Pin;
    CHECK(contains(lineTextOf(truss, path, reactionAt(truss, "A")),
                   "Equilibrium alone does not give"));
}
