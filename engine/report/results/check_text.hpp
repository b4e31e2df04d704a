#pragma once
// Checks of members as rows, table and sentences, in the model's units and number form: the one
// source of the notebook's, the page's and the command line's. Every sheet ends with the caution.

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
    std::string check;       // which governs: "buckling"; empty without one
    std::string allowed;     // force units; empty without a check
    std::string use;         // "0.83"; empty where it is not known
    std::string slenderness; // "132"; empty where it is not known
    std::string remark;      // "more than allowed", "no strength"; or empty
    bool over = false;       // used more than allowed
    bool faulty = false;     // over, too slender or not checked
};

// What the checks are of: the loads shown (one choice), or the worst over several.
struct CheckedLoads {
    std::vector<LoadChoice> choices{{}};
    bool worst = false;
};

[[nodiscard]] std::vector<CheckRow> checkRows(const Writer&, const MemberChecks&);
// Two decimals, and more where these would make 1.00 of a use that is greater: "1.004".
// `error`: by how much rounding may put it off.
[[nodiscard]] std::string useText(const Truss&, double use, double error = 0);
// "0.83" for the drawing; "1.24 > 1" and "0.83, λ > 200" of what does not hold, "0" where the
// member carries nothing, "?" where it is not known.
[[nodiscard]] std::string useLabel(const Writer&, const MemberCheck&);
// "12.5 MPa" without sign, for the drawing; empty where no area is known.
[[nodiscard]] std::string stressOf(const Truss&, const Solution&, MemberId);
[[nodiscard]] TextTable checkTable(const Writer&, const MemberChecks&);
[[nodiscard]] std::string curveName(BucklingCurve);                // "a₀"
[[nodiscard]] std::string checkWord(const PhraseBook&, CheckKind); // precondition: not None
// By what was checked and under what; the worst, what fails, what was not checked and why.
[[nodiscard]] std::vector<std::string> checkLines(const Writer&, const MemberChecks&,
                                                  const CheckedLoads&);
// What must be known of the forces: those of these lines that say so.
[[nodiscard]] std::vector<std::string> checkWarnings(const Writer&, const MemberChecks&);
// What was not checked, and why: those of these lines that say so.
[[nodiscard]] std::vector<std::string> lackLines(const Writer&, const MemberChecks&);
// That it is preliminary, what it leaves out, and who decides.
[[nodiscard]] std::vector<std::string> cautionLines(const PhraseBook&);

[[nodiscard]] std::string checksText(const Writer&, const MemberChecks&, const CheckedLoads&);
[[nodiscard]] std::string checksHtml(const Writer&, const MemberChecks&, const CheckedLoads&);
// kind, name, force, check, allowed, use, slenderness, limit, remark, unit; the caution in rows of
// the kind "caution". As report/results/results_text otherwise.
[[nodiscard]] std::string checksCsv(const Writer&, const MemberChecks&);

} // namespace gusset
