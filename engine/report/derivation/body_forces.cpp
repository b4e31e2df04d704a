#include "report/derivation/body_forces.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/working/free_bodies.hpp"
#include "report/derivation/moment_centre.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/formula/working_index.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace gusset {
namespace {

// What is known before a step.
struct Known {
    const WorkingIndex& index;
    std::size_t step;

    [[nodiscard]] std::optional<double> force(MemberId member) const {
        return before(index.ofMember[member.at()]);
    }
    [[nodiscard]] std::optional<double> reaction(RestraintId restraint) const {
        return before(index.ofRestraint[restraint.at()]);
    }
    // The sense in which an unknown force is drawn: −1 for compression.
    [[nodiscard]] int drawn(MemberId member) const {
        for (const WorkingIndex::Finding& finding : index.ofMember[member.at()]) {
            if (finding.step >= step && finding.drawn != 0) {
                return finding.drawn < 0 ? -1 : 1;
            }
        }
        return 1;
    }

private:
    [[nodiscard]] std::optional<double>
    before(const std::vector<WorkingIndex::Finding>& all) const {
        std::optional<double> value;
        for (const WorkingIndex::Finding& finding : all) {
            value = finding.step < step ? std::optional(finding.value) : value;
        }
        return value;
    }
};

// Exact where the class asks for it and the number is short, as in the equations.
RichLine valued(const Notation& notation, const Symbol& symbol, double value) {
    const std::string unit = symbolOf(notation.truss.units.force);
    RichLine label = symbolRuns(notation, symbol);
    const auto exact = exactTokens(notation, symbol, value);
    const std::string relation = exact ? "=" : relationTo(notation, value).text;
    const std::string number =
        exact ? plainText(runsOf(*exact)) : formatNumber(value, notation.numbers);
    label.push_back({" " + relation + " " + number + (unit.empty() ? unit : kThinSpace + unit),
                     RunStyle::Plain});
    return label;
}

void addMember(const Notation& notation, const Known& known, JointId at, MemberId member,
               FreeBody& body) {
    const auto value = known.force(member);
    if (value && *value == 0) {
        return;
    }
    const Vec2 along = notation.working.structure.bars[member.at()].along;
    BodyForce force{.at = at, .of = member};
    force.out = notation.truss.members[member.at()].a == at ? along : -along;
    const Symbol symbol{.kind = SymbolKind::MemberForce, .member = member};
    force.label = symbolRuns(notation, symbol);
    int drawn = known.drawn(member);
    force.ink = SketchInk::Accent;
    if (value) { // with guessed senses a known force is drawn in its true sense
        const bool guesses = notation.truss.classSettings.senses == AssumedSense::Guessed;
        drawn = guesses && *value < 0 ? -1 : 1;
        force.label = valued(notation, symbol, drawn * *value);
        force.ink = *value > 0 ? SketchInk::Tension : SketchInk::Compression;
    }
    force.along = drawn > 0 ? force.out : -force.out;
    body.forces.push_back(std::move(force));
}

void addReaction(const Notation& notation, const Known& known, RestraintId id, FreeBody& body) {
    const auto value = known.reaction(id);
    if (value && *value == 0) {
        return;
    }
    const Restraint& restraint = notation.working.structure.restraints[id.at()];
    BodyForce force{.at = restraint.joint, .along = restraint.along, .of = id};
    force.ink = SketchInk::Reaction;
    const Symbol symbol{.kind = SymbolKind::Reaction, .restraint = id, .joint = restraint.joint};
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

// The members cut by the boundary of a body, each with its joint inside, and the restraints of its
// joints.
struct Reaching {
    std::vector<std::pair<MemberId, JointId>> members{};
    std::vector<RestraintId> restraints{};
};

Reaching reachingOut(const Truss& truss, const WorkingIndex& index, std::vector<JointId> joints) {
    std::sort(joints.begin(), joints.end());
    Reaching reaching;
    for (const JointId joint : joints) {
        for (const MemberId id : index.membersAt[joint.at()]) {
            const Member& member = truss.members[id.at()];
            const JointId other = member.a == joint ? member.b : member.a;
            if (!std::binary_search(joints.begin(), joints.end(), other)) {
                reaching.members.push_back({id, joint});
            }
        }
        const auto& held = index.restraintsAt[joint.at()];
        reaching.restraints.insert(reaching.restraints.end(), held.begin(), held.end());
    }
    std::sort(reaching.members.begin(), reaching.members.end());
    std::sort(reaching.restraints.begin(), reaching.restraints.end());
    return reaching;
}

FreeBody bodyOf(const Notation& notation, const Known& known, std::vector<JointId> joints) {
    FreeBody body{std::move(joints), {}};
    const Reaching reaching = reachingOut(notation.truss, known.index, body.joints);
    for (const auto& [member, end] : reaching.members) {
        addMember(notation, known, end, member, body);
    }
    for (const RestraintId restraint : reaching.restraints) {
        addReaction(notation, known, restraint, body);
    }
    for (const JointId joint : body.joints) {
        addLoads(notation, joint, kZeroForce * known.index.largestLoad, body);
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

// The joints of each body of a step.
std::vector<std::vector<JointId>> jointsOfBodies(const Notation& notation, std::size_t at) {
    const Step& step = notation.working.steps[at];
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
    case StepKind::SectionEquation:
        if (showsBodyAgain(notation.working, at)) {
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
    return say(book, force.of ? phrase::kBodyForce : phrase::kBodyLoad,
               {{"force", force.label}, {"direction", direction}});
}

} // namespace

bool isCutMember(const BodyForce& force) {
    return force.of && std::holds_alternative<MemberId>(*force.of);
}

std::vector<FreeBody> freeBodiesOf(const Notation& notation, std::size_t step) {
    const auto bodies = jointsOfBodies(notation, step);
    std::vector<FreeBody> list;
    if (bodies.empty()) {
        return list;
    }
    const Known known{workingIndexOf(notation), step};
    for (const std::vector<JointId>& joints : bodies) {
        list.push_back(bodyOf(notation, known, joints));
    }
    return list;
}

FreeBody wholeFreeBody(const Notation& notation) {
    const Known known{workingIndexOf(notation), notation.working.steps.size()};
    return bodyOf(notation, known, allJoints(notation.truss));
}

FreeBody loadedBody(const Notation& notation) {
    FreeBody body{allJoints(notation.truss), {}};
    for (const JointId joint : body.joints) {
        addLoads(notation, joint, kZeroForce * workingIndexOf(notation).largestLoad, body);
    }
    return body;
}

FreeBody finalFreeBody(const Notation& notation, const std::vector<double>& reactions) {
    FreeBody body = loadedBody(notation);
    for (std::size_t i = 0; i < reactions.size(); ++i) {
        if (reactions[i] == 0) {
            continue;
        }
        const Restraint& restraint = notation.working.structure.restraints[i];
        const RestraintId id{static_cast<int>(i)};
        const Symbol symbol{
            .kind = SymbolKind::Reaction, .restraint = id, .joint = restraint.joint};
        body.forces.push_back({.at = restraint.joint,
                               .along = reactions[i] < 0 ? -restraint.along : restraint.along,
                               .of = id,
                               .ink = SketchInk::Reaction,
                               .label = valued(notation, symbol, std::fabs(reactions[i]))});
    }
    return body;
}

std::string sentenceOf(const Notation& notation, const FreeBody& body) {
    std::vector<RichLine> words;
    for (const BodyForce& force : body.forces) {
        words.push_back(forceWords(notation.book, force));
    }
    const RichLine forces =
        words.empty() ? say(notation.book, phrase::kBodyNothing) : listOf(notation.book, words);
    if (body.joints.size() == notation.truss.joints.size()) {
        return sayPlain(notation.book, phrase::kBodyWhole, {{"forces", forces}});
    }
    if (body.joints.size() == 1) {
        return sayPlain(notation.book, phrase::kBodyOfJoint,
                        {{"joint", jointName(notation, body.joints.front())}, {"forces", forces}});
    }
    return sayPlain(notation.book, phrase::kBodyOfPart,
                    {{"joints", jointNames(notation, body.joints)}, {"forces", forces}});
}

} // namespace gusset
