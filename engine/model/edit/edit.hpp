#pragma once
// Every change to a model, as data. One pure function applies it; the board, the tables and the
// tests all use it. An edit that can't be done leaves the model unchanged and says why.

#include "core/one_of.hpp"
#include "core/outcome.hpp"
#include "core/statement.hpp"
#include "model/truss/truss.hpp"

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace gusset {

// An end of a member being drawn: an existing joint, or a new one at `at`, which may lie on a
// member and split it.
struct MemberEnd {
    JointId joint;
    Vec2 at;
    MemberId splits{};
};

struct AddJoint {
    Vec2 at;
};
struct MoveJoint {
    JointId joint;
    Vec2 to;
    MemberId splits{}; // the member that it is placed on, which is split in two
};
struct MoveJoints { // each to its own place
    std::vector<JointId> joints;
    std::vector<Vec2> to; // the same number
    Statement name{};     // for undo: "Turn 5 joints"; empty: the name for moving
};
struct MergeJoints { // `gone` passes its members, supports and loads to `into`
    JointId gone;
    JointId into;
};
struct RenameJoint {
    JointId joint;
    std::string label;
};
struct DrawMember { // joints are added at ends that have none
    MemberEnd from;
    MemberEnd to;
};
struct SplitMember { // a new joint on it; both halves keep its section
    MemberId member;
    Vec2 at;
};
struct SetMember {
    MemberId member;
    Member to;
};
struct SetSupport { // replaces all supports of the joint; keeps settlements of a support of the
                    // same kind
    JointId joint;
    SupportKind kind = SupportKind::Pin;
    double reaction = 90;
};
struct ChangeSupport { // one of them, as a row of a table
    SupportId support;
    Support to;
};
struct RemoveSupports {
    JointId joint;
};
struct AddLoad {
    Load load;
};
struct SetLoad {
    LoadId load;
    Load to;
};
struct Things { // also used as the selection
    std::vector<JointId> joints;
    std::vector<MemberId> members;
    std::vector<SupportId> supports;
    std::vector<LoadId> loads;

    [[nodiscard]] bool empty() const {
        return joints.empty() && members.empty() && supports.empty() && loads.empty();
    }
    friend bool operator==(const Things&, const Things&) = default;
};
struct Remove { // a joint's members, supports and loads go with it
    Things things;
};
// Where a copy goes: p is mapped to p.x · xAxis + p.y · yAxis + shift. A mirror image about the
// line x = c has xAxis (−1, 0) and shift (2c, 0).
struct Placement {
    Vec2 xAxis{1, 0};
    Vec2 yAxis{0, 1};
    Vec2 shift;
};
struct CopyThings { // joints, with the listed members and loads; copies on a joint merge with it
    Things things;
    std::vector<Placement> placements; // one per copy
    Statement name{};                  // for undo: "Mirror 5 joints"; empty: the name for copying
};
struct SetMaterial { // an index past the end adds one; sections follow a change of its id
    int index = 0;
    Material to;
};
struct RemoveMaterial { // its sections are left without one
    int index = 0;
};
struct SetSection { // an index past the end adds one; members follow a change of its id
    int index = 0;
    Section to;
};
struct RemoveSection { // its members are left without one
    int index = 0;
};
struct UseSection { // for these members
    std::vector<MemberId> members;
    std::string section;
};
struct WarmMembers { // these, all by the same amount
    std::vector<MemberId> members;
    double warming = 0; // K
};
struct FactorMembers { // buckling lengths of these, in the plane of the truss or out of it
    std::vector<MemberId> members;
    bool out = false;
    std::optional<double> factor; // K; none: that of the checks
};
struct SetTitle {
    std::string title;
};
struct SetUnits { // `convert`: converts the numbers as well; else only changes the units
    Units units;
    bool convert = false;
};
struct SetClassSettings {
    ClassSettings settings;
};
struct SetChecks { // how members are checked
    CheckSettings to;
};
struct SetCombinations { // the complete new list
    std::vector<Combination> to;
};
struct ChangeLoadCases { // the complete new lists; made by model/edit/load_cases
    std::vector<Load> loads;
    std::vector<LoadCase> cases;
    std::vector<Combination> combinations;
    std::string form; // of the truss, where its cases are named too
    Statement name;   // for undo: "Copy case snow"
};
struct SetMovingLoads { // the complete new list
    std::vector<MovingLoad> to;
};
struct ReplaceTruss { // a link, a file, an example, a new board
    Truss truss;
    Statement name; // for undo: "Open example"
};

using EditKind =
    std::variant<AddJoint, MoveJoint, MoveJoints, MergeJoints, RenameJoint, DrawMember, SplitMember,
                 SetMember, SetSupport, ChangeSupport, RemoveSupports, AddLoad, SetLoad, Remove,
                 CopyThings, SetMaterial, RemoveMaterial, SetSection, RemoveSection, UseSection,
                 WarmMembers, FactorMembers, SetCombinations, ChangeLoadCases, SetMovingLoads,
                 SetTitle, SetUnits, SetClassSettings, SetChecks, ReplaceTruss>;

// One of these, shared because it never changes. It is created and taken apart only in edit.cpp:
// inline, the variant would be most of each object file that passes an edit on.
class Edit {
public:
    template <class Kind>
    requires isOneOf<Kind, EditKind> Edit(Kind kind);

    [[nodiscard]] const EditKind& kind() const { return *kind_; }
    template <class Kind>
    [[nodiscard]] bool is() const {
        return std::holds_alternative<Kind>(*kind_);
    }

private:
    std::shared_ptr<const EditKind> kind_;
};

[[nodiscard]] Outcome<Truss> apply(const Truss&, const Edit&);

// The name for undo, as "Move joint C": the joints are called as before the edit.
[[nodiscard]] Statement describe(const Truss& before, const Edit&);

} // namespace gusset
