#include "support/trusses/family_truss.hpp"

#include "support/trusses/small_truss.hpp"

#include "support/random.hpp"
#include "support/trusses/strip_truss.hpp"

#include <cassert>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace gusset::support {

namespace {

constexpr double kSide = 3; // m

JointId addNext(Truss& truss, Vec2 at) {
    const int number = static_cast<int>(truss.joints.size());
    truss.joints.push_back({defaultLabel(number), at, {}});
    return JointId{number};
}

void load(Truss& truss, JointId joint) {
    Load load;
    load.what = JointForce{joint, 0, -10};
    truss.loads.push_back(load);
}

struct Post {
    JointId low;
    JointId middle; // none at the ends
    JointId high;
};

Post addPost(Truss& truss, double x, bool split) {
    const double high = 2 * kSide;
    Post post{addNext(truss, {x, 0}), {}, addNext(truss, {x, high})};
    if (!split) {
        member(truss, post.low, post.high);
        return post;
    }
    post.middle = addNext(truss, {x, high / 2});
    member(truss, post.low, post.middle);
    member(truss, post.middle, post.high);
    return post;
}

// 6·panels − 1 members, with an odd number of panels: the middle one has a plain diagonal.
Truss kTruss(int members) {
    const int half = std::max(1, members / 12);
    const int panels = 2 * half + 1;
    Truss truss;
    std::vector<Post> posts;
    for (int i = 0; i <= panels; ++i) {
        posts.push_back(addPost(truss, kSide * i, i > 0 && i < panels));
    }
    for (int i = 0; i < panels; ++i) {
        const Post& left = posts[static_cast<std::size_t>(i)];
        const Post& right = posts[static_cast<std::size_t>(i) + 1];
        member(truss, left.low, right.low);
        member(truss, left.high, right.high);
        if (i == half) {
            member(truss, left.low, right.high);
            continue;
        }
        const Post& outer = i < half ? left : right;
        const Post& inner = i < half ? right : left;
        member(truss, outer.low, inner.middle);
        member(truss, outer.high, inner.middle);
        load(truss, inner.low);
    }
    pinAndRoller(truss, posts.front().low, posts.back().low);
    return truss;
}

// Triangles of three by three joints, point down: 9 members each, and one tie between neighbours.
Truss compoundChain(int members) {
    const int blocks = std::max(2, members / 10);
    Truss truss;
    JointId left = addNext(truss, {0, 2 * kSide});
    const JointId pin = left;
    JointId lastFoot;
    for (int i = 0; i < blocks; ++i) {
        const double x = 2 * kSide * i;
        const JointId right = addNext(truss, {x + 2 * kSide, 2 * kSide});
        const JointId foot = addNext(truss, {x + kSide, 0});
        const JointId top = addNext(truss, {x + kSide, 2 * kSide});
        const JointId one = addNext(truss, {x + kSide / 2, kSide});
        const JointId other = addNext(truss, {x + 3 * kSide / 2, kSide});
        for (const auto& [a, b] : {std::pair{left, top},
                                   {top, right},
                                   {left, one},
                                   {one, foot},
                                   {foot, other},
                                   {other, right},
                                   {top, one},
                                   {top, other},
                                   {one, other}}) {
            member(truss, a, b);
        }
        if (lastFoot.valid()) {
            member(truss, lastFoot, foot);
        }
        load(truss, top);
        lastFoot = foot;
        left = right;
    }
    pinAndRoller(truss, pin, left);
    return truss;
}

// Joints on two circles, members along both and zigzag between them, without three of the inner
// circle: three bodies, each hinged to the next, so that no two cuts isolate a single force.
Truss ringTruss(int members) {
    constexpr double kTurn = 2 * 3.14159265358979323846;
    const int count = (members + 3) / 4;
    const double radius = kSide * count / kTurn;
    Truss truss;
    std::vector<JointId> outer;
    std::vector<JointId> inner;
    for (int i = 0; i < count; ++i) {
        const double out = kTurn * (i + 0.2) / count;
        const double in = kTurn * (i + 0.7) / count;
        outer.push_back(addNext(truss, radius * Vec2{std::cos(out), std::sin(out)}));
        inner.push_back(addNext(truss, (radius - kSide) * Vec2{std::cos(in), std::sin(in)}));
    }
    for (int i = 0; i < count; ++i) {
        const auto here = static_cast<std::size_t>(i);
        const auto next = static_cast<std::size_t>((i + 1) % count);
        member(truss, outer[here], outer[next]);
        member(truss, outer[here], inner[here]);
        member(truss, inner[here], outer[next]);
        if (i != count / 8 && i != count / 2 && i != 3 * count / 4) {
            member(truss, inner[here], inner[next]);
        }
        load(truss, outer[here]);
    }
    pinAndRoller(truss, outer[static_cast<std::size_t>(5 * count / 8)],
                 outer[static_cast<std::size_t>(7 * count / 8)]);
    return truss;
}

// Below the chord from one joint to another: a post in the middle, its two ties, and the same for
// both halves.
void trussUnder(Truss& truss, const std::vector<JointId>& chord, std::size_t from, std::size_t to) {
    if (to - from < 2) {
        return;
    }
    const std::size_t middle = (from + to) / 2;
    const Vec2 head = truss.joints[chord[middle].at()].at;
    const double span = kSide * static_cast<double>(to - from);
    const JointId foot = addNext(truss, head - Vec2{0, 0.3 * span});
    member(truss, chord[middle], foot);
    member(truss, chord[from], foot);
    member(truss, foot, chord[to]);
    trussUnder(truss, chord, from, middle);
    trussUnder(truss, chord, middle, to);
}

// 4·panels − 3 members.
Truss finkTruss(int members) {
    const int panels = (members + 3) / 4;
    Truss truss;
    std::vector<JointId> chord;
    for (int i = 0; i <= panels; ++i) {
        chord.push_back(addNext(truss, {kSide * i, 0}));
        if (i > 0) {
            member(truss, chord[chord.size() - 2], chord.back());
            load(truss, chord.back());
        }
    }
    trussUnder(truss, chord, 0, chord.size() - 1);
    pinAndRoller(truss, chord.front(), chord.back());
    return truss;
}

// A node of the triangular grid: steps along one side, steps along the other.
using Node = std::pair<int, int>;

Vec2 placeOf(Node node) {
    return {kSide * (node.first + 0.5 * node.second), kSide * std::sqrt(0.75) * node.second};
}

// Each new joint makes a triangle of the grid with an existing member. The truss is kept low, like
// one supported at its two ends.
Truss grownTruss(int members) {
    constexpr int kMostRows = 5;
    constexpr std::array<Node, 6> kAround{{{1, 0}, {0, 1}, {-1, 1}, {-1, 0}, {0, -1}, {1, -1}}};
    Random random(static_cast<std::uint64_t>(members));
    Truss truss;
    std::map<Node, JointId> taken;
    std::vector<std::pair<Node, Node>> sides;
    const auto put = [&](Node node) { taken[node] = addNext(truss, placeOf(node)); };
    const auto link = [&](Node a, Node b) {
        member(truss, taken[a], taken[b]);
        sides.push_back({a, b});
    };
    put({0, 0});
    put({1, 0});
    link({0, 0}, {1, 0});
    while (static_cast<int>(truss.members.size()) < members) {
        const int newest = static_cast<int>(sides.size()) - 1;
        const auto side =
            sides[static_cast<std::size_t>(random.integer(std::max(0, newest - 60), newest))];
        std::vector<Node> free;
        for (const Node& way : kAround) { // the two nodes adjacent to both ends
            const Node node{side.first.first + way.first, side.first.second + way.second};
            const Node gap{node.first - side.second.first, node.second - side.second.second};
            bool near = false;
            for (const Node& other : kAround) {
                near = near || gap == other;
            }
            if (near && !taken.contains(node) && node.second >= 0 && node.second < kMostRows) {
                free.push_back(node);
            }
        }
        if (!free.empty()) {
            const Node node = random.pick(free);
            put(node);
            link(side.first, node);
            link(node, side.second);
            load(truss, taken[node]);
        }
    }
    pinAndRoller(truss, taken.begin()->second, taken.rbegin()->second);
    return truss;
}

} // namespace

std::string_view nameOf(Family family) {
    constexpr std::array<std::string_view, 8> kNames{"Warren",  "Pratt",   "K",    "compound",
                                                     "complex", "lattice", "Fink", "grown"};
    return kNames[static_cast<std::size_t>(family)];
}

Truss familyTruss(Family family, int members) {
    assert(members >= 30);
    switch (family) {
    case Family::Warren:
        return stripTruss(Web::Warren, panelsFor(Web::Warren, members));
    case Family::Pratt:
        return stripTruss(Web::Pratt, panelsFor(Web::Pratt, members));
    case Family::Lattice:
        return stripTruss(Web::Double, panelsFor(Web::Double, members));
    case Family::K:
        return kTruss(members);
    case Family::Compound:
        return compoundChain(members);
    case Family::Complex:
        return ringTruss(members);
    case Family::Fink:
        return finkTruss(members);
    case Family::Grown:
        return grownTruss(members);
    }
    return {};
}

Truss withOneSection(Truss truss) {
    Material steel{"steel", 210e3, 355, 7850, 1.2e-5, {}};
    Section section{"bar", "steel", 4000, 40, "", {}, {}};
    truss.materials = {steel};
    truss.sections = {section};
    for (Member& member : truss.members) {
        member.section = section.id;
    }
    return truss;
}

} // namespace gusset::support
