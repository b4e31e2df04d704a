#pragma once
// Characters for formulas and quantities that are not on a keyboard.

namespace gusset {

inline constexpr char kMinus[] = "\u2212";
inline constexpr char kDot[] = "\u00B7";       // between factors
inline constexpr char kSum[] = "\u03A3";       // Σ
inline constexpr char kAlmost[] = "\u2248";    // before a rounded number
inline constexpr char kThinSpace[] = "\u2009"; // before a unit: lines break at spaces, never here

} // namespace gusset
