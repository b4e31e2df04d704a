#pragma once
// Finds the member between two joints without searching for it: findMember() looks at every member,
// which is too slow once for every load of a large model.

#include "core/index_table.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

class MemberIndex {
public:
    explicit MemberIndex(std::size_t expected = 0) : members_(expected) {}
    explicit MemberIndex(const Truss&); // passes over members whose joints are not there

    // Adds a member; false when there is one between its joints already.
    bool add(const Member&, MemberId);
    [[nodiscard]] MemberId find(JointId a, JointId b) const; // either way round; none

private:
    IndexTable members_;
};

} // namespace gusset
