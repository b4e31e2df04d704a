#include "core/statement.hpp"
#include "design/loading/outline.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/solve/solution.hpp"
#include "support/random.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <set>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// A roof with one load in each of these cases.
Truss loadedIn(const std::vector<LoadCase>& cases) {
    FormSpec form{.kind = FormKind::HoweRoof, .load = 0};
    Truss truss = makeForm(englishPhrases(), form).value();
    for (const LoadCase& of : cases) {
        truss.loads.push_back({JointForce{JointId{6}, 0, -1}, of.id, {}});
        truss.cases.push_back(of);
    }
    return truss;
}

using FactorsByCase = std::map<std::string, double>;

// Rounded to a ten-thousandth, so that sets of them can be compared.
std::set<FactorsByCase> factorsOf(const std::vector<Combination>& all,
                                  const std::string& limit = "", const std::string& by = "") {
    std::set<FactorsByCase> found;
    for (const Combination& one : all) {
        if (one.limit == limit && one.by.find(by) != std::string::npos) {
            FactorsByCase factors;
            for (const auto& [id, factor] : one.factors) {
                factors[id] = std::round(factor * 1e4) / 1e4;
            }
            found.insert(factors);
        }
    }
    return found;
}

std::vector<Combination> combined(const std::vector<LoadCase>& cases, CombinationRule rule) {
    CombinationWish wish;
    wish.rule = rule;
    return combinationsOf(englishPhrases(), loadedIn(cases), wish).value().combinations;
}

const std::vector<LoadCase> kRoofCases{
    {"G", "permanent", {}}, {"S", "snow", {}}, {"W", "wind", {}}};

} // namespace

TEST_CASE("the ψ factors are those of EN 1990:2002, table A1.1") {
    // Categories A to H, snow up to 1000 m and above it (countries that the table does not name),
    // wind: the recommended values, row by row.
    const std::map<std::string, std::array<double, 3>> table{
        {"imposed-a", {0.7, 0.5, 0.3}}, {"imposed-b", {0.7, 0.5, 0.3}},
        {"imposed-c", {0.7, 0.7, 0.6}}, {"imposed-d", {0.7, 0.7, 0.6}},
        {"imposed-e", {1.0, 0.9, 0.8}}, {"imposed-f", {0.7, 0.7, 0.6}},
        {"imposed-g", {0.7, 0.5, 0.3}}, {"imposed-h", {0, 0, 0}},
        {"snow", {0.5, 0.2, 0}},        {"snow-high", {0.7, 0.5, 0.2}},
        {"wind", {0.6, 0.2, 0}}};
    for (const auto& [word, psi] : table) {
        const CombinationFactors& found = ruleOf(actionNamed(word).value()).psi;
        CAPTURE(word);
        CHECK(std::array{found.combination, found.frequent, found.quasiPermanent} == psi);
    }
    CHECK_FALSE(actionNamed("earthquake"));
}

TEST_CASE("by EN 1990, 6.10, each variable action leads in turn, over heavy and light roofs") {
    // γ_G = 1.35 or 1.0, γ_Q = 1.5; ψ0 of snow 0.5 and of wind 0.6: 1.5 · 0.5 = 0.75 and
    // 1.5 · 0.6 = 0.9.
    const std::vector<Combination> made = combined(kRoofCases, CombinationRule::En610);
    const std::set<FactorsByCase> expected{
        {{"G", 1.35}},
        {{"G", 1.35}, {"S", 1.5}},
        {{"G", 1.35}, {"W", 1.5}},
        {{"G", 1.35}, {"S", 1.5}, {"W", 0.9}},
        {{"G", 1.35}, {"S", 0.75}, {"W", 1.5}},
        {{"G", 1}, {"S", 1.5}},
        {{"G", 1}, {"W", 1.5}},
        {{"G", 1}, {"S", 1.5}, {"W", 0.9}},
        {{"G", 1}, {"S", 0.75}, {"W", 1.5}},
    };
    CHECK(factorsOf(made) == expected);
    CHECK(factorsOf(made, "", "6.10") == expected);
}

TEST_CASE("by EN 1990, 6.10a and 6.10b, permanent actions are reduced when a variable one leads") {
    // 6.10a: 1.35 G + 1.5 ψ0 Q with ψ0 = 0.7; 6.10b: 0.85 · 1.35 = 1.1475 G + 1.5 Q.
    const std::vector<Combination> made =
        combined({{"G", "permanent", {}}, {"Q", "imposed-b", {}}}, CombinationRule::En610ab);
    CHECK(factorsOf(made, "", "6.10a") ==
          std::set<FactorsByCase>{{{"G", 1.35}}, {{"G", 1.35}, {"Q", 1.05}}});
    CHECK(factorsOf(made, "", "6.10b") == std::set<FactorsByCase>{{{"G", 1.1475}},
                                                                  {{"G", 1.1475}, {"Q", 1.5}},
                                                                  {{"G", 1}, {"Q", 1.5}}});
}

TEST_CASE("in service the actions are combined by EN 1990, 6.14b, 6.15b and 6.16b") {
    const std::vector<Combination> made = combined(kRoofCases, CombinationRule::En610);
    CHECK(factorsOf(made, "service", "6.14b") ==
          std::set<FactorsByCase>{{{"G", 1}},
                                  {{"G", 1}, {"S", 1}},
                                  {{"G", 1}, {"W", 1}},
                                  {{"G", 1}, {"S", 1}, {"W", 0.6}},
                                  {{"G", 1}, {"S", 0.5}, {"W", 1}}});
    CHECK(factorsOf(made, "service", "6.15b") ==
          std::set<FactorsByCase>{{{"G", 1}, {"S", 0.2}}, {{"G", 1}, {"W", 0.2}}});
}

TEST_CASE("by ASCE 7-16, 2.3.1, the five combinations of strength are written out") {
    // (1) 1.4D (2) 1.2D + 1.6L + 0.5(Lr or S) (3) 1.2D + 1.6(Lr or S) + (L or 0.5W)
    // (4) 1.2D + 1.0W + L + 0.5(Lr or S) (5) 0.9D + 1.0W, and with loads that are absent.
    const std::vector<Combination> made = combined(
        {{"D", "permanent", {}}, {"L", "imposed-b", {}}, {"S", "snow", {}}, {"W", "wind", {}}},
        CombinationRule::AsceLrfd);
    const std::set<FactorsByCase> expected{
        {{"D", 1.4}},
        {{"D", 1.2}, {"L", 1.6}},
        {{"D", 1.2}, {"S", 0.5}},
        {{"D", 1.2}, {"L", 1.6}, {"S", 0.5}},
        {{"D", 1.2}, {"S", 1.6}},
        {{"D", 1.2}, {"L", 1}, {"S", 1.6}},
        {{"D", 1.2}, {"S", 1.6}, {"W", 0.5}},
        {{"D", 1.2}, {"W", 1}},
        {{"D", 1.2}, {"L", 1}, {"W", 1}},
        {{"D", 1.2}, {"S", 0.5}, {"W", 1}},
        {{"D", 1.2}, {"L", 1}, {"S", 0.5}, {"W", 1}},
        {{"D", 0.9}, {"W", 1}},
    };
    CHECK(factorsOf(made) == expected);
}

TEST_CASE("by ASCE 7-16, 2.4.1, the seven combinations of allowable stress are written out") {
    // (1) D (2) D + L (3) D + (Lr or S) (4) D + 0.75L + 0.75(Lr or S) (5) D + 0.6W
    // (6) D + 0.75L + 0.75(0.6W) + 0.75(Lr or S) (7) 0.6D + 0.6W, and with loads that are absent.
    const std::vector<Combination> made = combined(
        {{"D", "permanent", {}}, {"L", "imposed-b", {}}, {"S", "snow", {}}, {"W", "wind", {}}},
        CombinationRule::AsceAsd);
    const std::set<FactorsByCase> expected{
        {{"D", 1}},
        {{"D", 1}, {"L", 1}},
        {{"D", 1}, {"S", 1}},
        {{"D", 1}, {"L", 0.75}, {"S", 0.75}},
        {{"D", 1}, {"W", 0.6}},
        {{"D", 1}, {"L", 0.75}, {"W", 0.45}},
        {{"D", 1}, {"S", 0.75}, {"W", 0.45}},
        {{"D", 1}, {"L", 0.75}, {"S", 0.75}, {"W", 0.45}},
        {{"D", 0.6}, {"W", 0.6}},
    };
    CHECK(factorsOf(made) == expected);
}

TEST_CASE("winds are alternatives, and roofs' imposed loads act without snow and, by EN, wind") {
    // EN 1991-1-1:2002, 3.3.2(1); ASCE 7-16, 2.3.1: "L_r or S or R".
    const std::vector<LoadCase> cases{{"G", "permanent", {}}, {"H", "imposed-h", {}},
                                      {"S1", "snow", {}},     {"S2", "snow", {}},
                                      {"left", "wind", {}},   {"right", "wind", {}}};
    for (const CombinationRule rule : {CombinationRule::En610, CombinationRule::En610ab,
                                       CombinationRule::AsceLrfd, CombinationRule::AsceAsd}) {
        const bool isEn = rule == CombinationRule::En610 || rule == CombinationRule::En610ab;
        int roofAndWind = 0;
        for (const Combination& one : combined(cases, rule)) {
            std::set<std::string> acts;
            for (const auto& [id, factor] : one.factors) {
                acts.insert(id);
            }
            CHECK(acts.count("left") + acts.count("right") <= 1);
            CHECK(acts.count("S1") + acts.count("S2") <= 1);
            CHECK(acts.count("H") + acts.count("S1") + acts.count("S2") <= 1);
            roofAndWind += acts.count("H") == 1 && acts.count("left") + acts.count("right") > 0;
        }
        CHECK((roofAndWind > 0) == !isEn);
    }
}

TEST_CASE("national values stand in place of the recommended ones") {
    CombinationWish wish;
    wish.national = {{CaseKind::Snow, {0.7, 0.5, 0.2}}};
    wish.permanentUp = 1.2;
    const auto made = combinationsOf(englishPhrases(), loadedIn(kRoofCases), wish).value();
    const std::set<FactorsByCase> all = factorsOf(made.combinations);
    CHECK(all.count({{"G", 1.2}, {"S", 1.05}, {"W", 1.5}}) == 1);
    CHECK(factorsOf(made.combinations, "service", "6.16b").count({{"G", 1}, {"S", 0.2}}) == 1);
}

TEST_CASE("what can't be combined is said: no kinds, strange factors, too many cases") {
    const auto refusal = [](const std::vector<LoadCase>& cases, const CombinationWish& wish) {
        const auto made = combinationsOf(englishPhrases(), loadedIn(cases), wish);
        REQUIRE_FALSE(made.ok());
        return said(englishPhrases(), made.issues().front().says);
    };
    CHECK(refusal({{"G", "", {}}}, {}).find("kind") != std::string::npos);
    CHECK(refusal(kRoofCases, {.variable = -1}).find("factors") != std::string::npos);
    std::vector<LoadCase> many{{"G", "permanent", {}}};
    for (int i = 0; i < 12; ++i) {
        many.push_back({"Q" + std::to_string(i), "imposed-a", {}});
    }
    CHECK(refusal(many, {}).find("more than 300") != std::string::npos);
    const auto made = combinationsOf(
        englishPhrases(), loadedIn({{"G", "permanent", {}}, {"crane", "machine", {}}}), {});
    CHECK(made.value().leftOut == std::vector<std::string>{"crane"});
}

TEST_CASE("a combination that gives no member its greatest force is told") {
    // All loads press on the same joint: the heaviest combination gives every force, and the
    // lightest no sign of its own.
    Truss truss = loadedIn({{"G", "permanent", {}}, {"S", "snow", {}}});
    truss.combinations = {{"light", {{"G", 1}}, {}},
                          {"heavy", {{"G", 1.35}, {"S", 1.5}}, {}},
                          {"use", {{"G", 1}, {"S", 1}}, {}, "", "service"}};
    CHECK(governing(truss).value() == std::vector<bool>{false, true, true});
    truss.loads.back().what = JointForce{JointId{6}, 0, 5}; // the second case lifts
    CHECK(governing(truss).value() == std::vector<bool>{true, true, true});
}

namespace {

Outline roofOf24() {
    Outline outline;
    outline.form = {.kind = FormKind::HoweRoof, .span = 24, .rise = 5, .panels = 10};
    outline.spacing = 6;
    return outline;
}

Vec2 sumOf(const std::vector<ChordShare>& shares) {
    Vec2 sum;
    for (const ChordShare& share : shares) {
        sum = sum + share.force;
    }
    return sum;
}

} // namespace

TEST_CASE("snow on plan comes to the joints by tributary lengths: half a panel at the eaves") {
    Outline outline = roofOf24();
    outline.loads = {{{"S", LoadSpread::AreaOnPlan, 1.2, 1.2}, "snow", LoadedChord::Upper}};
    const std::vector<ChordShare> shares = sharesOf(englishPhrases(), outline).front();
    REQUIRE(shares.size() == 11);
    // Panels of 2.4 m on plan, 6 m apart: 1.2 · 2.4 · 6 = 17.28 kN.
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const bool atEnd = i == 0 || i == 10;
        CHECK_THAT(shares[i].plan, WithinAbs(atEnd ? 1.2 : 2.4, 1e-12));
        CHECK_THAT(shares[i].force.y, WithinAbs(atEnd ? -8.64 : -17.28, 1e-12));
    }
    CHECK_THAT(sumOf(shares).y, WithinAbs(-1.2 * 24 * 6, 1e-9));
}

TEST_CASE("no form leaves out a part of a load on plan: what is on the span is on its joints") {
    for (const FormChoice& choice : formChoices()) {
        if (choice.kind == FormKind::Tower) { // its chords stand
            continue;
        }
        for (int panels = choice.fewestPanels; panels <= std::min(choice.mostPanels, 9); ++panels) {
            if (choice.evenPanels && panels % 2 != 0) {
                continue;
            }
            for (const LoadedChord on : {LoadedChord::Upper, LoadedChord::Lower}) {
                Outline outline;
                outline.form = {.kind = choice.kind, .span = 18, .rise = 3, .panels = panels};
                outline.spacing = 5;
                outline.loads = {{{"S", LoadSpread::AreaOnPlan, 0.8, 0.8}, "snow", on}};
                const Vec2 sum = sumOf(sharesOf(englishPhrases(), outline).front());
                INFO(choice.name.english << ", " << panels << ", upper "
                                         << (on == LoadedChord::Upper));
                CHECK_THAT(sum.y, WithinAbs(-0.8 * 5 * 18, 1e-9));
                CHECK_THAT(sum.x, WithinAbs(0, 1e-9));
            }
        }
    }
}

TEST_CASE(
    "the rafters of a Fink, king post, queen post and scissors roof are loaded to the eaves") {
    for (const FormKind kind : {FormKind::Fink, FormKind::KingPost, FormKind::QueenPostRoof,
                                FormKind::Scissors, FormKind::CompoundFink}) {
        Outline outline;
        outline.form = {.kind = kind, .span = 8, .rise = 3};
        outline.spacing = 5;
        outline.loads = {
            {{"G", LoadSpread::AreaOnSlope, 0.6, 0.6}, "permanent", LoadedChord::Upper},
            {{"W", LoadSpread::AreaNormal, 0.5, -0.2}, "wind", LoadedChord::Upper}};
        const auto shares = sharesOf(englishPhrases(), outline);
        CHECK_THAT(sumOf(shares[0]).y, WithinAbs(-0.6 * 5 * 2 * 5, 1e-9)); // rafters of 5 m: 4, 3
        // Square to it: down by its length on plan, 4 m; across by its height, 3 m.
        CHECK_THAT(sumOf(shares[1]).y, WithinAbs(-(0.5 - 0.2) * 5 * 4, 1e-9));
        CHECK_THAT(sumOf(shares[1]).x, WithinAbs((0.5 + 0.2) * 5 * 3, 1e-9));
    }
}

TEST_CASE("tiles weigh along the slope, wind presses square to it, each slope with its own") {
    Outline outline = roofOf24();
    outline.loads = {{{"G", LoadSpread::AreaOnSlope, 0.5, 0.5}, "permanent", LoadedChord::Upper},
                     {{"W", LoadSpread::AreaNormal, 0.4, -0.3}, "wind", LoadedChord::Upper},
                     {{"L", LoadSpread::LineOnPlan, 2, 2}, "", LoadedChord::Lower},
                     {{"C", LoadSpread::PerJoint, 3, 3}, "", LoadedChord::Lower}};
    const auto shares = sharesOf(englishPhrases(), outline);
    // Rafters of 13 m: 5 on 12.
    CHECK_THAT(sumOf(shares[0]).y, WithinAbs(-0.5 * 26 * 6, 1e-9));
    // 13 m · 6 m of each slope; pressure on the left pushes right and down, suction on the right
    // pulls right and up: H = (0.4 + 0.3) · 6 · 5, V = (−0.4 + 0.3) · 6 · 12.
    CHECK_THAT(sumOf(shares[1]).x, WithinAbs(0.7 * 6 * 5, 1e-9));
    CHECK_THAT(sumOf(shares[1]).y, WithinAbs(-0.1 * 6 * 12, 1e-9));
    CHECK_THAT(sumOf(shares[2]).y, WithinAbs(-48, 1e-9));
    CHECK_THAT(sumOf(shares[3]).y, WithinAbs(-27, 1e-9)); // eleven joints, two of them held
}

TEST_CASE("the loads of an outline stand while none of them is changed; others may be added") {
    Outline outline = roofOf24();
    outline.loads = {{{"S", LoadSpread::AreaOnPlan, 1.2, 1.2}, "snow", LoadedChord::Upper}};
    outline.selfWeight = "G";
    const Truss made = trussOf(englishPhrases(), outline).value();
    CHECK(carriesLoadsOf(englishPhrases(), made, outline));
    Truss more = made;
    more.loads.push_back(made.loads.front());
    more.loads.back().caseId = "hoist";
    CHECK(carriesLoadsOf(englishPhrases(), more, outline));
    Truss other = made;
    std::get<JointForce>(other.loads[3].what).fy -= 1;
    CHECK_FALSE(carriesLoadsOf(englishPhrases(), other, outline));
    Truss light = made;
    light.loads.pop_back(); // the own weight
    CHECK_FALSE(carriesLoadsOf(englishPhrases(), light, outline));
    Truss moved = made;
    moved.joints[2].at.y += 0.5;
    CHECK_FALSE(carriesLoadsOf(englishPhrases(), moved, outline));
}

TEST_CASE("a load without units has none on the area either") {
    CHECK(unitOf(LoadSpread::AreaNormal, Units{}) == "kN/m²");
    CHECK(unitOf(LoadSpread::LineOnSlope, Units{}) == "kN/m");
    CHECK(unitOf(LoadSpread::PerJoint, Units{}) == "kN");
    Units bare;
    bare.force = ForceUnit::Plain;
    CHECK(unitOf(LoadSpread::AreaNormal, bare).empty());
}

TEST_CASE("the supports of a truss from an outline carry what stands on it, in each case") {
    support::Random random(20261130);
    for (int i = 0; i < 200; ++i) {
        const auto choices = formChoices();
        const FormChoice& choice = choices[std::size_t(random.integer(0, int(choices.size()) - 1))];
        Outline outline;
        outline.form = {.kind = choice.kind,
                        .span = double(random.integer(6, 30)),
                        .rise = double(random.integer(1, 3)) / 1.25,
                        .panels = random.integer(choice.fewestPanels, choice.mostPanels)};
        outline.form.panels -= choice.evenPanels ? outline.form.panels % 2 : 0;
        outline.spacing = random.integer(2, 8);
        for (const LoadSpread spread :
             {LoadSpread::AreaOnPlan, LoadSpread::AreaOnSlope, LoadSpread::AreaNormal}) {
            outline.loads.push_back({{std::to_string(int(spread)), spread,
                                      random.integer(1, 9) / 4.0, random.integer(1, 9) / 4.0},
                                     spread == LoadSpread::AreaNormal ? "wind" : "snow",
                                     LoadedChord::Upper});
        }
        const Outcome<Truss> made = trussOf(englishPhrases(), outline);
        REQUIRE(made.ok());
        const auto shares = sharesOf(englishPhrases(), outline);
        for (std::size_t k = 0; k < shares.size(); ++k) {
            const Solution solution = solve(made.value(), OneCase{outline.loads[k].load.caseId});
            CAPTURE(choice.name.english, k);
            REQUIRE(solution.status == Status::Determinate);
            Vec2 held;
            std::size_t next = 0;
            for (const Support& support : made.value().supports) {
                const bool isPin = support.kind == SupportKind::Pin;
                if (isPin) {
                    held = held + Vec2{solution.reactions[next], solution.reactions[next + 1]};
                } else {
                    held = held + solution.reactions[next] * directionOf(support.reaction);
                }
                next += isPin ? 2 : 1;
            }
            const Vec2 sum = 1000.0 * sumOf(shares[k]);
            CHECK_THAT(held.x + sum.x, WithinAbs(0, 1e-4));
            CHECK_THAT(held.y + sum.y, WithinAbs(0, 1e-4));
        }
    }
}

TEST_CASE("an outline brings its kinds of cases and its combinations, and knows its own truss") {
    Outline outline = roofOf24();
    outline.loads = {{{"G", LoadSpread::AreaOnSlope, 0.5, 0.5}, "permanent", LoadedChord::Upper},
                     {{"S", LoadSpread::AreaOnPlan, 1, 1}, "snow", LoadedChord::Upper}};
    outline.selfWeight = "G";
    outline.rule = CombinationWish{};
    Truss truss = trussOf(englishPhrases(), outline).value();
    REQUIRE(truss.cases.size() == 2);
    CHECK(truss.cases[1].kind == "snow");
    CHECK(factorsOf(truss.combinations).count({{"G", 1.35}, {"S", 1.5}}) == 1);
    CHECK(std::holds_alternative<SelfWeight>(truss.loads.back().what));
    CHECK(isUntouched(englishPhrases(), truss, outline));
    truss.members[3].section = "CHS"; // sections and loads may change
    truss.loads.clear();
    CHECK(isUntouched(englishPhrases(), truss, outline));
    truss.joints[3].at.y += 0.01;
    CHECK_FALSE(isUntouched(englishPhrases(), truss, outline));
}

TEST_CASE("an impossible outline is refused with its cure") {
    const auto refusal = [](const Outline& outline) {
        const Outcome<Truss> made = trussOf(englishPhrases(), outline);
        REQUIRE_FALSE(made.ok());
        return said(englishPhrases(), made.issues().front().says);
    };
    Outline outline = roofOf24();
    outline.spacing = 0;
    CHECK(refusal(outline).find("distance between trusses") != std::string::npos);
    outline = roofOf24();
    outline.loads = {{{"S", LoadSpread::AreaOnPlan, -1, 1}, "snow", LoadedChord::Upper}};
    CHECK(refusal(outline).find("only wind") != std::string::npos);
    outline.loads[0].kind = "wind";
    CHECK(trussOf(englishPhrases(), outline).ok());
    outline.loads[0].load.left = 1e200;
    CHECK(refusal(outline).find("reasonable size") != std::string::npos);
    outline = roofOf24();
    outline.form.rise = -1;
    CHECK(refusal(outline).find("greater than zero") != std::string::npos);
}
