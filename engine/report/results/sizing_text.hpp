#pragma once
// The chosen profiles as sentences: each group with its profile and its most used member, what is
// not enough, the mass, what fewer different profiles would cost, and the way there. The caution of
// the checks comes with it.

#include "design/sizing/sizing.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// The writer's truss is that of the sizing.
[[nodiscard]] std::vector<std::string> sizingLines(const Writer&, const Sizing&, const SizingWish&);
[[nodiscard]] std::vector<std::string> pathLines(const Writer&, const Sizing&, const SizingWish&);
[[nodiscard]] std::string sizingText(const Writer&, const Sizing&, const SizingWish&);

} // namespace gusset
