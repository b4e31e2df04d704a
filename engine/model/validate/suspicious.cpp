// Things that the author may not have intended. Geometry uses a sweep from left to right, so that
// long trusses stay fast; in crowded ones, pairs beyond kMostPairs are not checked.

#include "core/tolerance.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/suspicions.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr std::size_t kMostPairs = 200'000; // some milliseconds

// A member, or a joint as a member of zero length, with its bounding box.
struct Span {
    Vec2 low;
    Vec2 high;
    int index = 0; // joints are numbered after the members
    int a = 0;     // joints at the ends, the same twice for a joint
    int b = 0;
};

bool meetAtAJoint(const Span& one, const Span& other) {
    return one.a == other.a || one.a == other.b || one.b == other.a || one.b == other.b;
}

struct Line {
    Vec2 from;
    Vec2 to;
};

class Suspicions {
public:
    explicit Suspicions(const Truss& truss) : truss_(truss) {
        const Extent box = extent(truss);
        near_ = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    }

    Issues find() {
        findLooseJoints();
        sweep();
        return std::move(notes_);
    }

    [[nodiscard]] bool noneAt(const std::vector<JointId>& moved) const {
        const std::vector<Span> spans = spansOf();
        const auto hasMoved = [&](const Span& span) {
            return std::any_of(moved.begin(), moved.end(), [&](JointId joint) {
                return span.a == joint.index || span.b == joint.index;
            });
        };
        for (const Span& span : spans) {
            if (!hasMoved(span)) {
                continue;
            }
            for (const Span& other : spans) {
                if (mayTouch(span, other) && isSuspicious(span, other)) {
                    return false;
                }
            }
        }
        return true;
    }

private:
    void note(std::string at, Statement says) {
        if (notes_.size() < kMostIssues) {
            notes_.push_back({IssueCode::Suspicious, std::move(at), std::move(says)});
        }
    }

    [[nodiscard]] const std::string& label(int joint) const {
        return truss_.joints[static_cast<std::size_t>(joint)].label;
    }
    [[nodiscard]] Vec2 at(int joint) const {
        return truss_.joints[static_cast<std::size_t>(joint)].at;
    }
    [[nodiscard]] Line lineOf(const Span& span) const { return {at(span.a), at(span.b)}; }
    [[nodiscard]] std::string nameOf(int member) const {
        return memberName(truss_, MemberId{member});
    }

    void findLooseJoints() {
        std::vector<bool> held(truss_.joints.size(), false);
        for (const Member& member : truss_.members) {
            held[member.a.at()] = true;
            held[member.b.at()] = true;
        }
        for (std::size_t i = 0; i < held.size(); ++i) {
            if (!held[i]) {
                note(placeOf("joints", i),
                     statement(phrase::kHasNoMember, {{"joint", truss_.joints[i].label}}));
            }
        }
    }

    [[nodiscard]] std::vector<Span> spansOf() const {
        std::vector<Span> spans;
        spans.reserve(truss_.members.size() + truss_.joints.size());
        const auto add = [&](int a, int b) {
            const Vec2 from = at(a);
            const Vec2 to = at(b);
            spans.push_back({{std::min(from.x, to.x), std::min(from.y, to.y)},
                             {std::max(from.x, to.x), std::max(from.y, to.y)},
                             static_cast<int>(spans.size()),
                             a,
                             b});
        };
        for (const Member& member : truss_.members) {
            add(member.a.index, member.b.index);
        }
        for (int i = 0; i < static_cast<int>(truss_.joints.size()); ++i) {
            add(i, i);
        }
        return spans;
    }

    void sweep() {
        std::vector<Span> spans = spansOf();
        std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) {
            return a.low.x != b.low.x ? a.low.x < b.low.x : a.index < b.index;
        });
        std::vector<const Span*> open;
        std::size_t pairs = 0;
        for (const Span& span : spans) {
            std::erase_if(open, [&](const Span* it) { return it->high.x < span.low.x - near_; });
            pairs += open.size();
            if (pairs > kMostPairs || notes_.size() >= kMostIssues) {
                return;
            }
            for (const Span* other : open) {
                if (mayTouch(span, *other) && isSuspicious(span, *other)) {
                    tell(span, *other);
                }
            }
            open.push_back(&span);
        }
    }

    [[nodiscard]] bool mayTouch(const Span& one, const Span& other) const {
        return !meetAtAJoint(one, other) && one.low.y <= other.high.y + near_ &&
               other.low.y <= one.high.y + near_ && one.low.x <= other.high.x + near_ &&
               other.low.x <= one.high.x + near_;
    }

    // Precondition: they have no joint in common.
    [[nodiscard]] bool isSuspicious(const Span& one, const Span& other) const {
        const Span& first = one.index < other.index ? one : other;
        const Span& second = one.index < other.index ? other : one;
        if (!isJoint(second)) {
            return straddles(lineOf(first), lineOf(second)) &&
                   straddles(lineOf(second), lineOf(first));
        }
        return isJoint(first) ? length(at(second.a) - at(first.a)) <= near_
                              : passes(lineOf(first), at(second.a));
    }

    [[nodiscard]] bool isJoint(const Span& span) const {
        return span.index >= static_cast<int>(truss_.members.size());
    }

    void tell(const Span& one, const Span& other) {
        const Span& first = one.index < other.index ? one : other;
        const Span& second = one.index < other.index ? other : one;
        if (!isJoint(second)) {
            note(placeOf("members", static_cast<std::size_t>(second.index)),
                 statement(phrase::kMembersCross,
                           {{"a", nameOf(first.index)}, {"b", nameOf(second.index)}}));
        } else if (!isJoint(first)) {
            note(placeOf("members", static_cast<std::size_t>(first.index)),
                 statement(phrase::kRunsThrough,
                           {{"member", nameOf(first.index)}, {"joint", label(second.a)}}));
        } else {
            note(placeOf("joints", static_cast<std::size_t>(second.a)),
                 statement(phrase::kOnOneSpot, {{"a", label(first.a)}, {"b", label(second.a)}}));
        }
    }

    // Whether the joint lies on the line, clearly between its ends.
    [[nodiscard]] bool passes(const Line& line, Vec2 joint) const {
        const Vec2 along = line.to - line.from;
        const Vec2 toJoint = joint - line.from;
        const double size = length(along);
        const double reach = dot(along, toJoint) / size;
        return reach > near_ && reach < size - near_ &&
               std::abs(cross(along, toJoint)) <= near_ * size;
    }

    // Whether the ends of `line` lie clearly on opposite sides of `of`.
    [[nodiscard]] bool straddles(const Line& line, const Line& of) const {
        const Vec2 along = of.to - of.from;
        const double least = near_ * length(along);
        const double from = cross(along, line.from - of.from);
        const double to = cross(along, line.to - of.from);
        return (from > least && to < -least) || (from < -least && to > least);
    }

    const Truss& truss_;
    double near_ = 0;
    Issues notes_;
};

} // namespace

Issues suspicious(const Truss& truss) {
    Issues notes = Suspicions(truss).find();
    for (Issue& more : sameShapes(truss)) {
        notes.push_back(std::move(more));
    }
    return notes;
}

bool staysUnsuspicious(const Truss& truss, const std::vector<JointId>& moved) {
    return Suspicions(truss).noneAt(moved);
}

} // namespace gusset
