// The method of sections, where joints alone go no further: of all cuts the one whose equation
// holds one unknown, frees a joint, and is short to write.

#include "hand/cuts.hpp"
#include "hand/section_step.hpp"
#include "hand/stages.hpp"

#include <algorithm>
#include <tuple>

namespace gusset {
namespace {

// A cut with more unknowns than this is not one that a person would look at.
constexpr std::size_t kMostUnknowns = 6;

struct Section {
    Body body;
    Isolation isolation;
    bool frees = false; // a joint can be taken once the unknown is known
};

bool settlesWithout(const Body& joint, const Symbol& known) {
    std::vector<Vec2> left;
    for (const Acting& force : joint.unknowns) {
        if (!(force.symbol == known)) {
            left.push_back(force.along);
        }
    }
    return left.size() == 1 || (left.size() == 2 && !parallel(left[0], left[1]));
}

// The unknowns that free a joint once they are known.
std::vector<Symbol> freeingUnknowns(const Sheet& sheet) {
    std::vector<Symbol> freeing;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const Body joint = bodyOf(sheet, {{static_cast<int>(i)}});
        for (const Acting& force : joint.unknowns) {
            if (joint.unknowns.size() <= 3 && settlesWithout(joint, force.symbol)) {
                freeing.push_back(force.symbol);
            }
        }
    }
    return freeing;
}

// Smaller is better.
auto score(const Section& section) {
    return std::tuple(!section.frees, difficulty(section.isolation),
                      section.body.unknowns.size() > 3, section.isolation.equation.terms.size(),
                      section.body.unknowns.size(), section.body.joints.size(),
                      section.body.joints);
}

void considerPart(const Sheet& sheet, const Part& part, const std::vector<Symbol>& freeing,
                  std::optional<Section>& best) {
    const Body body = bodyOf(sheet, part);
    if (part.size() < 2 || body.unknowns.empty() || body.unknowns.size() > kMostUnknowns) {
        return;
    }
    for (const Acting& force : body.unknowns) {
        const bool frees = std::find(freeing.begin(), freeing.end(), force.symbol) != freeing.end();
        if (best && best->frees && !frees) {
            continue;
        }
        auto isolation = isolate(sheet, body, force.symbol);
        if (!isolation) {
            continue;
        }
        Section section{body, std::move(*isolation), frees};
        if (!best || score(section) < score(*best)) {
            best = std::move(section);
        }
    }
}

std::optional<Section> chooseSection(const Sheet& sheet) {
    const auto freeing = freeingUnknowns(sheet);
    std::optional<Section> best;
    for (const Part& part : straightParts(sheet)) {
        considerPart(sheet, part, freeing, best);
    }
    if (!best || !best->frees) {
        for (const Part& part : bentParts(sheet)) {
            considerPart(sheet, part, freeing, best);
        }
    }
    return best;
}

} // namespace

bool writeSection(Sheet& sheet) {
    auto section = chooseSection(sheet);
    if (!section) {
        return false;
    }
    const bool sameCut = section->body.joints == sheet.lastCut &&
                         sheet.steps.back().kind == StepKind::SectionEquation;
    if (!sameCut) {
        writeCut(sheet, section->body, {{.kind = RemarkKind::NoEasyJoint}});
    }
    sheet.lastCut = section->body.joints;
    writeSectionEquation(sheet, section->body, section->isolation);
    return true;
}

} // namespace gusset
