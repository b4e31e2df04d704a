#include "support/reading/written.hpp"

#include "report/derivation/working_text.hpp"
#include "report/results/results_text.hpp"
#include "statics/solve/solution.hpp"

namespace gusset::support {

Working workingOf(const Truss& truss) { return workOut(truss, {}, solve(truss)); }

std::string textOf(const Truss& truss) {
    return workingText({englishPhrases(), truss}, workingOf(truss));
}

std::string resultsTextOf(const Truss& truss) {
    return resultsText({englishPhrases(), truss}, solve(truss));
}

bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

MemberId memberNamed(const Truss& truss, const std::string& name) {
    const std::size_t dash = name.find('-');
    return findMember(truss, findJoint(truss, name.substr(0, dash)),
                      findJoint(truss, name.substr(dash + 1)));
}

} // namespace gusset::support
