#pragma once
// Help for whoever practises: whether a body can be solved yet, and the next step. Private to desk.

#include "desk/request.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// Whether the joint, or the whole truss if it is none, gives anything with what was found so far.
[[nodiscard]] std::string standingText(const Writer&, const DeskRequest&, JointId);

// The next step of the working that has something not found yet, as HTML: its title, from level 2
// its equations in symbols, from level 3 with the student's own numbers in them. Never its result.
[[nodiscard]] std::vector<std::string> hintHtml(const Writer&, const DeskRequest&, int level);

} // namespace gusset
