#pragma once
// What the board shows as moved: the deflected shape, enlarged by a factor that is stated, or a
// mechanism on its way. Both swing out and back when they are played, then rest.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct Movement {
    bool mechanism = false;
    std::vector<Vec2> at; // length units, a joint each: where it is drawn
    double times = 1;     // of a deflected shape: how much larger than true
};
// Nothing when the notebook and the layers ask for none, or the truss on the board has none.
[[nodiscard]] std::optional<Movement> movementShown(const AppState&, const Derived&);

// The deflected shape is asked for by its page of the notebook or by its layer.
[[nodiscard]] bool wantsDeflectedShape(const AppState&);
// The mechanism that is looked at; none when there is none.
[[nodiscard]] const Mechanism* mechanismShown(const AppState&, const Derived&);

// So many seconds later. Rests at once when `still` (reduced motion) or when nothing moves.
[[nodiscard]] Motion laterMotion(const AppState&, const Derived&, double seconds, bool still);

} // namespace gusset
