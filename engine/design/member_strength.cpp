// What one member can carry: strength, net section, buckling.
#include "core/tolerance.hpp"
#include "design/member_checks.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

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

// EN 1995-1-1: k_mod / γ_M.
double timberFactor(const CheckSettings& settings) { return settings.kMod / settings.gammaTimber; }

double strengthOf(const MemberCheck& check) {
    if (check.byTimber) {
        return check.force > 0 ? *check.make.timber->tension : *check.make.timber->compression;
    }
    return *check.make.strength;
}

// EN 1993-1-1, 6.2.3 (6.7): 0.9 A_net f_u / γ_M2; AISC 360-16, D2(b): F_u · U · A_n by φ = 0.75 or
// Ω = 2; else what is allowed on the gross area, on the net one.
double capacityOnNet(const CheckSettings& settings, const MemberCheck& check) {
    const double net = *check.make.net;
    if (check.byTimber) {
        return net * strengthOf(check) * timberFactor(settings);
    }
    switch (check.formula) {
    case ColumnFormula::En1993:
        return 0.9 * net * *check.make.ultimate / settings.gammaM2;
    case ColumnFormula::Aisc360:
        return *check.make.ultimate * check.make.lag * net *
               (settings.safety == AiscSafety::Resistance ? 0.75 : 0.5);
    case ColumnFormula::Euler:
        break;
    }
    return *check.make.strength * net / settings.strengthFactor;
}

void buckleTimber(const CheckSettings& settings, MemberCheck& check) {
    const TimberMake& timber = *check.make.timber;
    const double relative =
        check.slenderness / std::numbers::pi * std::sqrt(*timber.compression / *timber.E05);
    check.timber = timberReduction(settings.betaC, relative);
    check.buckling =
        check.timber.kc * *timber.compression * timberFactor(settings) * *check.make.area;
}

void buckle(const CheckSettings& settings, MemberCheck& check) {
    if (check.byTimber) {
        buckleTimber(settings, check);
        return;
    }
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
        check.local = classByEn1993(check.make.parts, strength);
        break;
    case ColumnFormula::Aisc360:
        check.critical = criticalStress(strength, check.elastic);
        check.buckling =
            check.critical.stress * area / strengthDivisor(settings, ColumnFormula::Aisc360);
        check.local = slenderByAisc360(check.make.parts, strength, *check.make.modulus);
        break;
    }
}

Slenderness slendernessOver(double factor, double length, const std::optional<double>& radius) {
    Slenderness found{factor, length, radius.value_or(0), 0};
    if (radius) {
        found.value = factor * length / *radius;
    }
    return found;
}

// A double angle acts as one piece only if it is packed closely enough.
void lookAtPacking(MemberCheck& check) {
    if (!check.make.pair || check.formula == ColumnFormula::Euler) {
        return;
    }
    const PairMake& pair = *check.make.pair;
    if (!pair.packing) {
        check.packing = Packing::Unknown;
        return;
    }
    const double between = *pair.packing / pair.single;
    if (check.formula == ColumnFormula::En1993) {
        constexpr double kClosely = 15; // table 6.9
        check.packing = between <= kClosely ? Packing::Close : Packing::Far;
        return;
    }
    const double tied = slendernessOfPair(check.out.value, *pair.packing, pair.single);
    check.tied = tied > check.out.value ? tied : 0;
    check.packing =
        between <= 0.75 * std::max(check.in.value, tied) ? Packing::Close : Packing::Far;
}

void lookAtBothWays(MemberCheck& check) {
    const MemberLength& lengths = check.lengths;
    const auto orWeak = [&](const std::optional<double>& radius) {
        return radius ? radius : check.make.radius;
    };
    check.in = slendernessOver(lengths.inFactor, lengths.in, orWeak(check.make.inRadius));
    check.out = slendernessOver(lengths.outFactor, lengths.out, orWeak(check.make.outRadius));
    check.twoWays = check.in.value != check.out.value || check.in.length != check.out.length;
    lookAtPacking(check);
    const double out = std::max(check.out.value, check.tied);
    check.outGoverns = out > check.in.value;
    check.slenderness = std::max(check.in.value, out);
}

void checkSlenderness(const CheckSettings& settings, MemberCheck& check) {
    const bool pulled = check.force > 0;
    check.limit = pulled ? settings.tensionLimit : settings.compressionLimit;
    if (!check.make.radius) {
        return;
    }
    if (pulled) {
        check.slenderness = check.length / *check.make.radius;
    } else {
        lookAtBothWays(check);
    }
    check.tooSlender = check.limit > 0 && check.slenderness > check.limit * (1 + kZeroForce);
}

void findLacks(MemberCheck& check) {
    const MemberMake& make = check.make;
    const bool pulled = check.force > 0;
    addLack(check, make.area, Lack::Area);
    if (check.byTimber) {
        addLack(check, pulled ? make.timber->tension : make.timber->compression, Lack::Along);
    } else {
        addLack(check, make.strength, Lack::Strength);
    }
    if (pulled && make.holed) {
        addLack(check, make.net, Lack::HoleDepth);
        if (!check.byTimber && check.formula != ColumnFormula::Euler) {
            addLack(check, make.ultimate, Lack::Ultimate);
        }
    }
    if (!pulled) {
        if (check.byTimber) {
            addLack(check, make.timber->E05, Lack::Modulus05);
        } else {
            addLack(check, make.modulus, Lack::Modulus);
        }
        addLack(check, make.radius, Lack::Radius);
    }
}

double capacityOnArea(const CheckSettings& settings, const MemberCheck& check) {
    const double whole = strengthOf(check) * *check.make.area;
    return check.byTimber ? whole * timberFactor(settings)
                          : whole / strengthDivisor(settings, check.formula);
}

} // namespace

bool isChecked(const MemberCheck& check) { return check.lacks.empty(); }

bool isLocallySlender(const MemberCheck& check) { return check.local.number == 4; }

bool isOver(const MemberCheck& check) { return check.use > 1 + kZeroForce; }

double useErrorOf(const MemberCheck& check) {
    return check.capacity > 0 ? check.error / check.capacity : 0;
}

bool movesTooFar(const MovementCheck& check) {
    return check.known && check.moved > check.allowed * (1 + kZeroForce);
}

MemberCheck checkOf(const CheckSettings& settings, const MemberMake& make, double length,
                    double force) {
    return checkOf(settings, make,
                   MemberLength{length, length, settings.effectiveLength, settings.effectiveLength},
                   force);
}

MemberCheck checkOf(const CheckSettings& settings, const MemberMake& make,
                    const MemberLength& lengths, double force) {
    MemberCheck check;
    check.force = force;
    check.length = lengths.in;
    check.lengths = lengths;
    check.make = make;
    check.byTimber = make.timber.has_value();
    check.formula = make.steel ? settings.formula : ColumnFormula::Euler;
    checkSlenderness(settings, check);
    if (force == 0) {
        return check;
    }
    findLacks(check);
    if (!check.lacks.empty()) {
        return check;
    }
    check.onArea = capacityOnArea(settings, check);
    if (force > 0) {
        govern(check, CheckKind::Tension, check.onArea);
        if (make.holed) {
            check.onNet = capacityOnNet(settings, check);
            govern(check, CheckKind::Net, check.onNet);
        }
        return check;
    }
    buckle(settings, check);
    govern(check, CheckKind::Buckling, check.buckling);
    govern(check, CheckKind::Crushing, check.onArea);
    return check;
}

} // namespace gusset
