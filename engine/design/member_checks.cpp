#include "design/member_checks.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

double strengthDivisor(const CheckSettings& settings, ColumnFormula formula) {
    switch (formula) {
    case ColumnFormula::En1993:
        return settings.gammaM0; // 6.2.3, 6.2.4
    case ColumnFormula::Aisc360: // D2(a)
        return settings.safety == AiscSafety::Resistance ? 1 / settings.phi : settings.omega;
    case ColumnFormula::Euler:
        break;
    }
    return settings.strengthFactor;
}

void addLack(MemberCheck& check, const std::optional<double>& property, Lack lack) {
    if (!property) {
        check.lacks.push_back(lack);
    }
}

void govern(MemberCheck& check, CheckKind kind, double capacity) {
    if (check.governing == CheckKind::None || capacity < check.capacity) {
        check.governing = kind;
        check.capacity = capacity;
        check.use = std::abs(check.force) / capacity;
    }
}

void buckle(const CheckSettings& settings, MemberCheck& check) {
    const double strength = *check.make.strength;
    const double area = *check.make.area;
    check.elastic = elasticStress(*check.make.modulus, check.slenderness);
    switch (check.formula) {
    case ColumnFormula::Euler:
        check.buckling = check.elastic * area / settings.eulerFactor;
        break;
    case ColumnFormula::En1993:
        check.reduction = bucklingReduction(settings.curve, std::sqrt(strength / check.elastic));
        check.buckling = check.reduction.chi * area * strength / settings.gammaM1;
        break;
    case ColumnFormula::Aisc360:
        check.critical = criticalStress(strength, check.elastic);
        check.buckling =
            check.critical.stress * area / strengthDivisor(settings, ColumnFormula::Aisc360);
        break;
    }
}

void checkSlenderness(const CheckSettings& settings, MemberCheck& check) {
    const bool pulled = check.force > 0;
    check.limit = pulled ? settings.tensionLimit : settings.compressionLimit;
    if (check.make.radius) {
        const double factor = pulled ? 1 : settings.effectiveLength;
        check.slenderness = factor * check.length / *check.make.radius;
        check.tooSlender = check.limit > 0 && check.slenderness > check.limit * (1 + kZeroForce);
    }
}

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
MemberCheck checkSolved(const CheckSettings& settings, const MemberMake& make, double length,
                        double force, const Reliance& reliance) {
    if (isZero(reliance, force) && !isNegligible(reliance, force)) {
        MemberCheck check = checkOf(settings, make, length, 0);
        if (isBelowBound(reliance, force)) {
            check.lacks.push_back(Lack::Force);
        }
        return check;
    }
    return checkOf(settings, make, length, force);
}

} // namespace

bool isChecked(const MemberCheck& check) { return check.lacks.empty(); }

bool isOver(const MemberCheck& check) { return check.use > 1 + kZeroForce; }

double useErrorOf(const MemberCheck& check) {
    return check.capacity > 0 ? check.error / check.capacity : 0;
}

MemberCheck checkOf(const CheckSettings& settings, const MemberMake& make, double length,
                    double force) {
    MemberCheck check;
    check.force = force;
    check.length = length;
    check.make = make;
    check.formula = make.steel ? settings.formula : ColumnFormula::Euler;
    checkSlenderness(settings, check);
    if (force == 0) {
        return check;
    }
    addLack(check, make.area, Lack::Area);
    addLack(check, make.strength, Lack::Strength);
    if (force < 0) {
        addLack(check, make.modulus, Lack::Modulus);
        addLack(check, make.radius, Lack::Radius);
    }
    if (!check.lacks.empty()) {
        return check;
    }
    check.onArea = *make.strength * *make.area / strengthDivisor(settings, check.formula);
    if (force > 0) {
        govern(check, CheckKind::Tension, check.onArea);
        return check;
    }
    buckle(settings, check);
    govern(check, CheckKind::Buckling, check.buckling);
    govern(check, CheckKind::Crushing, check.onArea);
    return check;
}

MemberChecks checkMembers(const Truss& truss, const Solution& solution, const LoadChoice& choice) {
    if (!solution.solved) {
        return {};
    }
    const std::vector<MemberMake> makes = makesOf(truss);
    const Structure structure = structureOf(truss);
    const Reliance reliance = relianceOf(solution);
    std::vector<MemberCheck> members;
    for (std::size_t i = 0; i < makes.size(); ++i) {
        MemberCheck check = checkSolved(truss.checks, makes[i], structure.bars[i].length,
                                        solution.forces[i], reliance);
        check.member = MemberId{static_cast<int>(i)};
        check.choice = choice;
        check.bends = bendsAt(solution.moments, i);
        members.push_back(std::move(check));
    }
    return counted(std::move(members), reliance);
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
    std::vector<MemberCheck> members;
    for (std::size_t i = 0; i < makes.size(); ++i) {
        const auto side = [&](const ForceExtreme& extreme) {
            MemberCheck check = checkSolved(truss.checks, makes[i], structure.bars[i].length,
                                            extreme.force, envelope.reliance);
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
    return checksOf(truss, structure, envelope, bends);
}

WorstChecksTask::WorstChecksTask(const Truss& truss, std::vector<LoadChoice> choices)
    : truss_(truss), choices_(std::move(choices)), factors_(truss), envelope_(truss, choices_) {}

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
    } else {
        checks_ = checksOf(truss_, structure_, *extremes_, bends_);
        return true;
    }
    return false;
}

Progress WorstChecksTask::progress() const {
    return {envelope_.progress().done + bent_, 2 * choices_.size()};
}

} // namespace gusset
