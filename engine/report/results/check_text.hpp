#pragma once
// Checks of members as rows, table and sentences, in the model's units and number form: the single
// source for the notebook, the page and the command line. Every sheet ends with the caution.

#include "design/member_checks.hpp"
#include "report/results/table.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

struct CheckRow {
    MemberId member;
    std::string name;        // "AB"
    std::string force;       // force units, with sign: tension positive
    std::string check;       // the governing check: "buckling"; empty if there is none
    std::string allowed;     // force units; empty if nothing governs
    std::string use;         // "0.83"; empty where it is not known
    std::string slenderness; // "132"; empty where it is not known
    std::string remark;      // "more than allowed", "no strength"; or empty
    bool over = false;       // used more than allowed
    bool faulty = false;     // over, too slender or not checked
};

// The loads that the checks cover: those shown (one choice), or the worst over several.
struct CheckedLoads {
    std::vector<LoadChoice> choices{{}};
    bool worst = false;
};

[[nodiscard]] std::vector<CheckRow> checkRows(const Writer&, const MemberChecks&);
// Two decimals, and more where two would show 1.00 for a use greater than 1: "1.004". `error`:
// bound of the rounding error.
[[nodiscard]] std::string useText(const Truss&, double use, double error = 0);
// For the drawing: "0.83"; "1.24 > 1" or "0.83, λ > 200" for a member that fails, "0" where the
// member carries no force, "?" where the use is not known.
[[nodiscard]] std::string useLabel(const Writer&, const MemberCheck&);
// For the drawing: "12.5 MPa", without sign; empty where the area is not known.
[[nodiscard]] std::string stressOf(const Truss&, const Solution&, MemberId);
[[nodiscard]] TextTable checkTable(const Writer&, const MemberChecks&);
[[nodiscard]] std::string curveName(BucklingCurve);                // "a₀"
[[nodiscard]] std::string checkWord(const PhraseBook&, CheckKind); // precondition: not None
// The formula and the loads of the check, the worst member, what fails, and what was not checked
// and why.
[[nodiscard]] std::vector<std::string> checkLines(const Writer&, const MemberChecks&,
                                                  const CheckedLoads&);
// That of these lines which says what is checked and by which standard.
[[nodiscard]] std::string formulaLine(const Writer&, const MemberChecks&);
// Those of these lines that warn about the forces.
[[nodiscard]] std::vector<std::string> checkWarnings(const Writer&, const MemberChecks&);
// Those of these lines that say what was not checked, and why.
[[nodiscard]] std::vector<std::string> lackLines(const Writer&, const MemberChecks&);
// That the check is preliminary, what it leaves out, and who decides.
[[nodiscard]] std::vector<std::string> cautionLines(const PhraseBook&);
[[nodiscard]] std::string cautionText(const PhraseBook&); // after an empty line
[[nodiscard]] std::string cautionHtml(const PhraseBook&);

[[nodiscard]] std::string checksText(const Writer&, const MemberChecks&, const CheckedLoads&);
[[nodiscard]] std::string checksHtml(const Writer&, const MemberChecks&, const CheckedLoads&);
// kind, name, force, check, allowed, use, slenderness, limit, remark, unit; the caution in rows of
// the kind "caution". Otherwise as in report/results/results_text.
[[nodiscard]] std::string checksCsv(const Writer&, const MemberChecks&);

} // namespace gusset
