#pragma once
// Words of the tables of a model, on the board's pages and on paper.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kHeadJoints = "Joints"_phrase;
inline constexpr auto kHeadSupports = "Supports"_phrase;
inline constexpr auto kHeadLoads = "Loads"_phrase;
inline constexpr auto kHeadMaterials = "Materials"_phrase;
inline constexpr auto kHeadSections = "Sections"_phrase;
inline constexpr auto kHeadCombinations = "Combinations"_phrase;
inline constexpr auto kKindPin = "pin"_phrase;
inline constexpr auto kKindRoller = "roller"_phrase;
inline constexpr auto kSelfWeight = "self-weight"_phrase;
inline constexpr auto kAlongPath = "along {path}"_phrase;
inline constexpr auto kDensityUnit = "kg/m³"_phrase;
inline constexpr auto kCellCase = "case"_phrase;

} // namespace gusset::phrase
