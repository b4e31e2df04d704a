#include "exchange/drawings/doubts.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"
#include "exchange/drawings/crossing.hpp"
#include "exchange/drawings/drawn_number.hpp"
#include "exchange/drawings/parts.hpp"
#include "model/validate/findings.hpp"
#include "phrases/faults/traced.hpp"

#include <algorithm>
#include <numeric>
#include <optional>

namespace gusset {

namespace {

struct Drawn {
    DrawnLine line;
    double size = 0;
};

class Doubts {
public:
    Doubts(const Truss& truss, double tolerance, SomeOfEach& notes)
        : truss_(truss), notes_(notes), near_(kDrawnGap * tolerance),
          unit_(symbolOf(truss.units.length)), at_(truss.joints.size()) {
        for (std::size_t i = 0; i < truss.members.size(); ++i) {
            const Member& member = truss.members[i];
            at_[member.a.at()].push_back(toInt(i));
            at_[member.b.at()].push_back(toInt(i));
            drawn_.push_back({{placeOf(member.a), placeOf(member.b)},
                              length(placeOf(member.b) - placeOf(member.a))});
            lengths_.push_back(drawn_.back().size);
        }
        const auto middle = lengths_.begin() + static_cast<long>(lengths_.size() / 2);
        std::nth_element(lengths_.begin(), middle, lengths_.end());
        usual_ = *middle;
    }

    void tell() {
        tellPairs();
        tellGaps();
        tellShort();
        tellParts();
    }

private:
    [[nodiscard]] Vec2 placeOf(JointId joint) const { return truss_.joints[joint.at()].at; }
    [[nodiscard]] const std::string& label(int joint) const {
        return truss_.joints[at(joint)].label;
    }
    [[nodiscard]] std::string nameOf(int member) const { return memberName(truss_, {member}); }
    [[nodiscard]] Vec2 middle(int member) const {
        return 0.5 * (drawn_[at(member)].line.from + drawn_[at(member)].line.to);
    }
    void noteAt(const std::string& list, int index, Statement says) {
        notes_.add({IssueCode::Suspicious, gusset::placeOf(list, at(index)), std::move(says)});
    }

    // Pairs of members whose boxes touch, by a sweep from left to right.
    void tellPairs() {
        std::vector<int> order(drawn_.size());
        std::iota(order.begin(), order.end(), 0);
        const auto low = [&](int m) {
            return std::min(drawn_[at(m)].line.from.x, drawn_[at(m)].line.to.x);
        };
        const auto high = [&](int m) {
            return std::max(drawn_[at(m)].line.from.x, drawn_[at(m)].line.to.x);
        };
        std::sort(order.begin(), order.end(),
                  [&](int a, int b) { return low(a) != low(b) ? low(a) < low(b) : a < b; });
        std::vector<int> open;
        const double reach = kSideBySideGap * usual_;
        for (const int member : order) {
            std::erase_if(open, [&](int it) { return high(it) < low(member) - reach; });
            for (const int other : open) {
                tellPair(std::min(member, other), std::max(member, other));
            }
            open.push_back(member);
        }
    }

    void tellPair(int a, int b) {
        const Member& one = truss_.members[at(a)];
        const Member& other = truss_.members[at(b)];
        const bool meet =
            one.a == other.a || one.a == other.b || one.b == other.a || one.b == other.b;
        if (const std::optional<Vec2> place =
                meet ? std::nullopt : crossing(drawn_[at(a)].line, drawn_[at(b)].line)) {
            if (notes_.isOneMore(phrase::kCrossWithoutJoint)) {
                return;
            }
            noteAt("members", b,
                   statement(phrase::kCrossWithoutJoint,
                             {{"a", nameOf(a)}, {"b", nameOf(b)}, {"place", placeAt(*place)}}));
        } else if (const std::optional<double> gap = sideBySide(a, b);
                   gap && !notes_.isOneMore(phrase::kSideBySide)) {
            noteAt("members", b,
                   statement(phrase::kSideBySide, {{"a", nameOf(a)},
                                                   {"b", nameOf(b)},
                                                   {"gap", measured(*gap)},
                                                   {"unit", unit_},
                                                   {"place", placeAt(middle(b))}}));
        }
    }

    // The distance between two lines that run along each other for most of the shorter.
    [[nodiscard]] std::optional<double> sideBySide(int a, int b) const {
        const bool isLonger = drawn_[at(a)].size >= drawn_[at(b)].size;
        const Drawn& longer = drawn_[at(isLonger ? a : b)];
        const Drawn& shorter = drawn_[at(isLonger ? b : a)];
        const Vec2 along = (1 / longer.size) * (longer.line.to - longer.line.from);
        const Vec2 other = shorter.line.to - shorter.line.from;
        const double gap =
            std::abs(cross(along, shorter.line.from + 0.5 * other - longer.line.from));
        if (std::abs(cross(along, other)) > kSideBySideTurn * shorter.size ||
            gap > kSideBySideGap * shorter.size) {
            return std::nullopt;
        }
        const double start = dot(along, shorter.line.from - longer.line.from);
        const double end = dot(along, shorter.line.to - longer.line.from);
        const double overlap =
            std::min(longer.size, std::max(start, end)) - std::max(0.0, std::min(start, end));
        return overlap > kSideBySideOverlap * shorter.size ? std::optional(gap) : std::nullopt;
    }

    // How far from a joint one looks for what it may have been meant to meet.
    [[nodiscard]] double reachOf(int joint) const {
        const std::vector<int>& members = at_[at(joint)];
        return members.size() == 1 ? std::max(near_, kLooseGap * drawn_[at(members.front())].size)
                                   : near_;
    }
    [[nodiscard]] bool areJoined(int a, int b) const {
        return std::any_of(at_[at(a)].begin(), at_[at(a)].end(), [&](int member) {
            const Member& it = truss_.members[at(member)];
            return it.a.index == b || it.b.index == b;
        });
    }

    void tellGaps() {
        const int count = toInt(truss_.joints.size()); // lettered from left to right
        for (int joint = 0; joint < count; ++joint) {
            bool isTold = false;
            for (int other = 0; other < count; ++other) {
                const double gap = length(placeOf(JointId{other}) - placeOf(JointId{joint}));
                const bool wasTold = other < joint && gap <= reachOf(other);
                if (other != joint && gap <= reachOf(joint) && !areJoined(joint, other)) {
                    isTold = true;
                    if (!wasTold && !notes_.isOneMore(phrase::kGapBetweenJoints)) {
                        tellGap(joint, other, gap);
                    }
                }
            }
            if (!isTold && !tellGapToMember(joint)) {
                tellLooseEnd(joint);
            }
        }
    }

    void tellGap(int a, int b, double gap) {
        noteAt("joints", a,
               statement(phrase::kGapBetweenJoints, {{"a", label(a)},
                                                     {"place", placeAt(placeOf(JointId{a}))},
                                                     {"b", label(b)},
                                                     {"gap", measured(gap)},
                                                     {"unit", unit_}}));
    }

    // Members that end at a neighbour of the joint may well run past it at a small angle.
    bool tellGapToMember(int joint) {
        const Vec2 here = placeOf(JointId{joint});
        const double reach = reachOf(joint);
        for (int member = 0; member < toInt(drawn_.size()); ++member) {
            const DrawnLine& line = drawn_[at(member)].line;
            const Vec2 along = (1 / drawn_[at(member)].size) * (line.to - line.from);
            const double gap = std::abs(cross(along, here - line.from));
            const double past = dot(along, here - line.from);
            const Member& it = truss_.members[at(member)];
            if (gap <= reach && past > 0 && past < drawn_[at(member)].size && it.a.index != joint &&
                it.b.index != joint && !areJoined(joint, it.a.index) &&
                !areJoined(joint, it.b.index)) {
                noteAt("joints", joint,
                       statement(phrase::kGapToMember, {{"joint", label(joint)},
                                                        {"place", placeAt(here)},
                                                        {"gap", measured(gap)},
                                                        {"unit", unit_},
                                                        {"member", nameOf(member)}}));
                return true;
            }
        }
        return false;
    }

    void tellLooseEnd(int joint) {
        const int member = at_[at(joint)].front();
        const Member& it = truss_.members[at(member)];
        const int other = it.a.index == joint ? it.b.index : it.a.index;
        if (at_[at(joint)].size() == 1 && at_[at(other)].size() > 1) {
            noteAt("joints", joint,
                   statement(phrase::kLooseEnd, {{"member", nameOf(member)},
                                                 {"joint", label(joint)},
                                                 {"place", placeAt(placeOf(JointId{joint}))}}));
        }
    }

    void tellShort() {
        for (int member = 0; member < toInt(drawn_.size()); ++member) {
            const double size = drawn_[at(member)].size;
            if (size < kShortMember * usual_) {
                noteAt("members", member,
                       statement(phrase::kMemberShort, {{"member", nameOf(member)},
                                                        {"place", placeAt(middle(member))},
                                                        {"size", measured(size)},
                                                        {"usual", measured(usual_)},
                                                        {"unit", unit_}}));
            }
        }
    }

    void tellParts() {
        const std::vector<TrussPart> parts = partsOf(truss_);
        if (parts.size() < 2) {
            return;
        }
        const auto largest = std::max_element(
            parts.begin(), parts.end(),
            [](const TrussPart& a, const TrussPart& b) { return a.members < b.members; });
        notes_.add(
            {IssueCode::Suspicious, "joints",
             statement(phrase::kSeveralParts,
                       {{"n", parts.size()}, {"most", largest->members}, {"all", drawn_.size()}})});
        for (auto part = parts.begin(); part != parts.end(); ++part) {
            const Statement place = placeAt(placeOf(part->joint));
            const int member = at_[part->joint.at()].front();
            if (part->members == 1) {
                noteAt(
                    "members", member,
                    statement(phrase::kLoneLine, {{"member", nameOf(member)}, {"place", place}}));
            } else if (part != largest) {
                noteAt("joints", part->joint.index,
                       statement(phrase::kPartApart, {{"n", part->members},
                                                      {"joint", label(part->joint.index)},
                                                      {"place", place}}));
            }
        }
    }

    const Truss& truss_;
    SomeOfEach& notes_;
    double near_;
    std::string unit_;
    std::vector<std::vector<int>> at_; // the members at each joint
    std::vector<Drawn> drawn_;
    std::vector<double> lengths_;
    double usual_ = 0; // half of the members are longer
};

} // namespace

void tellDoubts(const Truss& truss, double tolerance, SomeOfEach& notes) {
    Doubts(truss, tolerance, notes).tell();
}

} // namespace gusset
