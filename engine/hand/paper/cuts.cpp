#include "hand/paper/cuts.hpp"

#include "hand/paper/shape.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <utility>

namespace gusset {
namespace {

// Above this, there are too many pairs of joints to try each as a cutting line.
constexpr std::size_t kManyJoints = 70;

// A line that cuts the truss: joints above it are inside.
struct CutLine {
    Vec2 origin;
    Vec2 normal; // unit vector
};

// Keeps the division by a line; `within` decides for the joints on it.
template <class Within>
void addLine(const Sheet& sheet, const CutLine& line, Divisions& found, Within within) {
    const std::vector<Joint>& joints = sheet.truss.joints;
    for (std::size_t i = 0; i < joints.size(); ++i) {
        const double height = dot(joints[i].at - line.origin, line.normal);
        found.put(i, std::fabs(height) <= sheet.spot ? within(i) : height > 0);
    }
    found.keep();
}

// The line through two joints, shifted slightly so that each of them falls on either side.
void addLinesThrough(const Sheet& sheet, std::size_t i, std::size_t k, Divisions& found) {
    const Vec2 origin = sheet.truss.joints[i].at;
    const Vec2 along = sheet.truss.joints[k].at - origin;
    const CutLine line{origin, (1 / length(along)) * Vec2{-along.y, along.x}};
    const auto before = [&](std::size_t j) { // of the joints on the line, those up to the first one
        return dot(sheet.truss.joints[j].at - origin, along) <= 0.5 * dot(along, along);
    };
    addLine(sheet, line, found, [](std::size_t) { return false; });
    addLine(sheet, line, found, [](std::size_t) { return true; });
    addLine(sheet, line, found, before);
    addLine(sheet, line, found, [&](std::size_t j) { return !before(j); });
}

// The joints sorted by one coordinate. Subtraction keeps that order, so that every vertical or
// horizontal line splits it in two.
struct Row {
    std::vector<double> coordinates; // sorted
    std::vector<int> placeOf;        // of each joint
    std::vector<bool> known;         // for each place: the cut before it is kept

    // The first place at least this far above.
    [[nodiscard]] int firstAbove(double from, double height) const;
};

int Row::firstAbove(double from, double height) const {
    const auto below = [&](double at) { return at - from < height; };
    const auto first = std::partition_point(coordinates.begin(), coordinates.end(), below);
    return static_cast<int>(first - coordinates.begin());
}

Row rowOf(const Truss& truss, double Vec2::*axis) {
    const std::size_t n = truss.joints.size();
    std::vector<int> order(n);
    std::iota(order.begin(), order.end(), 0);
    const auto coordinate = [&](int joint) {
        return truss.joints[static_cast<std::size_t>(joint)].at.*axis;
    };
    std::sort(order.begin(), order.end(),
              [&](int a, int b) { return coordinate(a) < coordinate(b); });
    Row row{{}, std::vector<int>(n), std::vector<bool>(n + 1)};
    for (std::size_t i = 0; i < n; ++i) {
        row.coordinates.push_back(coordinate(order[i]));
        row.placeOf[static_cast<std::size_t>(order[i])] = static_cast<int>(i);
    }
    return row;
}

void addCutBefore(Row& row, int place, Divisions& found) {
    if (!row.known[static_cast<std::size_t>(place)]) {
        row.known[static_cast<std::size_t>(place)] = true;
        found.putFrom(row.placeOf, place);
        found.keep();
    }
}

// The same as addStraightCuts with these lines alone, but builds each division only once.
void addUprightAndLevelCuts(const Sheet& sheet, Divisions& found) {
    const double justAbove = std::nextafter(sheet.spot, std::numeric_limits<double>::infinity());
    Row across = rowOf(sheet.truss, &Vec2::x);
    Row up = rowOf(sheet.truss, &Vec2::y);
    for (const Joint& joint : sheet.truss.joints) {
        addCutBefore(across, across.firstAbove(joint.at.x, justAbove), found);
        addCutBefore(across, across.firstAbove(joint.at.x, -sheet.spot), found);
        addCutBefore(up, up.firstAbove(joint.at.y, justAbove), found);
        addCutBefore(up, up.firstAbove(joint.at.y, -sheet.spot), found);
    }
}

void addStraightCuts(const Sheet& sheet, Divisions& found) {
    const std::size_t n = sheet.truss.joints.size();
    if (n > kManyJoints) {
        addUprightAndLevelCuts(sheet, found);
        return;
    }
    for (std::size_t i = 0; i < n; ++i) {
        const Vec2 at = sheet.truss.joints[i].at;
        for (const Vec2 normal : {Vec2{1, 0}, Vec2{0, 1}}) {
            addLine(sheet, {at, normal}, found, [](std::size_t) { return false; });
            addLine(sheet, {at, normal}, found, [](std::size_t) { return true; });
        }
        for (std::size_t k = i + 1; k < n; ++k) {
            addLinesThrough(sheet, i, k, found);
        }
    }
}

// Each straight cut, bent around one end of each member that it cuts.
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

// The joints reached by walking along members without passing `closed`; `reached` is set to
// `closed` for these. Precondition: it is not `closed` for any joint.
TrussPart reachable(const Sheet& sheet, JointId from, JointId closed,
                    std::vector<JointId>& reached) {
    TrussPart part{from};
    reached[from.at()] = closed;
    for (std::size_t i = 0; i < part.size(); ++i) {
        for (const MemberId member : membersAt(sheet, part[i])) {
            const JointId next = otherEnd(sheet, part[i], member);
            if (next != closed && reached[next.at()] != closed) {
                reached[next.at()] = closed;
                part.push_back(next);
            }
        }
    }
    std::sort(part.begin(), part.end());
    return part;
}

// The joints whose removal disconnects the truss; all joints if the truss is not connected. A
// depth-first search finds them in one pass: such a joint has a child from which no member leads
// back above the joint (J. Hopcroft, R. Tarjan, Algorithm 447, Comm. ACM 16 (1973) 372–378).
class PartingJoints {
public:
    explicit PartingJoints(const Sheet& sheet)
        : sheet_(sheet), entered_(sheet.truss.joints.size()), highest_(entered_.size()),
          parting_(entered_.size()) {}

    // False when some joints are not reached from the first.
    bool walk() {
        std::size_t belowFirst = 0;
        enter({0});
        while (!path_.empty()) {
            Stand& here = path_.back();
            const auto& members = membersAt(sheet_, here.joint);
            if (here.looked < members.size()) {
                look(here.joint, otherEnd(sheet_, here.joint, members[here.looked++]));
                continue;
            }
            const std::size_t below = here.joint.at();
            path_.pop_back();
            if (path_.size() == 1) {
                ++belowFirst;
            } else if (!path_.empty()) {
                leave(path_.back().joint.at(), below);
            }
        }
        parting_[0] = belowFirst > 1;
        return steps_ == static_cast<int>(entered_.size());
    }
    [[nodiscard]] const std::vector<bool>& found() const { return parting_; }

private:
    struct Stand {
        JointId joint;
        std::size_t looked = 0; // of its members
    };

    void enter(JointId joint) {
        entered_[joint.at()] = highest_[joint.at()] = ++steps_;
        path_.push_back({joint});
    }
    void look(JointId from, JointId to) {
        if (entered_[to.at()] == 0) {
            enter(to);
        } else {
            highest_[from.at()] = std::min(highest_[from.at()], entered_[to.at()]);
        }
    }
    void leave(std::size_t above, std::size_t below) {
        highest_[above] = std::min(highest_[above], highest_[below]);
        parting_[above] = parting_[above] || highest_[below] >= entered_[above];
    }

    const Sheet& sheet_;
    std::vector<int> entered_; // for each joint, the step; 0 before it is entered
    std::vector<int> highest_; // the earliest step reached from below it
    std::vector<bool> parting_;
    std::vector<Stand> path_;
    int steps_ = 0;
};

std::vector<bool> partingJoints(const Sheet& sheet) {
    if (sheet.truss.joints.empty()) {
        return {};
    }
    PartingJoints joints(sheet);
    return joints.walk() ? joints.found() : std::vector<bool>(sheet.truss.joints.size(), true);
}

// A stiff group of joints, grown from one member: a joint connected to two joints of the group
// belongs to it. Each joint of the group is visited once.
TrussPart stiffGroup(const Sheet& sheet, const Member& first, std::vector<int>& held) {
    TrussPart group{first.a, first.b};
    constexpr int kInside = 1 << 20; // more members than any joint has
    held[first.a.at()] = held[first.b.at()] = kInside;
    TrussPart touched;
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
    for (const TrussPart* part : {&group, &touched}) {
        for (const JointId joint : *part) {
            held[joint.at()] = 0;
        }
    }
    std::sort(group.begin(), group.end());
    return group;
}

bool holds(const TrussPart& group, JointId joint) {
    return std::binary_search(group.begin(), group.end(), joint);
}

// The groups of each joint, as indices into the list.
using GroupsOf = std::vector<std::vector<std::size_t>>;

std::vector<TrussPart> stiffGroups(const Sheet& sheet, GroupsOf& groupsOf) {
    std::vector<TrussPart> groups;
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

void addPart(const TrussPart& part, Divisions& found) {
    found.clear();
    for (const JointId joint : part) {
        found.put(joint.at(), true);
    }
    found.keep();
}

// Every group, whole and without the joints that it shares with another.
void addStiffGroups(const Sheet& sheet, Divisions& found) {
    GroupsOf groupsOf(sheet.truss.joints.size());
    const std::vector<TrussPart> groups = stiffGroups(sheet, groupsOf);
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
            TrussPart rest;
            std::set_difference(groups[i].begin(), groups[i].end(), groups[other].begin(),
                                groups[other].end(), std::back_inserter(rest));
            addPart(rest, found);
        }
    }
}

std::vector<HingedPart> findHingedParts(const Sheet& sheet) {
    const std::size_t count = sheet.truss.joints.size();
    const std::vector<bool> parting = partingJoints(sheet);
    std::vector<HingedPart> parts;
    std::vector<JointId> reached(count);
    for (std::size_t i = 0; i < count; ++i) {
        const JointId hinge{static_cast<int>(i)};
        for (const MemberId member : membersAt(sheet, hinge)) {
            const JointId next = otherEnd(sheet, hinge, member);
            if (!parting[i] || reached[next.at()] == hinge) {
                continue;
            }
            TrussPart part = reachable(sheet, next, hinge, reached);
            // A single joint on either side needs no hinge: the method of joints covers it.
            if (part.size() > 1 && part.size() + 2 < count) {
                parts.push_back({std::move(part), hinge});
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
