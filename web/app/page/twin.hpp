#pragma once
// The board in words and tables, for the page around it: what a screen reader, a search, a printer
// and a browser without WebGL2 get. Everything a user typed is escaped.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"

#include <string>

namespace gusset {

// Title, verdict, results, then the model. No script and no style in it.
[[nodiscard]] std::string twinHtml(const AppState&, const Derived&);

// What the page of envelopes, of influence lines or of checks shows, while it is on the screen, and
// checks while the board shows use; else empty.
[[nodiscard]] std::string movingHtml(const AppState&, const Derived&);

// The working that the notebook is turned to; while that is not ready, a sentence that says so.
[[nodiscard]] std::string workingHtml(const AppState&, const Derived&);

// One sentence for the canvas itself: "A truss of 7 joints and 11 members. …"
[[nodiscard]] std::string boardSummary(const AppState&, const Derived&);

} // namespace gusset
