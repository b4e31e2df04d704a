// The text that undo shows for an edit.

#include "model/edit/edit.hpp"

namespace gusset {

namespace {

std::string labelOf(const Truss& truss, JointId joint) {
    return joint.valid() && joint.at() < truss.joints.size() ? truss.joints[joint.at()].label : "";
}

std::string ofJoint(const char* what, const Truss& truss, JointId joint) {
    return std::string(what) + " " + labelOf(truss, joint);
}

std::string name(const Truss&, const AddJoint&) { return "Add joint"; }
std::string name(const Truss& truss, const MoveJoint& edit) {
    return ofJoint("Move joint", truss, edit.joint);
}
std::string name(const Truss& truss, const MoveJoints& edit) {
    if (!edit.label.empty()) {
        return edit.label;
    }
    return edit.joints.size() == 1 ? ofJoint("Move joint", truss, edit.joints.front())
                                   : "Move " + std::to_string(edit.joints.size()) + " joints";
}
std::string name(const Truss& truss, const MergeJoints& edit) {
    return ofJoint("Merge joint", truss, edit.gone) + " into " + labelOf(truss, edit.into);
}
std::string name(const Truss& truss, const SplitMember& edit) {
    const bool known = edit.member.valid() && edit.member.at() < truss.members.size();
    return "Joint on member" + (known ? " " + memberName(truss, edit.member) : "");
}
std::string name(const Truss&, const CopyThings& edit) {
    if (!edit.label.empty()) {
        return edit.label;
    }
    return edit.placements.size() == 1
               ? "Copy"
               : "Copy " + std::to_string(edit.placements.size()) + " times";
}
std::string name(const Truss& truss, const RenameJoint& edit) {
    return ofJoint("Rename joint", truss, edit.joint);
}
std::string name(const Truss& truss, const DrawMember& edit) {
    const std::string from = labelOf(truss, edit.from.joint);
    const std::string to = labelOf(truss, edit.to.joint);
    if (from.empty() || to.empty()) {
        return "Draw member";
    }
    return "Draw member " + from + (from.size() == 1 && to.size() == 1 ? "" : "–") + to;
}
std::string name(const Truss& truss, const SetSupport& edit) {
    return ofJoint(edit.kind == SupportKind::Pin ? "Pin at" : "Roller at", truss, edit.joint);
}
std::string name(const Truss& truss, const SetMember& edit) {
    const bool known = edit.member.valid() && edit.member.at() < truss.members.size();
    return "Change member" + (known ? " " + memberName(truss, edit.member) : "");
}
std::string name(const Truss& truss, const ChangeSupport& edit) {
    return ofJoint("Change support at", truss, edit.to.joint);
}
std::string name(const Truss& truss, const RemoveSupports& edit) {
    return ofJoint("Remove support at", truss, edit.joint);
}

std::string nameOfLoad(const char* what, const Truss& truss, const Load& load) {
    const JointId joint = jointOf(load);
    return joint.valid() ? ofJoint((std::string(what) + " at").c_str(), truss, joint) : what;
}
std::string name(const Truss& truss, const AddLoad& edit) {
    return nameOfLoad("Add load", truss, edit.load);
}
std::string name(const Truss& truss, const SetLoad& edit) {
    return nameOfLoad("Change load", truss, edit.to);
}

std::string name(const Truss& truss, const Remove& edit) {
    const Things& things = edit.things;
    const std::size_t count =
        things.joints.size() + things.members.size() + things.supports.size() + things.loads.size();
    if (count != 1) {
        return "Remove " + std::to_string(count) + " things";
    }
    if (!things.joints.empty()) {
        return ofJoint("Remove joint", truss, things.joints.front());
    }
    if (!things.members.empty() && things.members.front().at() < truss.members.size()) {
        return "Remove member " + memberName(truss, things.members.front());
    }
    return things.supports.empty() ? "Remove load" : "Remove support";
}

std::string name(const Truss& truss, const SetMaterial& edit) {
    const bool adds = edit.index >= static_cast<int>(truss.materials.size());
    return (adds ? "Add material " : "Change material ") + edit.to.id;
}
std::string name(const Truss&, const RemoveMaterial&) { return "Remove material"; }
std::string name(const Truss& truss, const SetSection& edit) {
    const bool adds = edit.index >= static_cast<int>(truss.sections.size());
    return (adds ? "Add section " : "Change section ") + edit.to.id;
}
std::string name(const Truss&, const RemoveSection&) { return "Remove section"; }
std::string name(const Truss&, const UseSection& edit) { return "Use section " + edit.section; }
std::string name(const Truss& truss, const WarmMembers& edit) {
    const std::size_t count = edit.members.size();
    const bool one = count == 1 && edit.members.front().at() < truss.members.size();
    return "Warm " + (one ? "member " + memberName(truss, edit.members.front())
                          : std::to_string(count) + " members");
}
std::string name(const Truss&, const SetTitle&) { return "Change title"; }
std::string name(const Truss&, const SetUnits&) { return "Change units"; }
std::string name(const Truss&, const SetClassSettings&) { return "Change class settings"; }
std::string name(const Truss&, const SetChecks&) { return "Change how members are checked"; }

// Named by the first entry that differs: lists of this kind are edited one entry at a time.
template <class Named>
std::string nameOfList(const std::string& what, const std::vector<Named>& before,
                       const std::vector<Named>& after) {
    std::size_t i = 0;
    while (i < before.size() && i < after.size() && before[i] == after[i]) {
        ++i;
    }
    if (i < after.size() && before.size() <= after.size()) {
        return (before.size() < after.size() ? "Add " : "Change ") + what + " " + after[i].id;
    }
    return i < before.size() ? "Remove " + what + " " + before[i].id : "Change " + what;
}
std::string name(const Truss& truss, const SetCombinations& edit) {
    return nameOfList("combination", truss.combinations, edit.to);
}
std::string name(const Truss& truss, const SetMovingLoads& edit) {
    return nameOfList("moving load", truss.moving, edit.to);
}
std::string name(const Truss&, const ReplaceTruss& edit) { return edit.label; }

} // namespace

std::string describe(const Truss& before, const Edit& edit) {
    return std::visit([&](const auto& it) { return name(before, it); }, edit.kind());
}

} // namespace gusset
