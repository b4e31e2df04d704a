#pragma once
// The steps of a working, one below the other.

#include "panels/frame/panel_context.hpp"

#include <optional>

namespace gusset {

// Up to the current step, or all of them; without a place, all of a text that is read as a whole.
void workingSteps(PanelContext&, const std::optional<StepPlace>&);

} // namespace gusset
