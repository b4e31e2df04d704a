#include "model/truss/units.hpp"

#include "core/tolerance.hpp"

#include <array>
#include <cmath>

namespace gusset {

namespace {

template <class Unit>
struct UnitEntry {
    Unit unit;
    const char* symbol;
    double inSI;
};

constexpr double kPound = 0.45359237 * 9.80665; // N
constexpr double kInch = 0.0254;                // m

constexpr std::array<UnitEntry<ForceUnit>, 6> kForces{{
    {ForceUnit::Plain, "", 1},
    {ForceUnit::N, "N", 1},
    {ForceUnit::kN, "kN", 1e3},
    {ForceUnit::MN, "MN", 1e6},
    {ForceUnit::lbf, "lbf", kPound},
    {ForceUnit::kip, "kip", 1e3 * kPound},
}};

constexpr std::array<UnitEntry<LengthUnit>, 6> kLengths{{
    {LengthUnit::Plain, "", 1},
    {LengthUnit::mm, "mm", 1e-3},
    {LengthUnit::cm, "cm", 1e-2},
    {LengthUnit::m, "m", 1},
    {LengthUnit::in, "in", kInch},
    {LengthUnit::ft, "ft", 12 * kInch},
}};

constexpr std::array<UnitEntry<StressUnit>, 7> kStresses{{
    {StressUnit::Plain, "", 1},
    {StressUnit::MPa, "MPa", 1e6},
    {StressUnit::GPa, "GPa", 1e9},
    {StressUnit::psi, "psi", kPound / (kInch * kInch)},
    {StressUnit::ksi, "ksi", 1e3 * kPound / (kInch * kInch)},
    {StressUnit::kPa, "kPa", 1e3},
    {StressUnit::Pa, "Pa", 1},
}};

template <class Table, class Unit>
const auto& entryOf(const Table& table, Unit unit) {
    for (const auto& entry : table) {
        if (entry.unit == unit) {
            return entry;
        }
    }
    return table.front();
}

template <class Table>
std::string listOf(const Table& table) {
    std::string list;
    for (const auto& entry : table) {
        if (entry.symbol[0] != '\0') {
            list += (list.empty() ? "" : ", ") + std::string(entry.symbol);
        }
    }
    return list;
}

template <class Unit, std::size_t Size>
std::optional<Unit> unitNamed(const std::array<UnitEntry<Unit>, Size>& table,
                              std::string_view name) {
    for (const auto& entry : table) {
        if (entry.symbol == name) {
            return entry.unit;
        }
    }
    return std::nullopt;
}

// Divides by 1000 rather than multiplying by 0.001, so that decimals stay exact.
double inOtherUnit(double value, double from, double to) {
    const double up = from / to;
    const double down = to / from;
    if (std::abs(up - std::round(up)) < kWholeRatio * up) {
        return value * std::round(up);
    }
    if (std::abs(down - std::round(down)) < kWholeRatio * down) {
        return value / std::round(down);
    }
    return value * up;
}

} // namespace

double toNewton(ForceUnit unit) { return entryOf(kForces, unit).inSI; }
double toMetre(LengthUnit unit) { return entryOf(kLengths, unit).inSI; }
double toPascal(StressUnit unit) { return entryOf(kStresses, unit).inSI; }

double converted(double value, ForceUnit from, ForceUnit to) {
    return inOtherUnit(value, toNewton(from), toNewton(to));
}
double converted(double value, LengthUnit from, LengthUnit to) {
    return inOtherUnit(value, toMetre(from), toMetre(to));
}
double converted(double value, StressUnit from, StressUnit to) {
    return inOtherUnit(value, toPascal(from), toPascal(to));
}

const char* symbolOf(ForceUnit unit) { return entryOf(kForces, unit).symbol; }
const char* symbolOf(LengthUnit unit) { return entryOf(kLengths, unit).symbol; }
const char* symbolOf(StressUnit unit) { return entryOf(kStresses, unit).symbol; }

std::string unitList(ForceUnit) { return listOf(kForces); }
std::string unitList(LengthUnit) { return listOf(kLengths); }
std::string unitList(StressUnit) { return listOf(kStresses); }

std::optional<ForceUnit> forceUnitNamed(std::string_view name) { return unitNamed(kForces, name); }
std::optional<LengthUnit> lengthUnitNamed(std::string_view name) {
    return unitNamed(kLengths, name);
}
std::optional<StressUnit> stressUnitNamed(std::string_view name) {
    return unitNamed(kStresses, name);
}

} // namespace gusset
