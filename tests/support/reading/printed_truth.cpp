#include "support/reading/printed_truth.hpp"

#include "support/reading/formula_value.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

bool isFigure(char c) { return c >= '0' && c <= '9'; }
bool isLevel(Vec2 unit) { return std::fabs(unit.y) < kNoise; }
bool isInclined(Vec2 unit) { return !isLevel(unit) && std::fabs(unit.x) > kNoise; }

// R_Fx, since F_x would look like a sum; R_A′ for a second inclined roller.
std::string reactionName(const Truss& truss, const Structure& structure, std::size_t index) {
    const Restraint& restraint = structure.restraints[index];
    const std::string& label = truss.joints[restraint.joint.at()].label;
    if (!isInclined(restraint.along)) {
        const bool letters = truss.classSettings.axes == AxisNames::HV;
        const char* axis = isLevel(restraint.along) ? (letters ? "H" : "x") : letters ? "V" : "y";
        return (label == "F" || isFigure(label[0]) ? "R_" + label : label + "_") + axis;
    }
    int before = 0;
    for (std::size_t i = 0; i < index; ++i) {
        const Restraint& other = structure.restraints[i];
        before += other.joint == restraint.joint && isInclined(other.along) ? 1 : 0;
    }
    return "R_" + label + (before > 0 ? "\u2032" : "");
}

// With a number among its joints: F_2–4, also where others are AB.
std::string forceName(const Truss& truss, MemberId member) {
    const Member& ends = truss.members[member.at()];
    const std::string& a = truss.joints[ends.a.at()].label;
    const std::string& b = truss.joints[ends.b.at()].label;
    if (truss.classSettings.symbols != SymbolStyle::S1 && (isFigure(a[0]) || isFigure(b[0]))) {
        return "F_" + a + "\u2013" + b;
    }
    switch (truss.classSettings.symbols) {
    case SymbolStyle::S1:
        return "S_" + std::to_string(member.index + 1);
    case SymbolStyle::AB:
        return memberName(truss, member);
    case SymbolStyle::FAB:
        break;
    }
    return "F_" + memberName(truss, member);
}

} // namespace

std::map<std::string, Truth> printedTruths(const Truss& truss, const Solution& solution) {
    std::map<std::string, Truth> truths;
    const double newton = toNewton(truss.units.force);
    const Structure structure = structureOf(truss);
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const double value = solution.reactions[i] / newton;
        const Vec2 along = structure.restraints[i].along;
        truths[reactionName(truss, structure, i)] = {value, value < 0 ? -along : along};
    }
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        truths[forceName(truss, {static_cast<int>(i)})] = {solution.forces[i] / newton, {}};
    }
    return truths;
}

std::map<std::string, double> printedLoads(const Truss& truss) {
    const bool letters = truss.classSettings.axes == AxisNames::HV;
    const double newton = toNewton(truss.units.force);
    const std::vector<Vec2> loads = jointLoads(truss, {});
    const bool taken = std::any_of(truss.joints.begin(), truss.joints.end(),
                                   [](const Joint& joint) { return joint.label == "P"; });
    std::map<std::string, double> sizes;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const std::string name = (taken ? "W_" : "P_") + truss.joints[i].label;
        const Vec2 load{loads[i].x / newton, loads[i].y / newton};
        if (load.x != 0 && load.y != 0) {
            sizes[name + (letters ? "H" : "x")] = std::fabs(load.x);
            sizes[name + (letters ? "V" : "y")] = std::fabs(load.y);
        } else if (load.x != 0 || load.y != 0) {
            sizes[name] = std::fabs(load.x + load.y);
        }
    }
    return sizes;
}

} // namespace gusset::support
