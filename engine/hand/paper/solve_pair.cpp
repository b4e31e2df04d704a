#include "hand/paper/solve_pair.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/together.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace gusset {
namespace {

bool isOne(double factor) { return std::fabs(std::fabs(factor) - 1) <= kSameNumber; }

Factor letterFactor(std::size_t index, double value) {
    return {.kind = FactorKind::Letter,
            .value = value,
            .symbol = {.kind = SymbolKind::Letter, .index = static_cast<int>(index)}};
}

// 0.6 F_AB, or F_AB.
Term unknownTerm(double factor, const Symbol& symbol) {
    Term term = coefficientTerm(factor);
    term.factors.push_back({.kind = FactorKind::Unknown, .symbol = symbol});
    return term;
}

// Whole numbers in the ratio of two factors; one of them 1 and the other their ratio, if there are
// no small ones.
std::array<double, 2> multipliersFor(double first, double second) {
    constexpr int kLargest = 12; // a person would rather divide than multiply by more
    const double ratio = std::fabs(first / second);
    for (int n = 1; n <= kLargest; ++n) {
        const double other = std::round(n * ratio);
        if (other >= 1 && other <= kLargest &&
            std::fabs(n * ratio - other) <= kSameNumber * other) {
            return {static_cast<double>(n), other};
        }
    }
    return {1, ratio};
}

bool areWhole(const std::array<double, 2>& multipliers) {
    return multipliers[0] == std::round(multipliers[0]) &&
           multipliers[1] == std::round(multipliers[1]);
}

class PairSolver {
public:
    PairSolver(const PairOfEquations& pair, std::vector<SolvingLine>& lines, const TakeAnswer& take)
        : pair_(pair), lines_(lines), take_(take) {}

    void solve() {
        say(remarkThat(phrase::kPairInNumbers));
        for (const std::size_t i : {0u, 1u}) {
            write({{1, numberOf(i)}}, leftOf(i), rightOf(pair_.right[i]));
        }
        for (const std::size_t i : {0u, 1u}) {
            for (const std::size_t k : {0u, 1u}) {
                if (pair_.factors[i][1 - k] == 0) {
                    startWith(i, k);
                    return;
                }
            }
        }
        if (const auto even = equationOfEquals()) {
            const bool equal = (pair_.factors[*even][0] < 0) != (pair_.factors[*even][1] < 0);
            say(remarkThat(equal ? phrase::kPairEqual : phrase::kPairOpposite,
                           {{"number", numberOf(*even)}, {"second", numberOf(1 - *even)}}));
            substitute(*even, 0);
        } else if (const auto alone = standsAlone()) {
            const auto [i, k] = *alone;
            say(remarkThat(phrase::kPairSubstitute, {{"unknown", pair_.unknowns[k]},
                                                     {"number", numberOf(i)},
                                                     {"second", numberOf(1 - i)}}));
            substitute(i, k);
        } else {
            eliminate();
        }
    }

private:
    static int numberOf(std::size_t equation) { return static_cast<int>(equation) + 1; }
    void say(Remark remark) { lines_.emplace_back(std::move(remark)); }
    void write(std::vector<Multiple> of, std::vector<Term> left, std::vector<Term> right) {
        lines_.emplace_back(NumberLine{std::move(of), std::move(left), std::move(right)});
    }
    [[nodiscard]] std::vector<Term> rightOf(const LinearForm& form) const {
        return termsOf(form, pair_.letters);
    }
    [[nodiscard]] std::vector<Term> leftOf(std::size_t i) const {
        std::vector<Term> terms;
        for (const std::size_t k : {0u, 1u}) {
            if (pair_.factors[i][k] != 0) {
                terms.push_back(unknownTerm(pair_.factors[i][k], pair_.unknowns[k]));
            }
        }
        return terms;
    }

    // An equation and an unknown in it with the factor 1 or −1.
    [[nodiscard]] std::optional<std::pair<std::size_t, std::size_t>> standsAlone() const {
        for (const std::size_t i : {0u, 1u}) {
            for (const std::size_t k : {0u, 1u}) {
                if (isOne(pair_.factors[i][k]) && !isOne(pair_.factors[1 - i][k])) {
                    return std::pair{i, k};
                }
            }
        }
        return std::nullopt;
    }

    // An equation that says that the two are equal, or equal and opposite.
    [[nodiscard]] std::optional<std::size_t> equationOfEquals() const {
        for (const std::size_t i : {0u, 1u}) {
            const auto& [one, other] = pair_.factors[i];
            if (isOne(one / other) && rightOf(pair_.right[i]).empty()) {
                return i;
            }
        }
        return std::nullopt;
    }

    // An equation that holds only one of the two.
    void startWith(std::size_t i, std::size_t k) {
        say(remarkThat(phrase::kPairStart, {{"number", numberOf(i)}, {"left", pair_.unknowns[k]}}));
        const LinearForm value =
            take_(pair_.unknowns[k], (1 / pair_.factors[i][k]) * pair_.right[i]);
        putBack(1 - i, k, value);
    }

    // From equation i, unknown k by the other one, put into the other equation.
    void substitute(std::size_t i, std::size_t k) {
        const std::size_t other = 1 - k;
        const LinearForm rest = (1 / pair_.factors[i][k]) * pair_.right[i];
        const double slope = -pair_.factors[i][other] / pair_.factors[i][k];
        std::vector<Term> by = rightOf(rest);
        by.push_back(unknownTerm(slope, pair_.unknowns[other]));
        write({{1, numberOf(i)}}, {unknownTerm(1, pair_.unknowns[k])}, by);
        Term put = coefficientTerm(pair_.factors[1 - i][k]);
        put.factors.push_back({.kind = FactorKind::Bracket, .terms = by});
        write({{1, numberOf(1 - i)}},
              {put, unknownTerm(pair_.factors[1 - i][other], pair_.unknowns[other])},
              rightOf(pair_.right[1 - i]));
        const double factor = pair_.factors[1 - i][other] + pair_.factors[1 - i][k] * slope;
        const LinearForm right = sumOf(pair_.right[1 - i], -pair_.factors[1 - i][k] * rest);
        write({{1, numberOf(1 - i)}}, {unknownTerm(factor, pair_.unknowns[other])}, rightOf(right));
        const LinearForm value = take_(pair_.unknowns[other], (1 / factor) * right);
        say(remarkThat(phrase::kPairPutBack,
                       {{"unknown", pair_.unknowns[other]}, {"number", numberOf(i)}}));
        std::vector<Term> known = rightOf(rest);
        addPut(slope, value, pair_.unknowns[other], known);
        write({{1, numberOf(i)}}, {unknownTerm(1, pair_.unknowns[k])}, std::move(known));
        static_cast<void>(take_(pair_.unknowns[k], sumOf(rest, slope * value)));
    }

    [[nodiscard]] static LinearForm sumOf(const LinearForm& a, const LinearForm& b) {
        double size = std::max(std::fabs(a.constant), std::fabs(b.constant));
        for (const std::size_t letter : {0u, 1u}) {
            size = std::max({size, std::fabs(a.letters[letter]), std::fabs(b.letters[letter])});
        }
        return cleaned(a + b, size);
    }

    // One unknown gets the same factor in both equations and drops out of their sum or difference.
    void eliminate() {
        std::array<std::array<double, 2>, 2> multipliers{};
        for (const std::size_t k : {0u, 1u}) {
            multipliers[k] = multipliersFor(pair_.factors[0][k], pair_.factors[1][k]);
        }
        const auto cost = [&](std::size_t k) {
            return (areWhole(multipliers[k]) ? 0 : 100) + multipliers[k][0] + multipliers[k][1];
        };
        const std::size_t out = cost(1) < cost(0) ? 1 : 0;
        const std::size_t left = 1 - out;
        const auto [first, second] = multipliers[out];
        const bool adds = (pair_.factors[0][out] < 0) != (pair_.factors[1][out] < 0);
        sayHow(out, first == 1 && second == 1, adds);
        writeMultiplied(0, first);
        writeMultiplied(1, second);
        const double sign = adds ? 1 : -1;
        const double factor =
            first * pair_.factors[0][left] + sign * second * pair_.factors[1][left];
        const LinearForm right = sumOf(first * pair_.right[0], sign * second * pair_.right[1]);
        write({{first, 1}, {sign * second, 2}}, {unknownTerm(factor, pair_.unknowns[left])},
              rightOf(right));
        const LinearForm value = take_(pair_.unknowns[left], (1 / factor) * right);
        putBack(std::fabs(pair_.factors[0][out]) < std::fabs(pair_.factors[1][out]) ? 1 : 0, left,
                value);
    }

    void sayHow(std::size_t out, bool equal, bool adds) {
        const Symbol& symbol = pair_.unknowns[out];
        const auto& phrase =
            equal ? (adds ? phrase::kPairAdd : phrase::kPairSubtract)
                  : (adds ? phrase::kPairMultiplyAdd : phrase::kPairMultiplySubtract);
        say(remarkThat(phrase, {{"unknown", symbol}}));
    }

    void writeMultiplied(std::size_t i, double by) {
        if (by == 1) {
            return;
        }
        std::vector<Term> left;
        for (const std::size_t k : {0u, 1u}) {
            left.push_back(unknownTerm(by * pair_.factors[i][k], pair_.unknowns[k]));
        }
        write({{by, numberOf(i)}}, left, rightOf(by * pair_.right[i]));
    }

    // Puts the value of unknown k into equation i, which then gives the other one.
    void putBack(std::size_t i, std::size_t k, const LinearForm& value) {
        const std::size_t other = 1 - k;
        say(remarkThat(phrase::kPairPutBack,
                       {{"unknown", pair_.unknowns[k]}, {"number", numberOf(i)}}));
        std::vector<Term> left{unknownTerm(pair_.factors[i][other], pair_.unknowns[other])};
        const LinearForm known = pair_.factors[i][k] * value;
        if (pair_.factors[i][k] != 0) {
            addPut(pair_.factors[i][k], value, pair_.unknowns[k], left);
        }
        write({{1, numberOf(i)}}, left, rightOf(pair_.right[i]));
        const LinearForm right = sumOf(pair_.right[i], -1 * known);
        static_cast<void>(take_(pair_.unknowns[other], (1 / pair_.factors[i][other]) * right));
    }

    // A number is written as what it was found as, a form in brackets.
    void addPut(double factor, const LinearForm& value, const Symbol& symbol,
                std::vector<Term>& terms) const {
        Term term{factor < 0 ? -1 : 1, {}};
        if (value.letters == std::array<double, 2>{}) {
            if (value.constant == 0) {
                return;
            }
            term.factors.push_back(
                {.kind = FactorKind::Known, .value = value.constant, .symbol = symbol});
            if (!isOne(factor)) {
                term.factors.push_back(
                    {.kind = FactorKind::Coefficient, .value = std::fabs(factor)});
            }
        } else {
            term = coefficientTerm(factor);
            term.factors.push_back({.kind = FactorKind::Bracket, .terms = rightOf(value)});
        }
        terms.push_back(std::move(term));
    }

    const PairOfEquations& pair_;
    std::vector<SolvingLine>& lines_;
    const TakeAnswer& take_;
};

bool isSettled(const PairOfEquations& pair) {
    const auto& f = pair.factors;
    const double one = f[0][0] * f[1][1];
    const double other = f[0][1] * f[1][0];
    const double determinant = one - other;
    return std::fabs(determinant) > kSettled * std::max(std::fabs(one), std::fabs(other));
}

} // namespace

LinearForm operator+(const LinearForm& a, const LinearForm& b) {
    return {a.constant + b.constant, {a.letters[0] + b.letters[0], a.letters[1] + b.letters[1]}};
}

LinearForm operator*(double factor, const LinearForm& form) {
    return {factor * form.constant, {factor * form.letters[0], factor * form.letters[1]}};
}

LinearForm cleaned(LinearForm form, double size) {
    for (double* part : {&form.constant, &form.letters[0], &form.letters[1]}) {
        *part = std::fabs(*part) <= kSameNumber * size ? 0 : *part;
    }
    return form;
}

Term coefficientTerm(double factor) {
    Term term{factor < 0 ? -1 : 1, {}};
    if (!isOne(factor)) {
        term.factors.push_back({.kind = FactorKind::Coefficient, .value = std::fabs(factor)});
    }
    return term;
}

std::vector<Term> termsOf(const LinearForm& form, const std::array<double, 2>& letters) {
    std::vector<Term> terms;
    if (form.constant != 0) {
        terms.push_back({form.constant < 0 ? -1 : 1,
                         {{.kind = FactorKind::Amount, .value = std::fabs(form.constant)}}});
    }
    for (const std::size_t i : {0u, 1u}) {
        if (form.letters[i] != 0) {
            terms.push_back(coefficientTerm(form.letters[i]));
            terms.back().factors.push_back(letterFactor(i, letters[i]));
        }
    }
    return terms;
}

bool solvePair(const PairOfEquations& pair, std::vector<SolvingLine>& lines,
               const TakeAnswer& take) {
    if (!isSettled(pair)) {
        return false;
    }
    PairSolver(pair, lines, take).solve();
    return true;
}

namespace {

void putValues(std::vector<Term>& terms, const Symbol& symbol, double value) {
    for (Term& term : terms) {
        for (Factor& factor : term.factors) {
            if (factor.kind == FactorKind::Unknown && factor.symbol == symbol) {
                factor.value = value;
            }
            if (factor.kind == FactorKind::Bracket) {
                putValues(factor.terms, symbol, value);
                factor.value = 0;
                for (const Term& inside : factor.terms) {
                    factor.value += valueOf(inside);
                }
            }
        }
    }
}

} // namespace

void putInLines(std::vector<SolvingLine>& lines, const Symbol& symbol, double value) {
    for (SolvingLine& line : lines) {
        if (auto* numbers = std::get_if<NumberLine>(&line)) {
            putValues(numbers->left, symbol, value);
            putValues(numbers->right, symbol, value);
        }
    }
}

bool solvePairOf(Sheet& sheet, Step& step, const std::vector<Symbol>& unknowns) {
    PairOfEquations pair{{unknowns[0], unknowns[1]}, {}, {}, {}};
    for (const std::size_t i : {0u, 1u}) {
        pair.right[i].constant = -constantOf(step.equations[i]);
        double largest = 0;
        for (const Term& term : step.equations[i].terms) {
            largest = std::max(largest, std::fabs(valueOf(term)));
        }
        pair.right[i] = cleaned(pair.right[i], largest);
        for (const std::size_t k : {0u, 1u}) {
            pair.factors[i][k] = coefficientOf(step.equations[i], unknowns[k]);
        }
    }
    const auto take = [&](const Symbol& symbol, const LinearForm& value) {
        const int drawn = drawnSense(sheet, symbol);
        step.found.push_back(record(sheet, symbol, drawn * value.constant));
        step.solving.emplace_back(FoundHere{step.found.size() - 1, {}});
        // Only the answers are rounded.
        return isNothing(sheet, value.constant) ? LinearForm{} : LinearForm{value.constant, {}};
    };
    if (!solvePair(pair, step.solving, take)) {
        return false;
    }
    for (const Found& found : step.found) {
        const double written = found.drawn * found.value;
        for (Equation& equation : step.equations) {
            putValue(equation, found.symbol, written);
        }
        putInLines(step.solving, found.symbol, written);
    }
    return true;
}

} // namespace gusset
