#include "core/statement.hpp"
#include "model/catalogue/samples.hpp"
#include "model/catalogue/usual_materials.hpp"
#include "model/validate/validate.hpp"
#include "statics/solve/solution.hpp"
#include "support/reading/mock_language.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <cmath>
#include <limits>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::foreignWords;
using support::mockPhrases;

namespace {

Truss made(const SampleSpec& spec) {
    Outcome<Truss> truss = makeSample(englishPhrases(), spec);
    REQUIRE(truss.ok());
    return std::move(truss).value();
}

SampleSpec specOf(SampleForm form, int panels, LoadedChord loaded) {
    SampleSpec spec;
    spec.form = form;
    spec.panels = panels;
    spec.loaded = loaded;
    return spec;
}

} // namespace

TEST_CASE("every form with every number of panels is determinate and without a fault") {
    for (const SampleChoice& choice : sampleChoices()) {
        for (int panels = choice.fewestPanels; panels <= choice.mostPanels; ++panels) {
            for (const LoadedChord loaded : {LoadedChord::Upper, LoadedChord::Lower}) {
                const Truss truss = made(specOf(choice.form, panels, loaded));
                CAPTURE(choice.name.english, panels);
                const Findings findings = validate(truss);
                CHECK(findings.errors.empty());
                CHECK(findings.notes.empty()); // no crossing members, no loose joints
                CHECK(solve(truss).status == Status::Determinate);
            }
        }
    }
}

TEST_CASE("the load is shared evenly by the supports of the symmetric forms") {
    for (const SampleChoice& choice : sampleChoices()) {
        if (choice.form == SampleForm::Cantilever) {
            continue;
        }
        const Truss truss = made(specOf(choice.form, 6, choice.usual));
        const Solution solution = solve(truss);
        const double whole = 10000.0 * static_cast<double>(truss.loads.size()); // 10 kN a joint
        CAPTURE(choice.name.english);
        REQUIRE(solution.reactions.size() == 3);
        CHECK_THAT(solution.reactions[0], WithinAbs(0, 1e-6));
        CHECK_THAT(solution.reactions[1], WithinAbs(whole / 2, 1e-6));
        CHECK_THAT(solution.reactions[2], WithinAbs(whole / 2, 1e-6));
    }
}

TEST_CASE("Pratt's inner diagonals pull and Howe's push under a load on the lower chord") {
    // Four panels of 3 m, 3 m high, 10 kN on three joints: 15 kN at each support, so that the
    // second panel carries a shear of 5 kN and its diagonal 5·√2 kN.
    const auto diagonals = [](SampleForm form) {
        const Truss truss = made(specOf(form, 4, LoadedChord::Lower));
        const Solution solution = solve(truss);
        std::vector<double> forces;
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const Vec2 way = memberVector(truss, MemberId{static_cast<int>(i)});
            const bool toSupport =
                truss.members[i].a == JointId{0} || truss.members[i].b == JointId{4};
            if (way.x != 0 && way.y != 0 && !toSupport) {
                forces.push_back(solution.forces[i]);
            }
        }
        return forces;
    };
    const double expected = 5000 * std::sqrt(2.0);
    REQUIRE(diagonals(SampleForm::Pratt).size() == 2);
    for (const double force : diagonals(SampleForm::Pratt)) {
        CHECK_THAT(force, WithinAbs(expected, 1e-6));
    }
    REQUIRE(diagonals(SampleForm::Howe).size() == 2);
    for (const double force : diagonals(SampleForm::Howe)) {
        CHECK_THAT(force, WithinAbs(-expected, 1e-6));
    }
}

TEST_CASE("under an even load the diagonals of a parabolic bowstring have nothing to do") {
    // A parabola is the funicular curve of equal loads at equal distances.
    const Truss truss = made(specOf(SampleForm::Bowstring, 8, LoadedChord::Lower));
    const Solution solution = solve(truss);
    int diagonals = 0;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        const bool fromLowerToUpper = (member.a.index <= 8) != (member.b.index <= 8);
        const Vec2 way = memberVector(truss, MemberId{static_cast<int>(i)});
        const bool end = member.a == JointId{0} || member.b == JointId{8};
        if (fromLowerToUpper && way.x != 0 && !end) {
            ++diagonals;
            CHECK_THAT(solution.forces[i], WithinAbs(0, 1e-6));
        }
    }
    CHECK(diagonals == 6);
}

TEST_CASE("a panel count out of range is brought into it, a size that is none is refused") {
    CHECK(made(specOf(SampleForm::KBraced, 7, LoadedChord::Lower)).joints.size() ==
          made(specOf(SampleForm::KBraced, 6, LoadedChord::Lower)).joints.size());
    CHECK(made(specOf(SampleForm::Pratt, -4, LoadedChord::Lower)).joints.size() == 6);
    CHECK(made(specOf(SampleForm::Warren, 1000, LoadedChord::Lower)).joints.size() == 49);
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN(),
                             std::numeric_limits<double>::infinity()}) {
        SampleSpec spec;
        spec.span = bad;
        CHECK_FALSE(makeSample(englishPhrases(), spec).ok());
        spec = {};
        spec.rise = bad;
        CHECK_FALSE(makeSample(englishPhrases(), spec).ok());
    }
}

TEST_CASE("each load case of a form has its own load on the same joints") {
    SampleSpec spec = specOf(SampleForm::Howe, 6, LoadedChord::Upper);
    const Truss one = made(spec);
    spec.cases = {{"dead", 4}, {"snow", 6}, {"none", 0}};
    const Truss truss = made(spec);
    REQUIRE(truss.loads.size() == 2 * one.loads.size());
    for (std::size_t i = 0; i < one.loads.size(); ++i) {
        const auto& at = std::get<JointForce>(one.loads[i].what);
        const auto& dead = std::get<JointForce>(truss.loads[i].what);
        const auto& snow = std::get<JointForce>(truss.loads[one.loads.size() + i].what);
        CHECK(dead.joint == at.joint);
        CHECK(snow.joint == at.joint);
        CHECK(dead.fy == -4);
        CHECK(snow.fy == -6);
        CHECK(truss.loads[i].caseId == "dead");
        CHECK(truss.loads[one.loads.size() + i].caseId == "snow");
    }
    spec.cases[1].load = std::numeric_limits<double>::quiet_NaN();
    CHECK_FALSE(makeSample(englishPhrases(), spec).ok());
}

TEST_CASE(
    "in a language made up for it, what one starts from is called in it, and called in English "
    "as ever") {
    for (const SampleChoice& choice : sampleChoices()) {
        SampleSpec spec;
        spec.form = choice.form;
        const std::string title = made(spec).title;
        CHECK(title == std::string(choice.name.english) + " truss");
        const std::string spoken = makeSample(mockPhrases(), spec).value().title;
        CHECK(foreignWords(spoken, {}) == std::vector<std::string>{});
        CHECK(foreignWords(said(mockPhrases(), choice.name), {}) == std::vector<std::string>{});
    }
    CHECK(usualSteel(englishPhrases(), {}).id == "steel");
    CHECK(usualTimber(englishPhrases(), {}).id == "timber");
    for (const Material& usual : {usualSteel(mockPhrases(), {}), usualTimber(mockPhrases(), {})}) {
        CHECK_FALSE(usual.id.empty());
        CHECK(foreignWords(usual.id, {}) == std::vector<std::string>{});
    }
}
