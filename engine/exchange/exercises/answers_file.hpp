#pragma once
// A student's answers as a file, and as a link's fragment `a=1.<base64url>.<length>.<check>`, which
// is made like a model's (exchange/links/link):
//
// { "gussetAnswers": 1, "exercise": "9f0c33ab", "variant": 7, "code": "7HQ2M",
//   "reactions": [ { "of": "A:y", "size": 12.5, "sign": "+" } ],
//   "forces": [ { "of": "A-B", "size": 7, "sense": "T" } ],
//   "zero": ["B-C"], "notZero": ["A-B"], "degree": 0, "values": [null, 3.2] }
//
// "exercise" is exerciseMark's; sizes are in the model's force units, `sign` is along +x, up, or
// the reaction's direction for "+". `values` has one place for each question. "equations" holds
// those that the student kept (equations_file). No name is ever written. As JSON Schema:
// site/schema/answers.schema.json.

#include "classroom/exercise/answers.hpp"
#include "core/outcome.hpp"

#include <string>
#include <string_view>

namespace gusset {

// An issue if they are for another exercise, since nothing in them can then be trusted.
[[nodiscard]] Outcome<Answers> readAnswers(const Truss&, const Exercise&, std::string_view json);

// The checksum of the exercise that answers say they are for; empty if they say none.
[[nodiscard]] Outcome<std::string> exerciseOfAnswers(std::string_view json);

[[nodiscard]] std::string answersText(const Truss&, const Answers&);

inline constexpr std::string_view kAnswersLink = "a=1."; // a model's link begins with m=1.

// The fragment of a link, without '#', and what stands in one: the text for readAnswers. A link may
// be a whole address.
[[nodiscard]] std::string answersLink(std::string_view json);
[[nodiscard]] Outcome<std::string> linkedAnswers(std::string_view link);

} // namespace gusset
