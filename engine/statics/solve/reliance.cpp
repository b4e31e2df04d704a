#include "statics/solve/reliance.hpp"

#include "core/tolerance.hpp"
#include "phrases/results/unsolved.hpp"
#include "statics/equilibrium/judge.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

// Errors are relative to the largest number: together, the larger absolute error relative to the
// larger of the two.
void widenShare(double& share, double& of, double otherShare, double other) {
    const double error = std::max(share * of, otherShare * other);
    of = std::max(of, other);
    share = of > 0 ? error / of : 0;
}

void include(Reliance& reliance, const Trust& trust, double largest, double farthest) {
    Trust& worst = reliance.trust;
    widenShare(worst.error, reliance.largest, trust.error, largest);
    widenShare(worst.displacementError, reliance.farthest, trust.displacementError, farthest);
    worst.condition = std::max(worst.condition, trust.condition);
    worst.wide = worst.wide || trust.wide;
    if (trust.amplification > worst.amplification) {
        worst.amplification = trust.amplification;
        worst.joint = trust.joint;
        worst.member = trust.member;
    }
}

double largestOf(const std::vector<double>& forces) {
    double largest = 0;
    for (const double force : forces) {
        largest = std::max(largest, std::abs(force));
    }
    return largest;
}

// How much the rounding of coordinates may rotate a bar at this joint.
double turningAt(const Structure& structure, int joint) {
    double most = 0;
    for (const Bar& bar : structure.bars) {
        if (bar.a == joint || bar.b == joint) {
            const Vec2 at = structure.joints[static_cast<std::size_t>(joint)];
            most = std::max(most, (std::abs(at.x) + std::abs(at.y)) * kHalfPlace / bar.length);
        }
    }
    return most;
}

} // namespace

std::optional<BarelyHeld> barelyHeldOf(const Analysis& analysis) {
    constexpr double kTurns = 8; // two ends of two bars, two coordinates each
    const Factors<double>& factors = analysis.equilibrium.factors;
    const int joint = factors.restRow / 2;
    if (analysis.status != Status::Mechanism ||
        !(factors.rest > std::max(kBarelyHeld, kTurns * turningAt(analysis.structure, joint)))) {
        return std::nullopt;
    }
    return BarelyHeld{JointId{joint}, factors.rest};
}

std::optional<StandsOut> standsOutOf(const Analysis& analysis) {
    if (analysis.status != Status::Indeterminate && !analysis.displaces) {
        return std::nullopt;
    }
    const std::vector<Bar>& bars = analysis.structure.bars;
    std::vector<double> sorted;
    for (const Bar& bar : bars) {
        if (!(bar.stiffness > 0)) {
            return std::nullopt;
        }
        sorted.push_back(bar.stiffness);
    }
    const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
    std::nth_element(sorted.begin(), middle, sorted.end());
    StandsOut farthest;
    double most = kStandsOut;
    for (std::size_t i = 0; i < bars.size(); ++i) {
        const double ratio = bars[i].stiffness / *middle;
        if (std::max(ratio, 1 / ratio) > most) {
            most = std::max(ratio, 1 / ratio);
            farthest = {MemberId{static_cast<int>(i)}, ratio};
        }
    }
    return farthest.member.valid() ? std::optional(farthest) : std::nullopt;
}

Reliance relianceOf(const Solution& solution) {
    Reliance reliance;
    reliance.status = solution.status;
    reliance.assumed = solution.assumed;
    reliance.barelyHeld = solution.barelyHeld;
    if (solution.solved) {
        reliance.trust = solution.trust;
        reliance.largest = solution.largest;
        reliance.inMember = largestOf(solution.forces);
        reliance.farthest = largestComponent(solution.displacements);
    }
    if (solution.solved || !solution.errors.empty()) {
        reliance.standsOut = solution.standsOut;
    }
    return reliance;
}

Reliance relianceOf(const Analysis& analysis) {
    Reliance reliance;
    reliance.status = analysis.status;
    reliance.assumed = analysis.assumed;
    reliance.standsOut = standsOutOf(analysis);
    reliance.barelyHeld = barelyHeldOf(analysis);
    return reliance;
}

void include(Reliance& reliance, const Response& response) {
    reliance.inMember = std::max(reliance.inMember, largestOf(response.found.forces));
    include(reliance, response.trust, response.found.largest,
            largestComponent(response.displacements));
}

void include(Reliance& reliance, const UnitResponses& responses) {
    include(reliance, responses.trust, responses.largest, responses.farthest);
}

double forceErrorOf(const Reliance& reliance) { return reliance.trust.error * reliance.largest; }

double displacementErrorOf(const Reliance& reliance) {
    return reliance.trust.displacementError * reliance.farthest;
}

bool isZero(const Reliance& reliance, double force) {
    return std::abs(force) <= zeroShareOf(reliance.trust) * reliance.largest;
}

bool isBelowBound(const Reliance& reliance, double force) {
    return isZero(reliance, force) &&
           std::abs(force) > workingZeroOf(reliance.trust) * reliance.largest;
}

bool isNegligible(const Reliance& reliance, double force) {
    return isZero(reliance, force) && !isBelowBound(reliance, force) &&
           std::abs(force) >
               std::max(kSurelyRounding * forceErrorOf(reliance), kZeroForce * reliance.inMember);
}

Issues whyUnanswered(const Truss& truss, const Analysis& analysis, Phrase<> ofMechanism) {
    if (!analysis.faults.empty()) {
        return analysis.faults;
    }
    Statement says = phrase::kTooCloseToMechanism;
    if (analysis.status == Status::Mechanism) {
        says = ofMechanism;
    } else if (const std::optional<StandsOut> standsOut = standsOutOf(analysis)) {
        says = statement(phrase::kStiffnessesTooFar,
                         {{"member", memberName(truss, standsOut->member)}});
    }
    return {{IssueCode::Unstable, truss.members.empty() ? "joints" : "members", std::move(says)}};
}

} // namespace gusset
