#pragma once
// What the start page begins a board with: trusses of the usual forms, made from an outline as it
// is typed there.

#include "app/state/state.hpp"
#include "core/outcome.hpp"

#include <string>
#include <string_view>

namespace gusset {

// What there is to choose from and the units of the board, as JSON for the page's scripts:
// {"length":"m","force":"kN",
//  "forms":[{"word":"pratt","name":"Pratt","fewest":3,"most":24,"step":1,"loaded":"lower",
//            "sizes":["heel"],"pitched":false},…],
//  "sizes":[{"word":"heel","name":"Height over the supports"},…],
//  "spreads":[{"word":"area-on-plan","name":"on plan","unit":"kN/m²","sides":false},…],
//  "kinds":[{"word":"permanent","name":"permanent"},{"word":"snow","name":"snow","psi":[0.5,0.2,0]},…],
//  "rules":[{"word":"en-6.10","name":"EN
//  1990, 6.10","factors":["permanent","favourable","variable"]},…],
//  "factors":[{"word":"permanent","name":"Permanent, unfavourable","usual":1.35},…]}
// with recommended values: ψ0, ψ1 and ψ2 of variable actions, and factors.
[[nodiscard]] std::string starterForms(const AppState&);

// From the key "form" of a model (exchange/forms/outline_file) with texts in place of numbers: "7
// ft 6 in", "0,8 kN/m²"; a rise that ends with ° is a pitch; an empty text is left out. In the
// units and the class settings of the board. Fails on what can't be read as a size.
[[nodiscard]] Outcome<Truss> starterOf(const AppState&, std::string_view typed);
// What the joints get of each load, as tables in HTML; empty where starterOf fails.
[[nodiscard]] std::string starterShares(const AppState&, std::string_view typed);
// A board with nothing on it, likewise.
[[nodiscard]] Truss emptyBoard(const AppState&);

// The outline that the board was made from, as in its file, if its joints, members and supports are
// still those; empty otherwise.
[[nodiscard]] std::string outlineOf(const AppState&);

// Saved work (app/state/session) with another title, as one more step of its history; empty if it
// can't be read.
[[nodiscard]] std::string retitled(std::string_view saved, std::string_view title);

} // namespace gusset
