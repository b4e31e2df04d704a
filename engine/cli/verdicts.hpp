#pragma once
// What every command says of a truss alike: with which exit, and in which words where there are no
// forces, or none but for exactly these loads.

#include "cli/commands.hpp"
#include "statics/exact.hpp"

namespace gusset::cli {

[[nodiscard]] Exit exitOf(const Solution&);
[[nodiscard]] Exit exitOf(const Issues&); // that stand in place of an answer

[[nodiscard]] std::string solutionJson(const PhraseBook&, const Truss&, const Solution&,
                                       const ExactSolution& = {});

// Where a calculation gives issues in place of an answer: faults of the input, or a mechanism, of
// which what it is stands in the answer, in the form that was asked for.
[[nodiscard]] Answer noAnswer(const PhraseBook&, const Arguments&, const Truss&,
                              const Issues& faults);

// For forms that have no words of their own: a line where the truss is a mechanism, at rest or not.
[[nodiscard]] Issues notesOfMechanism(Status, bool solved);
// The same of a truss that is solved under each of these loads.
[[nodiscard]] Issues notesOfMechanism(const Truss&, const std::vector<LoadChoice>&);

// The truss as an influence line sees it: joints that no member meets and no pin holds, which are
// not in balance by themselves, have no part in it; a note says so where there are any.
[[nodiscard]] Reading withoutLooseJoints(const Reading&);

} // namespace gusset::cli
