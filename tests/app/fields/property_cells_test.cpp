#include "app/fields/cell_text.hpp"

#include "app/board.hpp"
#include "app/fields/cells.hpp"
#include "app/fields/fields.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/catalogue/usual_materials.hpp"

#include <catch2/catch_approx.hpp>
#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

namespace {

Board typing(Truss truss = roof()) {
    Board board;
    board.state = startWith(std::move(truss));
    return board;
}

} // namespace

TEST_CASE("a section typed as a shape with its dimensions has the area that follows") {
    Board board = typing();
    type(board, "section.0.id", "post");
    for (const char* text : {"chs 48.3 × 3.2", "chs 48.3 3.2", "chs 48.3x3.2", "chs 48.3 x 3.2"}) {
        type(board, "section.0.make", text);
        const Section& section = board.state.truss.sections.at(0);
        CAPTURE(text);
        CHECK(section.shape == "chs");
        CHECK(makeText(section) == "chs 48.3×3.2");
        // π·(D − t)·t
        CHECK(propertiesOf(section).area.value() == Catch::Approx(3.14159265 * (48.3 - 3.2) * 3.2));
    }
    type(board, "section.0.make", "A 1200, r 25");
    CHECK(board.state.truss.sections[0].shape.empty());
    CHECK(board.state.truss.sections[0].area == 1200);
    CHECK(board.state.truss.sections[0].radius == 25);
}

TEST_CASE("what is no section is said, and the section stays") {
    Board board = typing();
    type(board, "section.0.id", "post");
    type(board, "section.0.make", "rhs 100 × 60 × 4");
    const Truss before = board.state.truss;
    for (const char* text : {"rhs 100 × 60", "tube 3", "A", "rhs 100 × 60 × 40"}) {
        CAPTURE(text);
        type(board, "section.0.make", text);
        CHECK(board.state.truss == before);
        CHECK(board.state.message.kind == MessageKind::Problem);
        CHECK_FALSE(board.state.message.text.empty());
    }
}

TEST_CASE("members and sections follow when a section or a material is named anew") {
    Board board = typing();
    type(board, "material.0.id", "steel");
    type(board, "material.0.E", "210 GPa");
    CHECK(board.state.truss.materials[0].E == 210000);
    type(board, "material.0.alpha", "12"); // millionths per K
    CHECK(board.state.truss.materials[0].alpha.value() == Catch::Approx(12e-6));
    CHECK(cellText(board.state.truss, {CellTable::Materials, 0, column::kMaterialAlpha}) == "12");
    type(board, "section.0.id", "bar");
    type(board, "section.0.material", "steel");
    type(board, "member.1.section", "bar");
    type(board, "section.0.id", "rod");
    type(board, "material.0.id", "S355");
    CHECK(board.state.truss.members[1].section == "rod");
    CHECK(board.state.truss.sections[0].material == "S355");
    board.act(Commit{RemoveSection{0}});
    CHECK(board.state.truss.members[1].section.empty());
    CHECK(undoText(board.state) == "Remove section");
    board.act(Undo{});
    CHECK(board.state.truss.members[1].section == "rod");
}

TEST_CASE("a name that no section has is refused with a sentence") {
    Board board = typing();
    type(board, "member.0.section", "beam");
    CHECK(board.state.truss.members[0].section.empty());
    CHECK(board.state.message.text.find("beam") != std::string::npos);
}

TEST_CASE("temperature, misfit and settlement are typed, and cleared by an empty text") {
    Board board = typing();
    type(board, "member.0.misfit", "2");
    type(board, "support.0.settle", "0, -5");
    type(board, "support.1.settle", "−3");
    CHECK(board.state.truss.members[0].misfit == 2);
    CHECK(board.state.truss.supports[0].settle == Vec2{0, -5});
    CHECK(board.state.truss.supports[1].settleAlong == -3);
    CHECK(settleText(board.state.truss.supports[0]) == "0, -5");
    type(board, "member.0.misfit", "");
    type(board, "support.0.settle", "");
    type(board, "support.1.settle", "");
    CHECK(board.state.truss == roof());
}

TEST_CASE("the load along a chord is typed where its size stands, and keeps its direction") {
    Truss truss = roof();
    truss.loads = {{ChordLoad{{JointId{0}, JointId{1}}, -1}, {}, {}}};
    Board board = typing(truss);
    CHECK_FALSE(canType(board.state.truss, {CellTable::Loads, 0, column::kLoadSecond}));
    type(board, "load.0.first", "2.5");
    CHECK(std::get<ChordLoad>(board.state.truss.loads[0].what).perLength == -2.5);
}

TEST_CASE("steel to begin with has 210 GPa in whatever unit the model writes") {
    Units units;
    units.stress = StressUnit::ksi;
    // 210 GPa over 6.894757 MPa a ksi (NIST SP 811, B.8).
    CHECK(usualSteel(englishPhrases(), units).E.value() ==
          Catch::Approx(210000 / 6.894757).epsilon(1e-6));
}
