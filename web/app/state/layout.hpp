#pragma once
// Where things are on the page, in CSS pixels: the board everywhere, the notebook as a column on
// the right or a sheet at the bottom, the tools in a strip within reach of the thumb at the bottom
// edge.

#include "app/state/state.hpp"
#include "core/vec2.hpp"

namespace gusset {

struct Rect {
    Vec2 at;
    Vec2 size;

    friend bool operator==(const Rect&, const Rect&) = default;
};

struct Viewport {
    Vec2 size{1366, 768};
    double pixelRatio = 1;
    double safeBottom = 0;
    bool dark = false;
    bool highContrast = false;
    bool reducedMotion = false;
    bool coarse = false; // fingers rather than a mouse (CSS `pointer: coarse`)
};

inline constexpr double kTouchTarget = 44;  // smallest side of anything to be touched
inline constexpr double kHintHeight = 28;   // the line above the tools that says what a tool does
inline constexpr double kNarrowBelow = 700; // page width below which the notebook is a sheet

// Not `Layout`, which is the layout of a model file (exchange/json/json_text).
struct PageLayout {
    bool narrow = false;
    // Reading mode, on a page too small for board and working: the working with its buttons below
    // it, and a small picture of the truss above or beside it. Nothing is edited.
    bool reading = false;
    Rect reader;   // its buttons; size 0 in any other mode
    Rect notebook; // size 0 when closed
    Rect tools;  // the strip at the bottom of the free board; width 0 if only the notebook is shown
    Rect header; // start page, title, undo, redo, share

    friend bool operator==(const PageLayout&, const PageLayout&) = default;
};

// A page that is both short and narrow, such as one zoomed to 400 %, shows either the board or the
// notebook, which then takes everything below the header.
[[nodiscard]] bool hasRoomForOneOnly(const Viewport&);
// Whether the working needs a page of this size to itself.
[[nodiscard]] bool readsApart(const Viewport&);
// CSS px between the notebook's edges and its contents, left and right.
[[nodiscard]] double notebookMargin(const PageLayout&);
// The width left between the margins for a drawing.
[[nodiscard]] double columnWidth(const PageLayout&);
[[nodiscard]] PageLayout layoutFor(const Viewport&, const NotebookState&);
// The camera with its covers set, so that "the free part of the board" is right.
[[nodiscard]] Camera withLayout(const Camera&, const Viewport&, const PageLayout&);

} // namespace gusset
