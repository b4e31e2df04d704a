// Two trusses beside each other, and a truss with one joint elsewhere.
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "model/edit/edit.hpp"
#include "support/quoted.hpp"
#include "support/trusses/checked_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "workshop/workshop.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;
using Catch::Matchers::ContainsSubstring;

namespace {

JsonValue compared(const Truss& first, const Truss& second) {
    return parseJson(workshopReply(englishPhrases(),
                                   R"({"do":"compare","model":)" + quoted(writeModel(first)) +
                                       R"(,"other":)" + quoted(writeModel(second)) + "}"))
        .value();
}

std::vector<std::string> linesOf(const JsonValue& reply, const char* key = "lines") {
    std::vector<std::string> lines;
    if (const JsonValue* all = reply.find(key)) {
        for (const JsonValue& line : all->items) {
            lines.push_back(line.text);
        }
    }
    return lines;
}

bool isAmongLines(const JsonValue& reply, const std::string& line) {
    const std::vector<std::string> lines = linesOf(reply);
    UNSCOPED_INFO(line);
    return std::find(lines.begin(), lines.end(), line) != lines.end();
}

// The texts of a row: of the first, of the second, and how much the second has more.
std::vector<std::string> rowOf(const JsonValue& reply, const std::string& name) {
    for (const JsonValue& row : reply.find("rows")->items) {
        if (textUnder(row, "name") == name) {
            return {textUnder(row, "first"), textUnder(row, "second"), textUnder(row, "more")};
        }
    }
    return {};
}

using Row = std::vector<std::string>;

JsonValue movedTo(const Truss& truss, const std::string& joint, const std::string& x,
                  const std::string& y) {
    return parseJson(workshopReply(englishPhrases(), R"({"do":"move","model":)" +
                                                         quoted(writeModel(truss)) +
                                                         R"(,"joint":")" + joint + R"(","x":)" + x +
                                                         R"(,"y":)" + y + "}"))
        .value();
}

} // namespace

TEST_CASE("a truss differs in nothing from itself, nor from itself in other units") {
    const JsonValue same = compared(steelGable(), steelGable());
    CHECK(linesOf(same) ==
          std::vector<std::string>{"The two are the same but for what is not compared: titles and "
                                   "the order of things."});
    CHECK(rowOf(same, "Greatest compression, kN") == Row{"20, AC", "20, AC", "0"});
    Units imperial;
    imperial.length = LengthUnit::ft;
    imperial.force = ForceUnit::kip;
    imperial.section = LengthUnit::in;
    imperial.stress = StressUnit::ksi;
    const Truss feet = apply(steelGable(), Edit(SetUnits{imperial, true})).value();
    const JsonValue other = compared(steelGable(), feet);
    CHECK(linesOf(other) == linesOf(same));
    CHECK(linesOf(other, "remarks").front() ==
          "The second is in other units; its figures are in those of the first.");
    CHECK(rowOf(other, "Width, m") == Row{"8", "8", "0"});
}

TEST_CASE("a ridge that is raised is told with both places, and the forces that follow") {
    Truss steep = steelGable();
    steep.joints[2].at.y = 4; // rafters of √(4² + 4²): 12 kN · √2 = 16.97 kN, the tie 12 kN
    const JsonValue reply = compared(steelGable(), steep);
    CHECK(linesOf(reply) ==
          std::vector<std::string>{"Joint C: at (4, 3) in the first, at (4, 4) in the second."});
    CHECK(rowOf(reply, "Height, m") == Row{"3", "4", "+1"});
    CHECK(rowOf(reply, "Greatest compression, kN") == Row{"20, AC", "16.97, AC", "−3.03"});
    CHECK(rowOf(reply, "Greatest tension, kN") == Row{"16, AB", "12, AB", "−4"});
}

TEST_CASE("joints and members that one of the two has alone are named, and marked in its figure") {
    Truss propped = steelGable();
    propped.joints.push_back({"D", {4, 0}, {}});
    propped.members[memberAt(propped, "A", "B")].b = JointId{3};
    propped.members.push_back({JointId{3}, JointId{1}, "bar"});
    propped.members.push_back({JointId{3}, JointId{2}, "bar"});
    const JsonValue reply = compared(steelGable(), propped);
    CHECK(isAmongLines(reply, "Joints of the second alone: D."));
    CHECK(isAmongLines(reply, "Members of the first alone: AB."));
    CHECK(isAmongLines(reply, "Members of the second alone: AD, DB, DC."));
    const std::vector<JsonValue>& marked = reply.find("marked")->items;
    REQUIRE(marked.size() == 2);
    CHECK(marked[0].items.size() == 1);
    CHECK(marked[1].items.size() == 3);
    for (const std::string& figure : linesOf(reply, "figures")) {
        CHECK_THAT(figure, ContainsSubstring("<svg"));
    }
}

TEST_CASE("a joint that is called otherwise in the second is known by its place") {
    Truss renamed = steelGable();
    renamed.joints[2].label = "ridge";
    const JsonValue reply = compared(steelGable(), renamed);
    CHECK(linesOf(reply) ==
          std::vector<std::string>{"Joint C of the first is called ridge in the second."});
    // Two that have changed names differ in their places instead.
    Truss swapped = steelGable();
    std::swap(swapped.joints[0].label, swapped.joints[1].label);
    CHECK(isAmongLines(compared(steelGable(), swapped),
                       "Joint A: at (0, 0) in the first, at (8, 0) in the second."));
}

TEST_CASE("sections, materials, supports, loads and settings that differ are told") {
    const Truss first = steelGable();
    Truss second = first;
    second.sections.push_back(second.sections.front());
    second.sections.back().id = "stout";
    second.sections.back().area = 2000;
    second.members[memberAt(second, "A", "C")].section = "stout";
    second.members[memberAt(second, "C", "B")].section = "stout";
    second.materials.front().strength = 355;
    second.supports.back().reaction = 60;
    second.loads.front().what = JointForce{JointId{2}, 2, -30};
    second.loads.push_back({SelfWeight{}, "", {}});
    second.members[memberAt(second, "A", "B")].warming = 20;
    second.checks.formula = ColumnFormula::En1993;
    second.combinations = {{"both", {{"loads", 1.5}}, {}}};
    const JsonValue reply = compared(first, second);
    CHECK(isAmongLines(reply, "bar in the first, stout in the second: members AC, CB."));
    CHECK(isAmongLines(reply, "Material steel has other values in the second."));
    CHECK(isAmongLines(reply, "Other supports in the second: at B."));
    CHECK(isAmongLines(reply, "Load on C, case loads: to the right 0 and upwards −24 in the first, "
                              "2 and −30 in the second."));
    CHECK(isAmongLines(reply, "The own weight counts in the second alone."));
    CHECK(isAmongLines(reply, "Another temperature, lack of fit or K in the second: members AB."));
    CHECK(isAmongLines(reply, "The combinations differ."));
    CHECK(isAmongLines(reply, "Members are checked otherwise."));
    CHECK(linesOf(reply).size() == 8);
    const JsonValue back = compared(second, first);
    CHECK(isAmongLines(back, "The own weight counts in the first alone."));
    CHECK(linesOf(back).size() == 8);
}

TEST_CASE("what can't be computed of one of the two is said, and the rest is compared") {
    Truss loose = steelGable();
    loose.supports.pop_back();
    const JsonValue reply = compared(steelGable(), loose);
    CHECK(rowOf(reply, "Greatest tension, kN")[1] == "–");
    CHECK(rowOf(reply, "Members") == Row{"3", "3", "0"});
    CHECK_THAT(linesOf(reply, "remarks").front(), ContainsSubstring("The second has no forces"));
    CHECK(linesOf(compared(steelGable(), Truss{}), "faults").size() == 1);
    const JsonValue none =
        parseJson(workshopReply(englishPhrases(), R"({"do":"compare","model":)" +
                                                      quoted(writeModel(steelGable())) +
                                                      R"(,"other":"no truss"})"))
            .value();
    CHECK(none.find("faults"));
}

TEST_CASE("a joint is moved to another place, and the truss is opened anew with it") {
    const JsonValue reply = movedTo(steelGable(), "C", "5", "3.5");
    REQUIRE_FALSE(reply.find("faults"));
    const Truss moved = readModel(textUnder(reply, "model")).value().truss;
    CHECK(moved.joints[2].at == Vec2{5, 3.5});
    CHECK(moved.members == steelGable().members);
    CHECK(linesOf(reply, "joints") == std::vector<std::string>{"A", "B", "C"});
    REQUIRE(reply.find("places")->items.size() == 3);
    CHECK(reply.find("places")->items[2].items[1].number == 3.5);
}

TEST_CASE("a joint is not moved onto another, nor nowhere, nor one that there is not") {
    CHECK_THAT(linesOf(movedTo(steelGable(), "C", "8", "0"), "faults").front(),
               ContainsSubstring("would come to lie on joint B"));
    CHECK_THAT(linesOf(movedTo(steelGable(), "C", "1e300", "0"), "faults").front(),
               ContainsSubstring("two numbers"));
    CHECK_THAT(linesOf(movedTo(steelGable(), "C", "\"far\"", "0"), "faults").front(),
               ContainsSubstring("two numbers"));
    CHECK_THAT(linesOf(movedTo(steelGable(), "Z", "1", "1"), "faults").front(),
               ContainsSubstring("no joint Z"));
}
