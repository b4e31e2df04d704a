// For determinate and indeterminate trusses of 200 members: what it costs to solve again after a
// joint was dragged, and to find all influence lines, as multiples of a first solve.

#include "bench/shortest.hpp"
#include "statics/moving/influence.hpp"
#include "statics/solve/solver.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/strip_truss.hpp"

#include <cstdio>

using namespace gusset;
using bench::shortest;

namespace {

constexpr int kMembers = 200;

// One frame of a drag: a joint has moved a little, and the truss is solved again. The mean over
// every seventh joint.
double shortestAgain(const Truss& truss, bool& solved) {
    constexpr std::size_t kEvery = 7;
    double sum = 0;
    int drags = 0;
    for (std::size_t i = 1; i + 1 < truss.joints.size(); i += kEvery) {
        Solver solver;
        Truss dragged = truss;
        int frame = 0;
        sum += shortest([&] {
            ++frame;
            const Vec2 by{0.01 * (frame % 17), 0.01 * (frame % 13)};
            dragged.joints[i].at = truss.joints[i].at + by;
            solved &= solver.solve(dragged).solved;
        });
        ++drags;
    }
    return sum / drags;
}

// The influence lines of all members and both supports for a load on the bottom chord.
double shortestLines(const Truss& truss) {
    std::vector<JointId> path;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        if (truss.joints[i].label[0] == 'B') {
            path.push_back(JointId{static_cast<int>(i)});
        }
    }
    std::vector<Effect> effects;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        effects.push_back({EffectKind::MemberForce, MemberId{static_cast<int>(i)}, {}, false});
    }
    for (const Support& support : truss.supports) {
        effects.push_back({EffectKind::Reaction, {}, support.joint, false});
    }
    std::vector<InfluenceLine> lines;
    return shortest([&] {
        const PathAnalysis analysis = analysePath(truss, path).value();
        lines.clear();
        for (const Effect& effect : effects) {
            lines.push_back(influenceLine(analysis, effect));
        }
    });
}

bool measure(const char* name, const Truss& truss) {
    bool solved = true;
    const double first = shortest([&] { solved &= solve(truss).solved; });
    const double again = shortestAgain(truss, solved);
    const double lines = shortestLines(truss);
    std::printf("%-32s %7zu %9.1f %9.1f %6.2f %9.1f %6.2f\n", name, truss.members.size(), first,
                again, again / first, lines, lines / first);
    std::fflush(stdout);
    return solved;
}

} // namespace

int main() {
    std::printf("%-32s %7s %9s %9s %6s %9s %6s\n", "truss", "members", "solve us", "again us",
                "ratio", "lines us", "ratio");
    const auto strip = [](support::Web web) {
        return support::stripTruss(web, support::panelsFor(web, kMembers));
    };
    const Truss determinate = strip(support::Web::Pratt);
    const Truss indeterminate = strip(support::Web::Double);
    bool solved = measure("determinate", determinate);
    solved &= measure("determinate, with sections", support::withSections(determinate, 1));
    solved &= measure("indeterminate, with sections", support::withSections(indeterminate, 1));
    return solved ? 0 : 1;
}
