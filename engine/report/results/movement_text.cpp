#include "report/results/movement_text.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

double largestOf(const Solution& solution) {
    double largest = 0;
    for (const Vec2 displacement : solution.displacements) {
        largest = std::max(largest, length(displacement));
    }
    return largest;
}

// Values that are zero to working accuracy become 0.
double inUnits(double value, double largest, double unit) {
    return std::abs(value) <= kZeroForce * largest ? 0 : value / unit;
}

// `off`: bound of the error, in the same unit.
std::string numberText(const Truss& truss, double value, double off) {
    return value == 0 ? "0" : formatNumber(value, movementStyleOf(truss, off));
}

std::string captionOf(const PhraseBook& book, const std::string& unit,
                      decltype("{unit}"_phrase) withUnit, Phrase<> plain) {
    return unit.empty() ? sayPlain(book, plain) : sayPlain(book, withUnit, {{"unit", unit}});
}

TextTable jointTable(const Writer& writer, const Solution& solution) {
    TextTable table{captionOf(writer, symbolOf(writer.truss.units.displacement),
                              phrase::kMovementCaption, phrase::kMovementCaptionPlain),
                    {say(writer, phrase::kColumnJoint), plainLine("x"), plainLine("y"),
                     say(writer, phrase::kTotal)},
                    {},
                    {false, true, true, true}};
    for (const MovementRow& row : movementRows(writer.truss, solution)) {
        table.rows.push_back({row.name, row.x, row.y, row.total});
    }
    return table;
}

TextTable memberTable(const Writer& writer, const Solution& solution) {
    TextTable table{
        sayPlain(writer, phrase::kStretchCaption),
        {say(writer, phrase::kColumnMember),
         headed(writer, say(writer, phrase::kColumnStretch),
                symbolOf(writer.truss.units.displacement)),
         headed(writer, say(writer, phrase::kColumnStress), symbolOf(writer.truss.units.stress))},
        {},
        {false, true, true}};
    for (const StretchRow& row : stretchRows(writer.truss, solution)) {
        table.rows.push_back({row.name, row.stretch, row.stress});
    }
    return table;
}

std::string energyLine(const Writer& writer, const Solution& solution) {
    const std::string force = symbolOf(writer.truss.units.force);
    const std::string length = symbolOf(writer.truss.units.length);
    const double unit = toNewton(writer.truss.units.force) * toMetre(writer.truss.units.length);
    std::string value =
        formatNumber(solution.strainEnergy / unit,
                     movementStyleOf(writer.truss, solution.strainEnergyError / unit));
    if (!force.empty() && !length.empty()) {
        value += kThinSpace + force + "·" + length;
    }
    return sayPlain(writer, phrase::kStrainEnergy, {{"value", value}});
}

} // namespace

std::vector<MovementRow> movementRows(const Truss& truss, const Solution& solution) {
    std::vector<MovementRow> rows;
    const double largest = largestOf(solution);
    const double unit = toMetre(truss.units.displacement);
    const double off = movementBound(solution) / unit;
    for (std::size_t i = 0; solution.displaced && i < truss.joints.size(); ++i) {
        const Vec2 by = solution.displacements[i];
        const double dx = inUnits(by.x, largest, unit);
        const double dy = inUnits(by.y, largest, unit);
        const double size = inUnits(length(by), largest, unit);
        rows.push_back({JointId{static_cast<int>(i)}, truss.joints[i].label, size, dx, dy,
                        numberText(truss, dx, off), numberText(truss, dy, off),
                        numberText(truss, size, off)});
    }
    return rows;
}

std::vector<StretchRow> stretchRows(const Truss& truss, const Solution& solution) {
    std::vector<StretchRow> rows;
    double longest = 0;
    for (const double elongation : solution.elongations) {
        longest = std::max(longest, std::abs(elongation));
    }
    const double shift = toMetre(truss.units.displacement);
    const double pressure = toPascal(truss.units.stress);
    for (std::size_t i = 0; solution.displaced && i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double off = solution.elongationErrors[i];
        StretchRow row{
            .member = member, .name = memberName(truss, member), .stretch = {}, .stress = {}};
        row.change = std::abs(solution.elongations[i]) <= off
                         ? 0
                         : inUnits(solution.elongations[i], longest, shift);
        row.stretch = numberText(truss, row.change, off / shift);
        if (const double stress = solution.stresses[i]; !std::isnan(stress)) {
            const bool isNone = isZero(solution, solution.forces[i]);
            row.stressValue = isNone ? 0 : stress / pressure;
            const double perNewton = isNone ? 0 : std::abs(*row.stressValue / solution.forces[i]);
            row.stress = numberText(truss, *row.stressValue,
                                    perNewton * solution.trust.error * solution.largest);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<TextTable> movementTables(const Writer& writer, const Solution& solution) {
    if (!solution.displaced) {
        return {};
    }
    return {jointTable(writer, solution), memberTable(writer, solution)};
}

JointId furthestJoint(const Solution& solution) {
    JointId furthest;
    double most = 0;
    for (std::size_t i = 0; solution.displaced && i < solution.displacements.size(); ++i) {
        if (length(solution.displacements[i]) > most) {
            most = length(solution.displacements[i]);
            furthest = JointId{static_cast<int>(i)};
        }
    }
    return furthest;
}

std::vector<std::string> movementLines(const Writer& writer, const Solution& solution) {
    if (losesDisplacements(solution)) {
        return {sayPlain(writer, phrase::kDisplacementsLost)};
    }
    if (!solution.displaced) {
        return solution.solved && solution.status != Status::Mechanism
                   ? std::vector{sayPlain(writer, phrase::kNoDisplacements)}
                   : std::vector<std::string>{};
    }
    const JointId joint = furthestJoint(solution);
    if (!joint.valid()) {
        return {sayPlain(writer, phrase::kNothingMoves)};
    }
    return {sayPlain(writer, phrase::kLargestDisplacement,
                     {{"value", movementOf(writer.truss, solution, joint)},
                      {"joint", writer.truss.joints[joint.at()].label}}),
            energyLine(writer, solution)};
}

std::string movementOf(const Truss& truss, const Solution& solution, JointId joint) {
    const double unit = toMetre(truss.units.displacement);
    const std::string symbol = symbolOf(truss.units.displacement);
    const double size = length(solution.displacements[joint.at()]);
    return withUnit(
        numberText(truss, inUnits(size, largestOf(solution), unit), movementBound(solution) / unit),
        symbol);
}

std::string timesText(const Truss& truss, double factor) {
    NumberStyle style = movementStyleOf(truss, 0);
    style.keepZeros = false;
    return "×" + std::string(kThinSpace) + formatNumber(factor, style);
}

} // namespace gusset
