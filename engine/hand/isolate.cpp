#include "hand/isolate.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace gusset {
namespace {

constexpr double kClearly =
    1.001; // a hair's breadth is no reason to prefer the one that stands second

std::vector<Acting> allBut(const Body& body, const Symbol& symbol) {
    std::vector<Acting> others;
    for (const Acting& force : body.unknowns) {
        if (!(force.symbol == symbol)) {
            others.push_back(force);
        }
    }
    return others;
}

const Acting& actingOf(const Body& body, const Symbol& symbol) {
    return *std::find_if(body.unknowns.begin(), body.unknowns.end(),
                         [&](const Acting& force) { return force.symbol == symbol; });
}

bool allThrough(const Sheet& sheet, const std::vector<Acting>& forces, Vec2 point) {
    return std::all_of(forces.begin(), forces.end(),
                       [&](const Acting& force) { return passesThrough(sheet, force, point); });
}

// Whether the equation, as it is written, gives the unknown. Far from the truss, or beside a joint
// that is very far, a line that misses the centre may still turn about it with no arm worth
// writing.
bool givesAlone(const Equation& equation, const Symbol& symbol) {
    const auto unknowns = unknownsOf(equation);
    if (unknowns.size() != 1 || !(unknowns.front() == symbol)) {
        return false;
    }
    double largest = 0; // of the parts that make up its coefficient
    for (const Term& term : equation.terms) {
        largest = std::max(largest, std::fabs(coefficientOf({.terms = {term}}, symbol)));
    }
    return std::fabs(coefficientOf(equation, symbol)) > kCancelled * largest;
}

std::vector<Symbol> symbolsOf(const std::vector<Acting>& forces) {
    std::vector<Symbol> symbols;
    for (const Acting& force : forces) {
        symbols.push_back(force.symbol);
    }
    return symbols;
}

// The sum of an axis that none of the others enters; of two the one in which the unknown weighs
// more.
std::optional<Isolation> byAxis(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const auto weightIn = [](const Acting& force, EquationKind kind) {
        return std::fabs(kind == EquationKind::SumX ? force.along.x : force.along.y);
    };
    std::optional<EquationKind> best;
    double most = kParallel;
    for (const EquationKind kind : {EquationKind::SumX, EquationKind::SumY}) {
        const bool alone =
            std::all_of(body.unknowns.begin(), body.unknowns.end(), [&](const Acting& force) {
                return force.symbol == symbol || weightIn(force, kind) <= kParallel;
            });
        const double weight = weightIn(actingOf(body, symbol), kind);
        if (alone && weight > kClearly * most) {
            most = weight;
            best = kind;
        }
    }
    if (!best) {
        return std::nullopt;
    }
    return Isolation{symbol, sumOf(sheet, body, *best), {.kind = RemarkKind::SumLeavesOne}};
}

std::optional<Isolation> aboutJoint(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const auto others = allBut(body, symbol);
    const Acting& force = actingOf(body, symbol);
    std::optional<Isolation> best;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Vec2 point = positionOf(sheet, joint);
        if (!allThrough(sheet, others, point) || passesThrough(sheet, force, point)) {
            continue;
        }
        Equation equation = momentsAbout(sheet, body, point, joint);
        if (!givesAlone(equation, symbol)) {
            continue;
        }
        if (!best || equation.terms.size() < best->equation.terms.size()) {
            best = Isolation{symbol,
                             equation,
                             {.kind = RemarkKind::MomentCentreChosen,
                              .joint = joint,
                              .symbols = symbolsOf(others),
                              .at = point}};
        }
    }
    return best;
}

std::optional<Vec2> crossing(const Sheet& sheet, const Acting& a, const Acting& b) {
    const double sine = cross(a.along, b.along);
    if (std::fabs(sine) <= kParallel) {
        return std::nullopt;
    }
    const Vec2 from = positionOf(sheet, a.at);
    const double along = cross(positionOf(sheet, b.at) - from, b.along) / sine;
    return from + along * a.along;
}

// A letter that no joint has, for a point off the truss.
std::string freeLetter(const Truss& truss) {
    for (const char* letter : {"O", "P", "Q", "R", "S", "T", "U", "V", "W", "X", "Y", "Z"}) {
        if (!findJoint(truss, letter).valid()) {
            return letter;
        }
    }
    return "O\u2032";
}

JointId nearestJoint(const Sheet& sheet, Vec2 point) {
    JointId nearest{0};
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (length(positionOf(sheet, joint) - point) < length(positionOf(sheet, nearest) - point)) {
            nearest = joint;
        }
    }
    return nearest;
}

std::optional<Isolation> aboutPointOffTruss(const Sheet& sheet, const Body& body,
                                            const Symbol& symbol) {
    const auto others = allBut(body, symbol);
    if (others.size() < 2) {
        return std::nullopt;
    }
    const auto point = crossing(sheet, others[0], others[1]);
    if (!point || !allThrough(sheet, others, *point) ||
        passesThrough(sheet, actingOf(body, symbol), *point)) {
        return std::nullopt;
    }
    Equation equation = momentsAbout(sheet, body, *point, {});
    if (!givesAlone(equation, symbol)) {
        return std::nullopt;
    }
    return Isolation{symbol,
                     std::move(equation),
                     {.kind = RemarkKind::CentreOffTruss,
                      .joint = nearestJoint(sheet, *point),
                      .symbols = symbolsOf(others),
                      .at = *point,
                      .text = freeLetter(sheet.truss)}};
}

std::optional<Isolation> across(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const auto others = allBut(body, symbol);
    if (others.empty()) {
        return std::nullopt;
    }
    const Vec2 line = others.front().along;
    const bool allAlong = std::all_of(others.begin(), others.end(), [&](const Acting& force) {
        return parallel(force.along, line);
    });
    if (!allAlong || parallel(actingOf(body, symbol).along, line)) {
        return std::nullopt;
    }
    return Isolation{symbol,
                     sumAlong(sheet, body, {-line.y, line.x}),
                     {.kind = RemarkKind::SumAcross, .symbols = symbolsOf(others)}};
}

using Way = std::optional<Isolation> (*)(const Sheet&, const Body&, const Symbol&);

// Over all unknowns: the axis sum in which the unknown weighs most.
std::optional<Isolation> anyByAxis(const Sheet& sheet, const Body& body) {
    std::optional<Isolation> best;
    for (const Acting& force : body.unknowns) {
        const auto one = byAxis(sheet, body, force.symbol);
        const bool horizontalFirst = one && best && one->equation.kind == EquationKind::SumX &&
                                     best->equation.kind != EquationKind::SumX;
        if (one && (!best || horizontalFirst)) {
            best = one;
        }
    }
    return best;
}

int unknownsAt(const Body& body, JointId joint) {
    return static_cast<int>(std::count_if(body.unknowns.begin(), body.unknowns.end(),
                                          [&](const Acting& force) { return force.at == joint; }));
}

// Over all unknowns: about the joint where most unknowns meet, then the shortest equation.
std::optional<Isolation> anyAboutJoint(const Sheet& sheet, const Body& body) {
    std::optional<Isolation> best;
    const auto score = [&](const Isolation& one) {
        return std::tuple(-unknownsAt(body, one.remark.joint), one.equation.terms.size(),
                          one.remark.joint);
    };
    for (const Acting& force : body.unknowns) {
        const auto one = aboutJoint(sheet, body, force.symbol);
        if (one && (!best || score(*one) < score(*best))) {
            best = one;
        }
    }
    return best;
}

std::optional<Isolation> first(const Sheet& sheet, const Body& body, Way way) {
    for (const Acting& force : body.unknowns) {
        auto one = way(sheet, body, force.symbol);
        if (one) {
            return one;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<Isolation> isolate(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    for (const Way way : {byAxis, aboutJoint, across, aboutPointOffTruss}) {
        auto one = way(sheet, body, symbol);
        if (one) {
            return one;
        }
    }
    return std::nullopt;
}

std::optional<Isolation> isolateAcross(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    return across(sheet, body, symbol);
}

std::optional<Isolation> isolateAny(const Sheet& sheet, const Body& body, Preference preference) {
    const bool momentsFirst = preference == Preference::Moments;
    auto one = momentsFirst ? anyAboutJoint(sheet, body) : anyByAxis(sheet, body);
    if (!one) {
        one = momentsFirst ? anyByAxis(sheet, body) : anyAboutJoint(sheet, body);
    }
    if (!one) {
        one = first(sheet, body, across);
    }
    return one ? one : first(sheet, body, aboutPointOffTruss);
}

} // namespace gusset
