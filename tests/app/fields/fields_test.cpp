// Every field of the page: its key in the interface to the scripts, and its name for screen
// readers.
#include "app/fields/cells.hpp"
#include "app/fields/fields.hpp"
#include "app/fields/load_cells.hpp"
#include "support/random.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cmath>
#include <set>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

std::vector<FieldId> everyCell() {
    std::vector<FieldId> fields;
    for (std::size_t i = 0; i < kCellTables; ++i) {
        const auto table = static_cast<CellTable>(i);
        for (int column = 0; column < columnsOf(table); ++column) {
            const Cell cell{table, 12, column};
            if (columnOf(cell).read != nullptr) { // others are never edited
                fields.insert(fields.end(), {cell, PickedCell{cell}});
                if (table != CellTable::Supports || column != gusset::column::kSupportKind) {
                    fields.emplace_back(PageCell{cell});
                }
            }
        }
        fields.emplace_back(PageRow{table, 7, RowPress::Remove});
    }
    fields.emplace_back(PageRow{CellTable::Supports, 0, RowPress::ChangeKind});
    return fields;
}

std::vector<FieldId> everyField() {
    std::vector<FieldId> fields = everyCell();
    for (int kind = 0; kind <= static_cast<int>(ListFieldKind::SpreadLength); ++kind) {
        const auto of = static_cast<ListFieldKind>(kind);
        const bool part = of == ListFieldKind::Factor || of == ListFieldKind::AxleAt ||
                          of == ListFieldKind::AxleForce;
        fields.emplace_back(ListField{of, 3, part ? 2 : 0});
    }
    for (int press = 0; press <= static_cast<int>(PagePress::ChoosePath); ++press) {
        const auto what = static_cast<PagePress>(press);
        const bool row = what == PagePress::ShowPart || what == PagePress::RemoveCombination ||
                         what == PagePress::RemoveMoving || what == PagePress::RemoveAxle;
        fields.emplace_back(PageControl{what, row ? 3 : 0, what == PagePress::RemoveAxle ? 2 : 0});
    }
    fields.insert(fields.end(), {PageAnswer{5}, PageList::Cut, PageList::Path});
    for (const CheckNumber& number : kCheckNumbers) {
        fields.emplace_back(CheckField{number.value});
    }
    fields.insert(fields.end(), {FactorField::In, FactorField::Out});
    for (std::size_t table = 0; table < kSortedTables; ++table) {
        fields.emplace_back(SearchField{static_cast<SortedTable>(table)});
    }
    for (int kind = 0; kind <= static_cast<int>(SeveralKind::Warm); ++kind) {
        fields.emplace_back(static_cast<SeveralKind>(kind));
    }
    fields.insert(fields.end(), {TitleField::Header, TitleField::Page, LoadField{LoadId{4}},
                                 MemberEndField::Drawing, MemberEndField::Drawn});
    return fields;
}

} // namespace

TEST_CASE("every field has a key of its own, which names that field and no other") {
    std::set<std::string> keys;
    for (const FieldId& field : everyField()) {
        const std::string key = keyOf(field);
        CAPTURE(key);
        CHECK(keys.insert(key).second);
        CHECK(fieldOf(key) == field);
    }
}

TEST_CASE("a dimension is named by the levels that it measures, to the last bit") {
    Random random(20260711);
    for (int i = 0; i < 500; ++i) {
        const double from =
            random.integer(-99999, 99999) / 7.0 * std::pow(10, random.integer(-12, 12));
        const Measured measured{random.oneIn(2), from, from + random.integer(1, 9999) / 13.0};
        CAPTURE(keyOf(measured));
        CHECK(fieldOf(keyOf(measured)) == FieldId(measured));
    }
}

TEST_CASE("what is no key names no field") {
    for (const char* key : {"",
                            ".",
                            "..",
                            "joint",
                            "joint.1",
                            "joint.1.z",
                            "joint.-1.x",
                            "joint.1.x.",
                            "joint..x",
                            "joint.99999999999.x",
                            "joint.0x1.x",
                            "chair.0.x",
                            "section.0.area",
                            "picked:",
                            "picked:title",
                            "picked:joint.0",
                            "page.",
                            "page.member.0.kind",
                            "page.joint.-1.remove",
                            "page.joint.0.gone",
                            "moving.0",
                            "moving.0.at",
                            "moving.0.x.at",
                            "combination.0.factor",
                            "checks",
                            "checks.",
                            "checks.formula",
                            "list.13.words",
                            "list.1.word",
                            "several.bend",
                            "starter.width",
                            "board.load",
                            "board.load.x",
                            "board.dimension",
                            "board.dimension:x:1",
                            "board.dimension:z:1:2",
                            "board.dimension:x:one:2",
                            "board.chord",
                            "titles"}) {
        CAPTURE(key);
        CHECK_FALSE(fieldOf(key));
    }
}

TEST_CASE("a field is called by words: what it is, and of which thing") {
    Truss truss = steelGable();
    truss.loads.push_back({AngledForce{JointId{1}, 5, 30}, {}, {}});
    const Writer writer{englishPhrases(), truss};
    const int loads = static_cast<int>(truss.loads.size());
    const auto named = [&](CellTable table, int row, int column) {
        return cellName(writer, {table, row, column});
    };
    CHECK(named(CellTable::Joints, 2, column::kJointX) == "x of joint " + truss.joints[2].label);
    CHECK(named(CellTable::Joints, static_cast<int>(truss.joints.size()), column::kJointY) ==
          "y of a new joint");
    CHECK(named(CellTable::Members, 0, column::kMemberEnds) ==
          "ends of member " + truss.joints[truss.members[0].a.at()].label + "–" +
              truss.joints[truss.members[0].b.at()].label);
    CHECK(named(CellTable::Supports, 1, column::kSupportDirection) ==
          "direction of support " + truss.joints[truss.supports[1].joint.at()].label);
    CHECK(named(CellTable::Loads, 0, column::kLoadSecond) == "direction of load 1");
    CHECK(named(CellTable::Loads, loads - 1, column::kLoadSecond) ==
          "direction of load " + std::to_string(loads));
    CHECK(cellNameWithUnit(writer, {CellTable::Loads, loads - 1, column::kLoadSecond}) ==
          "direction (°) of load " + std::to_string(loads));
    CHECK(cellNameWithUnit(writer, {CellTable::Joints, 0, column::kJointX}) ==
          "x (m) of joint " + truss.joints[0].label);
}

TEST_CASE("fields of combinations and moving loads are called by words too") {
    Truss truss = stripWithCart();
    truss.combinations.push_back({"worst", {{"loads", 1.5}}, {}});
    const std::string& cart = truss.moving[0].id;
    const Writer writer{englishPhrases(), truss};
    CHECK(listName(writer, {ListFieldKind::Factor, 0, 0}) ==
          "factor of case " + caseNames(truss)[0] + " in combination worst");
    CHECK(listName(writer, {ListFieldKind::CombinationName, 1, 0}) == "name of a new combination");
    CHECK(listName(writer, {ListFieldKind::AxleForce, 0, 1}) ==
          "force of axle 2 of moving load " + cart);
    CHECK(listName(writer, {ListFieldKind::SpreadLength, 0, 0}) ==
          "length of the spread load of moving load " + cart);
}

TEST_CASE("in the inspector Tab goes on among its own fields, and Enter ends there") {
    const AppState state = startWith(roof());
    CHECK(openKey(typedIn(state, "picked:joint.2.x", "2", FieldEnd::NextField)) ==
          "picked:joint.2.y");
    CHECK(openKey(typedIn(state, "picked:joint.2.y", "5", FieldEnd::PreviousField)) ==
          "picked:joint.2.x");
    for (const char* key :
         {"picked:joint.2.y", "picked:support.1.direction", "picked:load.0.second"}) {
        CHECK(openKey(typedIn(state, key, "7", FieldEnd::NextField)).empty());
        CHECK(openKey(typedIn(state, key, "7", FieldEnd::Below)).empty());
    }
    CHECK(typedIn(state, "picked:joint.2.x", "2").truss.joints[2].at.x == 2);
}

TEST_CASE("a field that was begun since stays open when the text of another comes back") {
    AppState state = startWith(roof());
    update(state, {BeginField{fieldNamed("joint.1.y"), "0"}});
    for (const char* key : {"joint.0.x", "title", "picked:joint.2.x", "list.8.words", "checks.K",
                            "combination.0.name"}) {
        CAPTURE(key);
        CHECK(openKey(typedIn(state, key, "", FieldEnd::GivenUp)) == "joint.1.y");
    }
    CHECK(openKey(typedIn(state, "joint.1.y", "", FieldEnd::GivenUp)).empty());
}
