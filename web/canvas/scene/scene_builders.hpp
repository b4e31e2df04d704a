#pragma once
// The parts that make up a drawing; only scene.cpp and the files beside it include this.

#include "canvas/scene/labels.hpp"
#include "canvas/scene/movement.hpp"
#include "canvas/scene/scene.hpp"
#include "canvas/scene/symbols.hpp"
#include "canvas/scene/thinning.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct Drawing {
    const AppState& state;
    const Derived& derived;
    const MeasureText& measure;
    DrawnOn on = DrawnOn::Screen;
    Symbols symbols;
    std::vector<Vec2> at;             // CSS px, one per joint
    bool solved = false;              // the forces in `derived` belong to the truss on the board
    std::optional<Movement> movement; // drawn over the truss, which is dimmed
    const InfluenceShown* influence;  // likewise, and over the model's own loads; or null
    const ChecksShown* checks;        // while members are labelled by their use; else null
    double largestForce = 0;          // N, of all members
    Scene scene;
    Obstacles obstacles;
    std::vector<LabelWish> wishes;
    std::vector<double> framed; // px on either side of a member, taken by a frame around it
    double middle = 0; // px: x halfway between the outermost joints; labels are mirrored about it
    std::optional<std::size_t> noteCorner{}; // kept free for notes
    Vec2 low; // box around joints, symbols and arrows: dimensions go outside it
    Vec2 high;
};

// Px between the centre of a joint and the nearest edge of its letter, at most.
inline constexpr double kLetterReach = 28;

// Importance of labels: the least important are left out first when there is no room for all.
inline constexpr double kJointWeight = 5;
inline constexpr double kLoadWeight = 4;
inline constexpr double kReactionWeight = 3;
inline constexpr double kForceWeight = 1; // plus the member's share of the largest force

// The influence line whose page is open, if it is of the truss as it is now; else null.
[[nodiscard]] const InfluenceShown* influenceLit(const AppState&, const Derived&);

[[nodiscard]] Thinning thinning(const Drawing&, std::size_t marks); // for marks of one kind
void addLine(Drawing&, const LineMark&); // omitted or clipped outside the board
void addArrow(Drawing&, const Arrow&, Ink, float width);
void growBox(Drawing&, Vec2 point);
// A label's patch of paper would cut a gap into a frame around a member: labels avoid it.
void keepFrame(Drawing&, MemberId, double halfWidth);
void wish(Drawing&, LabelMark, std::vector<Vec2> places, double weight);
// A label for which no room is sought; counted if what it belongs to is on the board.
void leaveOut(Drawing&, LabelMark);
// Centres for a label beside an arrow: beyond its far end, and along its sides.
[[nodiscard]] std::vector<Vec2> placesBeside(const Arrow&, bool pushes, Vec2 labelSize);

void drawJoints(Drawing&); // with their letters
void drawSupports(Drawing&);
void drawLoads(Drawing&);
void drawReactions(Drawing&);
void drawMechanism(Drawing&); // with arrows, while it is not moving
void drawMovement(Drawing&);
void drawPath(Drawing&);      // beneath everything: the path of the unit load, and the effect
void drawInfluence(Drawing&); // the unit load, and the ordinate as a number
void drawDimensions(Drawing&);
void drawNews(Drawing&); // at the top, before the labels: why there are no forces
// If there will be notes: keeps their corner free, so that labels are to be placed again.
[[nodiscard]] bool reserveNotes(Drawing&, const PlacedLabels&);
void drawNotes(Drawing&); // last: the self-weight, and how many values had no room

// What a member is labelled by: its force, its stress, or its use.
[[nodiscard]] std::string memberFigure(const Drawing&, std::size_t member);
[[nodiscard]] bool failsCheck(const Drawing&, std::size_t member); // its label is a warning
void drawUseBands(Drawing&);     // beneath everything: the most used member, and those that fail
void drawCheckCaution(Drawing&); // in the corner of the board, while use is shown

void drawHalos(Drawing&);   // beneath everything: what is selected, hovered or in the working
void drawGesture(Drawing&); // what the pointer is about to do
void drawHint(Drawing&);    // and its values: length, inclination, position, size
void drawLesson(Drawing&);  // the ghost of the next of the first steps
void placeLoupe(Drawing&);  // before the hint, which avoids it
void hideUnderLoupe(const MeasureText&, Scene&); // at the end

} // namespace gusset
