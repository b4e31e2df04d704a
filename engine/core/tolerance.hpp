#pragma once
// Every tolerance of the engine and the board, each relative to a named scale.

namespace gusset {

// Relative to the largest load or reaction of the case: a smaller member force is written as 0.
// Sixteen digits, less the few that a well-posed truss of thousands of members loses in
// elimination.
inline constexpr double kZeroForce = 1e-9;

// Relative to the largest entry of a row of the equilibrium matrix (whose columns are unit
// vectors): a smaller pivot means that the row depends on the others. Well above rounding (1e-16
// times the size), well below real geometry: a truss this close to a mechanism is one on any site.
inline constexpr double kRankPivot = 1e-10;

// On the same scale: below this, what is left of a dependent row is rounding error; above it, the
// coordinates do hold the truss, though too weakly to count.
inline constexpr double kBarelyHeld = 1e-13;

// Relative to the largest entry of its row: a smaller entry is not accepted as a pivot, as rounding
// errors grow with its inverse. The classic compromise between growth and fill (Duff, Erisman &
// Reid 1986).
inline constexpr double kPivotShare = 0.1;

// A pivot reused for new numbers must be larger than this, in a matrix of unit vectors: closer to a
// mechanism, a full elimination must determine the rank.
inline constexpr double kKeptPivot = 1e-6;

// Relative to the two numbers subtracted: a smaller difference is rounding error. Four units in the
// last place.
inline constexpr double kCancelled = 1e-15;

// Three tolerances relative to the fastest joint of a mechanism. A slower joint is at rest:
inline constexpr double kRests = 1e-9;
// joints move as one rigid body when none deviates from it by more than this:
inline constexpr double kRigid = 1e-7;
// and a cure that the mechanism stretches more slowly than this is not one that anyone would build:
inline constexpr double kHolds = 1e-3;

// Between a direction given in degrees and the small-integer slope that it is taken for: degrees
// typed to fourteen digits come this close, and nothing else does by chance.
inline constexpr double kSlope = 1e-12;

// The force that a load of 1 causes: above this the truss is reported as close to a mechanism. The
// most slender realistic truss, a thousand times as long as high, stays a hundred times below.
inline constexpr double kAmplified = 1e5;

// Bound on the error of any force relative to the largest, and likewise for displacements. If
// arithmetic alone takes it above the first, a stiffness solution in doubles is repeated with twice
// the digits:
inline constexpr double kTrusted = 1e-9;
// above the second, fewer than three figures are left, and no forces are given.
inline constexpr double kUsable = 1e-3;

// On the same scale: below this, none of the twelve figures of a file depends on the bound, so a
// coarse one will do, for forces and displacements together and for loads at every joint.
inline constexpr double kWholeFile = 1e-12;

// Relative to the bound on the rounding error: a force below this is nothing but rounding.
inline constexpr double kSurelyRounding = 10;

// E·A of a member relative to the median of all: outside this ratio and its inverse the user is
// asked about it. Sections and materials within one truss differ by less than a thousand; a wrong
// unit of E (kPa for GPa, Pa for MPa) makes more. A factor of a thousand, MPa for GPa, can't be
// told from a deliberate choice.
inline constexpr double kStandsOut = 1e4;

// Pivot of a joint relative to the stiffness of its members: a smaller one has lost so many of a
// double's sixteen digits that neither the solution nor its error estimate is valid.
inline constexpr double kShakyPivot = 1e-10;
// The same for the thirty-two digits of a Wide.
inline constexpr double kShakyWidePivot = 1e-26;

// Relative to the largest load: the residual that an accepted solution may leave at a joint.
inline constexpr double kResidual = 1e-9;

// Relative to the extent of the truss: joints closer than this coincide, and a member shorter than
// this has no direction.
inline constexpr double kSameSpot = 1e-9;

// Sine of the angle between two directions that count as one line when members are found by
// inspection. Drawn coordinates carry about ten digits, hence no smaller.
inline constexpr double kParallel = 1e-9;

// Sine of the angle between slopes that share one letter: as much as drawn coordinates carry, and
// equal in every digit that is printed for a letter; the terms carry each member's own sine and
// cosine.
inline constexpr double kSameSlope = 1e-9;

// Relative to the largest pivot: below this, the equations of the working don't determine their
// unknowns.
inline constexpr double kSettled = 1e-10;

// For one unit in terms of another: a ratio this close to a whole number, or to 1, is taken as that
// number, so that decimals stay exact.
inline constexpr double kWholeRatio = 1e-12;

// For a number against what would be printed for it. The noise of 0.3 − 0.1 is not a digit that
// anyone typed:
inline constexpr double kSameNumber = 1e-11;
// a value that was rounded along the way is not the exact number:
inline constexpr double kSameExact = 1e-9;

// In tenths of a millimetre: coordinates within this of a whole number count as whole, in slope
// triangles.
inline constexpr double kWholeCoordinate = 1e-7;

// How much smaller a step, a direction or a share of room may be than another and still count as
// equal, in drawings: far above rounding, far below what can be seen.
inline constexpr double kHair = 1e-9;
// Relative to the extent of a truss: dimension lines closer than this print as one.
inline constexpr double kOneLine = 1e-6;
// For a slope against a small-integer one, in the hint for a member that is being drawn.
inline constexpr double kDrawnSlope = 1e-6;
// CSS pixels: a point this close to a line lies on it.
inline constexpr double kSamePixel = 1e-6;

// Drawings that become trusses. Ends of lines that are closer than the smaller of two shares make
// one joint: of the larger side of the drawing, 24 mm of a roof of 24 m, as much as lines miss each
// other that were drawn without snapping,
inline constexpr double kDrawnSpotOfSide = 1e-3;
// and of the length that half of the lines exceed, so that long trusses of short panels keep
// joints apart that stand close together.
inline constexpr double kDrawnSpotOfLine = 0.02;
// Times the tolerance: joints closer than this that are not joined may have been meant to meet.
inline constexpr double kDrawnGap = 5;
// For a member that ends in the air: the same as a share of its own length.
inline constexpr double kLooseGap = 0.1;
// Relative to the length that half of the members exceed: a shorter one may be a slip of the pen.
inline constexpr double kShortMember = 0.1;
// Two lines run side by side if the sine between them is below the first, their distance is below
// the second and they overlap by more than the third, both relative to the shorter: the edges of a
// member that was drawn with its width.
inline constexpr double kSideBySideTurn = 0.02;
inline constexpr double kSideBySideGap = 0.05;
inline constexpr double kSideBySideOverlap = 0.5;
// z relative to x and y: above this, something has left the plane of the drawing.
inline constexpr double kOutOfPlane = 1e-6;

} // namespace gusset
