#pragma once
// Finds the member between two joints without searching for it: findMember() looks at every member,
// which is too slow once for every load of a large model.

#include "model/truss.hpp"

#include <cstdint>
#include <unordered_map>

namespace gusset {

class MemberIndex {
public:
    MemberIndex() = default;
    explicit MemberIndex(const Truss&); // passes over members whose joints are not there

    // Adds a member; false when there is one between its joints already.
    bool add(const Member&, MemberId);
    [[nodiscard]] MemberId find(JointId a, JointId b) const; // either way round; none

private:
    std::unordered_map<std::uint64_t, MemberId> members_;
};

} // namespace gusset
