#include "hand/stages/explain.hpp"

#include "hand/paper/shape.hpp"
#include "hand/stages/sections.hpp"
#include "hand/stages/work_out.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <utility>

namespace gusset {
namespace {

// The forces and reactions that are needed, looked up for every step of a working.
class Needed {
public:
    void add(const std::vector<Symbol>& symbols) {
        for (const Symbol& symbol : symbols) {
            std::vector<bool>& flags = flagsOf(symbol);
            flags.resize(std::max(flags.size(), placeOf(symbol) + 1));
            flags[placeOf(symbol)] = true;
        }
    }
    [[nodiscard]] bool contains(const Symbol& symbol) {
        const std::vector<bool>& flags = flagsOf(symbol);
        return placeOf(symbol) < flags.size() && flags[placeOf(symbol)];
    }

private:
    static std::size_t placeOf(const Symbol& symbol) {
        return symbol.kind == SymbolKind::Reaction ? symbol.restraint.at() : symbol.member.at();
    }
    std::vector<bool>& flagsOf(const Symbol& symbol) {
        return symbol.kind == SymbolKind::Reaction ? reactions_ : members_;
    }

    std::vector<bool> members_;
    std::vector<bool> reactions_;
};

bool isIntro(StepKind kind) {
    return kind == StepKind::JointIntro || kind == StepKind::SectionIntro;
}

bool givesReaction(const Step& step) {
    return std::any_of(step.found.begin(), step.found.end(), [](const Found& found) {
        return found.symbol.kind == SymbolKind::Reaction;
    });
}

// From the last step to the first: if a step finds something needed, whatever it uses is needed
// too.
std::vector<bool> stepsThatFind(const Working& working, const std::vector<Symbol>& symbols) {
    Needed needed;
    needed.add(symbols);
    std::vector<bool> keep(working.steps.size());
    for (std::size_t i = working.steps.size(); i-- > 0;) {
        const Step& step = working.steps[i];
        if (step.kind == StepKind::Summary || step.kind == StepKind::ClosingSums) {
            continue;
        }
        keep[i] = std::any_of(step.found.begin(), step.found.end(),
                              [&](const Found& found) { return needed.contains(found.symbol); });
        if (keep[i]) {
            needed.add(step.uses);
        }
    }
    return keep;
}

// The introduction of a joint or a cut is kept if a step after it is kept.
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

// The symmetry step is kept if a step that uses it is kept.
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
            if (says(remark, phrase::kAssumedAway) || says(remark, phrase::kAssumedGuessed)) {
                return &remark;
            }
        }
    }
    return nullptr;
}

// Whether it draws unknown member forces: a part between hinges has only reactions.
bool drawsUnknowns(const Step& step) {
    const bool apart = step.kind == StepKind::SectionIntro && step.joint.valid();
    return (isIntro(step.kind) && !apart) || step.kind == StepKind::Simultaneous;
}

// The whole working says once how unknown forces are drawn; the chain may lack that step.
void sayHowDrawn(const Working& working, Working& chain) {
    const Remark* assumed = assumedIn(working);
    const auto first = std::find_if(chain.steps.begin(), chain.steps.end(), drawsUnknowns);
    if (assumed && !assumedIn(chain) && first != chain.steps.end()) {
        first->remarks.push_back(*assumed);
    }
}

bool saysNegative(const Step& step) {
    return std::any_of(step.remarks.begin(), step.remarks.end(),
                       [](const Remark& remark) { return says(remark, phrase::kNegativeForce); });
}

// Likewise for the meaning of a negative force.
void sayWhatNegativeMeans(Working& chain) {
    for (Step& step : chain.steps) {
        const auto negative =
            std::find_if(step.found.begin(), step.found.end(), [](const Found& found) {
                return found.symbol.kind == SymbolKind::MemberForce &&
                       found.value * found.drawn < 0;
            });
        if (negative != step.found.end() && !saysNegative(step)) {
            step.remarks.push_back(thatNegative(negative->symbol));
        }
        if (negative != step.found.end()) {
            return;
        }
    }
}

void noteAngle(const Symbol& symbol, std::vector<bool>& used) {
    if (symbol.kind == SymbolKind::Angle) {
        const auto index = static_cast<std::size_t>(symbol.index);
        used.resize(std::max(used.size(), index + 1));
        used[index] = true;
    }
}

void noteAngles(const std::vector<Term>& terms, std::vector<bool>& used) {
    for (const Term& term : terms) {
        for (const Factor& factor : term.factors) {
            noteAngle(factor.symbol, used);
            noteAngles(factor.terms, used);
        }
    }
}

// By index.
std::vector<bool> anglesIn(const Working& working, const std::vector<bool>& keep,
                           std::size_t count) {
    std::vector<bool> used(count);
    for (std::size_t i = 0; i < keep.size(); ++i) {
        if (!keep[i]) {
            continue;
        }
        for (const Equation& equation : working.steps[i].equations) {
            noteAngles(equation.terms, used);
        }
        for (const SolvingLine& line : working.steps[i].solving) {
            if (const auto* equation = std::get_if<Equation>(&line)) {
                noteAngles(equation->terms, used);
            }
        }
        for (const Remark& remark : working.steps[i].remarks) {
            for (const RemarkPart& part : remark.parts) {
                if (const auto* turned = std::get_if<TurnedAngle>(&part.value)) {
                    noteAngle(turned->first, used);
                    noteAngle(turned->second, used);
                }
            }
        }
    }
    return used;
}

// Keeps only the slopes that occur.
void keepAngles(const Working& working, const std::vector<bool>& keep, Step& geometry) {
    std::size_t count = 0;
    for (const AngleLine& line : geometry.angles) {
        count = std::max(count, static_cast<std::size_t>(line.angle.index) + 1);
    }
    const std::vector<bool> used = anglesIn(working, keep, count);
    std::erase_if(geometry.angles, [&](const AngleLine& line) {
        return !used[static_cast<std::size_t>(line.angle.index)];
    });
    geometry.members.clear();
    for (const AngleLine& line : geometry.angles) {
        geometry.members.insert(geometry.members.end(), line.members.begin(), line.members.end());
    }
}

std::size_t lengthOf(const Working& working) {
    std::size_t count = 0;
    for (const Step& step : working.steps) {
        const auto sums = static_cast<std::size_t>(
            std::count_if(step.solving.begin(), step.solving.end(), [](const SolvingLine& line) {
                return std::holds_alternative<Equation>(line);
            }));
        count += std::max(step.equations.size() + sums, step.found.size());
    }
    return count;
}

} // namespace

Working stepsFor(const Working& working, const std::vector<Symbol>& symbols) {
    Working chain;
    chain.complete = working.complete;
    chain.structure = working.structure;
    chain.loads = working.loads;
    chain.counting = working.counting;
    chain.exact = working.exact;
    std::vector<bool> keep = stepsThatFind(working, symbols);
    keepIntros(working, keep);
    keepSymmetry(working, keep);
    bool reactions = false;
    for (std::size_t i = 0; i < keep.size(); ++i) {
        reactions = reactions || (keep[i] && givesReaction(working.steps[i]));
    }
    for (std::size_t i = 0; i < keep.size(); ++i) {
        const Step& step = working.steps[i];
        if (step.kind == StepKind::Geometry) {
            Step geometry = step;
            keepAngles(working, keep, geometry);
            keep[i] = !geometry.angles.empty();
            if (keep[i]) {
                chain.steps.push_back(std::move(geometry));
            }
        } else if (keep[i] || (step.kind == StepKind::WholeBody && reactions)) {
            chain.steps.push_back(step);
        }
    }
    sayHowDrawn(working, chain);
    sayWhatNegativeMeans(chain);
    return chain;
}

Working explain(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const Symbol& symbol) {
    const auto shape = std::make_shared<Shape>();
    WorkingTask task(truss, choice, solution, shape);
    return explain(truss, choice, solution, runToEnd(task).take(), symbol, shape);
}

Working explain(const Truss& truss, const LoadChoice& choice, const Solution& solution,
                const Working& whole, const Symbol& symbol, std::shared_ptr<Shape> shape) {
    const Working byJoints = stepsFor(whole, {symbol});
    if (byJoints.steps.empty()) {
        return whole; // says why there is no more
    }
    if (symbol.kind != SymbolKind::MemberForce) {
        return byJoints;
    }
    const Working bySection = workSection(truss, choice, solution, symbol.member, std::move(shape));
    const bool shorter = bySection.complete && lengthOf(bySection) < lengthOf(byJoints);
    return shorter ? bySection : byJoints;
}

} // namespace gusset
