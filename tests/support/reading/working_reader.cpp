#include "support/reading/working_reader.hpp"

#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace gusset::support {

namespace {

constexpr double kClose = 1e-9; // of the largest load or reaction

// What a reader of the working knows at a step, and what the reader would object to.
struct TextReader {
    double scale = 1;
    double rounding = 0;  // of a carried value, upper bound
    bool guessed = false; // known forces are drawn as they act, without a sign
    std::map<std::pair<int, int>, double> found; // by kind and index

    static std::pair<int, int> keyOf(const Symbol& symbol) {
        return {static_cast<int>(symbol.kind),
                symbol.kind == SymbolKind::Reaction ? symbol.restraint.index : symbol.member.index};
    }

    [[nodiscard]] std::string objectionTo(const Factor& factor, const Step& step) const {
        const bool here = std::any_of(step.found.begin(), step.found.end(), [&](const Found& f) {
            return f.symbol == factor.symbol && f.drawn * f.value == factor.value;
        });
        const auto known = found.find(keyOf(factor.symbol));
        if (factor.kind == FactorKind::Known &&
            (known == found.end() || (known->second != factor.value &&
                                      !(guessed && std::fabs(known->second) == factor.value)))) {
            return "uses a value before it was found";
        }
        if (factor.kind == FactorKind::Unknown && (known != found.end() || !here)) {
            return "an unknown is not what this step finds";
        }
        return {};
    }

    [[nodiscard]] double sizeOf(const Equation& equation) const {
        double size = scale;
        for (const Term& term : equation.terms) {
            size = std::max(size, std::fabs(valueOf(term)));
        }
        return size;
    }

    // The residual that the rounding of the unknowns of a sum may cause.
    [[nodiscard]] double slack(const std::vector<Term>& terms) const {
        double sum = 0;
        for (const Term& term : terms) {
            double product = 1;
            double inside = 0;
            for (const Factor& factor : term.factors) {
                const bool unknown = factor.kind == FactorKind::Unknown;
                inside += unknown ? rounding : slack(factor.terms);
                product *= unknown || !factor.terms.empty() ? 1 : std::fabs(factor.value);
            }
            sum += product * inside;
        }
        return sum;
    }

    static double sumOf(const std::vector<Term>& terms) {
        double sum = 0;
        for (const Term& term : terms) {
            sum += valueOf(term);
        }
        return sum;
    }

    // Brackets hold what they are worth.
    static bool bracketsHold(const std::vector<Term>& terms) {
        for (const Term& term : terms) {
            for (const Factor& factor : term.factors) {
                if (factor.kind == FactorKind::Bracket &&
                    (!bracketsHold(factor.terms) ||
                     std::fabs(sumOf(factor.terms) - factor.value) >
                         kClose * std::max(1.0, std::fabs(factor.value)))) {
                    return false;
                }
            }
        }
        return true;
    }

    [[nodiscard]] bool agree(const std::vector<Term>& left, const std::vector<Term>& right) const {
        double size = scale;
        for (const std::vector<Term>* side : {&left, &right}) {
            for (const Term& term : *side) {
                size = std::max(size, std::fabs(valueOf(term)));
            }
        }
        return bracketsHold(left) && bracketsHold(right) &&
               std::fabs(sumOf(left) - sumOf(right)) <= kClose * size + slack(left) + slack(right);
    }

    [[nodiscard]] std::string objectionToSolving(const Step& step) const {
        std::vector<bool> told(step.found.size());
        for (const SolvingLine& line : step.solving) {
            if (const auto* numbers = std::get_if<NumberLine>(&line)) {
                if (!agree(numbers->left, numbers->right)) {
                    return "a line of numbers does not hold";
                }
            } else if (const auto* equation = std::get_if<Equation>(&line)) {
                if (!agree(equation->terms, {})) {
                    return "a sum with letters does not balance";
                }
            } else if (const auto* here = std::get_if<FoundHere>(&line)) {
                told[here->at] = true;
                const Found& one = step.found[here->at];
                if (!here->by.empty() && std::fabs(sumOf(here->by) - one.drawn * one.value) >
                                             kClose * scale + rounding) {
                    return "a force is not what gives it";
                }
            }
        }
        const bool all = std::all_of(told.begin(), told.end(), [](bool one) { return one; });
        return step.solving.empty() || all ? "" : "an answer is not told";
    }

    [[nodiscard]] std::string objectionTo(const Step& step) const {
        for (const Equation& equation : step.equations) {
            if (step.kind == StepKind::ClosingSums && rounding > 0) {
                continue; // off by the accumulated rounding, which it reports
            }
            if (!bracketsHold(equation.terms) ||
                std::fabs(valueOf(equation)) > kClose * sizeOf(equation) + slack(equation.terms)) {
                return "an equation does not balance";
            }
            for (const Term& term : equation.terms) {
                for (const Factor& factor : term.factors) {
                    const std::string objection = objectionTo(factor, step);
                    if (!objection.empty()) {
                        return objection;
                    }
                }
            }
        }
        return {};
    }

    void take(const Step& step) {
        for (const Found& one : step.found) {
            found[keyOf(one.symbol)] = one.value;
        }
    }
};

double scaleOf(const Truss& truss, const Solution& solution) {
    return std::max(solution.largest / toNewton(truss.units.force), 1e-300);
}

TextReader textReaderOf(const Truss& truss, const Solution& solution) {
    const ClassSettings& settings = truss.classSettings;
    TextReader reader;
    reader.scale = scaleOf(truss, solution);
    reader.guessed = settings.senses == AssumedSense::Guessed;
    if (settings.carry == CarriedValues::Rounded) {
        reader.rounding = 0.5001 * std::pow(10, -settings.digits); // of decimals
    }
    return reader;
}

double solverValue(const Solution& solution, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction ? solution.reactions[symbol.restraint.at()]
                                               : solution.forces[symbol.member.at()];
}

std::size_t unknownsIn(const Remark& remark) {
    return says(remark, phrase::kJointOneUnknown)
               ? 1
               : partOf<std::vector<Symbol>>(remark, "unknowns").size();
}

std::string objectionToStep(TextReader& reader, const Step& step) {
    const bool atJoint = step.kind == StepKind::JointIntro || step.kind == StepKind::JointPair;
    if (atJoint && unknownsIn(step.remarks.front()) > 2) {
        return "a joint with more than two unknowns";
    }
    const bool single =
        step.kind == StepKind::JointEquation || step.kind == StepKind::SectionEquation;
    if (single && step.found.size() != 1) {
        return "one equation finds one unknown";
    }
    std::string text = reader.objectionTo(step);
    text = text.empty() ? reader.objectionToSolving(step) : text;
    reader.take(step);
    return text;
}

std::vector<Symbol> allSymbols(const Solution& solution) {
    std::vector<Symbol> symbols;
    for (std::size_t i = 0; i < solution.forces.size(); ++i) {
        symbols.push_back({.kind = SymbolKind::MemberForce, .member = {static_cast<int>(i)}});
    }
    for (std::size_t i = 0; i < solution.reactions.size(); ++i) {
        symbols.push_back({.kind = SymbolKind::Reaction, .restraint = {static_cast<int>(i)}});
    }
    return symbols;
}

} // namespace

std::string objectionToChain(const Truss& truss, const Working& working, const Solution& solution,
                             const std::vector<Symbol>& symbols) {
    TextReader reader = textReaderOf(truss, solution);
    for (const Step& step : working.steps) {
        const std::string text = objectionToStep(reader, step);
        if (!text.empty()) {
            return text;
        }
    }
    for (const Symbol& symbol : symbols) {
        const auto found = reader.found.find(TextReader::keyOf(symbol));
        const double value = solverValue(solution, symbol) / toNewton(truss.units.force);
        const bool far = reader.rounding == 0 && found != reader.found.end() &&
                         std::fabs(found->second - value) > kClose * reader.scale;
        if (found == reader.found.end() || far) {
            return "a force or reaction is missing or not the solver's";
        }
    }
    return {};
}

std::string objectionTo(const Truss& truss, const Working& working, const Solution& solution) {
    const std::string text = objectionToChain(truss, working, solution, allSymbols(solution));
    return !text.empty() || working.complete ? text : "the working is not complete";
}

std::string objectionToWorkingOf(const Truss& truss) {
    const Solution solution = solve(truss);
    if (!solution.solved) {
        return "the truss is not solved";
    }
    return objectionTo(truss, workOut(truss, {}, solution), solution);
}

int countSteps(const Working& working, StepKind kind) {
    return static_cast<int>(std::count_if(working.steps.begin(), working.steps.end(),
                                          [&](const Step& step) { return step.kind == kind; }));
}

} // namespace gusset::support
