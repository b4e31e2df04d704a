#pragma once
// What can be done at a place on the board, for a long press, the right mouse button or the menu
// key: a short list for the joint, member, support or load there, or for empty paper.

#include "app/state/action.hpp"
#include "app/state/layout.hpp"

#include <string>
#include <vector>

namespace gusset {

struct MenuLine {
    std::string label;
    Actions does; // besides closing the menu
};

// For the open menu; empty if what it was opened on is gone.
[[nodiscard]] std::vector<MenuLine> boardMenuLines(const AppState&);
[[nodiscard]] std::string boardMenuTitle(const AppState&);
// Beside its place and wholly on the page: a title line and this many lines, each a touch target.
[[nodiscard]] Rect boardMenuRect(const AppState&, std::size_t lines);
// As if the line had been tapped; does nothing if there is no such line.
void chooseMenuLine(const AppState&, std::size_t line, Actions&);

} // namespace gusset
