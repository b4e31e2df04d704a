#pragma once
// The results as JSON.

#include "statics/solve/exact.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <vector>

namespace gusset {

// What the results say to people, in the language of the caller's choice; what is empty is left
// out.
struct ResultSentences {
    std::vector<std::string> mechanisms{}; // one each of the solution's
    std::vector<std::string> assumed{};
    std::string inexact{};               // why there are no exact forces
    std::vector<std::string> warnings{}; // report/results/trust_text
};
// Results in the model's units, numbers to 12 significant digits, forces to fewer where rounding
// leaves fewer: "figures" then says how many.
[[nodiscard]] std::string writeResults(const Truss&, const Solution&, const ResultSentences& = {},
                                       const ExactSolution& = {});

} // namespace gusset
