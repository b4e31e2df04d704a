#include "canvas/hands/board_menu.hpp"
#include "canvas/hands/tool.hpp"
#include "canvas/scene/snap.hpp"

#include <algorithm>

namespace gusset {

namespace {

// Cancels one thing at a time, from the innermost outward.
void escape(const AppState& state, Actions& actions) {
    if (state.menu.open) {
        actions.push_back(EndGesture{false});
        actions.push_back(SetMenu{});
    } else if (state.gesture.kind != GestureKind::None) {
        actions.push_back(EndGesture{false});
    } else if (state.chain.active) {
        actions.push_back(SetChain{});
    } else if (state.picksSeveral) {
        actions.push_back(PickSeveral{false});
    } else if (!state.selection.empty()) {
        actions.push_back(SetSelection{});
    } else {
        actions.push_back(SetTool{Tool::Select});
    }
}

Things allThings(const Truss& truss) {
    Things things;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        things.joints.push_back(JointId{static_cast<int>(i)});
    }
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        things.members.push_back(MemberId{static_cast<int>(i)});
    }
    return things;
}

void turnStep(const AppState& state, int by, Actions& actions) {
    const NotebookState& notebook = state.notebook;
    const bool looking = notebook.open && notebook.tab == NotebookTab::Working;
    turnTo(NotebookTab::Working, actions);
    actions.push_back(Set{&NotebookState::wholeWorking, false});
    if (looking) { // the first press only opens the page
        actions.push_back(Set{&NotebookState::step, std::max(notebook.step + by, 0)});
    }
}

// Moves the selected joints; without a selection, left and right leaf through the working shown.
void arrow(const AppState& state, Vec2 steps, Actions& actions) {
    if (state.gesture.kind != GestureKind::None) {
        return;
    }
    if (!state.selection.joints.empty()) {
        const Vec2 by = state.view.gridStep * steps;
        actions.push_back(Commit{shifted(state.truss, state.view, state.selection.joints, by)});
    } else if (steps.x != 0 && state.notebook.open && state.notebook.tab == NotebookTab::Working) {
        turnStep(state, steps.x > 0 ? 1 : -1, actions);
    }
}

void removeSelected(const AppState& state, Actions& actions) {
    if (!state.selection.empty() && state.gesture.kind == GestureKind::None) {
        actions.push_back(Commit{Remove{state.selection}});
    }
}

// On the selection, or at the centre of the board.
void openMenu(const AppState& state, Actions& actions) {
    const Camera& camera = state.view.camera;
    const Things& things = state.selection;
    const Vec2 free = camera.size - Vec2{camera.coverRight, camera.coverBottom - camera.coverTop};
    BoardMenu menu;
    menu.open = true;
    menu.lit = 0;
    menu.pixel = 0.5 * free;
    if (!things.joints.empty()) {
        menu.under = things.joints.front();
    } else if (!things.members.empty()) {
        menu.under = things.members.front();
    } else {
        menu.under = onlyOne(things);
    }
    if (menu.under) {
        menu.pixel = toPixel(camera, middleOf(state.truss, *menu.under));
    }
    actions.push_back(SetMenu{menu});
}

// The one after, or before, the thing of this kind that is picked; the first, or the last, if none
// is. Past the end it goes on from the beginning.
template <class Id>
Things beside(const std::vector<Id>& picked, std::size_t count, int by) {
    if (count == 0) {
        return {};
    }
    const int from = !picked.empty() ? picked.front().index : by > 0 ? -1 : 0;
    const int all = static_cast<int>(count);
    return thingsOf(Id{((from + by) % all + all) % all});
}

// Keeps what is picked in sight.
void pickBeside(const AppState& state, const Things& things, Actions& actions) {
    const Hit picked = onlyOne(things);
    if (!picked || state.gesture.kind != GestureKind::None) {
        return;
    }
    const Camera& camera = state.view.camera;
    const Vec2 at = toPixel(camera, middleOf(state.truss, *picked));
    if (at.x < 0 || at.x > camera.size.x - camera.coverRight || at.y < camera.coverTop ||
        at.y > camera.size.y - camera.coverBottom) {
        actions.push_back(ZoomToFit{});
    }
    actions.push_back(SetMenu{});
    actions.push_back(SetSelection{things});
}

// True if the menu took the key.
bool turnsMenu(const AppState& state, Key key, Actions& actions) {
    const std::size_t lines = boardMenuLines(state).size();
    BoardMenu menu = state.menu;
    if (lines > 0 && (key == Key::Up || key == Key::Down)) {
        const std::size_t by = key == Key::Down ? 1 : lines - 1;
        menu.lit = menu.lit ? (*menu.lit + by) % lines : key == Key::Down ? 0 : lines - 1;
        actions.push_back(SetMenu{menu});
        return true;
    }
    if (key == Key::Enter) {
        if (menu.lit) {
            chooseMenuLine(state, *menu.lit, actions);
        }
        return true;
    }
    return false;
}

} // namespace

void pressKey(const AppState& state, Key key, Actions& actions) {
    const Truss& truss = state.truss;
    const Things& picked = state.selection;
    if (state.menu.open && turnsMenu(state, key, actions)) {
        return;
    }
    switch (key) {
    case Key::Delete:
        return removeSelected(state, actions);
    case Key::Escape:
        return escape(state, actions);
    case Key::Undo:
        return actions.push_back(Undo{});
    case Key::Redo:
        return actions.push_back(Redo{});
    case Key::SelectAll:
        return actions.push_back(SetSelection{allThings(state.truss)});
    case Key::Fit:
        return actions.push_back(ZoomToFit{});
    case Key::Left:
        return arrow(state, {-1, 0}, actions);
    case Key::Right:
        return arrow(state, {1, 0}, actions);
    case Key::Up:
        return arrow(state, {0, 1}, actions);
    case Key::Down:
        return arrow(state, {0, -1}, actions);
    case Key::NextStep:
        return turnStep(state, 1, actions);
    case Key::PreviousStep:
        return turnStep(state, -1, actions);
    case Key::Menu:
        return openMenu(state, actions);
    case Key::NextJoint:
        return pickBeside(state, beside(picked.joints, truss.joints.size(), 1), actions);
    case Key::PreviousJoint:
        return pickBeside(state, beside(picked.joints, truss.joints.size(), -1), actions);
    case Key::NextMember:
        return pickBeside(state, beside(picked.members, truss.members.size(), 1), actions);
    case Key::PreviousMember:
        return pickBeside(state, beside(picked.members, truss.members.size(), -1), actions);
    case Key::NextSupport:
        return pickBeside(state, beside(picked.supports, truss.supports.size(), 1), actions);
    case Key::PreviousSupport:
        return pickBeside(state, beside(picked.supports, truss.supports.size(), -1), actions);
    case Key::NextLoad:
        return pickBeside(state, beside(picked.loads, truss.loads.size(), 1), actions);
    case Key::PreviousLoad:
        return pickBeside(state, beside(picked.loads, truss.loads.size(), -1), actions);
    case Key::Enter:
    case Key::Save:
        return;
    }
}

} // namespace gusset
