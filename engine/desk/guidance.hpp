#pragma once
// Help for whoever practises: whether a body can be solved yet, and the next step. Private to desk.

#include "desk/body.hpp"

#include <string>
#include <vector>

namespace gusset {

// Whether the body of the request gives anything with what was found so far; of a part beside a
// cut, also by which sums, if the exercise allows hints of equations.
[[nodiscard]] std::string standingText(const Writer&, const DeskRequest&, const DeskBody&);

// The next step, as HTML, never its result: on the part beside a cut, if one is chosen that gives
// something; else of the working, the first that has something not found yet. First its body, from
// level 2 its equations, from level 3 with the student's own numbers in them.
[[nodiscard]] std::vector<std::string> hintHtml(const Writer&, const DeskRequest&, const DeskBody&,
                                                int level);

} // namespace gusset
