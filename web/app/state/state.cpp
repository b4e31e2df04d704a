#include "app/state/state.hpp"

namespace gusset {

NotebookState::NotebookState() = default;
NotebookState::NotebookState(const NotebookState&) = default;
NotebookState::NotebookState(NotebookState&&) noexcept = default;
NotebookState& NotebookState::operator=(const NotebookState&) = default;
NotebookState& NotebookState::operator=(NotebookState&&) noexcept = default;
NotebookState::~NotebookState() = default;

AppState::AppState() = default;
AppState::AppState(const AppState&) = default;
AppState::AppState(AppState&&) noexcept = default;
AppState& AppState::operator=(const AppState&) = default;
AppState& AppState::operator=(AppState&&) noexcept = default;
AppState::~AppState() = default;

namespace {

bool pageIsOnScreen(const AppState& state, ResultPage page) {
    const NotebookState& notebook = state.notebook;
    return notebook.open && notebook.tab == NotebookTab::Forces && notebook.results == page;
}

} // namespace

bool isAtWorking(const AppState& state) {
    return state.notebook.open && state.notebook.tab == NotebookTab::Working;
}

bool showsInfluence(const AppState& state) { return pageIsOnScreen(state, ResultPage::Influence); }

bool showsEnvelope(const AppState& state) { return pageIsOnScreen(state, ResultPage::Envelope); }

} // namespace gusset
