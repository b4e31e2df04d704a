#pragma once
// The key "form" of a model file, which Truss::form holds as text:
//
// { "kind": "howe-roof", "span": 24, "rise": 5, "panels": 10, "heel": 0.4, "overhang": 0.6,
//   "spacing": 6,
//   "loads": [ { "case": "roofing", "kind": "permanent", "as": "area-on-slope", "size": 0.45 },
//              { "case": "wind", "kind": "wind", "as": "area-normal", "left": 0.3, "right": -0.4 },
//              { "case": "ceiling", "as": "line-on-plan", "size": 1.2, "on": "lower" } ],
//   "selfWeight": "roofing",
//   "rule": { "by": "en-6.10", "permanent": 1.35, "national": { "snow": [0.7, 0.5, 0.2] } } }
//
// "pitch" in degrees may stand in place of "rise"; a rule that needs no more than its name may be a
// word alone. Lengths and forces are in the units of the model; areas in the square of the former.

#include "design/loading/outline.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Places of issues begin with "form". Fails if the truss has no such key.
[[nodiscard]] Outcome<Outline> readOutline(const Truss&);

// The outline of a truss that is still as it makes it, with its loads (carriesLoadsOf).
[[nodiscard]] std::optional<Outline> standingOutline(const PhraseBook&, const Truss&);

// Truss::form with a case called otherwise, or standing for something else (`kind`), as in edits of
// load cases (model/edit/load_cases); as it is where there is no outline.
[[nodiscard]] std::string formWithCase(const Truss&, const std::string& name,
                                       const std::string& to);
[[nodiscard]] std::string formWithKind(const Truss&, const std::string& name,
                                       const std::string& kind);

// The JSON text for Truss::form.
[[nodiscard]] std::string outlineText(const Outline&);

[[nodiscard]] std::string_view wordOf(FormKind);
[[nodiscard]] std::string_view wordOf(FormSize);
[[nodiscard]] std::string_view wordOf(LoadSpread);
[[nodiscard]] std::string_view wordOf(CombinationRule);
[[nodiscard]] std::optional<CombinationRule> ruleNamed(std::string_view word);

} // namespace gusset
