#pragma once
// Which joints and members of two trusses are the same. Private to workshop.

#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// How far apart joints of the same place may be, in the unit of the trusses.
[[nodiscard]] double nearnessOf(const Truss& first, const Truss& second);

// Of each joint of the first, which of the second it is: by its name, or else by its place.
[[nodiscard]] std::vector<JointId> matchedJoints(const Truss& first, const Truss& second);
// Of each joint of the second, which of the first it is.
[[nodiscard]] std::vector<JointId> backwards(const std::vector<JointId>& matched,
                                             const Truss& second);
// Of each member of the first, by its joints.
[[nodiscard]] std::vector<MemberId> matchedMembers(const Truss& first, const Truss& second);

// "A, B, C"; of many the first, and how many more.
[[nodiscard]] std::string listed(const PhraseBook&, const std::vector<std::string>& names);

} // namespace gusset
