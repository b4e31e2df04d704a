#pragma once
// Names of what is answered, the same in files, tables and the page.

#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset {

// Of each restraint: "A:x" and "A:y" for a pin or a roller along an axis, "A" for an inclined
// roller; a second one of the same name is "A:x 2".
[[nodiscard]] std::vector<std::string> reactionNames(const Truss&);
// The same for people: "A_x", "A_x 2".
[[nodiscard]] std::vector<std::string> readableReactions(const Truss&);
// Of each member: "A-B".
[[nodiscard]] std::vector<std::string> answerNames(const Truss&);

} // namespace gusset
