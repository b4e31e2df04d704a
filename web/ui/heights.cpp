#include "ui/heights.hpp"

#include <imgui_internal.h>

#include <cfloat>

namespace gusset {

void prepare(Heights& heights, const HeightsKey& key, std::size_t passages) {
    if (heights.key != key || heights.passages.size() != passages) {
        heights.key = key;
        heights.passages.assign(passages, {});
    }
}

bool isOutOfSight(float height) {
    const ImDrawList& list = *ImGui::GetWindowDrawList();
    const float top = ImGui::GetCursorScreenPos().y;
    return top + height < list.GetClipRectMin().y || top > list.GetClipRectMax().y;
}

void scrollOn(float by) {
    if (by != 0 && ImGui::GetCurrentWindow()->ScrollTarget.y == FLT_MAX) {
        ImGui::SetScrollY(ImGui::GetScrollY() + by);
    }
}

void leaveRoom(float height) { ImGui::Dummy({0, height - ImGui::GetStyle().ItemSpacing.y}); }

} // namespace gusset
