// Several equations together, when no joint has few enough unknowns: the fewest joints that can be
// found whose equations settle all their unknowns. Solved by elimination with row and column
// exchange.

#include "hand/stages.hpp"

#include <Eigen/Dense>

#include <algorithm>

namespace gusset {
namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;

// Against the largest pivot: below this the equations don't settle their unknowns.
constexpr double kSettled = 1e-10;

Matrix coefficients(const std::vector<Equation>& equations, const std::vector<Symbol>& unknowns) {
    Matrix matrix(static_cast<Eigen::Index>(equations.size()),
                  static_cast<Eigen::Index>(unknowns.size()));
    for (std::size_t row = 0; row < equations.size(); ++row) {
        for (std::size_t column = 0; column < unknowns.size(); ++column) {
            matrix(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column)) =
                coefficientOf(equations[row], unknowns[column]);
        }
    }
    return matrix;
}

Eigen::FullPivLU<Matrix> eliminate(const Matrix& matrix) {
    Eigen::FullPivLU<Matrix> elimination;
    elimination.setThreshold(kSettled);
    elimination.compute(matrix);
    return elimination;
}

// A growing group of joints: how many equations it has to spare is the measure.
struct Group {
    std::vector<JointId> joints;
    std::vector<Symbol> unknowns;
    std::size_t equations = 0;

    [[nodiscard]] bool balanced() const {
        return !unknowns.empty() && equations >= unknowns.size();
    }
};

struct OpenJoint {
    std::vector<Symbol> unknowns;
    std::size_t equations = 0;
};

std::vector<OpenJoint> openJoints(const Sheet& sheet) {
    std::vector<OpenJoint> open;
    for (std::size_t i = 0; i < sheet.truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        OpenJoint one;
        for (const Acting& force : bodyOf(sheet, {joint}).unknowns) {
            one.unknowns.push_back(force.symbol);
        }
        one.equations = one.unknowns.empty() ? 0 : unusedAxes(sheet, joint).size();
        open.push_back(one);
    }
    return open;
}

bool contains(const std::vector<Symbol>& symbols, const Symbol& symbol) {
    return std::find(symbols.begin(), symbols.end(), symbol) != symbols.end();
}

int newUnknowns(const Group& group, const OpenJoint& joint) {
    return static_cast<int>(
        std::count_if(joint.unknowns.begin(), joint.unknowns.end(),
                      [&](const Symbol& symbol) { return !contains(group.unknowns, symbol); }));
}

void join(Group& group, JointId joint, const OpenJoint& open) {
    group.joints.push_back(joint);
    group.equations += open.equations;
    for (const Symbol& symbol : open.unknowns) {
        if (!contains(group.unknowns, symbol)) {
            group.unknowns.push_back(symbol);
        }
    }
}

// The joint that brings the fewest unknowns for its equations, among those that share a member
// with the group if there are any.
std::optional<JointId> bestNext(const Group& group, const std::vector<OpenJoint>& open) {
    std::optional<JointId> best;
    std::pair<bool, int> bestScore;
    for (std::size_t i = 0; i < open.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (open[i].equations == 0 ||
            std::find(group.joints.begin(), group.joints.end(), joint) != group.joints.end()) {
            continue;
        }
        const int fresh = newUnknowns(group, open[i]);
        const bool apart = fresh == static_cast<int>(open[i].unknowns.size());
        const std::pair score{apart, fresh - static_cast<int>(open[i].equations)};
        if (!best || score < bestScore) {
            best = joint;
            bestScore = score;
        }
    }
    return best;
}

std::vector<Equation> equationsOf(const Sheet& sheet, const std::vector<JointId>& joints) {
    std::vector<Equation> equations;
    for (const JointId joint : joints) {
        const Body body = bodyOf(sheet, {joint});
        for (const EquationKind kind : unusedAxes(sheet, joint)) {
            equations.push_back(sumOf(sheet, body, kind));
            equations.back().about = joint;
        }
    }
    return equations;
}

bool settled(const Sheet& sheet, const Group& group) {
    const auto elimination =
        eliminate(coefficients(equationsOf(sheet, group.joints), group.unknowns));
    return elimination.rank() == static_cast<Eigen::Index>(group.unknowns.size());
}

// Grows a group from one joint until its equations settle its unknowns.
std::optional<Group> growFrom(const Sheet& sheet, JointId start, const std::vector<OpenJoint>& open,
                              std::size_t most) {
    Group group;
    join(group, start, open[start.at()]);
    while (group.joints.size() < most) {
        if (group.balanced() && settled(sheet, group)) {
            return group;
        }
        const auto next = bestNext(group, open);
        if (!next) {
            break;
        }
        join(group, *next, open[next->at()]);
    }
    return group.balanced() && settled(sheet, group) ? std::optional(group) : std::nullopt;
}

std::optional<Group> smallestGroup(const Sheet& sheet) {
    const auto open = openJoints(sheet);
    std::optional<Group> best;
    std::size_t most = open.size();
    for (std::size_t i = 0; i < open.size(); ++i) {
        if (open[i].equations == 0) {
            continue;
        }
        const auto group = growFrom(sheet, {static_cast<int>(i)}, open, most);
        if (group && (!best || group->joints.size() < best->joints.size())) {
            best = group;
            most = group->joints.size();
        }
    }
    return best;
}

// As many of the equations as there are unknowns, independent ones.
std::vector<Equation> independent(const std::vector<Equation>& equations,
                                  const std::vector<Symbol>& unknowns) {
    const auto elimination = eliminate(coefficients(equations, unknowns));
    std::vector<std::size_t> rows;
    for (std::size_t k = 0; k < unknowns.size(); ++k) {
        // permutationP moves row i of the matrix to row P(i): invert it for the first ones.
        const auto& to = elimination.permutationP().indices();
        for (Eigen::Index i = 0; i < to.size(); ++i) {
            if (to(i) == static_cast<Eigen::Index>(k)) {
                rows.push_back(static_cast<std::size_t>(i));
            }
        }
    }
    std::sort(rows.begin(), rows.end());
    std::vector<Equation> chosen;
    for (const std::size_t row : rows) {
        chosen.push_back(equations[row]);
    }
    return chosen;
}

} // namespace

bool solveTogether(Sheet& sheet, std::vector<Equation>& equations,
                   const std::vector<Symbol>& unknowns, std::vector<Found>& found) {
    const auto elimination = eliminate(coefficients(equations, unknowns));
    if (elimination.rank() != static_cast<Eigen::Index>(unknowns.size())) {
        return false;
    }
    Vector right(static_cast<Eigen::Index>(equations.size()));
    for (std::size_t row = 0; row < equations.size(); ++row) {
        right(static_cast<Eigen::Index>(row)) = -constantOf(equations[row]);
    }
    const Vector values = elimination.solve(right);
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        const int drawn = drawnSense(sheet, unknowns[i]);
        found.push_back(record(sheet, unknowns[i], drawn * values(static_cast<Eigen::Index>(i))));
        for (Equation& equation : equations) {
            putValue(equation, unknowns[i], drawn * found.back().value);
        }
    }
    return true;
}

bool writeSimultaneous(Sheet& sheet) {
    const auto group = smallestGroup(sheet);
    if (!group) {
        return false;
    }
    Step step;
    step.kind = StepKind::Simultaneous;
    step.body = group->joints;
    step.equations = independent(equationsOf(sheet, group->joints), group->unknowns);
    step.remarks.push_back({.kind = RemarkKind::NoEasyJoint});
    step.remarks.push_back({.kind = RemarkKind::NoEasySection});
    step.remarks.push_back({.kind = RemarkKind::SimultaneousChosen,
                            .symbols = group->unknowns,
                            .number = static_cast<double>(step.equations.size())});
    noteAssumed(sheet, step);
    for (const Equation& equation : step.equations) {
        noteUses(sheet, bodyOf(sheet, {equation.about}), equation, step);
    }
    if (!solveTogether(sheet, step.equations, group->unknowns, step.found)) {
        return false;
    }
    noteFound(sheet, step);
    for (const Equation& equation : step.equations) {
        markUsed(sheet, equation.about,
                 equation.kind == EquationKind::SumX ? Vec2{1, 0} : Vec2{0, 1});
    }
    sheet.last = group->joints.back();
    sheet.steps.push_back(step);
    return true;
}

} // namespace gusset
