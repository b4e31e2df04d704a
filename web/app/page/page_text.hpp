#pragma once
// The board in words and tables, for the page around it: what screen readers, search, printing and
// browsers without WebGL2 get. Everything a user typed is escaped.

#include "app/derived/derived.hpp"
#include "app/page/page_tables.hpp"
#include "app/state/state.hpp"

#include <string>

namespace gusset {

// Title, verdict, results, then the model. It contains no script and no style. Typed: as a page to
// read and work on, with its buttons and choices; Plain: beside the board, where nothing may take
// the focus.
[[nodiscard]] std::string pageTextHtml(const AppState&, const Derived&,
                                       PageCells = PageCells::Typed);
// Envelope, influence lines, checks and exact values as a page to read has them: each made when it
// is asked for.
[[nodiscard]] std::string partsHtml(const AppState&, const Derived&);

// Beside the board: what the page of envelopes, influence lines or checks shows while it is on the
// screen (and the checks while the board shows utilisation); else empty.
[[nodiscard]] std::string movingHtml(const AppState&, const Derived&);

// The working that the notebook shows, under its heading; until it is ready, a sentence that says
// so.
[[nodiscard]] std::string workingHtml(const AppState&, const Derived&);

// One sentence that describes the canvas: "A truss of 7 joints and 11 members. …"
[[nodiscard]] std::string boardSummary(const AppState&, const Derived&);

} // namespace gusset
