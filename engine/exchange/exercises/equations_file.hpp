#pragma once
// The equations that a student kept, as a list under the key "equations" of answers:
//
// { "joint": "A", "sum": "x", "terms": [ { "of": "A:x", "sign": "+" },
//                                        { "of": "A-C", "sign": "-", "by": "cosine" } ] }
// { "cut": ["B-D", "C-D", "C-E"], "part": "A", "sum": "moments", "about": "D",
//   "terms": [ { "load": "B", "along": "y", "sign": "+", "by": "arm", "arm": 4 } ] }
//
// The body is a joint, the part beside a cut that holds the joint "part", or, with neither, the
// whole truss. "sum" is "x", "y" or "moments" about a joint. A term is a force by its name in
// answers, or the part of a joint's load along an axis; times nothing ("whole"), "sine", "cosine"
// (of its angle with the horizontal) or an "arm" in length units. Forces that are not in the
// equation are left out.

#include "classroom/exercise/written_equation.hpp"
#include "exchange/files/object_reader.hpp"
#include "exchange/json/json_text.hpp"
#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

// What can't be read is reported and left out.
[[nodiscard]] std::vector<WrittenEquation> readEquations(const Truss&, ObjectReader& answers);
// As the only key or one of several in an open object; nothing if there are none.
void writeEquations(const Truss&, const std::vector<WrittenEquation>&, JsonText&);

} // namespace gusset
