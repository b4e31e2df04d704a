#include "statics/equilibrium/joint_pattern.hpp"

#include "core/index.hpp"

#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>

#include <algorithm>

namespace gusset {

namespace {

using Graph = Eigen::SparseMatrix<char, Eigen::ColMajor, int>;

// Both directions of every bar, and the diagonal. There are never two bars between the same joints.
Graph graphOf(std::size_t joints, const std::vector<Bar>& bars) {
    const auto size = static_cast<int>(joints);
    std::vector<int> degree(joints, 1);
    for (const Bar& bar : bars) {
        ++degree[at(bar.a)];
        ++degree[at(bar.b)];
    }
    Graph graph(size, size);
    graph.resizeNonZeros(static_cast<int>(joints + 2 * bars.size()));
    int* start = graph.outerIndexPtr();
    int* inner = graph.innerIndexPtr();
    start[0] = 0;
    for (std::size_t i = 0; i < joints; ++i) {
        start[i + 1] = start[i] + degree[i];
    }
    std::vector<int> next(start, start + joints);
    const auto add = [&](int column, int row) { inner[next[at(column)]++] = row; };
    for (int i = 0; i < size; ++i) {
        add(i, i);
    }
    for (const Bar& bar : bars) {
        add(bar.a, bar.b);
        add(bar.b, bar.a);
    }
    std::fill_n(graph.valuePtr(), graph.nonZeros(), char(1));
    return graph;
}

void orderJoints(std::size_t joints, const std::vector<Bar>& bars, JointPattern& pattern) {
    Graph graph = graphOf(joints, bars);
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> permutation;
    Eigen::internal::minimum_degree_ordering(graph, permutation);
    pattern.order.assign(permutation.indices().data(), permutation.indices().data() + joints);
    pattern.place.resize(joints);
    for (std::size_t k = 0; k < joints; ++k) {
        pattern.place[at(pattern.order[k])] = static_cast<int>(k);
    }
}

void listEnds(std::size_t joints, const std::vector<Bar>& bars, JointPattern& pattern) {
    pattern.endStart.assign(joints + 1, 0);
    const auto place = [&](int joint) { return pattern.place[at(joint)]; };
    for (const Bar& bar : bars) {
        ++pattern.endStart[at(place(bar.a)) + 1];
        ++pattern.endStart[at(place(bar.b)) + 1];
    }
    for (std::size_t k = 0; k < joints; ++k) {
        pattern.endStart[k + 1] += pattern.endStart[k];
    }
    pattern.ends.resize(2 * bars.size());
    std::vector<int> next(pattern.endStart.begin(), pattern.endStart.end() - 1);
    for (std::size_t i = 0; i < bars.size(); ++i) {
        const int a = place(bars[i].a);
        const int b = place(bars[i].b);
        pattern.ends[at(next[at(a)]++)] = {static_cast<int>(i), b, 1};
        pattern.ends[at(next[at(b)]++)] = {static_cast<int>(i), a, -1};
    }
}

std::vector<int> eliminationTree(const JointPattern& pattern, std::size_t joints) {
    std::vector<int> parent(joints, -1);
    std::vector<int> ancestor(joints, -1); // compressed paths
    for (int k = 0; k < static_cast<int>(joints); ++k) {
        for (int e = pattern.endStart[at(k)]; e < pattern.endStart[at(k) + 1]; ++e) {
            for (int i = pattern.ends[at(e)].other; i >= 0 && i < k;) {
                const int next = ancestor[at(i)];
                ancestor[at(i)] = k;
                if (next < 0) {
                    parent[at(i)] = k;
                }
                i = next;
            }
        }
    }
    return parent;
}

// Row k of the factor has an entry in every column on the paths up the tree from the other ends of
// its bars.
void listRows(std::size_t joints, JointPattern& pattern) {
    const std::vector<int> parent = eliminationTree(pattern, joints);
    std::vector<int> mark(joints, -1);
    std::vector<int> count(joints, 0);
    std::vector<int> path;
    pattern.rowStart.assign(1, 0);
    for (int k = 0; k < static_cast<int>(joints); ++k) {
        mark[at(k)] = k;
        const std::size_t rowBegin = pattern.rows.size();
        for (int e = pattern.endStart[at(k)]; e < pattern.endStart[at(k) + 1]; ++e) {
            path.clear();
            for (int i = pattern.ends[at(e)].other; i < k && mark[at(i)] != k; i = parent[at(i)]) {
                mark[at(i)] = k;
                ++count[at(i)];
                path.push_back(i);
            }
            // Collected backwards: a path found later may feed an earlier one, never the other way
            // round.
            pattern.rows.insert(pattern.rows.end(), path.rbegin(), path.rend());
        }
        std::reverse(pattern.rows.begin() + static_cast<std::ptrdiff_t>(rowBegin),
                     pattern.rows.end());
        pattern.rowStart.push_back(static_cast<int>(pattern.rows.size()));
    }
    pattern.columnStart.assign(joints + 1, 0);
    for (std::size_t k = 0; k < joints; ++k) {
        pattern.columnStart[k + 1] = pattern.columnStart[k] + count[k];
    }
}

} // namespace

JointPattern analysePattern(std::size_t joints, const std::vector<Bar>& bars) {
    JointPattern pattern;
    orderJoints(joints, bars, pattern);
    listEnds(joints, bars, pattern);
    listRows(joints, pattern);
    return pattern;
}

bool fits(const JointPattern& pattern, std::size_t joints, const std::vector<Bar>& bars) {
    if (pattern.order.size() != joints || pattern.ends.size() != 2 * bars.size()) {
        return false;
    }
    for (std::size_t k = 0; k < joints; ++k) {
        for (int e = pattern.endStart[k]; e < pattern.endStart[k + 1]; ++e) {
            const BarEnd& end = pattern.ends[at(e)];
            const Bar& bar = bars[at(end.bar)];
            const int here = end.sign > 0 ? bar.a : bar.b;
            const int there = end.sign > 0 ? bar.b : bar.a;
            if (pattern.order[k] != here || pattern.order[at(end.other)] != there) {
                return false;
            }
        }
    }
    return true;
}

} // namespace gusset
