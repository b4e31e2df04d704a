#pragma once
// Values on the drawing that open a field when tapped: dimensions, and the length of what is being
// drawn.

#include "app/state/state.hpp"
#include "report/text/writer.hpp"

namespace gusset {

// As shown beside what is drawn or measured: "4.25 m".
[[nodiscard]] std::string lengthText(const Truss&, double value);

// The value there that the current tool would open, if any. A joint or a symbol equally near takes
// precedence.
[[nodiscard]] const Figure* figureAt(const AppState&, Vec2 pixel);

// The joints on the far side of a dimension, to its right or above, moved so that it measures
// `value`, and a description of the edit. Fails with a sentence.
struct Stretch {
    MoveJoints edit;
    std::string says;
};
[[nodiscard]] Outcome<Stretch> stretched(const Writer&, const Measured&, double value);

} // namespace gusset
