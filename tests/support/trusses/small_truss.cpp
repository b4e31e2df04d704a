#include "support/trusses/small_truss.hpp"

#include <cassert>
#include <initializer_list>
#include <utility>

namespace gusset::support {

namespace {

JointId known(const Truss& truss, const std::string& label) {
    const JointId joint = findJoint(truss, label);
    assert(joint.valid());
    return joint;
}

using Ends = std::pair<const char*, const char*>;

// A triangle with a pin at A, a roller at B at the same level, and C; its members in this order.
Truss triangleOf(double span, Vec2 apex, std::initializer_list<Ends> members) {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", span, 0);
    joint(truss, "C", apex.x, apex.y);
    for (const auto& [a, b] : members) {
        member(truss, a, b);
    }
    pin(truss, "A");
    roller(truss, "B");
    return truss;
}

} // namespace

void joint(Truss& truss, const std::string& label, double x, double y) {
    truss.joints.push_back({label, {x, y}, {}});
}

void member(Truss& truss, JointId a, JointId b) {
    Member member;
    member.a = a;
    member.b = b;
    truss.members.push_back(member);
}

void member(Truss& truss, const std::string& a, const std::string& b) {
    member(truss, known(truss, a), known(truss, b));
}

void members(Truss& truss, std::initializer_list<const char*> pairs) {
    for (const char* pair : pairs) {
        member(truss, std::string(1, pair[0]), std::string(1, pair[1]));
    }
}

void pin(Truss& truss, const std::string& joint) {
    Support support;
    support.joint = known(truss, joint);
    truss.supports.push_back(support);
}

void roller(Truss& truss, const std::string& joint, double reaction) {
    Support support;
    support.joint = known(truss, joint);
    support.kind = SupportKind::Roller;
    support.reaction = reaction;
    truss.supports.push_back(support);
}

void pinAndRoller(Truss& truss, JointId pin, JointId roller) {
    truss.supports.assign(2, {});
    truss.supports[0].joint = pin;
    truss.supports[1].joint = roller;
    truss.supports[1].kind = SupportKind::Roller;
}

void force(Truss& truss, const std::string& joint, double fx, double fy,
           const std::string& caseId) {
    Load load;
    load.what = JointForce{known(truss, joint), fx, fy};
    load.caseId = caseId;
    truss.loads.push_back(load);
}

Truss roof() {
    Truss truss = triangleOf(6, {3, 4}, {{"A", "B"}, {"B", "C"}, {"C", "A"}});
    force(truss, "C", 0, -10);
    return truss;
}

Truss triangle(double apex) {
    return triangleOf(4, {apex, 3}, {{"A", "B"}, {"B", "C"}, {"A", "C"}});
}

Truss struttedRoof() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8, 0);
    joint(truss, "C", 4, 3);
    joint(truss, "D", 2, 1.5);
    joint(truss, "E", 6, 1.5);
    joint(truss, "F", 4, 0);
    members(truss, {"AD", "DC", "CE", "EB", "AF", "FB", "DF", "EF", "CF"});
    pin(truss, "A");
    roller(truss, "B");
    return truss;
}

Truss gable() {
    Truss truss = triangleOf(8, {4, 3}, {{"A", "C"}, {"C", "B"}, {"A", "B"}});
    force(truss, "C", 0, -24);
    return truss;
}

std::size_t memberAt(const Truss& truss, const std::string& a, const std::string& b) {
    const MemberId member = findMember(truss, known(truss, a), known(truss, b));
    assert(member.valid());
    return member.at();
}

std::size_t jointAt(const Truss& truss, const std::string& label) {
    return known(truss, label).at();
}

} // namespace gusset::support
