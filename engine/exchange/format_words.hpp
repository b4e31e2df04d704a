#pragma once
// The words of the model file, for its reader and its writer alike.

#include "exchange/object_reader.hpp"
#include "model/truss/check_settings.hpp"
#include "model/truss/class_settings.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

inline constexpr int kFormatVersion = 1;

inline constexpr std::array<Word<SupportKind>, 2> kSupportWords{
    {{"pin", SupportKind::Pin}, {"roller", SupportKind::Roller}}};
inline constexpr std::array<Word<MomentSense>, 2> kMomentWords{
    {{"clockwise", MomentSense::Clockwise}, {"anticlockwise", MomentSense::Anticlockwise}}};
inline constexpr std::array<Word<AngleStyle>, 3> kAngleWords{{{"sin-cos", AngleStyle::SinCos},
                                                              {"cosines", AngleStyle::Cosines},
                                                              {"slopes", AngleStyle::Slopes}}};
inline constexpr std::array<Word<AxisNames>, 2> kAxisWords{
    {{"H-V", AxisNames::HV}, {"X-Y", AxisNames::XY}}};
inline constexpr std::array<Word<SymbolStyle>, 3> kSymbolWords{
    {{"F_AB", SymbolStyle::FAB}, {"AB", SymbolStyle::AB}, {"S1", SymbolStyle::S1}}};
inline constexpr std::array<Word<AssumedSense>, 2> kSenseWords{
    {{"tension", AssumedSense::Tension}, {"guessed", AssumedSense::Guessed}}};
inline constexpr std::array<Word<NumberForm>, 3> kFormWords{
    {{"exact", NumberForm::Exact},
     {"decimals", NumberForm::Decimals},
     {"significant", NumberForm::Significant}}};
inline constexpr std::array<Word<char>, 2> kSignWords{{{".", '.'}, {",", ','}}};
inline constexpr std::array<Word<CarriedValues>, 2> kCarryWords{
    {{"full", CarriedValues::Full}, {"rounded", CarriedValues::Rounded}}};

inline constexpr std::array<Word<ColumnFormula>, 3> kFormulaWords{
    {{"Euler", ColumnFormula::Euler},
     {"EN 1993-1-1", ColumnFormula::En1993},
     {"AISC 360-16", ColumnFormula::Aisc360}}};
inline constexpr std::array<Word<BucklingCurve>, 5> kCurveWords{{{"a0", BucklingCurve::A0},
                                                                 {"a", BucklingCurve::A},
                                                                 {"b", BucklingCurve::B},
                                                                 {"c", BucklingCurve::C},
                                                                 {"d", BucklingCurve::D}}};
inline constexpr std::array<Word<AiscSafety>, 2> kSafetyWords{
    {{"phi", AiscSafety::Resistance}, {"omega", AiscSafety::Allowable}}};

} // namespace gusset
