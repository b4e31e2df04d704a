#pragma once
// An equation that a student builds: the forces on a body, what is said of each term, and how the
// whole is written. Private to desk.

#include "classroom/practice/terms.hpp"
#include "desk/body.hpp"

#include <string>
#include <vector>

namespace gusset {

struct ForceSaid {
    std::string says;  // "AB, away from the body"
    std::string html;  // the same as HTML
    std::string name;  // F_AB
    std::string label; // the name as HTML
    std::string angle; // α; empty where the force is parallel to an axis
};
[[nodiscard]] std::vector<ForceSaid> forcesSaid(const Writer&, const DeskBody&);

// In the sense of rotation and the units of the class.
[[nodiscard]] AskedSum askedSum(const DeskBody&, SumKind, JointId about);
// With the student's own values: one line, or with names first and then in numbers. As many terms
// as the body has forces.
[[nodiscard]] std::vector<std::string> equationHtml(const Writer&, const DeskBody&, const AskedSum&,
                                                    const std::vector<BuiltTerm>&);
[[nodiscard]] WrittenTerm namedTerm(const DeskBody&, const ActingForce&); // without its multiplier

struct TermSaid {
    bool right = false;
    std::string says; // empty for a right one
};
struct EquationSaid {
    std::vector<std::string> html;
    WrittenEquation written;     // to be kept
    std::vector<TermSaid> terms; // in the order of the forces; none if they are not judged now
    std::string says;            // of the whole, if it was judged and is right
};
// An issue if there are not as many terms as forces, or a moment has no centre.
[[nodiscard]] Outcome<EquationSaid> equationSaid(const Writer&, const DeskRequest&,
                                                 const DeskBody&);

struct KeptEquation {
    std::string body; // "Joint A"
    std::string html;
};
[[nodiscard]] Outcome<KeptEquation> keptEquation(const Writer&, const DeskRequest&,
                                                 const WrittenEquation&);

} // namespace gusset
