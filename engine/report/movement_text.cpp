#include "report/movement_text.hpp"

#include "core/tolerance.hpp"
#include "report/number.hpp"
#include "report/phrases.hpp"
#include "report/results_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// A displacement is worth three figures: stiffnesses are known no better.
constexpr NumberStyle kStyle{NumberForm::Significant, 3, '.', true};
constexpr const char* kThinSpace = "\u2009";

double largestOf(const Solution& solution) {
    double largest = 0;
    for (const Vec2 displacement : solution.displacements) {
        largest = std::max(largest, length(displacement));
    }
    return largest;
}

// Zero to working accuracy is written 0.
std::string numberText(double value, double largest, double unit) {
    return std::abs(value) <= kZeroForce * largest ? "0" : formatNumber(value / unit, kStyle);
}

std::string captionOf(const std::string& unit, Phrase withUnit, Phrase plain) {
    return unit.empty() ? sayPlain(englishPhrases(), plain)
                        : sayPlain(englishPhrases(), withUnit, {{"unit", plainLine(unit)}});
}

TextTable jointTable(const Truss& truss, const Solution& solution) {
    const PhraseBook& book = englishPhrases();
    TextTable table{captionOf(symbolOf(truss.units.displacement), Phrase::MovementCaption,
                              Phrase::MovementCaptionPlain),
                    {say(book, Phrase::ColumnJoint), plainLine("x"), plainLine("y"),
                     say(book, Phrase::ColumnTotal)},
                    {},
                    {false, true, true, true}};
    for (const MovementRow& row : movementRows(truss, solution)) {
        table.rows.push_back({row.name, row.x, row.y, row.total});
    }
    return table;
}

TextTable memberTable(const Truss& truss, const Solution& solution) {
    const PhraseBook& book = englishPhrases();
    TextTable table{sayPlain(book, Phrase::StretchCaption),
                    {say(book, Phrase::ColumnMember),
                     headed(say(book, Phrase::ColumnStretch), symbolOf(truss.units.displacement)),
                     headed(say(book, Phrase::ColumnStress), symbolOf(truss.units.stress))},
                    {},
                    {false, true, true}};
    for (const StretchRow& row : stretchRows(truss, solution)) {
        table.rows.push_back({row.name, row.stretch, row.stress});
    }
    return table;
}

std::string energyLine(const Truss& truss, const Solution& solution) {
    const std::string force = symbolOf(truss.units.force);
    const std::string length = symbolOf(truss.units.length);
    const double unit = toNewton(truss.units.force) * toMetre(truss.units.length);
    std::string value = formatNumber(solution.strainEnergy / unit, kStyle);
    if (!force.empty() && !length.empty()) {
        value += kThinSpace + force + "·" + length;
    }
    return sayPlain(englishPhrases(), Phrase::StrainEnergy, {{"value", plainLine(value)}});
}

} // namespace

std::vector<MovementRow> movementRows(const Truss& truss, const Solution& solution) {
    std::vector<MovementRow> rows;
    const double largest = largestOf(solution);
    const double unit = toMetre(truss.units.displacement);
    for (std::size_t i = 0; solution.displaced && i < truss.joints.size(); ++i) {
        const Vec2 by = solution.displacements[i];
        rows.push_back({JointId{static_cast<int>(i)}, truss.joints[i].label, length(by) / unit,
                        numberText(by.x, largest, unit), numberText(by.y, largest, unit),
                        numberText(length(by), largest, unit)});
    }
    return rows;
}

std::vector<StretchRow> stretchRows(const Truss& truss, const Solution& solution) {
    std::vector<StretchRow> rows;
    double longest = 0;
    double stressed = 0;
    for (std::size_t i = 0; solution.displaced && i < truss.members.size(); ++i) {
        longest = std::max(longest, std::abs(solution.elongations[i]));
        stressed = std::isnan(solution.stresses[i])
                       ? stressed
                       : std::max(stressed, std::abs(solution.stresses[i]));
    }
    for (std::size_t i = 0; solution.displaced && i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double stress = solution.stresses[i];
        rows.push_back(
            {member, memberName(truss, member),
             numberText(solution.elongations[i], longest, toMetre(truss.units.displacement)),
             std::isnan(stress) ? "" : numberText(stress, stressed, toPascal(truss.units.stress))});
    }
    return rows;
}

std::vector<TextTable> movementTables(const Truss& truss, const Solution& solution) {
    if (!solution.displaced) {
        return {};
    }
    return {jointTable(truss, solution), memberTable(truss, solution)};
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

std::vector<std::string> movementLines(const Truss& truss, const Solution& solution) {
    const PhraseBook& book = englishPhrases();
    if (!solution.displaced) {
        return solution.solved && solution.status != Status::Mechanism
                   ? std::vector{sayPlain(book, Phrase::NoDisplacements)}
                   : std::vector<std::string>{};
    }
    const JointId joint = furthestJoint(solution);
    if (!joint.valid()) {
        return {sayPlain(book, Phrase::NothingMoves)};
    }
    return {sayPlain(book, Phrase::LargestDisplacement,
                     {{"value", plainLine(movementOf(truss, solution, joint))},
                      {"joint", plainLine(truss.joints[joint.at()].label)}}),
            energyLine(truss, solution)};
}

std::string movementOf(const Truss& truss, const Solution& solution, JointId joint) {
    const double unit = toMetre(truss.units.displacement);
    const std::string symbol = symbolOf(truss.units.displacement);
    return numberText(length(solution.displacements[joint.at()]), largestOf(solution), unit) +
           (symbol.empty() ? symbol : kThinSpace + symbol);
}

std::string timesText(double factor) {
    return "×" + std::string(kThinSpace) + significantNumber(factor, 3);
}

} // namespace gusset
