#pragma once
// Every tolerance of the engine and of the board, each relative to a named scale.

namespace gusset {

// Against the largest load or reaction of the case: a smaller member force is written 0. Sixteen
// digits less the few that a well-posed truss of thousands of members loses in elimination.
inline constexpr double kZeroForce = 1e-9;

// Against the largest entry of a row of the equilibrium matrix (whose columns are unit vectors): a
// smaller pivot means that the row depends on the others. Wide of rounding (1e-16 times the size),
// narrow of real geometry: a truss that is this close to a mechanism is one on any site.
inline constexpr double kRankPivot = 1e-10;

// The same: what is left of a dependent row is rounding below this, and above it the coordinates do
// hold the truss, though too weakly to count.
inline constexpr double kBarelyHeld = 1e-13;

// Against the largest entry of its row: a smaller one is no pivot, for rounding grows by its
// inverse. The classic compromise between growth and fill (Duff, Erisman & Reid 1986).
inline constexpr double kPivotShare = 0.1;

// A pivot taken again from an elimination of other numbers must be larger than this, in a matrix of
// unit vectors: nearer to a mechanism, rank is for a full elimination to tell.
inline constexpr double kKeptPivot = 1e-6;

// Against the two numbers subtracted: a smaller difference is their rounding. Four units in the
// last place.
inline constexpr double kCancelled = 1e-15;

// Three against the fastest joint of a mechanism. A slower joint is at rest:
inline constexpr double kRests = 1e-9;
// joints move as one rigid body when none departs further from it:
inline constexpr double kRigid = 1e-7;
// and what a mechanism stretches more slowly is no cure that anyone would build:
inline constexpr double kHolds = 1e-3;

// Between a direction given in degrees and the slope of small whole numbers that it is taken for:
// degrees typed with fourteen digits come this close, and nothing else does by chance.
inline constexpr double kSlope = 1e-12;

// A force that a load of 1 causes: above this the truss is said to be close to a mechanism. The
// most slender truss that stands anywhere, a thousand times as long as high, stays a hundred times
// below.
inline constexpr double kAmplified = 1e5;

// Bound of the error of any force against the largest, and of displacements likewise. Where
// arithmetic alone brings it above the first, a stiffness solution in doubles is done again with
// twice the digits:
inline constexpr double kTrusted = 1e-9;
// above the second, fewer than three figures are left, and no forces are given.
inline constexpr double kUsable = 1e-3;

// The same: below this, none of the twelve figures of a file hangs on the bound, and a rough one
// will do, of forces and displacements together and for more than was given.
inline constexpr double kWholeFile = 1e-12;

// Against the bound of the error by rounding: a force below this is nothing but rounding.
inline constexpr double kSurelyRounding = 10;

// E·A of a member against the median of all: outside this ratio and its inverse it is asked about.
// Sections and materials that stand in one truss differ by less than a thousand; a unit of E (kPa
// for GPa, Pa for MPa) by more. A thousand, MPa for GPa, can not be told from a choice.
inline constexpr double kStandsOut = 1e4;

// Pivot of a joint against the stiffness of its members: a smaller one has lost so many of the
// sixteen digits of a double that neither the solution nor the estimate of its error holds.
inline constexpr double kShakyPivot = 1e-10;
// The same of the thirty-two digits of a Wide.
inline constexpr double kShakyWidePivot = 1e-26;

// Against the largest load: what the joints may lack to equilibrium in an accepted solution.
inline constexpr double kResidual = 1e-9;

// Against the extent of the truss: joints closer than this lie on one spot, and a member shorter
// than this has no direction.
inline constexpr double kSameSpot = 1e-9;

// Sine of the angle between two directions that count as one line, when members are read by
// inspection. Drawn coordinates carry some ten digits, hence not smaller.
inline constexpr double kParallel = 1e-9;

// Sine of the angle between slopes that are named by one letter: as steep as each other to all
// digits that a letter is printed with; the terms carry each member's own sine and cosine.
inline constexpr double kSameSlope = 1e-12;

// Against the largest pivot: below this, equations of the working don't settle their unknowns.
inline constexpr double kSettled = 1e-10;

// Of a unit in another: a ratio this close to a whole number, or to 1, is that number, so that
// decimals stay the decimals they are.
inline constexpr double kWholeRatio = 1e-12;

// Of a number against what would be printed for it. The noise of 0.3 − 0.1 is not a figure that
// anyone gave:
inline constexpr double kSameNumber = 1e-11;
// a value that was rounded on the way is not the exact number:
inline constexpr double kSameExact = 1e-9;

// Of a tenth of a millimetre: coordinates that whole numbers of it stand for, in slope triangles.
inline constexpr double kWholeCoordinate = 1e-7;

// What a step, a direction or a share of room may fall short of another and be as good, in
// drawings: far above rounding, far below what is seen.
inline constexpr double kHair = 1e-9;
// Of the extent of a truss: figures of dimensions that are closer print as one.
inline constexpr double kOneLine = 1e-6;
// Of a slope, against one of small whole numbers, in the hint of a member that is being drawn.
inline constexpr double kDrawnSlope = 1e-6;
// CSS pixels: a point this far off a line lies on it.
inline constexpr double kSamePixel = 1e-6;

} // namespace gusset
