#pragma once
// How members are checked: plain data of the model, without units. For what is checked with it, and
// by which formula, see design/member_checks.

#include "core/ids.hpp"
#include "core/outcome.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

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
    double gammaM0 = 1;    // EN 1993-1-1, 6.1: of the cross-section
    double gammaM1 = 1;    // of the member; a national annex may specify other values
    double gammaM2 = 1.25; // of net sections; likewise
    AiscSafety safety = AiscSafety::Resistance;
    double phi = 0.9;    // AISC 360-16, D2 and E1
    double omega = 1.67; // likewise
    // Largest slenderness allowed, 0: none. 300 and 200: AISC 360-16, user notes of D1 and E2.
    double tensionLimit = 300;
    double compressionLimit = 200;
    double deflection = 0; // x of the limit L/x of the movement of a joint over the span, 0: none
    // EN 1995-1-1:2004, for timber whose material states strengths along the grain.
    double kMod = 0.8;        // table 3.1: medium-term loads, service classes 1 and 2
    double gammaTimber = 1.3; // table 2.3: solid timber; 1.25 glued laminated
    double betaC = 0.2;       // (6.29): solid timber; 0.1 glued laminated
    // Joints that are held out of the plane of the truss; none: all of them.
    std::optional<std::vector<JointId>> held{};
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
inline constexpr std::array<CheckNumber, 14> kCheckNumbers{{
    {"K", &CheckSettings::effectiveLength, 0.1, 10},
    {"strengthFactor", &CheckSettings::strengthFactor},
    {"eulerFactor", &CheckSettings::eulerFactor},
    {"gammaM0", &CheckSettings::gammaM0, 1, 10},
    {"gammaM1", &CheckSettings::gammaM1, 1, 10},
    {"phi", &CheckSettings::phi, 0.1, 1},
    {"omega", &CheckSettings::omega, 1, 10},
    {"tensionLimit", &CheckSettings::tensionLimit, 10, 1000, true},
    {"compressionLimit", &CheckSettings::compressionLimit, 10, 1000, true},
    {"deflection", &CheckSettings::deflection, 10, 1000, true},
    {"kMod", &CheckSettings::kMod, 0.1, 2},
    {"gammaTimber", &CheckSettings::gammaTimber, 1, 10},
    {"gammaM2", &CheckSettings::gammaM2, 1, 10},
    {"betaC", &CheckSettings::betaC, 0.01, 1},
}};

// Numbers out of range, each with its place in the file and the allowed range.
[[nodiscard]] Issues faultsOf(const CheckSettings&);

} // namespace gusset
