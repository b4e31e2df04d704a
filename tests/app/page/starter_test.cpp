#include "app/page/starter.hpp"

#include "app/board.hpp"
#include "app/state/session.hpp"
#include "exchange/files/model_file.hpp"
#include "support/reading/mock_language.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::StartsWith;
using support::Board;

namespace {

// The outline of a Howe truss as the start page asks for it; `loads` are objects.
std::string howe(const std::string& panels, const std::string& span, const std::string& rise,
                 const std::string& loads) {
    return R"({"kind":"howe","span":")" + span + R"(","rise":")" + rise + R"(","panels":)" +
           panels + R"(,"heel":"","loads":[)" + loads + "]}";
}
std::string onJoints(const std::string& name, const std::string& size) {
    return R"({"case":")" + name + R"(","kind":"","as":"joint","size":")" + size +
           R"(","on":"lower"})";
}

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
        starterOf(state, howe("6", "24", "4,5",
                              onJoints("dead", "10") + "," + onJoints("snow", "2 * 4") + "," +
                                  onJoints("wind", "-3")));
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
    const Outcome<Truss> truss =
        starterOf(state, howe("4", "48 ft", "7 ft 6 in", onJoints("", "5")));
    REQUIRE(truss.ok());
    CHECK(extent(truss.value()).high.y == 7.5);
    CHECK(truss.value().units == state.truss.units);
}

TEST_CASE("what can't be read, or is no size, is named") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const auto faultOf = [&state](const std::string& typed) {
        const Outcome<Truss> truss = starterOf(state, typed);
        REQUIRE_FALSE(truss.ok());
        return said(*state.book, truss.issues().front().says);
    };
    const std::string one = onJoints("", "1");
    CHECK_THAT(faultOf(howe("4", "wide", "3", one)), ContainsSubstring("wide"));
    CHECK_THAT(faultOf(howe("4", "12", "high", one)), ContainsSubstring("high"));
    CHECK_THAT(faultOf(howe("4", "12", "3", one + "," + onJoints("snow", "deep"))),
               ContainsSubstring("deep"));
    CHECK_THAT(faultOf(howe("4", "", "3", one)), StartsWith("Span: is empty"));
    CHECK_THAT(faultOf(howe("4", "12", "1e999", one)), StartsWith("Rise: "));
    CHECK_THAT(faultOf(howe("4", "12", "3", onJoints("", "<"))), StartsWith("Load: "));
    CHECK_FALSE(faultOf(howe("4", "0", "3", one)).empty());
    CHECK_FALSE(faultOf("no JSON").empty());
    CHECK_THAT(faultOf(howe("60", "12", "3", one)), ContainsSubstring("3 to 24 panels"));
    CHECK_THAT(faultOf(howe("4.5", "12", "3", one)), ContainsSubstring("whole number"));
}

TEST_CASE("loads on areas and lines are typed in their units, and a rise may be a pitch") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const auto roof = [&](const std::string& rise, const std::string& size) {
        return starterOf(state, R"({"kind":"howe-roof","span":"12","rise":")" + rise +
                                    R"(","panels":4,"spacing":"5","loads":[{"case":"snow",)"
                                    R"("kind":"snow","as":"area-on-plan","size":")" +
                                    size + R"("}],"rule":"en-6.10"})");
    };
    for (const char* typed : {"0,8", "0,8 kN/m²", "0,8 kN/m2", "0,8 kN/m^2", "800 N/m²"}) {
        const Outcome<Truss> truss = roof("45°", typed);
        CAPTURE(typed);
        REQUIRE(truss.ok());
        CHECK(extent(truss.value()).high.y > 5.999);
        CHECK(std::get<JointForce>(truss.value().loads[1].what).fy < -11.99); // 0.8 · 3 · 5
        CHECK(truss.value().cases.front().kind == "snow");
        CHECK_FALSE(truss.value().combinations.empty());
    }
    const Outcome<Truss> wrong = roof("2", "0,8 kN/m");
    REQUIRE_FALSE(wrong.ok());
    CHECK_THAT(said(*state.book, wrong.issues().front().says), ContainsSubstring("kN/m²"));
}

TEST_CASE("factors and national values are typed like sizes, and kept in the outline") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const auto made = [&](const std::string& rule) {
        return starterOf(state, R"({"kind":"howe-roof","span":"12","rise":"3","panels":4,)"
                                R"("spacing":"5","loads":[)"
                                R"({"case":"G","kind":"permanent","as":"joint","size":"1"},)"
                                R"({"case":"S","kind":"snow","as":"joint","size":"2"}],"rule":)" +
                                    rule + "}");
    };
    const Truss usual = made(R"("en-6.10")").value();
    const Truss own = made(R"({"by":"en-6.10","permanent":"1,2","favourable":"",)"
                           R"("national":{"snow":["0,7",0.5,"0,2"]}})")
                          .value();
    CHECK_THAT(own.form, ContainsSubstring(R"("permanent":1.2,"national":{"snow":[0.7,0.5,0.2]})"));
    const auto greatest = [](const Truss& truss) {
        double factor = 0; // of the permanent case, over all combinations
        for (const Combination& each : truss.combinations) {
            factor = std::max(factor, each.factors.front().second);
        }
        return factor;
    };
    CHECK(greatest(usual) == 1.35);
    CHECK(greatest(own) == 1.2);
    const Outcome<Truss> wrong = made(R"({"by":"en-6.10","variable":"much"})");
    REQUIRE_FALSE(wrong.ok());
    CHECK_THAT(said(*state.book, wrong.issues().front().says), ContainsSubstring("much"));
    CHECK_FALSE(made(R"({"by":"en-6.10","national":{"snow":["0,7","soft","0"]}})").ok());
    CHECK_FALSE(made(R"({"by":"en-6.10","permanent":"-1"})").ok());
}

TEST_CASE("what each joint gets is shown as tables that can be checked by hand") {
    const AppState state = boardIn(LengthUnit::m, ForceUnit::kN);
    const std::string html = starterShares(
        state, R"({"kind":"howe-roof","span":"12","rise":"3","panels":4,"spacing":"5","loads":[)"
               R"({"case":"S <1>","kind":"snow","as":"area-on-plan","size":"0,8"},)"
               R"({"case":"W","kind":"wind","as":"area-normal","left":"0,3","right":"-0,4"}]})");
    // Panels of 3 m: 0.8 kN/m² · 3 m · 5 m = 12 kN, half of it over a support.
    CHECK_THAT(html, ContainsSubstring("S &lt;1&gt;: 0,8\u2009kN/m²"));
    CHECK_THAT(html, ContainsSubstring("<td>3</td><td>−12</td>"));
    CHECK_THAT(html, ContainsSubstring("<td>1,5</td><td>−6</td>"));
    CHECK_THAT(html, ContainsSubstring("0,3\u2009kN/m² left, −0,4\u2009kN/m² right of the ridge"));
    CHECK_THAT(html, ContainsSubstring("half of what lies on either side"));
    CHECK(starterShares(state, "no JSON").empty());
}

TEST_CASE("the board's outline is offered again until somebody touches its joints") {
    Board board;
    const Truss made = starterOf(board.state, howe("6", "24", "4.5", onJoints("", "10"))).value();
    board.act(OpenText{writeModel(made)});
    CHECK(outlineOf(board.state) == made.form);
    board.act(Commit{SetTitle{"Hall"}});
    CHECK(outlineOf(board.state) == made.form);
    board.act(Commit{MoveJoint{JointId{2}, {8, -1}}});
    CHECK(outlineOf(board.state).empty());
}

TEST_CASE("the forms are listed in the language of the page, with what they are measured in") {
    AppState state = boardIn(LengthUnit::ft, ForceUnit::kip);
    CHECK_THAT(starterForms(state), ContainsSubstring(R"("length":"ft","force":"kip")"));
    CHECK_THAT(starterForms(state),
               ContainsSubstring(R"({"word":"howe","name":"Howe","fewest":3,"most":24,"step":1,)"
                                 R"("loaded":"lower","sizes":["heel"],"pitched":false})"));
    CHECK_THAT(starterForms(state), ContainsSubstring(R"("unit":"kip/ft²")"));
    // EN 1990:2002, tables A1.1 and A1.2(B).
    CHECK_THAT(starterForms(state), ContainsSubstring(R"("psi":[0.5,0.2,0])"));
    CHECK_THAT(
        starterForms(state),
        ContainsSubstring(R"({"word":"favourable","name":"Permanent, favourable","usual":1})"));
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
