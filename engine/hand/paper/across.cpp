#include "hand/paper/across.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/across.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

// The forces of a body that act across a line, apart from those along the line or n itself.
struct ActingAcross {
    std::vector<Acting> inLine{}; // the direction of the line
    std::vector<Acting> turned{}; // inclined
    bool upright = false;         // a vertical force or load
    bool level = false;
};

void addForce(const Sheet& sheet, const Acting& force, Vec2 n, ActingAcross& acting) {
    if (std::fabs(dot(force.along, n)) <= kParallel) {
        acting.inLine.push_back(force);
    } else if (angleOf(sheet, force.symbol) < 0) {
        acting.upright = acting.upright || std::fabs(force.along.y) > kParallel;
        acting.level = acting.level || std::fabs(force.along.x) > kParallel;
    } else if (!parallel(force.along, n)) {
        acting.turned.push_back(force);
    }
}

ActingAcross actingAcross(const Sheet& sheet, const Body& body, Vec2 n) {
    ActingAcross acting;
    for (const std::vector<Acting>* forces : {&body.unknowns, &body.knowns}) {
        for (const Acting& force : *forces) {
            addForce(sheet, force, n, acting);
        }
    }
    for (const JointId joint : body.joints) {
        const Vec2 load = sheet.loads[joint.at()];
        acting.upright = acting.upright || !isNothing(sheet, load.y);
        acting.level = acting.level || !isNothing(sheet, load.x);
    }
    return acting;
}

bool onOneLine(const Sheet& sheet, const std::vector<Acting>& forces) {
    return std::all_of(forces.begin(), forces.end(), [&](const Acting& force) {
        return passesThrough(sheet, force, positionOf(sheet, forces.front().at));
    });
}

Remark whyAcross(const Sheet& sheet, const std::vector<Acting>& line, const Symbol& left) {
    const std::vector<Symbol> symbols = symbolsOf(line);
    if (symbols.size() == 1) {
        return remarkThat(phrase::kAcrossOne, {{"others", symbols}, {"left", left}});
    }
    return remarkThat(onOneLine(sheet, line) ? phrase::kAcrossLine : phrase::kAcrossParallels,
                      {{"others", symbols}, {"left", left}});
}

} // namespace

int angleOf(const Sheet& sheet, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction ? sheet.angleOfRestraint[symbol.restraint.at()]
                                               : sheet.angleOfMember[symbol.member.at()];
}

const AngleLine* lineAcross(const Sheet& sheet, Vec2 n) {
    const auto miss = [&](const AngleLine& line) {
        return std::fabs(line.rise * std::fabs(n.y) - line.run * std::fabs(n.x)) / line.length;
    };
    const auto best = std::min_element(
        sheet.angles.begin(), sheet.angles.end(),
        [&](const AngleLine& one, const AngleLine& other) { return miss(one) < miss(other); });
    return best != sheet.angles.end() && miss(*best) <= kParallel ? &*best : nullptr;
}

TurnedAngle angleWith(const Sheet& sheet, const Acting& force, Vec2 n) {
    const AngleLine& own = sheet.angles[static_cast<std::size_t>(angleOf(sheet, force.symbol))];
    const AngleLine& line = *lineAcross(sheet, n);
    // Where the two slope the same way, their inclinations are subtracted.
    const bool minus = force.along.x * force.along.y * n.x * n.y < 0;
    TurnedAngle turned{own.angle, line.angle, minus, own.degrees + line.degrees};
    if (minus) {
        turned.degrees = std::fabs(own.degrees - line.degrees);
        if (own.degrees < line.degrees) {
            std::swap(turned.first, turned.second);
        }
    }
    return turned;
}

bool turnsInProducts(const Sheet& sheet) {
    const ClassSettings& settings = sheet.truss.classSettings;
    return settings.angles != AngleStyle::SinCos || settings.form == NumberForm::Exact;
}

std::vector<Remark> remarksAcross(const Sheet& sheet, const Body& body, const Symbol& left,
                                  Vec2 n) {
    const ActingAcross acting = actingAcross(sheet, body, n);
    std::vector<Remark> remarks{whyAcross(sheet, acting.inLine, left)};
    const AngleLine* across = lineAcross(sheet, n);
    if (!across) {
        return remarks;
    }
    const AngleLine& line = *across;
    if (turnsInProducts(sheet)) {
        if (!acting.turned.empty() || acting.upright || acting.level) {
            remarks.push_back(remarkThat(
                phrase::kPartsAlongN, {{"level", partAlong(sheet, line, EquationKind::SumY)},
                                       {"upright", partAlong(sheet, line, EquationKind::SumX)}}));
        }
        return remarks;
    }
    for (const Acting& force : acting.turned) {
        remarks.push_back(
            remarkThat(phrase::kTurnedForce, {{"force", force.symbol},
                                              {"angle", angleWith(sheet, force, n)},
                                              {"line", acting.inLine.front().symbol}}));
    }
    if (acting.upright) {
        remarks.push_back(remarkThat(phrase::kTurnedUpright,
                                     {{"part", partAlong(sheet, line, EquationKind::SumX)}}));
    }
    if (acting.level) {
        remarks.push_back(remarkThat(phrase::kTurnedLevel,
                                     {{"part", partAlong(sheet, line, EquationKind::SumY)}}));
    }
    return remarks;
}

} // namespace gusset
