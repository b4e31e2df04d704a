// Reactions of trusses whose parts are connected by a single joint acting as a hinge (three-hinged
// forms): the moments of one part about the hinge hold only the reactions of that part.

#include "hand/paper/cuts.hpp"
#include "hand/paper/solve_pair.hpp"
#include "hand/paper/stages.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>

namespace gusset {
namespace {

Equation aboutHinge(const Sheet& sheet, const Body& body, JointId hinge) {
    Equation equation = momentsAbout(sheet, body, positionOf(sheet, hinge), hinge);
    equation.body = body.joints;
    return equation;
}

// Moments of the whole truss about a joint that leave only these unknowns, or fewer.
std::optional<Equation> wholeWith(const Sheet& sheet, const std::vector<Symbol>& unknowns) {
    const Body whole = wholeBody(sheet);
    std::optional<Equation> best;
    for (const JointId joint : whole.joints) {
        const Vec2 centre = positionOf(sheet, joint);
        const bool only =
            std::all_of(whole.unknowns.begin(), whole.unknowns.end(), [&](const Acting& force) {
                return std::find(unknowns.begin(), unknowns.end(), force.symbol) !=
                           unknowns.end() ||
                       !turnsAbout(sheet, force, centre);
            });
        if (!only) {
            continue;
        }
        Equation equation = momentsAbout(sheet, whole, centre, joint);
        if (!unknownsOf(equation).empty() &&
            (!best || equation.terms.size() < best->terms.size())) {
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
    step.remarks.push_back(
        remarkThat(phrase::kTakenApart, {{"joint", hinged.hinge}, {"joints", hinged.part}}));
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
    step.remarks.push_back(remarkThat(phrase::kPartAndWhole, {{"unknowns", unknowns}}));
    for (const Equation& equation : equations) {
        noteUses(sheet, bodyOf(sheet, equation.body), equation, step);
    }
    if (!solvePairOf(sheet, step, unknowns)) {
        return false;
    }
    writeApart(sheet, hinged);
    noteFound(sheet, step);
    sheet.steps.push_back(step);
    return true;
}

} // namespace

// Up to three unknowns in the moments of each hinged part about its hinge; more would be of no use.
// While these are open, the others need not be checked (M. W. Moskewicz et al., Chaff, Proc. 38th
// Design Automation Conference, 2001, watch two literals of a clause in this way).
struct HingeLooks {
    std::vector<std::optional<std::vector<Symbol>>> unknowns; // for each part, once it was examined
};

namespace {

const std::vector<Symbol>& unknownsAbout(const Sheet& sheet, const HingedPart& hinged,
                                         std::optional<std::vector<Symbol>>& look) {
    const auto isOpen = [&](const Symbol& symbol) { return !valueOf(sheet, symbol); };
    if (look && std::all_of(look->begin(), look->end(), isOpen)) {
        return *look;
    }
    look.emplace();
    for (const Acting& force : bodyOf(sheet, hinged.part).unknowns) {
        if (look->size() < 3 && turnsAbout(sheet, force, positionOf(sheet, hinged.hinge))) {
            look->push_back(force.symbol);
        }
    }
    return *look;
}

} // namespace

bool writeHingedReaction(Sheet& sheet) {
    const std::vector<HingedPart>& parts = hingedParts(sheet);
    if (!sheet.hinges) {
        sheet.hinges = std::make_shared<HingeLooks>();
        sheet.hinges->unknowns.resize(parts.size());
    }
    auto& looks = sheet.hinges->unknowns;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (unknownsAbout(sheet, parts[i], looks[i]).size() == 1) {
            const Body body = bodyOf(sheet, parts[i].part);
            writeOne(sheet, parts[i], aboutHinge(sheet, body, parts[i].hinge));
            return true;
        }
    }
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::vector<Symbol>& unknowns = unknownsAbout(sheet, parts[i], looks[i]);
        const auto whole = unknowns.size() == 2 ? wholeWith(sheet, unknowns) : std::nullopt;
        if (!whole) {
            continue;
        }
        const Body body = bodyOf(sheet, parts[i].part);
        if (writePair(sheet, parts[i], {*whole, aboutHinge(sheet, body, parts[i].hinge)},
                      unknowns)) {
            return true;
        }
    }
    return false;
}

} // namespace gusset
