#include "cli/names.hpp"

namespace gusset::cli {

Outcome<MemberId> memberNamed(const Truss& truss, std::string_view name) {
    for (auto dash = name.find('-'); dash != name.npos; dash = name.find('-', dash + 1)) {
        const JointId a = findJoint(truss, std::string(name.substr(0, dash)));
        const JointId b = findJoint(truss, std::string(name.substr(dash + 1)));
        const MemberId member = a.valid() && b.valid() ? findMember(truss, a, b) : MemberId{};
        if (member.valid()) {
            return member;
        }
    }
    return Issue{IssueCode::UnknownName, std::string(name),
                 "is no member: name it by its two joints, as in A-B"};
}

Outcome<std::vector<MemberId>> membersNamed(const Truss& truss, std::string_view names) {
    std::vector<MemberId> members;
    for (bool more = true; more;) {
        const auto comma = names.find(',');
        const Outcome<MemberId> member = memberNamed(truss, names.substr(0, comma));
        if (!member) {
            return member.issues();
        }
        members.push_back(member.value());
        more = comma != names.npos;
        names.remove_prefix(more ? comma + 1 : names.size());
    }
    return members;
}

Outcome<JointAxis> jointAxisNamed(const Truss& truss, std::string_view name) {
    const auto colon = name.rfind(':');
    const std::string_view axis = colon == name.npos ? "" : name.substr(colon + 1);
    const JointId joint = findJoint(truss, std::string(name.substr(0, colon)));
    if (!joint.valid() || (axis != "x" && axis != "y")) {
        return Issue{IssueCode::UnknownName, std::string(name),
                     "is no displacement: name a joint and a direction, as in C:y"};
    }
    return JointAxis{joint, axis == "x" ? DisplacementAxis::X : DisplacementAxis::Y};
}

} // namespace gusset::cli
