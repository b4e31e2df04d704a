#pragma once
// What all commands say about a truss in the same way: the exit status, and the sentences where
// there are no forces, or where they hold for exactly these loads only.

#include "cli/commands.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"

namespace gusset::cli {

[[nodiscard]] Exit exitOf(const Solution&);
[[nodiscard]] Exit exitOf(const Issues&); // issues given instead of an answer

[[nodiscard]] std::string solutionJson(const Writer&, const Solution&, const ExactSolution& = {});

// The reader's notes belong to the results: nothing in a file is ignored silently.
[[nodiscard]] Solution solved(const Reading&, const LoadChoice&);
// Of a mechanism, even if the model's own loads happen to be in balance on it.
[[nodiscard]] Solution unsolved(const Truss&);

// For a calculation that gives issues instead of an answer: faults of the input, or a mechanism,
// which the answer then describes in the format asked for.
[[nodiscard]] Answer noAnswer(const PhraseBook&, const Arguments&, const Truss&,
                              const Issues& faults);

// For formats without sentences of their own: a note if the truss is a mechanism, at rest or not.
[[nodiscard]] Issues notesOfMechanism(Status, bool solved);
[[nodiscard]] Issues joined(Issues, const Issues& more);
// Sentences that have no place in a table, as notes on its forces.
[[nodiscard]] Issues notesOnForces(const std::vector<std::string>& sentences);

// Puts the warnings about the figures before a derivation as text.
[[nodiscard]] Answer withSentences(Answer, const std::vector<std::string>& sentences);

// The truss without loose joints, for influence lines: joints that no member meets and no pin holds
// are a mechanism by themselves, and are left out with a note.
[[nodiscard]] Reading withoutLooseJoints(const Reading&);

} // namespace gusset::cli
