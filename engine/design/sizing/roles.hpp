#pragma once
// What a member is in its truss, by where it lies: for groups of one profile, and layers of a
// drawing.

#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <vector>

namespace gusset {

enum class MemberRole {
    UpperChord, // nothing above its middle, among members that are not upright
    LowerChord, // nothing below it
    Post,       // upright
    Diagonal,   // any other
};
[[nodiscard]] std::vector<MemberRole> rolesOf(const Truss&); // one per member
[[nodiscard]] const Phrase<>& nameOf(MemberRole);            // of all such members: "upper chord"

} // namespace gusset
