#pragma once
// The centre lines of a truss as an ASCII DXF of release 12, which every drawing program reads.

#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

// Lines on the layers OUTLINE and WEB or, where these can't be told, on a layer for each section;
// a block JOINT at each joint; labels, supports and loads as text on layers of their own. In a unit
// of length of the drawing; of a model without units, the numbers as they are.
// Precondition: the truss is valid.
[[nodiscard]] std::string writeDxf(const PhraseBook&, const Truss&, LengthUnit);

} // namespace gusset
