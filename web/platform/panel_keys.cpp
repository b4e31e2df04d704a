#include "platform/panel_keys.hpp"

#include <imgui.h>
#include <imgui_internal.h>

#include <array>

namespace gusset {
namespace {

// In the order in which F6 visits them; those not on the screen are skipped.
constexpr std::array kPanels{"header",  "beginning", "tools",  "picked",
                             "several", "notebook",  "reader", "message"};

void strike(ImGuiKey key, bool shift = false) {
    ImGuiIO& io = ImGui::GetIO();
    if (shift) {
        io.AddKeyEvent(ImGuiMod_Shift, true);
    }
    io.AddKeyEvent(key, true);
    io.AddKeyEvent(key, false);
    if (shift) {
        io.AddKeyEvent(ImGuiMod_Shift, false);
    }
}

ImGuiKey keyOf(PanelKey key) {
    switch (key) {
    case PanelKey::Left:
        return ImGuiKey_LeftArrow;
    case PanelKey::Right:
        return ImGuiKey_RightArrow;
    case PanelKey::Up:
        return ImGuiKey_UpArrow;
    case PanelKey::Down:
        return ImGuiKey_DownArrow;
    case PanelKey::Press:
        return ImGuiKey_Space;
    case PanelKey::PageUp:
        return ImGuiKey_PageUp;
    case PanelKey::PageDown:
        return ImGuiKey_PageDown;
    case PanelKey::First:
        return ImGuiKey_Home;
    case PanelKey::Last:
        return ImGuiKey_End;
    case PanelKey::Next:
    case PanelKey::Previous:
    case PanelKey::NextPanel:
    case PanelKey::Leave:
        break;
    }
    return ImGuiKey_Tab;
}

bool focusOn(const char* panel) {
    ImGuiWindow* window = ImGui::FindWindowByName(panel);
    if (window == nullptr || !window->WasActive) {
        return false;
    }
    ImGui::FocusWindow(window);
    ImGui::NavInitWindow(window, true);
    ImGui::GetCurrentContext()->NavDisableHighlight = false;
    return true;
}

} // namespace

void PanelKeys::toNextPanel() {
    for (std::size_t i = panel_ ? *panel_ + 1 : 0; i < kPanels.size(); ++i) {
        if (focusOn(kPanels[i])) {
            panel_ = i;
            return;
        }
    }
    leave();
}

void PanelKeys::beginFrame() {
    if (goesOn_) {
        toNextPanel();
    }
    goesOn_ = false;
}

void PanelKeys::leave() {
    panel_.reset();
    ImGui::FocusWindow(nullptr);
    ImGui::GetCurrentContext()->NavDisableHighlight = true;
}

bool PanelKeys::closeMenu() {
    const bool isOpen =
        ImGui::IsPopupOpen("", ImGuiPopupFlags_AnyPopupId | ImGuiPopupFlags_AnyPopupLevel);
    if (isOpen) {
        ImGui::ClosePopupToLevel(0, true);
    }
    return isOpen;
}

void PanelKeys::take(PanelKey key) {
    if (key == PanelKey::Leave) {
        if (!closeMenu()) {
            leave();
        }
    } else if (key == PanelKey::NextPanel) {
        goesOn_ = true;
    } else {
        strike(keyOf(key), key == PanelKey::Previous);
    }
}

} // namespace gusset
