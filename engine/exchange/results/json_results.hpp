#pragma once
// The results as JSON.

#include "core/phrase.hpp"
#include "statics/solve/exact.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <vector>

namespace gusset {

// Sentences for people, in the language of the caller's choice; empty ones are left out.
struct ResultSentences {
    std::vector<std::string> mechanisms{}; // one for each of the solution's mechanisms
    std::vector<std::string> assumed{};
    std::string inexact{};               // why there are no exact forces
    std::vector<std::string> warnings{}; // report/results/trust_text
};
// Results in the model's units, numbers to 12 significant digits, or fewer where rounding leaves
// fewer: "figures" (forces) and "displacementFigures" then say how many.
[[nodiscard]] std::string writeResults(const PhraseBook&, const Truss&, const Solution&,
                                       const ResultSentences& = {}, const ExactSolution& = {});

} // namespace gusset
