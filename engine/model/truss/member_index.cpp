#include "model/truss/member_index.hpp"

#include <algorithm>

namespace gusset {

namespace {

// Unique for each pair of joints: the factor is odd, so no two products are equal.
std::uint64_t hashOf(JointId a, JointId b) {
    const auto low = static_cast<std::uint64_t>(std::min(a, b).index);
    const auto high = static_cast<std::uint64_t>(std::max(a, b).index);
    return ((high << 32) | low) * 0x9e3779b97f4a7c15u; // 2⁶⁴ over the golden ratio
}

constexpr auto kAny = [](int) { return true; };

} // namespace

MemberIndex::MemberIndex(const Truss& truss) : members_(truss.members.size()) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (truss.members[i].a.valid() && truss.members[i].b.valid()) {
            (void)add(truss.members[i], MemberId{static_cast<int>(i)}); // first one counts
        }
    }
}

bool MemberIndex::add(const Member& member, MemberId id) {
    return members_.insert(hashOf(member.a, member.b), id.index, kAny) < 0;
}

MemberId MemberIndex::find(JointId a, JointId b) const {
    return MemberId{members_.find(hashOf(a, b), kAny)};
}

} // namespace gusset
