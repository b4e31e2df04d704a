#pragma once
// The model file (see site/help and the JSON Schema): reading, writing, and the results as JSON.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"
#include "statics/solve/exact.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct Reading {
    Truss truss;
    Issues notes; // unknown keys, which are kept
};

inline constexpr std::size_t kLargestFile = 8u << 20; // bytes

// Syntax, types, references and everything that validate() calls an error. At most 20 issues, each
// with its place.
[[nodiscard]] Outcome<Reading> readModel(std::string_view json);

enum class Layout { Compact, Indented };
[[nodiscard]] std::string writeModel(const Truss&, Layout = Layout::Indented);

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
