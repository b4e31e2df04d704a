#include "statics/stability/mechanism.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

Mechanism fromRows(const std::vector<double>& rows) {
    Mechanism mechanism;
    for (std::size_t i = 0; i + 1 < rows.size(); i += 2) {
        mechanism.velocities.push_back({rows[i], rows[i + 1]});
    }
    return mechanism;
}

// Scales the fastest joint to 1, sets joints at rest to zero and lists those that move.
void tidy(Mechanism& mechanism) {
    double fastest = 0;
    for (Vec2 v : mechanism.velocities) {
        fastest = std::max(fastest, length(v));
    }
    mechanism.moving.clear();
    if (fastest == 0) {
        return;
    }
    for (std::size_t i = 0; i < mechanism.velocities.size(); ++i) {
        Vec2& v = mechanism.velocities[i];
        v = {v.x / fastest, v.y / fastest};
        if (std::abs(v.x) <= kRests) {
            v.x = 0;
        }
        if (std::abs(v.y) <= kRests) {
            v.y = 0;
        }
        if (v != Vec2{}) {
            mechanism.moving.push_back(JointId{static_cast<int>(i)});
        }
    }
}

void turnWith(Mechanism& mechanism, const std::vector<Vec2>& loads) {
    double work = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        work += dot(loads[i], mechanism.velocities[i]);
    }
    if (work >= 0) {
        return;
    }
    for (Vec2& v : mechanism.velocities) {
        v = Vec2{} - v;
    }
}

// Subtracts a multiple of `other` from the mechanism, so that the rest of it does not stretch
// `cure`, which stops `other`.
void release(const Structure& structure, const Cure& cure, const Mechanism& other,
             Mechanism& mechanism) {
    const double factor = rateOf(structure, mechanism, cure) / rateOf(structure, other, cure);
    if (std::abs(factor) <= kRests) {
        return;
    }
    for (std::size_t i = 0; i < mechanism.velocities.size(); ++i) {
        Vec2& v = mechanism.velocities[i];
        v = v - factor * other.velocities[i];
    }
    tidy(mechanism);
}

std::vector<Mechanism> nullSpace(const Equilibrium& equilibrium) {
    std::vector<Mechanism> mechanisms;
    for (int row : equilibrium.factors.dependentRows) {
        if (mechanisms.size() == kMechanismsShown) {
            break;
        }
        mechanisms.push_back(fromRows(leftNullVector(equilibrium.factors, row)));
        tidy(mechanisms.back());
    }
    std::stable_sort(
        mechanisms.begin(), mechanisms.end(),
        [](const Mechanism& a, const Mechanism& b) { return a.moving.size() < b.moving.size(); });
    return mechanisms;
}

Vec2 velocityOf(const Mechanism& mechanism, JointId joint) {
    return mechanism.velocities[joint.at()];
}

// Whether the supports of these joints allow the motion. With one very distant and fast joint, the
// motion of joints close together is too slow to be told from rest, so only the supports decide.
bool isLet(const Structure& structure, const RigidMotion& motion,
           const std::vector<JointId>& joints) {
    for (const Restraint& restraint : structure.restraints) {
        if (std::find(joints.begin(), joints.end(), restraint.joint) == joints.end()) {
            continue;
        }
        if (!motion.turns) {
            if (std::abs(dot(restraint.along, motion.velocity)) >
                kRigid * length(motion.velocity)) {
                return false;
            }
            continue;
        }
        const Vec2 arm = structure.joints[restraint.joint.at()] - motion.centre;
        if (std::abs(cross(arm, restraint.along)) >
            kRigid * length(arm) + kSameSpot * structure.extent) {
            return false;
        }
    }
    return true;
}

} // namespace

double rateOf(const Structure& structure, const Mechanism& mechanism, const Cure& cure) {
    if (cure.a.valid()) {
        const Vec2 run = structure.joints[cure.b.at()] - structure.joints[cure.a.at()];
        return dot(velocityOf(mechanism, cure.b) - velocityOf(mechanism, cure.a), run) /
               length(run);
    }
    const Vec2 v = velocityOf(mechanism, cure.support);
    if (!cure.pin) {
        return dot(v, directionOf(cure.reaction));
    }
    for (const Restraint& restraint : structure.restraints) {
        if (restraint.joint == cure.support) {
            return cross(restraint.along, v);
        }
    }
    return 0;
}

std::optional<RigidMotion> rigidMotionOf(const Structure& structure, const Mechanism& mechanism,
                                         const std::vector<JointId>& joints) {
    const auto place = [&](JointId joint) { return structure.joints[joint.at()]; };
    const JointId first = joints.front();
    const JointId last = *std::max_element(joints.begin(), joints.end(), [&](JointId a, JointId b) {
        return length(place(a) - place(first)) < length(place(b) - place(first));
    });
    const Vec2 arm = place(last) - place(first);
    if (dot(arm, arm) == 0) {
        return std::nullopt;
    }
    const Vec2 start = velocityOf(mechanism, first);
    const double spin = cross(arm, velocityOf(mechanism, last) - start) / dot(arm, arm);
    for (JointId joint : joints) {
        const Vec2 offset = place(joint) - place(first);
        const Vec2 expected = start + spin * Vec2{-offset.y, offset.x};
        if (length(velocityOf(mechanism, joint) - expected) > kRigid) {
            return std::nullopt;
        }
    }
    RigidMotion motion;
    motion.velocity = start;
    motion.turns = std::abs(spin) * structure.extent > kRigid;
    if (motion.turns) {
        motion.centre = place(first) + Vec2{-start.y / spin, start.x / spin};
    }
    return isLet(structure, motion, joints) ? std::optional(motion) : std::nullopt;
}

std::vector<Mechanism> mechanismsOf(const Structure& structure, const Equilibrium& equilibrium,
                                    const std::vector<Vec2>& loads) {
    std::vector<Mechanism> mechanisms = nullSpace(equilibrium);
    for (std::size_t i = 0; i < mechanisms.size(); ++i) {
        Mechanism& mechanism = mechanisms[i];
        turnWith(mechanism, loads);
        mechanism.cures = curesOf(structure, mechanism);
        const Cures& cures = mechanism.cures;
        mechanism.cure = cures.member ? *cures.member : cures.support.value_or(Cure{});
        if (!cures.member && !cures.support) {
            continue;
        }
        for (std::size_t k = i + 1; k < mechanisms.size(); ++k) {
            release(structure, mechanism.cure, mechanism, mechanisms[k]);
        }
    }
    return mechanisms;
}

} // namespace gusset
