#include "hand/paper/load_shares.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// The shares of one load, with the place of each joint's: each is looked up once for every member.
struct Sharing {
    LoadShares& shares;
    std::vector<std::size_t> place; // of each joint, from 1; 0 for none

    Sharing(const Truss& truss, LoadShares& of) : shares(of), place(truss.joints.size()) {}

    JointShare& of(JointId joint) {
        std::size_t& at = place[joint.at()];
        if (at == 0) {
            shares.joints.push_back({joint, 0, {}, {}});
            at = shares.joints.size();
        }
        return shares.joints[at - 1];
    }
};

// Each joint carries the load up to halfway to its neighbours.
void shareChord(const Truss& truss, const ChordLoad& load, LoadShares& shares) {
    Sharing sharing(truss, shares);
    for (std::size_t i = 0; i + 1 < load.chord.size(); ++i) {
        const double from = truss.joints[load.chord[i].at()].at.x;
        const double breadth = std::fabs(truss.joints[load.chord[i + 1].at()].at.x - from);
        for (const JointId joint : {load.chord[i], load.chord[i + 1]}) {
            sharing.of(joint).length += breadth / 2;
        }
    }
    for (JointShare& share : shares.joints) {
        share.force = {0, shares.factor * load.perLength * share.length};
    }
}

// The law of the lever: the nearer joint takes more.
void shareMember(const Truss& truss, const MemberForce& load, LoadShares& shares) {
    const Vec2 from = truss.joints[load.from.at()].at;
    shares.span = length(truss.joints[load.to.at()].at - from);
    const Vec2 force = shares.factor * Vec2{load.fx, load.fy};
    for (const auto& [joint, lever] :
         {std::pair(load.from, shares.span - load.at), std::pair(load.to, load.at)}) {
        shares.joints.push_back({joint, lever, {}, (lever / shares.span) * force});
    }
}

void shareWeight(const Truss& truss, const Structure& structure, LoadShares& shares) {
    const double newton = toNewton(truss.units.force);
    Sharing sharing(truss, shares);
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        for (const int end : {bar.a, bar.b}) {
            JointShare& share = sharing.of({end});
            share.members.push_back({static_cast<int>(i)});
            share.force.y -= shares.factor * bar.weight / 2 / newton;
        }
    }
    std::sort(shares.joints.begin(), shares.joints.end(),
              [](const JointShare& a, const JointShare& b) { return a.joint.at() < b.joint.at(); });
}

} // namespace

std::vector<LoadShares> loadShares(const Truss& truss, const Structure& structure,
                                   const LoadChoice& choice) {
    std::vector<LoadShares> all;
    const std::vector<double> factors = LoadFactors(truss).under(choice);
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const Load& load = truss.loads[i];
        LoadShares shares{{static_cast<int>(i)}, factors[i], 0, {}};
        if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
            shareChord(truss, *chord, shares);
        } else if (const auto* member = std::get_if<MemberForce>(&load.what)) {
            shareMember(truss, *member, shares);
        } else if (std::holds_alternative<SelfWeight>(load.what)) {
            shareWeight(truss, structure, shares);
        }
        if (factors[i] != 0 && !shares.joints.empty()) {
            all.push_back(std::move(shares));
        }
    }
    return all;
}

} // namespace gusset
