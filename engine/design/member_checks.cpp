#include "design/member_checks.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

// The worse of the checks of a member that is in tension under one choice and in compression under
// another.
MemberCheck worseOf(const MemberCheck& pulled, const MemberCheck& pressed) {
    const auto counts = [](const MemberCheck& it) { return it.force != 0 || !isChecked(it); };
    if (!counts(pulled) || !isChecked(pressed)) {
        return pressed;
    }
    if (!counts(pressed) || !isChecked(pulled)) {
        return pulled;
    }
    MemberCheck worse = pulled.use > pressed.use ? pulled : pressed;
    const MemberCheck& other = pulled.use > pressed.use ? pressed : pulled;
    if (other.tooSlender && !worse.tooSlender) {
        worse.slenderness = other.slenderness;
        worse.limit = other.limit;
        worse.tooSlender = true;
    }
    worse.reverses = pulled.force > 0 && pressed.force < 0;
    worse.local = pressed.local; // told even if the member is used more in tension
    worse.packing = pressed.packing;
    return worse;
}

MemberChecks counted(std::vector<MemberCheck> members, Reliance reliance) {
    MemberChecks checks;
    double largest = 0;
    for (MemberCheck& check : members) {
        check.error = forceErrorOf(reliance);
        checks.over += isOver(check) ? 1 : 0;
        checks.slender += check.tooSlender ? 1 : 0;
        checks.unchecked += isChecked(check) ? 0 : 1;
        if (check.use >
            largest * (1 + kZeroForce)) { // the first of those that are equal by symmetry
            largest = check.use;
            checks.worst = check.member;
        }
    }
    checks.members = std::move(members);
    checks.reliance = std::move(reliance);
    return checks;
}

bool bendsAt(const std::vector<double>& moments, std::size_t member) {
    return !moments.empty() && moments[member] != 0;
}

// For a force from solving: nothing is checked when the rounding error exceeds the force; a force
// that is merely small beside the largest is still checked.
MemberCheck checkSolved(const CheckSettings& settings, const MemberMake& make,
                        const MemberLength& length, double force, const Reliance& reliance) {
    if (isZero(reliance, force) && !isNegligible(reliance, force)) {
        MemberCheck check = checkOf(settings, make, length, 0);
        if (isBelowBound(reliance, force)) {
            check.lacks.push_back(Lack::Force);
        }
        return check;
    }
    return checkOf(settings, make, length, force);
}

// The limit of L/x, if there is one, before anything has moved.
std::optional<MovementCheck> movementLimitOf(const Truss& truss) {
    if (truss.checks.deflection == 0) {
        return std::nullopt;
    }
    MovementCheck limit;
    for (const Support& one : truss.supports) {
        for (const Support& other : truss.supports) {
            limit.span = std::max(limit.span, length(truss.joints[one.joint.at()].at -
                                                     truss.joints[other.joint.at()].at));
        }
    }
    limit.span *= toMetre(truss.units.length);
    limit.allowed = limit.span / truss.checks.deflection;
    limit.known = limit.span > 0;
    return limit;
}

void addMovement(MovementCheck& worst, const Solution& solution, const LoadChoice& choice) {
    worst.known = worst.known && solution.displaced;
    for (std::size_t i = 0; worst.known && i < solution.displacements.size(); ++i) {
        const double moved = length(solution.displacements[i]);
        if (moved > worst.moved * (1 + kZeroForce)) { // the first of those equal by symmetry
            worst.moved = moved;
            worst.joint = JointId{static_cast<int>(i)};
            worst.choice = choice;
        }
    }
}

} // namespace

MemberChecks checkMembers(const Truss& truss, const Solution& solution, const LoadChoice& choice) {
    if (!solution.solved) {
        return {};
    }
    const std::vector<MemberMake> makes = makesOf(truss);
    const Structure structure = structureOf(truss);
    const Reliance reliance = relianceOf(solution);
    const std::vector<MemberLength> lengths = lengthsOf(truss, structure);
    std::vector<MemberCheck> members;
    for (std::size_t i = 0; i < makes.size(); ++i) {
        MemberCheck check =
            checkSolved(truss.checks, makes[i], lengths[i], solution.forces[i], reliance);
        check.member = MemberId{static_cast<int>(i)};
        check.choice = choice;
        check.bends = bendsAt(solution.moments, i);
        members.push_back(std::move(check));
    }
    MemberChecks checks = counted(std::move(members), reliance);
    checks.movement = movementLimitOf(truss);
    if (checks.movement) {
        addMovement(*checks.movement, solution, choice);
    }
    return checks;
}

namespace {

void addBends(const Truss& truss, const Structure& structure, const std::vector<double>& factors,
              std::vector<bool>& bends) {
    const std::vector<double> moments = bendingMoments(truss, structure, factors);
    for (std::size_t i = 0; i < bends.size(); ++i) {
        bends[i] = bends[i] || bendsAt(moments, i);
    }
}

MemberChecks checksOf(const Truss& truss, const Structure& structure, const Envelope& envelope,
                      const std::vector<bool>& bends) {
    const std::vector<MemberMake> makes = makesOf(truss);
    const std::vector<MemberLength> lengths = lengthsOf(truss, structure);
    std::vector<MemberCheck> members;
    for (std::size_t i = 0; i < makes.size(); ++i) {
        const auto side = [&](const ForceExtreme& extreme) {
            MemberCheck check =
                checkSolved(truss.checks, makes[i], lengths[i], extreme.force, envelope.reliance);
            check.choice = extreme.choice;
            return check;
        };
        const MemberEnvelope& each = envelope.members[i];
        MemberCheck check = worseOf(side(each.tension), side(each.compression));
        check.member = MemberId{static_cast<int>(i)};
        check.bends = bends[i];
        members.push_back(std::move(check));
    }
    return counted(std::move(members), envelope.reliance);
}

} // namespace

MemberChecks checkMembers(const Truss& truss, const Envelope& envelope,
                          const std::vector<LoadChoice>& choices) {
    const Structure structure = structureOf(truss);
    std::vector<bool> bends(truss.members.size(), false);
    const LoadFactors factors(truss);
    for (const LoadChoice& choice : choices) {
        addBends(truss, structure, factors.under(choice), bends);
    }
    MemberChecks checks = checksOf(truss, structure, envelope, bends);
    checks.movement = movementLimitOf(truss);
    if (checks.movement) {
        for (const LoadChoice& choice : choices) {
            addMovement(*checks.movement, solve(truss, choice), choice);
        }
    }
    return checks;
}

WorstChecksTask::WorstChecksTask(const Truss& truss, std::vector<LoadChoice> choices)
    : truss_(truss), choices_(std::move(choices)), factors_(truss), envelope_(truss, choices_),
      movement_(movementLimitOf(truss)) {}

bool WorstChecksTask::advance() {
    if (!extremes_) {
        if (!envelope_.advance()) {
            return false;
        }
        Outcome<Envelope> envelope = envelope_.take();
        if (!envelope) {
            checks_.faults = envelope.issues();
            return true;
        }
        extremes_ = std::move(envelope).value();
        structure_ = structureOf(truss_);
        bends_.resize(truss_.members.size());
    } else if (bent_ < choices_.size()) {
        addBends(truss_, structure_, factors_.under(choices_[bent_++]), bends_);
    } else if (movement_ && moved_ < choices_.size()) {
        const LoadChoice& choice = choices_[moved_++];
        addMovement(*movement_, solve(truss_, choice), choice);
    } else {
        checks_ = checksOf(truss_, structure_, *extremes_, bends_);
        checks_.movement = std::move(movement_);
        return true;
    }
    return false;
}

Progress WorstChecksTask::progress() const {
    return {envelope_.progress().done + bent_ + moved_, (movement_ ? 3 : 2) * choices_.size()};
}

} // namespace gusset
