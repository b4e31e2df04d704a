#pragma once
// Where Dear ImGui's items were in the last frame and what they are called, for tests that press
// them with real pointer events. Off until watchItems is called; filled by ImGui's own hooks for
// test tools.

#include <imgui.h>

#include <string>
#include <vector>

namespace gusset {

struct LoggedItem {
    std::string label;  // as given to ImGui, including ## and what follows it
    std::string window; // its window's name
    ImVec2 low;         // the visible part, device pixels
    ImVec2 high;
    ImGuiID id = 0;
};

struct ItemLog {
    int frame = 0;
    std::vector<LoggedItem> items;
    ImGuiID id = 0; // of the item being added
    ImVec2 low;
    ImVec2 high;
};

void watchItems(ItemLog&); // the log must outlive the ImGui context
// Of the item with the keyboard focus; empty while no focus is shown.
[[nodiscard]] std::string focusedLabel(const ItemLog&);

} // namespace gusset
