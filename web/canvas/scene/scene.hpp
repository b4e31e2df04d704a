#pragma once
// The drawing as records, in CSS pixels of the board, so that widths and symbols keep their size at
// every zoom. `buildScene` is pure; the renderer draws only these records, and picking does not use
// them.

#include "app/derived/derived.hpp"
#include "app/state/state.hpp"
#include "core/vec2.hpp"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// Roles of ink; the theme gives each its colour (web/ui/theme).
enum class Ink : std::uint8_t {
    Tension,
    Compression,
    Zero,
    Plain,
    Muted,
    Accent,
    Load,
    Reaction,
    Dimension,
    Warning,
    Paper,
    Halo
};

struct LineMark { // antialiased, round ends
    Vec2 a;
    Vec2 b;
    float width = 2;
    Ink ink = Ink::Plain;
    float dash = 0; // px on and off; 0: solid
};
struct DiscMark { // joints and halos: filled with `fill`, ringed with `ink`
    Vec2 at;
    float radius = 5;
    float ring = 2;
    Ink ink = Ink::Plain;
    Ink fill = Ink::Paper;
};
struct TriangleMark { // arrow heads, supports
    Vec2 a;
    Vec2 b;
    Vec2 c;
    Ink ink = Ink::Plain;
    bool filled = true;
};
// Note: what a reader must know about the drawing itself, in a corner.
enum class LabelKind { Joint, Force, Load, Reaction, Dimension, Hint, Note };
struct LabelMark {
    std::string text; // UTF-8
    Vec2 at;          // its centre
    Ink ink = Ink::Plain;
    LabelKind kind = LabelKind::Joint;
    bool backed = true; // on a patch of paper, to be legible over lines
    Hit of{};           // what it belongs to; none for dimensions and hints
};

// What a finger covers, shown magnified above it.
struct Loupe {
    bool shown = false;
    Vec2 of; // CSS px: the place shown at its centre
    Vec2 at; // its own centre
};
inline constexpr double kLoupeRadius = 52; // px
inline constexpr double kLoupeNearer = 2;  // magnification

struct Scene {
    std::vector<LineMark> lines;         // drawn in order
    std::vector<TriangleMark> triangles; // over the lines
    std::vector<DiscMark> discs;         // over the triangles
    std::vector<LabelMark> labels;       // on top
    std::vector<LabelMark> unplaced;     // of things on the board, for which there was no room
    std::vector<Figure> figures;         // labels that open a field when tapped
    Loupe loupe;
    Camera camera; // for the grid
    double gridStep = 1;
    int ground = 0;   // View::ground
    double metre = 1; // length units
};

// CSS px on either side of a joint's letter to the edges of its tag.
inline constexpr double kTagPad = 4;

// The size of text in CSS px, as the drawing's labels are set; measured with the caller's font.
using MeasureText = std::function<Vec2(const std::string& text, LabelKind kind)>;

// A text broken between words into lines of hint type, none wider than the width unless a single
// word is.
[[nodiscard]] std::vector<std::string> linesWithin(std::string_view text, double width,
                                                   const MeasureText&);

// If the notebook shows a step of the working, its joint and members are highlighted. In a picture,
// which can't be zoomed, nothing says how many values have no room: who makes it lists them.
enum class DrawnOn { Screen, Picture };
[[nodiscard]] Scene buildScene(const AppState&, const Derived&, const MeasureText&,
                               DrawnOn = DrawnOn::Screen);

} // namespace gusset
