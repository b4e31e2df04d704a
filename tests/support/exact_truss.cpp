#include "support/exact_truss.hpp"

#include <boost/multiprecision/cpp_int.hpp>

#include <cmath>
#include <exception>

namespace gusset::support {

namespace {

using Fraction = boost::multiprecision::number<
    boost::multiprecision::rational_adaptor<boost::multiprecision::cpp_int_backend<>>,
    boost::multiprecision::et_off>;
using Rows = std::vector<std::vector<Fraction>>;

// The held directions of each joint, x and y.
std::vector<bool> heldIn(const Truss& truss) {
    std::vector<bool> held(2 * truss.joints.size(), false);
    for (const Support& support : truss.supports) {
        const bool along = support.kind == SupportKind::Pin || support.reaction == 0;
        const bool up = support.kind == SupportKind::Pin || support.reaction == 90;
        held[2 * support.joint.at()] = held[2 * support.joint.at()] || along;
        held[2 * support.joint.at() + 1] = held[2 * support.joint.at() + 1] || up;
    }
    return held;
}

std::vector<Fraction> loadsOf(const Truss& truss) {
    std::vector<Fraction> loads(2 * truss.joints.size());
    for (const Load& load : truss.loads) {
        const auto& force = std::get<JointForce>(load.what);
        loads[2 * force.joint.at()] += Fraction(force.fx);
        loads[2 * force.joint.at() + 1] += Fraction(force.fy);
    }
    return loads;
}

double stiffnessOf(const Truss& truss, const Member& member) {
    for (const Section& section : truss.sections) {
        if (section.id == member.section) {
            return *truss.materials.front().E * *section.area;
        }
    }
    return 1;
}

// x of the square system `rows`, whose last column is its right-hand side; nothing if singular.
std::optional<std::vector<Fraction>> solved(Rows rows) {
    const std::size_t count = rows.size();
    for (std::size_t k = 0; k < count; ++k) {
        std::size_t pivot = k;
        while (pivot < count && rows[pivot][k] == 0) {
            ++pivot;
        }
        if (pivot == count) {
            return std::nullopt;
        }
        std::swap(rows[k], rows[pivot]);
        for (std::size_t i = k + 1; i < count; ++i) {
            if (rows[i][k] == 0) {
                continue;
            }
            const Fraction factor = rows[i][k] / rows[k][k];
            for (std::size_t j = k; j <= count; ++j) {
                if (rows[k][j] != 0) {
                    rows[i][j] -= factor * rows[k][j];
                }
            }
        }
    }
    std::vector<Fraction> x(count);
    for (std::size_t k = count; k-- > 0;) {
        Fraction sum = rows[k][count];
        for (std::size_t j = k + 1; j < count; ++j) {
            if (rows[k][j] != 0) {
                sum -= rows[k][j] * x[j];
            }
        }
        x[k] = sum / rows[k][k];
    }
    return x;
}

} // namespace

std::optional<std::vector<double>> exactForces(const Truss& truss) {
    const std::vector<bool> held = heldIn(truss);
    std::vector<int> number(held.size(), -1);
    std::size_t free = 0;
    for (std::size_t i = 0; i < held.size(); ++i) {
        number[i] = held[i] ? -1 : static_cast<int>(free++);
    }
    // Per member: direction (not of unit length), and EA/L³.
    const std::vector<Fraction> loads = loadsOf(truss);
    Rows rows(free, std::vector<Fraction>(free + 1));
    for (std::size_t i = 0; i < held.size(); ++i) {
        if (!held[i]) {
            rows[static_cast<std::size_t>(number[i])][free] = loads[i];
        }
    }
    struct Line {
        Fraction d[4]; // at a's x and y, then b's
        std::size_t at[4];
        Fraction density;
        double length = 0;
    };
    std::vector<Line> lines;
    for (const Member& member : truss.members) {
        const Vec2 a = truss.joints[member.a.at()].at;
        const Vec2 b = truss.joints[member.b.at()].at;
        Line line;
        line.d[2] = Fraction(b.x) - Fraction(a.x);
        line.d[3] = Fraction(b.y) - Fraction(a.y);
        line.d[0] = -line.d[2];
        line.d[1] = -line.d[3];
        line.at[0] = 2 * member.a.at();
        line.at[1] = line.at[0] + 1;
        line.at[2] = 2 * member.b.at();
        line.at[3] = line.at[2] + 1;
        line.length = std::hypot(line.d[2].convert_to<double>(), line.d[3].convert_to<double>());
        line.density =
            Fraction(stiffnessOf(truss, member) / line.length / line.length / line.length);
        for (int p = 0; p < 4; ++p) {
            for (int q = 0; q < 4; ++q) {
                const int row = number[line.at[p]];
                const int column = number[line.at[q]];
                if (row >= 0 && column >= 0) {
                    rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)] +=
                        line.density * line.d[p] * line.d[q];
                }
            }
        }
        lines.push_back(std::move(line));
    }
    const std::optional<std::vector<Fraction>> moves = solved(std::move(rows));
    if (!moves) {
        return std::nullopt;
    }
    std::vector<double> forces;
    for (const Line& line : lines) {
        Fraction stretch = 0;
        for (int p = 0; p < 4; ++p) {
            if (const int row = number[line.at[p]]; row >= 0) {
                stretch += line.d[p] * (*moves)[static_cast<std::size_t>(row)];
            }
        }
        forces.push_back(Fraction(line.density * stretch).convert_to<double>() * line.length);
    }
    return forces;
}

} // namespace gusset::support
