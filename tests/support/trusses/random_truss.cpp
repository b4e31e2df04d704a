#include "support/trusses/random_truss.hpp"

#include "support/dense.hpp"
#include "support/random.hpp"
#include "support/trusses/small_truss.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <optional>
#include <string>
#include <utility>

namespace gusset::support {

namespace {

constexpr double kClearance = 0.8;      // m, between joints
constexpr double kLongest = 8;          // m, of a member
constexpr double kFlattest = 0.25;      // sine of the angle between two members that place a joint
constexpr double kLargestInverse = 500; // of the equilibrium matrix, whose columns are unit vectors
constexpr int kTries = 200;

using Pair = std::pair<JointId, JointId>;

JointId addJoint(Truss& truss, Vec2 at) {
    const std::size_t number = truss.joints.size();
    std::string label(1, static_cast<char>('A' + number % 26));
    if (number >= 26) {
        label += std::to_string(number / 26);
    }
    truss.joints.push_back({label, at, {}});
    return JointId{static_cast<int>(number)};
}

bool joined(const Truss& truss, JointId a, JointId b) {
    return std::any_of(truss.members.begin(), truss.members.end(), [&](const Member& member) {
        return (member.a == a && member.b == b) || (member.a == b && member.b == a);
    });
}

void join(Truss& truss, JointId a, JointId b) {
    assert(a != b && !joined(truss, a, b));
    member(truss, a, b);
}

void support(Truss& truss, JointId joint, SupportKind kind, double reaction = 90) {
    Support support;
    support.joint = joint;
    support.kind = kind;
    support.reaction = reaction;
    truss.supports.push_back(support);
}

JointId oneJoint(const Truss& truss, Random& random) {
    return JointId{random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
}

Vec2 at(const Truss& truss, JointId joint) { return truss.joints[joint.at()].at; }

Vec2 onGrid(Vec2 point) { return {std::round(point.x * 10) / 10, std::round(point.y * 10) / 10}; }

// Far enough from all joints, and joined to a and b by members of reasonable length that are not
// nearly collinear.
bool goodPlace(const Truss& truss, Vec2 place, Pair ends) {
    for (const Joint& joint : truss.joints) {
        if (length(place - joint.at) < kClearance) {
            return false;
        }
    }
    const Vec2 a = place - at(truss, ends.first);
    const Vec2 b = place - at(truss, ends.second);
    if (length(a) > kLongest || length(b) > kLongest) {
        return false;
    }
    return std::abs(cross(a, b)) >= kFlattest * length(a) * length(b);
}

// A new joint held by two members, if a suitable position is found.
std::optional<JointId> grow(Truss& truss, Random& random, Pair ends) {
    const Vec2 middle = 0.5 * (at(truss, ends.first) + at(truss, ends.second));
    for (int i = 0; i < kTries; ++i) {
        const Vec2 place =
            onGrid(middle + Vec2{random.decimal(-4, 4, 10), random.decimal(-4, 4, 10)});
        if (!goodPlace(truss, place, ends)) {
            continue;
        }
        const JointId joint = addJoint(truss, place);
        join(truss, joint, ends.first);
        join(truss, joint, ends.second);
        return joint;
    }
    return std::nullopt;
}

// Usually the two ends of a member, sometimes two joints without a member between them.
Pair anyEnds(const Truss& truss, Random& random) {
    if (!truss.members.empty() && !random.oneIn(4)) {
        const Member& member = random.pick(truss.members);
        return {member.a, member.b};
    }
    const JointId a = oneJoint(truss, random);
    JointId b = a;
    while (b == a) {
        b = oneJoint(truss, random);
    }
    return {a, b};
}

void growTo(Truss& truss, Random& random, std::size_t joints) {
    for (int i = 0; i < kTries && truss.joints.size() < joints; ++i) {
        (void)grow(truss, random, anyEnds(truss, random));
    }
}

Truss simpleBody(Random& random, int joints) {
    Truss truss;
    const JointId a = addJoint(truss, {0, 0});
    const JointId b = addJoint(truss, {random.decimal(2, 5, 10), random.decimal(-1, 1, 10)});
    join(truss, a, b);
    growTo(truss, random, static_cast<std::size_t>(joints));
    return truss;
}

double anyRollerDirection(Random& random) {
    static const std::vector<double> directions = {90,  90,  90,  0,   30, 45, 60,
                                                   120, 135, 150, 270, 37, 110};
    return random.pick(directions);
}

// A pin and a roller, or three rollers; whether they restrain the body is checked later.
void supportBody(Truss& truss, Random& random) {
    if (random.oneIn(4)) {
        for (int i = 0; i < 3; ++i) {
            // One after the other: compilers evaluate arguments in different orders.
            const JointId joint = oneJoint(truss, random);
            support(truss, joint, SupportKind::Roller, anyRollerDirection(random));
        }
        return;
    }
    const JointId pin = oneJoint(truss, random);
    JointId roller = pin;
    while (roller == pin) {
        roller = oneJoint(truss, random);
    }
    support(truss, pin, SupportKind::Pin);
    support(truss, roller, SupportKind::Roller, anyRollerDirection(random));
}

JointId outermost(const Truss& truss, double sign) {
    JointId best{0};
    for (int i = 1; i < static_cast<int>(truss.joints.size()); ++i) {
        if (sign * at(truss, JointId{i}).x > sign * at(truss, best).x) {
            best = JointId{i};
        }
    }
    return best;
}

// Puts a second body to the right of the first. With `shared` its leftmost joint becomes the
// first's rightmost. Returns the new index of each joint of the second.
std::vector<JointId> append(Truss& first, const Truss& second, bool shared) {
    const JointId hinge = outermost(first, 1);
    const JointId left = outermost(second, -1);
    const Vec2 shift = at(first, hinge) - at(second, left) + Vec2{shared ? 0.0 : 2.0, 0};
    std::vector<JointId> places;
    for (int i = 0; i < static_cast<int>(second.joints.size()); ++i) {
        const bool same = shared && JointId{i} == left;
        places.push_back(same ? hinge : addJoint(first, onGrid(at(second, JointId{i}) + shift)));
    }
    for (const Member& member : second.members) {
        join(first, places[member.a.at()], places[member.b.at()]);
    }
    return places;
}

Truss compound(Random& random) {
    Truss truss = simpleBody(random, random.integer(3, 6));
    const int firstJoints = static_cast<int>(truss.joints.size());
    const bool shared = random.oneIn(2);
    const std::vector<JointId> second =
        append(truss, simpleBody(random, random.integer(3, 6)), shared);
    for (int links = shared ? 1 : 3, i = 0; links > 0 && i < kTries; ++i) {
        const JointId a{random.integer(0, firstJoints - 1)};
        const JointId b = random.pick(second);
        if (a == b || joined(truss, a, b)) {
            continue;
        }
        join(truss, a, b);
        --links;
    }
    supportBody(truss, random);
    return truss;
}

Truss threeHinged(Random& random) {
    Truss truss = simpleBody(random, random.integer(3, 6));
    const JointId hinge = outermost(truss, 1);
    const JointId left = outermost(truss, -1);
    const std::vector<JointId> second =
        append(truss, simpleBody(random, random.integer(3, 6)), true);
    JointId right = hinge;
    while (right == hinge) {
        right = random.pick(second);
    }
    support(truss, left, SupportKind::Pin);
    support(truss, right, SupportKind::Pin);
    return truss;
}

// Two or more pins without members between them; every further joint by two members.
Truss fromPins(Random& random, int pins) {
    Truss truss;
    for (int i = 0; i < pins; ++i) {
        const JointId pin = addJoint(truss, {0.1 * random.integer(-5, 5), 3.0 * i});
        truss.joints.back().at = onGrid(truss.joints.back().at);
        support(truss, pin, SupportKind::Pin);
    }
    growTo(truss, random, static_cast<std::size_t>(pins + random.integer(2, 8)));
    return truss;
}

// From a wall (or, turned, from the ground): every panel adds a post of two members, two chords and
// two diagonals that meet at the middle of the post.
Truss kBraced(Random& random) {
    Truss truss;
    const bool tower = random.oneIn(2);
    const auto put = [&](double along, double across) {
        return addJoint(truss, onGrid(tower ? Vec2{across, along} : Vec2{along, across}));
    };
    double depth = random.decimal(4, 6, 10);
    JointId low = put(0, 0);
    JointId high = put(0, depth);
    support(truss, low, SupportKind::Pin);
    support(truss, high, SupportKind::Pin);
    double along = 0;
    for (int panel = random.integer(1, 5); panel > 0; --panel) {
        along += random.decimal(1.5, 3, 10);
        depth -= random.decimal(0, 0.4, 10);
        const JointId nextLow = put(along, 0);
        const JointId middle = put(along, depth / 2);
        const JointId nextHigh = put(along, depth);
        for (const Pair& ends : {Pair{low, nextLow},
                                 {high, nextHigh},
                                 {nextLow, middle},
                                 {middle, nextHigh},
                                 {low, middle},
                                 {high, middle}}) {
            join(truss, ends.first, ends.second);
        }
        low = nextLow;
        high = nextHigh;
    }
    return truss;
}

// Removes a member and connects a new joint to both its ends and a third joint: the number of
// members minus twice the joints is unchanged, and in general so is the rigidity (L. Henneberg, Die
// graphische Statik der starren Systeme, 1911).
void split(Truss& truss, Random& random) {
    const std::size_t which =
        static_cast<std::size_t>(random.integer(0, static_cast<int>(truss.members.size()) - 1));
    const Pair ends{truss.members[which].a, truss.members[which].b};
    JointId third = oneJoint(truss, random);
    if (third == ends.first || third == ends.second) {
        return;
    }
    const std::optional<JointId> joint = grow(truss, random, ends);
    if (!joint) {
        return;
    }
    join(truss, *joint, third);
    truss.members.erase(truss.members.begin() + static_cast<std::ptrdiff_t>(which));
}

Truss complex(Random& random) {
    Truss truss = simpleBody(random, random.integer(4, 6));
    for (int i = random.integer(2, 6); i > 0; --i) {
        split(truss, random);
    }
    supportBody(truss, random);
    return truss;
}

Truss attempt(Form form, Random& random) {
    switch (form) {
    case Form::Simple: {
        Truss truss = simpleBody(random, random.integer(3, 14));
        supportBody(truss, random);
        return truss;
    }
    case Form::Cantilever:
        return fromPins(random, 2);
    case Form::Compound:
        return compound(random);
    case Form::ThreeHinged:
        return threeHinged(random);
    case Form::ManyPins:
        return fromPins(random, random.integer(3, 5));
    case Form::KBraced:
        return kBraced(random);
    case Form::Complex:
        return complex(random);
    }
    return {};
}

bool wellPosed(const Truss& truss) {
    const std::optional<DenseMatrix> inverse = denseInverse(denseEquilibrium(truss));
    return inverse && largestEntry(*inverse) <= kLargestInverse;
}

// Removes a member, or one component of a support (a pin becomes a roller).
void loosen(Truss& truss, Random& random) {
    if (truss.supports.empty() || random.oneIn(2)) {
        if (truss.members.empty()) {
            return;
        }
        truss.members.erase(truss.members.begin() +
                            random.integer(0, static_cast<int>(truss.members.size()) - 1));
        return;
    }
    const int which = random.integer(0, static_cast<int>(truss.supports.size()) - 1);
    Support& chosen = truss.supports[static_cast<std::size_t>(which)];
    if (chosen.kind == SupportKind::Pin) {
        chosen.kind = SupportKind::Roller;
    } else {
        truss.supports.erase(truss.supports.begin() + which);
    }
}

} // namespace

Truss randomDeterminateTruss(Form form, std::uint64_t seed) {
    Random seeds(seed);
    for (;;) {
        Random random(seeds.bits());
        Truss truss = attempt(form, random);
        if (!wellPosed(truss)) {
            continue;
        }
        addRandomLoads(truss, random.bits());
        return truss;
    }
}

Truss randomDeterminateTruss(std::uint64_t seed) {
    return randomDeterminateTruss(static_cast<Form>(seed % 7), seed);
}

Truss randomMechanism(std::uint64_t seed, int lost) {
    Truss truss = randomDeterminateTruss(seed);
    Random random(~seed);
    for (int i = 0; i < lost; ++i) {
        loosen(truss, random);
    }
    return truss;
}

Truss randomIndeterminateTruss(std::uint64_t seed) {
    Truss truss = randomDeterminateTruss(seed);
    Random random(seed ^ 0x5eed);
    const int wanted = random.integer(1, 4);
    for (int i = 0, added = 0; i < kTries && added < wanted; ++i) {
        const JointId a = oneJoint(truss, random);
        const JointId b = oneJoint(truss, random);
        if (a == b) {
            continue;
        }
        const bool roller = random.oneIn(3);
        if (!roller &&
            (joined(truss, a, b) || length(at(truss, a) - at(truss, b)) > 2 * kLongest)) {
            continue;
        }
        if (roller) {
            support(truss, a, SupportKind::Roller, anyRollerDirection(random));
        } else {
            join(truss, a, b);
        }
        ++added;
    }
    return withSections(std::move(truss), seed);
}

} // namespace gusset::support
