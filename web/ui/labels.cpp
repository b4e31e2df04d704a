#include "ui/labels.hpp"

#include <cmath>

namespace gusset {
namespace {

const ImFont& fontOf(const Ui& ui, LabelKind kind) {
    return kind == LabelKind::Joint ? *ui.fonts.joint : *ui.fonts.label;
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
            const float pad = ui.px(2);
            list.AddRectFilled({corner.x - pad, corner.y},
                               {corner.x + size.x + pad, corner.y + size.y},
                               packed(ui.palette->board), ui.px(3));
        }
        putText(list, font, corner, packed(textColour(*ui.palette, label.ink)), label.text);
    }
}

void drawLoupeRim(ImDrawList& list, const Ui& ui, const Scene& scene) {
    if (scene.loupe.shown) {
        list.AddCircle({ui.px(scene.loupe.at.x), ui.px(scene.loupe.at.y)}, ui.px(kLoupeRadius),
                       packed(ui.palette->edge), 0, ui.px(2));
    }
}

} // namespace gusset
