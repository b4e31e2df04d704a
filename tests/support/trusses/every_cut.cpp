#include "support/trusses/every_cut.hpp"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace gusset::support {

namespace {

using Side = std::vector<bool>; // by joint

TrussPart partOf(const Side& side) {
    TrussPart part;
    for (std::size_t i = 0; i < side.size(); ++i) {
        if (side[i]) {
            part.push_back({static_cast<int>(i)});
        }
    }
    return part;
}

void add(Side side, Parts& parts) {
    for (int turn = 0; turn < 2; ++turn, side.flip()) {
        const TrussPart part = partOf(side);
        if (!part.empty() && part.size() < side.size()) {
            parts.insert(part);
        }
    }
}

// By a line through a joint; for joints on the line, `onLine` decides the side by their position
// along it.
template <class OnLine>
void addLine(const Sheet& sheet, Vec2 origin, Vec2 along, OnLine onLine, Parts& parts) {
    Side side(sheet.truss.joints.size());
    for (std::size_t i = 0; i < side.size(); ++i) {
        const Vec2 from = sheet.truss.joints[i].at - origin;
        const double height = cross(along, from) / length(along);
        side[i] = std::fabs(height) <= sheet.spot ? onLine(dot(from, along)) : height > 0;
    }
    add(side, parts);
}

Parts linesOf(const Sheet& sheet) {
    Parts parts;
    const auto all = [](double) { return true; };
    const auto none = [](double) { return false; };
    const std::vector<Joint>& joints = sheet.truss.joints;
    for (const Joint& one : joints) {
        for (const Vec2 along : {Vec2{1, 0}, Vec2{0, 1}}) {
            addLine(sheet, one.at, along, all, parts);
            addLine(sheet, one.at, along, none, parts);
        }
        for (const Joint& other : joints) {
            const Vec2 along = other.at - one.at;
            if (&other <= &one || joints.size() > 70) {
                continue;
            }
            const auto before = [&](double at) { return at <= dot(along, along) / 2; };
            addLine(sheet, one.at, along, all, parts);
            addLine(sheet, one.at, along, none, parts);
            addLine(sheet, one.at, along, before, parts);
            addLine(
                sheet, one.at, along, [&](double at) { return !before(at); }, parts);
        }
    }
    return parts;
}

bool reaches(const Truss& truss, Side& side, int least, JointId without) {
    bool grown = false;
    for (std::size_t i = 0; i < side.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const auto held =
            std::count_if(truss.members.begin(), truss.members.end(), [&](const Member& member) {
                return (member.a == joint && side[member.b.at()] && member.b != without) ||
                       (member.b == joint && side[member.a.at()] && member.a != without);
            });
        if (!side[i] && joint != without && held >= least) {
            side[i] = grown = true;
        }
    }
    return grown;
}

Side grownFrom(const Truss& truss, const TrussPart& start, int least, JointId without = {}) {
    Side side(truss.joints.size());
    for (const JointId joint : start) {
        side[joint.at()] = true;
    }
    while (reaches(truss, side, least, without)) {
    }
    return side;
}

// Starting from members in no group so far: a joint connected to two joints of the group belongs to
// it.
std::set<Side> stiffGroups(const Truss& truss) {
    std::set<Side> groups;
    for (const Member& member : truss.members) {
        const bool inside = std::any_of(groups.begin(), groups.end(), [&](const Side& group) {
            return group[member.a.at()] && group[member.b.at()];
        });
        if (!inside) {
            groups.insert(grownFrom(truss, {member.a, member.b}, 2));
        }
    }
    return groups;
}

} // namespace

Parts everyStraightPart(const Sheet& sheet) {
    Parts parts = linesOf(sheet);
    for (const Member& member : sheet.truss.members) {
        for (const auto& [hinge, next] : {std::pair{member.a, member.b}, {member.b, member.a}}) {
            const Side side = grownFrom(sheet.truss, {next}, 1, hinge);
            const auto size = static_cast<std::size_t>(std::count(side.begin(), side.end(), true));
            if (size > 1 && size + 2 < side.size()) {
                add(side, parts);
            }
        }
    }
    const std::set<Side> groups = stiffGroups(sheet.truss);
    for (const Side& group : groups) {
        add(group, parts);
        for (const Side& other : groups) {
            Side rest = group;
            for (std::size_t i = 0; i < rest.size() && &other != &group; ++i) {
                rest[i] = rest[i] && !other[i];
            }
            add(rest, parts);
        }
    }
    return parts;
}

Parts everyBentPart(const Sheet& sheet) {
    Parts parts;
    if (sheet.truss.joints.size() > 70) {
        return parts;
    }
    for (const TrussPart& straight : linesOf(sheet)) {
        Side side(sheet.truss.joints.size());
        for (const JointId joint : straight) {
            side[joint.at()] = true;
        }
        for (const Member& member : sheet.truss.members) {
            for (const JointId end : {member.a, member.b}) {
                if (side[member.a.at()] != side[member.b.at()]) {
                    Side bent = side;
                    bent[end.at()] = !bent[end.at()];
                    add(bent, parts);
                }
            }
        }
    }
    return parts;
}

} // namespace gusset::support
