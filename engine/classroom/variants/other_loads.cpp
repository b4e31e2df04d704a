#include "classroom/variants/other_loads.hpp"

#include "classroom/variants/friendly.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <span>
#include <utility>

namespace gusset {

namespace {

constexpr std::array kRatios{1, 1, 1, 2, 2, 3, 3, 4, 5};
// Cosine and sine are decimals, so that the components of a decimal size are decimals too.
constexpr std::array kSlopes{Vec2{0, 1},       Vec2{0, 1},      Vec2{0.6, 0.8},  Vec2{0.8, 0.6},
                             Vec2{0.28, 0.96}, Vec2{-0.6, 0.8}, Vec2{-0.8, 0.6}, Vec2{-0.28, 0.96}};

// The smallest whole numbers in this direction; the components themselves if there are none.
Vec2 wholeDirection(double fx, double fy) {
    constexpr double kPlaces = 1e4;
    constexpr double kLargest = 1e9;
    const double x = std::round(fx * kPlaces);
    const double y = std::round(fy * kPlaces);
    if (std::max(std::fabs(x), std::fabs(y)) > kLargest) {
        return {fx, fy};
    }
    const auto common =
        static_cast<double>(std::gcd(static_cast<std::int64_t>(x), static_cast<std::int64_t>(y)));
    return common == 0 ? Vec2{fx, fy} : Vec2{x / common, y / common};
}

double signOf(double value) { return value < 0 ? -1 : 1; }

void setRatio(JointForce& force, double ratio) {
    const Vec2 d = wholeDirection(force.fx, force.fy);
    force.fx = d.x * ratio;
    force.fy = d.y * ratio;
}
void setRatio(MemberForce& force, double ratio) {
    const Vec2 d = wholeDirection(force.fx, force.fy);
    force.fx = d.x * ratio;
    force.fy = d.y * ratio;
}
void setRatio(AngledForce& force, double ratio) {
    force.size = force.size == 0 ? 0 : signOf(force.size) * ratio;
}
void setRatio(ChordLoad& load, double ratio) {
    load.perLength = load.perLength == 0 ? 0 : signOf(load.perLength) * ratio;
}
void setRatio(SelfWeight&, double) {}

void multiply(JointForce& force, double factor) {
    force.fx *= factor;
    force.fy *= factor;
}
void multiply(MemberForce& force, double factor) {
    force.fx *= factor;
    force.fy *= factor;
}
void multiply(AngledForce& force, double factor) { force.size *= factor; }
void multiply(ChordLoad& load, double factor) { load.perLength *= factor; }
void multiply(SelfWeight&, double) {}

double sizeOf(const JointForce& force) { return length({force.fx, force.fy}); }
double sizeOf(const MemberForce& force) { return length({force.fx, force.fy}); }
double sizeOf(const AngledForce& force) { return std::fabs(force.size); }
double sizeOf(const ChordLoad& load) { return std::fabs(load.perLength); }
double sizeOf(const SelfWeight&) { return 0; }

double largestLoad(const Truss& truss) {
    double largest = 0;
    for (const Load& load : truss.loads) {
        largest =
            std::max(largest, std::visit([](const auto& what) { return sizeOf(what); }, load.what));
    }
    return largest;
}

// Joints of the same height that no pin holds and that carry no load yet.
std::vector<JointId> freePlaces(const Truss& truss, JointId from) {
    std::vector<JointId> free;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const auto isTaken = [&](const Load& load) {
            return jointOf(load) == joint && joint != from;
        };
        const auto holds = [&](const Support& support) { return support.joint == joint; };
        const bool fits = truss.joints[i].at.y == truss.joints[from.at()].at.y &&
                          std::none_of(truss.loads.begin(), truss.loads.end(), isTaken) &&
                          std::none_of(truss.supports.begin(), truss.supports.end(), holds);
        if (fits) {
            free.push_back(joint);
        }
    }
    return free;
}

void setJoint(Load& load, JointId joint) {
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        force->joint = joint;
    } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        angled->joint = joint;
    }
}

} // namespace

void keepShares(const Truss& before, Truss& after) {
    for (Load& load : after.loads) {
        auto* force = std::get_if<MemberForce>(&load.what);
        if (!force) {
            continue;
        }
        const auto lengthIn = [&](const Truss& truss) {
            return length(truss.joints[force->to.at()].at - truss.joints[force->from.at()].at);
        };
        constexpr double kPlaces = 1e6;
        const double at = force->at / lengthIn(before) * lengthIn(after);
        force->at = std::round(at * kPlaces) / kPlaces;
    }
}

void throwPlaces(Truss& truss, Dice& dice) {
    for (Load& load : truss.loads) {
        if (!jointOf(load).valid()) {
            continue;
        }
        const std::vector<JointId> free = freePlaces(truss, jointOf(load));
        if (!free.empty()) {
            setJoint(load, dice.pick(std::span<const JointId>(free)));
        }
    }
}

void throwDirections(Truss& truss, Dice& dice) {
    for (Load& load : truss.loads) {
        const std::optional<Vec2> force = forceOf(load);
        if (!force || (force->x == 0 && force->y == 0)) {
            continue;
        }
        const Vec2 slope = dice.pick(std::span(kSlopes));
        const double size = length(*force);
        // A load stays mostly upright, or mostly level, and on its side.
        const Vec2 turned = std::fabs(force->y) >= std::fabs(force->x)
                                ? Vec2{slope.x, slope.y * signOf(force->y)}
                                : Vec2{slope.y * signOf(force->x), slope.x};
        load.what = JointForce{jointOf(load), turned.x * size, turned.y * size};
    }
}

void throwRatios(Truss& truss, Dice& dice) {
    for (Load& load : truss.loads) {
        const double ratio = dice.pick(std::span(kRatios));
        std::visit([&](auto& what) { setRatio(what, ratio); }, load.what);
    }
}

void throwSupports(Truss& truss, Dice& dice) {
    if (truss.supports.size() != 2 || truss.supports[0].kind == truss.supports[1].kind ||
        dice.below(2) == 0) {
        return;
    }
    std::swap(truss.supports[0].joint, truss.supports[1].joint);
}

bool areLoadsInSteps(const Truss& truss, double step) {
    return std::all_of(truss.loads.begin(), truss.loads.end(), [&](const Load& load) {
        return isMultiple(std::visit([](const auto& what) { return sizeOf(what); }, load.what),
                          step);
    });
}

bool throwSize(const Truss& before, Truss& truss, std::int64_t multiple, Dice& dice) {
    const double old = largestLoad(before);
    const double now = largestLoad(truss);
    if (old == 0 || now == 0) {
        return false;
    }
    const double unit = std::pow(10.0, std::max(0.0, std::floor(std::log10(old)) - 1));
    const double step = static_cast<double>(multiple) * unit;
    const double most = std::max(4 * old, 60 * unit); // 12 and 48 must be in reach of 1 kN
    const auto last = static_cast<std::int64_t>(std::min(most / (step * now), 1e6));
    const auto first =
        std::max<std::int64_t>(1, static_cast<std::int64_t>(std::ceil(0.4 * old / (step * now))));
    if (last < first) {
        return false;
    }
    const auto times =
        first + static_cast<std::int64_t>(dice.below(static_cast<std::size_t>(
                    std::min<std::int64_t>(last - first + 1, 12)))); // small ones first
    for (Load& load : truss.loads) {
        std::visit([&](auto& what) { multiply(what, static_cast<double>(times) * step); },
                   load.what);
    }
    return true;
}

} // namespace gusset
