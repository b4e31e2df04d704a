#include "classroom/practice/chosen_body.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

constexpr int kNoPart = -1;

// Of each joint, the number of the part that it is in.
std::vector<int> partNumbers(const Structure& structure, const std::vector<MemberId>& cut) {
    std::vector<std::vector<int>> next(structure.joints.size());
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        if (std::find(cut.begin(), cut.end(), MemberId{static_cast<int>(i)}) == cut.end()) {
            next[static_cast<std::size_t>(bar.a)].push_back(bar.b);
            next[static_cast<std::size_t>(bar.b)].push_back(bar.a);
        }
    }
    std::vector<int> numbers(structure.joints.size(), kNoPart);
    int count = 0;
    for (std::size_t start = 0; start < numbers.size(); ++start) {
        if (numbers[start] != kNoPart) {
            continue;
        }
        std::vector<int> open{static_cast<int>(start)};
        while (!open.empty()) {
            const auto joint = static_cast<std::size_t>(open.back());
            open.pop_back();
            if (numbers[joint] == kNoPart) {
                numbers[joint] = count;
                open.insert(open.end(), next[joint].begin(), next[joint].end());
            }
        }
        ++count;
    }
    return numbers;
}

} // namespace

CutTruss cutThrough(const Structure& structure, const std::vector<MemberId>& cut) {
    const std::vector<int> numbers = partNumbers(structure, cut);
    CutTruss result;
    for (std::size_t joint = 0; joint < numbers.size(); ++joint) {
        const auto part = static_cast<std::size_t>(numbers[joint]);
        result.parts.resize(std::max(result.parts.size(), part + 1));
        result.parts[part].push_back({static_cast<int>(joint)});
    }
    for (const MemberId member : cut) {
        const Bar& bar = structure.bars[member.at()];
        if (numbers[static_cast<std::size_t>(bar.a)] == numbers[static_cast<std::size_t>(bar.b)]) {
            result.idle = member;
            result.fault = CutFault::Idle;
        }
    }
    if (cut.empty()) {
        result.fault = CutFault::NothingCut;
    } else if (result.parts.size() > 2) {
        result.fault = CutFault::TooMany;
    } else if (result.parts.size() < 2) {
        result.fault = CutFault::StillOne;
    }
    return result;
}

std::optional<std::vector<JointId>> jointsOf(const Structure& structure, const ChosenBody& body) {
    if (body.joint.valid()) {
        return std::vector<JointId>{body.joint};
    }
    if (body.cut.empty()) {
        return allJoints(structure);
    }
    const CutTruss truss = cutThrough(structure, body.cut);
    if (truss.fault != CutFault::None || !body.part.valid()) {
        return std::nullopt;
    }
    const std::vector<JointId>& first = truss.parts.front();
    const bool isFirst = std::find(first.begin(), first.end(), body.part) != first.end();
    return isFirst ? first : truss.parts.back();
}

PartOfTruss drawnPart(const Structure& structure, const std::vector<Vec2>& loads,
                      const std::vector<JointId>& joints) {
    PartOfTruss part = partOf(structure, loads, joints);
    const std::vector<ActingForce> forces = std::move(part.forces);
    part.forces.clear();
    for (const ActingForce& force : forces) {
        if (force.of != kGivenLoad) {
            part.forces.push_back(force);
            continue;
        }
        for (const Vec2 along : {Vec2{force.along.x, 0}, Vec2{0, force.along.y}}) {
            if (length(along) > kNoShare * length(force.along)) {
                part.forces.push_back({kGivenLoad, along, force.at, force.joint});
            }
        }
    }
    return part;
}

} // namespace gusset
