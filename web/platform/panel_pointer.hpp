#pragma once
// The pointer over the panels: from the page's events to Dear ImGui's. ImGui runs in device pixels.
// It knows no scrolling by a finger, so that is done here: a finger that moves over a list scrolls
// it, and the press reaches ImGui only when it turns out to be a tap or a drag that nothing can
// scroll.

#include "canvas/hands/tool.hpp"
#include "platform/platform.hpp"

namespace gusset {

class PanelPointer {
public:
    // Whether a panel lies there (or a menu is open, which any press closes). As of the last frame
    // drawn.
    [[nodiscard]] static bool covers(Vec2 pixel, double pixelRatio);

    void take(const PointerEvent&, double pixelRatio);
    static void scroll(const WheelEvent&, double pixelRatio);
    void leave();   // the pointer is over the board, or has gone
    void release(); // whatever is pressed is let go without effect

    // Before each frame. A finger that was lifted points at nothing, but ImGui must first have seen
    // the press end where it stood. True while that is still to come.
    bool beginFrame();

private:
    enum class Touch { None, Undecided, Scrolling, Pressing };

    void takeTouch(const PointerEvent&, double pixelRatio);
    void decide(const PointerEvent&, double pixelRatio);

    Touch touch_ = Touch::None;
    bool pressed_ = false; // the button is down in ImGui
    Vec2 start_;
    unsigned scrolled_ = 0; // ImGuiID of the window
    Vec2 scrollAtStart_;    // device pixels
    int framesToLeave_ = 0;
};

} // namespace gusset
