#pragma once
// validate() for a model that was valid just before and in which perhaps only numbers have changed:
// a joint being dragged, a load being typed.

#include "model/validate/validate.hpp"

namespace gusset {

struct Checked {
    bool sound = false; // the truss had no errors
    Truss truss;        // as it was, except for the numbers of members, supports and loads
    Issues suspicions;  // of its geometry
};

// The result of validate(). Keeps what it needs to be faster the next time.
[[nodiscard]] Findings recheck(const Truss&, Checked&);

} // namespace gusset
