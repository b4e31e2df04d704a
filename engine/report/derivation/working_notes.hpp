#pragma once
// What is said once in a working: that values are carried in full, and what loads are called.
// Private to report/.

#include "report/formula/notation.hpp"

namespace gusset {

// Whether numbers on the way to the answers are written with fewer figures than they have.
[[nodiscard]] bool solvesUnrounded(const Notation&, const Step&);
[[nodiscard]] bool roundsAnswers(const Notation&); // as the class carries them
// Whether it goes on with a value of which it writes fewer figures.
[[nodiscard]] bool carriesUnrounded(const Notation&, const Step&);
// Where a chain of steps begins at a joint, nothing has named its load yet. Empty if something has,
// and if there is none.
[[nodiscard]] RichLine loadsNamed(const Notation&, const Step&);

} // namespace gusset
