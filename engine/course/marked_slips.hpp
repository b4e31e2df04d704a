#pragma once
// The slips of a marked sheet, for a page that draws the free body with the student's own numbers.
// Private to course.
//
// "slips": [ { "kind": "the sign of a term", "body": ["C"], "answers": ["A-C"],
//   "equations": [ { "says": "<math>…", "sum": "y", "of": "A-C", "written": -60, "gives": 60,
//     "left": -72, "terms": [ { "of": "A-C", "at": "C", "x": -0.8, "y": -0.6, "value": -60,
//     "factor": -0.6 } ] } ] } ], "fewSlips": true
//
// "kind" says so if it was not recognised; "of" is absent from the term of a load; the body is all
// joints for the whole truss, and empty where it can't be told. "sum" is "x", "y" or "moments",
// which are "about" a joint. Names as in answers; values as in OwnEquation
// (classroom/marking/marking.hpp); x and y are the direction of a positive value.

#include "classroom/marking/marking.hpp"
#include "exchange/json/json_text.hpp"
#include "report/text/writer.hpp"

namespace gusset {

void writeSlips(JsonText&, const Writer&, const Marking&);

} // namespace gusset
