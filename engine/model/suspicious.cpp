// What an author may not have meant. Geometry by a sweep from left to right, so that long trusses
// stay quick; what is crowded beyond kMostPairs is left unread.

#include "core/tolerance.hpp"
#include "model/findings.hpp"
#include "model/validate.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr int kMostPairs = 200'000; // some milliseconds

struct Span {
    double low = 0;
    double high = 0;
    int index = 0;
};

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

private:
    void note(std::string at, std::string says) {
        if (notes_.size() < kMostIssues) {
            notes_.push_back({IssueCode::Suspicious, std::move(at), std::move(says)});
        }
    }

    [[nodiscard]] const std::string& label(int joint) const {
        return truss_.joints[static_cast<std::size_t>(joint)].label;
    }
    [[nodiscard]] Line lineOf(int member) const {
        const Member& it = truss_.members[static_cast<std::size_t>(member)];
        return {truss_.joints[it.a.at()].at, truss_.joints[it.b.at()].at};
    }
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
                     "joint " + truss_.joints[i].label + " has no member: join it or remove it");
            }
        }
    }

    // Joints are spans without width, numbered after the members.
    [[nodiscard]] std::vector<Span> spansFromLeft() const {
        std::vector<Span> spans;
        const int members = static_cast<int>(truss_.members.size());
        for (int i = 0; i < members; ++i) {
            const Line line = lineOf(i);
            spans.push_back(
                {std::min(line.from.x, line.to.x), std::max(line.from.x, line.to.x), i});
        }
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            const double x = truss_.joints[i].at.x;
            spans.push_back({x, x, members + static_cast<int>(i)});
        }
        std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) {
            return a.low != b.low ? a.low < b.low : a.index < b.index;
        });
        return spans;
    }

    void sweep() {
        const std::vector<Span> spans = spansFromLeft();
        std::vector<Span> open;
        int pairs = 0;
        for (const Span& span : spans) {
            std::erase_if(open, [&](const Span& it) { return it.high < span.low - near_; });
            pairs += static_cast<int>(open.size());
            if (pairs > kMostPairs || notes_.size() >= kMostIssues) {
                return;
            }
            for (const Span& other : open) {
                compare(std::min(span.index, other.index), std::max(span.index, other.index));
            }
            open.push_back(span);
        }
    }

    void compare(int first, int second) {
        const int members = static_cast<int>(truss_.members.size());
        if (second < members) {
            compareMembers(first, second);
        } else if (first < members) {
            compareMemberAndJoint(first, second - members);
        } else {
            compareJoints(first - members, second - members);
        }
    }

    void compareJoints(int first, int second) {
        const Vec2 apart = truss_.joints[static_cast<std::size_t>(second)].at -
                           truss_.joints[static_cast<std::size_t>(first)].at;
        if (length(apart) <= near_) {
            note(placeOf("joints", static_cast<std::size_t>(second)),
                 "joints " + label(first) + " and " + label(second) +
                     " lie on one spot and are not connected there: make them one joint");
        }
    }

    void compareMemberAndJoint(int member, int joint) {
        const Member& it = truss_.members[static_cast<std::size_t>(member)];
        const Line line = lineOf(member);
        const Vec2 along = line.to - line.from;
        const Vec2 toJoint = truss_.joints[static_cast<std::size_t>(joint)].at - line.from;
        const double size = length(along);
        const double reach = dot(along, toJoint) / size;
        const bool between = reach > near_ && reach < size - near_;
        if (it.a.index != joint && it.b.index != joint && between &&
            std::abs(cross(along, toJoint)) <= near_ * size) {
            note(placeOf("members", static_cast<std::size_t>(member)),
                 "member " + nameOf(member) + " runs through joint " + label(joint) +
                     " without being joined to it: split it there if they meet");
        }
    }

    void compareMembers(int first, int second) {
        const Line one = lineOf(first);
        const Line two = lineOf(second);
        if (straddles(one, two) && straddles(two, one)) {
            note(placeOf("members", static_cast<std::size_t>(second)),
                 "members " + nameOf(first) + " and " + nameOf(second) +
                     " cross: they are taken to pass without touching");
        }
    }

    // Whether the ends of `line` lie clearly on the two sides of `of`.
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

Issues suspicious(const Truss& truss) { return Suspicions(truss).find(); }

} // namespace gusset
