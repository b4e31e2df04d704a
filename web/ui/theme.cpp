#include "ui/theme.hpp"

#include "ui/fonts.hpp"

namespace gusset {
namespace {

// The few of ImGui's own widgets in use (scroll bars, popups), in this project's inks; the others
// draw themselves.
void setColours(ImGuiStyle& style, const Palette& palette) {
    const ImVec4 clear{0, 0, 0, 0};
    for (ImVec4& colour : style.Colors) {
        colour = clear;
    }
    style.Colors[ImGuiCol_Text] = vector(palette.ink);
    style.Colors[ImGuiCol_TextDisabled] = vector(palette.muted);
    style.Colors[ImGuiCol_WindowBg] = vector(palette.notebook);
    style.Colors[ImGuiCol_PopupBg] = vector(palette.notebook);
    style.Colors[ImGuiCol_Border] = vector(palette.edge);
    style.Colors[ImGuiCol_ScrollbarGrab] = vector(palette.rule);
    style.Colors[ImGuiCol_ScrollbarGrabHovered] = vector(palette.edge);
    style.Colors[ImGuiCol_ScrollbarGrabActive] = vector(palette.accent);
    style.Colors[ImGuiCol_NavHighlight] = vector(palette.accent);
}

void setMeasures(ImGuiStyle& style, const Ui& ui) {
    style.WindowPadding = {ui.px(20), ui.px(16)};
    style.WindowBorderSize = 0;
    style.ChildBorderSize = 0;
    style.PopupBorderSize = ui.px(1);
    style.ItemSpacing = {ui.px(8), ui.px(8)};
    style.ItemInnerSpacing = {ui.px(8), ui.px(4)};
    style.FramePadding = {ui.px(8), ui.px(8)};
    style.ScrollbarSize = ui.px(8); // kBarRoom of ui/paper
    style.ScrollbarRounding = ui.px(4);
    style.WindowMinSize = {1, 1};
    style.TouchExtraPadding = {0, 0};
    style.AntiAliasedLinesUseTex = false; // rules are hairlines of any width
}

} // namespace

float Ui::rowHeight() const { return px(coarse ? kTouchTarget : 32); }

bool wantsFonts(const Ui& ui) { return ui.foreign.drawn != ui.foreign.runs.size(); }

bool refreshUi(Ui& ui, const UiWish& wish) {
    const auto scale = static_cast<float>(wish.viewport.pixelRatio);
    const Palette& palette = paletteOf(paletteFor(wish.theme, wish.viewport));
    const bool newSize = scale != ui.scale;
    const bool newFonts = newSize || wantsFonts(ui);
    const bool newStyle = newSize || &palette != ui.palette;
    ui.palette = &palette;
    ui.scale = scale;
    ui.coarse = wish.viewport.coarse;
    if (newFonts) {
        ui.fonts = buildFonts(*ImGui::GetIO().Fonts, scale, ui.foreign, wish.drawRun);
        ImGui::GetIO().FontDefault = ui.fonts.body;
    }
    if (newStyle) {
        ImGuiStyle& style = ImGui::GetStyle();
        style = ImGuiStyle();
        setColours(style, palette);
        setMeasures(style, ui);
    }
    return newFonts;
}

ImU32 packed(Colour c) { return IM_COL32(c.red, c.green, c.blue, c.alpha); }

ImVec4 vector(Colour c) { return ImGui::ColorConvertU32ToFloat4(packed(c)); }

} // namespace gusset
