#include "hand/paper/sheet.hpp"

#include "core/angle.hpp"
#include "core/tolerance.hpp"
#include "hand/paper/shape.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace gusset {
namespace {

bool axisParallel(Vec2 unit) {
    return std::fabs(unit.x) <= kParallel || std::fabs(unit.y) <= kParallel;
}

double acuteDegrees(double rise, double run) { return toDegrees(std::atan2(rise, run)); }

// The angles of a sheet, sorted by steepness: from 0, horizontal, to 1, vertical.
using BySteepness = std::multimap<double, int>;

double steepness(double rise, double run) { return rise / (rise + run); }

int findAngle(const Sheet& sheet, const BySteepness& sorted, double rise, double run,
              double length) {
    // For angles within kSameSlope (a sine), the difference in steepness is smaller, apart from
    // rounding.
    const double steep = steepness(rise, run);
    const auto end = sorted.upper_bound(steep + 2 * kSameSlope);
    int first = -1;
    for (auto it = sorted.lower_bound(steep - 2 * kSameSlope); it != end; ++it) {
        const AngleLine& line = sheet.angles[static_cast<std::size_t>(it->second)];
        const double turn = std::fabs(line.rise * run - line.run * rise);
        if (turn <= kSameSlope * line.length * length && (first < 0 || it->second < first)) {
            first = it->second;
        }
    }
    return first;
}

int addAngle(Sheet& sheet, double rise, double run, double size) {
    AngleLine line;
    line.angle = {.kind = SymbolKind::Angle, .index = static_cast<int>(sheet.angles.size())};
    line.rise = rise;
    line.run = run;
    line.length = size;
    line.degrees = acuteDegrees(rise, run);
    sheet.angles.push_back(line);
    return line.angle.index;
}

// The existing angle with this slope, or a new one.
int angleFor(Sheet& sheet, BySteepness& sorted, Vec2 size, double length) {
    const int known = findAngle(sheet, sorted, size.y, size.x, length);
    if (known >= 0) {
        return known;
    }
    const int added = addAngle(sheet, size.y, size.x, length);
    sorted.insert({steepness(size.y, size.x), added});
    return added;
}

// Rollers first, as their directions are mentioned before the members'.
void nameAngles(Sheet& sheet) {
    BySteepness sorted;
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        const Vec2 along = sheet.structure.restraints[i].along;
        int index = -1;
        if (!axisParallel(along)) {
            index = angleFor(sheet, sorted, {std::fabs(along.x), std::fabs(along.y)}, 1);
            sheet.angles[static_cast<std::size_t>(index)].restraint =
                RestraintId{static_cast<int>(i)};
        }
        sheet.angleOfRestraint.push_back(index);
    }
    for (std::size_t i = 0; i < sheet.truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        int index = -1;
        if (!axisParallel(sheet.structure.bars[i].along)) {
            const Vec2 vector = memberVector(sheet.truss, member);
            index =
                angleFor(sheet, sorted, {std::fabs(vector.x), std::fabs(vector.y)}, length(vector));
            AngleLine& line = sheet.angles[static_cast<std::size_t>(index)];
            line.member = line.member.valid() ? line.member : member;
            line.members.push_back(member);
        }
        sheet.angleOfMember.push_back(index);
    }
}

} // namespace

Sheet makeSheet(const Truss& truss, const LoadChoice& choice, std::shared_ptr<Shape> shape) {
    Sheet sheet{.truss = truss, .choice = choice, .structure = structureOf(truss)};
    sheet.spot = kSameSpot * sheet.structure.extent / toMetre(truss.units.length);
    sheet.shape = shape ? std::move(shape) : std::make_shared<Shape>();
    const double newton = toNewton(truss.units.force);
    for (const Vec2 load : jointLoads(truss, choice)) {
        sheet.loads.push_back({load.x / newton, load.y / newton});
        sheet.scale = std::max(
            {sheet.scale, std::fabs(sheet.loads.back().x), std::fabs(sheet.loads.back().y)});
    }
    sheet.membersOf.resize(truss.joints.size());
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        sheet.membersOf[truss.members[i].a.at()].push_back(member);
        sheet.membersOf[truss.members[i].b.at()].push_back(member);
    }
    sheet.restraintsOf.resize(truss.joints.size());
    for (std::size_t i = 0; i < sheet.structure.restraints.size(); ++i) {
        sheet.restraintsOf[sheet.structure.restraints[i].joint.at()].push_back(
            {static_cast<int>(i)});
    }
    sheet.forces.resize(truss.members.size());
    sheet.roundedForces.resize(truss.members.size());
    sheet.drawn.resize(truss.members.size(), 1);
    sheet.reactions.resize(sheet.structure.restraints.size());
    sheet.roundedReactions.resize(sheet.structure.restraints.size());
    sheet.used.resize(truss.joints.size());
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        sheet.openAt.push_back(sheet.membersOf[i].size() + sheet.restraintsOf[i].size());
    }
    nameAngles(sheet);
    return sheet;
}

namespace {

// By multiplication, which gives the same bits on every platform.
double powerOfTen(int exponent) {
    double power = 1;
    for (int i = 0; i < exponent; ++i) {
        power *= 10;
    }
    return power;
}

int decimalExponent(double value) {
    int exponent = 0;
    double size = std::fabs(value);
    for (; size >= 10; size /= 10) {
        ++exponent;
    }
    for (; size < 1; size *= 10) {
        --exponent;
    }
    return exponent;
}

// The value that is carried to the next step, as written.
double asCarried(const Sheet& sheet, double value) {
    const ClassSettings& settings = sheet.truss.classSettings;
    if (settings.carry == CarriedValues::Full || value == 0) {
        return value;
    }
    int decimals = settings.digits;
    if (settings.form == NumberForm::Significant) {
        decimals -= 1 + decimalExponent(value);
    }
    const double scale = powerOfTen(std::abs(decimals));
    return decimals < 0 ? std::round(value / scale) * scale : std::round(value * scale) / scale;
}

} // namespace

Symbol forceSymbol(MemberId member) { return {.kind = SymbolKind::MemberForce, .member = member}; }

Symbol reactionSymbol(const Sheet& sheet, RestraintId restraint) {
    return {.kind = SymbolKind::Reaction,
            .restraint = restraint,
            .joint = sheet.structure.restraints[restraint.at()].joint};
}

std::optional<double> valueOf(const Sheet& sheet, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction ? sheet.reactions[symbol.restraint.at()]
                                               : sheet.forces[symbol.member.at()];
}

namespace {

// Notes that the value is now known.
void noteOrder(Sheet& sheet, const Symbol& symbol) {
    sheet.order.push_back(symbol);
    if (symbol.kind == SymbolKind::Reaction) {
        ++sheet.reactionsFound;
        const auto restraint = symbol.restraint.at();
        --sheet.openAt[sheet.structure.restraints[restraint].joint.at()];
    } else {
        --sheet.openAt[sheet.truss.members[symbol.member.at()].a.at()];
        --sheet.openAt[sheet.truss.members[symbol.member.at()].b.at()];
    }
}

std::vector<bool>::reference roundedOf(Sheet& sheet, const Symbol& symbol) {
    return symbol.kind == SymbolKind::Reaction ? sheet.roundedReactions[symbol.restraint.at()]
                                               : sheet.roundedForces[symbol.member.at()];
}

} // namespace

Found record(Sheet& sheet, const Symbol& symbol, double value) {
    if (!valueOf(sheet, symbol)) {
        noteOrder(sheet, symbol);
    }
    Found found{symbol, isNothing(sheet, value) ? 0 : asCarried(sheet, value), FoundAs::Zero};
    const double lost = found.value - value;
    found.rounded = roundedOf(sheet, symbol) || !isNothing(sheet, lost);
    roundedOf(sheet, symbol) = found.rounded;
    if (symbol.kind == SymbolKind::Reaction) {
        sheet.reactions[symbol.restraint.at()] = found.value;
        sheet.scale = std::max(sheet.scale, std::fabs(found.value));
        found.as = found.value < 0 ? FoundAs::Opposite : FoundAs::AsAssumed;
    } else {
        found.drawn = sheet.drawn[symbol.member.at()];
        sheet.forces[symbol.member.at()] = found.value;
        found.as = found.value < 0 ? FoundAs::Compression : FoundAs::Tension;
    }
    found.as = found.value == 0 ? FoundAs::Zero : found.as;
    return found;
}

Found recordSame(Sheet& sheet, const Symbol& symbol, const Symbol& before) {
    roundedOf(sheet, symbol) = static_cast<bool>(roundedOf(sheet, before));
    return record(sheet, symbol, *valueOf(sheet, before));
}

bool guesses(const Sheet& sheet) {
    return sheet.truss.classSettings.senses == AssumedSense::Guessed;
}

int drawnSense(const Sheet& sheet, const Symbol& symbol) {
    if (symbol.kind != SymbolKind::MemberForce || !guesses(sheet)) {
        return 1;
    }
    const auto& force = sheet.forces[symbol.member.at()];
    return force ? (*force < 0 ? -1 : 1) : sheet.drawn[symbol.member.at()];
}

bool isNothing(const Sheet& sheet, double force) {
    return std::fabs(force) <= kZeroForce * sheet.scale;
}

bool hasLoad(const Sheet& sheet, JointId joint) {
    const Vec2 load = sheet.loads[joint.at()];
    return !isNothing(sheet, load.x) || !isNothing(sheet, load.y);
}

Vec2 positionOf(const Sheet& sheet, JointId joint) { return sheet.truss.joints[joint.at()].at; }

Vec2 awayFrom(const Sheet& sheet, JointId joint, MemberId member) {
    const Vec2 along = sheet.structure.bars[member.at()].along;
    return sheet.truss.members[member.at()].a == joint ? along : -along;
}

JointId otherEnd(const Sheet& sheet, JointId joint, MemberId member) {
    const Member& ends = sheet.truss.members[member.at()];
    return ends.a == joint ? ends.b : ends.a;
}

const std::vector<MemberId>& membersAt(const Sheet& sheet, JointId joint) {
    return sheet.membersOf[joint.at()];
}

bool parallel(Vec2 unit, Vec2 otherUnit) { return std::fabs(cross(unit, otherUnit)) <= kParallel; }

Remark thatNegative(const Symbol& force) {
    return remarkThat(phrase::kNegativeForce,
                      {{"symbol", force}, {"member", std::vector{force.member}}});
}

void noteFound(Sheet& sheet, Step& step) {
    for (const Found& found : step.found) {
        if (found.symbol.kind == SymbolKind::Reaction) {
            step.restraints.push_back(found.symbol.restraint);
        } else {
            step.members.push_back(found.symbol.member);
        }
        if (found.as == FoundAs::Opposite) {
            const Restraint& restraint = sheet.structure.restraints[found.symbol.restraint.at()];
            step.remarks.push_back(
                remarkThat(phrase::kActsOtherWay,
                           {{"symbol", found.symbol}, {"direction", -restraint.along}}));
        } else if (found.symbol.kind == SymbolKind::MemberForce && found.value * found.drawn < 0 &&
                   (guesses(sheet) || !sheet.saidNegative)) {
            sheet.saidNegative = true;
            step.remarks.push_back(thatNegative(found.symbol));
        }
    }
}

void noteAssumed(Sheet& sheet, Step& step) {
    if (!sheet.saidAway) {
        sheet.saidAway = true;
        step.remarks.push_back(
            remarkThat(guesses(sheet) ? phrase::kAssumedGuessed : phrase::kAssumedAway));
    }
}

void markUsed(Sheet& sheet, JointId joint, Vec2 direction) {
    sheet.used[joint.at()].push_back(direction);
    sheet.usedOrder.push_back(joint);
}

std::vector<EquationKind> unusedAxes(const Sheet& sheet, JointId joint) {
    const auto& used = sheet.used[joint.at()];
    if (used.size() >= 2) {
        return {};
    }
    if (used.empty()) {
        return {EquationKind::SumX, EquationKind::SumY};
    }
    const bool nearX = std::fabs(used.front().x) > std::fabs(used.front().y);
    return {nearX ? EquationKind::SumY : EquationKind::SumX};
}

} // namespace gusset
