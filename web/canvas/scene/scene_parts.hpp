#pragma once
// The parts that a drawing is put together from; only scene.cpp and its neighbours include this.

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
    Symbols symbols;
    std::vector<Vec2> at;             // CSS px, a joint each
    bool solved = false;              // the forces in `derived` belong to the truss on the board
    std::optional<Movement> movement; // drawn over the truss, which steps back for it
    const InfluenceShown* influence;  // likewise, and the model's own loads; or none
    const ChecksShown* checks;        // where members are labelled by their use; else none
    double largestForce = 0;          // N, of a member
    Scene scene;
    Obstacles obstacles;
    std::vector<LabelWish> wishes;
    Vec2 low; // box around joints, symbols and arrows: dimensions go outside
    Vec2 high;
};

// Importance of labels: what is left out last when there is no room for all.
inline constexpr double kJointWeight = 5;
inline constexpr double kLoadWeight = 4;
inline constexpr double kReactionWeight = 3;
inline constexpr double kForceWeight = 1; // plus the member's share of the largest force

// The line that its page shows of the truss as it is now; none.
[[nodiscard]] const InfluenceShown* influenceLit(const AppState&, const Derived&);

[[nodiscard]] Thinning thinning(const Drawing&, std::size_t marks); // of so many of a kind
void addLine(Drawing&, const LineMark&); // left out or cut where it lies outside the board
void addArrow(Drawing&, const Arrow&, Ink, float width);
void growBox(Drawing&, Vec2 point);
void wish(Drawing&, LabelMark, std::vector<Vec2> places, double weight);
// Middles of a label beside an arrow: beyond its far end, and along its sides.
[[nodiscard]] std::vector<Vec2> placesBeside(const Arrow&, bool pushes, Vec2 labelSize);

void drawSupports(Drawing&);
void drawLoads(Drawing&);
void drawReactions(Drawing&);
void drawMechanism(Drawing&); // by arrows, while it rests
void drawMovement(Drawing&);
void drawPath(Drawing&);      // beneath everything: where the unit load travels, and its effect
void drawInfluence(Drawing&); // the unit load, and its effect in figures
void drawDimensions(Drawing&);

// What a member is labelled by: its force, its stress, or its use.
[[nodiscard]] std::string memberFigure(const Drawing&, std::size_t member);
[[nodiscard]] bool failsCheck(const Drawing&, std::size_t member); // its figure is a warning
void drawUseBands(Drawing&);     // beneath everything: the member used most, those that fail
void drawCheckCaution(Drawing&); // in the corner of the board, where use is shown

void drawHalos(Drawing&);   // beneath everything: what is selected, hovered, or spoken of
void drawGesture(Drawing&); // what the pointer is about to do
void drawHint(Drawing&);    // and its figures: length, inclination, place, size
void placeLoupe(Drawing&);  // before the hint, which makes room for it
void hideUnderLoupe(const MeasureText&, Scene&); // at the end

} // namespace gusset
