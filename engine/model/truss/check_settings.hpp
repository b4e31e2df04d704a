#pragma once
// How members are checked: plain data of the model, without units. What is checked with it, and by
// which formula, is design/member_checks.

#include "core/outcome.hpp"

#include <array>
#include <string>
#include <string_view>

namespace gusset {

enum class ColumnFormula { Euler, En1993, Aisc360 }; // by which a member buckles
enum class BucklingCurve { A0, A, B, C, D };         // EN 1993-1-1:2005, table 6.1
enum class AiscSafety { Resistance, Allowable };     // φ · P_n, or P_n / Ω

struct CheckSettings {
    ColumnFormula formula = ColumnFormula::Euler;
    double effectiveLength = 1;  // K: buckling length over the length between the joints
    double strengthFactor = 1.5; // Euler: what the strength is divided by, ≥ 1
    double eulerFactor = 2;      // Euler: what the critical force is divided by, ≥ 1
    BucklingCurve curve = BucklingCurve::C;
    double gammaM0 = 1; // EN 1993-1-1, 6.1: of the cross-section
    double gammaM1 = 1; // and of the member; a national annex may say otherwise
    AiscSafety safety = AiscSafety::Resistance;
    double phi = 0.9;    // AISC 360-16, D2 and E1
    double omega = 1.67; // likewise
    // Largest slenderness allowed, 0: none. 300 and 200: AISC 360-16, user notes of D1 and E2.
    double tensionLimit = 300;
    double compressionLimit = 200;
    std::string unknown; // unknown keys of "checks", as JSON text

    friend bool operator==(const CheckSettings&, const CheckSettings&) = default;
};

// The numbers among them, by their keys in files: read, written, examined and typed alike.
struct CheckNumber {
    std::string_view key;
    double CheckSettings::*value;
    double least = 1;
    double most = 100;
    bool orNone = false; // 0 is allowed too: no limit
    const char* range = "1 to 100";
    const char* says = ""; // what it is; both for messages
};
inline constexpr std::array<CheckNumber, 9> kCheckNumbers{{
    {"K", &CheckSettings::effectiveLength, 0.1, 10, false, "0.1 to 10",
     "the factor of the buckling length"},
    {"strengthFactor", &CheckSettings::strengthFactor, 1, 100, false, "1 to 100",
     "the factor that strength is divided by"},
    {"eulerFactor", &CheckSettings::eulerFactor, 1, 100, false, "1 to 100",
     "the factor that Euler's critical force is divided by"},
    {"gammaM0", &CheckSettings::gammaM0, 1, 10, false, "1 to 10", "the partial factor γM0"},
    {"gammaM1", &CheckSettings::gammaM1, 1, 10, false, "1 to 10", "the partial factor γM1"},
    {"phi", &CheckSettings::phi, 0.1, 1, false, "0.1 to 1", "the resistance factor φ"},
    {"omega", &CheckSettings::omega, 1, 10, false, "1 to 10", "the safety factor Ω"},
    {"tensionLimit", &CheckSettings::tensionLimit, 10, 1000, true, "10 to 1000",
     "the largest slenderness of members in tension"},
    {"compressionLimit", &CheckSettings::compressionLimit, 10, 1000, true, "10 to 1000",
     "the largest slenderness of members in compression"},
}};

// Numbers out of range, each at its place in the file, with the range that it may have.
[[nodiscard]] Issues faultsOf(const CheckSettings&);

} // namespace gusset
