#pragma once
// Results as rows and as text, in the model's units and the class's number form: the single source
// for the notebook's tables, the HTML tables, and the command line's text and CSV.

#include "core/number.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/exact.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

[[nodiscard]] NumberStyle numberStyleOf(const Truss&);
// Without trailing zeros: a drawing has less room than a column, and nothing to align.
[[nodiscard]] NumberStyle drawingStyleOf(const Truss&);
// For values from the input: six significant figures.
[[nodiscard]] NumberStyle typedStyleOf(const Truss&);
// Two significant figures, for what should be zero.
[[nodiscard]] NumberStyle roughStyleOf(const Truss&);
// "24.75 kN" with a thin space; the number alone if the unit has no symbol. `force` in force units.
[[nodiscard]] std::string forceText(const Truss&, double force, const NumberStyle&);

struct ForceRow {
    MemberId member;
    std::string name;   // "AB"
    double force = 0;   // force units
    std::string number; // "−24.75", as in tables: tension positive
    std::string size;   // "24.75"
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
// One row per supported joint, with the sum over its supports; empty unless solved.
[[nodiscard]] std::vector<ReactionRow> reactionRows(const Truss&, const Solution&);
// What kind of truss it is and, if it can't be solved, why and how to cure it. One sentence per
// line; the first can stand alone.
[[nodiscard]] std::vector<std::string> verdict(const Writer&, const Solution&);
[[nodiscard]] std::string countingLine(const Solution&); // m + r = 7 + 3 = 10 = 2j
[[nodiscard]] std::string resultsText(const Writer&, const Solution&);
// One table (core/csv): kind, name, force, sense, fx, fy. Numbers to 12 significant digits, or
// fewer where rounding leaves fewer; a last row of the kind "figures" then says how many. ASCII.
// Where exact forces are known, an extra column gives those of the members.
[[nodiscard]] std::string resultsCsv(const Truss&, const Solution&, const ExactSolution& = {});
// Tables, everything escaped. `under`: the loads, named in each caption; empty: not named.
[[nodiscard]] std::string resultsHtml(const Writer&, const Solution&,
                                      const std::string& under = {});

} // namespace gusset
