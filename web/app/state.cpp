#include "app/state.hpp"

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

} // namespace gusset
