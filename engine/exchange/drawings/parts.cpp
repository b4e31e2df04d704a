#include "exchange/drawings/parts.hpp"

#include "core/index.hpp"

#include <numeric>

namespace gusset {

std::vector<TrussPart> partsOf(const Truss& truss) {
    std::vector<int> parent(truss.joints.size());
    std::iota(parent.begin(), parent.end(), 0);
    const auto rootOf = [&](int joint) {
        while (parent[at(joint)] != joint) {
            joint = parent[at(joint)] = parent[at(parent[at(joint)])];
        }
        return joint;
    };
    for (const Member& member : truss.members) {
        parent[at(rootOf(member.b.index))] = rootOf(member.a.index);
    }
    std::vector<int> members(truss.joints.size(), 0);
    for (const Member& member : truss.members) {
        ++members[at(rootOf(member.a.index))];
    }
    std::vector<TrussPart> parts;
    for (int joint = 0; joint < toInt(parent.size()); ++joint) {
        int& count = members[at(rootOf(joint))];
        if (count > 0) {
            parts.push_back({JointId{joint}, count});
            count = 0; // the others of this part
        }
    }
    return parts;
}

} // namespace gusset
