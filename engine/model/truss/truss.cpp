#include "model/truss/truss.hpp"

#include "core/angle.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <unordered_set>

namespace gusset {

Truss::Truss() = default;
Truss::Truss(const Truss&) = default;
Truss::Truss(Truss&&) noexcept = default;
Truss& Truss::operator=(const Truss&) = default;
Truss& Truss::operator=(Truss&&) noexcept = default;
Truss::~Truss() = default;
bool operator==(const Truss&, const Truss&) = default;

JointId findJoint(const Truss& truss, const std::string& label) {
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        if (truss.joints[i].label == label) {
            return JointId{static_cast<int>(i)};
        }
    }
    return {};
}

MemberId findMember(const Truss& truss, JointId a, JointId b) {
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        if ((member.a == a && member.b == b) || (member.a == b && member.b == a)) {
            return MemberId{static_cast<int>(i)};
        }
    }
    return {};
}

std::string memberName(const Truss& truss, MemberId id) {
    const Member& member = truss.members[id.at()];
    return memberName(truss.joints[member.a.at()].label, truss.joints[member.b.at()].label);
}

std::string memberName(const std::string& a, const std::string& b) {
    const auto isLetter = [](const std::string& label) {
        return label.size() == 1 && !(label[0] >= '0' && label[0] <= '9');
    };
    return isLetter(a) && isLetter(b) ? a + b : a + "–" + b;
}

Vec2 memberVector(const Truss& truss, MemberId id) {
    const Member& member = truss.members[id.at()];
    return truss.joints[member.b.at()].at - truss.joints[member.a.at()].at;
}

std::string defaultLabel(int number) {
    constexpr int kLetters = 26;
    std::string label(1, static_cast<char>('A' + number % kLetters));
    return number < kLetters ? label : label + std::to_string(number / kLetters);
}

std::string nextLabel(const Truss& truss) {
    std::unordered_set<std::string> taken;
    for (const Joint& joint : truss.joints) {
        taken.insert(joint.label);
    }
    int number = 0;
    while (taken.contains(defaultLabel(number))) {
        ++number;
    }
    return defaultLabel(number);
}

Extent extent(const Truss& truss) {
    if (truss.joints.empty()) {
        return {};
    }
    Extent box{truss.joints.front().at, truss.joints.front().at};
    for (const Joint& joint : truss.joints) {
        box.low = {std::min(box.low.x, joint.at.x), std::min(box.low.y, joint.at.y)};
        box.high = {std::max(box.high.x, joint.at.x), std::max(box.high.y, joint.at.y)};
    }
    return box;
}

std::optional<Vec2> forceOf(const Load& load) {
    if (const auto* force = std::get_if<JointForce>(&load.what)) {
        return Vec2{force->fx, force->fy};
    }
    if (const auto* force = std::get_if<AngledForce>(&load.what)) {
        return force->size * directionOf(force->angle);
    }
    return std::nullopt;
}

JointId jointOf(const Load& load) {
    if (const auto* force = std::get_if<JointForce>(&load.what)) {
        return force->joint;
    }
    if (const auto* force = std::get_if<AngledForce>(&load.what)) {
        return force->joint;
    }
    return {};
}

std::vector<JointId> jointsOf(const Load& load) {
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return chord->chord;
    }
    if (const auto* force = std::get_if<MemberForce>(&load.what)) {
        return {force->from, force->to};
    }
    const JointId joint = jointOf(load);
    return joint.valid() ? std::vector{joint} : std::vector<JointId>{};
}

namespace {

// Cosine and sine of at most 45°, from their power series (Abramowitz & Stegun, Handbook of
// Mathematical Functions, 1964, 4.3.65–66): C libraries differ in the last bit of sin and cos, but
// not in sums and products.
Vec2 directionOfSmall(double degrees) {
    const double angle = toRadians(degrees);
    const double square = angle * angle;
    constexpr int kLastTerm = 18; // below 1e-17 at 45°
    double cosine = 1;
    double sine = 1;
    for (int n = kLastTerm; n >= 2; n -= 2) {
        cosine = 1 - square / (n * (n - 1)) * cosine;
        sine = 1 - square / (n * (n + 1)) * sine;
    }
    return {cosine, angle * sine};
}

Vec2 directionInFirstQuarter(double degrees) {
    constexpr double kHalfRoot3 = std::numbers::sqrt3 / 2;
    constexpr double kHalfRoot2 = std::numbers::sqrt2 / 2;
    if (degrees == 0) {
        return {1, 0};
    }
    if (degrees == 30) {
        return {kHalfRoot3, 0.5};
    }
    if (degrees == 45) {
        return {kHalfRoot2, kHalfRoot2};
    }
    if (degrees > 45) {
        const Vec2 other = directionInFirstQuarter(90 - degrees);
        return {other.y, other.x};
    }
    return directionOfSmall(degrees);
}

} // namespace

Vec2 directionOf(double degrees) {
    double turn = std::fmod(degrees, 360); // exact
    if (turn < 0) {
        turn += 360;
    }
    if (turn >= 360) { // a tiny negative angle, rounded
        turn = 0;
    }
    const int quarter = static_cast<int>(turn / 90);
    const Vec2 first = directionInFirstQuarter(turn - 90 * quarter);
    switch (quarter) {
    case 0:
        return first;
    case 1:
        return {0 - first.y, first.x};
    case 2:
        return {0 - first.x, 0 - first.y};
    default:
        return {first.y, 0 - first.x};
    }
}

} // namespace gusset
