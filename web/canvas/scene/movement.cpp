#include "canvas/scene/movement.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kSwing = 2.4; // s, out and back: gentle
constexpr double kSwings = 2;  // before it stops
// Largest displacement as drawn, relative to the longer side of the truss: clearly visible, and
// still recognisably the same truss.
constexpr double kDeflection = 0.08;
constexpr double kSway = 0.1;

double largest(const std::vector<Vec2>& vectors) {
    double most = 0;
    for (const Vec2 vector : vectors) {
        most = std::max(most, length(vector));
    }
    return most;
}

double sizeOf(const Truss& truss) {
    const Extent box = extent(truss);
    return std::max(box.high.x - box.low.x, box.high.y - box.low.y);
}

// The largest of 1, 2, 5, 10, 20 … that is not above `value`, then this many steps up.
double roundFactor(double value, int steps) {
    constexpr std::array kSteps{1.0, 2.0, 5.0};
    const double decade = std::floor(std::log10(value));
    const double share = value / std::pow(10.0, decade);
    int step = 3 * static_cast<int>(decade) + (share >= 5 ? 2 : share >= 2 ? 1 : 0) + steps;
    const int power = step >= 0 ? step / 3 : -((2 - step) / 3);
    step -= 3 * power;
    return kSteps[static_cast<std::size_t>(step)] * std::pow(10.0, power);
}

// A mechanism rests at its drawn position, a deflected shape at its full displacement.
double shareOf(const Motion& motion, bool mechanism) {
    if (!motion.plays) {
        return mechanism ? 0 : 1;
    }
    const double turns = motion.elapsed / kSwing;
    return mechanism ? std::sin(2 * kPi * turns) : 0.5 - 0.5 * std::cos(2 * kPi * turns);
}

// A deflected shape ends at its full size, half a swing after coming back.
double lengthOfMotion(bool mechanism) { return kSwing * (mechanism ? kSwings : kSwings - 0.5); }

bool isCurrent(const AppState& state, const Derived& derived) {
    return derived.revision == state.revision;
}

bool hasDeflectedShape(const AppState& state, const Derived& derived) {
    return isCurrent(state, derived) && derived.solution.displaced && wantsDeflectedShape(state) &&
           largest(derived.solution.displacements) > 0;
}

std::vector<Vec2> movedBy(const Truss& truss, const std::vector<Vec2>& vectors, double factor) {
    std::vector<Vec2> at;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        at.push_back(truss.joints[i].at + factor * vectors[i]);
    }
    return at;
}

} // namespace

bool wantsDeflectedShape(const AppState& state) {
    const NotebookState& notebook = state.notebook;
    return state.view.showMovement || (notebook.open && notebook.tab == NotebookTab::Forces &&
                                       notebook.results == ResultPage::Movement);
}

const Mechanism* mechanismShown(const AppState& state, const Derived& derived) {
    const std::vector<Mechanism>& all = derived.solution.mechanisms;
    if (!isCurrent(state, derived) || all.empty()) {
        return nullptr;
    }
    const int last = static_cast<int>(all.size()) - 1;
    return &all[static_cast<std::size_t>(std::clamp(state.notebook.mechanism, 0, last))];
}

std::optional<Movement> movementShown(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    if (const Mechanism* mechanism = mechanismShown(state, derived)) {
        if (!state.motion.plays) {
            return std::nullopt; // its arrows are enough
        }
        const double sway = kSway * sizeOf(truss) * shareOf(state.motion, true);
        return Movement{true, movedBy(truss, mechanism->velocities, sway), 1};
    }
    if (!hasDeflectedShape(state, derived)) {
        return std::nullopt;
    }
    const double metre = toMetre(truss.units.length);
    const double most = largest(derived.solution.displacements) / metre;
    const double times = roundFactor(kDeflection * sizeOf(truss) / most, state.view.enlarge);
    const double share = shareOf(state.motion, false);
    return Movement{false, movedBy(truss, derived.solution.displacements, share * times / metre),
                    times};
}

Motion laterMotion(const AppState& state, const Derived& derived, double seconds, bool still) {
    Motion motion = state.motion;
    if (!motion.plays || still || !movementShown(state, derived)) {
        return {};
    }
    motion.elapsed += seconds;
    const bool mechanism = mechanismShown(state, derived) != nullptr;
    return motion.elapsed < lengthOfMotion(mechanism) ? motion : Motion{};
}

} // namespace gusset
