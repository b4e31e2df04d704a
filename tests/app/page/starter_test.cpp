#include "app/page/starter.hpp"

#include "app/board.hpp"
#include "app/state/session.hpp"
#include "exchange/files/model_file.hpp"
#include "support/reading/mock_language.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;
using support::Board;

namespace {

constexpr int kHowe = 3; // in the list of forms

AppState boardIn(LengthUnit length, ForceUnit force) {
    Truss truss;
    truss.units.length = length;
    truss.units.force = force;
    truss.classSettings.decimalSign = ',';
    return startWith(truss);
}

} // namespace

TEST_CASE("a form is made from what is typed, in the units and the settings of the board") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const Outcome<Truss> truss =
        starterOf(state, {kHowe, 6, "24", "4,5", "dead\t10\nsnow\t2 * 4\nwind\t-3"});
    REQUIRE(truss.ok());
    const Extent box = extent(truss.value());
    CHECK(box.high - box.low == Vec2{24, 4.5});
    // Six panels have five joints between the supports, on each of which each case acts.
    REQUIRE(truss.value().loads.size() == 15);
    CHECK(caseNames(truss.value()) == std::vector<std::string>{"dead", "snow", "wind"});
    const auto& first = std::get<JointForce>(truss.value().loads[0].what);
    CHECK(first.fy == -10);
    CHECK(std::get<JointForce>(truss.value().loads[10].what).fy == 3); // upwards
    CHECK(truss.value().classSettings == state.truss.classSettings);
    CHECK(readModel(writeModel(truss.value())).ok());
}

TEST_CASE("a size in another unit is converted to that of the board") {
    const AppState state = boardIn(LengthUnit::ft, ForceUnit::kip);
    const Outcome<Truss> truss = starterOf(state, {kHowe, 4, "48 ft", "7 ft 6 in", "\t5"});
    REQUIRE(truss.ok());
    CHECK(extent(truss.value()).high.y == 7.5);
    CHECK(truss.value().units == state.truss.units);
}

TEST_CASE("what can't be read, or is no size, is named") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const auto faultOf = [&state](StarterWish wish) {
        const Outcome<Truss> truss = starterOf(state, wish);
        REQUIRE_FALSE(truss.ok());
        return said(*state.book, truss.issues().front().says);
    };
    CHECK_THAT(faultOf({kHowe, 4, "wide", "3", "\t1"}), ContainsSubstring("wide"));
    CHECK_THAT(faultOf({kHowe, 4, "12", "high", "\t1"}), ContainsSubstring("high"));
    CHECK_THAT(faultOf({kHowe, 4, "12", "3", "dead\t1\nsnow\tdeep"}), ContainsSubstring("deep"));
    CHECK_FALSE(faultOf({kHowe, 4, "", "3", "\t1"}).empty());
    CHECK_FALSE(faultOf({kHowe, 4, "0", "3", "\t1"}).empty());
    CHECK(starterOf(state, {99, -5, "12", "3", "\t1"}).ok()); // the nearest that there is
}

TEST_CASE("the forms are listed in the language of the page, with what they are measured in") {
    AppState state = boardIn(LengthUnit::ft, ForceUnit::kip);
    CHECK_THAT(starterForms(state), ContainsSubstring(R"("length":"ft","force":"kip")"));
    CHECK_THAT(starterForms(state),
               ContainsSubstring(R"({"name":"Howe","fewest":3,"most":24,"step":1})"));
    state.book = &support::mockPhrases();
    CHECK(starterForms(state).find("Howe") == std::string::npos);
}

TEST_CASE("an empty board keeps the units and the settings") {
    const AppState state = boardIn(LengthUnit::ft, ForceUnit::kip);
    const Truss empty = emptyBoard(state);
    CHECK(empty.joints.empty());
    CHECK(empty.units == state.truss.units);
    CHECK(empty.classSettings == state.truss.classSettings);
}

TEST_CASE("saved work gets another title as a step of its history, and nothing else changes") {
    Board board;
    board.act(OpenText{writeModel(support::roof())});
    const std::string saved = writeSession(board.state);
    const std::optional<AppState> renamed = readSession(retitled(saved, "Gable \"two\""));
    REQUIRE(renamed);
    CHECK(renamed->committed.title == "Gable \"two\"");
    Truss same = renamed->committed;
    same.title = board.state.committed.title;
    CHECK(same == board.state.committed);
    CHECK(renamed->history.past().size() == board.state.history.past().size() + 1);
    CHECK(retitled("no saved work", "Title").empty());
}
