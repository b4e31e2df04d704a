#include "classroom/practice/standing.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

// Below this, two directions of unit length are the same to the eye of whoever draws them.
constexpr double kSameDirection = 1e-9;

// The share of one unknown in the equations of a body: in ΣF_x, ΣF_y and ΣM / extent.
using Column = std::array<double, 3>;

Column minus(const Column& a, const Column& b, double factor) {
    return {a[0] - factor * b[0], a[1] - factor * b[1], a[2] - factor * b[2]};
}
double product(const Column& a, const Column& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }

// Whether the equations determine this unknown whatever the others are: whether its column has a
// part that no combination of the others has.
bool isDetermined(const std::vector<Column>& columns, std::size_t which) {
    std::vector<Column> others; // an orthonormal basis of their span
    const auto rest = [&](Column column) {
        for (const Column& axis : others) {
            column = minus(column, axis, product(column, axis));
        }
        return column;
    };
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (i == which) {
            continue;
        }
        const Column left = rest(columns[i]);
        const double size = std::sqrt(product(left, left));
        if (size > kSameDirection) {
            others.push_back({left[0] / size, left[1] / size, left[2] / size});
        }
    }
    const Column own = rest(columns[which]);
    return product(own, own) > kSameDirection * kSameDirection;
}

Standing standing(std::vector<MemberOrRestraint> unknowns, const std::vector<Column>& columns) {
    Standing result{std::move(unknowns), {}};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (isDetermined(columns, i)) {
            result.given.push_back(result.unknowns[i]);
        }
    }
    return result;
}

} // namespace

HasFound foundIn(const Answers& answers) {
    HasFound found;
    for (const WrittenForce& reaction : answers.reactions) {
        found.reactions.push_back(valueOf(reaction).has_value());
    }
    for (std::size_t i = 0; i < answers.forces.size(); ++i) {
        found.forces.push_back(valueOf(answers.forces[i]).has_value() || answers.zeros[i] == true);
    }
    return found;
}

Standing standingAt(const Structure& structure, const HasFound& found, JointId joint) {
    std::vector<MemberOrRestraint> unknowns;
    std::vector<Column> columns;
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        if (restraint.joint == joint && !found.reactions[i]) {
            unknowns.push_back(RestraintId{static_cast<int>(i)});
            columns.push_back({restraint.along.x, restraint.along.y, 0});
        }
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        if ((bar.a == joint.index || bar.b == joint.index) && !found.forces[i]) {
            unknowns.push_back(MemberId{static_cast<int>(i)});
            columns.push_back({bar.along.x, bar.along.y, 0}); // either end: only the line counts
        }
    }
    return standing(std::move(unknowns), columns);
}

Standing standingOfWhole(const Structure& structure, const HasFound& found) {
    std::vector<MemberOrRestraint> unknowns;
    std::vector<Column> columns;
    const double extent = structure.extent > 0 ? structure.extent : 1;
    const Vec2 origin = structure.joints.empty() ? Vec2{} : structure.joints.front();
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        if (found.reactions[i]) {
            continue;
        }
        const Restraint& restraint = structure.restraints[i];
        const Vec2 arm = structure.joints[restraint.joint.at()] - origin;
        unknowns.push_back(RestraintId{static_cast<int>(i)});
        columns.push_back({restraint.along.x, restraint.along.y,
                           (arm.x * restraint.along.y - arm.y * restraint.along.x) / extent});
    }
    return standing(std::move(unknowns), columns);
}

std::vector<JointId> usefulJoints(const Structure& structure, const HasFound& found) {
    std::vector<JointId> all;
    std::vector<JointId> some;
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        const Standing at = standingAt(structure, found, joint);
        if (!at.given.empty()) {
            (at.given.size() == at.unknowns.size() ? all : some).push_back(joint);
        }
    }
    all.insert(all.end(), some.begin(), some.end());
    return all;
}

} // namespace gusset
