#include "support/trusses/worked_truss.hpp"

#include "support/trusses/small_truss.hpp"

namespace gusset::support {

namespace {

//      C
//     /|\      roof of a shed, 8 m wide; snow on the rafters' joints
//    D | E
//   / \|/ \    .
//  A---F---B
Truss shedRoof() {
    Truss truss = struttedRoof();
    truss.title = "Shed roof, span 8 m";
    force(truss, "D", 0, -6);
    force(truss, "C", 0, -6);
    force(truss, "E", 0, -6);
    return truss;
}

//  A---B---C    bracket on a wall, both ends of it pinned; a hoist at its tip
//      |  /
//      | /
//  D---E
Truss hoistBracket() {
    Truss truss;
    truss.title = "Hoist bracket on two wall pins";
    joint(truss, "A", 0, 1.5);
    joint(truss, "B", 2, 1.5);
    joint(truss, "C", 4, 1.5);
    joint(truss, "D", 0, 0);
    joint(truss, "E", 2, 0);
    members(truss, {"AB", "BC", "BE", "CE", "BD", "DE"});
    pin(truss, "A");
    pin(truss, "D");
    force(truss, "C", 3, -10);
    truss.classSettings.axes = AxisNames::HV;
    truss.classSettings.moments = MomentSense::Clockwise;
    truss.classSettings.symbols = SymbolStyle::AB;
    return truss;
}

//  D---E---F    ramp truss whose upper end bears on a slope; side load from a rail
//  |\  |  /|
//  | \ | / |
//  A---B---C
Truss rampOnSlope() {
    Truss truss;
    truss.title = "Ramp truss bearing on a slope";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 8, 0);
    joint(truss, "D", 0, 3);
    joint(truss, "E", 4, 3);
    joint(truss, "F", 8, 3);
    members(truss, {"AB", "BC", "DE", "EF", "AD", "BE", "CF", "BD", "BF"});
    pin(truss, "A");
    roller(truss, "C", 120);
    force(truss, "B", 0, -24);
    force(truss, "F", -5, 0);
    truss.classSettings.angles = AngleStyle::Cosines;
    return truss;
}

//      C
//    / | \       two stiff triangles leaning on each other at C
//   D--+  +--E
//  /  /    \  \    .
// A           B
Truss leaningFrames() {
    Truss truss;
    truss.title = "Two leaning frames, hinged at the top";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 10, 0);
    joint(truss, "C", 5, 5);
    joint(truss, "D", 1, 4);
    joint(truss, "E", 9, 4);
    members(truss, {"AD", "DC", "AC", "BE", "EC", "BC"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "D", 4, 0);
    force(truss, "C", 0, -12);
    truss.classSettings.angles = AngleStyle::Slopes;
    truss.classSettings.symbols = SymbolStyle::S1;
    return truss;
}

//        C          barn frame: two stiff halves, a hinge at the ridge and a tie between the feet;
//    D  / \  F       every joint but the ridge has three members
//     E     G
//  A-----------B
Truss barnFrame() {
    Truss truss;
    truss.title = "Barn frame with a tie";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 12, 0);
    joint(truss, "C", 6, 6);
    joint(truss, "D", 2, 4);
    joint(truss, "E", 4, 2);
    joint(truss, "F", 10, 4);
    joint(truss, "G", 8, 2);
    members(truss, {"AD", "AE", "DE", "DC", "EC", "BF", "BG", "FG", "FC", "GC", "AB"});
    pin(truss, "A");
    roller(truss, "B");
    force(truss, "D", 0, -10);
    force(truss, "C", 0, -10);
    force(truss, "F", 3, -10);
    return truss;
}

//    D---C      six-sided frame with its three long diagonals: no joint has fewer than three
//   / \ / \     members, and no section isolates one
//  E---X---B    (the diagonals cross without a joint)
//   \ / \ /
//    F---A
Truss sixSidedFrame() {
    Truss truss;
    truss.title = "Six-sided frame braced corner to corner";
    joint(truss, "A", 4, 0);
    joint(truss, "B", 6, 3);
    joint(truss, "C", 4, 5);
    joint(truss, "D", 1, 6);
    joint(truss, "E", -1, 3);
    joint(truss, "F", 0, 0);
    members(truss, {"AB", "BC", "CD", "DE", "EF", "FA", "AD", "BE", "CF"});
    pin(truss, "F");
    roller(truss, "A");
    force(truss, "D", 0, -12);
    truss.classSettings.form = NumberForm::Significant;
    truss.classSettings.digits = 4;
    return truss;
}

//  B---D_      sign arm on two wall pins; guessed senses, rounded values carried
//  |  /| `E    (A–C, A–D, C–E, D–E)
//  A---C'
Truss signArm() {
    Truss truss;
    truss.title = "Sign arm, one decimal carried";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 0, 1.2);
    joint(truss, "C", 1.7, 0);
    joint(truss, "D", 1.7, 1.2);
    joint(truss, "E", 3.4, 0.4);
    members(truss, {"BD", "AC", "AD", "CD", "CE", "DE"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "E", 1, -7);
    force(truss, "C", 0, -3);
    truss.units.force = ForceUnit::kip;
    truss.units.length = LengthUnit::ft;
    truss.classSettings.senses = AssumedSense::Guessed;
    truss.classSettings.carry = CarriedValues::Rounded;
    truss.classSettings.digits = 1;
    return truss;
}

void oneSection(Truss& truss, double modulus, double area) {
    Material steel;
    steel.id = "steel";
    steel.E = modulus;
    steel.alpha = 1.2e-5;
    Section bar;
    bar.id = "bar";
    bar.material = "steel";
    bar.area = area;
    truss.materials = {steel};
    truss.sections = {bar};
    for (Member& member : truss.members) {
        member.section = "bar";
    }
}

//      F---G---H       walkway over three supports, the middle one 4 mm low;
//    / | / | \ | \     the top chord is warmed by the sun
//  A---B---C---D---E
Truss twoSpanWalkway() {
    Truss truss;
    truss.title = "Walkway over three supports, the middle one 4 mm low";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 4, 0);
    joint(truss, "C", 8, 0);
    joint(truss, "D", 12, 0);
    joint(truss, "E", 16, 0);
    joint(truss, "F", 4, 3);
    joint(truss, "G", 8, 3);
    joint(truss, "H", 12, 3);
    members(truss, {"AB", "BC", "CD", "DE", "FG", "GH", "AF", "BF", "FC", "CG", "CH", "DH", "HE"});
    pin(truss, "A");
    roller(truss, "C");
    roller(truss, "E");
    truss.supports[1].settleAlong = -4;
    force(truss, "B", 0, -40);
    force(truss, "D", 0, -40);
    oneSection(truss, 200000, 1000);
    truss.members[memberAt(truss, "F", "G")].warming = 20;
    truss.members[memberAt(truss, "G", "H")].warming = 20;
    return truss;
}

//  A---B---C     wall bracket of two panels, each braced both ways; EA the same throughout
//  | X | X |
//  D---E---F
Truss crossBracedBracket() {
    Truss truss;
    truss.title = "Wall bracket with crossed diagonals";
    joint(truss, "A", 0, 3);
    joint(truss, "B", 4, 3);
    joint(truss, "C", 8, 3);
    joint(truss, "D", 0, 0);
    joint(truss, "E", 4, 0);
    joint(truss, "F", 8, 0);
    members(truss, {"AB", "BC", "DE", "EF", "BE", "CF", "AE", "DB", "BF", "EC"});
    pin(truss, "A");
    pin(truss, "D");
    force(truss, "C", 0, -12);
    truss.classSettings.axes = AxisNames::HV;
    return truss;
}

//      F---G---H       the same walkway over its outer supports alone
//    / | / | \ | \      .
//  A---B---C---D---E
Truss oneSpanWalkway() {
    Truss truss = twoSpanWalkway();
    truss.title = "Walkway over two supports, a load moving along its bottom chord";
    truss.supports.erase(truss.supports.begin() + 1);
    truss.loads.clear();
    return truss;
}

//  B
//  | \ \       lifting arm on two wall pins, exact numbers
//  A---C---D
Truss liftingArm() {
    Truss truss;
    truss.title = "Lifting arm, in fractions and roots";
    joint(truss, "A", 0, 0);
    joint(truss, "B", 0, 2);
    joint(truss, "C", 2, 0);
    joint(truss, "D", 3, 0);
    members(truss, {"AC", "CD", "BC", "BD"});
    pin(truss, "A");
    pin(truss, "B");
    force(truss, "C", 0, -5);
    force(truss, "D", 0, -10);
    truss.classSettings.form = NumberForm::Exact;
    return truss;
}

} // namespace

std::vector<InfluenceTruss> influenceTrusses() {
    Truss truss = oneSpanWalkway();
    std::vector<JointId> path;
    for (const char* label : {"A", "B", "C", "D", "E"}) {
        path.push_back(findJoint(truss, label));
    }
    Effect diagonal;
    diagonal.member = {static_cast<int>(memberAt(truss, "F", "C"))};
    return {{"influence_of_diagonal", truss, path, diagonal}};
}

std::vector<WorkedTruss> redundantTrusses() {
    return {{"two_span_walkway", twoSpanWalkway()}, {"cross_braced_bracket", crossBracedBracket()}};
}

std::vector<WorkedTruss> workedTrusses() {
    return {{"shed_roof", shedRoof()},        {"hoist_bracket", hoistBracket()},
            {"ramp_on_slope", rampOnSlope()}, {"leaning_frames", leaningFrames()},
            {"barn_frame", barnFrame()},      {"six_sided_frame", sixSidedFrame()},
            {"sign_arm", signArm()},          {"lifting_arm", liftingArm()}};
}

} // namespace gusset::support
