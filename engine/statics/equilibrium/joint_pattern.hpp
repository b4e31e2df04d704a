#pragma once
// The sparsity pattern of a stiffness matrix, worked out on joints rather than degrees of freedom:
// half the nodes and a quarter of the edges. It depends only on which joints the members connect,
// and is kept while numbers change. Ordering: approximate minimum degree, P. R. Amestoy, T. A.
// Davis, I. S. Duff, SIAM J. Matrix Anal. Appl. 17 (1996) 886–905. Elimination tree and row
// patterns: J. W. H. Liu, SIAM J. Matrix Anal. Appl. 11 (1990) 134–172.

#include "statics/equilibrium/structure.hpp"

#include <vector>

namespace gusset {

// A bar as seen from one of its joints.
struct BarEnd {
    int bar = 0;
    int other = 0; // place in the order of the joint at the other end
    int sign = 1;  // +1: this joint is the bar's a
};

struct JointPattern {
    std::vector<int> order; // joint by place
    std::vector<int> place; // of each joint
    // For place k: its bar ends are ends[endStart[k]] …, and the columns of its row in the factor
    // are rows[rowStart[k]] …, each before those that depend on it.
    std::vector<int> endStart;
    std::vector<BarEnd> ends;
    std::vector<int> rowStart;
    std::vector<int> rows;
    std::vector<int> columnStart; // of the factor, below the diagonal
};

[[nodiscard]] JointPattern analysePattern(std::size_t joints, const std::vector<Bar>&);
// Whether the pattern was worked out for these bars.
[[nodiscard]] bool fits(const JointPattern&, std::size_t joints, const std::vector<Bar>&);

} // namespace gusset
