#include "core/statement.hpp"
#include "model/catalogue/usual_materials.hpp"
#include "model/forms/forms.hpp"
#include "model/validate/validate.hpp"
#include "statics/solve/solution.hpp"
#include "support/reading/mock_language.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace gusset;
using Catch::Matchers::WithinAbs;
using support::foreignWords;
using support::mockPhrases;

namespace {

Truss made(const FormSpec& spec) {
    Outcome<Truss> truss = makeForm(englishPhrases(), spec);
    REQUIRE(truss.ok());
    return std::move(truss).value();
}

FormSpec specOf(FormKind form, int panels, LoadedChord loaded) {
    FormSpec spec;
    spec.kind = form;
    spec.panels = panels;
    spec.loaded = loaded;
    return spec;
}

} // namespace

TEST_CASE("every form with every number of panels is determinate and without a fault") {
    for (const FormChoice& choice : formChoices()) {
        for (int panels = choice.fewestPanels; panels <= choice.mostPanels;
             panels += choice.evenPanels ? 2 : 1) {
            for (const LoadedChord loaded : {LoadedChord::Upper, LoadedChord::Lower}) {
                const Truss truss = made(specOf(choice.kind, panels, loaded));
                CAPTURE(choice.name.english, panels);
                const Findings findings = validate(truss);
                CHECK(findings.errors.empty());
                CHECK(findings.notes.empty()); // no crossing members, no loose joints
                CHECK(solve(truss).status == Status::Determinate);
            }
        }
    }
}

TEST_CASE("a number of panels that a form can't have is refused in words, with those it can") {
    const auto faultOf = [](FormKind kind, int panels) {
        const Outcome<Truss> made =
            makeForm(englishPhrases(), specOf(kind, panels, LoadedChord::Lower));
        return made ? std::string{} : said(englishPhrases(), made.issues().front().says);
    };
    CHECK(faultOf(FormKind::Pratt, 60) == "this form has 3 to 24 panels, and 60 are asked for");
    CHECK(faultOf(FormKind::Pratt, -5) == "this form has 3 to 24 panels, and -5 are asked for");
    CHECK(faultOf(FormKind::HoweRoof, 7) ==
          "this form has an even number of panels, 4 to 24, and 7 are asked for");
    CHECK(faultOf(FormKind::HoweRoof, 8).empty());
    CHECK(faultOf(FormKind::KingPost, 8).empty()); // it has no choice
}

TEST_CASE("the load is shared evenly by the supports of the symmetric forms") {
    for (const FormChoice& choice : formChoices()) {
        if (choice.kind == FormKind::Cantilever || choice.kind == FormKind::MonoPitch ||
            choice.kind == FormKind::Tower) {
            continue;
        }
        const Truss truss = made(specOf(choice.kind, 6, choice.usual));
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
    const auto diagonals = [](FormKind form) {
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
    REQUIRE(diagonals(FormKind::Pratt).size() == 2);
    for (const double force : diagonals(FormKind::Pratt)) {
        CHECK_THAT(force, WithinAbs(expected, 1e-6));
    }
    REQUIRE(diagonals(FormKind::Howe).size() == 2);
    for (const double force : diagonals(FormKind::Howe)) {
        CHECK_THAT(force, WithinAbs(-expected, 1e-6));
    }
}

TEST_CASE("under an even load the diagonals of a parabolic bowstring have nothing to do") {
    // A parabola is the funicular curve of equal loads at equal distances.
    const Truss truss = made(specOf(FormKind::Bowstring, 8, LoadedChord::Lower));
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

namespace {

// The forces of the members that are neither level nor upright nor part of the chords.
std::vector<double> websOf(const FormSpec& spec, bool upright) {
    const Truss truss = made(spec);
    const FormLaid laid = layForm(englishPhrases(), spec).value();
    const Solution solution = solve(truss);
    REQUIRE(solution.status == Status::Determinate);
    const auto isIn = [](const std::vector<JointId>& chord, JointId joint) {
        return std::find(chord.begin(), chord.end(), joint) != chord.end();
    };
    std::vector<double> forces;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        const bool inChord = (isIn(laid.upper, member.a) && isIn(laid.upper, member.b)) ||
                             (isIn(laid.lower, member.a) && isIn(laid.lower, member.b));
        const bool isUpright = memberVector(truss, MemberId{static_cast<int>(i)}).x == 0;
        if (!inChord && isUpright == upright) {
            forces.push_back(solution.forces[i]);
        }
    }
    return forces;
}

} // namespace

TEST_CASE("under a load on the rafters, a Howe roof's diagonals push and a Pratt roof's pull") {
    // The usual definition of the two: a Howe truss has its posts, a Pratt truss its diagonals in
    // tension (common practice).
    for (const int panels : {4, 6, 8, 10, 16}) {
        FormSpec spec = specOf(FormKind::HoweRoof, panels, LoadedChord::Upper);
        for (const double force : websOf(spec, false)) {
            CHECK(force < 0);
        }
        for (const double force : websOf(spec, true)) {
            CHECK(force > -1e-6);
        }
        spec.kind = FormKind::PrattRoof;
        for (const double force : websOf(spec, false)) {
            CHECK(force > 0);
        }
    }
}

TEST_CASE("with any heel, raised tie and overhang that it takes, a form stays determinate") {
    for (const FormChoice& choice : formChoices()) {
        for (const double heel : {0.0, 0.4}) {
            for (const double tie : {0.0, 1.1}) {
                for (const double overhang : {0.0, 0.7}) {
                    FormSpec spec = specOf(choice.kind, 8, choice.usual);
                    spec.sizes = {heel, tie, heel > 0 ? overhang : 0, 0.9, 5};
                    const Truss truss = made(spec);
                    CAPTURE(choice.name.english, heel, tie, overhang);
                    CHECK(validate(truss).errors.empty());
                    CHECK(validate(truss).notes.empty());
                    CHECK(solve(truss).status == Status::Determinate);
                }
            }
        }
    }
}

TEST_CASE("an overhang carries the rafter on in its own line, and is loaded too") {
    FormSpec spec = specOf(FormKind::HoweRoof, 4, LoadedChord::Upper);
    spec.sizes[std::size_t(FormSize::Heel)] = 0.5;
    spec.sizes[std::size_t(FormSize::Overhang)] = 0.6;
    const FormLaid laid = layForm(englishPhrases(), spec).value();
    // A rise of 2.5 over the heel on a run of 6: 0.25 lower at 0.6 beyond the support.
    const Vec2 tail = laid.truss.joints[std::size_t(laid.upper.front().index)].at;
    CHECK_THAT(tail.x, WithinAbs(-0.6, 1e-12));
    CHECK_THAT(tail.y, WithinAbs(0.25, 1e-12));
    const Vec2 other = laid.truss.joints[std::size_t(laid.upper.back().index)].at;
    CHECK_THAT(other.x, WithinAbs(12.6, 1e-12));
    CHECK_THAT(other.y, WithinAbs(0.25, 1e-12));
    CHECK(laid.upper.size() == 7);
    CHECK(made(spec).loads.size() == 7);
}

TEST_CASE("a compound Fink truss has its struts upright to the rafters") {
    FormSpec spec = specOf(FormKind::CompoundFink, 8, LoadedChord::Upper);
    spec.span = 20;
    spec.rise = 4.5;
    const Truss truss = made(spec);
    CHECK(truss.joints.size() == 15);
    CHECK(truss.members.size() == 27);
    int struts = 0;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 way = memberVector(truss, MemberId{static_cast<int>(i)});
        const bool isUprightTo =
            std::abs(10 * way.x + 4.5 * way.y) < 1e-9 || std::abs(-10 * way.x + 4.5 * way.y) < 1e-9;
        struts += isUprightTo ? 1 : 0;
    }
    CHECK(struts == 6);
}

TEST_CASE("a pitch gives the rise, over the heel, where there are rafters") {
    FormSpec spec = specOf(FormKind::HoweRoof, 4, LoadedChord::Upper);
    CHECK_THAT(riseOfPitch(spec, 45).value(), WithinAbs(6, 1e-12));
    spec.sizes[std::size_t(FormSize::Heel)] = 0.5;
    CHECK_THAT(riseOfPitch(spec, 45).value(), WithinAbs(6.5, 1e-12));
    spec.kind = FormKind::MonoPitch;
    CHECK_THAT(riseOfPitch(spec, 45).value(), WithinAbs(12.5, 1e-12));
    CHECK_FALSE(riseOfPitch(spec, 90));
    CHECK_FALSE(riseOfPitch(specOf(FormKind::Warren, 4, LoadedChord::Upper), 30));
}

TEST_CASE("sizes that make no truss are refused, each with its cure") {
    const auto refusalOf = [](FormKind kind, FormSize size, double value) {
        FormSpec spec = specOf(kind, 8, LoadedChord::Upper);
        spec.sizes[std::size_t(size)] = value;
        const Outcome<Truss> truss = makeForm(englishPhrases(), spec);
        REQUIRE_FALSE(truss.ok());
        return said(englishPhrases(), truss.issues().front().says);
    };
    CHECK(refusalOf(FormKind::HoweRoof, FormSize::Heel, -1).find("negative") != std::string::npos);
    CHECK(refusalOf(FormKind::HoweRoof, FormSize::Heel, 3).find("less than the rise") !=
          std::string::npos);
    CHECK(refusalOf(FormKind::PrattRoof, FormSize::Tie, 3).find("raise it less") !=
          std::string::npos);
    CHECK(refusalOf(FormKind::MonoPitch, FormSize::Overhang, 1).find("height over the supports") !=
          std::string::npos);
    CHECK(refusalOf(FormKind::Gantry, FormSize::Depth, 0).find("greater than zero") !=
          std::string::npos);
    FormSpec steep = specOf(FormKind::CompoundFink, 8, LoadedChord::Upper);
    steep.rise = 6;
    CHECK_FALSE(makeForm(englishPhrases(), steep).ok());
}

TEST_CASE("a size that is none is refused") {
    for (const double bad : {0.0, -1.0, std::numeric_limits<double>::quiet_NaN(),
                             std::numeric_limits<double>::infinity()}) {
        FormSpec spec;
        spec.span = bad;
        CHECK_FALSE(makeForm(englishPhrases(), spec).ok());
        spec = {};
        spec.rise = bad;
        CHECK_FALSE(makeForm(englishPhrases(), spec).ok());
    }
}

TEST_CASE("each load case of a form has its own load on the same joints") {
    FormSpec spec = specOf(FormKind::Howe, 6, LoadedChord::Upper);
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
    CHECK_FALSE(makeForm(englishPhrases(), spec).ok());
}

TEST_CASE(
    "in a language made up for it, what one starts from is called in it, and called in English "
    "as ever") {
    for (const FormChoice& choice : formChoices()) {
        FormSpec spec;
        spec.kind = choice.kind;
        const std::string title = made(spec).title;
        CHECK(title == std::string(choice.name.english) + " truss");
        const std::string spoken = makeForm(mockPhrases(), spec).value().title;
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
