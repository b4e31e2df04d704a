#pragma once
// Finds the member between two joints without a search: findMember() looks at every member, which
// is too slow when done for every load of a large model.

#include "core/index_table.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

class MemberIndex {
public:
    explicit MemberIndex(std::size_t expected = 0) : members_(expected) {}
    explicit MemberIndex(const Truss&); // ignores members whose joints do not exist

    // Adds a member; false when there is already one between its joints.
    bool add(const Member&, MemberId);
    [[nodiscard]] MemberId find(JointId a, JointId b) const; // in either direction; none

private:
    IndexTable members_;
};

} // namespace gusset
