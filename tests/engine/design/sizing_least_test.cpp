#include "support/trusses/roofs.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

// The least mass of all choices that pass, by trying each.
std::optional<double> exhaustive(const Truss& truss, const SizingWish& wish) {
    std::vector<std::size_t> choice(wish.groups.size(), 0);
    std::optional<double> least;
    Truss with = truss;
    with.sections = wish.groups.front().profiles;
    for (bool more = true; more;) {
        for (std::size_t g = 0; g < choice.size(); ++g) {
            for (const MemberId member : wish.groups[g].members) {
                with.members[member.at()].section = wish.groups[g].profiles[choice[g]].id;
            }
        }
        double mass = 0;
        for (const double each : massesOf(with)) {
            mass += each;
        }
        const bool mayBeLess = !least || mass < *least;
        const auto choices = strengthChoices(with);
        if (mayBeLess) {
            const MemberChecks checks =
                checkMembers(with, envelopeOf(with, choices).value(), choices);
            const bool isStiff =
                wish.deflection == 0 || deflectionOf(with, serviceChoices(with)) <= wish.deflection;
            if (checks.over + checks.slender + checks.unchecked == 0 && isStiff) {
                least = mass;
            }
        }
        more = false;
        for (std::size_t g = 0; g < choice.size() && !more; ++g) {
            more = ++choice[g] < wish.groups[g].profiles.size();
            choice[g] = more ? choice[g] : 0;
        }
    }
    return least;
}

} // namespace

TEST_CASE("on small determinate trusses the lightest choice is that of an exhaustive search") {
    support::Random random(20261702);
    int compared = 0;
    for (int i = 0; i < 12; ++i) {
        Outline outline = randomRoof(random);
        outline.selfWeight = "";
        outline.form.panels = 4;
        const Truss truss = roofOf(outline);
        SizingWish wish;
        std::vector<Section> few = tubes();
        few.erase(few.begin() + 7, few.end());
        wish.groups = groupsByRole(englishPhrases(), truss, few);
        const std::optional<double> least = exhaustive(truss, wish);
        const Sizing sizing = lightest(truss, wish).value();
        REQUIRE(sizing.isEnough == least.has_value());
        if (least) {
            ++compared;
            CHECK_THAT(sizing.mass, WithinRel(*least, 1e-9));
        }
    }
    CHECK(compared >= 6);
}

TEST_CASE("in indeterminate trusses no group alone can be lighter; how far it is from the least") {
    support::Random random(20261703);
    double sum = 0;
    double most = 0;
    int compared = 0;
    int missed = 0;
    for (int i = 0; i < 10; ++i) {
        Outline outline = randomRoof(random);
        outline.form.kind = FormKind::Pratt;
        outline.form.panels = 4;
        Truss truss = roofOf(outline);
        Member counter; // the other diagonal of the second panel
        counter.a = JointId{1};
        counter.b = JointId{6};
        truss.members.push_back(counter);
        Member another;
        another.a = JointId{3};
        another.b = JointId{6};
        truss.members.push_back(another);
        std::vector<Section> few = tubes();
        few.erase(few.begin() + 6, few.end());
        SizingWish wish;
        wish.groups = groupsByRole(englishPhrases(), truss, few);
        const std::optional<double> least = exhaustive(truss, wish);
        const Sizing sizing = lightest(truss, wish).value();
        if (!least || !sizing.isEnough) {
            CHECK(!sizing.isEnough);
            missed += least ? 1 : 0;
            continue;
        }
        ++compared;
        const double ratio = sizing.mass / *least;
        CHECK(ratio > 1 - 1e-9);
        sum += ratio;
        most = std::max(most, ratio);
    }
    REQUIRE(compared > 0);
    CHECK(missed == 0);
    std::printf(
        "sizing: %d indeterminate trusses, mass over the least of all: mean %.4f, most %.4f\n",
        compared, sum / compared, most);
}

TEST_CASE("a limit on deflection makes profiles heavier until it is met, and says so") {
    Outline outline;
    outline.form = {.kind = FormKind::Warren, .span = 12, .rise = 1, .panels = 6};
    outline.spacing = 4;
    outline.loads = {{{"G", LoadSpread::LineOnPlan, 3, 3}, "permanent", LoadedChord::Lower},
                     {{"S", LoadSpread::LineOnPlan, 4, 4}, "snow", LoadedChord::Lower}};
    outline.rule = CombinationWish{};
    const Truss truss = roofOf(outline);
    SizingWish wish;
    wish.groups = groupsByRole(englishPhrases(), truss, tubes());
    const Sizing strong = lightest(truss, wish).value();
    REQUIRE(strong.isEnough);
    wish.deflection = 0.7 * *strong.deflection;
    const Sizing stiff = lightest(truss, wish).value();
    CHECK(stiff.isEnough);
    CHECK(*stiff.deflection <= wish.deflection);
    CHECK(stiff.mass > strong.mass);
    CHECK(std::any_of(stiff.path.begin(), stiff.path.end(), [](const SizingStep& step) {
        return step.reason == SizingReason::Deflection;
    }));
    CHECK_THAT(exhaustive(truss, wish).value() / stiff.mass, WithinAbs(1, 0.1));
}

TEST_CASE(
    "a limit on deflection that the heaviest profiles meet is met, past profiles of one weight") {
    Outline outline;
    outline.form = {.kind = FormKind::Warren, .span = 12, .rise = 1, .panels = 6};
    outline.loads = {{{"G", LoadSpread::LineOnPlan, 3, 3}, "permanent", LoadedChord::Lower}};
    outline.rule = CombinationWish{};
    const Truss truss = roofOf(outline);
    std::vector<Section> profiles = tubes();
    for (const Section& tube : tubes()) { // each twice
        profiles.push_back(tube);
        profiles.back().id += " again";
    }
    SizingWish wish;
    wish.groups = groupsByRole(englishPhrases(), truss, profiles);
    SizingWish heaviest = wish;
    for (SizingGroup& group : heaviest.groups) {
        group.profiles = {tubes().back()};
    }
    wish.deflection = 1.001 * *lightest(truss, heaviest).value().deflection;
    const Sizing sizing = lightest(truss, wish).value();
    CHECK(sizing.isEnough);
    CHECK(*sizing.deflection <= wish.deflection);
}

TEST_CASE(
    "a limit on deflection is not met where a member has no stiffness, nor is a mechanism sized") {
    Outline outline;
    outline.form = {.kind = FormKind::HoweRoof, .span = 12, .rise = 3, .panels = 4};
    outline.loads = {{{"G", LoadSpread::LineOnPlan, 3, 3}, "permanent", LoadedChord::Upper}};
    Truss truss = roofOf(outline);
    SizingWish wish;
    wish.groups = groupsByRole(englishPhrases(), truss, tubes());
    wish.deflection = 0.05;
    CHECK(lightest(truss, wish).value().isEnough);
    wish.groups.front().members.pop_back();
    const Sizing sizing = lightest(truss, wish).value();
    CHECK_FALSE(sizing.deflection);
    CHECK_FALSE(sizing.isEnough);
    truss.joints.push_back({"Z", {14, -2}, {}});
    truss.members.push_back({JointId{0}, JointId{static_cast<int>(truss.joints.size()) - 1}, ""});
    REQUIRE_FALSE(lightest(truss, wish));
}
