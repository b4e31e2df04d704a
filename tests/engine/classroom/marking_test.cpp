// Marks with carried errors: published wrong answers, and what is said and marked of single slips.
#include "classroom/marking/marking.hpp"

#include "support/classroom/worked_sheet.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>

using namespace gusset;
using namespace gusset::support;

// TU Delft, T. van Woudenberg, "Frequently made mistakes" (CC BY 4.0): 360 kN on D and 180 kN on H,
// pins at A and B. A student forgets the horizontal reactions and loses the sign of AD in ΣF_x of
// joint A: 0.6 AC + 0.83 AD = −540 and 0.8 AC + 0.55 AD = 0 give AC = 900, AD = −1298.
TEST_CASE("A published sheet: a reaction forgotten and a sign lost are not carried to the rest") {
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
    const Asked asked(truss);
    CHECK(std::abs(asked.key.forces[memberAt(truss, "A", "D")] + 865.33) < 0.01);
    Answers sheet = blankAnswers(asked.truss, asked.exercise);
    sheet.reactions = {{0, 0}, {540, 1}, {}, {0, 0}};
    sheet.forces[memberAt(truss, "A", "D")] = {1298, -1};
    sheet.forces[memberAt(truss, "A", "C")] = {900, 1};
    sheet.forces[memberAt(truss, "D", "C")] = {600, 1};
    const Marking marking = MarkingScheme(asked.truss, asked.exercise, asked.key).mark(sheet);
    const auto verdictOf = [&](std::size_t number) { return marking.forces[number].verdict; };
    CHECK(verdictOf(0) == Verdict::Slip); // A_x
    CHECK(verdictOf(1) == Verdict::Right);
    CHECK(marking.forces[4 + memberAt(truss, "D", "C")].marks == 2); // right is never wrong
    CHECK(marking.slips.size() >= 2);
}
