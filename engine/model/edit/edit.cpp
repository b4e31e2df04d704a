#include "model/edit/edit.hpp"

#include "model/edit/change_units.hpp"
#include "model/edit/rebuild.hpp"
#include "model/edit/removal.hpp"
#include "model/validate/findings.hpp"
#include "phrases/faults/refusals.hpp"

#include <algorithm>
#include <cassert>

namespace gusset {

namespace {

Issue gone(const char* what, Phrase<> says) { return {IssueCode::UnknownName, what, says}; }

template <class Tag, class List>
bool isIn(const List& list, Id<Tag> id) {
    return id.valid() && id.at() < list.size();
}

// Each changes the truss in place, or says why it can't be done.
using Refusal = std::optional<Issue>;

Refusal change(Truss& truss, const AddJoint& edit) {
    truss.joints.push_back({nextLabel(truss), edit.at, {}});
    return std::nullopt;
}

Refusal change(Truss& truss, const MoveJoint& edit) {
    if (!isIn(truss.joints, edit.joint)) {
        return gone("joint", phrase::kJointGone);
    }
    if (edit.splits.valid() && !isIn(truss.members, edit.splits)) {
        return gone("member", phrase::kMemberGone);
    }
    truss.joints[edit.joint.at()].at = edit.to;
    if (edit.splits.valid()) {
        splitMember(truss, edit.splits, edit.joint);
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const RenameJoint& edit) {
    if (!isIn(truss.joints, edit.joint)) {
        return gone("joint", phrase::kJointGone);
    }
    const JointId other = findJoint(truss, edit.label);
    if (other.valid() && other != edit.joint) {
        return Issue{IssueCode::Duplicate, placeOf("joints", edit.joint.at()) + ".id",
                     statement(phrase::kLabelTaken, {{"label", edit.label}})};
    }
    truss.joints[edit.joint.at()].label = edit.label;
    return std::nullopt;
}

Refusal change(Truss& truss, const MoveJoints& edit) {
    assert(edit.joints.size() == edit.to.size());
    for (std::size_t i = 0; i < edit.joints.size(); ++i) {
        if (auto refusal = change(truss, MoveJoint{edit.joints[i], edit.to[i]})) {
            return refusal;
        }
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const MergeJoints& edit) {
    if (!isIn(truss.joints, edit.gone) || !isIn(truss.joints, edit.into)) {
        return gone("joint", phrase::kJointGone);
    }
    if (edit.gone != edit.into) {
        mergeJoints(truss, edit.gone, edit.into);
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const SplitMember& edit) {
    if (!isIn(truss.members, edit.member)) {
        return gone("member", phrase::kMemberGone);
    }
    splitMember(truss, edit.member, addJoint(truss, edit.at));
    return std::nullopt;
}

// The joint at an end: the given one, an existing one at that position, or a new one.
JointId jointFor(Truss& truss, const MemberEnd& end) {
    const JointId there = end.joint.valid() ? end.joint : jointAt(truss, end.at);
    if (there.valid()) {
        return there;
    }
    const JointId added = addJoint(truss, end.at);
    if (end.splits.valid()) {
        splitMember(truss, end.splits, added);
    }
    return added;
}

Refusal change(Truss& truss, const DrawMember& edit) {
    for (const MemberEnd* end : {&edit.from, &edit.to}) {
        if (end->joint.valid() && !isIn(truss.joints, end->joint)) {
            return gone("joint", phrase::kJointGone);
        }
        if (end->splits.valid() && !isIn(truss.members, end->splits)) {
            return gone("member", phrase::kMemberGone);
        }
    }
    if (edit.from.splits.valid() && edit.from.splits == edit.to.splits) {
        return Issue{
            IssueCode::Duplicate, placeOf("members", edit.from.splits.at()),
            statement(phrase::kLiesAlong, {{"member", memberName(truss, edit.from.splits)}})};
    }
    Member member;
    member.a = jointFor(truss, edit.from);
    member.b = jointFor(truss, edit.to);
    if (member.a == member.b) {
        return Issue{IssueCode::ZeroLength, "members", phrase::kNeedsTwoJoints};
    }
    if (const MemberId other = findMember(truss, member.a, member.b); other.valid()) {
        return Issue{IssueCode::Duplicate, placeOf("members", other.at()),
                     statement(phrase::kMemberThere, {{"member", memberName(truss, other)}})};
    }
    truss.members.push_back(member);
    return std::nullopt;
}

Refusal change(Truss& truss, const SetMember& edit) {
    if (!isIn(truss.members, edit.member)) {
        return gone("member", phrase::kMemberGone);
    }
    truss.members[edit.member.at()] = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetSupport& edit) {
    if (!isIn(truss.joints, edit.joint)) {
        return gone("joint", phrase::kJointGone);
    }
    const auto isHere = [&](const Support& it) { return it.joint == edit.joint; };
    Support support;
    const auto kept =
        std::find_if(truss.supports.begin(), truss.supports.end(),
                     [&](const Support& it) { return isHere(it) && it.kind == edit.kind; });
    if (kept != truss.supports.end()) {
        support = *kept;
    }
    support.joint = edit.joint;
    support.kind = edit.kind;
    support.reaction = edit.kind == SupportKind::Roller ? edit.reaction : Support{}.reaction;
    const auto first = std::find_if(truss.supports.begin(), truss.supports.end(), isHere);
    const auto place = first - truss.supports.begin();
    std::erase_if(truss.supports, isHere);
    truss.supports.insert(truss.supports.begin() + place, support);
    return std::nullopt;
}

Refusal change(Truss& truss, const ChangeSupport& edit) {
    if (!isIn(truss.supports, edit.support)) {
        return gone("support", phrase::kSupportGone);
    }
    truss.supports[edit.support.at()] = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const RemoveSupports& edit) {
    std::erase_if(truss.supports, [&](const Support& it) { return it.joint == edit.joint; });
    return std::nullopt;
}

Refusal change(Truss& truss, const AddLoad& edit) {
    truss.loads.push_back(edit.load);
    return std::nullopt;
}

Refusal change(Truss& truss, const SetLoad& edit) {
    if (!isIn(truss.loads, edit.load)) {
        return gone("load", phrase::kLoadGone);
    }
    truss.loads[edit.load.at()] = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const Remove& edit) {
    removeThings(truss, edit.things);
    return std::nullopt;
}

Refusal change(Truss& truss, const CopyThings& edit) {
    const auto all = [](const auto& list, const auto& ids) {
        return std::all_of(ids.begin(), ids.end(), [&](auto id) { return isIn(list, id); });
    };
    if (!all(truss.joints, edit.things.joints) || !all(truss.members, edit.things.members) ||
        !all(truss.loads, edit.things.loads)) {
        return gone("things", phrase::kCopiedGone);
    }
    const auto leans = [](const Placement& it) { return it.yAxis.x != 0; };
    const auto isChord = [&](LoadId id) {
        return std::holds_alternative<ChordLoad>(truss.loads[id.at()].what);
    };
    if (std::any_of(edit.placements.begin(), edit.placements.end(), leans) &&
        std::any_of(edit.things.loads.begin(), edit.things.loads.end(), isChord)) {
        return Issue{IssueCode::OutOfRange, "loads", phrase::kChordLoadTurned};
    }
    copyThings(truss, edit);
    return std::nullopt;
}

// Replaces an entry of a list, or adds one at its end. Returns the id that was there before.
template <class Thing>
std::optional<std::string> putIn(std::vector<Thing>& list, int index, const Thing& to) {
    const auto at = static_cast<std::size_t>(index);
    if (index < 0 || at > list.size()) {
        return std::nullopt;
    }
    if (at == list.size()) {
        list.push_back(to);
        return to.id;
    }
    std::string before = std::move(list[at].id);
    list[at] = to;
    return before;
}

template <class Thing>
std::optional<std::string> takeFrom(std::vector<Thing>& list, int index) {
    if (index < 0 || static_cast<std::size_t>(index) >= list.size()) {
        return std::nullopt;
    }
    const auto at = list.begin() + index;
    std::string id = std::move(at->id);
    list.erase(at);
    return id;
}

// References follow a thing's id. There is no such thing if there was no id before.
Refusal renameMaterial(Truss& truss, const std::optional<std::string>& before,
                       const std::string& after) {
    if (!before) {
        return gone("material", phrase::kMaterialGone);
    }
    for (Section& section : truss.sections) {
        section.material = section.material == *before ? after : section.material;
    }
    return std::nullopt;
}

Refusal renameSection(Truss& truss, const std::optional<std::string>& before,
                      const std::string& after) {
    if (!before) {
        return gone("section", phrase::kSectionGone);
    }
    for (Member& member : truss.members) {
        member.section = member.section == *before ? after : member.section;
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const SetMaterial& edit) {
    return renameMaterial(truss, putIn(truss.materials, edit.index, edit.to), edit.to.id);
}
Refusal change(Truss& truss, const RemoveMaterial& edit) {
    return renameMaterial(truss, takeFrom(truss.materials, edit.index), "");
}
Refusal change(Truss& truss, const SetSection& edit) {
    return renameSection(truss, putIn(truss.sections, edit.index, edit.to), edit.to.id);
}
Refusal change(Truss& truss, const RemoveSection& edit) {
    return renameSection(truss, takeFrom(truss.sections, edit.index), "");
}

Refusal change(Truss& truss, const UseSection& edit) {
    for (const MemberId member : edit.members) {
        if (!isIn(truss.members, member)) {
            return gone("member", phrase::kMemberGone);
        }
        truss.members[member.at()].section = edit.section;
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const WarmMembers& edit) {
    for (const MemberId member : edit.members) {
        if (!isIn(truss.members, member)) {
            return gone("member", phrase::kMemberGone);
        }
        truss.members[member.at()].warming = edit.warming;
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const FactorMembers& edit) {
    for (const MemberId member : edit.members) {
        if (!isIn(truss.members, member)) {
            return gone("member", phrase::kMemberGone);
        }
        LengthFactors& factors = truss.members[member.at()].factors;
        (edit.out ? factors.out : factors.in) = edit.factor;
    }
    return std::nullopt;
}

Refusal change(Truss& truss, const SetTitle& edit) {
    truss.title = edit.title;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetUnits& edit) {
    if (edit.convert) {
        convertNumbers(truss, edit.units);
    }
    truss.units = edit.units;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetClassSettings& edit) {
    truss.classSettings = edit.settings;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetChecks& edit) {
    truss.checks = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetCombinations& edit) {
    truss.combinations = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const ChangeLoadCases& edit) {
    truss.loads = edit.loads;
    truss.cases = edit.cases;
    truss.combinations = edit.combinations;
    truss.form = edit.form;
    return std::nullopt;
}

Refusal change(Truss& truss, const SetMovingLoads& edit) {
    truss.moving = edit.to;
    return std::nullopt;
}

Refusal change(Truss& truss, const ReplaceTruss& edit) {
    truss = edit.truss;
    return std::nullopt;
}

std::shared_ptr<const EditKind> shared(EditKind&& kind) {
    return std::make_shared<const EditKind>(std::move(kind));
}

} // namespace

template <class Kind>
requires isOneOf<Kind, EditKind> Edit::Edit(Kind kind) : kind_(shared(EditKind(std::move(kind)))) {}
template Edit::Edit(AddJoint);
template Edit::Edit(MoveJoint);
template Edit::Edit(MoveJoints);
template Edit::Edit(MergeJoints);
template Edit::Edit(RenameJoint);
template Edit::Edit(DrawMember);
template Edit::Edit(SplitMember);
template Edit::Edit(SetMember);
template Edit::Edit(SetSupport);
template Edit::Edit(ChangeSupport);
template Edit::Edit(RemoveSupports);
template Edit::Edit(AddLoad);
template Edit::Edit(SetLoad);
template Edit::Edit(Remove);
template Edit::Edit(CopyThings);
template Edit::Edit(SetMaterial);
template Edit::Edit(RemoveMaterial);
template Edit::Edit(SetSection);
template Edit::Edit(RemoveSection);
template Edit::Edit(UseSection);
template Edit::Edit(WarmMembers);
template Edit::Edit(FactorMembers);
template Edit::Edit(SetCombinations);
template Edit::Edit(ChangeLoadCases);
template Edit::Edit(SetMovingLoads);
template Edit::Edit(SetTitle);
template Edit::Edit(SetUnits);
template Edit::Edit(SetClassSettings);
template Edit::Edit(SetChecks);
template Edit::Edit(ReplaceTruss);

Outcome<Truss> apply(const Truss& before, const Edit& edit) {
    Truss after = before;
    if (auto refusal = std::visit([&](const auto& it) { return change(after, it); }, edit.kind())) {
        return std::move(*refusal);
    }
    if (Issues errors = errorsOf(after); !errors.empty()) {
        return errors;
    }
    return after;
}

} // namespace gusset
