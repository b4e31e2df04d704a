#include "hand/body.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

enum class Axis { X, Y };

double componentOf(Vec2 v, Axis axis) { return axis == Axis::X ? v.x : v.y; }

int angleOf(const Sheet& sheet, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction
               ? sheet.angleOfRestraint[static_cast<std::size_t>(symbol.restraint)]
               : sheet.angleOfMember[symbol.member.at()];
}

// What an inclined force is multiplied with for its part along an axis, in the class's style.
Factor projectionFactor(const Sheet& sheet, const Acting& force, Axis axis) {
    const AngleLine& line = sheet.angles[static_cast<std::size_t>(angleOf(sheet, force.symbol))];
    Factor factor;
    factor.value = std::fabs(componentOf(force.along, axis));
    factor.symbol = line.angle;
    factor.horizontal = axis == Axis::X;
    factor.numerator = factor.horizontal ? line.run : line.rise;
    factor.denominator = line.length;
    switch (sheet.truss.classSettings.angles) {
    case AngleStyle::SinCos:
        factor.kind = factor.horizontal ? FactorKind::Cosine : FactorKind::Sine;
        break;
    case AngleStyle::Cosines:
        factor.kind = FactorKind::AxisCosine;
        break;
    case AngleStyle::Slopes:
        factor.kind = FactorKind::Ratio;
        break;
    }
    return factor;
}

Factor valueFactor(const Sheet& sheet, const Symbol& symbol) {
    const auto value = valueOf(sheet, symbol);
    return {.kind = value ? FactorKind::Known : FactorKind::Unknown,
            .value = value ? drawnSense(sheet, symbol) * *value : 0,
            .symbol = symbol};
}

// The force's part along an axis; no term where it has none.
void addProjection(const Sheet& sheet, const Acting& force, Axis axis, std::vector<Term>& terms) {
    const double part = componentOf(force.along, axis);
    if (std::fabs(part) <= kParallel) {
        return;
    }
    Term term{(part < 0 ? -1 : 1) * drawnSense(sheet, force.symbol),
              {valueFactor(sheet, force.symbol)}};
    if (angleOf(sheet, force.symbol) >= 0) {
        term.factors.push_back(projectionFactor(sheet, force, axis));
    }
    terms.push_back(term);
}

void addLoad(const Sheet& sheet, double size, std::vector<Term>& terms) {
    if (!isNothing(sheet, size)) {
        terms.push_back(
            {size < 0 ? -1 : 1, {{.kind = FactorKind::Load, .value = std::fabs(size)}}});
    }
}

// The end of a cut member, or the joint of a reaction, from which its lever arms are taken: where
// one component turns with no arm, if there is such an end.
Vec2 leverPoint(const Sheet& sheet, const Acting& force, Vec2 centre) {
    const double small = kSameSpot * sheet.structure.extent / toMetre(sheet.truss.units.length);
    const Vec2 here = positionOf(sheet, force.at);
    if (force.symbol.kind == SymbolKind::Reaction) {
        return here;
    }
    const Vec2 there = positionOf(sheet, otherEnd(sheet, force.at, force.symbol.member));
    const auto level = [&](Vec2 p) {
        return std::fabs(p.x - centre.x) <= small || std::fabs(p.y - centre.y) <= small;
    };
    return !level(here) && level(there) ? there : here;
}

// Multiplies terms that stand for one component by its lever arm and adds them, with the sign of
// the turn in the class's sense.
void addTurning(const Sheet& sheet, std::vector<Term> part, double arm, std::vector<Term>& terms) {
    const double small = kSameSpot * sheet.structure.extent / toMetre(sheet.truss.units.length);
    if (std::fabs(arm) <= small) {
        return;
    }
    const bool clockwise = sheet.truss.classSettings.moments == MomentSense::Clockwise;
    for (Term& term : part) {
        term.sign *= (arm < 0) != clockwise ? -1 : 1;
        term.factors.push_back({.kind = FactorKind::Arm, .value = std::fabs(arm)});
        terms.push_back(term);
    }
}

void addMoment(const Sheet& sheet, const Acting& force, Vec2 centre, std::vector<Term>& terms) {
    if (passesThrough(sheet, force, centre)) {
        return;
    }
    const Vec2 from = leverPoint(sheet, force, centre) - centre;
    std::vector<Term> up;
    std::vector<Term> right;
    addProjection(sheet, force, Axis::Y, up);
    addProjection(sheet, force, Axis::X, right);
    addTurning(sheet, up, from.x, terms);
    addTurning(sheet, right, -from.y, terms);
}

// A force's part along any direction, by the cosine of the angle between the two.
void addTurned(Term term, Vec2 along, Vec2 direction, std::vector<Term>& terms) {
    constexpr double kDegrees = 180 / 3.14159265358979323846;
    const double part = dot(along, direction);
    if (std::fabs(part) <= kParallel) {
        return;
    }
    term.sign *= part < 0 ? -1 : 1;
    if (!parallel(along, direction)) {
        const double turn = std::fabs(cross(along, direction));
        term.factors.push_back({.kind = FactorKind::TurnCosine,
                                .value = std::fabs(part),
                                .numerator = std::atan2(turn, std::fabs(part)) * kDegrees});
    }
    terms.push_back(term);
}

double productWithout(const Term& term, FactorKind left) {
    double product = term.sign;
    for (const Factor& factor : term.factors) {
        product *= factor.kind == left ? 1 : factor.value;
    }
    return product;
}

const Factor* unknownIn(const Term& term) {
    for (const Factor& factor : term.factors) {
        if (factor.kind == FactorKind::Unknown) {
            return &factor;
        }
    }
    return nullptr;
}

} // namespace

double valueOf(const Term& term) {
    double product = term.sign;
    for (const Factor& factor : term.factors) {
        product *= factor.value;
    }
    return product;
}

double valueOf(const Equation& equation) {
    double sum = 0;
    for (const Term& term : equation.terms) {
        sum += valueOf(term);
    }
    return sum;
}

Body bodyOf(const Sheet& sheet, std::vector<JointId> joints) {
    Body body{std::move(joints), {}, {}, {}};
    std::vector<bool> inside(sheet.truss.joints.size());
    for (const JointId joint : body.joints) {
        inside[joint.at()] = true;
    }
    const auto add = [&](const Symbol& symbol, JointId at, Vec2 along) {
        const auto value = valueOf(sheet, symbol);
        if (!value) {
            body.unknowns.push_back({symbol, at, along});
        } else if (*value != 0) {
            body.knowns.push_back({symbol, at, along});
        } else {
            body.zeros.push_back({symbol, at, along});
        }
    };
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        const Restraint& restraint = sheet.structure.restraints[i];
        if (inside[restraint.joint.at()]) {
            add(reactionSymbol(sheet, static_cast<int>(i)), restraint.joint, restraint.along);
        }
    }
    for (std::size_t i = 0; i < sheet.truss.members.size(); ++i) {
        const MemberId id{static_cast<int>(i)};
        const Member& member = sheet.truss.members[i];
        if (inside[member.a.at()] != inside[member.b.at()]) {
            const JointId at = inside[member.a.at()] ? member.a : member.b;
            add(forceSymbol(id), at, awayFrom(sheet, at, id));
        }
    }
    return body;
}

Body wholeBody(const Sheet& sheet) {
    std::vector<JointId> all;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        all.push_back({static_cast<int>(i)});
    }
    return bodyOf(sheet, all);
}

bool passesThrough(const Sheet& sheet, const Acting& force, Vec2 point) {
    const double small = kSameSpot * sheet.structure.extent / toMetre(sheet.truss.units.length);
    return std::fabs(cross(point - positionOf(sheet, force.at), force.along)) <= small;
}

Equation sumOf(const Sheet& sheet, const Body& body, EquationKind kind) {
    const Axis axis = kind == EquationKind::SumX ? Axis::X : Axis::Y;
    Equation equation;
    equation.kind = kind;
    for (const Acting& force : body.knowns) {
        if (force.symbol.kind == SymbolKind::Reaction) {
            addProjection(sheet, force, axis, equation.terms);
        }
    }
    for (const JointId joint : body.joints) {
        addLoad(sheet, componentOf(sheet.loads[joint.at()], axis), equation.terms);
    }
    for (const Acting& force : body.knowns) {
        if (force.symbol.kind != SymbolKind::Reaction) {
            addProjection(sheet, force, axis, equation.terms);
        }
    }
    const bool whole = body.joints.size() > 1;
    std::vector<Term> unknowns;
    for (const Acting& force : body.unknowns) {
        addProjection(sheet, force, axis, unknowns);
    }
    // On a joint what is known stands first; on a body what is asked for does.
    equation.terms.insert(whole ? equation.terms.begin() : equation.terms.end(), unknowns.begin(),
                          unknowns.end());
    return equation;
}

Equation sumAlong(const Sheet& sheet, const Body& body, Vec2 direction) {
    Equation equation;
    equation.kind = EquationKind::SumAlong;
    equation.along = direction;
    const auto addForce = [&](const Acting& force) {
        addTurned({drawnSense(sheet, force.symbol), {valueFactor(sheet, force.symbol)}},
                  force.along, direction, equation.terms);
    };
    std::for_each(body.knowns.begin(), body.knowns.end(), addForce);
    for (const JointId joint : body.joints) {
        const Vec2 load = sheet.loads[joint.at()];
        for (const auto& [size, along] : {std::pair{load.x, Vec2{1, 0}}, {load.y, Vec2{0, 1}}}) {
            std::vector<Term> part;
            addLoad(sheet, size, part);
            if (!part.empty()) {
                addTurned(part.front(), along, direction, equation.terms);
            }
        }
    }
    std::for_each(body.unknowns.begin(), body.unknowns.end(), addForce);
    return equation;
}

Equation momentsAbout(const Sheet& sheet, const Body& body, Vec2 point, JointId joint) {
    Equation equation;
    equation.kind = EquationKind::SumMoments;
    equation.about = joint;
    equation.point = point;
    for (const Acting& force : body.unknowns) {
        addMoment(sheet, force, point, equation.terms);
    }
    for (const Acting& force : body.knowns) {
        addMoment(sheet, force, point, equation.terms);
    }
    for (const JointId id : body.joints) {
        const Vec2 from = positionOf(sheet, id) - point;
        std::vector<Term> up;
        std::vector<Term> right;
        addLoad(sheet, sheet.loads[id.at()].y, up);
        addLoad(sheet, sheet.loads[id.at()].x, right);
        addTurning(sheet, up, from.x, equation.terms);
        addTurning(sheet, right, -from.y, equation.terms);
    }
    return equation;
}

namespace {

// The equation of the same kind, of another reading of the body.
Equation sameEquation(const Sheet& sheet, const Body& body, const Equation& equation) {
    switch (equation.kind) {
    case EquationKind::SumMoments:
        return momentsAbout(sheet, body, equation.point, equation.about);
    case EquationKind::SumAlong:
        return sumAlong(sheet, body, equation.along);
    case EquationKind::SumX:
    case EquationKind::SumY:
        break;
    }
    return sumOf(sheet, body, equation.kind);
}

} // namespace

std::vector<Symbol> unknownsOf(const Equation& equation) {
    std::vector<Symbol> symbols;
    for (const Term& term : equation.terms) {
        const Factor* factor = unknownIn(term);
        if (factor && std::find(symbols.begin(), symbols.end(), factor->symbol) == symbols.end()) {
            symbols.push_back(factor->symbol);
        }
    }
    return symbols;
}

double coefficientOf(const Equation& equation, const Symbol& symbol) {
    double sum = 0;
    for (const Term& term : equation.terms) {
        const Factor* factor = unknownIn(term);
        if (factor && factor->symbol == symbol) {
            sum += productWithout(term, FactorKind::Unknown);
        }
    }
    return sum;
}

double constantOf(const Equation& equation) {
    double sum = 0;
    for (const Term& term : equation.terms) {
        sum += unknownIn(term) ? 0 : valueOf(term);
    }
    return sum;
}

void putValue(Equation& equation, const Symbol& symbol, double value) {
    for (Term& term : equation.terms) {
        for (Factor& factor : term.factors) {
            if (factor.kind == FactorKind::Unknown && factor.symbol == symbol) {
                factor.value = value;
            }
        }
    }
}

void noteUses(const Sheet& sheet, const Body& body, const Equation& equation, Step& step) {
    Body all = body;
    all.knowns.insert(all.knowns.end(), body.zeros.begin(), body.zeros.end());
    for (const Term& term : sameEquation(sheet, all, equation).terms) {
        for (const Factor& factor : term.factors) {
            const bool known = factor.kind == FactorKind::Known;
            if (known &&
                std::find(step.uses.begin(), step.uses.end(), factor.symbol) == step.uses.end()) {
                step.uses.push_back(factor.symbol);
            }
        }
    }
}

Equation withGuess(Sheet& sheet, const Body& body, const Equation& equation) {
    const auto unknowns = unknownsOf(equation);
    if (!guesses(sheet) || unknowns.size() != 1 ||
        unknowns.front().kind != SymbolKind::MemberForce) {
        return equation;
    }
    const Symbol& symbol = unknowns.front();
    const double value = -constantOf(equation) / coefficientOf(equation, symbol);
    if (value < 0 && !isNothing(sheet, value)) {
        sheet.drawn[symbol.member.at()] *= -1;
    }
    return sameEquation(sheet, body, equation);
}

Found solveFor(Sheet& sheet, Equation& equation) {
    const Symbol symbol = unknownsOf(equation).front();
    const int drawn = drawnSense(sheet, symbol);
    const Found found =
        record(sheet, symbol, -drawn * constantOf(equation) / coefficientOf(equation, symbol));
    putValue(equation, symbol, drawn * found.value);
    return found;
}

} // namespace gusset
