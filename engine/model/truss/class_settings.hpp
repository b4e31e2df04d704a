#pragma once
// The conventions in which a class writes its working. They change the notation, never the results.

#include "core/number.hpp"

#include <string>

namespace gusset {

enum class MomentSense { Clockwise, Anticlockwise }; // which sense of rotation is positive
enum class AngleStyle { SinCos, Cosines, Slopes };   // one angle; cosine to each axis; slope ratio
enum class AxisNames { HV, XY };                     // ΣH and ΣV, or ΣF_x and ΣF_y
enum class SymbolStyle { FAB, AB, S1 };              // F_AB, AB, or S with the member's number
enum class AssumedSense {
    Tension,
    Guessed
}; // unknown forces drawn away from the joint, or guessed
enum class EquationLines { SymbolsFirst, NumbersOnly }; // F_AB sin α − P_A = 0 before 5 sin α − 3
enum class CarriedValues { Full, Rounded };             // carried from one step to the next

struct ClassSettings {
    MomentSense moments = MomentSense::Anticlockwise;
    AngleStyle angles = AngleStyle::SinCos;
    AxisNames axes = AxisNames::XY;
    SymbolStyle symbols = SymbolStyle::FAB;
    AssumedSense senses = AssumedSense::Tension;
    EquationLines equations = EquationLines::SymbolsFirst;
    NumberForm form = NumberForm::Decimals;
    int digits = 2;         // decimals, or significant figures
    char decimalSign = '.'; // or ','
    CarriedValues carry = CarriedValues::Full;
    std::string unknown;        // unknown keys of "class", as JSON text
    std::string unknownNumbers; // and of "class.numbers"

    friend bool operator==(const ClassSettings&, const ClassSettings&) = default;
};

} // namespace gusset
