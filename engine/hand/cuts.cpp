#include "hand/cuts.hpp"

#include "hand/shape.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// Beyond this every pair of joints as a cutting line would be too many to look at.
constexpr std::size_t kManyJoints = 70;

// A line that cuts the truss: joints above it are inside.
struct CutLine {
    Vec2 origin;
    Vec2 normal; // unit vector
};

// Keeps the division by a line; joints on it fall where `within` says.
template <class Within>
void addLine(const Sheet& sheet, const CutLine& line, Divisions& found, Within within) {
    const std::vector<Joint>& joints = sheet.truss.joints;
    for (std::size_t i = 0; i < joints.size(); ++i) {
        const double height = dot(joints[i].at - line.origin, line.normal);
        found.put(i, std::fabs(height) <= sheet.spot ? within(i) : height > 0);
    }
    found.keep();
}

// The line through two joints, pushed a little so that each of them falls on either side.
void addLinesThrough(const Sheet& sheet, std::size_t i, std::size_t k, Divisions& found) {
    const Vec2 origin = sheet.truss.joints[i].at;
    const Vec2 along = sheet.truss.joints[k].at - origin;
    const CutLine line{origin, (1 / length(along)) * Vec2{-along.y, along.x}};
    const auto before = [&](std::size_t j) { // of joints on the line, those up to the first one
        return dot(sheet.truss.joints[j].at - origin, along) <= 0.5 * dot(along, along);
    };
    addLine(sheet, line, found, [](std::size_t) { return false; });
    addLine(sheet, line, found, [](std::size_t) { return true; });
    addLine(sheet, line, found, before);
    addLine(sheet, line, found, [&](std::size_t j) { return !before(j); });
}

void addStraightCuts(const Sheet& sheet, Divisions& found) {
    const std::size_t n = sheet.truss.joints.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 at = sheet.truss.joints[i].at;
        for (const Vec2 normal : {Vec2{1, 0}, Vec2{0, 1}}) {
            addLine(sheet, {at, normal}, found, [](std::size_t) { return false; });
            addLine(sheet, {at, normal}, found, [](std::size_t) { return true; });
        }
        for (std::size_t k = i + 1; n <= kManyJoints && k < n; ++k) {
            addLinesThrough(sheet, i, k, found);
        }
    }
}

// Each straight cut bent around one end of a member that it cuts.
void addBentCuts(const Truss& truss, const Divisions& straight, Divisions& found) {
    for (std::size_t i = 0; i < straight.count(); ++i) {
        for (const MemberId id : straight.cut(i)) {
            const Member& member = truss.members[id.at()];
            for (const JointId end : {member.a, member.b}) {
                found.putAll(straight, i);
                found.flip(end.at());
                found.keep();
            }
        }
    }
}

using Side = std::vector<bool>; // by joint: belongs to the part

// What a walk along members reaches without passing through `closed`.
Side reachable(const Sheet& sheet, JointId from, JointId closed) {
    Side reached(sheet.truss.joints.size());
    std::vector<JointId> open{from};
    reached[from.at()] = true;
    while (!open.empty()) {
        const JointId joint = open.back();
        open.pop_back();
        for (const MemberId member : membersAt(sheet, joint)) {
            const JointId next = otherEnd(sheet, joint, member);
            if (next != closed && !reached[next.at()]) {
                reached[next.at()] = true;
                open.push_back(next);
            }
        }
    }
    return reached;
}

Part partOf(const Side& side) {
    Part part;
    for (std::size_t i = 0; i < side.size(); ++i) {
        if (side[i]) {
            part.push_back({static_cast<int>(i)});
        }
    }
    return part;
}

// A stiff group of joints that grows from one member: joints that are held to two joints of the
// group belong to it. Each joint of the group is looked at once.
Part stiffGroup(const Sheet& sheet, const Member& first, std::vector<int>& held) {
    Part group{first.a, first.b};
    constexpr int kInside = 1 << 20; // more than any joint is held by
    held[first.a.at()] = held[first.b.at()] = kInside;
    Part touched;
    for (std::size_t i = 0; i < group.size(); ++i) {
        for (const MemberId member : membersAt(sheet, group[i])) {
            const JointId next = otherEnd(sheet, group[i], member);
            touched.push_back(next);
            if (++held[next.at()] == 2) {
                held[next.at()] = kInside;
                group.push_back(next);
            }
        }
    }
    for (const Part* part : {&group, &touched}) {
        for (const JointId joint : *part) {
            held[joint.at()] = 0;
        }
    }
    std::sort(group.begin(), group.end());
    return group;
}

bool holds(const Part& group, JointId joint) {
    return std::binary_search(group.begin(), group.end(), joint);
}

// The groups that a joint belongs to, by their places in the list.
using GroupsOf = std::vector<std::vector<std::size_t>>;

std::vector<Part> stiffGroups(const Sheet& sheet, GroupsOf& groupsOf) {
    std::vector<Part> groups;
    std::vector<int> held(sheet.truss.joints.size());
    for (const Member& member : sheet.truss.members) {
        const auto& mine = groupsOf[member.a.at()];
        const bool inside = std::any_of(mine.begin(), mine.end(), [&](std::size_t group) {
            return holds(groups[group], member.b);
        });
        if (inside) {
            continue;
        }
        groups.push_back(stiffGroup(sheet, member, held));
        for (const JointId joint : groups.back()) {
            groupsOf[joint.at()].push_back(groups.size() - 1);
        }
    }
    return groups;
}

void addPart(const Part& part, Divisions& found) {
    found.clear();
    for (const JointId joint : part) {
        found.put(joint.at(), true);
    }
    found.keep();
}

// Every group, whole and without what it shares with another.
void addStiffGroups(const Sheet& sheet, Divisions& found) {
    GroupsOf groupsOf(sheet.truss.joints.size());
    const std::vector<Part> groups = stiffGroups(sheet, groupsOf);
    for (std::size_t i = 0; i < groups.size(); ++i) {
        addPart(groups[i], found);
        std::vector<std::size_t> sharers;
        for (const JointId joint : groups[i]) {
            for (const std::size_t other : groupsOf[joint.at()]) {
                if (other != i) {
                    sharers.push_back(other);
                }
            }
        }
        std::sort(sharers.begin(), sharers.end());
        sharers.erase(std::unique(sharers.begin(), sharers.end()), sharers.end());
        for (const std::size_t other : sharers) {
            Part rest;
            std::set_difference(groups[i].begin(), groups[i].end(), groups[other].begin(),
                                groups[other].end(), std::back_inserter(rest));
            addPart(rest, found);
        }
    }
}

std::vector<HingedPart> findHingedParts(const Sheet& sheet) {
    std::vector<HingedPart> parts;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId hinge{static_cast<int>(i)};
        std::vector<Side> seen;
        for (const MemberId member : membersAt(sheet, hinge)) {
            const JointId next = otherEnd(sheet, hinge, member);
            const bool known = std::any_of(seen.begin(), seen.end(),
                                           [&](const Side& side) { return side[next.at()]; });
            if (known) {
                continue;
            }
            seen.push_back(reachable(sheet, next, hinge));
            const Part part = partOf(seen.back());
            // A single joint on either side is one like any other: the method of joints takes it.
            if (part.size() > 1 && part.size() + 2 < seen.back().size()) {
                parts.push_back({part, hinge});
            }
        }
    }
    return parts;
}

} // namespace

const std::vector<HingedPart>& hingedParts(const Sheet& sheet) {
    std::optional<std::vector<HingedPart>>& parts = sheet.shape->hinged;
    if (!parts) {
        parts = findHingedParts(sheet);
    }
    return *parts;
}

const Divisions& straightCuts(const Sheet& sheet) {
    std::optional<Divisions>& cuts = sheet.shape->straight;
    if (!cuts) {
        cuts.emplace(sheet.truss);
        addStraightCuts(sheet, *cuts);
        for (const HingedPart& hinged : hingedParts(sheet)) {
            addPart(hinged.part, *cuts);
        }
        addStiffGroups(sheet, *cuts);
        cuts->finish(sheet.truss);
    }
    return *cuts;
}

const Divisions& bentCuts(const Sheet& sheet) {
    std::optional<Divisions>& cuts = sheet.shape->bent;
    if (!cuts) {
        cuts.emplace(sheet.truss);
        if (sheet.truss.joints.size() <= kManyJoints) {
            Divisions straight(sheet.truss);
            addStraightCuts(sheet, straight);
            straight.finish(sheet.truss);
            addBentCuts(sheet.truss, straight, *cuts);
        }
        cuts->finish(sheet.truss);
    }
    return *cuts;
}

const std::vector<JointId>& jointsOnLine(const Sheet& sheet, MemberId member) {
    auto& lines = sheet.shape->onLine;
    lines.resize(sheet.truss.members.size());
    std::optional<std::vector<JointId>>& line = lines[member.at()];
    if (!line) {
        line.emplace();
        const Vec2 origin = positionOf(sheet, sheet.truss.members[member.at()].a);
        const Vec2 along = sheet.structure.bars[member.at()].along;
        for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
            const JointId joint{static_cast<int>(i)};
            if (std::fabs(cross(positionOf(sheet, joint) - origin, along)) <= 2 * sheet.spot) {
                line->push_back(joint);
            }
        }
    }
    return *line;
}

} // namespace gusset
