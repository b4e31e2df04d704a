#include "app/page/ground.hpp"

#include "app/board.hpp"
#include "app/state/update.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_floating_point.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <string>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;
using Catch::Matchers::WithinRel;

namespace {

AppState groundBoard(LengthUnit unit, char sign = '.') {
    Truss truss;
    truss.units.length = unit;
    truss.classSettings.decimalSign = sign;
    return startWith(truss);
}

double metresIn(const std::string& answer) {
    const std::string key = "\"metres\":";
    const std::size_t at = answer.find(key);
    REQUIRE(at != std::string::npos);
    return std::stod(answer.substr(at + key.size()));
}

} // namespace

TEST_CASE("the length between the marks on a photograph is read in the unit of the board") {
    CHECK(groundPlace(groundBoard(LengthUnit::m), "6") == R"({"unit":"m","metres":6})");
    CHECK(groundPlace(groundBoard(LengthUnit::m), "600 cm") == R"({"unit":"m","metres":6})");
    CHECK(groundPlace(groundBoard(LengthUnit::mm), "2500") == R"({"unit":"mm","metres":2.5})");
    // 20 ft = 20 · 0.3048 m
    CHECK_THAT(metresIn(groundPlace(groundBoard(LengthUnit::m), "20 ft")), WithinRel(6.096, 1e-14));
    CHECK_THAT(metresIn(groundPlace(groundBoard(LengthUnit::ft), "20")), WithinRel(6.096, 1e-14));
    CHECK(groundPlace(groundBoard(LengthUnit::m, ','), "2,5") == R"({"unit":"m","metres":2.5})");
}

TEST_CASE("a length that scales nothing is refused in words") {
    const AppState state = groundBoard(LengthUnit::m);
    for (const char* typed : {"0", "-3", "1e9", "0.0001"}) {
        CAPTURE(typed);
        CHECK_THAT(groundPlace(state, typed), ContainsSubstring("between 1 mm and 10 km"));
    }
    for (const char* typed : {"wide", "6 kN", "2*"}) {
        CAPTURE(typed);
        CHECK_THAT(groundPlace(state, typed), ContainsSubstring("\"fault\":"));
    }
}

TEST_CASE("one joint that is picked is offered as the place of the first mark, in metres") {
    Truss truss;
    truss.units.length = LengthUnit::mm;
    truss.joints.push_back({"A", {1500, -250}, {}});
    truss.joints.push_back({"B", {0, 0}, {}});
    AppState state = startWith(truss);
    CHECK(groundPlace(state, "") == R"({"unit":"mm"})");
    Things picked;
    picked.joints = {JointId{0}};
    update(state, {SetSelection{picked}});
    CHECK(groundPlace(state, "") == R"({"unit":"mm","joint":"A","x":1.5,"y":-0.25})");
    picked.joints = {JointId{0}, JointId{1}};
    update(state, {SetSelection{picked}});
    CHECK(groundPlace(state, "") == R"({"unit":"mm"})");
}

TEST_CASE("a photograph that comes is seen whole, and is no step of the history") {
    AppState state = groundBoard(LengthUnit::ft);
    const std::uint64_t revision = state.revision;
    showGround(state, 7, {{-3.048, 0}, {30.48, 6.096}}); // −10 ft to 100 ft, 0 to 20 ft
    const Camera& camera = state.view.camera;
    CHECK(state.view.ground == 7);
    CHECK(state.revision == revision);
    CHECK(state.history.past().empty());
    const Vec2 low = toPixel(camera, {-10, 0});
    const Vec2 high = toPixel(camera, {100, 20});
    CHECK(low.x > 0);
    CHECK(high.x < camera.size.x);
    CHECK(high.y > 0);
    CHECK(low.y < camera.size.y);
    CHECK_THAT(high.x - low.x, WithinRel(110 * camera.scale, 1e-9));
    const Camera before = camera;
    showGround(state, 8, {});
    CHECK(state.view.camera == before);
    showGround(state, 0, {});
    CHECK(state.view.ground == 0);
}
