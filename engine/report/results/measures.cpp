#include "report/results/measures.hpp"

#include "core/number.hpp"

namespace gusset {
namespace {

// The pound is 0.45359237 kg and the foot 0.3048 m (the international ones, of 1959).
constexpr double kPound = 0.45359237;
constexpr double kFoot = 0.3048;
constexpr double kInchesOfFoot = 12;

constexpr Measures kMetric{"kg", "m", "mm", "kg/m", 1, 1, 1000, 1};
constexpr Measures kImperial{
    "lb", "ft", "in", "lb/ft", 1 / kPound, 1 / kFoot, kInchesOfFoot / kFoot, 2};

} // namespace

const Measures& measuresOf(const Truss& truss) {
    const LengthUnit unit = truss.units.length;
    return unit == LengthUnit::ft || unit == LengthUnit::in ? kImperial : kMetric;
}

std::string decimals(const Truss& truss, double value, int digits) {
    return formatNumber(value, {.form = NumberForm::Decimals,
                                .digits = digits,
                                .decimalSign = truss.classSettings.decimalSign});
}

std::string massText(const Truss& truss, double kilograms) {
    constexpr double kWhole = 100; // and more
    const double mass = kilograms * measuresOf(truss).perKilogram;
    return decimals(truss, mass, mass < kWhole ? 1 : 0) + " " + measuresOf(truss).mass;
}

std::string movementText(const Truss& truss, double metres) {
    const Measures& measures = measuresOf(truss);
    return decimals(truss, metres * measures.movementPerMetre, measures.movementDecimals) + " " +
           measures.movement;
}

std::string lengthSumText(const Truss& truss, double metres) {
    return decimals(truss, metres * measuresOf(truss).perMetre, 1) + " " + measuresOf(truss).length;
}

} // namespace gusset
