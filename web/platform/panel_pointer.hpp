#pragma once
// The pointer over the panels: from the page's events to Dear ImGui's. ImGui runs in device pixels.
// It has no touch scrolling, so that is done here: a finger that moves over a list scrolls it, and
// the press reaches ImGui only when it turns out to be a tap, or a drag over something that doesn't
// scroll.

#include "canvas/hands/tool.hpp"
#include "platform/platform.hpp"

namespace gusset {

class PanelPointer {
public:
    // Whether a panel is there (or a menu is open, which any press closes), as of the last frame
    // drawn.
    [[nodiscard]] static bool covers(Vec2 pixel, double pixelRatio);

    void take(const PointerEvent&, double pixelRatio);
    static void scroll(const WheelEvent&, double pixelRatio);
    void leave();   // the pointer is over the board, or has left
    void release(); // releases whatever is pressed, without effect

    // Before each frame. After a finger is lifted the pointer is nowhere, but ImGui must first see
    // the release at the place of the press. True while that is still to come.
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
