#pragma once
// The loads of an outline as they come, and how the joints of a chord share them, so that what the
// joints get can be checked by hand.

#include "design/loading/outline.hpp"
#include "report/results/table.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// The loads of the outline; then, for each chord that carries one spread over it, the lengths that
// its joints carry. Precondition, of all here: trussOf succeeds.
[[nodiscard]] std::vector<TextTable> outlineTables(const Writer&, const Outline&);
// One for each load: those lengths and the force that each joint gets.
[[nodiscard]] std::vector<TextTable> shareTables(const Writer&, const Outline&);
// How they are shared; empty if no load is spread over a chord.
[[nodiscard]] std::string sharingRule(const PhraseBook&, const Outline&);

} // namespace gusset
