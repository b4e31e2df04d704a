#pragma once
// What every command says of a truss alike: with which exit, and in which words where there are no
// forces, or none but for exactly these loads.

#include "cli/commands.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"

namespace gusset::cli {

[[nodiscard]] Exit exitOf(const Solution&);
[[nodiscard]] Exit exitOf(const Issues&); // that stand in place of an answer

[[nodiscard]] std::string solutionJson(const Writer&, const Solution&, const ExactSolution& = {});

// Where a calculation gives issues in place of an answer: faults of the input, or a mechanism, of
// which what it is stands in the answer, in the form that was asked for.
[[nodiscard]] Answer noAnswer(const PhraseBook&, const Arguments&, const Truss&,
                              const Issues& faults);

// For forms that have no words of their own: a line where the truss is a mechanism, at rest or not.
[[nodiscard]] Issues notesOfMechanism(Status, bool solved);
[[nodiscard]] Issues joined(Issues, const Issues& more);
// Sentences that a table has no place for, as notes on its forces.
[[nodiscard]] Issues notesOnForces(const std::vector<std::string>& sentences);

// As HTML if that is asked for, else as text.
[[nodiscard]] std::string passagesOf(const Arguments&, const std::vector<Passage>&);
// What must be known of the figures stands before every derivation.
[[nodiscard]] Answer withSentences(Answer, const Arguments&,
                                   const std::vector<std::string>& sentences);

// The truss as an influence line sees it: joints that no member meets and no pin holds, which are
// not in balance by themselves, have no part in it; a note says so where there are any.
[[nodiscard]] Reading withoutLooseJoints(const Reading&);

} // namespace gusset::cli
