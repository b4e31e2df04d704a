#include "support/dense.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gusset::support {

namespace {

constexpr double kSmallestPivot = 1e-6;

void put(DenseMatrix& matrix, std::size_t column, JointId joint, Vec2 value) {
    matrix[2 * joint.at()][column] = value.x;
    matrix[2 * joint.at() + 1][column] = value.y;
}

Vec2 unit(double degrees) {
    const double radians = degrees * std::numbers::pi / 180;
    return {std::cos(radians), std::sin(radians)};
}

DenseMatrix identity(std::size_t size) {
    DenseMatrix matrix(size, std::vector<double>(size, 0.0));
    for (std::size_t i = 0; i < size; ++i) {
        matrix[i][i] = 1;
    }
    return matrix;
}

void addRow(std::vector<double>& target, const std::vector<double>& row, double factor) {
    for (std::size_t i = 0; i < row.size(); ++i) {
        target[i] += factor * row[i];
    }
}

} // namespace

DenseMatrix denseEquilibrium(const Truss& truss) {
    std::size_t columns = truss.members.size();
    for (const Support& support : truss.supports) {
        columns += support.kind == SupportKind::Pin ? 2 : 1;
    }
    DenseMatrix matrix(2 * truss.joints.size(), std::vector<double>(columns, 0.0));
    std::size_t column = 0;
    for (const Member& member : truss.members) {
        const Vec2 run = truss.joints[member.b.at()].at - truss.joints[member.a.at()].at;
        const Vec2 along = (1 / length(run)) * run;
        put(matrix, column, member.a, along);
        put(matrix, column++, member.b, -along);
    }
    for (const Support& support : truss.supports) {
        const bool pin = support.kind == SupportKind::Pin;
        put(matrix, column++, support.joint, pin ? Vec2{1, 0} : unit(support.reaction));
        if (pin) {
            put(matrix, column++, support.joint, {0, 1});
        }
    }
    return matrix;
}

std::optional<DenseMatrix> denseInverse(DenseMatrix matrix) {
    const std::size_t size = matrix.size();
    if (size == 0 || matrix[0].size() != size) {
        return std::nullopt;
    }
    DenseMatrix inverse = identity(size);
    for (std::size_t column = 0; column < size; ++column) {
        std::size_t best = column;
        for (std::size_t row = column; row < size; ++row) {
            if (std::abs(matrix[row][column]) > std::abs(matrix[best][column])) {
                best = row;
            }
        }
        if (std::abs(matrix[best][column]) < kSmallestPivot) {
            return std::nullopt;
        }
        std::swap(matrix[best], matrix[column]);
        std::swap(inverse[best], inverse[column]);
        const double pivot = matrix[column][column];
        for (double& value : matrix[column]) {
            value /= pivot;
        }
        for (double& value : inverse[column]) {
            value /= pivot;
        }
        for (std::size_t row = 0; row < size; ++row) {
            const double factor = matrix[row][column];
            if (row == column || factor == 0) {
                continue;
            }
            addRow(matrix[row], matrix[column], -factor);
            addRow(inverse[row], inverse[column], -factor);
        }
    }
    return inverse;
}

double largestEntry(const DenseMatrix& matrix) {
    double largest = 0;
    for (const std::vector<double>& row : matrix) {
        for (double value : row) {
            largest = std::max(largest, std::abs(value));
        }
    }
    return largest;
}

} // namespace gusset::support
