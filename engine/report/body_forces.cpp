#include "report/body_forces.hpp"

#include "core/tolerance.hpp"
#include "report/exact_notation.hpp"
#include "report/formula.hpp"
#include "report/remark_text.hpp"
#include "report/signs.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

// What stands on the sheet before a step is taken.
struct Known {
    std::vector<std::optional<double>> forces;    // of each member
    std::vector<std::optional<double>> reactions; // of each restraint
    std::vector<int> drawn;                       // of each member while unknown
};

Known knownBefore(const Notation& notation, std::size_t step) {
    Known known{std::vector<std::optional<double>>(notation.truss.members.size()),
                std::vector<std::optional<double>>(notation.working.structure.restraints.size()),
                std::vector<int>(notation.truss.members.size(), 0)};
    const std::vector<Step>& steps = notation.working.steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        for (const Found& found : steps[i].found) {
            const bool isMember = found.symbol.kind == SymbolKind::MemberForce;
            if (i < step) {
                (isMember ? known.forces[found.symbol.member.at()]
                          : known.reactions[static_cast<std::size_t>(found.symbol.restraint)]) =
                    found.value;
            } else if (isMember && known.drawn[found.symbol.member.at()] == 0) {
                known.drawn[found.symbol.member.at()] = found.drawn;
            }
        }
    }
    return known;
}

// Exact where the class wants that and the number is short, as in the equations.
std::string valueText(const Notation& notation, const Symbol& symbol, double value) {
    const auto exact = exactTokens(notation, symbol, value);
    return exact ? plainText(runsOf(*exact)) : formatNumber(value, notation.numbers);
}

RichLine valued(const Notation& notation, const Symbol& symbol, double value) {
    const std::string unit = symbolOf(notation.truss.units.force);
    RichLine label = symbolRuns(notation, symbol);
    label.push_back(
        {" = " + valueText(notation, symbol, value) + (unit.empty() ? unit : kThinSpace + unit),
         RunStyle::Plain});
    return label;
}

void addMember(const Notation& notation, const Known& known, JointId at, MemberId member,
               FreeBody& body) {
    const auto& value = known.forces[member.at()];
    if (value && *value == 0) {
        return;
    }
    const Vec2 along = notation.working.structure.bars[member.at()].along;
    BodyForce force{.at = at, .member = member};
    force.out = notation.truss.members[member.at()].a == at ? along : -along;
    const Symbol symbol{.kind = SymbolKind::MemberForce, .member = member};
    force.label = symbolRuns(notation, symbol);
    int drawn = known.drawn[member.at()] < 0 ? -1 : 1;
    force.ink = SketchInk::Accent;
    if (value) { // with guessed senses a known force is drawn as it acts
        const bool guesses = notation.truss.classSettings.senses == AssumedSense::Guessed;
        drawn = guesses && *value < 0 ? -1 : 1;
        force.label = valued(notation, symbol, drawn * *value);
        force.ink = *value > 0 ? SketchInk::Tension : SketchInk::Compression;
    }
    force.along = drawn > 0 ? force.out : -force.out;
    body.forces.push_back(std::move(force));
}

void addReaction(const Notation& notation, const Known& known, int index, FreeBody& body) {
    const auto& value = known.reactions[static_cast<std::size_t>(index)];
    if (value && *value == 0) {
        return;
    }
    const Restraint& restraint =
        notation.working.structure.restraints[static_cast<std::size_t>(index)];
    BodyForce force{.at = restraint.joint, .along = restraint.along, .restraint = index};
    force.ink = SketchInk::Reaction;
    const Symbol symbol{.kind = SymbolKind::Reaction, .restraint = index, .joint = restraint.joint};
    force.label = value ? valued(notation, symbol, *value) : symbolRuns(notation, symbol);
    body.forces.push_back(std::move(force));
}

void addLoads(const Notation& notation, JointId joint, double nothing, FreeBody& body) {
    const Vec2 load = notation.working.loads[joint.at()];
    for (const Vec2 part : {Vec2{load.x, 0}, Vec2{0, load.y}}) {
        const double size = length(part);
        if (size > nothing) {
            BodyForce force{.at = joint, .along = (1 / size) * part, .ink = SketchInk::Load};
            force.label = plainLine(givenForce(notation, size));
            body.forces.push_back(std::move(force));
        }
    }
}

FreeBody bodyOf(const Notation& notation, const Known& known, std::vector<JointId> joints) {
    FreeBody body{std::move(joints), {}};
    std::vector<bool> inside(notation.truss.joints.size());
    for (const JointId joint : body.joints) {
        inside[joint.at()] = true;
    }
    for (std::size_t i = 0; i < notation.truss.members.size(); ++i) {
        const Member& member = notation.truss.members[i];
        if (inside[member.a.at()] != inside[member.b.at()]) {
            addMember(notation, known, inside[member.a.at()] ? member.a : member.b,
                      MemberId{static_cast<int>(i)}, body);
        }
    }
    const std::vector<Restraint>& restraints = notation.working.structure.restraints;
    for (std::size_t i = 0; i < restraints.size(); ++i) {
        if (inside[restraints[i].joint.at()]) {
            addReaction(notation, known, static_cast<int>(i), body);
        }
    }
    double largest = 0;
    for (const Vec2 load : notation.working.loads) {
        largest = std::max(largest, length(load));
    }
    for (const JointId joint : body.joints) {
        addLoads(notation, joint, kZeroForce * largest, body);
    }
    return body;
}

std::vector<JointId> allJoints(const Truss& truss) {
    std::vector<JointId> joints;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        joints.push_back(JointId{static_cast<int>(i)});
    }
    return joints;
}

// Which joints each body of a step has.
std::vector<std::vector<JointId>> jointsOfBodies(const Notation& notation, const Step& step) {
    std::vector<std::vector<JointId>> bodies;
    switch (step.kind) {
    case StepKind::WholeBody:
        bodies.push_back(allJoints(notation.truss));
        break;
    case StepKind::JointIntro:
    case StepKind::SectionIntro:
        if (!step.body.empty()) {
            bodies.push_back(step.body);
        }
        break;
    case StepKind::Simultaneous:
        for (const JointId joint : step.body) {
            bodies.push_back({joint});
        }
        break;
    default:
        break;
    }
    return bodies;
}

RichLine forceWords(const PhraseBook& book, const BodyForce& force) {
    const RichLine direction = plainLine(directionWord(book, force.along));
    const bool isLoad = !force.member.valid() && force.restraint < 0;
    return say(book, isLoad ? Phrase::BodyLoad : Phrase::BodyForce,
               {{"force", force.label}, {"direction", direction}});
}

} // namespace

std::vector<FreeBody> freeBodiesOf(const Notation& notation, std::size_t step) {
    const auto bodies = jointsOfBodies(notation, notation.working.steps[step]);
    std::vector<FreeBody> list;
    if (bodies.empty()) {
        return list;
    }
    const Known known = knownBefore(notation, step);
    for (const std::vector<JointId>& joints : bodies) {
        list.push_back(bodyOf(notation, known, joints));
    }
    return list;
}

FreeBody wholeFreeBody(const Notation& notation) {
    const Known known = knownBefore(notation, notation.working.steps.size());
    return bodyOf(notation, known, allJoints(notation.truss));
}

std::string sentenceOf(const Notation& notation, const FreeBody& body) {
    std::vector<RichLine> words;
    for (const BodyForce& force : body.forces) {
        words.push_back(forceWords(notation.book, force));
    }
    const RichLine forces =
        words.empty() ? say(notation.book, Phrase::BodyNothing) : listOf(notation.book, words);
    if (body.joints.size() == notation.truss.joints.size()) {
        return sayPlain(notation.book, Phrase::BodyWhole, {{"forces", forces}});
    }
    if (body.joints.size() == 1) {
        return sayPlain(notation.book, Phrase::BodyOfJoint,
                        {{"joint", jointName(notation, body.joints.front())}, {"forces", forces}});
    }
    return sayPlain(notation.book, Phrase::BodyOfPart,
                    {{"joints", jointNames(notation, body.joints)}, {"forces", forces}});
}

} // namespace gusset
