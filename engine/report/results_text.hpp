#pragma once
// Results as rows and as text, in the model's units and the class's number form: the one source of
// the notebook's tables, the HTML tables, the command line's text and CSV.

#include "report/number.hpp"
#include "report/rich_text.hpp"
#include "statics/solution.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] NumberStyle numberStyleOf(const Truss&);

struct ForceRow {
    MemberId member;
    std::string name;   // "AB"
    double force = 0;   // force units
    std::string value;  // "24.75", without sign
    std::string letter; // "T", "C", "0"
};
struct ReactionRow {
    JointId joint;
    double fx = 0; // force units
    double fy = 0;
    std::string x; // with sign
    std::string y;
};
[[nodiscard]] std::vector<ForceRow> forceRows(const Truss&, const Solution&); // empty unless solved
[[nodiscard]] std::vector<ReactionRow> reactionRows(const Truss&,
                                                    const Solution&); // empty unless solved
// What the truss is and, if it can't be solved, why and what would cure it. One sentence a line,
// the first stands alone.
[[nodiscard]] std::vector<std::string> verdict(const Truss&, const Solution&);
[[nodiscard]] std::string countingLine(const Solution&); // m + r = 7 + 3 = 10 = 2j
[[nodiscard]] std::string resultsText(const Truss&, const Solution&);
[[nodiscard]] std::string resultsCsv(const Truss&, const Solution&);
[[nodiscard]] std::string resultsHtml(const Truss&, const Solution&); // tables, everything escaped
[[nodiscard]] std::string escapeHtml(const std::string&);             // the only escaper

} // namespace gusset
