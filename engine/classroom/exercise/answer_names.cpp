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

std::vector<std::string> readableReactions(const Truss& truss) {
    std::vector<std::string> names = reactionNames(truss);
    for (std::size_t i = 0, restraint = 0; i < truss.supports.size(); ++i) {
        const std::size_t label = truss.joints[truss.supports[i].joint.at()].label.size();
        const std::size_t count = truss.supports[i].kind == SupportKind::Pin ? 2 : 1;
        for (std::size_t end = restraint + count; restraint < end; ++restraint) {
            if (names[restraint].size() > label && names[restraint][label] == ':') {
                names[restraint][label] = '_'; // a label may itself hold a colon
            }
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
