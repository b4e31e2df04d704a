// The sheet as the page's scripts ask for it.

#include "app/page/sheet_request.hpp"

#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

namespace {

AppState boardWithCases() {
    Truss truss = gable();
    truss.loads.front().caseId = "dead";
    truss.combinations = {{"winter", {{"dead", 1.5}}, {}}};
    AppState state;
    state.truss = truss;
    state.committed = truss;
    return state;
}

} // namespace

TEST_CASE("a wish for a sheet says what the choices of the command line say") {
    const AppState state = boardWithCases();
    SheetChoices choices{.loads = OneCombination{"winter"}};
    choices.parts = {true};
    choices.size = SheetSize::Letter;
    choices.across = true;
    choices.project = "Hall = 4";
    CHECK(sheetOf(state,
                  "parts=drawing\npaper=Letter\nproject=Hall = 4\ncombination=winter\nacross=", "",
                  {}) == sheetHtml({*state.book, state.committed}, choices, {}));
}

TEST_CASE("a wish that makes no sense is left out: unknown loads, parts and papers") {
    const AppState state = boardWithCases();
    CHECK(sheetOf(state, "parts=\npaper=A3\ncombination=summer\nnonsense", "", {}) ==
          sheetHtml({*state.book, state.committed}, {}, {}));
}

TEST_CASE("a sheet may be under the loads of the board, or the first combination, and all others") {
    AppState state = boardWithCases();
    CHECK(sheetLoadsOf(state) == "combination=winter\tcombination winter\ncase=dead\tcase dead\n"
                                 "\tall loads together\n");
    state.choice = OneCase{"dead"};
    CHECK(sheetLoadsOf(state) == "case=dead\tcase dead\ncombination=winter\tcombination winter\n"
                                 "\tall loads together\n");
}
