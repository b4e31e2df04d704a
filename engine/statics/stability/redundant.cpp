#include "statics/stability/redundant.hpp"

#include "core/tolerance.hpp"
#include "statics/matrix/lanes.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gusset {

namespace {

using State = std::vector<double>; // of self-stress: a force per bar, then per restraint

double largestOf(const State& state) {
    double largest = 0;
    for (double force : state) {
        largest = std::max(largest, std::abs(force));
    }
    return largest;
}

// States of self-stress, each with 1 in its own free column.
std::vector<State> statesOf(const Factors<double>& factors) {
    const std::vector<int>& free = factors.freeColumns;
    std::vector<State> states(std::min(free.size(), kRedundantsShown), State(factors.columns));
    for (std::size_t first = 0; first < states.size(); first += kLanes) {
        const std::size_t count = std::min(kLanes, states.size() - first);
        std::vector<Lanes> bundle(factors.columns);
        for (std::size_t lane = 0; lane < count; ++lane) {
            bundle[static_cast<std::size_t>(free[first + lane])].at[lane] = 1;
        }
        completeNullVector(factors, bundle);
        for (std::size_t i = 0; i < bundle.size(); ++i) {
            for (std::size_t lane = 0; lane < count; ++lane) {
                states[first + lane][i] = bundle[i].at[lane];
            }
        }
    }
    return states;
}

// The last column that the state stresses: supports come after members, and later items after
// earlier ones.
std::size_t lastStressed(const State& state) {
    const double small = kZeroForce * largestOf(state);
    std::size_t last = state.size() - 1;
    while (last > 0 && std::abs(state[last]) <= small) {
        --last;
    }
    return last;
}

void takeOut(std::size_t column, const State& from, State& state) {
    const double factor = state[column] / from[column];
    if (factor == 0) {
        return;
    }
    for (std::size_t i = 0; i < state.size(); ++i) {
        state[i] -= factor * from[i];
    }
    state[column] = 0;
}

Redundant redundantAt(std::size_t column, const State& state, std::size_t members) {
    const double small = kZeroForce * largestOf(state);
    Redundant redundant;
    if (column < members) {
        redundant.what = MemberId{static_cast<int>(column)};
    } else {
        redundant.what = RestraintId{static_cast<int>(column - members)};
    }
    for (std::size_t i = 0; i < members; ++i) {
        if (i != column && std::abs(state[i]) > small) {
            redundant.sharing.push_back(MemberId{static_cast<int>(i)});
        }
    }
    return redundant;
}

} // namespace

std::vector<Redundant> redundantsOf(const Structure& structure, const Equilibrium& equilibrium) {
    std::vector<State> states = statesOf(equilibrium.factors);
    std::vector<std::size_t> columns;
    for (std::size_t i = 0; i < states.size(); ++i) {
        columns.push_back(lastStressed(states[i]));
        for (std::size_t k = 0; k < states.size(); ++k) {
            if (k != i) {
                takeOut(columns[i], states[i], states[k]);
            }
        }
    }
    // Sorted by column, whatever order the elimination left them in.
    std::vector<std::size_t> order(states.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return columns[a] < columns[b]; });
    std::vector<Redundant> redundants;
    redundants.reserve(states.size());
    for (std::size_t i : order) {
        redundants.push_back(redundantAt(columns[i], states[i], structure.bars.size()));
    }
    return redundants;
}

} // namespace gusset
