#pragma once
// The tables of the model, in the notebook and on the page: their names, columns and rows.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kHeadJoints = "Joints"_phrase;
inline constexpr auto kHeadSupports = "Supports"_phrase;
inline constexpr auto kHeadLoads = "Loads"_phrase;
inline constexpr auto kHeadMaterials = "Materials"_phrase;
inline constexpr auto kHeadSections = "Sections"_phrase;

// What a screen reader calls a row; a load by its number.
inline constexpr auto kRowOfJoint = "joint {name}"_phrase;
inline constexpr auto kRowOfMember = "member {name}"_phrase;
inline constexpr auto kRowOfSupport = "support {name}"_phrase;
inline constexpr auto kRowOfLoad = "load {name}"_phrase;
inline constexpr auto kRowOfMaterial = "material {name}"_phrase;
inline constexpr auto kRowOfSection = "section {name}"_phrase;
inline constexpr auto kNewJoint = "a new joint"_phrase;
inline constexpr auto kNewMember = "a new member"_phrase;
inline constexpr auto kNewSupport = "a new support"_phrase;
inline constexpr auto kNewLoad = "a new load"_phrase;
inline constexpr auto kNewMaterial = "a new material"_phrase;
inline constexpr auto kNewSection = "a new section"_phrase;
inline constexpr auto kCellOfRow = "{cell} of {row}"_phrase;
inline constexpr auto kCellInUnitOfRow = "{cell} ({unit}) of {row}"_phrase;

// Headings, names and hints of columns.
inline constexpr auto kCellName = "name"_phrase;
inline constexpr auto kCellLabel = "label"_phrase;
inline constexpr auto kCellX = "x"_phrase;
inline constexpr auto kCellY = "y"_phrase;
inline constexpr auto kCellEnds = "ends"_phrase;
inline constexpr auto kEndsHint = "A–B"_phrase;
inline constexpr auto kCellSection = "section"_phrase;
inline constexpr auto kCellWarming = "temperature change"_phrase;
inline constexpr auto kWarmingSign = "ΔT"_phrase;
inline constexpr auto kCellMisfit = "lack of fit"_phrase;
inline constexpr auto kCellSupport = "support"_phrase;
inline constexpr auto kCellDirection = "direction"_phrase;
inline constexpr auto kReactionAt = "reaction at"_phrase;
inline constexpr auto kCellSettlement = "settlement"_phrase;
inline constexpr auto kSettles = "settles"_phrase;
inline constexpr auto kCellKind = "kind"_phrase;
inline constexpr auto kKindPin = "pin"_phrase;
inline constexpr auto kKindRoller = "roller"_phrase;
inline constexpr auto kLoadAt = "load at"_phrase;
inline constexpr auto kForceRight = "force to the right"_phrase;
inline constexpr auto kForceUp = "force upwards"_phrase;
inline constexpr auto kRightOrSize = "→ or size"_phrase;
inline constexpr auto kUpOrAngle = "↑ or angle"_phrase;
inline constexpr auto kRightOrSizeInWords = "to the right, or size"_phrase;
inline constexpr auto kUpOrAngleInWords = "up, or @ angle"_phrase;
inline constexpr auto kRightSign = "→"_phrase;
inline constexpr auto kUpSign = "↑"_phrase;
inline constexpr auto kCellSize = "size"_phrase;
inline constexpr auto kCellAngle = "angle"_phrase;
inline constexpr auto kCellCase = "case"_phrase;
inline constexpr auto kCellMaterial = "material"_phrase;
inline constexpr auto kModulusSign = "E"_phrase;
inline constexpr auto kCellDensity = "density"_phrase;
inline constexpr auto kDensityUnit = "kg/m³"_phrase;
inline constexpr auto kExpansionSign = "α"_phrase;
inline constexpr auto kCellMadeAs = "profile"_phrase;
inline constexpr auto kAreaSign = "A"_phrase;

inline constexpr auto kRemove = "Remove"_phrase;
// Loads that are not on a single joint.
inline constexpr auto kAlongPath = "along {path}"_phrase;
inline constexpr auto kSelfWeight = "self-weight"_phrase;

} // namespace gusset::phrase
