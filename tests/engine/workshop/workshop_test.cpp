#include "design/loading/outline.hpp"
#include "design/sizing/stock.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_value.hpp"
#include "statics/solve/solution.hpp"
#include "support/quoted.hpp"
#include "workshop/workshop.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using gusset::support::quoted;

namespace {

JsonValue asked(const std::string& request) {
    return parseJson(workshopReply(englishPhrases(), request)).value();
}

Truss hall() {
    Outline outline;
    outline.form = {.kind = FormKind::HoweRoof, .span = 18, .rise = 3, .panels = 6};
    outline.spacing = 5;
    outline.loads = {{{"G", LoadSpread::AreaOnSlope, 0.4, 0.4}, "permanent", LoadedChord::Upper},
                     {{"S", LoadSpread::AreaOnPlan, 0.9, 0.9}, "snow", LoadedChord::Upper}};
    outline.rule = CombinationWish{};
    Truss truss = trussOf(englishPhrases(), outline).value();
    truss.form = outlineText(outline);
    return truss;
}

std::string request(const std::string& what, const Truss& truss, const std::string& more = "") {
    return R"({"do":")" + what + R"(","model":)" + quoted(writeModel(truss)) +
           R"(,"grade":"S235","kinds":["chs"])" + more + "}";
}

std::string faultOf(const std::string& text) {
    const JsonValue reply = asked(text);
    const JsonValue* faults = reply.find("faults");
    REQUIRE(faults);
    return faults->items.front().text;
}

} // namespace

TEST_CASE("the workshop opens a model with its groups and what there is to choose from") {
    const JsonValue reply = asked(request("open", hall()));
    REQUIRE(reply.find("groups")->items.size() == 4);
    CHECK(textUnder(reply.find("groups")->items.front(), "name") == "upper chord");
    CHECK(reply.find("groups")->items.front().find("members")->items.size() == 6);
    CHECK(reply.find("kinds")->items.size() > 20);
    CHECK(isYes(reply, "outline"));
    const std::vector<JsonValue>& grades = reply.find("grades")->items;
    CHECK(std::any_of(grades.begin(), grades.end(),
                      [](const JsonValue& it) { return it.text == "S355"; }));
}

TEST_CASE("an empty board has lists, of nothing") {
    const JsonValue reply = asked(request("open", Truss{}));
    for (const char* list : {"joints", "members", "places", "groups", "weightCases", "notes"}) {
        INFO(list);
        REQUIRE(reply.find(list));
    }
    CHECK(reply.find("joints")->items.empty());
}

TEST_CASE("a group of one member is said to have one") {
    const Truss truss =
        makeForm(englishPhrases(), {.kind = FormKind::KingPost, .span = 8, .rise = 2, .load = 10})
            .value();
    const JsonValue reply = asked(request("size", truss));
    const std::vector<JsonValue>& lines = reply.find("lines")->items;
    CHECK(std::any_of(lines.begin(), lines.end(), [](const JsonValue& line) {
        return line.text.starts_with("posts: ") &&
               line.text.find(", 1 member, 2.0") != std::string::npos;
    }));
}

TEST_CASE("the workshop sizes a truss: its model solves, and its mass is the sum of the groups") {
    const JsonValue reply = asked(request("size", hall(), R"(,"deflection":250)"));
    REQUIRE_FALSE(reply.find("faults"));
    CHECK(isYes(reply, "enough"));
    double mass = 0;
    for (const JsonValue& group : reply.find("groups")->items) {
        mass += numberUnder(group, "mass");
        CHECK(numberUnder(group, "use") <= 1);
        CHECK(isYes(group, "enough"));
    }
    CHECK(std::abs(numberUnder(reply, "mass") - mass) < 1e-6 * mass);
    const Truss sized = readModel(textUnder(reply, "model")).value().truss;
    CHECK(solve(sized).displaced);
    CHECK(numberUnder(reply, "deflection") <= 18.0 / 250);
    CHECK(reply.find("caution")->items.size() == 3);
    CHECK_FALSE(textUnder(reply, "link").empty());
}

TEST_CASE(
    "the own weight of the chosen profiles acts in a permanent case, if it is to be counted") {
    const Truss truss = hall();
    const JsonValue opened = asked(request("open", truss));
    CHECK_FALSE(isYes(opened, "weighs"));
    REQUIRE(opened.find("weightCases")->items.size() == 1);
    CHECK(opened.find("weightCases")->items.front().text == "G");
    const JsonValue reply = asked(request("size", truss, R"(,"weight":"G")"));
    REQUIRE_FALSE(reply.find("faults"));
    const Truss sized = readModel(textUnder(reply, "model")).value().truss;
    CHECK(hasOwnWeight(sized));
    // The supports carry it too: 9.81 N/kg (its standard value 9.80665), and no more than that.
    const auto carried = [](const Truss& it) {
        const Solution solution = solve(it, OneCase{"G"});
        double up = 0;
        for (const Vec2& reaction : solution.jointReactions) {
            up += reaction.y;
        }
        return up;
    };
    Truss without = sized;
    std::erase_if(without.loads,
                  [](const Load& load) { return std::holds_alternative<SelfWeight>(load.what); });
    CHECK(std::abs((carried(sized) - carried(without)) / (9.80665 * numberUnder(reply, "mass")) -
                   1) < 1e-6);
    CHECK(faultOf(request("size", truss, R"(,"weight":"X")")) ==
          "The own weight can’t be added to the load case X: the truss has no such case.");
}

TEST_CASE("a profile has the strength that its grade has for its thickness") {
    // EN 1993-1-1:2005, table 3.1: S235 over 40 mm and up to 80 mm has f_y = 215, f_u = 360 MPa.
    const auto solid = [](const char* name, double diameter) {
        Section section{name, "", {}, {}, "round", {{"D", diameter}}, {}};
        return Profile{section, LengthUnit::mm};
    };
    const Stock stock =
        stockOf("S235", {solid("thin", 40), solid("thick", 60), solid("none", 90)}, {}).value();
    CHECK(stock.leftOut == 1);
    REQUIRE(stock.sections.size() == 2);
    CHECK(stock.sections[0].material == "S235");
    CHECK(stock.sections[1].material == "S235 over 40 mm");
    REQUIRE(stock.materials.size() == 2);
    CHECK(stock.materials[0].strength == 235);
    CHECK(stock.materials[1].strength == 215);
    CHECK(stock.materials[1].ultimate == 360);
    Truss truss;
    putMaterials(truss, stock.materials);
    putMaterials(truss, stock.materials);
    CHECK(truss.materials.size() == 2);
    truss.sections = {stock.sections[1]};
    dropUnused(truss, stock.materials);
    REQUIRE(truss.materials.size() == 1);
    CHECK(truss.materials.front().id == "S235 over 40 mm");
}

TEST_CASE("with an own list alone, profiles come from it") {
    const JsonValue reply = asked(
        R"({"do":"size","grade":"S235","kinds":[],"own":"name,shape,unit,D,t\nthin,chs,mm,60,3\nthick,chs,mm,120,6","model":)" +
        quoted(writeModel(hall())) + "}");
    REQUIRE_FALSE(reply.find("faults"));
    for (const JsonValue& group : reply.find("groups")->items) {
        const std::string profile = textUnder(group, "profile");
        CHECK((profile == "thin" || profile == "thick"));
    }
}

TEST_CASE(
    "while the rise varies, mass and deflection follow, and a rise that makes no truss is a gap") {
    const JsonValue reply =
        asked(request("vary", hall(), R"(,"what":"rise","from":1,"to":5,"count":5)"));
    REQUIRE_FALSE(reply.find("faults"));
    const std::vector<JsonValue>& points = reply.find("points")->items;
    REQUIRE(points.size() == 5);
    for (const JsonValue& point : points) {
        CHECK(numberUnder(point, "mass") > 0);
    }
    CHECK(numberUnder(points[1], "value") == 2);
    // A deeper truss of the same load bends less.
    CHECK(numberUnder(points[4], "deflection") < numberUnder(points[0], "deflection"));
    const JsonValue panels = asked(request("vary", hall(), R"(,"what":"panels","from":4,"to":9)"));
    CHECK(panels.find("points")->items.size() == 3); // 4, 6 and 8
}

TEST_CASE("groups may be of members that are picked, and the others keep their sections") {
    Truss truss = hall();
    const std::string groups =
        R"(,"groups":[{"name":"first","members":[0,1]},{"name":"none","members":[]}])";
    const JsonValue reply = asked(request("size", truss, groups));
    REQUIRE_FALSE(reply.find("faults"));
    REQUIRE(reply.find("groups")->items.size() == 1);
    CHECK(textUnder(reply.find("groups")->items.front(), "name") == "first");
    const Truss sized = readModel(textUnder(reply, "model")).value().truss;
    CHECK_FALSE(sized.members[0].section.empty());
    CHECK(sized.members[0].section == sized.members[1].section);
    CHECK(sized.members[2].section.empty());
    for (const char* bad : {"[0,0]", "[-1]", "[1.5]", "[99999]", "[\"A\"]"}) {
        CHECK(faultOf(request("size", truss,
                              R"(,"groups":[{"name":"x","members":)" + std::string(bad) + "}]"))
                  .find("each in one of them") != std::string::npos);
    }
}

TEST_CASE("another rise and other panels give the truss that the outline makes with them") {
    const Truss truss = hall();
    const JsonValue opened = asked(request("open", truss));
    CHECK(numberUnder(opened, "rise") == 3);
    CHECK(numberUnder(opened, "panels") == 6);
    const JsonValue reply = asked(request("reshape", truss, R"(,"rise":4,"panels":8)"));
    REQUIRE_FALSE(reply.find("faults"));
    CHECK(isYes(reply, "outline"));
    CHECK(numberUnder(reply, "rise") == 4);
    const Truss other = readModel(textUnder(reply, "model")).value().truss;
    Outline outline = readOutline(truss).value();
    outline.form.rise = 4;
    outline.form.panels = 8;
    CHECK(isUntouched(englishPhrases(), other, outline));
    CHECK(other.combinations == truss.combinations);
    CHECK_FALSE(faultOf(request("reshape", truss, R"(,"rise":-1)")).empty());
}

TEST_CASE("the centre lines go out as a drawing, and a drawing comes in with what is doubtful") {
    const Truss truss = hall();
    const std::string dxf = textUnder(asked(request("lines", truss, R"(,"as":"dxf")")), "text");
    const JsonValue back = asked(R"({"do":"trace","drawing":)" + quoted(dxf) + "}");
    REQUIRE_FALSE(back.find("faults"));
    const Truss drawn = readModel(textUnder(back, "model")).value().truss;
    CHECK(drawn.joints.size() == truss.joints.size());
    CHECK(drawn.members.size() == truss.members.size());
    CHECK(jsonText(*back.find("notes")).find("upport") != std::string::npos);
    CHECK_FALSE(isYes(back, "outline"));

    const std::string table = textUnder(asked(request("lines", truss, R"(,"as":"csv")")), "text");
    const JsonValue again = asked(R"({"do":"trace","drawing":)" + quoted(table) + "}");
    CHECK(again.find("members")->items.size() == truss.members.size());

    CHECK(faultOf(R"({"do":"trace","drawing":"no drawing"})").size() > 10);
    CHECK(faultOf(R"({"do":"trace","width":-1,"drawing":)" + quoted(dxf) + "}")
              .find("greater than zero") != std::string::npos);
}

TEST_CASE("what the workshop can't do is said") {
    CHECK(faultOf("{").find("JSON") != std::string::npos);
    CHECK(faultOf(request("dance", hall())).find("nothing that is known") != std::string::npos);
    CHECK(faultOf(R"({"do":"size","grade":"S235","model":)" + quoted(writeModel(hall())) + "}")
              .find("nothing to choose from") != std::string::npos);
    CHECK(faultOf(R"({"do":"size","grade":"B2","kinds":["chs"],"model":)" +
                  quoted(writeModel(hall())) + "}")
              .find("no grade B2") != std::string::npos);
    CHECK(faultOf(request("size", hall(), R"(,"deflection":3)")).find("L/x") != std::string::npos);
    Truss moved = hall();
    moved.joints[2].at.y = -1;
    CHECK(faultOf(request("vary", moved, R"(,"what":"rise","from":1,"to":5)")).find("no more") !=
          std::string::npos);
    CHECK(faultOf(request("vary", hall(), R"(,"what":"rise","from":5,"to":1)"))
              .find("must begin above zero") != std::string::npos);
}
