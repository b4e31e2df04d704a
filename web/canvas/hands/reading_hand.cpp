// The pointer on the drawing beside a working. In reading mode nothing is edited, and a stray tap
// does not turn the working to something else.
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/pick.hpp"

namespace gusset {

namespace {

bool isAbout(WorkingPage page, const Hit& hit) {
    switch (page) {
    case WorkingPage::OneForce:
        return hitOf<MemberId>(hit).valid() || hitOf<SupportId>(hit).valid();
    case WorkingPage::Displacement:
        return hitOf<JointId>(hit).valid();
    case WorkingPage::Polygon:
        return hitOf<MemberId>(hit).valid();
    case WorkingPage::Truss:
    case WorkingPage::Settings:
        break;
    }
    return false;
}

} // namespace

bool cutsByDrag(const AppState& state) {
    const NotebookState& notebook = state.notebook;
    return (state.tool == Tool::Select || notebook.reading) && isAtWorking(state) &&
           notebook.working == WorkingPage::OneForce;
}

Gesture beginReading(const AppState& state) {
    Gesture gesture;
    gesture.kind = cutsByDrag(state) ? GestureKind::Cut : GestureKind::Tap;
    return gesture;
}

void tapReading(const AppState& state, const Hit& under, Actions& actions) {
    if (isAbout(state.notebook.working, under)) {
        actions.push_back(SetSelection{thingsOf(under)});
    }
}

} // namespace gusset
