#pragma once
// validate() for a model that was valid a moment ago and of which perhaps only numbers have
// changed: a joint that is dragged, a load that is typed.

#include "model/validate/validate.hpp"

namespace gusset {

struct Checked {
    bool sound = false; // the truss had no errors
    Truss truss;        // as it was, but for the numbers of members, supports and loads
    Issues suspicions;  // of its geometry
};

// What validate() gives. Keeps what it needs to be quicker the next time.
[[nodiscard]] Findings recheck(const Truss&, Checked&);

} // namespace gusset
