#pragma once
// The sheet: a report of a truss for paper.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kSheetProject = "Project"_phrase;
inline constexpr auto kSheetAuthor = "Author"_phrase;
inline constexpr auto kSheetDate = "Date"_phrase;
inline constexpr auto kSheetPage = "Page {n} of {m}"_phrase;
inline constexpr auto kCodeOfTruss = "The truss as a QR code"_phrase;
inline constexpr auto kSheetOpens = "This truss as a link"_phrase;
inline constexpr auto kSheetAsks = "This exercise as a link"_phrase;
inline constexpr auto kSheetNoCode =
    "The link is too long for a QR code that phones read: open the file of the truss instead."_phrase;

// Which loads a drawing or a table is under.
inline constexpr auto kUnderEveryLoad = "all loads together"_phrase;
inline constexpr auto kUnderCase = "case {name}"_phrase;
inline constexpr auto kUnderCombination = "combination {name}"_phrase;
inline constexpr auto kUnderCombinations = "the combinations {names}"_phrase;
inline constexpr auto kUnderCases = "the cases {names}, each alone"_phrase;
inline constexpr auto kTableUnder = "{table}; under {loads}"_phrase;
inline constexpr auto kSaidUnder = "Under {loads}: {says}"_phrase;
inline constexpr auto kHeadEveryLoad = "all loads"_phrase;

inline constexpr auto kDrawnLoads = "Supports, dimensions and loads under {loads}."_phrase;
inline constexpr auto kDrawnForces = "Forces and reactions under {loads}. {signs}"_phrase;
inline constexpr auto kDrawnNumbers =
    "The numbers at the members are those of the list below the drawing."_phrase;
inline constexpr auto kDrawnIncomplete =
    "Some values have no room in this drawing; the tables have all of them."_phrase;
inline constexpr auto kNotDrawn = "A truss of so many joints is not drawn on one page."_phrase;
inline constexpr auto kNothingToDraw = "There is no joint on the board yet."_phrase;
inline constexpr auto kNumberOfMember = "{number}: {member}, {force}"_phrase;

inline constexpr auto kSheetModel = "Model"_phrase;
inline constexpr auto kSheetLoads = "Load cases and combinations"_phrase;
inline constexpr auto kSheetForces = "Forces"_phrase;
inline constexpr auto kSheetMoving = "Moving loads"_phrase;
inline constexpr auto kColumnCombination = "Combination"_phrase;
inline constexpr auto kColumnFactors = "Factors of the cases"_phrase;
inline constexpr auto kColumnRule = "By the rule"_phrase;
inline constexpr auto kFactorTimesCase = "{factor} · {name}"_phrase;
inline constexpr auto kCasesAre = "Load cases: {cases}."_phrase;
inline constexpr auto kProfilesCaption = "Sections and their mass"_phrase;
inline constexpr auto kColumnMass = "Mass"_phrase;
inline constexpr auto kAllOfThem = "all"_phrase;
inline constexpr auto kPreliminary =
    "Preliminary: local codes and a licensed engineer decide"_phrase;
inline constexpr auto kColumnSection = "Section"_phrase;
inline constexpr auto kColumnTemperature = "Temperature change, K"_phrase;
inline constexpr auto kColumnLackOfFit = "Lack of fit"_phrase;
inline constexpr auto kColumnSupport = "Support"_phrase;
inline constexpr auto kColumnReactionAt = "Reaction at, °"_phrase;
inline constexpr auto kColumnSettlement = "Settlement"_phrase;
inline constexpr auto kColumnCase = "Case"_phrase;
inline constexpr auto kColumnOn = "On"_phrase;
inline constexpr auto kColumnRight = "To the right"_phrase;
inline constexpr auto kColumnUp = "Upwards"_phrase;
inline constexpr auto kOnMember = "{member}, {length} from {joint}"_phrase;
inline constexpr auto kColumnMaterial = "Material"_phrase;
inline constexpr auto kColumnProfile = "Profile"_phrase;
inline constexpr auto kColumnStrength = "Strength"_phrase;
inline constexpr auto kColumnDensity = "Density"_phrase;
inline constexpr auto kColumnLoad = "Load"_phrase;
inline constexpr auto kColumnPath = "Path"_phrase;
inline constexpr auto kColumnAxles = "Axles, with the distance behind the first"_phrase;
inline constexpr auto kAxleAt = "{force} at {length}"_phrase;
inline constexpr auto kSpreadOver = "{force} over {length}"_phrase;
inline constexpr auto kSpreadWhereWorst = "{force} where it is worst"_phrase;

inline constexpr auto kColumnGreatestTension = "Greatest tension"_phrase;
inline constexpr auto kColumnGreatestCompression = "Greatest compression"_phrase;
inline constexpr auto kColumnAxis = "Along"_phrase;
inline constexpr auto kHenceNoForces =
    "So there are no forces, displacements or checks on this sheet."_phrase;
inline constexpr auto kNoForcesUnder = "Under {loads} there are no forces. {why}"_phrase;
inline constexpr auto kColumnOfSpan = "y as part of the span"_phrase;
inline constexpr auto kPartOfSpan = "L/{n}"_phrase;
inline constexpr auto kSpanIs =
    "The span is that between the outermost supports: L = {length}."_phrase;
inline constexpr auto kColumnClause = "Clause"_phrase;

} // namespace gusset::phrase
