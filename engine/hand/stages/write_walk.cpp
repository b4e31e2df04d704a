#include "hand/stages/write_walk.hpp"

#include "hand/paper/equation_system.hpp"
#include "phrases/working/letters.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

bool hasLetters(const LinearForm& form) { return form.letters != std::array<double, 2>{}; }

class WalkWriter {
public:
    WalkWriter(Sheet& sheet, const LetterWalk& walk)
        : sheet_(sheet), walk_(walk), sums_(openSums(sheet)), walked_(walked(sums_, walk)),
          written_(sums_.unknowns.size()), values_(sums_.unknowns.size()) {
        step_.kind = StepKind::Simultaneous;
        step_.body = walk.joints;
        work();
    }

    void write() {
        begin();
        for (const WalkedJoint& joint : walked_.joints) {
            writeJoint(joint);
        }
        writeLetters();
        writeRest();
        noteFound(sheet_, step_);
        sheet_.last = walk_.joints.back();
        sheet_.steps.push_back(std::move(step_));
    }

private:
    [[nodiscard]] const Symbol& letterForce(std::size_t i) const { return walk_.letters[i]; }
    [[nodiscard]] std::size_t numberOf(const Symbol& symbol) const {
        const auto at = std::find(sums_.unknowns.begin(), sums_.unknowns.end(), symbol);
        return static_cast<std::size_t>(at - sums_.unknowns.begin());
    }
    // The form of an unknown that has been written; null before.
    [[nodiscard]] const LinearForm* formOf(const Symbol& symbol) const {
        const std::size_t number = numberOf(symbol);
        return number < written_.size() && written_[number] ? &*walked_.forms[number] : nullptr;
    }
    // What the unknowns will turn out to be, as they are drawn: from all equations of the walk at
    // once, which loses fewer figures than going from joint to joint.
    void work() {
        std::vector<Equation> equations;
        std::vector<Symbol> unknowns = walk_.letters;
        for (const WalkedJoint& joint : walked_.joints) {
            const Body body = bodyOf(sheet_, {joint.joint});
            for (const std::vector<EquationKind>* sums : {&joint.by, &joint.spare}) {
                for (const EquationKind axis : *sums) {
                    equations.push_back(sumOf(sheet_, body, axis));
                }
            }
            for (const std::size_t number : joint.gives) {
                unknowns.push_back(sums_.unknowns[number]);
            }
        }
        const auto values = EquationSystem(equations, unknowns).solution();
        for (std::size_t i = 0; i < unknowns.size(); ++i) {
            const std::size_t number = numberOf(unknowns[i]);
            values_[number] = values ? (*values)[i] : valueIn(*walked_.forms[number]);
            if (i < walk_.letters.size()) {
                walked_.letters[i] = values_[number];
            }
        }
    }
    [[nodiscard]] double valueIn(const LinearForm& form) const {
        return form.constant + form.letters[0] * walked_.letters[0] +
               form.letters[1] * walked_.letters[1];
    }
    [[nodiscard]] std::vector<Term> terms(const LinearForm& form) const {
        return termsOf(form, walked_.letters);
    }
    void say(Remark remark) { step_.solving.emplace_back(std::move(remark)); }
    void writeNumbers(std::vector<Term> left, std::vector<Term> right) {
        step_.solving.emplace_back(NumberLine{{}, std::move(left), std::move(right)});
    }
    [[nodiscard]] Term unknownTerm(const Symbol& symbol, double value) const {
        return {1, {{.kind = FactorKind::Unknown, .value = value, .symbol = symbol}}};
    }
    [[nodiscard]] static LinearForm letterAlone(std::size_t i) {
        LinearForm form;
        form.letters[i] = 1;
        return form;
    }

    void begin() {
        step_.remarks.push_back(remarkThat(phrase::kNoEasyJoint));
        step_.remarks.push_back(remarkThat(phrase::kNoEasySection));
        step_.remarks.push_back(walk_.letters.size() == 1
                                    ? remarkThat(phrase::kCallOne, {{"force", letterForce(0)}})
                                    : remarkThat(phrase::kCallTwo, {{"first", letterForce(0)},
                                                                    {"second", letterForce(1)}}));
        noteAssumed(sheet_, step_);
        for (std::size_t i = 0; i < walk_.letters.size(); ++i) {
            written_[numberOf(letterForce(i))] = true;
            writeNumbers(terms(letterAlone(i)), {unknownTerm(letterForce(i), walked_.letters[i])});
        }
    }

    // A term whose unknown is written with letters, with that put in; none if it is zero.
    [[nodiscard]] std::vector<Term> put(const Term& term) const {
        const auto unknown =
            std::find_if(term.factors.begin(), term.factors.end(),
                         [](const Factor& factor) { return factor.kind == FactorKind::Unknown; });
        const LinearForm* form = unknown == term.factors.end() ? nullptr : formOf(unknown->symbol);
        if (!form) {
            return {term};
        }
        std::vector<Term> parts = terms(*form);
        if (parts.empty()) {
            return {};
        }
        Term written{term.sign, {}};
        if (parts.size() == 1) {
            written.sign *= parts.front().sign;
            written.factors = std::move(parts.front().factors);
        } else {
            written.factors.push_back({.kind = FactorKind::Bracket, .value = valueIn(*form)});
            written.factors.back().terms = std::move(parts);
        }
        for (const Factor& factor : term.factors) {
            if (factor.kind != FactorKind::Unknown) {
                written.factors.push_back(factor);
            }
        }
        return {written};
    }

    // A sum of the joint, with letters put in where they are known, and the values of the rest.
    Equation sumAt(JointId joint, EquationKind axis) {
        const Body body = bodyOf(sheet_, {joint});
        const Equation plain = sumOf(sheet_, body, axis);
        noteUses(sheet_, body, plain, step_);
        Equation equation = plain;
        equation.about = joint;
        equation.terms.clear();
        for (const Term& term : plain.terms) {
            for (Term& one : put(term)) {
                equation.terms.push_back(std::move(one));
            }
        }
        for (const Symbol& symbol : unknownsOf(equation)) {
            putValue(equation, symbol, values_[numberOf(symbol)]);
        }
        return equation;
    }

    void writeJoint(const WalkedJoint& joint) {
        if (!joint.gives.empty()) {
            std::vector<Symbol> symbols;
            for (const std::size_t number : joint.gives) {
                symbols.push_back(sums_.unknowns[number]);
            }
            say(remarkThat(phrase::kWalkJoint, {{"joint", joint.joint}, {"unknowns", symbols}}));
        }
        if (joint.gives.size() == 2) {
            writeTwo(joint);
        } else if (joint.gives.size() == 1) {
            step_.solving.emplace_back(sumAt(joint.joint, joint.by.front()));
            writeForm(joint.gives.front());
        }
        for (const EquationKind axis : joint.spare) {
            writeSpare(joint.joint, axis);
        }
        for (const std::vector<EquationKind>* sums : {&joint.by, &joint.spare}) {
            for (const EquationKind axis : *sums) {
                markUsed(sheet_, joint.joint, axis == EquationKind::SumX ? Vec2{1, 0} : Vec2{0, 1});
            }
        }
    }

    // Both sums of a joint, one unknown after the other if that is possible.
    void writeTwo(const WalkedJoint& joint) {
        std::vector<Equation> sums{sumAt(joint.joint, joint.by[0]),
                                   sumAt(joint.joint, joint.by[1])};
        for (const std::size_t i : {0u, 1u}) {
            const auto alone = unknownsOf(sums[i]);
            if (alone.size() == 1) {
                const std::size_t number = numberOf(alone.front());
                step_.solving.emplace_back(std::move(sums[i]));
                writeForm(number);
                step_.solving.emplace_back(sumAt(joint.joint, joint.by[1 - i]));
                writeForm(number == joint.gives[0] ? joint.gives[1] : joint.gives[0]);
                return;
            }
        }
        PairOfEquations pair{{sums_.unknowns[joint.gives[0]], sums_.unknowns[joint.gives[1]]},
                             {},
                             {},
                             walked_.letters};
        for (const std::size_t i : {0u, 1u}) {
            for (const std::size_t k : {0u, 1u}) {
                pair.factors[i][k] = coefficientOf(sums[i], pair.unknowns[k]);
            }
            pair.right[i] = -1 * restOf(joint.joint, joint.by[i]);
            step_.solving.emplace_back(std::move(sums[i]));
        }
        const auto take = [&](const Symbol& symbol, const LinearForm&) {
            const std::size_t number = numberOf(symbol);
            writeForm(number);
            return *walked_.forms[number];
        };
        const bool solved = solvePair(pair, step_.solving, take);
        static_cast<void>(solved); // the walk has made sure of it
        for (const Symbol& symbol : pair.unknowns) {
            putInLines(step_.solving, symbol, values_[numberOf(symbol)]);
        }
    }

    // Everything in a sum but what is not written yet.
    [[nodiscard]] LinearForm restOf(JointId joint, EquationKind axis) const {
        const Body body = bodyOf(sheet_, {joint});
        const Equation sum = sumOf(sheet_, body, axis);
        LinearForm rest{constantOf(sum), {}};
        double largest = std::fabs(rest.constant);
        for (const Symbol& symbol : unknownsOf(sum)) {
            if (const LinearForm* form = formOf(symbol)) {
                const LinearForm part = coefficientOf(sum, symbol) * *form;
                rest = rest + part;
                largest = std::max({largest, std::fabs(part.constant), std::fabs(part.letters[0]),
                                    std::fabs(part.letters[1])});
            }
        }
        return cleaned(rest, largest);
    }

    // The unknown with its letters; a force that holds none is found at once.
    void writeForm(std::size_t number) {
        const LinearForm& form = *walked_.forms[number];
        const Symbol& symbol = sums_.unknowns[number];
        written_[number] = true;
        if (hasLetters(form)) {
            writeNumbers({unknownTerm(symbol, values_[number])}, terms(form));
        } else {
            find(number, {});
        }
    }

    void find(std::size_t number, std::vector<Term> by) {
        const Symbol& symbol = sums_.unknowns[number];
        step_.found.push_back(record(sheet_, symbol, drawnSense(sheet_, symbol) * values_[number]));
        step_.solving.emplace_back(FoundHere{step_.found.size() - 1, std::move(by)});
    }

    // A sum that holds nothing but letters.
    void writeSpare(JointId joint, EquationKind axis) {
        const LinearForm rest = restOf(joint, axis);
        spare_.push_back(rest);
        say(remarkThat(phrase::kWalkSpare, {{"joint", joint}}));
        step_.solving.emplace_back(sumAt(joint, axis));
        writeNumbers(terms({0, rest.letters}), terms({-rest.constant, {}}));
    }

    // The letters, from the sums to spare.
    void writeLetters() {
        if (walk_.letters.size() == 1) {
            say(remarkThat(phrase::kWalkX, {{"force", letterForce(0)}}));
            find(numberOf(letterForce(0)), {});
            return;
        }
        PairOfEquations pair{{letter(0), letter(1)}, {}, {}, walked_.letters};
        for (const std::size_t i : {0u, 1u}) {
            pair.factors[i] = spare_[i].letters;
            pair.right[i].constant = -spare_[i].constant;
        }
        const auto take = [&](const Symbol& symbol, const LinearForm& value) {
            find(numberOf(letterForce(static_cast<std::size_t>(symbol.index))), {});
            return value;
        };
        const bool solved = solvePair(pair, step_.solving, take);
        static_cast<void>(solved);
        for (const std::size_t i : {0u, 1u}) {
            putInLines(step_.solving, letter(i), walked_.letters[i]);
        }
    }

    [[nodiscard]] static Symbol letter(std::size_t i) {
        return {.kind = SymbolKind::Letter, .index = static_cast<int>(i)};
    }

    // All forces that are written with letters.
    void writeRest() {
        say(walk_.letters.size() == 1 ? remarkThat(phrase::kWalkRestX)
                                      : remarkThat(phrase::kWalkRestBoth));
        for (const WalkedJoint& joint : walked_.joints) {
            for (const std::size_t number : joint.gives) {
                if (hasLetters(*walked_.forms[number])) {
                    find(number, terms(*walked_.forms[number]));
                }
            }
        }
    }

    Sheet& sheet_;
    const LetterWalk& walk_;
    OpenSums sums_;
    WalkedForms walked_;
    std::vector<bool> written_;  // for each unknown: it stands on paper, with letters or found
    std::vector<double> values_; // of each unknown that the walk gives
    std::vector<LinearForm> spare_;
    Step step_{};
};

} // namespace

void writeWalk(Sheet& sheet, const LetterWalk& walk) { WalkWriter(sheet, walk).write(); }

} // namespace gusset
