#pragma once
// Which joints and members of two trusses are the same. Private to workshop.

#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// How far apart joints of the same place may be, in the unit of the trusses.
[[nodiscard]] double nearnessOf(const Truss& first, const Truss& second);

// Of each joint and member of one truss, which of the other it is, if any.
struct Matched {
    std::vector<JointId> joints;   // of the first: by its name, or else by its place
    std::vector<JointId> back;     // of the second
    std::vector<MemberId> members; // of the first: by its joints
};
[[nodiscard]] Matched matched(const Truss& first, const Truss& second);

// "A, B, C"; of many the first, and how many more.
[[nodiscard]] std::string listed(const PhraseBook&, const std::vector<std::string>& names);

} // namespace gusset
