#pragma once
// The photograph that lies under the board to be traced over. The page's scripts have it, keep it
// and draw it (site/ground.js); the program knows only that there is one (View::ground), where the
// board is, and how a length is typed.

#include "app/state/state.hpp"

#include <string>
#include <string_view>

namespace gusset {

// Where the photograph is drawn: the whole board, or the loupe over it. Device pixels.
struct GroundPane {
    Vec2 origin;       // of the board's axes, from the top left
    double metre = 1;  // length of one metre
    int height = 1;    // of the canvas
    Vec2 lens;         // centre of the disc that is drawn on, from the bottom left
    double radius = 0; // of the disc; 0: everywhere
    bool dark = false; // the paper
};
using DrawGround = void (*)(const GroundPane&);

// What the dialog needs, as JSON: the unit of the board; the length that was typed, in metres, or
// why it can't be read; the joint that is picked, in metres:
// {"unit":"m","metres":6,"joint":"B","x":1,"y":2} or {"unit":"m","fault":"…"}
[[nodiscard]] std::string groundPlace(const AppState&, std::string_view typed);

// Shows the photograph under that number (0: none), and the box around it if it has a size, metres.
void showGround(AppState&, int ground, Extent box);

} // namespace gusset
