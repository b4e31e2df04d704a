#pragma once
// The force method in words, formulas and tables.

#include "hand/virtual_work/force_method.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// From the count to the check, or one passage saying why there is none. The truss and the choice of
// loads must be those that the method was built from.
[[nodiscard]] std::vector<Passage> forceMethodPassages(const Writer&, const ForceMethod&,
                                                       SketchPaper = SketchPaper::Page);

// One state of the released truss: what is given, or a redundant of size 1.
struct ReleasedState {
    const Truss* truss = nullptr; // of the method
    const Working* working = nullptr;
    RichLine forces{}; // N_0, n_1, n_2
    std::vector<MemberWords> members{};
};
// Without what is given, if that loads nothing. Precondition: the method is complete.
[[nodiscard]] std::vector<ReleasedState> releasedStates(const Writer&, const ForceMethod&);

// Why there is none. Precondition: it is not complete.
[[nodiscard]] RichLine forceMethodRefusal(const Writer&, const ForceMethod&);
// The forces and reactions that are its redundants: "F_BD and C_y"; and what the released truss is
// without: "BD and C_y".
[[nodiscard]] RichLine redundantNames(const Writer&, const ForceMethod&);
[[nodiscard]] RichLine releasedNames(const Writer&, const ForceMethod&);

} // namespace gusset
