#include "classroom/practice/standing.hpp"

#include "classroom/marking/free_bodies.hpp"

namespace gusset {

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

std::vector<bool> knownIn(const HasFound& found) {
    std::vector<bool> known = found.reactions;
    known.insert(known.end(), found.forces.begin(), found.forces.end());
    return known;
}

Standing standingOfPart(const Structure& structure, const HasFound& found,
                        const std::vector<JointId>& joints) {
    const std::vector<bool> known = knownIn(found);
    const std::vector<Vec2> noLoads(structure.joints.size()); // they are known in any case
    const PartOfTruss part = partOf(structure, noLoads, joints);
    Standing standing;
    for (const ActingForce& force : part.forces) {
        if (known[static_cast<std::size_t>(force.of)]) {
            continue;
        }
        standing.unknowns.push_back(unknownNumbered(structure, force.of));
        if (sumFor(part, known, force.of, structure.extent)) {
            standing.given.push_back(standing.unknowns.back());
        }
    }
    return standing;
}

Standing standingAt(const Structure& structure, const HasFound& found, JointId joint) {
    return standingOfPart(structure, found, {joint});
}

Standing standingOfWhole(const Structure& structure, const HasFound& found) {
    return standingOfPart(structure, found, allJoints(structure));
}

std::vector<JointId> usefulJoints(const Structure& structure, const HasFound& found) {
    std::vector<JointId> all;
    std::vector<JointId> some;
    for (const JointId joint : allJoints(structure)) {
        const Standing at = standingAt(structure, found, joint);
        if (!at.given.empty()) {
            (at.given.size() == at.unknowns.size() ? all : some).push_back(joint);
        }
    }
    all.insert(all.end(), some.begin(), some.end());
    return all;
}

} // namespace gusset
