#include "classroom/marking/free_bodies.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kParallel = 1e-9; // of unit columns: below it, one is a combination of others

using Column = std::array<double, 3>; // ΣF_x, ΣF_y, ΣM about the first joint / extent

double inner(const Column& a, const Column& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
void takeAway(Column& from, const Column& axis) {
    const double share = inner(from, axis);
    for (std::size_t i = 0; i < 3; ++i) {
        from[i] -= share * axis[i];
    }
}

Column columnOf(const ActingForce& force, Vec2 origin, double extent) {
    return {force.along.x, force.along.y, cross(force.at - origin, force.along) / extent};
}

Sum sumOf(const Column& weights, Vec2 origin, double extent) {
    const double moment = weights[2] / extent;
    if (std::abs(weights[2]) < kParallel) {
        return {{weights[0], weights[1]}, false, {}};
    }
    // w_x F_x + w_y F_y + m M_o = m M_c with the centre c = o + (−w_y, w_x) / m.
    return {{}, true, origin + Vec2{-weights[1] / moment, weights[0] / moment}};
}

} // namespace

PartOfTruss partOf(const Structure& structure, const std::vector<Vec2>& loads,
                   const std::vector<JointId>& joints) {
    PartOfTruss part{joints, {}};
    std::vector<bool> within(structure.joints.size());
    for (const JointId joint : joints) {
        within[joint.at()] = true;
        if (loads[joint.at()] != Vec2{}) {
            part.forces.push_back(
                {kGivenLoad, loads[joint.at()], structure.joints[joint.at()], joint});
        }
    }
    const int restraints = static_cast<int>(structure.restraints.size());
    for (int i = 0; i < restraints; ++i) {
        const Restraint& restraint = structure.restraints[static_cast<std::size_t>(i)];
        if (within[restraint.joint.at()]) {
            part.forces.push_back(
                {i, restraint.along, structure.joints[restraint.joint.at()], restraint.joint});
        }
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        const auto a = static_cast<std::size_t>(bar.a);
        const auto b = static_cast<std::size_t>(bar.b);
        if (within[a] != within[b]) {
            part.forces.push_back({restraints + static_cast<int>(i),
                                   within[a] ? bar.along : -bar.along,
                                   structure.joints[within[a] ? a : b],
                                   {within[a] ? bar.a : bar.b}});
        }
    }
    return part;
}

MemberOrRestraint unknownNumbered(const Structure& structure, int number) {
    const int restraints = static_cast<int>(structure.restraints.size());
    if (number < restraints) {
        return RestraintId{number};
    }
    return MemberId{number - restraints};
}

std::vector<JointId> allJoints(const Structure& structure) {
    std::vector<JointId> joints;
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        joints.push_back({static_cast<int>(i)});
    }
    return joints;
}

double shareIn(const Sum& sum, Vec2 along, Vec2 at) {
    return sum.takesMoments ? cross(at - sum.centre, along) : dot(sum.along, along);
}
double shareIn(const Sum& sum, const ActingForce& force) {
    return shareIn(sum, force.along, force.at);
}

std::optional<Sum> sumFor(const PartOfTruss& part, const std::vector<bool>& known, int unknown,
                          double extent) {
    const Vec2 origin = part.forces.front().at;
    std::vector<Column> others; // an orthonormal basis of their span
    Column own{};
    for (const ActingForce& force : part.forces) {
        if (force.of == kGivenLoad || known[static_cast<std::size_t>(force.of)]) {
            continue;
        }
        Column column = columnOf(force, origin, extent);
        if (force.of == unknown) {
            own = column;
            continue;
        }
        for (const Column& axis : others) {
            takeAway(column, axis);
        }
        const double size = std::sqrt(inner(column, column));
        if (size > kParallel) {
            others.push_back({column[0] / size, column[1] / size, column[2] / size});
        }
    }
    for (const Column& axis : others) {
        takeAway(own, axis);
    }
    // Of a single joint, moments about it say nothing: all its columns end in 0.
    if (inner(own, own) < kParallel * kParallel) {
        return std::nullopt;
    }
    return sumOf(own, origin, extent);
}

std::vector<Sum> plainSums(const Structure& structure, const PartOfTruss& part) {
    std::vector<Sum> sums{{{1, 0}, false, {}}, {{0, 1}, false, {}}};
    if (part.joints.size() > 1) {
        for (const Restraint& restraint : structure.restraints) {
            const Vec2 centre = structure.joints[restraint.joint.at()];
            if (sums.size() == 2 || sums.back().centre != centre) {
                sums.push_back({{}, true, centre});
            }
        }
    }
    return sums;
}

std::vector<Sum> plainSumsFor(const Structure& structure, const PartOfTruss& part,
                              const std::vector<bool>& known, int unknown) {
    std::vector<Sum> found;
    for (const Sum& sum : plainSums(structure, part)) {
        const bool holdsNoOther =
            std::all_of(part.forces.begin(), part.forces.end(), [&](const ActingForce& force) {
                const bool isOther = force.of != kGivenLoad && force.of != unknown &&
                                     !known[static_cast<std::size_t>(force.of)];
                const bool holds = std::abs(shareIn(sum, force)) > kNoShare;
                return isOther ? !holds : force.of != unknown || holds;
            });
        if (holdsNoOther) {
            found.push_back(sum);
        }
    }
    return found;
}

std::vector<Sum> sumsFor(const Structure& structure, const PartOfTruss& part,
                         const std::vector<bool>& known, int unknown) {
    const std::optional<Sum> only = sumFor(part, known, unknown, structure.extent);
    if (!only) {
        return {};
    }
    const ActingForce* own = nullptr;
    std::vector<const ActingForce*> others;
    for (const ActingForce& force : part.forces) {
        if (force.of == unknown) {
            own = &force;
        } else if (force.of != kGivenLoad && !known[static_cast<std::size_t>(force.of)]) {
            others.push_back(&force);
        }
    }
    std::vector<Sum> sums = plainSumsFor(structure, part, known, unknown);
    const auto partIn = [&](const Sum& sum) {
        return std::abs(shareIn(sum, *own)) / (sum.takesMoments ? structure.extent : 1);
    };
    std::stable_sort(sums.begin(), sums.end(),
                     [&](const Sum& a, const Sum& b) { return partIn(a) > partIn(b); });
    if (!sums.empty()) {
        return sums;
    }
    if (others.size() == 1) {
        const Vec2 along = others.front()->along;
        const Sum across{{-along.y, along.x}, false, {}};
        const Sum about{{}, true, others.front()->at};
        return {std::abs(shareIn(across, *own)) > kNoShare ? across : about};
    }
    return {*only};
}

} // namespace gusset
