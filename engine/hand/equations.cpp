// The equations of a free body, as lists of terms; see body.hpp.

#include "core/tolerance.hpp"
#include "hand/body.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

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

} // namespace

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

} // namespace gusset
