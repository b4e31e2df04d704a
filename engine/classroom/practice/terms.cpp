#include "classroom/practice/terms.hpp"

#include <cmath>

namespace gusset {

namespace {

constexpr double kArmWithin = 0.01; // as typed, rounded
constexpr double kSamePart = 1e-6;  // of a unit force: 3/5 and sin α are one

Vec2 directionOfForce(const ActingForce& force) { return (1 / length(force.along)) * force.along; }

// What the force times 1 has in the sum.
double partIn(const Structure& structure, const AskedSum& sum, const ActingForce& force) {
    const Vec2 along = directionOfForce(force);
    switch (sum.kind) {
    case EquationKind::SumX:
        return along.x;
    case EquationKind::SumY:
        return along.y;
    default:
        break;
    }
    const double moment = cross(force.at - structure.joints[sum.about.at()], along) / sum.metre;
    return sum.clockwise ? -moment : moment;
}

double sizeOf(const BuiltTerm& term, Vec2 along) {
    switch (term.by) {
    case Multiplier::Whole:
        return 1;
    case Multiplier::Sine:
        return std::abs(along.y);
    case Multiplier::Cosine:
        return std::abs(along.x);
    case Multiplier::Arm:
        break;
    }
    return term.arm;
}

TermVerdict judge(const Structure& structure, const AskedSum& sum, const ActingForce& force,
                  const BuiltTerm& term) {
    const double part = partIn(structure, sum, force);
    const bool takesMoments = sum.kind == EquationKind::SumMoments;
    const double nothing = takesMoments ? kNoShare * structure.extent / sum.metre : kNoShare;
    if (std::abs(part) <= nothing) {
        return term.sign == 0 ? TermVerdict::Right : TermVerdict::NotInIt;
    }
    if (term.sign == 0) {
        return TermVerdict::Missing;
    }
    const double size = sizeOf(term, directionOfForce(force));
    const double within = takesMoments ? kArmWithin * std::abs(part) : kSamePart;
    if (takesMoments != (term.by == Multiplier::Arm) || std::abs(size - std::abs(part)) > within) {
        return takesMoments ? TermVerdict::WrongArm : TermVerdict::WrongMultiplier;
    }
    return (part > 0) == (term.sign > 0) ? TermVerdict::Right : TermVerdict::WrongSign;
}

} // namespace

std::vector<TermVerdict> judgeTerms(const Structure& structure, const PartOfTruss& part,
                                    const AskedSum& sum, const std::vector<BuiltTerm>& terms) {
    std::vector<TermVerdict> verdicts;
    for (std::size_t i = 0; i < part.forces.size(); ++i) {
        verdicts.push_back(judge(structure, sum, part.forces[i], terms[i]));
    }
    return verdicts;
}

} // namespace gusset
