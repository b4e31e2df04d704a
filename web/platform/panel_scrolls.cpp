#include "platform/panel_scrolls.hpp"

#include <imgui.h>
#include <imgui_internal.h>

namespace gusset {

namespace {

constexpr int kFramesToSettle = 4;

} // namespace

void PanelScrolls::keep() {
    kept_.clear();
    for (const ImGuiWindow* window : ImGui::GetCurrentContext()->Windows) {
        kept_.emplace_back(window->ID, window->Scroll.y);
    }
    frames_ = 0;
}

void PanelScrolls::bringBack() { frames_ = kFramesToSettle; }

bool PanelScrolls::beginFrame() {
    if (frames_ == 0) {
        return false;
    }
    for (const auto& [id, y] : kept_) {
        if (ImGuiWindow* window = ImGui::FindWindowByID(id)) {
            ImGui::SetScrollY(window, y);
        }
    }
    return --frames_ > 0;
}

} // namespace gusset
