#include "canvas/scene/short_name.hpp"

#include "app/board.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

const std::string kForty = "Knoten am oberen Ende der linken Strebe!";

TEST_CASE("A name of at most sixteen letters stands on the board as it is") {
    CHECK(shortName("A") == "A");
    CHECK(shortName("").empty());
    CHECK(shortName("sixteen letters!") == "sixteen letters!");
    CHECK(shortName("δεκαέξι γράμματα") == "δεκαέξι γράμματα"); // sixteen, of two bytes each
}

TEST_CASE("A longer name keeps its beginning and its end, and no letter is cut in two") {
    CHECK(shortName("seventeen letters") == "seventee…letters");
    CHECK(shortName(kForty) == "Knoten a…Strebe!");
    CHECK(shortName("桁桁桁桁桁桁桁桁", 5) == "桁桁…桁桁");
    CHECK(shortName("абвгдежзий", 4) == "аб…й");
}

TEST_CASE("Marks on a letter, and signs joined to one, stay together") {
    CHECK(shortName("e\u0301e\u0301e\u0301e\u0301", 3) == "e\u0301…e\u0301");
    const std::string builder = "\U0001F477\u200D\U00002640\uFE0F"; // four code points, one symbol
    CHECK(shortName(builder + "bcd" + builder, 3) == builder + "…" + builder);
}

TEST_CASE(
    "Joints of forty letters are named on the board in short, apart from each other, and within "
    "it") {
    REQUIRE(kForty.size() == 40);
    support::Board board;
    Truss truss = support::roof();
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        truss.joints[i].label = std::to_string(i) + kForty.substr(1);
    }
    board.state = startWith(truss);
    derive(board.state, board.derived);
    const Scene scene = buildScene(board.state, board.derived, support::measure);
    const auto named =
        std::count_if(scene.labels.begin(), scene.labels.end(),
                      [](const LabelMark& mark) { return mark.kind == LabelKind::Joint; });
    CHECK(named == 3);
    const Vec2 page = board.state.view.camera.size;
    for (const LabelMark& mark : scene.labels) {
        const Vec2 half = 0.5 * support::measure(mark.text, mark.kind);
        CAPTURE(mark.text, mark.at.x, mark.at.y);
        CHECK(mark.at.x - half.x >= 0);
        CHECK(mark.at.x + half.x <= page.x);
        for (const LabelMark& other : scene.labels) {
            const Vec2 both = half + 0.5 * support::measure(other.text, other.kind);
            const bool apart = std::abs(mark.at.x - other.at.x) >= both.x ||
                               std::abs(mark.at.y - other.at.y) >= both.y;
            CHECK((&mark == &other || apart));
        }
    }
}

} // namespace
} // namespace gusset
