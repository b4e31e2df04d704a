#include "support/classroom/follows.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

constexpr double kNone = 1e-9;

struct BodyForce {
    std::optional<std::size_t> of; // in Marking::forces; none: a load
    Vec2 along;
    Vec2 at;
};
struct Equation { // forces along `along`, or moments about `centre`
    bool takesMoments;
    Vec2 along;
    Vec2 centre;
};
double shareOf(const Equation& equation, const BodyForce& force) {
    return equation.takesMoments ? cross(force.at - equation.centre, force.along)
                                 : dot(equation.along, force.along);
}

bool isToldToFollow(const MarkedForce& force) {
    return force.verdict == Verdict::Carried && !force.slip;
}

class FollowCheck {
public:
    FollowCheck(const Asked& asked, const Marking& marking)
        : asked_(asked), marking_(marking), structure_(structureOf(asked.truss)),
          loads_(jointLoads(asked.truss, structure_, asked.exercise.loads)) {
        for (const MarkedForce& force : marking.forces) {
            const bool isInferred = force.verdict == Verdict::Blank && !force.body.empty();
            isThere_.push_back(!isToldToFollow(force) && !isInferred);
            std::vector<double>& values = values_.emplace_back();
            if (force.written) {
                values.push_back(*force.written);
            }
            if (force.expected && (!force.written || isMiswritten(force))) {
                values.push_back(*force.expected);
            } else if (!force.written) {
                values.push_back(force.truth);
            }
        }
    }

    std::vector<MemberOrRestraint> left() {
        for (bool goesOn = true; goesOn;) {
            goesOn = false;
            for (std::size_t i = 0; i < isThere_.size(); ++i) {
                if (!isThere_[i] && isGiven(i)) {
                    isThere_[i] = goesOn = true;
                }
            }
        }
        std::vector<MemberOrRestraint> without;
        for (std::size_t i = 0; i < isThere_.size(); ++i) {
            if (!isThere_[i] && isToldToFollow(marking_.forces[i])) {
                without.push_back(marking_.forces[i].of);
            }
        }
        return without;
    }

private:
    bool isMiswritten(const MarkedForce& force) const {
        return force.slip && marking_.slips[*force.slip].answers.size() == 1;
    }

    std::vector<BodyForce> forcesOn(const std::vector<JointId>& body) const {
        std::vector<BodyForce> forces;
        std::vector<bool> within(structure_.joints.size());
        for (const JointId joint : body) {
            within[joint.at()] = true;
            forces.push_back({{},
                              (1 / toNewton(asked_.truss.units.force)) * loads_[joint.at()],
                              structure_.joints[joint.at()]});
        }
        for (std::size_t i = 0; i < structure_.restraints.size(); ++i) {
            const Restraint& restraint = structure_.restraints[i];
            if (within[restraint.joint.at()]) {
                forces.push_back({i, restraint.along, structure_.joints[restraint.joint.at()]});
            }
        }
        for (std::size_t i = 0; i < structure_.bars.size(); ++i) {
            const Bar& bar = structure_.bars[i];
            const auto a = static_cast<std::size_t>(bar.a);
            const auto b = static_cast<std::size_t>(bar.b);
            if (within[a] != within[b]) {
                forces.push_back({structure_.restraints.size() + i,
                                  within[a] ? bar.along : -1.0 * bar.along,
                                  structure_.joints[within[a] ? a : b]});
            }
        }
        return forces;
    }

    // Along the axes, across each force, about each joint, and about where two forces meet.
    std::vector<Equation> equationsOf(const std::vector<BodyForce>& forces) const {
        std::vector<Equation> equations{{false, {1, 0}, {}}, {false, {0, 1}, {}}};
        for (const Vec2 joint : structure_.joints) {
            equations.push_back({true, {}, joint});
        }
        for (const BodyForce& one : forces) {
            equations.push_back({false, {-one.along.y, one.along.x}, {}});
            for (const BodyForce& another : forces) {
                const double sine = cross(one.along, another.along);
                if (std::abs(sine) > kNone) {
                    const double along = cross(another.at - one.at, another.along) / sine;
                    equations.push_back({true, {}, one.at + along * one.along});
                }
            }
        }
        return equations;
    }

    bool isGiven(std::size_t which) const {
        const std::vector<BodyForce> forces = forcesOn(marking_.forces[which].body);
        const std::vector<Equation> equations = equationsOf(forces);
        return std::any_of(equations.begin(), equations.end(), [&](const Equation& equation) {
            return isGivenBy(which, equation, forces);
        });
    }

    bool isGivenBy(std::size_t which, const Equation& equation,
                   const std::vector<BodyForce>& forces) const {
        double own = 0;
        std::vector<double> sums{0};
        for (const BodyForce& force : forces) {
            const double share = shareOf(equation, force);
            if (force.of == which) {
                own = share;
            } else if (std::abs(share) > kNone) {
                if (force.of && !isThere_[*force.of]) {
                    return false;
                }
                sums = added(sums, share, force.of ? values_[*force.of] : std::vector{1.0});
            }
        }
        return std::abs(own) > kNone && std::any_of(sums.begin(), sums.end(), [&](double sum) {
                   return isNear(which, -sum / own);
               });
    }
    static std::vector<double> added(const std::vector<double>& sums, double share,
                                     const std::vector<double>& values) {
        std::vector<double> all;
        for (const double sum : sums) {
            for (const double value : values) {
                all.push_back(sum + share * value);
            }
        }
        return all;
    }
    // What rounding on the way may do counts up to twice the tolerance.
    bool isNear(std::size_t which, double gives) const {
        return std::abs(values_[which].front() - gives) <=
               2 * allowance(asked_.exercise.tolerance, gives, asked_.key.largest) * (1 + 1e-9);
    }

    const Asked& asked_;
    const Marking& marking_;
    Structure structure_;
    std::vector<Vec2> loads_;
    std::vector<bool> isThere_;
    std::vector<std::vector<double>> values_; // that each may have been worked with
};

} // namespace

std::vector<MemberOrRestraint> followWithoutEquation(const Asked& asked, const Marking& marking) {
    return FollowCheck(asked, marking).left();
}

int toldToFollow(const Marking& marking) {
    return static_cast<int>(
        std::count_if(marking.forces.begin(), marking.forces.end(), isToldToFollow));
}

} // namespace gusset::support
