#include "classroom/practice/terms.hpp"

#include <algorithm>
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
    case SumKind::X:
        return along.x;
    case SumKind::Y:
        return along.y;
    default:
        break;
    }
    const double moment = cross(force.at - structure.joints[sum.about.at()], along) / sum.metre;
    return sum.clockwise ? -moment : moment;
}

bool isNothing(const Structure& structure, const AskedSum& sum, double part) {
    const double scale = sum.kind == SumKind::Moments ? structure.extent / sum.metre : 1;
    return std::abs(part) <= kNoShare * scale;
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
    const bool takesMoments = sum.kind == SumKind::Moments;
    if (isNothing(structure, sum, part)) {
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

BuiltTerm rightTerm(const Structure& structure, const AskedSum& sum, const ActingForce& force) {
    const double part = partIn(structure, sum, force);
    if (isNothing(structure, sum, part)) {
        return {};
    }
    const Vec2 along = directionOfForce(force);
    const bool isInclined = std::abs(along.x) > kNoShare && std::abs(along.y) > kNoShare;
    BuiltTerm term{part > 0 ? 1 : -1, Multiplier::Whole, 0};
    if (sum.kind == SumKind::Moments) {
        term.by = Multiplier::Arm;
        term.arm = std::abs(part);
    } else if (isInclined) {
        term.by = sum.kind == SumKind::X ? Multiplier::Cosine : Multiplier::Sine;
    }
    return term;
}

bool leavesOnly(const Structure& structure, const PartOfTruss& part, const std::vector<bool>& known,
                int unknown, const AskedSum& sum) {
    return std::all_of(part.forces.begin(), part.forces.end(), [&](const ActingForce& force) {
        if (force.of == kGivenLoad || known[static_cast<std::size_t>(force.of)]) {
            return true;
        }
        return (force.of == unknown) != isNothing(structure, sum, partIn(structure, sum, force));
    });
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

std::vector<BuiltTerm> rightTerms(const Structure& structure, const PartOfTruss& part,
                                  const AskedSum& sum) {
    std::vector<BuiltTerm> terms;
    for (const ActingForce& force : part.forces) {
        terms.push_back(rightTerm(structure, sum, force));
    }
    return terms;
}

std::optional<AskedSum> sumLeavingOnly(const Structure& structure, const PartOfTruss& part,
                                       const std::vector<bool>& known, int unknown, AskedSum like) {
    for (const SumKind kind : {SumKind::X, SumKind::Y}) {
        like.kind = kind;
        if (leavesOnly(structure, part, known, unknown, like)) {
            return like;
        }
    }
    like.kind = SumKind::Moments;
    const std::vector<JointId> centres =
        part.joints.size() > 1 ? allJoints(structure) : std::vector<JointId>{};
    for (const JointId centre : centres) {
        like.about = centre;
        if (leavesOnly(structure, part, known, unknown, like)) {
            return like;
        }
    }
    return std::nullopt;
}

} // namespace gusset
