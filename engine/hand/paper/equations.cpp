// The equations of a free body, as lists of terms; see body.hpp.

#include "core/angle.hpp"
#include "core/tolerance.hpp"
#include "hand/paper/body.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

enum class Axis { X, Y };

double componentOf(Vec2 v, Axis axis) { return axis == Axis::X ? v.x : v.y; }

int angleOf(const Sheet& sheet, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction ? sheet.angleOfRestraint[symbol.restraint.at()]
                                               : sheet.angleOfMember[symbol.member.at()];
}

// The factor that gives an inclined force's component along an axis, in the class's style.
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

// Terms are added to an equation or only counted, so that the shortest of many equations can be
// found without writing them all. Each term is passed as a function that makes it.
struct TermList {
    std::vector<Term> terms;

    template <class Make>
    void add(Make make) {
        terms.push_back(make());
    }
};
struct TermCount {
    std::size_t count = 0;

    template <class Make>
    void add(Make) {
        ++count;
    }
};

// The force's component along an axis; no term if that is zero.
template <class Terms>
void addProjection(const Sheet& sheet, const Acting& force, Axis axis, Terms& terms) {
    const double part = componentOf(force.along, axis);
    if (std::fabs(part) <= kParallel) {
        return;
    }
    terms.add([&] {
        Term term{(part < 0 ? -1 : 1) * drawnSense(sheet, force.symbol),
                  {valueFactor(sheet, force.symbol)}};
        if (angleOf(sheet, force.symbol) >= 0) {
            term.factors.push_back(projectionFactor(sheet, force, axis));
        }
        return term;
    });
}

template <class Terms>
void addLoad(const Sheet& sheet, JointId joint, Axis axis, Terms& terms) {
    const double size = componentOf(sheet.loads[joint.at()], axis);
    if (!isNothing(sheet, size)) {
        terms.add([&] {
            return Term{size < 0 ? -1 : 1,
                        {{.kind = FactorKind::Load,
                          .value = std::fabs(size),
                          .symbol = {.kind = SymbolKind::Load,
                                     .joint = joint,
                                     .index = axis == Axis::X ? 0 : 1}}}};
        });
    }
}

// The point from which a force's lever arms are measured: an end of the cut member, or the joint of
// the reaction; if possible an end where one component has no lever arm.
Vec2 leverPoint(const Sheet& sheet, const Acting& force, Vec2 centre) {
    const Vec2 here = positionOf(sheet, force.at);
    if (force.symbol.kind == SymbolKind::Reaction) {
        return here;
    }
    const Vec2 there = positionOf(sheet, otherEnd(sheet, force.at, force.symbol.member));
    const auto level = [&](Vec2 p) {
        return std::fabs(p.x - centre.x) <= sheet.spot || std::fabs(p.y - centre.y) <= sheet.spot;
    };
    return !level(here) && level(there) ? there : here;
}

// Multiplies the terms of one component by its lever arm and passes them on, with the sign of the
// moment in the class's convention; no terms if the arm is zero.
template <class Terms>
struct Turning {
    const Sheet& sheet;
    double arm;
    Terms& terms;

    template <class Make>
    void add(Make make) {
        if (std::fabs(arm) <= sheet.spot) {
            return;
        }
        terms.add([&] {
            const bool clockwise = sheet.truss.classSettings.moments == MomentSense::Clockwise;
            Term term = make();
            term.sign *= (arm < 0) != clockwise ? -1 : 1;
            term.factors.push_back({.kind = FactorKind::Arm, .value = std::fabs(arm)});
            return term;
        });
    }
};

template <class Terms>
void addMoment(const Sheet& sheet, const Acting& force, Vec2 centre, Terms& terms) {
    if (passesThrough(sheet, force, centre)) {
        return;
    }
    const Vec2 from = leverPoint(sheet, force, centre) - centre;
    Turning<Terms> up{sheet, from.x, terms};
    Turning<Terms> right{sheet, -from.y, terms};
    addProjection(sheet, force, Axis::Y, up);
    addProjection(sheet, force, Axis::X, right);
}

template <class Terms>
void addMoments(const Sheet& sheet, const Body& body, Vec2 point, Terms& terms) {
    for (const Acting& force : body.unknowns) {
        addMoment(sheet, force, point, terms);
    }
    for (const Acting& force : body.knowns) {
        addMoment(sheet, force, point, terms);
    }
    for (const JointId id : body.joints) {
        const Vec2 from = positionOf(sheet, id) - point;
        Turning<Terms> up{sheet, from.x, terms};
        Turning<Terms> right{sheet, -from.y, terms};
        addLoad(sheet, id, Axis::Y, up);
        addLoad(sheet, id, Axis::X, right);
    }
}

template <class Terms>
void addUnknowns(const Sheet& sheet, const Body& body, Axis axis, Terms& terms) {
    for (const Acting& force : body.unknowns) {
        addProjection(sheet, force, axis, terms);
    }
}

template <class Terms>
void addSum(const Sheet& sheet, const Body& body, EquationKind kind, Terms& terms) {
    const Axis axis = kind == EquationKind::SumX ? Axis::X : Axis::Y;
    // For a joint the known terms come first; for a body the unknown ones do.
    const bool whole = body.joints.size() > 1;
    if (whole) {
        addUnknowns(sheet, body, axis, terms);
    }
    for (const Acting& force : body.knowns) {
        if (force.symbol.kind == SymbolKind::Reaction) {
            addProjection(sheet, force, axis, terms);
        }
    }
    for (const JointId joint : body.joints) {
        addLoad(sheet, joint, axis, terms);
    }
    for (const Acting& force : body.knowns) {
        if (force.symbol.kind != SymbolKind::Reaction) {
            addProjection(sheet, force, axis, terms);
        }
    }
    if (!whole) {
        addUnknowns(sheet, body, axis, terms);
    }
}

// A force's component along any direction, by the cosine of the angle between the two.
template <class Terms, class Make>
void addTurned(Make make, Vec2 along, Vec2 direction, Terms& terms) {
    const double part = dot(along, direction);
    if (std::fabs(part) <= kParallel) {
        return;
    }
    terms.add([&] {
        Term term = make();
        term.sign *= part < 0 ? -1 : 1;
        if (!parallel(along, direction)) {
            const double turn = std::fabs(cross(along, direction));
            term.factors.push_back({.kind = FactorKind::TurnCosine,
                                    .value = std::fabs(part),
                                    .numerator = toDegrees(std::atan2(turn, std::fabs(part)))});
        }
        return term;
    });
}

// Passes on the terms of a component along one axis.
template <class Terms>
struct Along {
    Vec2 axis;
    Vec2 direction;
    Terms& terms;

    template <class Make>
    void add(Make make) {
        addTurned(make, axis, direction, terms);
    }
};

template <class Terms>
void addSumAlong(const Sheet& sheet, const Body& body, Vec2 direction, Terms& terms) {
    const auto addForce = [&](const Acting& force) {
        const auto make = [&] {
            return Term{drawnSense(sheet, force.symbol), {valueFactor(sheet, force.symbol)}};
        };
        addTurned(make, force.along, direction, terms);
    };
    std::for_each(body.knowns.begin(), body.knowns.end(), addForce);
    for (const JointId joint : body.joints) {
        Along<Terms> right{{1, 0}, direction, terms};
        Along<Terms> up{{0, 1}, direction, terms};
        addLoad(sheet, joint, Axis::X, right);
        addLoad(sheet, joint, Axis::Y, up);
    }
    std::for_each(body.unknowns.begin(), body.unknowns.end(), addForce);
}

} // namespace

Equation sumOf(const Sheet& sheet, const Body& body, EquationKind kind) {
    TermList list;
    addSum(sheet, body, kind, list);
    Equation equation;
    equation.kind = kind;
    equation.terms = std::move(list.terms);
    return equation;
}

Equation sumAlong(const Sheet& sheet, const Body& body, Vec2 direction) {
    TermList list;
    addSumAlong(sheet, body, direction, list);
    Equation equation;
    equation.kind = EquationKind::SumAlong;
    equation.along = direction;
    equation.terms = std::move(list.terms);
    return equation;
}

Equation momentsAbout(const Sheet& sheet, const Body& body, Vec2 point, JointId joint) {
    TermList list;
    addMoments(sheet, body, point, list);
    Equation equation;
    equation.kind = EquationKind::SumMoments;
    equation.about = joint;
    equation.point = point;
    equation.terms = std::move(list.terms);
    return equation;
}

bool turnsAbout(const Sheet& sheet, const Acting& force, Vec2 point) {
    TermCount terms;
    addMoment(sheet, force, point, terms);
    return terms.count > 0;
}

std::size_t termsOfSum(const Sheet& sheet, const Body& body, EquationKind kind) {
    TermCount terms;
    addSum(sheet, body, kind, terms);
    return terms.count;
}

std::size_t termsOfSumAlong(const Sheet& sheet, const Body& body, Vec2 direction) {
    TermCount terms;
    addSumAlong(sheet, body, direction, terms);
    return terms.count;
}

std::size_t termsOfMoments(const Sheet& sheet, const Body& body, Vec2 point) {
    TermCount terms;
    addMoments(sheet, body, point, terms);
    return terms.count;
}

} // namespace gusset
