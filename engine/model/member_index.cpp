#include "model/member_index.hpp"

#include <algorithm>

namespace gusset {

namespace {

std::uint64_t keyOf(JointId a, JointId b) {
    const auto low = static_cast<std::uint64_t>(std::min(a, b).index);
    const auto high = static_cast<std::uint64_t>(std::max(a, b).index);
    return (high << 32) | low;
}

} // namespace

MemberIndex::MemberIndex(const Truss& truss) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (truss.members[i].a.valid() && truss.members[i].b.valid()) {
            (void)add(truss.members[i], MemberId{static_cast<int>(i)}); // of two the first counts
        }
    }
}

bool MemberIndex::add(const Member& member, MemberId id) {
    return members_.emplace(keyOf(member.a, member.b), id).second;
}

MemberId MemberIndex::find(JointId a, JointId b) const {
    const auto found = members_.find(keyOf(a, b));
    return found == members_.end() ? MemberId{} : found->second;
}

} // namespace gusset
