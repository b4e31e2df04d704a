// Prints one line per truss of about sixty members: the shortest times in microseconds of its solve
// and of its working by hand, as steps and as text.

#include "bench/shortest.hpp"
#include "hand/paper/working.hpp"
#include "report/derivation/working_text.hpp"
#include "support/trusses/strip_truss.hpp"

#include <cstdio>

using namespace gusset;
using bench::shortest;

namespace {

constexpr int kMembers = 61;

bool measure(const char* name, const Truss& truss) {
    const Solution solution = solve(truss);
    bool complete = solution.solved;
    const double solving = shortest([&] { complete &= solve(truss).solved; });
    Working working;
    const double steps = shortest([&] {
        working = workOut(truss, {}, solution);
        complete &= working.complete;
    });
    std::size_t length = 0;
    const double text = shortest([&] {
        length = workingText({englishPhrases(), truss}, working).size();
    });
    std::printf("%-28s %7zu %9.1f %9.1f %6.2f %9.1f %6.2f\n", name, truss.members.size(), solving,
                steps, steps / solving, text, text / solving);
    std::fflush(stdout);
    return complete && length > 0;
}

} // namespace

int main() {
    std::printf("%-28s %7s %9s %9s %6s %9s %6s\n", "truss", "members", "solve us", "steps us",
                "ratio", "text us", "ratio");
    const int panels = support::panelsFor(support::Web::Pratt, kMembers);
    Truss truss = support::stripTruss(support::Web::Pratt, panels);
    bool complete = measure("symmetric", truss);
    truss.loads.erase(truss.loads.begin());
    complete &= measure("loaded on one side", truss);
    truss.classSettings.form = NumberForm::Exact;
    complete &= measure("in exact numbers", truss);
    const int warren = support::panelsFor(support::Web::Warren, kMembers);
    complete &= measure("Warren", support::stripTruss(support::Web::Warren, warren));
    return complete ? 0 : 1;
}
