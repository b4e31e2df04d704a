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

// That the truss is symmetric stays if a step that relies on it stays.
void keepSymmetry(const Working& working, std::vector<bool>& keep) {
    std::size_t said = keep.size();
    for (std::size_t i = 0; i < keep.size(); ++i) {
        if (working.steps[i].kind == StepKind::Symmetry) {
            said = std::min(said, i);
            keep[said] = keep[said] || keep[i];
        }
    }
}

const Remark* assumedIn(const Working& working) {
    for (const Step& step : working.steps) {
        for (const Remark& remark : step.remarks) {
            if (remark.kind == RemarkKind::AssumedAway ||
                remark.kind == RemarkKind::AssumedGuessed) {
                return &remark;
            }
        }
    }
    return nullptr;
}

// Whether it draws forces of members that are unknown: a part between hinges has only reactions.
bool drawsUnknowns(const Step& step) {
    const bool apart = step.kind == StepKind::SectionIntro && step.joint.valid();
    return (isIntro(step.kind) && !apart) || step.kind == StepKind::Simultaneous;
}

// The whole says once how unknown forces are drawn, and the chain may be without that step.
void sayHowDrawn(const Working& working, Working& chain) {
    const Remark* assumed = assumedIn(working);
    const auto first = std::find_if(chain.steps.begin(), chain.steps.end(), drawsUnknowns);
    if (assumed && !assumedIn(chain) && first != chain.steps.end()) {
        first->remarks.push_back(*assumed);
    }
}

bool saysNegative(const Step& step) {
    return std::any_of(step.remarks.begin(), step.remarks.end(), [](const Remark& remark) {
        return remark.kind == RemarkKind::NegativeForce;
    });
}

// So also what a negative force means.
void sayWhatNegativeMeans(Working& chain) {
    for (Step& step : chain.steps) {
        const auto negative =
            std::find_if(step.found.begin(), step.found.end(), [](const Found& found) {
                return found.symbol.kind == SymbolKind::MemberForce &&
                       found.value * found.drawn < 0;
            });
        if (negative != step.found.end() && !saysNegative(step)) {
            step.remarks.push_back({.kind = RemarkKind::NegativeForce, .symbol = negative->symbol});
        }
        if (negative != step.found.end()) {
            return;
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
    keepSymmetry(working, keep);
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
    sayHowDrawn(working, chain);
    sayWhatNegativeMeans(chain);
    return chain;
}

Working explain(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const Symbol& symbol) {
    return explain(truss, choice, solution, workOut(truss, choice, solution), symbol);
}

Working explain(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const Working& whole, const Symbol& symbol) {
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
