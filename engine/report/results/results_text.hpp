#pragma once
// Results as rows and as text, in the model's units and the class's number form: the one source of
// the notebook's tables, the HTML tables, the command line's text and CSV.

#include "core/number.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

[[nodiscard]] NumberStyle numberStyleOf(const Truss&);
// Without zeros that say nothing: a drawing has less room than a column, and nothing to line up.
[[nodiscard]] NumberStyle drawingStyleOf(const Truss&);
// Of what was typed in: six significant figures.
[[nodiscard]] NumberStyle typedStyleOf(const Truss&);
// Two significant figures: of what should be nothing.
[[nodiscard]] NumberStyle roughStyleOf(const Truss&);
// "24.75 kN" with a thin space; the number alone when the unit is plain. `force` in force units.
[[nodiscard]] std::string forceText(const Truss&, double force, const NumberStyle&);

struct ForceRow {
    MemberId member;
    std::string name;  // "AB"
    double force = 0;  // force units
    std::string value; // "24.75", without sign
    Sense sense = Sense::Zero;
    std::string letter; // "T", "C", "0"
    std::string word;   // "tension", "compression", "zero"
};
struct ReactionRow {
    JointId joint;
    std::string name; // the joint's label
    double fx = 0;    // force units
    double fy = 0;
    std::string x; // with sign
    std::string y;
};
[[nodiscard]] std::vector<ForceRow> forceRows(const Writer&,
                                              const Solution&); // empty unless solved
// A row a supported joint, the sum of its supports; empty unless solved.
[[nodiscard]] std::vector<ReactionRow> reactionRows(const Truss&, const Solution&);
// What the truss is and, if it can't be solved, why and what would cure it. One sentence a line,
// the first stands alone.
[[nodiscard]] std::vector<std::string> verdict(const Writer&, const Solution&);
[[nodiscard]] std::string countingLine(const Solution&); // m + r = 7 + 3 = 10 = 2j
[[nodiscard]] std::string resultsText(const Writer&, const Solution&);
// One table (core/csv): kind, name, force, sense, fx, fy. Numbers to 12 significant digits, fewer
// where rounding leaves fewer: a last row of the kind "figures" then says how many. ASCII. Where
// exact forces are known, a column more has those of the members.
[[nodiscard]] std::string resultsCsv(const Truss&, const Solution&, const ExactSolution& = {});
[[nodiscard]] std::string resultsHtml(const Writer&,
                                      const Solution&); // tables, everything escaped

} // namespace gusset
