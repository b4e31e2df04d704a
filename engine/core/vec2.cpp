#include "core/vec2.hpp"

#include <cmath>

namespace gusset {

double length(Vec2 a) { return std::sqrt(dot(a, a)); }

} // namespace gusset
