// Cases, combinations and moving loads, as typed into the notebook.
#include "app/fields/load_cells.hpp"

#include "app/fields/cells.hpp"
#include "app/fields/fields.hpp"
#include "support/english.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

namespace {

AppState undone(AppState state) {
    update(state, {Undo{}});
    return state;
}

} // namespace

TEST_CASE("a load gets a case in its cell, and the word for none takes it away") {
    AppState state = startWith(gable());
    const auto typeCase = [&](const char* text) { state = typedIn(state, "load.0.case", text); };
    CHECK(cellText(state.truss, {CellTable::Loads, 0, column::kLoadCase}) == "loads");
    typeCase(" wind ");
    CHECK(state.truss.loads[0].caseId == "wind");
    typeCase("loads");
    CHECK(state.truss.loads[0].caseId.empty());
}

TEST_CASE("a combination begins with every case, and its factors can be typed and emptied") {
    Truss truss = gable();
    force(truss, "C", 0, 12, "uplift");
    const AppState begun = typedIn(startWith(truss), "combination.0.name", "worst");
    REQUIRE(begun.truss.combinations.size() == 1);
    CHECK(undoText(begun) == "Add combination worst");
    CHECK(begun.truss.combinations[0].factors ==
          std::vector<std::pair<std::string, double>>{{"loads", 1}, {"uplift", 1}});
    const AppState factored = typedIn(begun, "combination.0.0.factor", "1,35");
    CHECK(factored.truss.combinations[0].factors[0].second == 1.35);
    CHECK(undoText(factored) == "Change combination worst");
    const AppState without = typedIn(factored, "combination.0.1.factor", "");
    CHECK(without.truss.combinations[0].factors.size() == 1);
    CHECK(listText(without.truss, {ListFieldKind::Factor, 0, 1}).empty());
    AppState none = without;
    update(none, {Commit{removeCombination(none.truss, 0)}});
    CHECK(none.truss.combinations.empty());
    CHECK(undoText(none) == "Remove combination worst");
    CHECK(undone(undone(undone(undone(none)))).truss == truss);
}

TEST_CASE("a load case is renamed once, and said to be snow; a word that is none is refused") {
    Truss truss = gable();
    force(truss, "C", 0, -8, "white");
    AppState state = typedIn(startWith(truss), "case.1.name", " snow 2026 ");
    CHECK(state.truss.loads.back().caseId == "snow 2026");
    CHECK(undoText(state) == "Rename load case white");
    state = typedIn(state, "case.1.kind", "snow");
    CHECK(state.truss.cases == std::vector<LoadCase>{{"snow 2026", "snow", {}}});
    CHECK(listText(state.truss, {ListFieldKind::CaseKind, 1, 0}) == "snow");
    CHECK(listText(state.truss, {ListFieldKind::CaseKind, 0, 0}).empty());
    const Outcome<Edit> refused = listEdit(state.truss, {ListFieldKind::CaseKind, 0, 0}, "hail");
    REQUIRE_FALSE(refused);
    CHECK(english(refused.issues().front()).find("permanent") != std::string::npos);
    CHECK_FALSE(canType(state.truss, {ListFieldKind::CaseName, 2, 0}));
    // Tab goes from a name to its kind and on to the next name.
    const std::optional<ListField> kind =
        listFieldAfter(truss, {ListFieldKind::CaseName, 0, 0}, FieldEnd::NextField);
    REQUIRE(kind);
    CHECK(*kind == ListField{ListFieldKind::CaseKind, 0, 0});
    CHECK(listFieldAfter(truss, *kind, FieldEnd::NextField) ==
          ListField{ListFieldKind::CaseName, 1, 0});
    CHECK_FALSE(listFieldAfter(truss, {ListFieldKind::CaseKind, 1, 0}, FieldEnd::NextField));
}

TEST_CASE("a moving load is added to a path, typed into, and taken away again") {
    const Truss truss = stripTruss(Web::Pratt, 6);
    AppState state = startWith(truss);
    update(state, {Commit{addMovingLoad({englishPhrases(), truss}, bottomChord(truss, 6))}});
    REQUIRE(state.truss.moving.size() == 1);
    CHECK(undoText(state) == "Add moving load vehicle 1");
    CHECK(state.truss.moving[0].axles.front().force == -10); // like the truss's own loads
    state = typedIn(state, "moving.0.name", "crane");
    state = typedIn(state, "moving.0.0.force", "12"); // positive down, as axle loads are given
    CHECK(state.truss.moving[0].axles[0].force == -12);
    state = typedIn(state, "moving.0.1.at", "250 cm"); // the row past the end makes a new axle
    REQUIRE(state.truss.moving[0].axles.size() == 2);
    CHECK(state.truss.moving[0].axles[1].at == 2.5);
    CHECK(state.truss.moving[0].axles[1].force == -12);
    state = typedIn(state, "moving.0.spread", "4");
    state = typedIn(state, "moving.0.length", "6");
    REQUIRE(state.truss.moving[0].uniform);
    CHECK(state.truss.moving[0].uniform->perLength == -4);
    CHECK(state.truss.moving[0].uniform->length == 6);
    state = typedIn(state, "moving.0.length", "");
    CHECK_FALSE(state.truss.moving[0].uniform->length);
    update(state, {Commit{removeAxle(state.truss, 0, 0)}});
    CHECK(state.truss.moving[0].axles.size() == 1);
    update(state, {Commit{removeMovingLoad(state.truss, 0)}});
    CHECK(undoText(state) == "Remove moving load crane");
    while (!state.history.undoName().empty()) {
        state = undone(state);
    }
    CHECK(state.truss == truss);
}

TEST_CASE("what can't be a moving load is refused with a sentence, and nothing changes") {
    const Truss truss = stripWithCart();
    const auto refusal = [&](const char* key, const char* text) {
        const AppState after = typedIn(startWith(truss), key, text);
        CHECK(after.truss == truss);
        return after.message.text;
    };
    CHECK(refusal("moving.0.1.at", "0").find("same place") != std::string::npos);
    CHECK(refusal("moving.0.0.force", "heavy").find("heavy") != std::string::npos);
    CHECK_FALSE(refusal("moving.0.name", "").empty());
    MovingLoad one;
    one.axles.resize(1);
    CHECK_FALSE(canRemoveAxle(one));
}
