#include "hand/paper/body.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

double productWithout(const Term& term, FactorKind left) {
    double product = term.sign;
    for (const Factor& factor : term.factors) {
        product *= factor.kind == left ? 1 : factor.value;
    }
    return product;
}

} // namespace

const Factor* unknownIn(const Term& term) {
    for (const Factor& factor : term.factors) {
        if (factor.kind == FactorKind::Unknown) {
            return &factor;
        }
    }
    return nullptr;
}

std::vector<Symbol> symbolsOf(const std::vector<Acting>& forces) {
    std::vector<Symbol> symbols;
    for (const Acting& force : forces) {
        symbols.push_back(force.symbol);
    }
    return symbols;
}

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

namespace {

void addActing(const Sheet& sheet, const Acting& force, Body& body) {
    const auto value = valueOf(sheet, force.symbol);
    if (!value) {
        body.unknowns.push_back(force);
    } else {
        (*value != 0 ? body.knowns : body.zeros).push_back(force);
    }
}

void addMember(const Sheet& sheet, JointId at, MemberId member, Body& body) {
    addActing(sheet, {forceSymbol(member), at, awayFrom(sheet, at, member)}, body);
}

void addReaction(const Sheet& sheet, RestraintId id, Body& body) {
    const Restraint& restraint = sheet.structure.restraints[id.at()];
    addActing(sheet, {reactionSymbol(sheet, id), restraint.joint, restraint.along}, body);
}

} // namespace

namespace {

// Called often: avoids going through the whole truss.
Body bodyOfJoint(const Sheet& sheet, JointId joint) {
    Body body{{joint}, {}, {}, {}};
    for (const RestraintId restraint : sheet.restraintsOf[joint.at()]) {
        addReaction(sheet, restraint, body);
    }
    for (const MemberId member : membersAt(sheet, joint)) {
        addMember(sheet, joint, member, body);
    }
    return body;
}

// For a small part of a large truss: goes through its joints only.
Body bodyOfFew(const Sheet& sheet, std::vector<JointId> joints) {
    std::vector<JointId> sorted = joints;
    std::sort(sorted.begin(), sorted.end());
    std::vector<RestraintId> restraints;
    std::vector<std::pair<MemberId, JointId>> cut; // with the end inside the body
    for (const JointId joint : sorted) {
        const auto& held = sheet.restraintsOf[joint.at()];
        restraints.insert(restraints.end(), held.begin(), held.end());
        for (const MemberId member : membersAt(sheet, joint)) {
            if (!std::binary_search(sorted.begin(), sorted.end(), otherEnd(sheet, joint, member))) {
                cut.push_back({member, joint});
            }
        }
    }
    std::sort(restraints.begin(), restraints.end());
    std::sort(cut.begin(), cut.end());
    Body body{std::move(joints), {}, {}, {}};
    for (const RestraintId restraint : restraints) {
        addReaction(sheet, restraint, body);
    }
    for (const auto& [member, end] : cut) {
        addMember(sheet, end, member, body);
    }
    return body;
}

} // namespace

Body bodyOf(const Sheet& sheet, std::vector<JointId> joints) {
    if (joints.size() == 1) {
        return bodyOfJoint(sheet, joints.front());
    }
    if (joints.size() < sheet.truss.joints.size() / 16) {
        return bodyOfFew(sheet, std::move(joints));
    }
    std::vector<bool> inside(sheet.truss.joints.size());
    for (const JointId joint : joints) {
        inside[joint.at()] = true;
    }
    Body body{std::move(joints), {}, {}, {}};
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        if (inside[sheet.structure.restraints[i].joint.at()]) {
            addReaction(sheet, {static_cast<int>(i)}, body);
        }
    }
    for (std::size_t i = 0; i < sheet.truss.members.size(); ++i) {
        const Member& member = sheet.truss.members[i];
        if (inside[member.a.at()] != inside[member.b.at()]) {
            addMember(sheet, inside[member.a.at()] ? member.a : member.b, {static_cast<int>(i)},
                      body);
        }
    }
    return body;
}

Body bodyBeside(const Sheet& sheet, const Divisions& cuts, std::size_t division, int side) {
    TrussPart joints = cuts.part(division, side);
    if (joints.size() == 1) {
        return bodyOfJoint(sheet, joints.front());
    }
    Body body{std::move(joints), {}, {}, {}};
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        if (cuts.contains(division, side, sheet.structure.restraints[i].joint)) {
            addReaction(sheet, {static_cast<int>(i)}, body);
        }
    }
    for (const MemberId id : cuts.cut(division)) {
        const Member& member = sheet.truss.members[id.at()];
        addMember(sheet, cuts.contains(division, side, member.a) ? member.a : member.b, id, body);
    }
    return body;
}

std::size_t unknownsAt(const Sheet& sheet, JointId joint) { return sheet.openAt[joint.at()]; }

Body wholeBody(const Sheet& sheet) {
    std::vector<JointId> all;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        all.push_back({static_cast<int>(i)});
    }
    return bodyOf(sheet, all);
}

bool passesThrough(const Sheet& sheet, const Acting& force, Vec2 point) {
    return std::fabs(cross(point - positionOf(sheet, force.at), force.along)) <= sheet.spot;
}

namespace {

// The same kind of equation, for another version of the body.
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

namespace {

void addUses(const Equation& equation, Step& step) {
    for (const Term& term : equation.terms) {
        for (const Factor& factor : term.factors) {
            const bool known = factor.kind == FactorKind::Known;
            if (known &&
                std::find(step.uses.begin(), step.uses.end(), factor.symbol) == step.uses.end()) {
                step.uses.push_back(factor.symbol);
            }
        }
    }
}

} // namespace

void noteUses(const Sheet& sheet, const Body& body, const Equation& equation, Step& step) {
    if (body.zeros.empty()) {
        addUses(equation, step);
        return;
    }
    Body all = body;
    all.knowns.insert(all.knowns.end(), body.zeros.begin(), body.zeros.end());
    addUses(sameEquation(sheet, all, equation), step);
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
