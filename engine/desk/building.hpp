#pragma once
// An equation that a student builds: the forces on a body, and what is said of each term. Private
// to desk.

#include "desk/request.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

// The forces that act on the joint, or on the whole truss if it is none, as they are drawn.
[[nodiscard]] std::vector<std::string> forcesText(const Writer&, const DeskRequest&);

struct TermSaid {
    bool right = false;
    std::string says; // empty for a right one
};
struct EquationSaid {
    std::vector<TermSaid> terms; // in the order of the forces
    std::string says;            // of the whole, if it is right
};
// An issue if there are not as many terms as forces, or a moment has no centre.
[[nodiscard]] Outcome<EquationSaid> equationSaid(const Writer&, const DeskRequest&);

} // namespace gusset
