#pragma once
// Two equations for two unknowns, solved on paper: line by line, by substitution or by adding and
// subtracting. Private to hand/.

#include "hand/paper/body.hpp"

#include <array>
#include <functional>

namespace gusset {

// A number that may depend on the letters X and Y.
struct LinearForm {
    double constant = 0;
    std::array<double, 2> letters{}; // the factors of X and Y
};
[[nodiscard]] LinearForm operator+(const LinearForm&, const LinearForm&);
[[nodiscard]] LinearForm operator*(double, const LinearForm&);
// As terms: 8 − 0.6 X; none if it is zero. `letters` are the values of X and Y in the end.
[[nodiscard]] std::vector<Term> termsOf(const LinearForm&, const std::array<double, 2>& letters);
// With parts that are only rounding error, beside numbers of this size, made zero.
[[nodiscard]] LinearForm cleaned(LinearForm, double size);
// A number without unit as a factor, with its sign before the term.
[[nodiscard]] Term coefficientTerm(double);

// factors[i][0] · unknown 0 + factors[i][1] · unknown 1 = right[i]
struct PairOfEquations {
    std::array<Symbol, 2> unknowns;
    std::array<std::array<double, 2>, 2> factors{};
    std::array<LinearForm, 2> right{};
    std::array<double, 2> letters{}; // what X and Y will turn out to be
};
// Takes an answer and returns the value to go on with, which may be rounded; it may write lines.
using TakeAnswer = std::function<LinearForm(const Symbol&, const LinearForm&)>;
// Writes the lines, and gives each answer where they arrive at it. False, with nothing written,
// when the equations don't determine the unknowns.
bool solvePair(const PairOfEquations&, std::vector<SolvingLine>&, const TakeAnswer&);

// Puts the value of an unknown into the lines in which it stands.
void putInLines(std::vector<SolvingLine>&, const Symbol&, double value);

// The same for the two equations of a step and their unknowns, which are recorded as found.
bool solvePairOf(Sheet&, Step&, const std::vector<Symbol>& unknowns);

} // namespace gusset
