// Families of trusses, and their geometry made extreme; see grown_model.hpp.
#include "fuzz/grown_model.hpp"

#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

JointId someJoint(const Truss& truss, Random& random) {
    return {random.integer(0, static_cast<int>(truss.joints.size()) - 1)};
}

// 10ⁿ by multiplication, which gives the same bits on every platform.
double powerOfTen(int exponent) {
    double power = 1;
    for (int i = 0; i < std::abs(exponent); ++i) {
        power *= 10;
    }
    return exponent < 0 ? 1 / power : power;
}

double anySize(Random& random, int most, int lowest, int highest) {
    const double digits = random.decimal(-most, most, 2);
    return digits * powerOfTen(random.integer(lowest, highest));
}

void addMember(Truss& truss, int a, int b) {
    if (a != b && !findMember(truss, {a}, {b}).valid()) {
        Member member;
        member.a = {a};
        member.b = {b};
        truss.members.push_back(member);
    }
}

// Wherever two calls draw from the generator they are separate statements: compilers evaluate
// arguments in different orders, and a seed must give the same model everywhere.
void addJoint(Truss& truss, Random& random, Vec2 low, Vec2 high) {
    const int x = random.integer(static_cast<int>(low.x), static_cast<int>(high.x));
    const int y = random.integer(static_cast<int>(low.y), static_cast<int>(high.y));
    joint(truss, nextLabel(truss), x, y);
}

// Too little for a truss: none to three joints, and at most one member.
Truss scraps(Random& random) {
    Truss truss;
    for (int i = random.integer(0, 3); i > 0; --i) {
        addJoint(truss, random, {-3, -3}, {3, 3});
    }
    const int count = static_cast<int>(truss.joints.size());
    if (count > 1 && !random.oneIn(3)) {
        addMember(truss, 0, 1);
    }
    for (int i = random.integer(0, 2); count > 0 && i > 0; --i) {
        const JointId at = someJoint(truss, random);
        random.oneIn(2) ? pin(truss, truss.joints[at.at()].label)
                        : roller(truss, truss.joints[at.at()].label, 45.0 * random.integer(0, 4));
    }
    if (count > 0 && random.oneIn(2)) {
        const int sideways = random.integer(-2, 2);
        force(truss, truss.joints.front().label, sideways, random.integer(-2, 2));
    }
    return truss;
}

// A triangle, with or without a fourth joint on two or three members.
Truss small(Random& random) {
    Truss truss = random.oneIn(2) ? gable() : triangle(random.integer(-2, 6));
    if (random.oneIn(2)) {
        addJoint(truss, random, {2, -6}, {9, -1});
        addMember(truss, 0, 3);
        addMember(truss, 1, 3);
        if (random.oneIn(2)) {
            addMember(truss, 2, 3);
        }
    }
    if (truss.loads.empty() || random.oneIn(2)) {
        addRandomLoads(truss, random.bits());
    }
    return truss;
}

// Joints on a grid with random members: crossings, loose parts and mechanisms as they come.
Truss scattered(Random& random) {
    Truss truss;
    const int columns = random.integer(1, 4);
    const int rows = random.integer(1, 3);
    for (int i = 0; i < columns * rows; ++i) {
        joint(truss, nextLabel(truss), i % columns, i / columns);
    }
    const int count = columns * rows;
    for (int i = random.integer(1, 3 * count); i > 0; --i) {
        const int a = random.integer(0, count - 1);
        addMember(truss, a, random.integer(0, count - 1));
    }
    for (int i = random.integer(1, 3); i > 0; --i) {
        Support support;
        support.joint = someJoint(truss, random);
        support.kind = random.oneIn(2) ? SupportKind::Pin : SupportKind::Roller;
        support.reaction = 15.0 * random.integer(-12, 24);
        truss.supports.push_back(support);
    }
    addRandomLoads(truss, random.bits());
    return truss;
}

void flatten(Truss& truss, Random& random) {
    const double factor = powerOfTen(-random.integer(1, 12));
    const bool upright = random.oneIn(3);
    for (Joint& joint : truss.joints) {
        (upright ? joint.at.x : joint.at.y) *= factor;
    }
}

// Moves a joint onto or close to the line through two others, or close to one of them.
void setBeside(Truss& truss, Random& random) {
    Joint& moved = truss.joints[someJoint(truss, random).at()];
    const Vec2 a = truss.joints[someJoint(truss, random).at()].at;
    const Vec2 b = truss.joints[someJoint(truss, random).at()].at;
    const double share = random.oneIn(9) ? 0 : random.decimal(-1, 2, 4) + 0.1;
    const double off = random.oneIn(5) ? 0 : anySize(random, 5, -14, 0);
    const Vec2 along = b - a;
    moved.at = a + share * along + off * Vec2{-along.y, along.x};
}

void setFar(Truss& truss, Random& random) {
    Vec2& at = truss.joints[someJoint(truss, random).at()].at;
    const double factor = powerOfTen(random.integer(1, 12));
    const int which = random.integer(0, 2);
    at = {which == 1 ? at.x : at.x * factor, which == 2 ? at.y : at.y * factor};
}

void turn(Truss& truss, Random& random) {
    const int m = random.integer(1, 9);
    const int n = random.integer(1, 9);
    const double d = m * m + n * n; // a turn by rational numbers, or by irrational ones
    const Vec2 way = random.oneIn(2) ? Vec2{(m * m - n * n) / d, 2 * m * n / d}
                                     : Vec2{m / std::sqrt(d), n / std::sqrt(d)};
    for (Joint& joint : truss.joints) {
        joint.at = {way.x * joint.at.x - way.y * joint.at.y,
                    way.y * joint.at.x + way.x * joint.at.y};
    }
}

void shift(Truss& truss, Random& random) {
    const Vec2 by{anySize(random, 9, 0, 12), anySize(random, 9, 0, 12)};
    for (Joint& joint : truss.joints) {
        joint.at = joint.at + by;
    }
}

void scale(Truss& truss, Random& random) {
    const double factor =
        powerOfTen(random.oneIn(5) ? random.integer(-99, 99) : random.integer(-9, 9));
    for (Joint& joint : truss.joints) {
        joint.at = factor * joint.at;
    }
}

} // namespace

Truss skeleton(Random& random) {
    switch (random.integer(0, 15)) {
    case 0:
        return scraps(random);
    case 1:
    case 2:
        return scattered(random);
    case 3: {
        const std::uint64_t seed = random.bits();
        return randomMechanism(seed, random.integer(1, 3));
    }
    case 4:
    case 5:
        return randomIndeterminateTruss(random.bits());
    case 6: {
        const Web web = random.oneIn(2) ? Web::Pratt : random.oneIn(2) ? Web::Warren : Web::Double;
        return stripTruss(web, random.integer(1, 6));
    }
    case 7:
    case 8:
    case 9:
    case 10:
        return randomDeterminateTruss(random.bits());
    default:
        return small(random);
    }
}

void bendGeometry(Truss& truss, Random& random) {
    if (truss.joints.empty()) {
        return;
    }
    switch (random.integer(0, 7)) {
    case 0:
        return flatten(truss, random);
    case 1:
        return setFar(truss, random);
    case 2:
        return turn(truss, random);
    case 3:
        return shift(truss, random);
    case 4:
        return scale(truss, random);
    default:
        return setBeside(truss, random);
    }
}

// What somebody might do on the board or in the file: the model mostly still opens.
void loseParts(Truss& truss, Random& random) {
    const auto drop = [&](auto& list) {
        if (!list.empty()) {
            list.erase(list.begin() + random.integer(0, static_cast<int>(list.size()) - 1));
        }
    };
    const auto twice = [&](auto& list) {
        if (!list.empty()) {
            list.push_back(random.pick(list));
        }
    };
    switch (random.integer(0, 8)) {
    case 0:
        return drop(truss.members);
    case 1:
        return drop(truss.supports);
    case 2:
        return drop(truss.loads);
    case 3:
        return twice(truss.loads);
    case 4:
        return twice(truss.supports);
    case 5:
        return drop(truss.sections);
    case 6:
        return truss.loads.clear();
    case 7:
        return random.oneIn(4) ? twice(truss.members) : drop(truss.members);
    default:
        addJoint(truss, random, {-9, -9}, {9, 9}); // a stray one
    }
}

Truss grownModel(Random& random) {
    Truss truss = skeleton(random);
    for (int i = random.oneIn(2) ? 0 : random.integer(1, 2); i > 0; --i) {
        bendGeometry(truss, random);
    }
    dress(truss, random);
    if (random.oneIn(6)) {
        loseParts(truss, random);
    }
    return truss;
}

} // namespace gusset::support
