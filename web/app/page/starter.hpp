#pragma once
// What the start page begins a board with: the usual forms of truss, made from texts as they are
// typed there.

#include "app/state/state.hpp"
#include "core/outcome.hpp"

#include <string>
#include <string_view>

namespace gusset {

struct StarterWish {
    int form = 0; // as starterForms lists them
    int panels = 0;
    std::string_view span;
    std::string_view rise;
    std::string_view cases; // a line each: the load case's name, a tab, the load on each joint
};

// The forms, their range of panels and the units of the board, as JSON for the page's scripts:
// {"length":"m","force":"kN","forms":[{"name":"Pratt","fewest":2,"most":24,"step":1},…]}.
[[nodiscard]] std::string starterForms(const AppState&);

// In the units and the class settings of the board. Fails on what can't be read as a size.
[[nodiscard]] Outcome<Truss> starterOf(const AppState&, const StarterWish&);
// A board with nothing on it, likewise.
[[nodiscard]] Truss emptyBoard(const AppState&);

// Saved work (app/state/session) with another title, as one more step of its history; empty if it
// can't be read.
[[nodiscard]] std::string retitled(std::string_view saved, std::string_view title);

} // namespace gusset
