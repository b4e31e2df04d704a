#pragma once
// The force polygon of a whole truss (J. C. Maxwell, On reciprocal figures and diagrams of forces,
// Phil. Mag. 27 (1864) 250–261), with its spaces named by Bow's notation (R. H. Bow, Economics of
// Construction in Relation to Framed Structures, 1873): every space of the truss is a point of the
// polygon, and every force is a line between the points of the two spaces that it separates. Joints
// are read clockwise.

#include "hand/paper/working.hpp"

#include <string>
#include <vector>

namespace gusset {

struct PolygonSpace {
    std::string name; // outside P, Q, R … clockwise from the left; inside 1, 2, 3 …
    bool outside = false;
    Vec2 point;                     // in the polygon, force units; the first space at the origin
    Vec2 seat;                      // position of its name on the board, length units
    std::vector<Vec2> otherSeats{}; // where that is taken: also in the space
};

// A line of the polygon from the point of one space to that of another: the force on the joint
// around which, clockwise, the first space comes before the force and the second after it.
struct PolygonLine {
    MemberId member{}; // a member's force
    JointId joint{};   // else a load or a reaction at this joint
    bool reaction = false;
    int from = 0; // index of a space
    int to = 0;
    double force = 0; // of a member: tension positive, force units; else the magnitude
};

// How lines come to be drawn, one after the other.
enum class PolygonMove {
    Outside,  // loads and reactions, which close by themselves
    Meets,    // a new point where the first two lines meet; the others are checks
    Measured, // a new point at the end of the first line, as long as its force; no two known points
              // determine one
    Joins,    // between two known points: a check
};
struct PolygonStep {
    PolygonMove move = PolygonMove::Outside;
    std::size_t first = 0; // of its lines
    std::size_t count = 0;
};

enum class PolygonRefusal {
    None,
    NoMember,        // there is nothing to draw
    NoWorking,       // equilibrium alone does not give the forces
    CrossingMembers, // members: these two cross without a joint
    NotConnected,    // joint: no member connects it to the rest
    ForceInside,     // joint: a load or reaction acts inside the truss
};

struct ForcePolygon {
    PolygonRefusal refusal = PolygonRefusal::None;
    std::vector<MemberId> members{}; // of a refusal
    JointId joint{};                 // of a refusal
    std::vector<PolygonSpace> spaces{};
    // In drawing order: loads and reactions one after the other, which form a closed polygon; then
    // members, with those first whose two points are already determined.
    std::vector<PolygonLine> lines{};
    std::vector<PolygonStep> steps{}; // all lines, in their order
    bool insideByNumber = true;       // the spaces between members; else they have letters
};

// Precondition: the solution is solve(truss, choice)'s. The forces come from the working.
[[nodiscard]] ForcePolygon forcePolygon(const Truss&, const LoadChoice&, const Solution&);
// The same from an existing working.
[[nodiscard]] ForcePolygon forcePolygon(const Truss&, const Working&);

} // namespace gusset
