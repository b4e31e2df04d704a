#include "support/extreme_truss.hpp"

#include "report/results_text.hpp"
#include "report/trust_text.hpp"
#include "support/exact_truss.hpp"
#include "support/random.hpp"
#include "support/small_truss.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

constexpr double kRight = 1e-6; // of the largest force: what may be off without a word
// The bound of the error is an estimate, in practice within a factor of three
// (statics/norm_estimate).
constexpr double kBoundSlack = 10;
constexpr double kBoundFloor = 1e-13;

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
    truss.materials.push_back({"steel", 210e3, {}, {}, {}, {}});
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

double largestOf(const std::vector<double>& values) {
    double largest = 0;
    for (const double value : values) {
        largest = std::max(largest, std::abs(value));
    }
    return largest;
}

// The largest error over the largest force.
double errorOf(const Truss& truss, const Solution& solution, const std::vector<double>& exact) {
    double error = 0;
    for (std::size_t i = 0; i < exact.size(); ++i) {
        error =
            std::max(error, std::abs(solution.forces[i] / toNewton(truss.units.force) - exact[i]));
    }
    const double scale = std::max(largestOf(exact), solution.largest / toNewton(truss.units.force));
    return scale > 0 ? error / scale : 0;
}

// Whether nothing but the rounding of its coordinates holds the truss: joints that lie in one line
// as far as doubles tell, so that some load of 1 causes forces of 1e12.
bool isHeldByRounding(Truss truss) {
    truss.loads.clear();
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const double share = 1 + 0.25 * static_cast<double>(i % 4);
        force(truss, truss.joints[i].label, 1 / share, share);
    }
    const std::optional<std::vector<double>> exact = exactForces(truss);
    return exact && largestOf(*exact) > 1e12;
}

void judge(std::uint64_t seed, ScanCounts& counts) {
    const Truss truss = extremeTruss(seed);
    const Solution solution = solve(truss);
    if (solution.status == Status::Invalid) { // joints on one spot, members without a direction
        ++counts.refused;
        return;
    }
    const std::optional<std::vector<double>> exact = exactForces(truss);
    const bool hasWords = !trustSentences(englishPhrases(), truss, solution).empty();
    const auto wrong = [&](const std::string& what) {
        counts.wrong += "seed " + std::to_string(seed) + ": " + what + '\n';
    };
    if (!solution.solved) {
        const bool isMechanism = solution.status == Status::Mechanism &&
                                 (!exact || (!hasWords && isHeldByRounding(truss)));
        const bool isSaid = isMechanism || solution.status != Status::Mechanism || hasWords;
        ++(isMechanism ? counts.unstable : counts.refused);
        if (!isSaid || verdict(englishPhrases(), truss, solution).empty()) {
            wrong("called a mechanism without a word, and in fractions it is none");
        }
        return;
    }
    if (!exact) {
        wrong("has forces, and in fractions it is a mechanism");
        return;
    }
    const double error = errorOf(truss, solution, *exact);
    if (error > std::max(kBoundSlack * solution.trust.error, kBoundFloor)) {
        wrong("an error of " + significantNumber(error, 3) + " where " +
              significantNumber(solution.trust.error, 3) + " was the bound");
    } else if (error > kRight && !hasWords) {
        wrong("an error of " + significantNumber(error, 3) + " without a word");
    }
    ++(hasWords ? counts.flagged : counts.right);
}

} // namespace

Truss extremeTruss(std::uint64_t seed) {
    Random random(seed);
    Truss truss = random.oneIn(2) ? strip(random) : grown(random);
    resize(random, truss);
    if (!random.oneIn(4)) {
        addSections(random, truss);
    }
    addForces(random, truss);
    return truss;
}

ScanCounts scanExtremes(std::uint64_t first, int count) {
    ScanCounts counts;
    for (int i = 0; i < count; ++i) {
        judge(first + static_cast<std::uint64_t>(i), counts);
    }
    return counts;
}

} // namespace gusset::support
