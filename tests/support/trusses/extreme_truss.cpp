#include "support/trusses/extreme_truss.hpp"

#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "support/random.hpp"
#include "support/trusses/exact_truss.hpp"
#include "support/trusses/small_truss.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace gusset::support {

namespace {

constexpr double kRight = 1e-6; // of the largest force: the error allowed without a warning
// The error bound is an estimate, in practice within a factor of three
// (statics/matrix/norm_estimate).
constexpr double kBoundSlack = 10;
constexpr double kBoundFloor = 1e-13;
constexpr double kNeedless = 1e-9; // so accurate that no warning was needed

double powerOfTen(Random& random, int low, int high) {
    return std::pow(10.0, random.integer(low, high));
}

std::string name(const char* row, int i) { return row + std::to_string(i); }

// Panels with posts and one or two diagonals, on two pins or a pin and a roller.
Truss strip(Random& random) {
    Truss truss;
    const int panels = random.integer(1, 3);
    const double height = random.decimal(1, 4, 2);
    for (int i = 0; i <= panels; ++i) {
        joint(truss, name("B", i), 3.0 * i, 0);
        joint(truss, name("T", i), 3.0 * i, height);
        member(truss, name("B", i), name("T", i));
    }
    for (int i = 0; i < panels; ++i) {
        member(truss, name("B", i), name("B", i + 1));
        member(truss, name("T", i), name("T", i + 1));
        member(truss, name("B", i), name("T", i + 1));
        if (!random.oneIn(3)) {
            member(truss, name("T", i), name("B", i + 1));
        }
    }
    pin(truss, "B0");
    random.oneIn(3) ? roller(truss, name("B", panels)) : pin(truss, name("B", panels));
    return truss;
}

// From a triangle, each further joint by two members.
Truss grown(Random& random) {
    Truss truss = triangle(random.decimal(1, 3, 4));
    for (int i = 3; i < 7; ++i) {
        const int a = random.integer(0, i - 1);
        const int b = (a + random.integer(1, i - 1)) % i;
        joint(truss, name("J", i), random.decimal(-2, 6, 8), random.decimal(1, 6, 8));
        const std::string& label = truss.joints.back().label;
        member(truss, truss.joints[static_cast<std::size_t>(a)].label, label);
        member(truss, truss.joints[static_cast<std::size_t>(b)].label, label);
    }
    return truss;
}

void resize(Random& random, Truss& truss) {
    const double size = random.oneIn(2) ? powerOfTen(random, -9, 9) : 1;
    const double flat = random.oneIn(2) ? powerOfTen(random, -9, -1) : 1;
    for (Joint& each : truss.joints) {
        each.at = {size * each.at.x, size * flat * each.at.y};
    }
}

void addSections(Random& random, Truss& truss) {
    const int decades = random.integer(0, 12);
    truss.materials.push_back({"steel", 210e3, {}, {}, 1.2e-5, {}});
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const std::string id = "s" + std::to_string(i);
        const double area =
            random.oneIn(3) ? std::pow(10.0, decades) : powerOfTen(random, 0, decades);
        truss.sections.push_back({id, "steel", area, {}, "", {}, {}});
        truss.members[i].section = id;
    }
}

void addForces(Random& random, Truss& truss) {
    for (int i = 0; i < 2; ++i) {
        const Joint& loaded = random.pick(truss.joints);
        force(truss, loaded.label, random.decimal(-20, 20, 2), random.decimal(-20, -1, 2));
    }
}

// Adds temperature changes, misfits and settlements.
void addStrains(Random& random, Truss& truss) {
    for (Member& each : truss.members) {
        each.warming = random.oneIn(4) ? random.integer(-30, 40) : 0;
        each.misfit = random.oneIn(4) ? random.decimal(-3, 3, 100) : 0;
    }
    for (Support& each : truss.supports) {
        if (random.oneIn(3)) {
            each.settleAlong = random.decimal(-10, 10, 100);
            each.settle = {random.decimal(-10, 10, 100), random.decimal(-10, 10, 100)};
        }
    }
}

// Inclined rollers; or two supports at a joint: two rollers whose directions differ by as little as
// 1e-7 degrees.
void addSlopes(Random& random, Truss& truss) {
    for (Support& each : truss.supports) {
        each.reaction = each.kind == SupportKind::Roller ? random.integer(1, 359) : each.reaction;
    }
    if (random.oneIn(2)) {
        Support& last = truss.supports.back();
        last.settleAlong = 0;
        last.settle = {};
        Support second = last;
        second.kind = SupportKind::Roller;
        second.reaction += std::pow(10.0, random.integer(-7, 1));
        truss.supports.push_back(second);
    }
}

double largestOf(const std::vector<double>& values) {
    double largest = 0;
    for (const double value : values) {
        largest = std::max(largest, std::abs(value));
    }
    return largest;
}

double errorOf(const std::vector<double>& found, const std::vector<double>& exact) {
    double error = 0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        error = std::max(error, std::abs(found[i] - exact[i]));
    }
    return error;
}

std::vector<double> componentsOf(const std::vector<Vec2>& vectors) {
    std::vector<double> components;
    for (const Vec2 v : vectors) {
        components.insert(components.end(), {v.x, v.y});
    }
    return components;
}

// The largest error of forces and reactions, relative to the largest of these and of the loads.
double errorOfForces(const Solution& solution, const ExactResponse& exact) {
    const double scale =
        std::max({largestOf(exact.forces), largestOf(exact.reactions), solution.largest});
    const double error = std::max(errorOf(solution.forces, exact.forces),
                                  errorOf(solution.reactions, exact.reactions));
    return scale > 0 ? error / scale : 0;
}

double errorOfMoves(const Solution& solution, const ExactResponse& exact) {
    const std::vector<double> found = componentsOf(solution.displacements);
    const std::vector<double> right = componentsOf(exact.moves);
    const double scale = std::max(largestOf(found), largestOf(right));
    return scale > 0 ? errorOf(found, right) / scale : 0;
}

// Whether the truss is held only by the rounding of its coordinates: its joints are collinear to
// double precision, so that some unit load causes forces of 1e12.
bool isHeldByRounding(Truss truss) {
    truss.loads.clear();
    for (Member& each : truss.members) {
        each.warming = each.misfit = 0;
    }
    for (Support& each : truss.supports) {
        each.settle = {};
        each.settleAlong = 0;
    }
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const double share = 1 + 0.25 * static_cast<double>(i % 4);
        force(truss, truss.joints[i].label, 1 / share, share);
    }
    const std::optional<ExactResponse> exact = exactResponse(truss);
    return exact && largestOf(exact->forces) > 1e15; // N for loads in kN
}

class Scan {
public:
    void judge(std::uint64_t seed) {
        seed_ = seed;
        const Truss truss = extremeTruss(seed);
        const Solution solution = solve(truss);
        if (solution.status == Status::Invalid) { // coincident joints have no direction
            ++counts.refused;
            return;
        }
        const std::optional<ExactResponse> exact = exactResponse(truss);
        const bool hasWords = !trustSentences({englishPhrases(), truss}, solution).empty();
        if (!solution.solved) {
            judgeRefusal(truss, solution, exact.has_value(), hasWords);
        } else if (exact) {
            judgeForces(solution, *exact, hasWords);
            judgeMoves(truss, solution, *exact);
        } else {
            wrong("has forces, and in fractions it is a mechanism");
        }
    }

    ScanCounts counts;

private:
    void wrong(const std::string& what) {
        counts.wrong += "seed " + std::to_string(seed_) + ": " + what + '\n';
    }

    void judgeRefusal(const Truss& truss, const Solution& solution, bool isStable, bool hasWords) {
        const bool isMechanism = solution.status == Status::Mechanism &&
                                 (!isStable || (!hasWords && isHeldByRounding(truss)));
        const bool isSaid = isMechanism || solution.status != Status::Mechanism || hasWords;
        ++(isMechanism ? counts.unstable : counts.refused);
        counts.refusedNeedlessly += isMechanism || isHeldByRounding(truss) ? 0 : 1;
        if (!isSaid || verdict({englishPhrases(), truss}, solution).empty()) {
            wrong("called a mechanism without a word, and in fractions it is none");
        }
    }

    void judgeForces(const Solution& solution, const ExactResponse& exact, bool hasWords) {
        const double error = errorOfForces(solution, exact);
        isWithin("force", error, solution.trust.error);
        if (error > kRight && !hasWords) {
            wrong("an error of " + significantNumber(error, 3) + " without a word");
        }
        ++(hasWords ? counts.flagged : counts.right);
        // An outlying stiffness or a nearby mechanism deserves a warning in itself.
        const bool isAsked = solution.standsOut || isCloseToMechanism(solution.trust);
        counts.flaggedNeedlessly += hasWords && !isAsked && error <= kNeedless ? 1 : 0;
    }

    void judgeMoves(const Truss& truss, const Solution& solution, const ExactResponse& exact) {
        if (losesDisplacements(solution)) {
            ++counts.withoutMoves;
            if (movementLines({englishPhrases(), truss}, solution).empty()) {
                wrong("no displacements, and not a word why");
            }
        } else if (solution.displaced) {
            isWithin("displacement", errorOfMoves(solution, exact),
                     solution.trust.displacementError);
        }
    }

    void isWithin(const std::string& what, double error, double bound) {
        if (!(error <= std::max(kBoundSlack * bound, kBoundFloor))) {
            wrong("a " + what + " off by " + significantNumber(error, 3) + " where " +
                  significantNumber(bound, 3) + " was the bound");
        }
    }

    std::uint64_t seed_ = 0;
};

} // namespace

Truss extremeTruss(std::uint64_t seed) {
    Random random(seed);
    Truss truss = random.oneIn(2) ? strip(random) : grown(random);
    resize(random, truss);
    if (!random.oneIn(4)) {
        addSections(random, truss);
        if (random.oneIn(3)) {
            addStrains(random, truss);
        }
    }
    if (random.oneIn(3)) {
        addSlopes(random, truss);
    }
    addForces(random, truss);
    return truss;
}

ScanCounts scanExtremes(std::uint64_t first, int count) {
    Scan scan;
    for (int i = 0; i < count; ++i) {
        scan.judge(first + static_cast<std::uint64_t>(i));
    }
    return std::move(scan.counts);
}

} // namespace gusset::support
