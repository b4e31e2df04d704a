#include "classroom/exercise/answer_names.hpp"

#include <algorithm>

namespace gusset {

namespace {

void addName(std::vector<std::string>& names, const std::string& name) {
    std::string unique = name;
    for (int copy = 2; std::find(names.begin(), names.end(), unique) != names.end(); ++copy) {
        unique = name + " " + std::to_string(copy);
    }
    names.push_back(unique);
}

std::string rollerName(const std::string& joint, double degrees) {
    const Vec2 along = directionOf(degrees);
    if (along.x == 0) {
        return joint + ":y";
    }
    return along.y == 0 ? joint + ":x" : joint;
}

} // namespace

std::vector<std::string> reactionNames(const Truss& truss) {
    std::vector<std::string> names;
    for (const Support& support : truss.supports) {
        const std::string& joint = truss.joints[support.joint.at()].label;
        if (support.kind == SupportKind::Pin) {
            addName(names, joint + ":x");
            addName(names, joint + ":y");
        } else {
            addName(names, rollerName(joint, support.reaction));
        }
    }
    return names;
}

std::vector<std::string> answerNames(const Truss& truss) {
    std::vector<std::string> names;
    for (const Member& member : truss.members) {
        names.push_back(truss.joints[member.a.at()].label + "-" +
                        truss.joints[member.b.at()].label);
    }
    return names;
}

} // namespace gusset
