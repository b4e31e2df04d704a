#pragma once
// What the analysis says about a solution, in sentences: how a truss moves and what would stop it,
// what its forces rest on, and why none of them are exact.

#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] RichLine labelOf(const Truss&, JointId);

// "Joints C and D can slide together horizontally; a member between A and D would stop it."
[[nodiscard]] std::string mechanismSentence(const Writer&, const Mechanism&);
[[nodiscard]] std::vector<std::string> assumptionSentences(const PhraseBook&,
                                                           const std::vector<Assumption>&);
// What is wrong, as a complete sentence.
[[nodiscard]] std::string faultSentence(const PhraseBook&, const Issue&);
// Where it is and what is wrong: "members[3].b: there is no such joint".
[[nodiscard]] std::string faultLine(const PhraseBook&, const Issue&);
// Empty if the forces are exact.
[[nodiscard]] std::string inexactSentence(const Writer&, const WhyInexact&);

} // namespace gusset
