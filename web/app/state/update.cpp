#include "app/state/update.hpp"

#include "app/state/places.hpp"
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "phrases/faults/links.hpp"
#include "phrases/history.hpp"
#include "phrases/messages.hpp"
#include "report/results/solution_text.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

void say(AppState& state, MessageKind kind, const Statement& text) {
    state.message = {kind, said(*state.book, text), state.message.serial + 1};
}

void show(AppState& state, Truss truss) {
    state.truss = std::move(truss);
    ++state.revision;
}

bool sameCounts(const Truss& one, const Truss& other) {
    return one.joints.size() == other.joints.size() && one.members.size() == other.members.size() &&
           one.supports.size() == other.supports.size() && one.loads.size() == other.loads.size();
}

// Ids are valid for one revision. Edits that only add or change in place keep them valid.
void keepSelectionAfter(AppState& state, const Edit& edit, const Truss& after) {
    const Truss& before = state.committed;
    const bool shrinks = after.joints.size() < before.joints.size() ||
                         after.members.size() < before.members.size() ||
                         after.loads.size() < before.loads.size();
    if (shrinks || edit.is<Remove>() || edit.is<ReplaceTruss>()) {
        state.selection = {};
    } else if (after.supports != before.supports) {
        state.selection.supports.clear();
    }
    state.hover = {};
    state.menu = {};
}

// Discards what was shown of a gesture and shows the committed model again.
void dropGesture(AppState& state) {
    if (state.pending) {
        show(state, state.committed);
    }
    state.pending.reset();
    state.pendingFault = {};
    state.gesture = {};
}

void note(AppState& state, HistoryMove kind, Statement name) {
    state.lastStep = {kind, std::move(name), state.lastStep.serial + 1};
}

void enter(AppState& state, const Edit& edit, Truss after) {
    keepSelectionAfter(state, edit, after);
    Statement name = describe(state.committed, edit);
    note(state, HistoryMove::Done, name);
    state.history.record(std::move(name), std::move(state.committed));
    state.drawn = {};
    if (!edit.is<DrawMember>()) {
        state.chain = {};
    }
    if (state.message.kind == MessageKind::Problem) {
        state.message.text.clear();
    }
    state.committed = after;
    show(state, std::move(after));
}

// Goes back or forward in the history; `other` is the model there, on the other side of this step.
void turnTo(AppState& state, std::optional<Truss> other, LastStep step) {
    if (!other) {
        return;
    }
    note(state, step.kind, std::move(step.name));
    if (!sameCounts(*other, state.committed)) {
        state.selection = {};
    }
    state.hover = {};
    state.chain = {};
    state.drawn = {};
    state.menu = {};
    state.committed = *other;
    show(state, std::move(*other));
}

void carryOut(AppState& state, const Commit& action) {
    dropGesture(state);
    // Qualified: argument-dependent lookup also finds std::apply, on which libc++ 13 fails to
    // compile.
    Outcome<Truss> after = gusset::apply(state.committed, action.edit);
    if (!after) {
        say(state, MessageKind::Problem, after.issues().front().says);
        return;
    }
    enter(state, action.edit, std::move(after).value());
    if (action.edit.is<ReplaceTruss>()) {
        state.notebook.step = 0;
        state.notebook.mechanism = 0;
        state.notebook.envelopeOfCases = false;
        state.notebook.checksOfAll = false;
        state.notebook.influence = {};
        for (TableView& tableView : state.notebook.tableViews) {
            tableView.words.clear(); // the search was in another truss
        }
        state.motion = {.plays = true};
        state.choice = {};
        forgetPlaces(state);
        fit(state);
    }
}

void carryOut(AppState& state, const ShowEdit& action) {
    Outcome<Truss> after = gusset::apply(state.committed, action.edit);
    if (!after) { // the last edit that could be shown stays
        state.pendingFault = after.issues().front().says;
        return;
    }
    state.pending = action.edit;
    state.pendingFault = {};
    show(state, std::move(after).value());
}

void carryOut(AppState& state, const EndGesture& action) {
    if (!action.keep || !state.pending) {
        const Statement fault = action.keep ? state.pendingFault : Statement();
        dropGesture(state);
        if (!fault.empty()) {
            say(state, MessageKind::Problem, fault);
        }
        return;
    }
    const Edit edit = *std::exchange(state.pending, std::nullopt);
    const Statement fault = std::exchange(state.pendingFault, {});
    state.gesture = {};
    if (state.truss != state.committed) {
        enter(state, edit, state.truss);
    }
    if (!fault.empty()) {
        say(state, MessageKind::Problem, fault);
    }
}

void carryOut(AppState& state, const SetGesture& action) {
    state.gesture = action.gesture;
    if (action.gesture.kind != GestureKind::None && action.gesture.kind != GestureKind::Tap) {
        state.drawn = {};
    }
}

void carryOut(AppState& state, const SetChain& action) { state.chain = action.chain; }

void carryOut(AppState& state, const SetDrawn& action) { state.drawn = action.drawn; }

void carryOut(AppState& state, const SetMenu& action) { state.menu = action.menu; }

void carryOut(AppState& state, const PickSeveral& action) { state.picksSeveral = action.on; }

void carryOut(AppState& state, const SetFigures& action) { state.figures = action.figures; }

void carryOut(AppState& state, const SeePen&) {
    if (!state.penSeen) {
        state.penSeen = true;
        state.view.fingerDraws = false;
        say(state, MessageKind::Info, phrase::kPenDraws);
    }
}

void carryOut(AppState& state, const Undo&) {
    dropGesture(state);
    const Statement name = state.history.undoName();
    turnTo(state, state.history.undo(state.committed), {HistoryMove::Undone, name});
}

void carryOut(AppState& state, const Redo&) {
    dropGesture(state);
    const Statement name = state.history.redoName();
    turnTo(state, state.history.redo(state.committed), {HistoryMove::Redone, name});
}

void carryOut(AppState& state, const SetTool& action) {
    dropGesture(state);
    state.chain = {};
    state.drawn = {};
    state.menu = {};
    state.picksSeveral = false;
    state.hover = {};
    state.tool = action.tool;
}

// While a path is being picked, a tap on a joint adds or removes it.
void pick(AppState& state, JointId joint) {
    if (joint.at() >= state.truss.joints.size()) {
        return;
    }
    InfluenceView& view = state.notebook.influence;
    const std::string& label = state.truss.joints[joint.at()].label;
    if (std::erase(view.picked, label) == 0) {
        view.picked.push_back(label);
    }
    view.path = PathKind::Picked;
    view.at.reset();
}

void carryOut(AppState& state, const SetSelection& action) {
    if (state.notebook.influence.picking && showsInfluence(state)) {
        for (const JointId joint : action.things.joints) {
            pick(state, joint);
        }
        return;
    }
    state.selection = action.things;
}

void carryOut(AppState& state, const SetHover& action) { state.hover = action.hit; }

// A page that changes shape has not been panned or zoomed: a fitted drawing is fitted again.
void carryOut(AppState& state, const SetCamera& action) {
    View& view = state.view;
    const bool moved =
        action.camera.centre != view.camera.centre || action.camera.scale != view.camera.scale;
    view.camera = action.camera;
    if (moved) { // the board has moved away under the menu
        state.menu = {};
    }
    if (view.fitted && !moved) {
        fit(state);
        return;
    }
    view.fitted = view.fitted && !moved;
    view.gridStep = gridStepFor(view.camera);
}

void carryOut(AppState& state, const ZoomToFit&) { fit(state); }

void carryOut(AppState& state, const Read& action) {
    dropGesture(state);
    read(state, action.on);
}

void carryOut(AppState& state, const LeaveWorking&) { leaveWorking(state); }

View& ownerOf(AppState& state, const View*) { return state.view; }
NotebookState& ownerOf(AppState& state, const NotebookState*) { return state.notebook; }
InfluenceView& ownerOf(AppState& state, const InfluenceView*) { return state.notebook.influence; }
PageParts& ownerOf(AppState& state, const PageParts*) { return state.pageParts; }

template <class Owner, class Value>
void carryOut(AppState& state, const Set<Owner, Value>& action) {
    ownerOf(state, static_cast<const Owner*>(nullptr)).*action.setting = action.to;
}

void carryOut(AppState& state, const SetTableView& action) {
    tableViewOf(state.notebook, action.table) = action.tableView;
}

void carryOut(AppState& state, const SetMotion& action) { state.motion = action.motion; }

void carryOut(AppState& state, const BeginField& action) {
    state.field = {action.field, action.text, action.goesOn};
}

void carryOut(AppState& state, const EndField&) { state.field = {}; }

void carryOut(AppState& state, const SetChoice& action) { state.choice = action.choice; }

void carryOut(AppState& state, const Say& action) { say(state, action.kind, action.text); }

// "members[3].b: no joint K"; for the link as a whole, "The link is incomplete".
std::string sentenceOf(const PhraseBook& book, const Issue& issue) {
    return issue.at == phrase::kPlaceLink
               ? said(book, statement(phrase::kTheLinkHasFault, {{"fault", issue.says}}))
               : faultLine(book, issue);
}

void lookAtLinkedLoads(AppState& state, std::string_view link) {
    const Outcome<LoadChoice> loads = linkedLoads(link, state.committed);
    state.choice = loads ? loads.value() : LoadChoice{};
    if (!loads) {
        say(state, MessageKind::Problem, sentenceOf(*state.book, loads.issues().front()));
    }
}

Statement nameOf(const OpenText& action) {
    switch (action.from) {
    case OpenedFrom::Link:
        return phrase::kStepOpenLink;
    case OpenedFrom::Example:
        return phrase::kStepOpenExample;
    case OpenedFrom::Before:
        return phrase::kStepOpenAgain;
    case OpenedFrom::New:
    case OpenedFrom::FirstNew:
        return phrase::kStepNewBoard;
    case OpenedFrom::Form:
        return phrase::kStepBegin;
    case OpenedFrom::File:
        break;
    }
    return action.file.empty() ? Statement(phrase::kStepOpen)
                               : statement(phrase::kStepOpenFile, {{"file", action.file}});
}

void carryOut(AppState& state, const OpenText& action) {
    Outcome<Reading> reading =
        looksLikeLink(action.text) ? readLink(action.text) : readModel(action.text);
    if (!reading) {
        say(state, MessageKind::Problem, sentenceOf(*state.book, reading.issues().front()));
        return;
    }
    Issues notes = reading.value().notes;
    carryOut(state, Commit{ReplaceTruss{std::move(reading).value().truss, nameOf(action)}});
    state.view.teaches = action.from == OpenedFrom::FirstNew;
    if (action.from == OpenedFrom::New || action.from == OpenedFrom::FirstNew) {
        carryOut(state, SetTool{Tool::Member});
    } else if (action.from == OpenedFrom::Form || action.from == OpenedFrom::Example) {
        carryOut(state, SetTool{Tool::Select}); // the first taps look, and change nothing
    }
    if (!notes.empty()) {
        say(state, MessageKind::Info, notes.front().says);
    }
    if (looksLikeLink(action.text)) {
        lookAtLinkedLoads(state, action.text);
    }
}

} // namespace

void update(AppState& state, const Actions& actions) {
    const bool wasAtWorking = isAtWorking(state);
    const Leaf before{state.notebook.open, state.notebook.tab};
    for (const Action& action : actions) {
        std::visit([&state](const auto& which) { carryOut(state, which); }, action.kind());
    }
    if (isAtWorking(state) && !wasAtWorking) {
        state.notebook.beforeWorking = before;
    }
}

bool isOnBoard(const AppState& state, std::string_view link) {
    const Outcome<Reading> reading = readLink(link);
    return reading && reading.value().truss == state.committed;
}

bool takeLinkOfBoard(AppState& state, std::string_view link) {
    if (!isOnBoard(state, link)) {
        return false;
    }
    lookAtLinkedLoads(state, link);
    return true;
}

AppState startWith(Truss truss) {
    AppState state;
    state.committed = truss;
    state.truss = std::move(truss);
    fit(state);
    return state;
}

} // namespace gusset
