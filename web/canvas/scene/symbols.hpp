#pragma once
// Where the symbols of supports, loads and reactions are drawn around their joints, in CSS px: one
// geometry for drawing and for picking. A symbol goes to the side of its joint that is free of
// members.

#include "app/state/camera.hpp"
#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

inline constexpr double kJointRadius = 5;   // px of a joint's ring
inline constexpr double kSupportDepth = 25; // from the joint to the far edge of the hatching
inline constexpr double kSupportHalf = 16;  // half the length of the ground line
inline constexpr double kArrowGap = 8;      // between a joint's centre and the arrow's near end

struct Arrow { // CSS px
    Vec2 tail;
    Vec2 head;
};

[[nodiscard]] inline Vec2 middleOf(const Arrow& arrow) { return 0.5 * (arrow.tail + arrow.head); }

struct SupportSymbol {
    SupportId support;
    Vec2 joint; // CSS px
    Vec2 down;  // unit vector, CSS px, from the joint to the ground
};

struct LoadSymbol {
    LoadId load;
    JointId at; // none for a load on a member between its joints
    Arrow arrow;
    bool pushes = true; // its head is at the joint; else its tail is
};

struct ChordSymbol { // a row of arrows along a chord, below a line
    LoadId load;
    std::vector<Arrow> arrows;
    std::vector<Arrow> edges; // the line, one segment per member of the chord
    Vec2 out;                 // unit vector, CSS px, from the chord to the line
};

struct Symbols {
    std::vector<SupportSymbol> supports;
    std::vector<LoadSymbol> loads;   // joint loads that are not zero
    std::vector<ChordSymbol> chords; // that are not zero
    std::vector<std::vector<Vec2>>
        taken; // one list per joint: unit vectors, CSS px, towards what is drawn around it
};

[[nodiscard]] Symbols layOutSymbols(const Truss&, const Camera&);

// Largest cosine between `way` and the taken directions: −1 is completely free, 1 is blocked.
[[nodiscard]] double blockage(const std::vector<Vec2>& taken, Vec2 way);
// From a force in the plane of the truss to its direction on the board; zero stays zero.
[[nodiscard]] Vec2 directionOnBoard(Vec2 force);
// An arrow along `way` at a joint: with its head at the joint if that side is at least as free,
// else with its tail there. `from` is the distance of its near end from the joint's centre.
struct PlacedArrow {
    Arrow arrow;
    bool pushes = true;
};
[[nodiscard]] PlacedArrow arrowAt(Vec2 joint, Vec2 way, double length,
                                  const std::vector<Vec2>& taken);
// The largest force of a load that is drawn as one arrow (arrowForce); 0 if there are none.
[[nodiscard]] double largestLoad(const Truss&);
// Px of the arrow of the largest load; shorter on a low board.
[[nodiscard]] double longestArrow(const Camera&);

} // namespace gusset
