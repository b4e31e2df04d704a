// The text that undo shows for an edit.

#include "model/edit/edit.hpp"
#include "phrases/model/edits.hpp"

namespace gusset {

namespace {

using OfJoint = decltype("{joint}"_phrase);
using OfMember = decltype("{member}"_phrase);
using OfNamed = decltype("{id}"_phrase);
using OfSeveral = decltype("{n}"_phrase);

std::string labelOf(const Truss& truss, JointId joint) {
    return joint.valid() && joint.at() < truss.joints.size() ? truss.joints[joint.at()].label : "";
}

Statement ofJoint(OfJoint phrase, const Truss& truss, JointId joint) {
    return statement(phrase, {{"joint", labelOf(truss, joint)}});
}

// `unknown` for a member that the truss does not have.
Statement ofMember(OfMember phrase, Phrase<> unknown, const Truss& truss, MemberId member) {
    const bool known = member.valid() && member.at() < truss.members.size();
    return known ? statement(phrase, {{"member", memberName(truss, member)}}) : unknown;
}

Statement ofSeveral(OfSeveral phrase, std::size_t count) {
    return statement(phrase, {{"n", count}});
}

Statement ofNamed(OfNamed phrase, const std::string& id) { return statement(phrase, {{"id", id}}); }

Statement name(const Truss&, const AddJoint&) { return phrase::kEditAddJoint; }
Statement name(const Truss& truss, const MoveJoint& edit) {
    return ofJoint(phrase::kEditMoveJoint, truss, edit.joint);
}
Statement name(const Truss& truss, const MoveJoints& edit) {
    if (!edit.name.empty()) {
        return edit.name;
    }
    return edit.joints.size() == 1 ? ofJoint(phrase::kEditMoveJoint, truss, edit.joints.front())
                                   : ofSeveral(phrase::kEditMoveJoints, edit.joints.size());
}
Statement name(const Truss& truss, const MergeJoints& edit) {
    return statement(phrase::kEditMergeJoint,
                     {{"joint", labelOf(truss, edit.gone)}, {"other", labelOf(truss, edit.into)}});
}
Statement name(const Truss& truss, const SplitMember& edit) {
    return ofMember(phrase::kEditJointOnMember, phrase::kEditJointOnAMember, truss, edit.member);
}
Statement name(const Truss&, const CopyThings& edit) {
    if (!edit.name.empty()) {
        return edit.name;
    }
    return edit.placements.size() == 1 ? Statement(phrase::kEditCopy)
                                       : ofSeveral(phrase::kEditCopyTimes, edit.placements.size());
}
Statement name(const Truss& truss, const RenameJoint& edit) {
    return ofJoint(phrase::kEditRenameJoint, truss, edit.joint);
}
Statement name(const Truss& truss, const DrawMember& edit) {
    const std::string from = labelOf(truss, edit.from.joint);
    const std::string to = labelOf(truss, edit.to.joint);
    if (from.empty() || to.empty()) {
        return phrase::kEditDrawAMember;
    }
    return statement(phrase::kEditDrawMember, {{"member", memberName(from, to)}});
}
Statement name(const Truss& truss, const SetSupport& edit) {
    const bool pin = edit.kind == SupportKind::Pin;
    return ofJoint(pin ? phrase::kEditPin : phrase::kEditRoller, truss, edit.joint);
}
Statement name(const Truss& truss, const SetMember& edit) {
    return ofMember(phrase::kEditChangeMember, phrase::kEditChangeAMember, truss, edit.member);
}
Statement name(const Truss& truss, const ChangeSupport& edit) {
    return ofJoint(phrase::kEditChangeSupport, truss, edit.to.joint);
}
Statement name(const Truss& truss, const RemoveSupports& edit) {
    return ofJoint(phrase::kEditRemoveSupports, truss, edit.joint);
}

// `elsewhere` for a load that is at no joint.
Statement ofLoad(OfJoint phrase, Phrase<> elsewhere, const Truss& truss, const Load& load) {
    const JointId joint = jointOf(load);
    return joint.valid() ? ofJoint(phrase, truss, joint) : elsewhere;
}
Statement name(const Truss& truss, const AddLoad& edit) {
    return ofLoad(phrase::kEditAddLoadAt, phrase::kEditAddLoad, truss, edit.load);
}
Statement name(const Truss& truss, const SetLoad& edit) {
    return ofLoad(phrase::kEditChangeLoadAt, phrase::kEditChangeLoad, truss, edit.to);
}

Statement name(const Truss& truss, const Remove& edit) {
    const Things& things = edit.things;
    const std::size_t count =
        things.joints.size() + things.members.size() + things.supports.size() + things.loads.size();
    if (count != 1) {
        return ofSeveral(phrase::kEditRemoveThings, count);
    }
    if (!things.joints.empty()) {
        return ofJoint(phrase::kEditRemoveJoint, truss, things.joints.front());
    }
    if (!things.members.empty() && things.members.front().at() < truss.members.size()) {
        return statement(phrase::kEditRemoveMember,
                         {{"member", memberName(truss, things.members.front())}});
    }
    return things.supports.empty() ? phrase::kEditRemoveLoad : phrase::kEditRemoveSupport;
}

Statement name(const Truss& truss, const SetMaterial& edit) {
    const bool adds = edit.index >= static_cast<int>(truss.materials.size());
    return ofNamed(adds ? phrase::kEditAddMaterial : phrase::kEditChangeMaterial, edit.to.id);
}
Statement name(const Truss&, const RemoveMaterial&) { return phrase::kEditRemoveMaterial; }
Statement name(const Truss& truss, const SetSection& edit) {
    const bool adds = edit.index >= static_cast<int>(truss.sections.size());
    return ofNamed(adds ? phrase::kEditAddSection : phrase::kEditChangeSection, edit.to.id);
}
Statement name(const Truss&, const RemoveSection&) { return phrase::kEditRemoveSection; }
Statement name(const Truss&, const UseSection& edit) {
    return ofNamed(phrase::kEditUseSection, edit.section);
}
// Of one member by its name, of several by their number.
template <class One, class Several>
Statement ofMembers(const Truss& truss, const std::vector<MemberId>& members, One one,
                    Several several) {
    const bool isOne = members.size() == 1 && members.front().at() < truss.members.size();
    return isOne ? statement(one, {{"member", memberName(truss, members.front())}})
                 : ofSeveral(several, members.size());
}
Statement name(const Truss& truss, const WarmMembers& edit) {
    return ofMembers(truss, edit.members, phrase::kEditWarmMember, phrase::kEditWarmMembers);
}
Statement name(const Truss& truss, const FactorMembers& edit) {
    return ofMembers(truss, edit.members, phrase::kEditFactorMember, phrase::kEditFactorMembers);
}
Statement name(const Truss&, const SetTitle&) { return phrase::kEditTitle; }
Statement name(const Truss&, const SetUnits&) { return phrase::kEditUnits; }
Statement name(const Truss&, const SetClassSettings&) { return phrase::kEditClassSettings; }
Statement name(const Truss&, const SetChecks&) { return phrase::kEditChecks; }

struct NamesOfList {
    OfNamed adds;
    OfNamed changes;
    OfNamed removes;
    Phrase<> otherwise;
};

// Named by the first entry that differs: lists of this kind are edited one entry at a time.
template <class Named>
Statement nameOfList(const NamesOfList& names, const std::vector<Named>& before,
                     const std::vector<Named>& after) {
    std::size_t i = 0;
    while (i < before.size() && i < after.size() && before[i] == after[i]) {
        ++i;
    }
    if (i < after.size() && before.size() <= after.size()) {
        return ofNamed(before.size() < after.size() ? names.adds : names.changes, after[i].id);
    }
    return i < before.size() ? ofNamed(names.removes, before[i].id) : names.otherwise;
}
Statement name(const Truss& truss, const SetCombinations& edit) {
    return nameOfList({phrase::kEditAddCombination, phrase::kEditChangeCombination,
                       phrase::kEditRemoveCombination, phrase::kEditCombinations},
                      truss.combinations, edit.to);
}
Statement name(const Truss&, const ChangeLoadCases& edit) { return edit.name; }
Statement name(const Truss& truss, const SetMovingLoads& edit) {
    return nameOfList({phrase::kEditAddMovingLoad, phrase::kEditChangeMovingLoad,
                       phrase::kEditRemoveMovingLoad, phrase::kEditMovingLoads},
                      truss.moving, edit.to);
}
Statement name(const Truss&, const ReplaceTruss& edit) { return edit.name; }

} // namespace

Statement describe(const Truss& before, const Edit& edit) {
    return std::visit([&](const auto& it) { return name(before, it); }, edit.kind());
}

} // namespace gusset
