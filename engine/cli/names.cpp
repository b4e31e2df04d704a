#include "cli/names.hpp"

#include <algorithm>

namespace gusset::cli {

namespace {

Issue unknownName(std::string_view what, std::string says) {
    return {IssueCode::UnknownName, what.empty() ? "\"\"" : std::string(what), std::move(says)};
}

Outcome<JointId> jointNamed(const Truss& truss, std::string_view name) {
    const JointId joint = findJoint(truss, std::string(name));
    if (!joint.valid()) {
        return unknownName(name, "is no joint: name it by its label");
    }
    return joint;
}

} // namespace

// With joints A, A-B, B-C and C, "A-B-C" may be either of two members.
Outcome<MemberId> memberNamed(const Truss& truss, std::string_view name) {
    MemberId found;
    for (auto dash = name.find('-'); dash != name.npos; dash = name.find('-', dash + 1)) {
        const JointId a = findJoint(truss, std::string(name.substr(0, dash)));
        const JointId b = findJoint(truss, std::string(name.substr(dash + 1)));
        const MemberId member = a.valid() && b.valid() ? findMember(truss, a, b) : MemberId{};
        if (member.valid() && found.valid() && member != found) {
            return unknownName(name, "may be member " + memberName(truss, found) + " or member " +
                                         memberName(truss, member) +
                                         ": name it the other way round, or rename a joint");
        }
        found = member.valid() ? member : found;
    }
    if (!found.valid()) {
        return unknownName(name, "is no member: name it by its two joints, as in A-B");
    }
    return found;
}

Outcome<std::vector<MemberId>> membersNamed(const Truss& truss, std::string_view names) {
    std::vector<MemberId> members;
    for (bool more = true; more;) {
        const auto comma = names.find(',');
        const Outcome<MemberId> member = memberNamed(truss, names.substr(0, comma));
        if (!member) {
            return member.issues();
        }
        if (std::find(members.begin(), members.end(), member.value()) != members.end()) {
            return unknownName(names.substr(0, comma), "is named twice: name each member once");
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
        return unknownName(name, "is no displacement: name a joint and a direction, as in C:y");
    }
    return JointAxis{joint, axis == "x" ? DisplacementAxis::X : DisplacementAxis::Y};
}

Outcome<std::vector<JointId>> pathNamed(const Truss& truss, std::string_view names) {
    std::vector<JointId> path;
    for (bool more = true; more;) {
        const auto comma = names.find(',');
        const Outcome<JointId> joint = jointNamed(truss, names.substr(0, comma));
        if (!joint) {
            return joint.issues();
        }
        path.push_back(joint.value());
        more = comma != names.npos;
        names.remove_prefix(more ? comma + 1 : names.size());
    }
    return path;
}

Outcome<Effect> effectNamed(const Truss& truss, std::string_view name) {
    const Issue misuse = unknownName(
        name, "is nothing to draw a line of: ask for member:A-B, reaction:A:y or displacement:C:y");
    const auto colon = name.find(':');
    if (colon == name.npos) {
        return misuse;
    }
    const std::string_view kind = name.substr(0, colon);
    const std::string_view rest = name.substr(colon + 1);
    Effect effect;
    if (kind == "member") {
        const Outcome<MemberId> member = memberNamed(truss, rest);
        if (!member) {
            return member.issues();
        }
        effect.member = member.value();
        return effect;
    }
    const auto last = rest.rfind(':');
    const std::string_view axis = last == rest.npos ? "" : rest.substr(last + 1);
    if ((kind != "reaction" && kind != "displacement") || (axis != "x" && axis != "y")) {
        return misuse;
    }
    const Outcome<JointId> joint = jointNamed(truss, rest.substr(0, last));
    if (!joint) {
        return joint.issues();
    }
    effect.kind = kind == "reaction" ? EffectKind::Reaction : EffectKind::Displacement;
    effect.joint = joint.value();
    effect.horizontal = axis == "x";
    return effect;
}

LoadChoice choiceOf(const Arguments& arguments) {
    if (std::string name = arguments.valueOf("--case"); !name.empty()) {
        return OneCase{std::move(name)};
    }
    if (std::string name = arguments.valueOf("--combination"); !name.empty()) {
        return OneCombination{std::move(name)};
    }
    return EveryLoad{};
}

} // namespace gusset::cli
