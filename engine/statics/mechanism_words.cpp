// A mechanism and its cure in words; see mechanism.hpp.
#include "statics/mechanism.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr std::size_t kMostNamed = 5; // joints in one sentence

const std::string& labelOf(const Truss& truss, JointId joint) {
    return truss.joints[joint.at()].label;
}

// "joint C", "joints C and D", "joints C, D, E, F, G and 4 more"
std::string named(const Truss& truss, const std::vector<JointId>& joints) {
    if (joints.size() == 1) {
        return "joint " + labelOf(truss, joints.front());
    }
    const std::size_t shown = joints.size() <= kMostNamed + 1 ? joints.size() : kMostNamed;
    std::string text = "joints ";
    for (std::size_t i = 0; i < shown; ++i) {
        const bool last = i + 1 == joints.size();
        if (i > 0) {
            text += last ? " and " : ", ";
        }
        text += labelOf(truss, joints[i]);
    }
    if (shown < joints.size()) {
        text += " and " + std::to_string(joints.size() - shown) + " more";
    }
    return text;
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 32);
    }
    return text;
}

std::vector<const Bar*> barsAt(const Structure& structure, JointId joint) {
    std::vector<const Bar*> bars;
    for (const Bar& bar : structure.bars) {
        if (bar.a == joint.index || bar.b == joint.index) {
            bars.push_back(&bar);
        }
    }
    return bars;
}

std::string wayOf(Vec2 velocity) {
    const double size = length(velocity);
    if (std::abs(velocity.y) <= kRigid * size) {
        return "horizontally";
    }
    if (std::abs(velocity.x) <= kRigid * size) {
        return "vertically";
    }
    return "along a slope";
}

JointId jointAt(const Structure& structure, Vec2 place) {
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        if (length(structure.joints[i] - place) <= kRigid * structure.extent) {
            return JointId{static_cast<int>(i)};
        }
    }
    return {};
}

// "turn about joint A", "slide horizontally"
std::string motionInWords(const Truss& truss, const Structure& structure,
                          const RigidMotion& motion) {
    if (!motion.turns) {
        return "slide " + wayOf(motion.velocity);
    }
    const JointId centre = jointAt(structure, motion.centre);
    if (centre.valid()) {
        return "turn about joint " + labelOf(truss, centre);
    }
    // Every restraint that acts on a turning body points at its centre.
    if (structure.restraints.size() >= 2) {
        return "turn about the point where the lines of its reactions meet";
    }
    return "turn";
}

std::string wholeInWords(const Truss& truss, const Structure& structure,
                         const RigidMotion& motion) {
    const std::string start = structure.restraints.empty()
                                  ? "Nothing supports the truss: as a whole it"
                                  : "The truss as a whole";
    return start + " can " + motionInWords(truss, structure, motion);
}

std::string oneJointInWords(const Truss& truss, const Structure& structure,
                            const Mechanism& mechanism) {
    const JointId joint = mechanism.moving.front();
    const std::string name = "Joint " + labelOf(truss, joint);
    const std::vector<const Bar*> bars = barsAt(structure, joint);
    if (bars.empty()) {
        return name + " is joined to no member and can move " +
               wayOf(mechanism.velocities[joint.at()]);
    }
    if (bars.size() == 1) {
        return name + " hangs on a single member and can swing";
    }
    return "All members at joint " + labelOf(truss, joint) +
           " lie in one line, and nothing holds it across that line";
}

std::string partInWords(const Truss& truss, const Structure& structure,
                        const Mechanism& mechanism) {
    const std::string who = capital(named(truss, mechanism.moving));
    const std::optional<RigidMotion> motion = rigidMotionOf(structure, mechanism, mechanism.moving);
    if (motion && motion->turns) {
        const JointId centre = jointAt(structure, motion->centre);
        if (centre.valid()) {
            return who + " can turn together about joint " + labelOf(truss, centre);
        }
    }
    if (motion && !motion->turns) {
        return who + " can slide together " + wayOf(motion->velocity);
    }
    return who + " can move without any member changing its length";
}

std::string supportInWords(const Truss& truss, const Cure& cure) {
    const std::string& label = labelOf(truss, cure.support);
    if (cure.pin) {
        return "a pin in place of the roller at " + label;
    }
    return "a support at " + label + " that holds it " +
           (cure.reaction == 90 ? "vertically" : "horizontally");
}

std::string cureInWords(const Truss& truss, const Cures& cures) {
    if (!cures.member && !cures.support) {
        return ".";
    }
    if (!cures.member) {
        return "; " + supportInWords(truss, *cures.support) + " would stop it.";
    }
    const std::string member = "; a member between " + labelOf(truss, cures.member->a) + " and " +
                               labelOf(truss, cures.member->b);
    if (!cures.support) {
        return member + " would stop it.";
    }
    return member + ", or " + supportInWords(truss, *cures.support) + ", would stop it.";
}

} // namespace

std::string inWords(const Truss& truss, const Structure& structure, const Mechanism& mechanism,
                    const Cures& cures) {
    std::vector<JointId> all;
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        all.push_back(JointId{static_cast<int>(i)});
    }
    std::string what;
    const std::optional<RigidMotion> whole =
        all.size() > 1 ? rigidMotionOf(structure, mechanism, all) : std::nullopt;
    if (whole) {
        what = wholeInWords(truss, structure, *whole);
    } else if (mechanism.moving.size() == 1) {
        what = oneJointInWords(truss, structure, mechanism);
    } else {
        what = partInWords(truss, structure, mechanism);
    }
    return what + cureInWords(truss, cures);
}

} // namespace gusset
