// The passive parts of ui/widgets.hpp: sheets, rules, paragraphs, scrolling.
#include "ui/rich_layout.hpp"
#include "ui/widgets.hpp"

#include <imgui_internal.h>

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kBarRoom = 8;                       // CSS px, of the scroll bar
constexpr double kScrollSlack = 8;                   // CSS px a finger may move and still press
constexpr double kLeaf = 48;                         // CSS px that make a swipe
constexpr const char* kFingerReads = "finger reads"; // in a window's storage

// The drawing that a finger was last put on to read it: dragging there does not scroll.
ImGuiID fingerReads() {
    return static_cast<ImGuiID>(ImGui::GetStateStorage()->GetInt(ImHashStr(kFingerReads)));
}

// Dear ImGui scrolls only by wheel and by bar. A finger that moves up or down scrolls the paper,
// and releases what it had begun to press.
void scrollByFinger(const Ui& ui) {
    const ImGuiIO& io = ImGui::GetIO();
    const ImGuiWindow& window = *ImGui::GetCurrentWindow();
    if (io.MouseSource != ImGuiMouseSource_TouchScreen || !ImGui::IsMouseDown(0) ||
        !window.InnerRect.Contains(io.MouseClickedPos[0])) {
        return;
    }
    if (ImGui::GetActiveID() != 0 && ImGui::GetActiveID() == fingerReads()) {
        return;
    }
    const float moved = std::sqrt(io.MouseDragMaxDistanceSqr[0]);
    if (moved > ui.px(kScrollSlack)) {
        ImGui::ClearActiveID();
        ImGui::SetScrollY(ImGui::GetScrollY() - io.MouseDelta.y);
    }
}

void text(const Ui& ui, const ImFont& face, std::string_view words, Colour ink) {
    drawRich(ui, {{std::string(words), RunStyle::Plain}}, {.ink = ink, .face = &face});
}

} // namespace

void rule(const Ui& ui) {
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    const float y = std::round(at.y);
    ImGui::GetWindowDrawList()->AddRectFilled(
        {at.x, y}, {at.x + width, y + std::max(1.0f, ui.px(1))}, packed(ui.palette->rule));
    ImGui::Dummy({width, ui.px(1)});
}

void gap(const Ui& ui, double css) { ImGui::Dummy({0, ui.px(css)}); }

void sectionHeading(const Ui& ui, std::string_view words) {
    gap(ui, 8);
    text(ui, *ui.fonts.strong, words, ui.palette->ink);
}

void paragraph(const Ui& ui, std::string_view words, Ink ink) {
    text(ui, *ui.fonts.body, words, textColour(*ui.palette, ink));
}

void besideButtons(const Ui& ui, std::string_view words) {
    const ImFont& font = *ui.fonts.small;
    const ImVec2 size = textSize(font, words);
    const ImVec2 at = ImGui::GetCursorScreenPos();
    const float height = targetHeight(ui);
    putText(*ImGui::GetWindowDrawList(), font, {at.x, std::round(at.y + (height - size.y) / 2)},
            packed(ui.palette->muted), words);
    ImGui::Dummy({size.x, height});
}

void smallPrint(const Ui& ui, std::string_view words) {
    text(ui, *ui.fonts.small, words, ui.palette->muted);
}

void progressLine(const Ui& ui, std::string_view says, double share) {
    const float height = ui.px(8);
    gap(ui, 4);
    paragraph(ui, says);
    gap(ui, 4);
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = std::min(ImGui::GetContentRegionAvail().x, ui.px(320));
    const ImVec2 high{low.x + width, low.y + height};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.AddRectFilled(low, high, packed(ui.palette->accentWash), ui.px(2));
    list.AddRectFilled(low, {low.x + static_cast<float>(share) * width, high.y},
                       packed(ui.palette->accent), ui.px(2));
    list.AddRect(low, high, packed(ui.palette->accent), ui.px(2), 0, ui.px(1));
    ImGui::Dummy({width, height});
    gap(ui, 8);
}

void beginSheet(const Ui& ui, const char* id, const Rect& place, const SheetLook& look) {
    ImGui::SetNextWindowPos({ui.px(place.at.x), ui.px(place.at.y)});
    ImGui::SetNextWindowSize({ui.px(place.size.x), ui.px(place.size.y)});
    ImGui::SetNextWindowScroll({0, 0}); // what has the focus scrolls within the sheet, not with it
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding,
                        {ui.px(look.padding.x), ui.px(look.padding.y)});
    ImGuiWindowFlags flags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                             ImGuiWindowFlags_NoSavedSettings |
                             ImGuiWindowFlags_NoBringToFrontOnFocus |
                             ImGuiWindowFlags_NoFocusOnAppearing; // the keyboard stays where it is
    if (!look.filled) {
        flags |= ImGuiWindowFlags_NoBackground;
    }
    ImGui::Begin(id, nullptr, flags);
    ImGui::PopStyleVar();
    ImGui::PushClipRect(ImGui::GetWindowPos(),
                        {ImGui::GetWindowPos().x + ImGui::GetWindowSize().x,
                         ImGui::GetWindowPos().y + ImGui::GetWindowSize().y},
                        false); // rules and frames extend to the edge of the paper
}

void endSheet() {
    ImGui::PopClipRect();
    ImGui::End();
}

void beginScroll(const Ui& ui, const char* id) {
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    // The bar is in the margin, so that what scrolls is as wide as what doesn't; it is always
    // there, for the sake of the width, and visible if there is something to scroll.
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID(id);
    const bool shown = memory.GetBool(slot);
    const ImU32 grab = ImGui::GetColorU32(shown ? ImGuiCol_ScrollbarGrab : ImGuiCol_ScrollbarBg);
    ImGui::PushStyleColor(ImGuiCol_ScrollbarGrab, grab);
    ImGui::BeginChild(id, {ImGui::GetContentRegionAvail().x + ui.px(kBarRoom), 0},
                      ImGuiChildFlags_None,
                      ImGuiWindowFlags_AlwaysVerticalScrollbar |
                          ImGuiWindowFlags_NavFlattened); // Tab goes through it too
    ImGui::PopStyleColor();
    ImGui::PopStyleVar();
    memory.SetBool(slot, ImGui::GetScrollMaxY() > 0);
    scrollByFinger(ui);
}

void endScroll() { ImGui::EndChild(); }

int leafedByFinger(const Ui& ui) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.MouseSource != ImGuiMouseSource_TouchScreen || !ImGui::IsMouseReleased(0) ||
        !ImGui::GetCurrentWindow()->InnerRect.Contains(io.MouseClickedPos[0])) {
        return 0;
    }
    const ImVec2 from = io.MouseClickedPos[0];
    const ImVec2 way{io.MousePos.x - from.x, io.MousePos.y - from.y};
    const bool across = std::fabs(way.x) > ui.px(kLeaf) && std::fabs(way.x) > 2 * std::fabs(way.y);
    return !across ? 0 : way.x < 0 ? 1 : -1;
}

void keepFinger() {
    ImGui::GetStateStorage()->SetInt(ImHashStr(kFingerReads), static_cast<int>(ImGui::GetItemID()));
}

} // namespace gusset
