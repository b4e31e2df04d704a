#pragma once
// What is wrong with a model (errors: it can't be computed) and what its author should know about
// it (notes).

#include "core/outcome.hpp"
#include "model/truss/limits.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <string_view>

namespace gusset {

struct Findings {
    Issues errors;
    Issues notes;
};

// Errors: names empty, too long, duplicate, invisible or indistinguishable; references to things
// that do not exist; zero-length and duplicate members; numbers that are not finite; unknown words.
// Notes: coincident joints, members that cross or pass through a joint, joints without a member,
// names that look alike in letters of several alphabets, and the notes of leftOut().
[[nodiscard]] Findings validate(const Truss&);

// Parts of the model that have no effect on results: absentCases(), and what this version reads and
// keeps but does not compute, one note per kind.
[[nodiscard]] Issues leftOut(const Truss&);
// Combination factors for cases that have no loads.
[[nodiscard]] Issues absentCases(const Truss&);

// What is wrong with a name (label, id, case, title) by itself, as the end of a sentence: "is
// longer than 40 characters". Nothing when it is acceptable.
[[nodiscard]] std::optional<Statement> faultOfName(std::string_view name, std::size_t longest);

} // namespace gusset
