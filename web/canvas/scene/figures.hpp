#pragma once
// Figures of the drawing that open a field when they are tapped: dimensions, and the length of what
// is being drawn.

#include "app/state/state.hpp"
#include "report/text/writer.hpp"

namespace gusset {

// As it stands beside what is drawn or measured: "4.25 m".
[[nodiscard]] std::string lengthText(const Truss&, double value);

// The figure there that the tool in hand would open; none. A joint or a symbol as near comes first.
[[nodiscard]] const Figure* figureAt(const AppState&, Vec2 pixel);

// The joints on the far side of a dimension, to the right of it or above, moved so far that it
// measures `value`, and the words that say so. Fails with a sentence.
struct Stretch {
    MoveJoints edit;
    std::string says;
};
[[nodiscard]] Outcome<Stretch> stretched(const Writer&, const Measured&, double value);

} // namespace gusset
