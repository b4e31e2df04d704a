#include "ui/widgets.hpp"

#include <imgui_internal.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace gusset {
namespace {

void put(const ImFont& font, ImVec2 at, ImU32 ink, std::string_view text) {
    putText(*ImGui::GetWindowDrawList(), font, {std::round(at.x), std::round(at.y)}, ink, text);
}

void putCentred(const ImFont& font, ImVec2 centre, ImU32 ink, std::string_view text) {
    const ImVec2 size = textSize(font, text);
    put(font, {centre.x - size.x / 2, centre.y - size.y / 2}, ink, text);
}

void tip(const Ui& ui, std::string_view text) {
    if (ui.coarse || !ImGui::IsItemHovered(ImGuiHoveredFlags_DelayNormal)) {
        return;
    }
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(8), ui.px(5)});
    if (ImGui::BeginTooltip()) {
        ImGui::PushFont(ui.fonts.small);
        ImGui::TextUnformatted(text.data(), text.data() + text.size());
        ImGui::PopFont();
        ImGui::EndTooltip();
    }
    ImGui::PopStyleVar();
}

struct Corners {
    ImVec2 low;
    ImVec2 high;
    [[nodiscard]] ImVec2 centre() const { return {(low.x + high.x) / 2, (low.y + high.y) / 2}; }
};

Corners lastItem() { return {ImGui::GetItemRectMin(), ImGui::GetItemRectMax()}; }

// The background of something that can be pressed, by its state.
void drawGround(const Ui& ui, const Corners& box, const ButtonLook& look) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const float round = ui.px(3);
    if (look.primary && look.enabled) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->accent), round);
        return;
    }
    if (look.selected) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->accentWash), round);
        list.AddRect(box.low, box.high, packed(ui.palette->accent), round, 0, ui.px(1.5));
    } else if (look.enabled && ImGui::IsItemHovered()) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash), round);
    }
}

ImU32 inkOf(const Ui& ui, const ButtonLook& look) {
    const Palette& palette = *ui.palette;
    if (!look.enabled) {
        return packed(palette.rule);
    }
    if (look.primary) {
        return packed(palette.onAccent);
    }
    return packed(look.selected ? palette.accent : palette.ink);
}

constexpr double kIconSide = 22;

bool pressable(const char* label, ImVec2 size, bool enabled) {
    ImGui::BeginDisabled(!enabled);
    const bool pressed = ImGui::InvisibleButton(label, size);
    ImGui::EndDisabled();
    return pressed;
}

} // namespace

std::string_view visiblePart(const char* label) {
    const std::string_view whole(label);
    return whole.substr(0, whole.find("##"));
}

float targetHeight(const Ui& ui) {
    return std::max(ui.px(ui.coarse ? kTouchTarget : 36), ui.fonts.body->FontSize * 1.7f);
}

bool showsFocus() {
    return !ImGui::GetCurrentContext()->NavDisableHighlight && ImGui::IsItemFocused();
}

void drawFocus(const Ui& ui, std::string_view name, ItemState state) {
    if (!showsFocus()) {
        return;
    }
    const Corners box = lastItem();
    const float out = ui.px(1);
    ImGui::GetWindowDrawList()->AddRect({box.low.x - out, box.low.y - out},
                                        {box.high.x + out, box.high.y + out},
                                        packed(ui.palette->accent), ui.px(3), 0, ui.px(2.5));
    if (ui.focused != nullptr) {
        *ui.focused = {ImGui::GetCurrentWindow()->RootWindow->Name, std::string(name), state, {}};
    }
}

float buttonWidth(const Ui& ui, const char* label, const ButtonLook& look) {
    float width = look.showText ? textSize(*ui.fonts.body, visiblePart(label)).x + ui.px(24) : 0;
    if (look.icon != Icon::None) {
        width += look.showText ? ui.px(kIconSide + 4) : targetHeight(ui);
    }
    return std::max(width, targetHeight(ui));
}

bool button(const Ui& ui, const char* label, const ButtonLook& look) {
    const float width = look.full ? ImGui::GetContentRegionAvail().x : buttonWidth(ui, label, look);
    const ImVec2 size =
        look.side > 0 ? ImVec2{look.side, look.side} : ImVec2{width, targetHeight(ui)};
    const bool pressed = pressable(label, size, look.enabled);
    const Corners box = lastItem();
    drawGround(ui, box, look);
    if (look.showText && !look.primary && !look.selected) {
        ImGui::GetWindowDrawList()->AddRect(
            box.low, box.high, packed(look.enabled ? ui.palette->edge : ui.palette->rule), ui.px(3),
            0, ui.px(1));
    }
    const ImU32 ink = inkOf(ui, look);
    const std::string_view text = look.showText ? visiblePart(label) : std::string_view();
    const float textWidth = textSize(*ui.fonts.body, text).x;
    const float iconWidth = look.icon == Icon::None ? 0 : ui.px(kIconSide);
    const float between = textWidth > 0 && iconWidth > 0 ? ui.px(6) : 0;
    const ImVec2 centre = box.centre();
    const float left = centre.x - (textWidth + iconWidth + between) / 2;
    drawIcon(*ImGui::GetWindowDrawList(), look.icon, {left + iconWidth / 2, centre.y},
             ui.px(kIconSide), ink);
    put(*ui.fonts.body, {left + iconWidth + between, centre.y - ui.fonts.body->FontSize / 2}, ink,
        text);
    drawFocus(ui, visiblePart(label), look.selected ? ItemState::Chosen : ItemState::Plain);
    if (!look.showText) {
        tip(ui, visiblePart(label));
    }
    return pressed;
}

bool toolButton(const Ui& ui, const char* label, Icon icon, bool selected, ImVec2 size) {
    const ButtonLook look{.selected = selected};
    const bool pressed = pressable(label, size, true);
    const Corners box = lastItem();
    drawGround(ui, box, look);
    const ImU32 ink = inkOf(ui, look);
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const float x = box.centre().x;
    drawIcon(list, icon, {x, box.low.y + ui.px(19)}, ui.px(26), ink);
    const ImFont& font = *ui.fonts.small;
    putCentred(font, {x, box.high.y - ui.px(7) - font.FontSize / 2}, ink, visiblePart(label));
    if (selected) {
        const float half = textSize(font, visiblePart(label)).x / 2;
        const float y = box.high.y - ui.px(5);
        list.AddLine({x - half, y}, {x + half, y}, ink, ui.px(2));
    }
    drawFocus(ui, visiblePart(label), selected ? ItemState::Chosen : ItemState::Plain);
    return pressed;
}

bool cellButton(const Ui& ui, const char* label, ImVec2 size) {
    const bool pressed = pressable(label, size, true);
    const Corners box = lastItem();
    drawGround(ui, box, {});
    ImGui::GetWindowDrawList()->AddRect(box.low, box.high, packed(ui.palette->edge), ui.px(3), 0,
                                        ui.px(1));
    putCentred(*ui.fonts.small, box.centre(), packed(ui.palette->ink), visiblePart(label));
    drawFocus(ui, visiblePart(label));
    return pressed;
}

bool menuRow(const Ui& ui, const char* label, ImVec2 size, bool lit) {
    const bool pressed = pressable(label, size, true);
    const Corners box = lastItem();
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (lit || ImGui::IsItemHovered()) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash));
    }
    if (lit) {
        list.AddRect(box.low, box.high, packed(ui.palette->accent), ui.px(3), 0, ui.px(2));
    }
    list.AddLine(box.low, {box.high.x, box.low.y}, packed(ui.palette->rule), ui.px(1));
    put(*ui.fonts.body, {box.low.x + ui.px(8), box.centre().y - ui.fonts.body->FontSize / 2},
        packed(ui.palette->ink), visiblePart(label));
    drawFocus(ui, visiblePart(label));
    return pressed;
}

bool toggle(const Ui& ui, const char* label, bool on) {
    const float height = targetHeight(ui);
    const float width = textSize(*ui.fonts.body, visiblePart(label)).x + ui.px(32);
    const bool pressed = pressable(label, {width, height}, true);
    const Corners box = lastItem();
    if (ImGui::IsItemHovered()) {
        ImGui::GetWindowDrawList()->AddRectFilled(box.low, box.high, packed(ui.palette->wash),
                                                  ui.px(3));
    }
    const float y = box.centre().y;
    const float side = ui.px(18);
    const ImVec2 low{box.low.x + ui.px(2), y - side / 2};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImU32 ink = packed(on ? ui.palette->accent : ui.palette->edge);
    list.AddRect(low, {low.x + side, low.y + side}, ink, ui.px(2), 0, ui.px(1.5));
    if (on) {
        drawIcon(list, Icon::Check, {low.x + side / 2, y}, ui.px(18), ink);
    }
    put(*ui.fonts.body, {low.x + side + ui.px(8), y - ui.fonts.body->FontSize / 2},
        packed(ui.palette->ink), visiblePart(label));
    drawFocus(ui, visiblePart(label), on ? ItemState::On : ItemState::Off);
    return pressed;
}

namespace {

struct WordLook {
    const ImFont& face;
    const ImFont& chosen;
    float within = 0; // device px of air
    float between = 0;
};

bool choiceWord(const Ui& ui, const char* word, bool chosen, const WordLook& look, float width) {
    const bool pressed = pressable(word, {width, targetHeight(ui)}, true);
    const ImVec2 centre = lastItem().centre();
    const bool lit = chosen || ImGui::IsItemHovered();
    putCentred(chosen ? look.chosen : look.face, centre,
               packed(lit ? ui.palette->ink : ui.palette->muted), word);
    if (chosen) {
        const float half = textSize(look.chosen, word).x / 2;
        const float y = std::round(centre.y + ui.fonts.body->FontSize * 0.75f);
        ImGui::GetWindowDrawList()->AddRectFilled(
            {centre.x - half, y}, {centre.x + half, y + ui.px(2.5)}, packed(ui.palette->accent));
    }
    drawFocus(ui, word, chosen ? ItemState::Chosen : ItemState::Plain);
    return pressed;
}

float widthOf(const Ui& ui, const char* word, const WordLook& look) {
    return std::max(textSize(look.chosen, word).x + look.within, ui.px(kTouchTarget));
}

// A row that would break for want of a little room is set closer, then smaller.
WordLook lookOf(const Ui& ui, std::span<const char* const> words, float room) {
    const Fonts& fonts = ui.fonts;
    const WordLook loose{*fonts.body, *fonts.strong, ui.px(12), ui.px(4)};
    const auto fits = [&](const WordLook& look) {
        float width = -look.between;
        for (const char* word : words) {
            width += widthOf(ui, word, look) + look.between;
        }
        return width <= room;
    };
    const WordLook tight{*fonts.body, *fonts.strong, ui.px(8), 0};
    const WordLook small{*fonts.small, *fonts.small, ui.px(8), 0};
    return fits(loose) ? loose : fits(tight) ? tight : fits(small) ? small : loose;
}

} // namespace

int wordChoice(const Ui& ui, const char* id, std::span<const char* const> words, int chosen,
               bool spread) {
    ImGui::PushID(id);
    const float room = ImGui::GetContentRegionAvail().x;
    const WordLook look = lookOf(ui, words, room);
    const float between = spread ? 0 : look.between;
    float used = 0;
    for (int i = 0; i < static_cast<int>(words.size()); ++i) {
        const char* word = words[static_cast<std::size_t>(i)];
        const float width =
            spread ? room / static_cast<float>(words.size()) : widthOf(ui, word, look);
        if (i > 0 && used + between + width <= room + 1) {
            ImGui::SameLine(0, between);
            used += between + width;
        } else {
            used = width;
        }
        if (choiceWord(ui, word, i == chosen, look, width)) {
            chosen = i;
        }
    }
    ImGui::PopID();
    return chosen;
}

bool listRow(const Ui& ui, const char* label, std::string_view aside) {
    const bool pressed = pressable(
        label, {ImGui::GetContentRegionAvail().x, std::max(ui.rowHeight(), ui.px(40))}, true);
    const Corners box = lastItem();
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (ImGui::IsItemHovered()) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash));
    }
    const float y = box.centre().y;
    put(*ui.fonts.body, {box.low.x + ui.px(4), y - ui.fonts.body->FontSize / 2},
        packed(ui.palette->ink), visiblePart(label));
    const float asideWidth = textSize(*ui.fonts.small, aside).x;
    put(*ui.fonts.small, {box.high.x - ui.px(28) - asideWidth, y - ui.fonts.small->FontSize / 2},
        packed(ui.palette->muted), aside);
    drawIcon(list, Icon::Next, {box.high.x - ui.px(12), y}, ui.px(16), packed(ui.palette->muted));
    list.AddLine({box.low.x, box.high.y}, {box.high.x, box.high.y}, packed(ui.palette->rule),
                 ui.px(1));
    drawFocus(ui, visiblePart(label));
    return pressed;
}

bool listEntry(const Ui& ui, const char* label, const char* under) {
    const float room = ImGui::GetContentRegionAvail().x;
    const float wrap = room - ui.px(32);
    const ImFont& small = *ui.fonts.small;
    const ImVec2 size = small.CalcTextSizeA(small.FontSize, FLT_MAX, wrap, under);
    const float head = ui.fonts.body->FontSize;
    const bool pressed = pressable(label, {room, head + size.y + ui.px(22)}, true);
    const Corners box = lastItem();
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (ImGui::IsItemHovered()) {
        list.AddRectFilled(box.low, box.high, packed(ui.palette->wash));
    }
    const float left = box.low.x + ui.px(4);
    put(*ui.fonts.body, {left, box.low.y + ui.px(8)}, packed(ui.palette->ink), visiblePart(label));
    list.AddText(&small, small.FontSize,
                 {std::round(left), std::round(box.low.y + ui.px(12) + head)},
                 packed(ui.palette->muted), under, nullptr, wrap);
    drawIcon(list, Icon::Next, {box.high.x - ui.px(12), box.centre().y}, ui.px(16),
             packed(ui.palette->muted));
    list.AddLine({box.low.x, box.high.y}, box.high, packed(ui.palette->rule), ui.px(1));
    drawFocus(ui, visiblePart(label));
    return pressed;
}

} // namespace gusset
