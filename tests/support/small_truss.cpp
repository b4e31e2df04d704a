#include "support/small_truss.hpp"

#include <cassert>

namespace gusset::support {

namespace {

JointId known(const Truss& truss, const std::string& label) {
    const JointId joint = findJoint(truss, label);
    assert(joint.valid());
    return joint;
}

} // namespace

void joint(Truss& truss, const std::string& label, double x, double y) {
    truss.joints.push_back({label, {x, y}, {}});
}

void member(Truss& truss, const std::string& a, const std::string& b) {
    Member member;
    member.a = known(truss, a);
    member.b = known(truss, b);
    truss.members.push_back(member);
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

void force(Truss& truss, const std::string& joint, double fx, double fy,
           const std::string& caseId) {
    Load load;
    load.what = JointForce{known(truss, joint), fx, fy};
    load.caseId = caseId;
    truss.loads.push_back(load);
}

Truss roof() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 6, 0);
    joint(truss, "C", 3, 4);
    member(truss, "A", "B");
    member(truss, "B", "C");
    member(truss, "C", "A");
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 0, -10);
    return truss;
}

Truss triangle(double apex) {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", apex, 3);
    member(truss, "A", "B");
    member(truss, "B", "C");
    member(truss, "A", "C");
    pin(truss, "A");
    roller(truss, "B");
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

Truss gable() {
    Truss truss;
    joint(truss, "A", 0, 0);
    joint(truss, "B", 8, 0);
    joint(truss, "C", 4, 3);
    member(truss, "A", "C");
    member(truss, "C", "B");
    member(truss, "A", "B");
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "C", 0, -24);
    return truss;
}

} // namespace gusset::support
