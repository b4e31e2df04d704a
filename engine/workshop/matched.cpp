#include "workshop/matched.hpp"

#include "phrases/design/compared.hpp"

#include <algorithm>
#include <map>
#include <utility>

namespace gusset {

namespace {

constexpr double kSamePlace = 1e-6; // of the size of the truss
constexpr std::size_t kNamed = 12;  // names in one sentence at most

double sizeOfTruss(const Truss& truss) {
    const Extent box = extent(truss);
    return std::max(box.high.x - box.low.x, box.high.y - box.low.y);
}

// The ends of a member, the lesser first.
std::pair<int, int> endsOf(JointId a, JointId b) {
    return {std::min(a.index, b.index), std::max(a.index, b.index)};
}

std::vector<JointId> matchedJoints(const Truss& first, const Truss& second) {
    std::map<std::string, int> byName;
    for (std::size_t i = 0; i < second.joints.size(); ++i) {
        byName.emplace(second.joints[i].label, static_cast<int>(i));
    }
    std::vector<JointId> matched(first.joints.size());
    std::vector<bool> isTaken(second.joints.size());
    for (std::size_t i = 0; i < first.joints.size(); ++i) {
        if (const auto it = byName.find(first.joints[i].label); it != byName.end()) {
            matched[i] = JointId{it->second};
            isTaken[matched[i].at()] = true;
        }
    }
    const double near = nearnessOf(first, second);
    for (std::size_t i = 0; i < first.joints.size(); ++i) {
        for (std::size_t k = 0; k < second.joints.size() && !matched[i].valid(); ++k) {
            if (!isTaken[k] && length(first.joints[i].at - second.joints[k].at) <= near) {
                matched[i] = JointId{static_cast<int>(k)};
                isTaken[k] = true;
            }
        }
    }
    return matched;
}

std::vector<MemberId> matchedMembers(const Truss& first, const Truss& second,
                                     const std::vector<JointId>& joints) {
    std::map<std::pair<int, int>, int> byEnds;
    for (std::size_t i = 0; i < second.members.size(); ++i) {
        byEnds.emplace(endsOf(second.members[i].a, second.members[i].b), static_cast<int>(i));
    }
    std::vector<MemberId> matched(first.members.size());
    for (std::size_t i = 0; i < first.members.size(); ++i) {
        const JointId a = joints[first.members[i].a.at()];
        const JointId b = joints[first.members[i].b.at()];
        if (a.valid() && b.valid()) {
            const auto it = byEnds.find(endsOf(a, b));
            matched[i] = it == byEnds.end() ? MemberId{} : MemberId{it->second};
        }
    }
    return matched;
}

std::vector<JointId> backwards(const std::vector<JointId>& matched, const Truss& second) {
    std::vector<JointId> back(second.joints.size());
    for (std::size_t i = 0; i < matched.size(); ++i) {
        if (matched[i].valid()) {
            back[matched[i].at()] = JointId{static_cast<int>(i)};
        }
    }
    return back;
}

} // namespace

double nearnessOf(const Truss& first, const Truss& second) {
    return kSamePlace * std::max(sizeOfTruss(first), sizeOfTruss(second));
}

Matched matched(const Truss& first, const Truss& second) {
    std::vector<JointId> joints = matchedJoints(first, second);
    std::vector<JointId> back = backwards(joints, second);
    std::vector<MemberId> members = matchedMembers(first, second, joints);
    return {std::move(joints), std::move(back), std::move(members)};
}

std::string listed(const PhraseBook& book, const std::vector<std::string>& names) {
    std::string all;
    for (std::size_t i = 0; i < std::min(names.size(), kNamed); ++i) {
        all += (i == 0 ? "" : ", ") + names[i];
    }
    return names.size() <= kNamed
               ? all
               : sayPlain(book, phrase::kAndMore,
                          {{"names", all}, {"n", std::to_string(names.size() - kNamed)}});
}

} // namespace gusset
