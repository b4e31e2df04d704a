#pragma once
// What is wrong with a model (errors: it can't be computed) and what its author should know of it
// (notes).

#include "core/outcome.hpp"
#include "model/truss/limits.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace gusset {

struct Findings {
    Issues errors;
    Issues notes;
};

// Errors: names empty, too long, twice, or such that nobody can see them or tell them apart;
// references to nothing; zero-length and double members; numbers that are not finite; words without
// meaning. Notes: joints on one spot, members that cross or run through a joint, joints without a
// member, names that are drawn alike in letters of several alphabets, and what leftOut() says.
[[nodiscard]] Findings validate(const Truss&);

// What the model holds that has no part in results: absentCases(), and what this version reads,
// keeps and does not compute, one note a kind.
[[nodiscard]] Issues leftOut(const Truss&);
// Factors of combinations for cases in which there is no load.
[[nodiscard]] Issues absentCases(const Truss&);

// What is wrong with a name (label, id, case, title) as such, as the end of a sentence: "is longer
// than 40 characters". Nothing when it will do.
[[nodiscard]] std::optional<std::string> faultOfName(std::string_view name, std::size_t longest);

} // namespace gusset
