// Marks with carried errors: published wrong answers, and what is said and marked of single slips.
#include "classroom/marking/marking.hpp"

#include "support/classroom/worked_sheet.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

// TU Delft, T. van Woudenberg, "Frequently made mistakes" (CC BY 4.0; TeachBooks/schakel_mechanica,
// commit 2c147aa): 360 kN on D and 180 kN on H, pins at A and B, scans of students' answers under
// the instructor's headings. The truth: A = (−720, 540), B = (720, 0), AD = −865.33, AC = 300,
// DC = 600.
Truss delftTruss() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 10, 0);
    joint(truss, "C", 5, 3.75);
    joint(truss, "D", -10, 15);
    joint(truss, "E", 10, 7.5);
    joint(truss, "G", 12.5, 3.75);
    joint(truss, "H", 20, 15);
    members(truss, {"AD", "DC", "AC", "CB", "CE", "BE", "BG", "EG", "EH", "GH"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "D", 0, -360);
    force(truss, "H", 0, -180);
    return truss;
}

class DelftSheet {
public:
    DelftSheet() : asked_(delftTruss()), sheet_(blankAnswers(asked_.truss, asked_.exercise)) {}

    void reaction(std::size_t number, double value) { sheet_.reactions[number] = written(value); }
    void force(const char* a, const char* b, double value) {
        sheet_.forces[memberAt(asked_.truss, a, b)] = written(value);
    }
    Marking mark() const {
        return MarkingScheme(asked_.truss, asked_.exercise, asked_.key).mark(sheet_);
    }
    const MarkedForce& of(const Marking& marking, const char* a, const char* b) const {
        return marking.forces[4 + memberAt(asked_.truss, a, b)];
    }
    JointId named(const char* label) const { return findJoint(asked_.truss, label); }

private:
    static WrittenForce written(double value) {
        return {std::abs(value), value > 0 ? 1 : value < 0 ? -1 : 0};
    }

    Asked asked_;
    Answers sheet_;
};

std::vector<std::optional<SlipKind>> kindsOf(const Marking& marking) {
    std::vector<std::optional<SlipKind>> kinds;
    for (const Slip& slip : marking.slips) {
        kinds.push_back(slip.kind);
    }
    return kinds;
}

} // namespace

// Heading "Horizontal support reactions", and "Angles": 0.6 AC + 0.83 AD = −540 and 0.8 AC + 0.55
// AD = 0, where the second has lost the sign of AD, give AC = 900 and AD = −1298.
TEST_CASE("Published: horizontal reactions forgotten and a sign lost are two slips at A") {
    DelftSheet sheet;
    sheet.reaction(0, 0);
    sheet.reaction(1, 540);
    sheet.reaction(3, 0);
    sheet.force("A", "D", -1298);
    sheet.force("A", "C", 900);
    sheet.force("D", "C", 600);
    const Marking marking = sheet.mark();
    CHECK(kindsOf(marking) ==
          std::vector<std::optional<SlipKind>>{SlipKind::LeftOut, SlipKind::WrongSign});
    CHECK(marking.forces[0].verdict == Verdict::Slip);
    CHECK(marking.forces[1].verdict == Verdict::Right);
    CHECK(marking.slips[1].body == std::vector{sheet.named("A")});
    CHECK(sheet.of(marking, "D", "C").marks == 2); // right is never wrong
}

// The same with all reactions right: 0.8 AC + 0.5547 AD = 720 and 0.6 AC + 0.83205 AD = −540 by
// Cramer's rule: AC = (720 · 0.83205 + 540 · 0.5547) / 0.33282 = 2700, AD = (−540 · 0.8 − 720 ·
// 0.6) / 0.33282 = −2596.
TEST_CASE("Published: the sign of the member that leans the other way, lost in one sum") {
    DelftSheet sheet;
    sheet.reaction(0, -720);
    sheet.reaction(1, 540);
    sheet.force("A", "D", -2596);
    sheet.force("A", "C", 2700);
    const Marking marking = sheet.mark();
    CHECK(kindsOf(marking) == std::vector<std::optional<SlipKind>>{SlipKind::WrongSign});
    CHECK(marking.slips[0].body == std::vector{sheet.named("A")});
    CHECK(sheet.of(marking, "A", "D").marks + sheet.of(marking, "A", "C").marks == 3);
}

// Heading "Missing equilibrium equations": the whole load given to each bar in turn, √(360² + 240²)
// = 432 in AD and √(360² + 480²) = 600 in DC. 360 / 0.83205 = 432.67 and 360 / 0.6 = 600, both
// in compression if each is found from ΣF_y alone.
TEST_CASE("Published: the whole load given to each of two bars is one slip, at the loaded joint") {
    DelftSheet sheet;
    sheet.force("A", "D", -432.7);
    sheet.force("D", "C", -600);
    const Marking marking = sheet.mark();
    CHECK(kindsOf(marking) == std::vector<std::optional<SlipKind>>{SlipKind::ToOneBar});
    CHECK(marking.slips[0].body == std::vector{sheet.named("D")});
    CHECK(sheet.of(marking, "A", "D").marks == 0); // the other bar is missing from the equation
}

// The same numbers, with the tension in DC that is right: a right number by a wrong route counts.
TEST_CASE("Published: a right number that came from a wrong equation has its marks") {
    DelftSheet sheet;
    sheet.force("A", "D", -432.7);
    sheet.force("D", "C", 600);
    const Marking marking = sheet.mark();
    CHECK(sheet.of(marking, "D", "C").marks == 2);
    CHECK(marking.slips.size() == 1);
    CHECK(sheet.of(marking, "A", "D").verdict == Verdict::Slip);
}

// Heading "Symmetry": equal reactions for unequal loads, 540 / 2 = 270 each.
TEST_CASE("Published: equal reactions for unequal loads are one slip, made at the whole truss") {
    DelftSheet sheet;
    sheet.reaction(0, -720);
    sheet.reaction(1, 270);
    sheet.reaction(2, 720);
    sheet.reaction(3, 270);
    const Marking marking = sheet.mark();
    CHECK(kindsOf(marking) == std::vector<std::optional<SlipKind>>{SlipKind::BySymmetry});
    CHECK(marking.slips[0].body.size() == 7);
    CHECK(marking.slips[0].answers.size() == 2);
}

// Two rafters and a tie, slopes 3 in 4, 8 kN at the top: A_y = B_y = 4, AC = −4 · 5/3 = −6.667,
// AB = 6.667 · 4/5 = 5.333. The student writes AC = −6 and AB = 4.8, which is 6 · 4/5: ΣF_x is
// satisfied, and ΣF_y gives −4 / 0.6 = −6.667.
TEST_CASE("A slip that is not recognised costs one mark, and its equation is told in own numbers") {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8, 0);
    joint(truss, "C", 4, 3);
    members(truss, {"AC", "BC", "AB"});
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 0, -8);
    const Asked asked(truss);
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    sheet.reactions = {{0, 0}, {4, 1}, {4, 1}};
    sheet.forces[memberAt(truss, "A", "C")] = {6, -1};
    sheet.forces[memberAt(truss, "A", "B")] = {4.8, 1};
    sheet.forces[memberAt(truss, "B", "C")] = {6, -1};
    const Marking marking = MarkingScheme(asked.truss, asked.exercise, asked.key).mark(sheet);
    REQUIRE(marking.slips.size() == 1);
    const Slip& slip = marking.slips[0];
    CHECK_FALSE(slip.kind);
    CHECK(marking.marks == marking.outOf - 1);
    REQUIRE(slip.equations.size() == 1);
    const OwnEquation& equation = slip.equations[0];
    CHECK(equation.kind == EquationKind::SumY);
    CHECK(std::abs(equation.left - 0.4) < 1e-9); // 4 − 6 · 0.6
    CHECK(equation.written == -6);
    CHECK(std::abs(equation.gives + 4 / 0.6) < 1e-9);
    REQUIRE(equation.terms.size() == 2); // AB has no part in it
    CHECK(equation.terms[0].value == 4);
    CHECK(std::abs(equation.terms[1].factor - 0.6) < 1e-9);
}

TEST_CASE("A sheet of random numbers is said to be beyond a few slips, one with two is not") {
    const Asked asked(delftTruss());
    const MarkingScheme scheme(asked.truss, asked.exercise, asked.key);
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    double size = 3;
    for (WrittenForce& force : sheet.forces) {
        force = {size, 1};
        size = size * 1.7 + 2;
    }
    CHECK_FALSE(scheme.mark(sheet).isOfFewSlips);
    sheet = blankAnswers(asked.truss, asked.exercise);
    sheet.forces[memberAt(asked.truss, "D", "C")] = {600, -1};
    sheet.forces[memberAt(asked.truss, "G", "H")] = {432.7, 1};
    CHECK(scheme.mark(sheet).isOfFewSlips);
}
