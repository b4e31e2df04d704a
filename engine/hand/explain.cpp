#include "hand/explain.hpp"

#include "hand/sections.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool contains(const std::vector<Symbol>& symbols, const Symbol& symbol) {
    return std::find(symbols.begin(), symbols.end(), symbol) != symbols.end();
}

bool isIntro(StepKind kind) {
    return kind == StepKind::JointIntro || kind == StepKind::SectionIntro;
}

bool givesReaction(const Step& step) {
    return std::any_of(step.found.begin(), step.found.end(), [](const Found& found) {
        return found.symbol.kind == SymbolKind::Reaction;
    });
}

// From the end to the beginning: a step that finds what is needed makes needed what it rests on.
std::vector<bool> stepsThatFind(const Working& working, std::vector<Symbol> needed) {
    std::vector<bool> keep(working.steps.size());
    for (std::size_t i = working.steps.size(); i-- > 0;) {
        const Step& step = working.steps[i];
        if (step.kind == StepKind::Summary || step.kind == StepKind::Check) {
            continue;
        }
        keep[i] = std::any_of(step.found.begin(), step.found.end(),
                              [&](const Found& found) { return contains(needed, found.symbol); });
        if (keep[i]) {
            needed.insert(needed.end(), step.uses.begin(), step.uses.end());
        }
    }
    return keep;
}

// The introduction of a joint or a cut stays if a step that follows it stays.
void keepIntros(const Working& working, std::vector<bool>& keep) {
    for (std::size_t i = 0; i < keep.size(); ++i) {
        for (std::size_t k = i + 1; isIntro(working.steps[i].kind) && k < keep.size(); ++k) {
            if (working.steps[k].body != working.steps[i].body) {
                break;
            }
            keep[i] = keep[i] || keep[k];
        }
    }
}

bool usesAngle(const Working& working, const std::vector<bool>& keep, const Symbol& angle) {
    for (std::size_t i = 0; i < keep.size(); ++i) {
        for (const Equation& equation : working.steps[i].equations) {
            for (const Term& term : equation.terms) {
                for (const Factor& factor : term.factors) {
                    if (keep[i] && factor.symbol == angle) {
                        return true;
                    }
                }
            }
        }
    }
    return false;
}

// Of the slopes only those that occur.
void keepAngles(const Working& working, const std::vector<bool>& keep, Step& geometry) {
    std::erase_if(geometry.angles,
                  [&](const AngleLine& line) { return !usesAngle(working, keep, line.angle); });
    geometry.members.clear();
    for (const AngleLine& line : geometry.angles) {
        geometry.members.insert(geometry.members.end(), line.members.begin(), line.members.end());
    }
}

std::size_t lengthOf(const Working& working) {
    std::size_t count = 0;
    for (const Step& step : working.steps) {
        count += std::max(step.equations.size(), step.found.size());
    }
    return count;
}

} // namespace

Working stepsFor(const Working& working, const std::vector<Symbol>& symbols) {
    Working chain = working;
    chain.steps.clear();
    std::vector<bool> keep = stepsThatFind(working, symbols);
    keepIntros(working, keep);
    bool reactions = false;
    for (std::size_t i = 0; i < keep.size(); ++i) {
        reactions = reactions || (keep[i] && givesReaction(working.steps[i]));
    }
    for (std::size_t i = 0; i < keep.size(); ++i) {
        Step step = working.steps[i];
        if (step.kind == StepKind::Geometry) {
            keepAngles(working, keep, step);
            keep[i] = !step.angles.empty();
        }
        if (keep[i] || (step.kind == StepKind::WholeBody && reactions)) {
            chain.steps.push_back(std::move(step));
        }
    }
    return chain;
}

Working explain(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const Symbol& symbol) {
    const Working whole = workOut(truss, choice, solution);
    const Working byJoints = stepsFor(whole, {symbol});
    if (byJoints.steps.empty()) {
        return whole; // which says why there is no more
    }
    if (symbol.kind != SymbolKind::MemberForce) {
        return byJoints;
    }
    const Working bySection = workSection(truss, choice, solution, symbol.member);
    const bool shorter = bySection.complete && lengthOf(bySection) < lengthOf(byJoints);
    return shorter ? bySection : byJoints;
}

} // namespace gusset
