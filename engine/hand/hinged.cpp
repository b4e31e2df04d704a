// Reactions of trusses whose parts hang together by one joint like a hinge (three-hinged forms):
// the moments of one part about the hinge hold only the reactions of that part.

#include "hand/cuts.hpp"
#include "hand/stages.hpp"

#include <algorithm>

namespace gusset {
namespace {

Equation aboutHinge(const Sheet& sheet, const Body& body, JointId hinge) {
    Equation equation = momentsAbout(sheet, body, positionOf(sheet, hinge), hinge);
    equation.body = body.joints;
    return equation;
}

// Moments of the whole truss about a joint that leave these unknowns only, or fewer.
std::optional<Equation> wholeWith(const Sheet& sheet, const std::vector<Symbol>& unknowns) {
    const Body whole = wholeBody(sheet);
    std::optional<Equation> best;
    for (const JointId joint : whole.joints) {
        Equation equation = momentsAbout(sheet, whole, positionOf(sheet, joint), joint);
        const auto left = unknownsOf(equation);
        const bool only = std::all_of(left.begin(), left.end(), [&](const Symbol& symbol) {
            return std::find(unknowns.begin(), unknowns.end(), symbol) != unknowns.end();
        });
        if (only && !left.empty() && (!best || equation.terms.size() < best->terms.size())) {
            equation.body = whole.joints;
            best = equation;
        }
    }
    return best;
}

void writeApart(Sheet& sheet, const HingedPart& hinged) {
    Step step;
    step.kind = StepKind::SectionIntro;
    step.joint = hinged.hinge;
    step.body = hinged.part;
    for (const MemberId member : membersAt(sheet, hinged.hinge)) {
        const JointId other = otherEnd(sheet, hinged.hinge, member);
        if (std::find(hinged.part.begin(), hinged.part.end(), other) != hinged.part.end()) {
            step.members.push_back(member);
        }
    }
    step.remarks.push_back({.kind = RemarkKind::TakenApart, .joint = hinged.hinge});
    sheet.steps.push_back(step);
}

void writeOne(Sheet& sheet, const HingedPart& hinged, Equation equation) {
    writeApart(sheet, hinged);
    Step step;
    step.kind = StepKind::SectionEquation;
    step.joint = hinged.hinge;
    step.body = hinged.part;
    noteUses(sheet, bodyOf(sheet, hinged.part), equation, step);
    step.found.push_back(solveFor(sheet, equation));
    step.equations.push_back(equation);
    noteFound(sheet, step);
    sheet.steps.push_back(step);
}

bool writePair(Sheet& sheet, const HingedPart& hinged, const std::vector<Equation>& equations,
               const std::vector<Symbol>& unknowns) {
    Step step;
    step.kind = StepKind::ReactionPair;
    step.joint = hinged.hinge;
    step.body = hinged.part;
    step.equations = equations;
    step.remarks.push_back({.kind = RemarkKind::PartAndWhole, .symbols = unknowns});
    for (const Equation& equation : equations) {
        noteUses(sheet, bodyOf(sheet, equation.body), equation, step);
    }
    std::vector<Found> found;
    if (!solveTogether(sheet, step.equations, unknowns, found)) {
        return false;
    }
    step.found = found;
    writeApart(sheet, hinged);
    noteFound(sheet, step);
    sheet.steps.push_back(step);
    return true;
}

} // namespace

bool writeHingedReaction(Sheet& sheet) {
    const auto parts = hingedParts(sheet);
    for (const HingedPart& hinged : parts) {
        Equation equation = aboutHinge(sheet, bodyOf(sheet, hinged.part), hinged.hinge);
        if (unknownsOf(equation).size() == 1) {
            writeOne(sheet, hinged, equation);
            return true;
        }
    }
    for (const HingedPart& hinged : parts) {
        const Equation equation = aboutHinge(sheet, bodyOf(sheet, hinged.part), hinged.hinge);
        const auto unknowns = unknownsOf(equation);
        const auto whole = unknowns.size() == 2 ? wholeWith(sheet, unknowns) : std::nullopt;
        if (whole && writePair(sheet, hinged, {*whole, equation}, unknowns)) {
            return true;
        }
    }
    return false;
}

} // namespace gusset
