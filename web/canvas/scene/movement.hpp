#pragma once
// What the board shows displaced: the deflected shape, enlarged by a stated factor, or a mechanism
// in motion. Both swing out and back when they are played, then stop.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Movement {
    bool mechanism = false;
    std::vector<Vec2> at; // length units, one per joint: where it is drawn
    double times = 1;     // the enlargement of a deflected shape
};
// None if neither the notebook nor the layers ask for it, or the truss on the board has none.
[[nodiscard]] std::optional<Movement> movementShown(const AppState&, const Derived&);

// Whether the deflected shape is asked for, by its page of the notebook or by its layer.
[[nodiscard]] bool wantsDeflectedShape(const AppState&);
// The selected mechanism; null if there is none.
[[nodiscard]] const Mechanism* mechanismShown(const AppState&, const Derived&);

// After this many more seconds. Stops at once if `still` (reduced motion) or if nothing moves.
[[nodiscard]] Motion laterMotion(const AppState&, const Derived&, double seconds, bool still);

} // namespace gusset
