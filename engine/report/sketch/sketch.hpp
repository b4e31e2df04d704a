#pragma once
// A small drawing that goes with the working or the results: a free body, an influence line, a
// force polygon. Plain data in reading pixels (CSS px at 100 %), x to the right and y DOWN; a page
// scales it as a whole. Inks are meanings, never colours, which each renderer chooses. Only lines,
// arrows, arcs, discs, convex areas and words, so that any canvas can draw it; areas are drawn
// first, words last.

#include "core/vec2.hpp"
#include "report/text/rich_text.hpp"

#include <array>
#include <cstdint>
#include <string>
#include <vector>

namespace gusset {

enum class SketchInk : std::uint8_t {
    Plain,
    Muted,
    Accent,
    Tension,
    Compression,
    Zero,
    Load,
    Reaction
};

// Where a drawing will be shown, which decides how much room it takes: on a sheet of paper, or in
// the narrow column beside the board.
enum class SketchPaper : std::uint8_t { Page, Column };

struct FigureSpace { // px, where a drawing is to go
    double wide = 0;
    double high = 0;
};

// What a mark belongs to, by a number of the drawing's own, for a page on which people point at it.
inline constexpr int kNoThing = -1;

struct SketchLine {
    Vec2 a;
    Vec2 b;
    SketchInk ink = SketchInk::Plain;
    double width = 1.5; // px
    bool dashed = false;
    int thing = kNoThing;
};
struct SketchArrow { // a shaft and a filled head that ends at the tip
    Vec2 tail;
    Vec2 tip;
    SketchInk ink = SketchInk::Plain;
    double width = 1.5; // px, of the shaft; the head follows
    int thing = kNoThing;
};
struct SketchArc { // a thin line round a centre
    Vec2 centre;
    double radius = 0; // px
    Vec2 from;         // unit vectors, y down; clockwise on the screen from this one to the other
    Vec2 to;
    SketchInk ink = SketchInk::Muted;
};
struct SketchDisc {
    Vec2 at;
    double radius = 3; // px
    SketchInk ink = SketchInk::Plain;
    bool filled = false; // otherwise a ring, blank inside
};
struct SketchArea {            // a wash of ink without an outline
    std::vector<Vec2> corners; // of a convex polygon, in either order
    SketchInk ink = SketchInk::Muted;
};
enum class SketchAnchor : std::uint8_t { Start, Middle, End };
struct SketchWords {
    RichLine words;
    Vec2 at{}; // at half the height of the line; horizontally as `anchor` says
    SketchAnchor anchor = SketchAnchor::Middle;
    SketchInk ink = SketchInk::Plain;
    double size = 14; // font size in px; subscripts are kSubscriptSize of it
    int thing = kNoThing;
    double length = 0; // px that they take exactly, where something follows them; 0: as it comes
};

struct Sketch {
    double width = 0; // px; everything lies between 0 and these limits
    double height = 0;
    std::string says; // one sentence for screen readers
    std::vector<SketchArea> areas;
    std::vector<SketchLine> lines;
    std::vector<SketchArrow> arrows;
    std::vector<SketchArc> arcs;
    std::vector<SketchDisc> discs;
    std::vector<SketchWords> words;
};

inline constexpr double kSketchWash = 0.25;    // opacity of an area
inline constexpr double kSubscriptSize = 0.72; // of the words' size
inline constexpr double kSubscriptDrop = 0.28; // of the words' size, below the line

struct SketchBox { // axis-parallel; `low` is the upper left corner, as y is down
    Vec2 low;
    Vec2 high;
};
[[nodiscard]] bool overlap(const SketchBox&, const SketchBox&); // touching does not count
[[nodiscard]] SketchBox boxAround(const SketchBox&, const SketchBox&);
[[nodiscard]] SketchBox grown(const SketchBox&, double by); // px on every side

// The width of words in any common sans-serif typeface: an upper bound, so that what is placed by
// it does not overlap in any of them.
[[nodiscard]] double widthOf(const RichLine&, double size);
// The width of words in the middle between the common typefaces, so that in none they have to be
// stretched or squeezed by much to take it.
[[nodiscard]] double usualWidthOf(const RichLine&, double size);
[[nodiscard]] SketchBox boxOf(const SketchWords&);
// Tip first. An arrow shorter than the usual head gets a smaller one.
[[nodiscard]] std::array<Vec2, 3> headOf(const SketchArrow&);
[[nodiscard]] Vec2 shaftEnd(const SketchArrow&); // where the head begins

// Moves everything so that it lies `margin` px inside the sketch, and sets the sketch's size to
// match. Returns the shift.
Vec2 fitSketch(Sketch&, double margin);
void moveSketch(Sketch&, Vec2 by);           // everything in it; not its limits
void addSketch(Sketch&, const Sketch& more); // where it is; the limits stay
// Room up to this point, though nothing is drawn there.
void holdRoom(Sketch&, Vec2 at);
// The second sketch to the right of the first, `gap` px apart.
[[nodiscard]] Sketch sideBySide(Sketch, const Sketch&, double gap);

} // namespace gusset
