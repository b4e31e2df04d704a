#include "design/loading/outline.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/forms/outline_file.hpp"
#include "exchange/json/json_value.hpp"
#include "statics/solve/solution.hpp"
#include "workshop/workshop.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;

namespace {

JsonValue asked(const std::string& request) {
    return parseJson(workshopReply(englishPhrases(), request)).value();
}

std::string quoted(const std::string& text) {
    JsonValue value;
    value.kind = JsonValue::Kind::Text;
    value.text = text;
    return jsonText(value);
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
