#include "exchange/drawings/outline.hpp"

#include "core/index.hpp"
#include "exchange/drawings/crossing.hpp"
#include "exchange/drawings/parts.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

Vec2 placeOfJoint(const Truss& truss, int joint) { return truss.joints[at(joint)].at; }

// From left to right, so that long trusses stay fast.
bool anyCross(const Truss& truss) {
    std::vector<DrawnLine> lines;
    for (const Member& member : truss.members) {
        DrawnLine line{truss.joints[member.a.at()].at, truss.joints[member.b.at()].at};
        if (line.to.x < line.from.x) {
            std::swap(line.from, line.to);
        }
        lines.push_back(line);
    }
    std::sort(lines.begin(), lines.end(),
              [](const DrawnLine& a, const DrawnLine& b) { return a.from.x < b.from.x; });
    for (std::size_t i = 0; i < lines.size(); ++i) {
        for (std::size_t j = i + 1; j < lines.size() && lines[j].from.x <= lines[i].to.x; ++j) {
            if (crossing(lines[i], lines[j])) {
                return true;
            }
        }
    }
    return false;
}

struct MemberEnd {
    int member = 0;
    int to = 0;
};

class OutlineWalk {
public:
    explicit OutlineWalk(const Truss& truss) : truss_(truss), at_(truss.joints.size()) {
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const Member& member = truss.members[i];
            at_[member.a.at()].push_back({toInt(i), member.b.index});
            at_[member.b.at()].push_back({toInt(i), member.a.index});
        }
    }

    // From the joint at the left end around the truss, always by the member that lies next to the
    // outside, until the first one is taken again.
    [[nodiscard]] std::vector<bool> walk() const {
        std::vector<bool> isOutside(truss_.members.size(), false);
        const int first = leftmost();
        const MemberEnd start = outermost(first, {-1, 0});
        MemberEnd taken = start;
        int from = first;
        do {
            isOutside[at(taken.member)] = true;
            const int here = taken.to;
            taken = outermost(here, placeOfJoint(truss_, from) - placeOfJoint(truss_, here));
            from = here;
        } while (from != first || taken.member != start.member);
        return isOutside;
    }

private:
    [[nodiscard]] int leftmost() const {
        int best = truss_.members.front().a.index;
        for (int joint = 0; joint < toInt(at_.size()); ++joint) {
            const Vec2 one = placeOfJoint(truss_, joint);
            const Vec2 other = placeOfJoint(truss_, best);
            if (!at_[at(joint)].empty() &&
                (one.x < other.x || (one.x == other.x && one.y < other.y))) {
                best = joint;
            }
        }
        return best;
    }

    // The first member of a joint anticlockwise of a direction, in which it does not lie itself
    // unless it is the only one.
    [[nodiscard]] MemberEnd outermost(int joint, Vec2 back) const {
        const auto isLate = [&](Vec2 along) { // beyond half a turn
            const double turn = cross(back, along);
            return turn < 0 || (turn == 0 && dot(back, along) > 0);
        };
        const auto along = [&](const MemberEnd& end) {
            return placeOfJoint(truss_, end.to) - placeOfJoint(truss_, joint);
        };
        const auto isBack = [&](Vec2 it) { return cross(back, it) == 0 && dot(back, it) > 0; };
        return *std::min_element(at_[at(joint)].begin(), at_[at(joint)].end(),
                                 [&](const MemberEnd& one, const MemberEnd& other) {
                                     const Vec2 a = along(one);
                                     const Vec2 b = along(other);
                                     if (isBack(a) || isBack(b)) {
                                         return !isBack(a);
                                     }
                                     return isLate(a) != isLate(b) ? isLate(b) : cross(a, b) > 0;
                                 });
    }

    const Truss& truss_;
    std::vector<std::vector<MemberEnd>> at_;
};

} // namespace

std::optional<std::vector<bool>> outlineOf(const Truss& truss) {
    const bool isInOnePiece = partsOf(truss).size() == 1;
    return isInOnePiece && !anyCross(truss) ? std::optional(OutlineWalk(truss).walk())
                                            : std::nullopt;
}

} // namespace gusset
