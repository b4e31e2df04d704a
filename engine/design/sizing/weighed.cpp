#include "design/sizing/weighed.hpp"

#include "phrases/design/sizing.hpp"

#include <algorithm>

namespace gusset {
namespace {

// kg/m of a profile.
double weightOf(const Truss& truss, const Section& profile) {
    Truss one;
    one.units = truss.units;
    one.joints = {{"A", {0, 0}, {}}, {"B", {1, 0}, {}}};
    Member member;
    member.a = JointId{0};
    member.b = JointId{1};
    member.section = profile.id;
    one.members = {member};
    one.sections = {profile};
    one.units.length = LengthUnit::m;
    one.materials = truss.materials;
    return massesOf(one).front();
}

} // namespace

void putSection(Truss& truss, const Section& section) {
    for (Section& there : truss.sections) {
        if (there.id == section.id) {
            there = section;
            return;
        }
    }
    truss.sections.push_back(section);
}

Outcome<std::vector<WeighedList>> listsOf(const Truss& truss, const SizingWish& wish) {
    std::vector<WeighedList> lists;
    for (const SizingGroup& group : wish.groups) {
        if (group.profiles.empty() || group.members.empty()) {
            return Issue{IssueCode::Missing, "",
                         group.members.empty()
                             ? statement(phrase::kGroupWithoutMembers, {{"group", group.name}})
                             : statement(phrase::kGroupWithoutProfiles, {{"group", group.name}})};
        }
        WeighedList list;
        for (const Section& section : group.profiles) {
            list.push_back({section, weightOf(truss, section)});
            if (!(list.back().weight > 0)) {
                return Issue{IssueCode::Missing, "",
                             statement(phrase::kProfileWithoutMass, {{"profile", section.id}})};
            }
        }
        std::stable_sort(list.begin(), list.end(),
                         [](const Weighed& a, const Weighed& b) { return a.weight < b.weight; });
        lists.push_back(std::move(list));
    }
    return lists;
}

} // namespace gusset
