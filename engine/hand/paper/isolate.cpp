#include "hand/paper/isolate.hpp"

#include "core/tolerance.hpp"
#include "hand/paper/across.hpp"
#include "hand/paper/cuts.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace gusset {
namespace {

constexpr double kClearly = 1.001; // a tiny gain is no reason to prefer the second one

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

// Whether all other unknowns of the body pass a test.
template <class Test>
bool allOthers(const Body& body, const Symbol& symbol, Test test) {
    return std::all_of(body.unknowns.begin(), body.unknowns.end(),
                       [&](const Acting& force) { return force.symbol == symbol || test(force); });
}

bool othersThrough(const Sheet& sheet, const Body& body, const Symbol& symbol, Vec2 point) {
    return allOthers(body, symbol,
                     [&](const Acting& force) { return passesThrough(sheet, force, point); });
}

// Whether the moments about the point, as written, give the unknown alone. Far from the truss, or
// next to a very distant joint, a line that misses the centre may still have a moment about it,
// with an arm too small to be written.
bool givesAlone(const Sheet& sheet, const Body& body, Vec2 point, const Symbol& symbol) {
    Body bare; // loads don't affect an unknown's arm
    bare.unknowns = body.unknowns;
    const Equation equation = momentsAbout(sheet, bare, point, {});
    const auto unknowns = unknownsOf(equation);
    if (unknowns.size() != 1 || !(unknowns.front() == symbol)) {
        return false;
    }
    double largest = 0; // over the terms of its coefficient
    for (const Term& term : equation.terms) {
        largest = std::max(largest, std::fabs(coefficientOf({.terms = {term}}, symbol)));
    }
    return std::fabs(coefficientOf(equation, symbol)) > kCancelled * largest;
}

// The sum along an axis that the others do not enter; of two, the one in which the unknown has the
// larger component.
std::optional<Way> byAxis(const Sheet& sheet, const Body& body, const Acting& force) {
    const auto weightIn = [](const Acting& one, EquationKind kind) {
        return std::fabs(kind == EquationKind::SumX ? one.along.x : one.along.y);
    };
    std::optional<EquationKind> best;
    double most = kParallel;
    for (const EquationKind kind : {EquationKind::SumX, EquationKind::SumY}) {
        const double weight = weightIn(force, kind);
        if (weight > kClearly * most && allOthers(body, force.symbol, [&](const Acting& other) {
                return weightIn(other, kind) <= kParallel;
            })) {
            most = weight;
            best = kind;
        }
    }
    if (!best) {
        return std::nullopt;
    }
    return Way{
        .kind = WayKind::SumLeavesOne, .equation = *best, .terms = termsOfSum(sheet, body, *best)};
}

// Candidates for a joint on the lines of all other unknowns: the joints on one of these lines.
const std::vector<JointId>* fewestOnLine(const Sheet& sheet, const Body& body,
                                         const Symbol& symbol) {
    const std::vector<JointId>* fewest = nullptr;
    for (const Acting& force : body.unknowns) {
        if (force.symbol.kind == SymbolKind::MemberForce && !(force.symbol == symbol)) {
            const auto& joints = jointsOnLine(sheet, force.symbol.member);
            fewest = !fewest || joints.size() < fewest->size() ? &joints : fewest;
        }
    }
    return fewest;
}

std::optional<Way> aboutJoint(const Sheet& sheet, const Body& body, const Acting& force) {
    const Symbol& symbol = force.symbol;
    std::optional<Way> best;
    const auto look = [&](JointId joint) {
        const Vec2 point = positionOf(sheet, joint);
        if (passesThrough(sheet, force, point) || !othersThrough(sheet, body, symbol, point)) {
            return;
        }
        const std::size_t terms = termsOfMoments(sheet, body, point);
        if ((!best || terms < best->terms) && givesAlone(sheet, body, point, symbol)) {
            best = Way{WayKind::MomentCentre, EquationKind::SumMoments, joint, point, terms};
        }
    };
    if (const auto* joints = fewestOnLine(sheet, body, symbol)) {
        std::for_each(joints->begin(), joints->end(), look);
        return best;
    }
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        look({static_cast<int>(i)});
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

// A letter that is not a joint's label, for a point off the truss.
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

// The first of the other unknowns, two at most.
std::vector<Acting> firstOthers(const Body& body, const Symbol& symbol) {
    std::vector<Acting> others;
    for (std::size_t i = 0; i < body.unknowns.size() && others.size() < 2; ++i) {
        if (!(body.unknowns[i].symbol == symbol)) {
            others.push_back(body.unknowns[i]);
        }
    }
    return others;
}

std::optional<Way> aboutPointOffTruss(const Sheet& sheet, const Body& body, const Acting& force) {
    const auto others = firstOthers(body, force.symbol);
    if (others.size() < 2) {
        return std::nullopt;
    }
    const auto point = crossing(sheet, others[0], others[1]);
    if (!point || passesThrough(sheet, force, *point) ||
        !othersThrough(sheet, body, force.symbol, *point)) {
        return std::nullopt;
    }
    if (!givesAlone(sheet, body, *point, force.symbol)) {
        return std::nullopt;
    }
    return Way{WayKind::CentreOffTruss,
               EquationKind::SumMoments,
               {},
               *point,
               termsOfMoments(sheet, body, *point)};
}

std::optional<Way> across(const Sheet& sheet, const Body& body, const Acting& force) {
    const auto others = firstOthers(body, force.symbol);
    if (others.empty()) {
        return std::nullopt;
    }
    const Vec2 line = others.front().along;
    if (parallel(force.along, line) || !allOthers(body, force.symbol, [&](const Acting& other) {
            return parallel(other.along, line);
        })) {
        return std::nullopt;
    }
    const Vec2 direction{-line.y, line.x};
    return Way{WayKind::SumAcross,
               EquationKind::SumAlong,
               {},
               direction,
               termsOfSumAlong(sheet, body, direction)};
}

Remark reasonOf(const Sheet& sheet, const Body& body, const Symbol& left, const Way& way) {
    const std::vector<Symbol> others = symbolsOf(allBut(body, left));
    switch (way.kind) {
    case WayKind::SumLeavesOne:
    case WayKind::SumAcross: // explained with its angles
        break;
    case WayKind::MomentCentre:
        return others.empty()
                   ? remarkThat(phrase::kMomentCentreOne, {{"joint", way.centre}, {"left", left}})
                   : remarkThat(others.size() == 1 ? phrase::kMomentCentreThroughOne
                                                   : phrase::kMomentCentre,
                                {{"joint", way.centre}, {"through", others}, {"left", left}});
    case WayKind::CentreOffTruss: {
        const JointId near = nearestJoint(sheet, way.at);
        const Vec2 from = way.at - positionOf(sheet, near);
        const auto clean = [&](double part) { return std::fabs(part) <= sheet.spot ? 0 : part; };
        return remarkThat(phrase::kCentreOffTruss,
                          {{"centre", freeLetter(sheet.truss)},
                           {"through", others},
                           {"place", PlaceBeside{near, {clean(from.x), clean(from.y)}}},
                           {"left", left}});
    }
    }
    return remarkThat(phrase::kSumLeavesOne, {{"left", left}});
}

std::vector<Remark> remarksOnMoved(const Sheet& sheet, const Body& body, Vec2 centre) {
    std::vector<Remark> remarks;
    for (const std::vector<Acting>* forces : {&body.unknowns, &body.knowns}) {
        for (const Acting& force : *forces) {
            const JointId joint = movedTo(sheet, force, centre);
            if (joint.valid()) {
                const bool above = std::fabs(positionOf(sheet, joint).x - centre.x) <= sheet.spot;
                remarks.push_back(remarkThat(above ? phrase::kMovedPlumb : phrase::kMovedLevel,
                                             {{"force", force.symbol}, {"joint", joint}}));
            }
        }
    }
    return remarks;
}

struct WayChosen {
    Symbol symbol;
    Way way;
};

// Over all unknowns: the axis sum in which the unknown has the largest component.
std::optional<WayChosen> anyByAxis(const Sheet& sheet, const Body& body) {
    std::optional<WayChosen> best;
    for (const Acting& force : body.unknowns) {
        const auto one = byAxis(sheet, body, force);
        const bool horizontalFirst = one && best && one->equation == EquationKind::SumX &&
                                     best->way.equation != EquationKind::SumX;
        if (one && (!best || horizontalFirst)) {
            best = WayChosen{force.symbol, *one};
        }
    }
    return best;
}

int unknownsAt(const Body& body, JointId joint) {
    return static_cast<int>(std::count_if(body.unknowns.begin(), body.unknowns.end(),
                                          [&](const Acting& force) { return force.at == joint; }));
}

// For each unknown, whether there is a joint that all others pass through and it does not. A joint
// that two miss can be skipped.
std::vector<bool> aloneAboutJoints(const Sheet& sheet, const Body& body) {
    std::vector<bool> alone(body.unknowns.size());
    for (const Joint& joint : sheet.truss.joints) {
        std::size_t misses = 0;
        std::size_t last = 0;
        for (std::size_t i = 0; i < body.unknowns.size() && misses < 2; ++i) {
            if (!passesThrough(sheet, body.unknowns[i], joint.at)) {
                ++misses;
                last = i;
            }
        }
        if (misses == 1) {
            alone[last] = true;
        }
    }
    return alone;
}

// Over all unknowns: about the joint where most unknowns meet, then by the shortest equation.
std::optional<WayChosen> anyAboutJoint(const Sheet& sheet, const Body& body) {
    const std::vector<bool> alone = aloneAboutJoints(sheet, body);
    std::optional<WayChosen> best;
    const auto score = [&](const Way& way) {
        return std::tuple(-unknownsAt(body, way.centre), way.terms, way.centre);
    };
    for (const Acting& force : body.unknowns) {
        if (!alone[static_cast<std::size_t>(&force - body.unknowns.data())]) {
            continue;
        }
        const auto one = aboutJoint(sheet, body, force);
        if (one && (!best || score(*one) < score(best->way))) {
            best = WayChosen{force.symbol, *one};
        }
    }
    return best;
}

template <class Search>
std::optional<WayChosen> first(const Sheet& sheet, const Body& body, Search search) {
    for (const Acting& force : body.unknowns) {
        if (const auto way = search(sheet, body, force)) {
            return WayChosen{force.symbol, *way};
        }
    }
    return std::nullopt;
}

std::optional<WayChosen> anyWay(const Sheet& sheet, const Body& body, Preference preference) {
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

} // namespace

Isolation written(const Sheet& sheet, const Body& body, const Symbol& symbol, const Way& way) {
    Isolation isolation{symbol, {}, way.kind, reasonOf(sheet, body, symbol, way)};
    switch (way.equation) {
    case EquationKind::SumMoments:
        isolation.equation = momentsAbout(sheet, body, way.at, way.centre);
        isolation.details = remarksOnMoved(sheet, body, way.at);
        break;
    case EquationKind::SumAlong:
        isolation.equation = sumAlong(sheet, body, way.at);
        isolation.details = remarksAcross(sheet, body, symbol, way.at);
        isolation.remark = isolation.details.front();
        isolation.details.erase(isolation.details.begin());
        break;
    case EquationKind::SumX:
    case EquationKind::SumY:
        isolation.equation = sumOf(sheet, body, way.equation);
        break;
    }
    return isolation;
}

std::optional<Way> wayTo(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const Acting& force = actingOf(body, symbol);
    for (const auto search : {byAxis, aboutJoint, across, aboutPointOffTruss}) {
        if (const auto way = search(sheet, body, force)) {
            return way;
        }
    }
    return std::nullopt;
}

std::optional<Isolation> isolate(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const auto way = wayTo(sheet, body, symbol);
    return way ? std::optional(written(sheet, body, symbol, *way)) : std::nullopt;
}

std::optional<Isolation> isolateAcross(const Sheet& sheet, const Body& body, const Symbol& symbol) {
    const auto way = across(sheet, body, actingOf(body, symbol));
    return way ? std::optional(written(sheet, body, symbol, *way)) : std::nullopt;
}

std::optional<Isolation> isolateAny(const Sheet& sheet, const Body& body, Preference preference) {
    const auto choice = anyWay(sheet, body, preference);
    return choice ? std::optional(written(sheet, body, choice->symbol, choice->way)) : std::nullopt;
}

} // namespace gusset
