#include "ui/labels.hpp"

#include <cmath>

namespace gusset {
namespace {

const ImFont& fontOf(const Ui& ui, LabelKind kind) {
    return kind == LabelKind::Joint ? *ui.fonts.joint : *ui.fonts.label;
}

// A joint's letter stands on a tinted tag, so that it is not read as part of a value beside it.
void drawPatch(ImDrawList& list, const Ui& ui, LabelKind kind, ImVec2 low, ImVec2 high) {
    const bool tag = kind == LabelKind::Joint;
    const float pad = ui.px(tag ? kTagPad : 2);
    const ImVec2 from{low.x - pad, low.y};
    const ImVec2 to{high.x + pad, high.y};
    const float corner = ui.px(tag ? 5 : 3);
    list.AddRectFilled(from, to, packed(tag ? ui.palette->wash : ui.palette->board), corner);
    if (tag) {
        list.AddRect(from, to, packed(ui.palette->rule), corner, 0, ui.px(1));
    }
}

// The very point under the finger, whatever is there or not.
void drawCrossHair(ImDrawList& list, const Ui& ui, Vec2 at) {
    constexpr double kNear = 5; // CSS px from the point to the near and the far end of a stroke
    constexpr double kFar = 16;
    for (const Vec2 way : {Vec2{1, 0}, Vec2{-1, 0}, Vec2{0, 1}, Vec2{0, -1}}) {
        const Vec2 from = at + kNear * way;
        const Vec2 to = at + kFar * way;
        list.AddLine({ui.px(from.x), ui.px(from.y)}, {ui.px(to.x), ui.px(to.y)},
                     packed(ui.palette->accent), ui.px(1.5F));
    }
}

} // namespace

Vec2 measureLabel(const Ui& ui, const std::string& text, LabelKind kind) {
    const ImVec2 size = textSize(fontOf(ui, kind), text);
    return {size.x / ui.scale, size.y / ui.scale};
}

void drawLabels(ImDrawList& list, const Ui& ui, std::span<const LabelMark> labels) {
    for (const LabelMark& label : labels) {
        const ImFont& font = fontOf(ui, label.kind);
        const ImVec2 size = textSize(font, label.text);
        const ImVec2 corner{std::round(ui.px(label.at.x) - size.x / 2),
                            std::round(ui.px(label.at.y) - size.y / 2)};
        if (label.backed) {
            drawPatch(list, ui, label.kind, corner, {corner.x + size.x, corner.y + size.y});
        }
        putText(list, font, corner, packed(textColour(*ui.palette, label.ink)), label.text);
    }
}

void drawLoupeRim(ImDrawList& list, const Ui& ui, const Scene& scene) {
    if (scene.loupe.shown) {
        list.AddCircle({ui.px(scene.loupe.at.x), ui.px(scene.loupe.at.y)}, ui.px(kLoupeRadius),
                       packed(ui.palette->edge), 0, ui.px(2));
        drawCrossHair(list, ui, scene.loupe.at);
    }
}

} // namespace gusset
