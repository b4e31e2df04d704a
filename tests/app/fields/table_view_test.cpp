#include "app/state/table_view.hpp"

#include "app/derived/result_lists.hpp"
#include "app/fields/cells.hpp"
#include "app/fields/fields.hpp"
#include "app/state/session.hpp"
#include "statics/solve/largest.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <string>
#include <vector>

namespace gusset {

using support::fieldNamed;
using support::openKey;
using support::typedIn;

namespace {

// The roof of small_truss: AB 3.75 kN in tension, BC and CA 6.25 kN in compression (tests/browser/
// drawing.test.mjs derives them).
struct Listed {
    AppState state = startWith(support::roof());
    Derived derived;

    std::string names() {
        derive(state, derived);
        std::string all;
        for (const int place : orderedForces(state, derived)) {
            all += derived.forces[static_cast<std::size_t>(place)].name + " ";
        }
        return all;
    }
};

// A table with one column of words and one of numbers; NaN: an empty cell.
struct Made {
    std::vector<std::string> names;
    std::vector<double> numbers;

    std::string shown(const TableView& tableView, std::optional<int> kept = {}) const {
        OrderedRows rows{.count = static_cast<int>(names.size()), .named = {0}, .kept = kept};
        rows.key = [this](int row, int column) {
            const auto at = static_cast<std::size_t>(row);
            return column == 0               ? SortKey{{}, names[at]}
                   : std::isnan(numbers[at]) ? SortKey{}
                                             : SortKey{numbers[at], ""};
        };
        std::string all;
        for (const int row : listed(tableView, rows)) {
            all += names[static_cast<std::size_t>(row)] + " ";
        }
        return all;
    }
};

TEST_CASE("A table is ordered by words or by numbers, up or down; what is alike stays as drawn and "
          "empty cells come last either way") {
    const Made made{{"J10", "J2", "B", "J1"}, {5, std::nan(""), -7, 5}};
    CHECK(made.shown({}) == "J10 J2 B J1 ");
    CHECK(made.shown({.column = 0}) == "B J1 J2 J10 ");
    CHECK(made.shown({.column = 0, .falling = true}) == "J10 J2 J1 B ");
    CHECK(made.shown({.column = 1}) == "B J10 J1 J2 ");
    CHECK(made.shown({.column = 1, .falling = true}) == "J10 J1 B J2 ");
}

TEST_CASE("Figures in names count as numbers, however many zeros stand before them") {
    CHECK(namesBefore("A2", "A10"));
    CHECK(namesBefore("A02", "A3"));
    CHECK(namesBefore("A2B", "A2C"));
    CHECK(namesBefore("A", "A1"));
    CHECK_FALSE(namesBefore("A10", "A2"));
    CHECK_FALSE(namesBefore("A2", "A2"));
    CHECK(namesBefore("9", "10000000000000000000000000000000000000000"));
}

TEST_CASE("Rows are found by a part of their name, whatever the capitals, blanks and dashes") {
    CHECK(holdsWords("A–B", "ab"));
    CHECK(holdsWords("AB", "A - B"));
    CHECK(holdsWords("Top chord", "topch"));
    CHECK_FALSE(holdsWords("AB", "BA"));
    const Made made{{"AB", "BC", "CA"}, {1, 2, 3}};
    CHECK(made.shown({.words = "c"}) == "BC CA ");
    CHECK(made.shown({.column = 1, .falling = true, .words = "a"}) == "CA AB ");
    CHECK(made.shown({.words = "x"}).empty());
    CHECK(made.shown({.words = "x"}, 1) == "BC "); // it is being edited
}

TEST_CASE("A heading pressed again and again orders one way, the other way, and no more") {
    const TableView once = withHeadingPressed({.words = "a"}, 2, true);
    CHECK(once == TableView{2, true, "a"});
    const TableView twice = withHeadingPressed(once, 2, true);
    CHECK(twice == TableView{2, false, "a"});
    CHECK(withHeadingPressed(twice, 2, true) == TableView{std::nullopt, false, "a"});
    CHECK(withHeadingPressed(once, 0, false) == TableView{0, false, "a"});
}

TEST_CASE("Member forces are listed as drawn, by name, by size and from tension to compression") {
    Listed listed;
    TableView& tableView = tableViewOf(listed.state.notebook, SortedTable::Forces);
    CHECK(listed.names() == "AB BC CA ");
    tableView = {.column = 1, .falling = true};
    CHECK(listed.names() == "BC CA AB ");
    tableView = {.column = 2, .falling = true};
    CHECK(listed.names().starts_with("AB "));
    listed.state.truss.joints[0].label = "Z";
    tableView = {.column = 0};
    ++listed.state.revision;
    CHECK(listed.names() == "BC CZ ZB ");
}

TEST_CASE("Reactions are ordered by their parts with sign") {
    // Half of the load at each support: A and B carry the same, so the order stays as drawn; a
    // further load of 1 to the right is carried by A alone.
    Listed listed;
    support::force(listed.state.truss, "C", 1, 0);
    ++listed.state.revision;
    (void)listed.names();
    tableViewOf(listed.state.notebook, SortedTable::Reactions) = {.column = 1, .falling = true};
    const std::vector<int> places = orderedReactions(listed.state, listed.derived);
    REQUIRE(places.size() == 2);
    CHECK(listed.derived.reactions[static_cast<std::size_t>(places[0])].name == "B");
    CHECK(listed.derived.reactions[static_cast<std::size_t>(places[1])].name == "A");
}

TEST_CASE(
    "Only those in tension, in compression, without force, or picked on the board are listed") {
    Listed listed;
    listed.state.notebook.forceFilter = ForceFilter::Tension;
    CHECK(listed.names() == "AB ");
    listed.state.notebook.forceFilter = ForceFilter::Compression;
    CHECK(listed.names() == "BC CA ");
    listed.state.notebook.forceFilter = ForceFilter::Zero;
    CHECK(listed.names().empty());
    listed.state.notebook.forceFilter = ForceFilter::Picked;
    CHECK(listed.names().empty());
    listed.state.selection.members = {MemberId{2}};
    CHECK(listed.names() == "CA ");
}

TEST_CASE("The largest tension and compression are of the first of equal members; unloaded there "
          "is none") {
    Listed listed;
    (void)listed.names();
    const LargestForces largest = largestForces(listed.derived.solution);
    CHECK(largest.tension == MemberId{0});
    CHECK(largest.compression == MemberId{1}); // BC before CA, which carries the same
    Truss bare = support::roof();
    bare.loads.clear();
    Listed unloaded{startWith(bare), {}};
    (void)unloaded.names();
    CHECK_FALSE(largestForces(unloaded.derived.solution).tension.valid());
    CHECK_FALSE(largestForces(unloaded.derived.solution).compression.valid());
}

// A (0, 0), B (6, 0), C (3, 4): by descending x, they are in the order B, C, A.
AppState byXFalling() {
    AppState state = startWith(support::roof());
    tableViewOf(state.notebook, SortedTable::Joints) = {.column = column::kJointX, .falling = true};
    return state;
}

TEST_CASE("Ordering a table of the model leaves the model and its history as they are") {
    AppState state = byXFalling();
    CHECK(shownRows(state, CellTable::Joints) == RowOrder{1, 2, 0, 3});
    CHECK(state.truss == support::roof());
    update(state, {SetTableView{SortedTable::Joints, {.words = "c"}}});
    CHECK(shownRows(state, CellTable::Joints) == RowOrder{2, 3}); // the empty row stays
    CHECK(state.truss == support::roof());
    CHECK(state.history.undoName().empty());
}

TEST_CASE("Enter and Tab follow the order shown, also when what was typed changes it") {
    AppState state = byXFalling();
    state = typedIn(state, "joint.1.x", "8", FieldEnd::Below);
    CHECK(openKey(state) == "joint.2.x");
    state = typedIn(state, "joint.2.y", "3", FieldEnd::NextField);
    CHECK(openKey(state) == "joint.0.label");
    state = typedIn(state, "joint.0.label", "A", FieldEnd::PreviousField);
    CHECK(openKey(state) == "joint.2.y");
    // C moves to the front, and the cell that was below it is next.
    state = typedIn(state, "joint.2.x", "9", FieldEnd::Below);
    CHECK(openKey(state) == "joint.0.x");
    state = typedIn(state, "joint.0.x", "0", FieldEnd::Below);
    CHECK(openKey(state) == "joint.3.x"); // the new row
    state = typedIn(state, "joint.3.x", "2", FieldEnd::Below);
    CHECK(openKey(state) == "joint.4.x");
}

TEST_CASE(
    "A row that is typed in stays in sight when its name is not what is looked for any more") {
    AppState state = startWith(support::roof());
    tableViewOf(state.notebook, SortedTable::Joints) = {.words = "C"};
    update(state, {BeginField{fieldNamed("joint.2.label"), "C"}});
    state = typedIn(state, "joint.2.label", "Top", FieldEnd::NextField);
    CHECK(openKey(state) == "joint.2.x");
    CHECK(shownRows(state, CellTable::Joints) == RowOrder{2, 3});
    state = typedIn(state, "joint.2.x", "4", FieldEnd::Kept);
    CHECK(shownRows(state, CellTable::Joints) == RowOrder{3});
}

TEST_CASE("Pasted rows follow the order shown, and those past its end are new") {
    const AppState state = typedIn(byXFalling(), "joint.2.y", "3.5\n0.5\n", FieldEnd::Kept);
    CHECK(state.truss.joints[2].at == Vec2{3, 3.5});
    CHECK(state.truss.joints[0].at == Vec2{0, 0.5});
    CHECK(state.truss.joints[1].at == Vec2{6, 0});
    const AppState longer =
        typedIn(byXFalling(), "joint.0.label", "A\t0\t0\nQ\t12\t0\nR\t16\t0", FieldEnd::Kept);
    REQUIRE(longer.truss.joints.size() == 5);
    CHECK(longer.truss.joints[4].label == "R");
}

TEST_CASE("While a table shows only some of its rows, more than these are not pasted") {
    AppState state = startWith(support::roof());
    tableViewOf(state.notebook, SortedTable::Joints) = {.words = "C"};
    AppState after = typedIn(state, "joint.2.y", "3\n4", FieldEnd::Kept);
    CHECK(after.truss == support::roof());
    CHECK(after.message.text.find("show all rows first") != std::string::npos);
    after = typedIn(state, "joint.2.label", "C\t4\t5\n", FieldEnd::Kept);
    CHECK(after.truss.joints[2].at == Vec2{4, 5});
    // Pasted into the empty row they are new rows.
    after = typedIn(state, "joint.3.x", "9\t1\n10\t1", FieldEnd::Kept);
    CHECK(after.truss.joints.size() == 5);
}

TEST_CASE("The page's own tables have all rows as drawn, and paste along them") {
    AppState state = byXFalling();
    state = typedIn(state, "page.joint.0.y", "1\n2");
    CHECK(state.truss.joints[0].at == Vec2{0, 1});
    CHECK(state.truss.joints[1].at == Vec2{6, 2});
}

TEST_CASE("What is looked for is typed, kept for its table, and gone with another truss") {
    AppState state = startWith(support::roof());
    state = typedIn(state, SearchField{SortedTable::Members}, " bc ", FieldEnd::Below);
    CHECK(tableViewOf(state.notebook, SortedTable::Members).words == "bc");
    CHECK(tableViewOf(state.notebook, SortedTable::Joints).words.empty());
    CHECK(shownRows(state, CellTable::Members) == RowOrder{1, 3});
    update(state, {Commit{ReplaceTruss{support::roof(), "Open"}}});
    CHECK(tableViewOf(state.notebook, SortedTable::Members).words.empty());
}

TEST_CASE("The order of a table is still there after a reload") {
    const std::optional<AppState> again = readSession(writeSession(byXFalling()));
    REQUIRE(again);
    const TableView& tableView = tableViewOf(again.value().notebook, SortedTable::Joints);
    CHECK(tableView == TableView{column::kJointX, true, ""});
}

TEST_CASE("A column that no table has, read from a damaged store, orders nothing") {
    AppState state = startWith(support::roof());
    tableViewOf(state.notebook, SortedTable::Joints).column = 77;
    CHECK(shownRows(state, CellTable::Joints) == RowOrder{0, 1, 2, 3});
}

} // namespace
} // namespace gusset
