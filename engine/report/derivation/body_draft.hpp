#pragma once
// A free body while it is being drawn: what is drawn already, and the words that wait until all
// lines are there. Private to report/.

#include "report/derivation/angle_marks.hpp"
#include "report/derivation/body_forces.hpp"
#include "report/derivation/dimension_marks.hpp"
#include "report/sketch/sketch.hpp"
#include "report/sketch/sketch_room.hpp"

#include <optional>
#include <vector>

namespace gusset {

inline constexpr double kMemberArm = 92; // px from a lone joint to the far end of a member's arrow
inline constexpr double kPartArm = 60;   // the same for a part of the truss
inline constexpr double kLabelSize = 14; // px, font size
struct PartRoom {                        // px
    double wide; // width of the drawing of a part, if its members come out long enough
    double high;
    double widest;        // upper limit of the width
    double shortest = 62; // of a part's shortest member, if that fits
};
[[nodiscard]] PartRoom roomIn(SketchPaper);
[[nodiscard]] Vec2 onPaper(Vec2 inTruss); // y down

// Anything drawn outwards from a joint.
struct Ray {
    Vec2 way; // unit vector, y down
    double reach = 0;
};

struct Waiting { // words to be placed once everything is drawn
    SketchWords words;
    Vec2 towards;
    double gap = 4;
    std::vector<Vec2> places{}; // exactly there, if one of them is free
};

struct Draft {
    const Notation& notation;
    const FreeBody& body;
    double arm = kMemberArm; // px from a joint to the far end of an inclined arrow
    PartRoom room = roomIn(SketchPaper::Page);
    std::vector<Vec2> besides{}; // points off the body that the drawing holds too, length units
    std::optional<Vec2> axis{};  // n, along which a sum of its forces is taken
    Sketch sketch{};
    std::vector<Vec2> places{};           // px, of each joint of the body
    std::vector<std::vector<Ray>> rays{}; // from each joint of the body
    std::vector<Waiting> waiting{};
    std::vector<AngleMark> angles{};
    std::vector<MeasuredPoint> measured{}; // what dimensions are drawn between, if any
    Vec2 moved{}; // by completed(): from where it was drawn to where it is in the sketch
};

[[nodiscard]] std::size_t indexOf(const FreeBody&, JointId);
// Between joints of the body.
[[nodiscard]] std::vector<MemberId> insideMembers(const Notation&, const FreeBody&);
// Places the joints of a part and draws the members between them, to scale. Returns the scale, px
// per length unit.
double drawMembers(Draft&);
void drawForces(Draft&); // once the joints have their places
void drawAxis(Draft&);   // the direction n, if there is one
// The angle of an inclined force of the body, where the working has measured it.
void markAngles(Draft&, double radius);
void measureForces(Draft&); // the dimensions between the lines of action: lever arms
void nameJoints(Draft&);
// A small space gets a small letter rather than one outside. Whether there was room.
[[nodiscard]] bool place(Draft&, SketchRoom&, Waiting&);
// All that wait. Whether there was room for all.
[[nodiscard]] bool placeWords(Draft&);
// The whole truss as in body_sketch.hpp, in a room; with supports in place of its reactions, if the
// working does not find them.
struct MemberWords;
[[nodiscard]] Sketch trussSketch(const Notation&, const std::vector<MemberWords>&, const PartRoom&);
// Called when all words are placed.
[[nodiscard]] Sketch completed(Draft&);

} // namespace gusset
