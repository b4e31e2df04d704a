#include "app/board.hpp"
#include "app/state/session.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "support/random.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using support::Board;
using support::Random;
using support::redoText;
using support::undoText;

namespace {

template <class Tag, class List>
Id<Tag> anyOf(Random& random, const List& list) {
    return {list.empty() ? -1 : random.integer(0, static_cast<int>(list.size()) - 1)};
}

Vec2 somewhere(Random& random) { return {random.decimal(-9, 9, 2), random.decimal(-9, 9, 2)}; }

// Includes edits that can't be done: they must leave everything unchanged.
Edit randomEdit(Random& random, const Truss& truss) {
    const JointId joint = anyOf<JointTag>(random, truss.joints);
    switch (random.integer(0, 8)) {
    case 0:
        return AddJoint{somewhere(random)};
    case 1:
        return MoveJoint{joint, somewhere(random)};
    case 2:
        return SetSupport{joint, random.oneIn(2) ? SupportKind::Pin : SupportKind::Roller, 90};
    case 3:
        return AddLoad{{JointForce{joint, 1, random.decimal(-9, 9, 2)}, {}, {}}};
    case 4:
        return Remove{{{}, {anyOf<MemberTag>(random, truss.members)}, {}, {}}};
    case 5:
        return RenameJoint{joint, random.oneIn(2) ? "P" : "Q"};
    case 6:
        return SetTitle{"Title " + std::to_string(random.integer(0, 99))};
    default:
        return DrawMember{{joint, {}}, {{}, somewhere(random)}};
    }
}

Edit validEdit(Random& random, const Truss& truss) {
    for (;;) {
        const Edit edit = randomEdit(random, truss);
        const bool needsJoint = !edit.is<AddJoint>() && !edit.is<SetTitle>();
        const bool needsMember = edit.is<Remove>();
        if ((!needsJoint || !truss.joints.empty()) && (!needsMember || !truss.members.empty())) {
            return edit;
        }
    }
}

} // namespace

TEST_CASE("undo goes back through every model to the first, redo on again to the last") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        Random random(seed);
        Board board;
        std::vector<Truss> models{board.state.truss};
        for (int i = 0; i < 60; ++i) {
            const std::size_t before = board.state.history.past().size();
            board.act(Commit{validEdit(random, board.state.truss)});
            if (board.state.history.past().size() > before) {
                models.push_back(board.state.truss);
            } else {
                REQUIRE(board.state.truss == models.back());
            }
        }
        CAPTURE(seed);
        REQUIRE(models.size() > 20);
        for (std::size_t i = models.size() - 1; i > 0; --i) {
            board.act(Undo{});
            REQUIRE(board.state.truss == models[i - 1]);
        }
        board.act(Undo{}); // at the beginning there is nothing left to undo
        REQUIRE(board.state.truss == models.front());
        for (std::size_t i = 1; i < models.size(); ++i) {
            board.act(Redo{});
            REQUIRE(board.state.truss == models[i]);
        }
        board.act(Redo{});
        REQUIRE(board.state.truss == models.back());
    }
}

TEST_CASE("a new change forgets what was undone") {
    Board board;
    board.state = startWith(support::roof());
    board.act(Commit{SetTitle{"One"}});
    board.act(Undo{});
    board.act(Commit{SetTitle{"Two"}});
    CHECK(board.state.history.redoName().empty());
    board.act(Redo{});
    CHECK(board.state.truss.title == "Two");
}

TEST_CASE("the revision grows with the model on the board, and what is derived follows it") {
    Board board;
    board.state = startWith(support::roof());
    std::uint64_t last = board.state.revision;
    const std::vector<Action> changes{ShowEdit{MoveJoint{JointId{2}, {3, 5}}},
                                      EndGesture{false},
                                      ShowEdit{MoveJoint{JointId{2}, {3, 6}}},
                                      EndGesture{true},
                                      Undo{},
                                      Redo{}};
    for (const Action& change : changes) {
        board.act(change);
        derive(board.state, board.derived);
        CHECK(board.derived.revision == board.state.revision);
        CHECK(board.state.revision >= last);
        last = board.state.revision;
        const Solution fresh = solve(board.state.truss);
        CHECK(board.derived.solution.forces == fresh.forces);
    }
}

TEST_CASE("another choice of loads is another solution of the same model") {
    Truss truss = support::roof();
    truss.loads.push_back({JointForce{JointId{2}, 0, -10}, "snow", {}});
    Board board;
    board.state = startWith(truss);
    const std::vector<double> all = board.solution().forces;
    board.act(SetChoice{OneCase{"snow"}});
    const std::vector<double> snow = board.solution().forces;
    REQUIRE(snow.size() == 3);
    CHECK(2 * snow[0] == all[0]); // half of the load, all at the same place
}

TEST_CASE("opening replaces the board in one step that can be undone") {
    Board board;
    board.state = startWith(support::roof());
    Truss other = support::roof();
    other.title = "Another";
    board.act(OpenText{writeModel(other), OpenedFrom::Example});
    CHECK(board.state.truss == other);
    CHECK(undoText(board.state) == "Open example");
    board.act(OpenText{writeLink(support::roof())});
    CHECK(board.state.truss == support::roof());
    board.act(Undo{});
    board.act(Undo{});
    CHECK(board.state.truss == support::roof());
    CHECK(board.state.history.undoName().empty());
}

TEST_CASE("a new board is for drawing, and a form or an example for looking at first") {
    Board board;
    for (const auto& [from, tool, name] :
         {std::tuple{OpenedFrom::New, Tool::Member, "New board"},
          std::tuple{OpenedFrom::Form, Tool::Select, "Begin with a form"},
          std::tuple{OpenedFrom::FirstNew, Tool::Member, "New board"},
          std::tuple{OpenedFrom::Example, Tool::Select, "Open example"}}) {
        board.act(OpenText{writeModel(support::roof()), from});
        CHECK(board.state.tool == tool);
        CHECK(undoText(board.state) == name);
    }
}

TEST_CASE(
    "a link shows the loads that it looks at, on its truss and on the board that is its truss") {
    Board board;
    board.state = startWith(support::roof());
    Truss other = support::roof();
    other.title = "Another";
    other.loads.front().caseId = "snow";
    other.combinations.push_back({"ULS", {{"snow", 1.5}}, {}});
    const std::string link = writeLink(other);
    board.act(OpenText{link + "&case=snow"});
    CHECK(board.state.choice == LoadChoice{OneCase{"snow"}});
    CHECK(board.state.message.text.empty());

    const std::uint64_t revision = board.state.revision;
    CHECK_FALSE(takeLinkOfBoard(board.state, writeLink(support::roof())));
    CHECK_FALSE(takeLinkOfBoard(board.state, "#other"));
    CHECK(board.state.choice == LoadChoice{OneCase{"snow"}});
    CHECK(takeLinkOfBoard(board.state, link + "&combination=ULS"));
    CHECK(board.state.choice == LoadChoice{OneCombination{"ULS"}});
    CHECK(takeLinkOfBoard(board.state, link));
    CHECK(board.state.choice == LoadChoice{});
    CHECK(board.state.revision == revision);

    board.act(OpenText{link + "&case=wind"});
    CHECK(board.state.truss == other);
    CHECK(board.state.choice == LoadChoice{});
    CHECK(board.state.message.kind == MessageKind::Problem);
    CHECK(board.state.message.text.find("does not have") != std::string::npos);
}

TEST_CASE("the link of the board follows the loads, or says why there is none") {
    Board board;
    Truss truss = support::roof();
    truss.loads.front().caseId = "snow";
    board.state = startWith(truss);
    deriveLink(board.state, board.derived);
    CHECK(board.derived.link == writeLink(truss));
    board.act(SetChoice{OneCase{"snow"}});
    deriveLink(board.state, board.derived);
    CHECK(board.derived.link == writeLink(truss) + "&case=snow");

    Random random(5);
    std::string noise; // eighty thousand characters, each one of sixty-four
    while (noise.size() < 80'000) {
        noise += static_cast<char>('#' + random.integer(0, 63));
    }
    std::erase(noise, '\\');
    truss.title = "Large";
    board.act(OpenText{writeModel(truss).insert(1, "\"mine\":\"" + noise + "\",")});
    REQUIRE(board.state.truss.title == "Large");
    deriveLink(board.state, board.derived);
    CHECK(board.derived.link.empty());
    CHECK(board.derived.linkFault.find("65536") != std::string::npos);
}

TEST_CASE("what can't be opened explains itself and leaves the board as it was") {
    for (const char* text :
         {"", "{", "m=1.zzz", "{\"gusset\":1}", "{\"gusset\":99,\"joints\":[],\"members\":[]}"}) {
        Board board;
        board.state = startWith(support::roof());
        const std::uint64_t revision = board.state.revision;
        board.act(OpenText{text});
        CAPTURE(text);
        CHECK(board.state.truss == support::roof());
        CHECK(board.state.revision == revision);
        CHECK(board.state.message.kind == MessageKind::Problem);
        CHECK_FALSE(board.state.message.text.empty());
    }
}

TEST_CASE("a selection lives as long as its ids are good") {
    Board board;
    board.state = startWith(support::roof());
    board.act(SetSelection{{{JointId{2}}, {}, {}, {}}});
    board.act(Commit{MoveJoint{JointId{2}, {3, 5}}});
    CHECK(board.state.selection.joints.size() == 1);
    board.act(Undo{});
    CHECK(board.state.selection.joints.size() == 1);
    board.act(Commit{Remove{{{JointId{0}}, {}, {}, {}}}});
    CHECK(board.state.selection.empty());
}

TEST_CASE("a fitted drawing fits again when the page changes its shape, a moved one stays") {
    Board board;
    board.state = startWith(support::roof());
    Viewport phone;
    phone.size = {390, 844};
    const auto turnTo = [&](Vec2 size) {
        phone.size = size;
        const PageLayout layout = layoutFor(phone, board.state.notebook);
        board.act(SetCamera{withLayout(board.state.view.camera, phone, layout)});
    };
    turnTo({390, 844});
    const double upright = board.state.view.camera.scale;
    turnTo({844, 390});
    CHECK(board.state.view.camera.scale != upright);
    turnTo({390, 844});
    CHECK(board.state.view.camera.scale == upright);
    board.act(SetCamera{zoomAbout(board.state.view.camera, {100, 100}, 2)});
    turnTo({844, 390});
    CHECK(board.state.view.camera.scale == 2 * upright);
}

TEST_CASE("leaving reading mode brings back the board and the notebook as they were") {
    Board board;
    board.state = startWith(support::roof());
    board.act(Set{&NotebookState::tab, NotebookTab::Model});
    board.act(SetCamera{zoomAbout(board.state.view.camera, {100, 100}, 2)});
    const Camera before = board.state.view.camera;
    board.act(Set{&NotebookState::tab, NotebookTab::Working});
    board.act(Read{true});
    CHECK(board.state.view.fitted);
    CHECK(board.state.view.camera != before);
    // What is kept of the work is not the picture beside the working.
    const std::optional<AppState> kept = readSession(writeSession(board.state));
    REQUIRE(kept);
    CHECK(kept.value().view.camera.scale == before.scale);
    board.act(LeaveWorking{});
    board.act(Read{false});
    CHECK(board.state.notebook.tab == NotebookTab::Model);
    CHECK(board.state.view.camera == before);
    CHECK_FALSE(board.state.view.fitted);
}

TEST_CASE("a working opened from the board alone leaves the notebook closed") {
    Board board;
    board.state = startWith(support::roof());
    board.act(Set{&NotebookState::open, false});
    Actions actions;
    turnTo(WorkingPage::OneForce, actions);
    update(board.state, actions);
    board.act(LeaveWorking{});
    CHECK_FALSE(board.state.notebook.open);
}

TEST_CASE("another truss opened while reading is shown whole afterwards") {
    Board board;
    board.state = startWith(support::roof());
    board.act(SetCamera{zoomAbout(board.state.view.camera, {100, 100}, 2)});
    board.act(Read{true});
    board.act(Commit{ReplaceTruss{support::gable(), "another"}});
    board.act(Read{false});
    CHECK(board.state.view.fitted);
}

TEST_CASE("work comes back from its text: model, undo, redo, view and notebook") {
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        Random random(seed);
        Board board;
        board.state = startWith(support::randomDeterminateTruss(seed));
        for (int i = 0; i < 12; ++i) {
            board.act(Commit{validEdit(random, board.state.truss)});
        }
        board.act(Undo{});
        board.act(SetTool{Tool::Load});
        board.act(SetCamera{zoomAbout(board.state.view.camera, {17, 23}, 1.37)});
        board.act(Set{&NotebookState::tab, NotebookTab::Share});
        board.act(Set{&NotebookState::sheet, 0.31});
        board.act(Set{&NotebookState::step, 4});
        const std::string text = writeSession(board.state);
        std::optional<AppState> read = readSession(text);
        REQUIRE(read);
        AppState again = std::move(read).value();
        CHECK(writeSession(again) == text);
        CHECK(again.truss == board.state.truss);
        CHECK(again.view.camera.centre == board.state.view.camera.centre);
        CHECK(again.view.camera.scale == board.state.view.camera.scale);
        CHECK(again.tool == Tool::Load);
        CHECK(again.notebook.tab == NotebookTab::Share);
        CHECK(again.notebook.sheet == 0.31);
        CHECK(undoText(again) == undoText(board.state));
        CHECK(redoText(again) == redoText(board.state));
        update(again, {Undo{}, Undo{}, Redo{}});
        update(board.state, {Undo{}, Undo{}, Redo{}});
        CHECK(again.truss == board.state.truss);
    }
}

TEST_CASE("a gesture in hand is not saved") {
    Board board;
    board.state = startWith(support::roof());
    const std::string before = writeSession(board.state);
    board.down({3, 4});
    board.move({3, 2});
    CHECK(readSession(writeSession(board.state)).value().truss == support::roof());
    board.feed(PointerPhase::Cancel, {3, 2});
    CHECK(writeSession(board.state) == before);
}

TEST_CASE("a saved text cut short anywhere or altered anywhere is told from a good one") {
    Board board;
    board.state = startWith(support::roof());
    board.act(Commit{SetTitle{"Roof"}});
    const std::string text = writeSession(board.state);
    REQUIRE(readSession(text));
    for (std::size_t length = 0; length < text.size(); ++length) {
        CHECK_FALSE(readSession(text.substr(0, length)));
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        std::string altered = text;
        altered[i] = static_cast<char>(altered[i] ^ 1);
        CHECK_FALSE(readSession(altered));
    }
}

TEST_CASE("a long history is saved as far back as there is room, the nearest steps always") {
    Board board;
    board.state = startWith(support::roof());
    Truss large = support::roof();
    large.loads.resize(60, large.loads.front());
    for (int i = 0; i < 1500; ++i) {
        large.joints[2].at.y = 4 + 0.001 * i;
        REQUIRE(board.state.message.text.empty());
        board.act(Commit{ReplaceTruss{large, "Step " + std::to_string(i)}});
    }
    const std::string text = writeSession(board.state);
    CHECK(text.size() <= kLargestSession + 100);
    const std::optional<AppState> read = readSession(text);
    REQUIRE(read);
    CHECK(undoText(read.value()) == "Step 1499");
    CHECK(read.value().history.past().size() > 500);
}
