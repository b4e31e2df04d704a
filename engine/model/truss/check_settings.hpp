#pragma once
// How members are checked: plain data of the model, without units. For what is checked with it, and
// by which formula, see design/member_checks.

#include "core/outcome.hpp"

#include <array>
#include <string>
#include <string_view>

namespace gusset {

enum class ColumnFormula { Euler, En1993, Aisc360 }; // the buckling formula
enum class BucklingCurve { A0, A, B, C, D };         // EN 1993-1-1:2005, table 6.1
enum class AiscSafety { Resistance, Allowable };     // φ · P_n, or P_n / Ω

struct CheckSettings {
    ColumnFormula formula = ColumnFormula::Euler;
    double effectiveLength = 1;  // K: buckling length over the length between the joints
    double strengthFactor = 1.5; // Euler: what the strength is divided by, ≥ 1
    double eulerFactor = 2;      // Euler: what the critical force is divided by, ≥ 1
    BucklingCurve curve = BucklingCurve::C;
    double gammaM0 = 1; // EN 1993-1-1, 6.1: of the cross-section
    double gammaM1 = 1; // of the member; a national annex may specify other values
    AiscSafety safety = AiscSafety::Resistance;
    double phi = 0.9;    // AISC 360-16, D2 and E1
    double omega = 1.67; // likewise
    // Largest slenderness allowed, 0: none. 300 and 200: AISC 360-16, user notes of D1 and E2.
    double tensionLimit = 300;
    double compressionLimit = 200;
    std::string unknown; // unknown keys of "checks", as JSON text

    friend bool operator==(const CheckSettings&, const CheckSettings&) = default;
};

// The numeric settings, by their keys in files; used for reading, writing, validating and typing.
struct CheckNumber {
    std::string_view key;
    double CheckSettings::*value;
    double least = 1;
    double most = 100;
    bool orNone = false; // 0 is also allowed: no limit
};
inline constexpr std::array<CheckNumber, 9> kCheckNumbers{{
    {"K", &CheckSettings::effectiveLength, 0.1, 10},
    {"strengthFactor", &CheckSettings::strengthFactor},
    {"eulerFactor", &CheckSettings::eulerFactor},
    {"gammaM0", &CheckSettings::gammaM0, 1, 10},
    {"gammaM1", &CheckSettings::gammaM1, 1, 10},
    {"phi", &CheckSettings::phi, 0.1, 1},
    {"omega", &CheckSettings::omega, 1, 10},
    {"tensionLimit", &CheckSettings::tensionLimit, 10, 1000, true},
    {"compressionLimit", &CheckSettings::compressionLimit, 10, 1000, true},
}};

// Numbers out of range, each with its place in the file and the allowed range.
[[nodiscard]] Issues faultsOf(const CheckSettings&);

} // namespace gusset
