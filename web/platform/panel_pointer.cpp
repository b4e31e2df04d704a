#include "platform/panel_pointer.hpp"

#include <imgui.h>
#include <imgui_internal.h>

#include <cfloat>
#include <cmath>

namespace gusset {

namespace {

constexpr double kTapSlack = 8; // CSS px that a resting finger may move

ImVec2 toImGui(Vec2 pixel, double pixelRatio) {
    return {static_cast<float>(pixel.x * pixelRatio), static_cast<float>(pixel.y * pixelRatio)};
}

// ImGui's own search for the hovered window, at any point and between frames.
ImGuiWindow* windowAt(ImVec2 at) {
    const ImGuiContext& context = *ImGui::GetCurrentContext();
    for (int i = context.Windows.Size - 1; i >= 0; --i) {
        ImGuiWindow* window = context.Windows[i];
        if (window->Active && !window->Hidden &&
            (window->Flags & ImGuiWindowFlags_NoMouseInputs) == 0 &&
            window->OuterRectClipped.Contains(at)) {
            return window;
        }
    }
    return nullptr;
}

// The innermost window there that can scroll in the direction of the movement.
ImGuiWindow* scrollableAt(ImVec2 at, Vec2 moved) {
    const bool across = std::abs(moved.x) > std::abs(moved.y);
    for (ImGuiWindow* window = windowAt(at); window != nullptr; window = window->ParentWindow) {
        const bool still = (window->Flags & ImGuiWindowFlags_NoScrollbar) != 0; // a sheet itself
        if (!still && (across ? window->ScrollMax.x : window->ScrollMax.y) > 0) {
            return window;
        }
        if ((window->Flags & ImGuiWindowFlags_ChildWindow) == 0) {
            break;
        }
    }
    return nullptr;
}

ImGuiMouseSource sourceOf(PointerKind kind) {
    switch (kind) {
    case PointerKind::Touch:
        return ImGuiMouseSource_TouchScreen;
    case PointerKind::Pen:
        return ImGuiMouseSource_Pen;
    case PointerKind::Mouse:
        break;
    }
    return ImGuiMouseSource_Mouse;
}

void moveTo(ImVec2 at) { ImGui::GetIO().AddMousePosEvent(at.x, at.y); }
void press(bool down) { ImGui::GetIO().AddMouseButtonEvent(ImGuiMouseButton_Left, down); }

} // namespace

bool PanelPointer::covers(Vec2 pixel, double pixelRatio) {
    return ImGui::GetCurrentContext()->OpenPopupStack.Size > 0 ||
           windowAt(toImGui(pixel, pixelRatio)) != nullptr;
}

void PanelPointer::take(const PointerEvent& event, double pixelRatio) {
    ImGui::GetIO().AddMouseSourceEvent(sourceOf(event.kind));
    framesToLeave_ = 0;
    if (event.phase == PointerPhase::Cancel) {
        release();
    } else if (event.kind == PointerKind::Touch) {
        takeTouch(event, pixelRatio);
    } else {
        moveTo(toImGui(event.pixel, pixelRatio));
        if (event.phase != PointerPhase::Move) {
            pressed_ = event.phase == PointerPhase::Down;
            press(pressed_);
        }
    }
}

void PanelPointer::takeTouch(const PointerEvent& event, double pixelRatio) {
    switch (event.phase) {
    case PointerPhase::Down:
        touch_ = Touch::Undecided;
        start_ = event.pixel;
        moveTo(toImGui(event.pixel, pixelRatio));
        return;
    case PointerPhase::Move:
        decide(event, pixelRatio);
        return;
    case PointerPhase::Up:
        if (touch_ == Touch::Undecided) {
            moveTo(toImGui(start_, pixelRatio));
            press(true);
            press(false);
        } else if (touch_ == Touch::Pressing) {
            press(false);
        }
        pressed_ = false;
        touch_ = Touch::None;
        framesToLeave_ = 3; // frames for the press, the release and the hover
        return;
    case PointerPhase::Cancel:
    case PointerPhase::LongPress: // only for the board
        return;
    }
}

void PanelPointer::decide(const PointerEvent& event, double pixelRatio) {
    const Vec2 moved = event.pixel - start_;
    if (touch_ == Touch::Undecided && length(moved) > kTapSlack) {
        ImGuiWindow* window = scrollableAt(toImGui(start_, pixelRatio), moved);
        touch_ = window != nullptr ? Touch::Scrolling : Touch::Pressing;
        if (window != nullptr) {
            scrolled_ = window->ID;
            scrollAtStart_ = {window->Scroll.x, window->Scroll.y};
            moveTo({-FLT_MAX, -FLT_MAX});
        } else {
            pressed_ = true;
            moveTo(toImGui(start_, pixelRatio));
            press(true);
        }
    }
    if (touch_ == Touch::Pressing) {
        moveTo(toImGui(event.pixel, pixelRatio));
    } else if (touch_ == Touch::Scrolling) {
        if (ImGuiWindow* window = ImGui::FindWindowByID(scrolled_)) {
            const Vec2 to = scrollAtStart_ - pixelRatio * (event.pixel - start_);
            ImGui::SetScrollX(window, static_cast<float>(to.x));
            ImGui::SetScrollY(window, static_cast<float>(to.y));
        }
    }
}

void PanelPointer::scroll(const WheelEvent& event, double pixelRatio) {
    // ImGui scrolls five lines per unit.
    const double unit = 5 * ImGui::GetFontSize() / pixelRatio;
    moveTo(toImGui(event.pixel, pixelRatio));
    ImGui::GetIO().AddMouseWheelEvent(static_cast<float>(-event.dx / unit),
                                      static_cast<float>(-event.dy / unit));
}

void PanelPointer::leave() { moveTo({-FLT_MAX, -FLT_MAX}); }

void PanelPointer::release() {
    leave(); // first, so that nothing is under the pointer when the button is released
    if (pressed_) {
        press(false);
    }
    pressed_ = false;
    touch_ = Touch::None;
}

bool PanelPointer::beginFrame() {
    if (framesToLeave_ > 0 && --framesToLeave_ == 0) {
        leave();
    }
    return framesToLeave_ > 0;
}

} // namespace gusset
