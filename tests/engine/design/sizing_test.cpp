#include "statics/solve/solution.hpp"
#include "support/trusses/roofs.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <numbers>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// EN 1993-1-1:2005, 6.2.3 (6.6), 6.2.4 (6.10) and 6.3.1.1 (6.47) with curve a, written anew: N, m.
double utilisation(double force, double length, double diameter, double wall) {
    const double pi = std::numbers::pi;
    const double inner = diameter - 2 * wall;
    const double area = pi / 4 * (diameter * diameter - inner * inner);
    const double moment = pi / 64 * (std::pow(diameter, 4) - std::pow(inner, 4));
    const double plastic = area * 235e6;
    if (force >= 0) {
        return force / plastic;
    }
    const double critical = pi * pi * 210e9 * moment / (length * length);
    const double bar = std::sqrt(plastic / critical);
    const double phi = 0.5 * (1 + 0.21 * (bar - 0.2) + bar * bar);
    const double chi = std::min(1.0, 1 / (phi + std::sqrt(phi * phi - bar * bar)));
    return -force / (chi * plastic);
}

double dimension(const Section& section, const char* key) {
    for (const auto& [name, value] : section.dimensions) {
        if (name == key) {
            return value / 100;
        }
    }
    return 0;
}

// The greatest utilisation of a group's members with one of the tubes, each combination of strength
// solved by itself.
double worstUse(const Truss& truss, const SizingGroup& group, const Section& tube) {
    Truss with = truss;
    for (const MemberId member : group.members) {
        with.members[member.at()].section = tube.id;
    }
    if (std::none_of(with.sections.begin(), with.sections.end(),
                     [&](const Section& it) { return it.id == tube.id; })) {
        with.sections.push_back(tube);
    }
    double worst = 0;
    for (const LoadChoice& choice : strengthChoices(with)) {
        const Solution solution = solve(with, choice);
        REQUIRE(solution.solved);
        for (const MemberId member : group.members) {
            const Vec2 way = memberVector(with, member);
            worst =
                std::max(worst, utilisation(solution.forces[member.at()], std::hypot(way.x, way.y),
                                            dimension(tube, "D"), dimension(tube, "t")));
        }
    }
    return worst;
}

} // namespace

TEST_CASE("300 random roofs: the profiles pass an independent check, and the next lighter fails") {
    support::Random random(20261701);
    int enough = 0;
    for (int i = 0; i < 300; ++i) {
        const Truss truss = roofOf(randomRoof(random));
        SizingWish wish;
        wish.groups = groupsByRole(englishPhrases(), truss, tubes());
        const Outcome<Sizing> made = lightest(truss, wish);
        REQUIRE(made.ok());
        const Sizing& sizing = made.value();
        enough += sizing.isEnough ? 1 : 0;
        for (std::size_t g = 0; g < wish.groups.size(); ++g) {
            const SizedGroup& sized = sizing.groups[g];
            const std::vector<Section> all = tubes(); // from the lightest
            const auto chosen = std::find_if(
                all.begin(), all.end(), [&](const Section& it) { return it.id == sized.profile; });
            CAPTURE(i, wish.groups[g].name, sized.profile);
            const double use = worstUse(sizing.truss, wish.groups[g], *chosen);
            CHECK((use <= 1 + 1e-9) == sized.isEnough);
            CHECK_THAT(sized.use, WithinRel(use, 1e-6) || WithinAbs(use, 1e-9));
            if (sized.isEnough && chosen != all.begin()) {
                CHECK(sized.nextLighter == std::prev(chosen)->id);
                CHECK(worstUse(sizing.truss, wish.groups[g], *std::prev(chosen)) > 1 - 1e-9);
            } else if (!sized.isEnough) {
                CHECK(chosen == std::prev(all.end())); // the heaviest that there is
            }
        }
    }
    std::printf("sizing: of 300 random roofs, %d found profiles for all groups\n", enough);
    CHECK(enough > 200);
}

TEST_CASE("with fewer different profiles the mass never falls, and with all it is the sizing's") {
    support::Random random(20261704);
    Outline outline = randomRoof(random);
    outline.form.kind = FormKind::HoweRoof;
    outline.selfWeight = "";
    const Truss truss = roofOf(outline);
    SizingWish wish;
    wish.groups = groupsByRole(englishPhrases(), truss, tubes());
    const Sizing sizing = lightest(truss, wish).value();
    REQUIRE(sizing.isEnough);
    const auto masses = massByProfiles(sizing, wish);
    REQUIRE(masses.size() == wish.groups.size());
    for (std::size_t k = 1; k < masses.size(); ++k) {
        CHECK(*masses[k] <= *masses[k - 1]);
    }
    CHECK_THAT(*masses.back(), WithinRel(sizing.mass, 1e-9));
}

TEST_CASE("what can't be sized is said: no profiles, no mass, no profile that is enough") {
    support::Random random(20261705);
    Outline outline = randomRoof(random);
    const Truss truss = roofOf(outline);
    SizingWish wish;
    wish.groups = groupsByRole(englishPhrases(), truss, tubes());
    const auto refusal = [&](const SizingWish& asked) {
        const Outcome<Sizing> made = lightest(truss, asked);
        REQUIRE_FALSE(made.ok());
        return said(englishPhrases(), made.issues().front().says);
    };
    SizingWish without = wish;
    without.groups[1].profiles.clear();
    CHECK(refusal(without).find("no profile to choose from") != std::string::npos);
    without = wish;
    without.groups[0].profiles[2].material = "unknown";
    CHECK(refusal(without).find("weighed") != std::string::npos);
    SizingWish thin = wish;
    for (SizingGroup& group : thin.groups) {
        group.profiles.erase(group.profiles.begin() + 1, group.profiles.end());
    }
    Truss heavy = truss;
    for (Load& load : heavy.loads) {
        if (auto* force = std::get_if<JointForce>(&load.what)) {
            force->fy *= 100;
        }
    }
    const Sizing sizing = lightest(heavy, thin).value();
    CHECK_FALSE(sizing.isEnough);
    CHECK(std::any_of(sizing.groups.begin(), sizing.groups.end(),
                      [](const SizedGroup& group) { return !group.isEnough && group.use > 1; }));
}

// S. Rajeev and C. S. Krishnamoorthy, "Discrete optimization of structures using genetic
// algorithms", Journal of Structural Engineering 118 (1992), no. 5, pp. 1233–1250: ten members,
// E = 10⁴ ksi, 0.1 lb/in³, stress ±25 ksi, displacements ±2 in, 100 kip down at two joints of the
// lower chord, 42 areas; their best 5613.84 lb. The least known since for these areas: 5490.74 lb
// (values from memory).
TEST_CASE("the ten-member truss of Rajeev and Krishnamoorthy: how heavy it comes out") {
    Truss truss;
    truss.units.force = ForceUnit::kip;
    truss.units.length = truss.units.section = LengthUnit::in;
    truss.units.stress = StressUnit::ksi;
    truss.joints = {{"A", {720, 360}, {}}, {"B", {720, 0}, {}}, {"C", {360, 360}, {}},
                    {"D", {360, 0}, {}},   {"E", {0, 360}, {}}, {"F", {0, 0}, {}}};
    constexpr std::array<std::pair<int, int>, 10> kEnds{
        {{4, 2}, {2, 0}, {5, 3}, {3, 1}, {2, 3}, {0, 1}, {4, 3}, {5, 2}, {2, 1}, {3, 0}}};
    for (const auto& [a, b] : kEnds) {
        Member member;
        member.a = JointId{a};
        member.b = JointId{b};
        truss.members.push_back(member);
    }
    for (const int joint : {4, 5}) {
        Support pin;
        pin.joint = JointId{joint};
        truss.supports.push_back(pin);
    }
    truss.loads = {{JointForce{JointId{1}, 0, -100}, {}, {}},
                   {JointForce{JointId{3}, 0, -100}, {}, {}}};
    Material metal;
    metal.id = "metal";
    metal.E = 1e4;
    metal.strength = 25;
    metal.density = 2767.990471; // 0.1 lb/in³
    truss.materials = {metal};
    truss.checks.formula = ColumnFormula::Euler;
    truss.checks.strengthFactor = 1;
    truss.checks.eulerFactor = 1;
    truss.checks.tensionLimit = truss.checks.compressionLimit = 0;
    SizingWish wish;
    wish.deflection = 2 * 0.0254;
    for (int i = 0; i < 10; ++i) {
        SizingGroup group{std::to_string(i + 1), {MemberId{i}}, {}};
        for (const double area :
             {1.62, 1.80, 1.99, 2.13, 2.38, 2.62, 2.63, 2.88, 2.93, 3.09, 3.13, 3.38, 3.47, 3.55,
              3.63, 3.84, 3.87, 3.88, 4.18, 4.22, 4.49, 4.59, 4.80, 4.97, 5.12, 5.74, 7.22, 7.97,
              11.5, 13.5, 13.9, 14.2, 15.5, 16.0, 16.9, 18.8, 19.9, 22.0, 22.9, 26.5, 30.0, 33.5}) {
            Section bar;
            bar.id = std::to_string(area);
            bar.material = "metal";
            bar.area = area;
            bar.radius = 1e4; // the benchmark knows no buckling
            group.profiles.push_back(bar);
        }
        wish.groups.push_back(group);
    }
    const Sizing sizing = lightest(truss, wish).value();
    CHECK(sizing.isEnough);
    const double pounds = sizing.mass / 0.45359237;
    std::printf("sizing: ten-member truss %.2f lb; published 5613.84 (1992), least known 5490.74\n",
                pounds);
    CHECK(pounds > 5490.7);
    CHECK(pounds < 5613.84 * 1.1);
}
