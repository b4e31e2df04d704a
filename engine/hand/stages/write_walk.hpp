#pragma once
// The writing of a walk with letters. Private to hand/.

#include "hand/stages/letter_walk.hpp"

namespace gusset {

// The step that walks, and finds all forces that it reaches.
void writeWalk(Sheet&, const LetterWalk&);

} // namespace gusset
