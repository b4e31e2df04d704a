#include "canvas/scene/movement.hpp"

#include "app/board.hpp"

#include <catch2/catch_approx.hpp>
#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <cmath>

using namespace gusset;
using namespace gusset::support;

namespace {

// The roof with bars of 200 GPa and 1000 mm².
Truss stiffRoof() {
    Truss truss = roof();
    Material steel;
    steel.id = "steel";
    steel.E = 200000;
    truss.materials = {steel};
    Section bar;
    bar.id = "bar";
    bar.material = "steel";
    bar.area = 1000;
    truss.sections = {bar};
    for (Member& member : truss.members) {
        member.section = "bar";
    }
    return truss;
}

Board boardWith(Truss truss) {
    Board board;
    board.state = startWith(std::move(truss));
    return board;
}

Board movementPageOf(Truss truss) {
    Board board = boardWith(std::move(truss));
    board.act(Set{&NotebookState::tab, NotebookTab::Forces});
    board.act(Set{&NotebookState::results, ResultPage::Movement});
    board.solution();
    return board;
}

double largestStep(const Movement& movement, const Truss& truss) {
    double most = 0;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        most = std::max(most, length(movement.at[i] - truss.joints[i].at));
    }
    return most;
}

} // namespace

TEST_CASE("the deflected shape is drawn as many times too large as its caption says") {
    Board board = movementPageOf(stiffRoof());
    const auto movement = movementShown(board.state, board.derived);
    REQUIRE(movement);
    CHECK_FALSE(movement->mechanism);
    // By virtual work C moves down by Σ F·n·L/EA = (2·6.25·0.625·5 + 3.75·0.375·6)/EA = 47.5/EA,
    // and EA is 200 GPa · 1000 mm² = 200,000 kN: 0.2375 mm.
    const double down = board.state.truss.joints[2].at.y - movement->at[2].y;
    CHECK(down == Catch::Approx(movement->times * 47.5 / 200000).epsilon(1e-9));
    // Enlarged by 1, 2 or 5 times a power of ten, to something between 3 and 8 % of the span.
    const double leading =
        movement->times / std::pow(10, std::floor(std::log10(movement->times) + 1e-9));
    CHECK((leading == Catch::Approx(1) || leading == Catch::Approx(2) ||
           leading == Catch::Approx(5)));
    const double share = largestStep(*movement, board.state.truss) / 6;
    CHECK(share <= 0.08);
    CHECK(share >= 0.03);
}

TEST_CASE("one step larger goes on along 1, 2, 5, 10, and back") {
    Board board = movementPageOf(stiffRoof());
    std::vector<double> times;
    for (int step = -4; step <= 4; ++step) {
        board.act(Set{&View::enlarge, step});
        times.push_back(movementShown(board.state, board.derived)->times);
    }
    for (std::size_t i = 0; i + 3 < times.size(); ++i) {
        CHECK(times[i + 3] == Catch::Approx(10 * times[i]));
        CHECK(times[i + 1] > times[i]);
    }
}

TEST_CASE("the caption of the board states the scale, and the joint that moves most its way") {
    Board board = movementPageOf(stiffRoof());
    const Scene scene = buildScene(board.state, board.derived, measure);
    const double times = movementShown(board.state, board.derived)->times;
    const auto shows = [&](const std::string& text) {
        return std::any_of(scene.labels.begin(), scene.labels.end(),
                           [&](const LabelMark& label) { return label.text == text; });
    };
    CHECK(shows("Displacements drawn " + timesText(board.state.truss, times)));
    // √(0.2375² + 0.05625²) mm: C moves horizontally by half the elongation of AB.
    CHECK(shows("0.244\u2009mm"));
}

TEST_CASE("without sections there is no deflected shape but a sentence on what it lacks") {
    Board board = movementPageOf(roof());
    CHECK_FALSE(movementShown(board.state, board.derived));
    REQUIRE(board.derived.movementLines.size() == 1);
    CHECK(board.derived.movementLines.front().find("a material with its E") != std::string::npos);
}

TEST_CASE("a mechanism swings when it is played, keeps its members' lengths at first, and comes to "
          "rest") {
    Truss truss = roof();
    truss.members.pop_back(); // C is held by B alone
    Board board = boardWith(truss);
    board.solution();
    CHECK_FALSE(movementShown(board.state, board.derived));
    board.act(SetMotion{{.plays = true, .elapsed = 0.05}});
    const auto movement = movementShown(board.state, board.derived);
    REQUIRE(movement);
    CHECK(movement->mechanism);
    for (const Member& member : truss.members) {
        const double before =
            length(truss.joints[member.a.at()].at - truss.joints[member.b.at()].at);
        const double now = length(movement->at[member.a.at()] - movement->at[member.b.at()]);
        CHECK(now == Catch::Approx(before).epsilon(0.002)); // of second order in the step
    }
    CHECK(largestStep(*movement, truss) > 0.01);
    int frames = 0;
    while (board.state.motion.plays && frames < 1000) {
        board.act(SetMotion{laterMotion(board.state, board.derived, 1.0 / 60, false)});
        ++frames;
    }
    CHECK(frames > 120); // several seconds, not a twitch
    CHECK(frames < 600);
}

TEST_CASE("with reduced motion nothing swings") {
    Board board = movementPageOf(stiffRoof());
    board.act(SetMotion{{.plays = true}});
    board.act(SetMotion{laterMotion(board.state, board.derived, 0.016, true)});
    CHECK_FALSE(board.state.motion.plays);
    CHECK(movementShown(board.state, board.derived)); // the shape itself remains
}

TEST_CASE("exact forces come in slices and are dropped with the next edit") {
    Board board = boardWith(roof());
    int slices = 1;
    for (Slice unit = oneUnit(); deriveExact(board.state, board.derived, unit); unit = oneUnit()) {
        ++slices;
        REQUIRE(slices < 1000);
    }
    CHECK(slices > 1);
    // 10 kN at C over the 3-4-5 roof: AB = 15/4, the rafters −25/4.
    CHECK(board.derived.exact.forces ==
          std::vector<std::string>{"15/4", "\u221225/4", "\u221225/4"});
    board.act(Commit{RenameJoint{JointId{0}, "P"}});
    derive(board.state, board.derived);
    CHECK_FALSE(isOf(board.derived.exact, board.state));
}
