#include "app/derived/slices.hpp"
#include "phrases/results/jobs.hpp"

#include "app/board.hpp"
#include "app/derived/derived.hpp"
#include "app/page/page_text.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/family_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr double kPlotWidth = 360; // px of a plot

// A page that needs a long calculation, and how to open it.
struct Look {
    NotebookTab tab = NotebookTab::Working;
    WorkingPage working = WorkingPage::Truss;
    ResultPage results = ResultPage::Forces;
};
constexpr Look kLooks[] = {
    {.working = WorkingPage::Truss},
    {.working = WorkingPage::OneForce},
    {.working = WorkingPage::Displacement},
    {.working = WorkingPage::Polygon},
    {.tab = NotebookTab::Forces, .results = ResultPage::Forces},
    {.tab = NotebookTab::Forces, .results = ResultPage::Envelope},
    {.tab = NotebookTab::Forces, .results = ResultPage::Influence},
    {.tab = NotebookTab::Forces, .results = ResultPage::Checks},
};

Board boardOf(Truss truss, const Look& look) {
    Board board;
    board.state = startWith(std::move(truss));
    board.act(SetSelection{{.joints = {}, .members = {MemberId{1}}, .supports = {}, .loads = {}}});
    board.act(Set{&NotebookState::tab, look.tab});
    board.act(Set{&NotebookState::working, look.working});
    board.act(Set{&NotebookState::results, look.results});
    board.act(Set{&NotebookState::exact, true});
    board.act(Set{&NotebookState::checksOfAll, true});
    board.act(Set{&InfluenceView::members, true});
    board.act(Set{&InfluenceView::byHand, true});
    return board;
}

// What the page does in a frame for what is shown. True while there is more to do.
bool goOn(Board& board, Slice& slice) {
    const NotebookState& notebook = board.state.notebook;
    if (notebook.tab == NotebookTab::Working) {
        return deriveWorking(board.state, board.derived, slice);
    }
    derive(board.state, board.derived);
    switch (notebook.results) {
    case ResultPage::Envelope:
        return deriveEnvelope(board.state, board.derived, slice);
    case ResultPage::Influence:
        return deriveInfluence(board.state, board.derived.influence, kPlotWidth, slice);
    case ResultPage::Checks:
        return deriveChecks(board.state, board.derived, slice);
    default:
        return deriveExact(board.state, board.derived, slice);
    }
}

std::string textOf(const Board& board) {
    const Derived& derived = board.derived;
    std::string text = movingHtml(board.state, derived) + workingHtml(board.state, derived) +
                       derived.working.asks + derived.working.spaces.says +
                       derived.working.drawing.sketch.says +
                       passagesHtml(derived.influence.byHand.passages) + derived.exact.whyNot;
    for (const std::string& force : derived.exact.forces) {
        text += force + " ";
    }
    return text;
}

// The progress of the job for what is shown; 1 if there is none.
double shareOf(const Board& board) {
    const Jobs& jobs = board.derived.jobs;
    const auto share = [](const auto& making) { return making.made ? making.job.share() : 1; };
    return std::min(
        {share(jobs.working), share(jobs.envelope), share(jobs.checks), share(jobs.exact)});
}

// A board that is drawn in frames, each with one slice.
struct Frames {
    Board& board;
    std::uint64_t revision = 0; // at the end of the last frame

    // True while there is more to do.
    bool next(Slice slice) {
        slice.moves =
            board.state.gesture.kind != GestureKind::None && board.state.revision != revision;
        const bool more = goOn(board, slice);
        revision = board.state.revision;
        return more;
    }
};

const Truss& largeTruss() {
    static const Truss truss = familyTruss(Family::Pratt, 101);
    return truss;
}

Vec2 placeOf(const Board& board, int joint) {
    return board.state.truss.joints[static_cast<std::size_t>(joint)].at;
}

} // namespace

TEST_CASE("what is made a unit a frame is the same as what is made in one go") {
    std::vector<Truss> trusses = exampleTrusses();
    trusses.push_back(familyTruss(Family::K, 60));
    trusses.push_back(familyTruss(Family::Complex, 40));
    int most = 0;
    for (const Truss& truss : trusses) {
        for (const Look& look : kLooks) {
            Board whole = boardOf(truss, look);
            Slice all = wholeSlice();
            CHECK_FALSE(goOn(whole, all));
            Board sliced = boardOf(truss, look);
            int frames = 1;
            for (Slice unit = oneUnit(); goOn(sliced, unit); unit = oneUnit()) {
                ++frames;
            }
            most = std::max(most, frames);
            CHECK(textOf(sliced) == textOf(whole));
        }
    }
    CHECK(most > 100); // it was done in slices
}

TEST_CASE("progress is told in words with numbers, never falls, and comes to its end") {
    Board board = boardOf(largeTruss(), {});
    double share = 0;
    bool counts = false;
    Slice unit = oneUnit();
    while (goOn(board, unit)) {
        unit = oneUnit();
        const double now = shareOf(board);
        CHECK(now >= share);
        CHECK(now <= 1);
        share = now;
        // 101 members and three reactions.
        const std::string says = saysOf(*board.state.book, board.derived.jobs.working);
        counts = counts || says.ends_with(" of 104");
    }
    CHECK(share > 0.9);
    CHECK(counts);
    CHECK(isShown(board.state, board.derived.working));
    CHECK(board.derived.working.working.complete);
}

TEST_CASE("an edit abandons what is at work, and what is shown then is of the truss as it is") {
    for (const Look& look : kLooks) {
        Board board = boardOf(withOneSection(familyTruss(Family::Pratt, 30)), look);
        for (int frame = 0; frame < 3; ++frame) {
            Slice unit = oneUnit();
            (void)goOn(board, unit);
        }
        board.act(Commit{MoveJoint{JointId{3}, placeOf(board, 3) + Vec2{0.5, 0.25}}});
        Slice all = wholeSlice();
        while (goOn(board, all)) {
        }
        Board fresh = boardOf(board.state.truss, look);
        while (goOn(fresh, all)) {
        }
        CHECK(textOf(board) == textOf(fresh));
    }
}

TEST_CASE("no frame takes more than its slice, whatever is at work in it") {
    Board board =
        boardOf(largeTruss(), {.tab = NotebookTab::Forces, .results = ResultPage::Checks});
    // A clock that advances by one each time it is read: this many units, and one reading at the
    // start of each of the two jobs.
    int reads = 0;
    const auto clock = [&reads] { return std::chrono::microseconds{reads++}; };
    int frames = 0;
    for (bool more = true; more; ++frames) {
        const int before = reads;
        Slice slice{.left = std::chrono::microseconds{6}, .clock = clock};
        more = goOn(board, slice);
        more = deriveWorking(board.state, board.derived, slice) || more;
        CHECK(reads - before <= 6 + 2);
        CHECK(slice.left.count() >= 0);
    }
    CHECK(frames > 20);
}

TEST_CASE("in a drag with the working open each frame has the forces of the joint's place, and a "
          "long working waits until the drag pauses") {
    Board board = boardOf(largeTruss(), {});
    Frames frames{board};
    const auto few = [] {
        Slice slice = oneUnit();
        slice.left = std::chrono::microseconds{4};
        return slice;
    };
    while (frames.next(few())) {
    }
    const int joint = 4;
    const Vec2 from = placeOf(board, joint);
    board.act(SetSelection{});
    board.alt = true; // no snapping: each step is a different place
    board.down(from);
    for (int step = 1; step <= 12; ++step) {
        const std::uint64_t before = board.state.revision;
        board.move(from - Vec2{0, 0.25 + 0.25 * step}); // downwards, clear of all others
        REQUIRE(board.state.revision > before);
        CHECK(frames.next(few()));
        REQUIRE(board.state.gesture.kind == GestureKind::MoveJoint);
        CHECK(board.derived.revision == board.state.revision);
        const Solution now = solve(board.state.truss, board.state.choice);
        REQUIRE(board.derived.solution.forces.size() == now.forces.size());
        // The drag keeps its pivot order, so it rounds differently.
        for (std::size_t i = 0; i < now.forces.size(); ++i) {
            CHECK(std::abs(board.derived.solution.forces[i] - now.forces[i]) < 1e-9 * now.largest);
        }
        CHECK_FALSE(isShown(board.state, board.derived.working));
        CHECK_FALSE(board.derived.jobs.working.made); // not restarted in every frame without end
    }
    CHECK(saysOf(*board.state.book, board.derived.jobs.working) ==
          sayPlain(*board.state.book, phrase::kJobWaits));
    while (frames.next(few())) { // at rest, the pointer still down
    }
    CHECK(isShown(board.state, board.derived.working));
    board.up(placeOf(board, joint));
    while (frames.next(few())) {
    }
    CHECK(isShown(board.state, board.derived.working));
}

TEST_CASE("in a drag of a small truss its working is there in each frame") {
    Board board = boardOf(roof(), {});
    Frames frames{board};
    const auto slice = [] {
        Slice some = oneUnit();
        some.left = std::chrono::microseconds{1000};
        return some;
    };
    CHECK_FALSE(frames.next(slice()));
    const Vec2 from = placeOf(board, 2);
    board.act(SetSelection{});
    board.down(from);
    for (int step = 1; step <= 5; ++step) {
        board.move(from + Vec2{0, 0.25 * step});
        CHECK_FALSE(frames.next(slice()));
        REQUIRE(board.state.gesture.kind == GestureKind::MoveJoint);
        CHECK(isShown(board.state, board.derived.working));
    }
}
