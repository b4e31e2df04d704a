#pragma once
// Where Dear ImGui's items stood in the last frame and what they are called, for tests that press
// them with real pointer events. Off until watchItems; ImGui's own hooks for test tools fill it.

#include <imgui.h>

#include <string>
#include <vector>

namespace gusset {

struct LoggedItem {
    std::string label;  // as given to ImGui, with what follows ##
    std::string window; // its window's name
    ImVec2 low;         // the part that can be seen, device pixels
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

void watchItems(ItemLog&); // which must live as long as the ImGui context
// Of the item that keys go to; empty while none is shown to have the focus.
[[nodiscard]] std::string focusedLabel(const ItemLog&);

} // namespace gusset
