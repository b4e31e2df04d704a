#include "platform/item_log.hpp"

#include <imgui_internal.h>

namespace gusset {

void watchItems(ItemLog& log) {
    ImGuiContext& context = *ImGui::GetCurrentContext();
    context.TestEngine = &log;
    context.TestEngineHookItems = true;
}

std::string focusedLabel(const ItemLog& log) {
    const ImGuiContext* context = ImGui::GetCurrentContext();
    if (context == nullptr || context->NavDisableHighlight) {
        return "";
    }
    for (const LoggedItem& item : log.items) {
        if (item.id == context->NavId) {
            return item.label;
        }
    }
    return "";
}

} // namespace gusset

namespace {

gusset::ItemLog& logOf(ImGuiContext* context) {
    auto& log = *static_cast<gusset::ItemLog*>(context->TestEngine);
    if (log.frame != context->FrameCount) {
        log.frame = context->FrameCount;
        log.items.clear();
    }
    return log;
}

} // namespace

// Declared by imgui_internal.h under IMGUI_ENABLE_TEST_ENGINE.
void ImGuiTestEngineHook_ItemAdd(ImGuiContext* context, ImGuiID id, const ImRect& box,
                                 const ImGuiLastItemData*) {
    gusset::ItemLog& log = logOf(context);
    ImRect seen = box;
    if (context->CurrentWindow != nullptr) {
        seen.ClipWith(context->CurrentWindow->ClipRect);
    }
    log.id = id;
    log.low = seen.Min;
    log.high = seen.Max;
}

void ImGuiTestEngineHook_ItemInfo(ImGuiContext* context, ImGuiID id, const char* label,
                                  ImGuiItemStatusFlags) {
    gusset::ItemLog& log = logOf(context);
    const bool seen = log.low.x < log.high.x && log.low.y < log.high.y;
    if (id == log.id && seen && context->CurrentWindow != nullptr) {
        log.items.push_back({label, context->CurrentWindow->Name, log.low, log.high, id});
    }
}

void ImGuiTestEngineHook_Log(ImGuiContext*, const char*, ...) {}

const char* ImGuiTestEngine_FindItemDebugLabel(ImGuiContext*, ImGuiID) { return nullptr; }
