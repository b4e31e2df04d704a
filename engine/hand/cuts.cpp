#include "hand/cuts.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace gusset {
namespace {

// Beyond this every pair of joints as a cutting line would be too many to look at.
constexpr std::size_t kManyJoints = 70;

using Side = std::vector<bool>; // by joint: belongs to the part

struct Collection {
    const Sheet& sheet;
    std::set<Side> sides;

    void add(const Side& side) {
        const auto count = std::count(side.begin(), side.end(), true);
        if (count > 0 && static_cast<std::size_t>(count) < side.size()) {
            sides.insert(side);
        }
    }
};

Side complement(Side side) {
    side.flip();
    return side;
}

// Joints above the line, those on it as `within` says.
Side sideOf(const Sheet& sheet, Vec2 origin, Vec2 normal, const Side& within) {
    const double small = kSameSpot * sheet.structure.extent / toMetre(sheet.truss.units.length);
    Side side(sheet.truss.joints.size());
    for (std::size_t i = 0; i < side.size(); ++i) {
        const double height = dot(sheet.truss.joints[i].at - origin, normal);
        side[i] = std::fabs(height) <= small ? within[i] : height > 0;
    }
    return side;
}

// The line through two joints, pushed a little so that each of them falls on either side.
void addLinesThrough(Collection& found, std::size_t i, std::size_t k) {
    const Vec2 origin = found.sheet.truss.joints[i].at;
    const Vec2 along = found.sheet.truss.joints[k].at - origin;
    const Vec2 normal = (1 / length(along)) * Vec2{-along.y, along.x};
    Side none(found.sheet.truss.joints.size());
    Side all(none.size(), true);
    Side before = none; // of joints on the line, those that lie up to the first one
    Side behind = none;
    for (std::size_t j = 0; j < none.size(); ++j) {
        const double at = dot(found.sheet.truss.joints[j].at - origin, along);
        before[j] = at <= 0.5 * dot(along, along);
        behind[j] = !before[j];
    }
    for (const Side& within : {none, all, before, behind}) {
        found.add(sideOf(found.sheet, origin, normal, within));
    }
}

void addStraightCuts(Collection& found) {
    const std::size_t n = found.sheet.truss.joints.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 at = found.sheet.truss.joints[i].at;
        for (const Vec2 normal : {Vec2{1, 0}, Vec2{0, 1}}) {
            found.add(sideOf(found.sheet, at, normal, Side(n)));
            found.add(sideOf(found.sheet, at, normal, Side(n, true)));
        }
        for (std::size_t k = i + 1; n <= kManyJoints && k < n; ++k) {
            addLinesThrough(found, i, k);
        }
    }
}

// Each straight cut bent around one end of a member that it cuts.
void addBentCuts(const Collection& straight, Collection& found) {
    for (const Side& side : straight.sides) {
        for (const Member& member : straight.sheet.truss.members) {
            if (side[member.a.at()] == side[member.b.at()]) {
                continue;
            }
            for (const JointId end : {member.a, member.b}) {
                Side bent = side;
                bent[end.at()] = !bent[end.at()];
                found.add(bent);
            }
        }
    }
}

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

Side sideOf(const Sheet& sheet, const Part& part) {
    Side side(sheet.truss.joints.size());
    for (const JointId joint : part) {
        side[joint.at()] = true;
    }
    return side;
}

// Joints that are held to two joints of the group already belong to it.
void growStiff(const Sheet& sheet, Side& group) {
    for (bool grown = true; grown;) {
        grown = false;
        for (std::size_t i = 0; i < group.size(); ++i) {
            const JointId joint{static_cast<int>(i)};
            int held = 0;
            for (const MemberId member : membersAt(sheet, joint)) {
                held += group[otherEnd(sheet, joint, member).at()] ? 1 : 0;
            }
            if (!group[i] && held >= 2) {
                group[i] = true;
                grown = true;
            }
        }
    }
}

void addStiffGroups(Collection& found) {
    const Sheet& sheet = found.sheet;
    std::vector<Side> groups;
    for (const Member& member : sheet.truss.members) {
        const bool inside = std::any_of(groups.begin(), groups.end(), [&](const Side& group) {
            return group[member.a.at()] && group[member.b.at()];
        });
        if (inside) {
            continue;
        }
        Side group(sheet.truss.joints.size());
        group[member.a.at()] = group[member.b.at()] = true;
        growStiff(sheet, group);
        groups.push_back(group);
    }
    for (const Side& group : groups) {
        found.add(group);
        for (const Side& other : groups) {
            Side rest = group;
            for (std::size_t i = 0; &other != &group && i < rest.size(); ++i) {
                rest[i] = rest[i] && !other[i];
            }
            found.add(rest);
        }
    }
}

std::vector<Part> bothSides(Collection& found) {
    const std::set<Side> oneSide = found.sides;
    for (const Side& side : oneSide) {
        found.add(complement(side));
    }
    std::vector<Part> parts;
    for (const Side& side : found.sides) {
        parts.push_back(partOf(side));
    }
    return parts;
}

} // namespace

std::vector<HingedPart> hingedParts(const Sheet& sheet) {
    std::vector<HingedPart> parts;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId hinge{static_cast<int>(i)};
        std::set<Side> seen;
        for (const MemberId member : membersAt(sheet, hinge)) {
            const Side side = reachable(sheet, otherEnd(sheet, hinge, member), hinge);
            const Part part = partOf(side);
            // A single joint on either side is one like any other: the method of joints takes it.
            const bool apart = part.size() > 1 && part.size() + 2 < side.size();
            if (apart && seen.insert(side).second) {
                parts.push_back({part, hinge});
            }
        }
    }
    return parts;
}

std::vector<Part> straightParts(const Sheet& sheet) {
    Collection found{sheet, {}};
    addStraightCuts(found);
    for (const HingedPart& hinged : hingedParts(sheet)) {
        found.add(sideOf(sheet, hinged.part));
    }
    addStiffGroups(found);
    return bothSides(found);
}

std::vector<Part> bentParts(const Sheet& sheet) {
    Collection found{sheet, {}};
    if (sheet.truss.joints.size() <= kManyJoints) {
        Collection straight{sheet, {}};
        addStraightCuts(straight);
        addBentCuts(straight, found);
    }
    return bothSides(found);
}

} // namespace gusset
