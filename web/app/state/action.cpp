#include "app/state/action.hpp"

#include <utility>

namespace gusset {

namespace {

std::shared_ptr<const ActionKind> shared(ActionKind&& kind) {
    return std::make_shared<const ActionKind>(std::move(kind));
}

} // namespace

template <class Kind>
requires isOneOf<Kind, ActionKind> Action::Action(Kind kind)
    : kind_(shared(ActionKind(std::move(kind)))) {}
template Action::Action(Commit);
template Action::Action(ShowEdit);
template Action::Action(EndGesture);
template Action::Action(SetGesture);
template Action::Action(SetChain);
template Action::Action(SetDrawn);
template Action::Action(SetMenu);
template Action::Action(PickSeveral);
template Action::Action(SetFigures);
template Action::Action(SeePen);
template Action::Action(Undo);
template Action::Action(Redo);
template Action::Action(SetTool);
template Action::Action(SetSelection);
template Action::Action(SetHover);
template Action::Action(SetCamera);
template Action::Action(ZoomToFit);
template Action::Action(Read);
template Action::Action(LeaveWorking);
template Action::Action(Set<View, bool>);
template Action::Action(Set<View, int>);
template Action::Action(Set<View, MemberFigure>);
template Action::Action(Set<View, ThemeChoice>);
template Action::Action(Set<NotebookState, bool>);
template Action::Action(Set<NotebookState, int>);
template Action::Action(Set<NotebookState, double>);
template Action::Action(Set<NotebookState, NotebookTab>);
template Action::Action(Set<NotebookState, ResultPage>);
template Action::Action(Set<NotebookState, ForceFilter>);
template Action::Action(Set<NotebookState, WorkingPage>);
template Action::Action(Set<InfluenceView, bool>);
template Action::Action(Set<InfluenceView, PathKind>);
template Action::Action(Set<InfluenceView, std::string>);
template Action::Action(Set<InfluenceView, std::vector<std::string>>);
template Action::Action(Set<InfluenceView, std::optional<double>>);
template Action::Action(Set<PageParts, bool>);
template Action::Action(SetTableView);
template Action::Action(SetMotion);
template Action::Action(BeginField);
template Action::Action(EndField);
template Action::Action(SetChoice);
template Action::Action(Say);
template Action::Action(OpenText);

void turnTo(NotebookTab tab, Actions& actions) {
    actions.push_back(Set{&NotebookState::open, true});
    actions.push_back(Set{&NotebookState::tab, tab});
}

void turnTo(WorkingPage page, Actions& actions) {
    turnTo(NotebookTab::Working, actions);
    actions.push_back(Set{&NotebookState::working, page});
    actions.push_back(Set{&NotebookState::step, 0});
}

} // namespace gusset
