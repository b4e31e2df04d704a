// How tension, compression and zero are drawn, in the corner of the board beside the tools.
#include "panels/frame/panel_context.hpp"
#include "phrases/frame.hpp"
#include "ui/force_signs.hpp"

#include <array>
#include <cmath>

namespace gusset {
namespace {

// In the order of MemberFigure.
constexpr std::array<Phrase<>, 3> kFigures{Phrase<>{}, phrase::kFiguresStress, phrase::kFiguresUse};
constexpr float kSignLength = 34; // CSS px
constexpr float kWordLeft = 60;
constexpr float kRoom = 150; // that the corner must have

} // namespace

void legendPanel(PanelContext& context) {
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const bool shown = context.derived.solution.solved && context.state.view.showForces;
    if (!shown || context.layout.reading || tools.at.x < kRoom) {
        return;
    }
    ImDrawList& list = *ImGui::GetBackgroundDrawList();
    const ImFont& font = *ui.fonts.small;
    const float step = std::round(font.FontSize * 1.35F);
    const char* figures =
        words(context, kFigures[static_cast<std::size_t>(context.state.view.memberFigure)]);
    const std::size_t lines = forceSigns().size() + (*figures != '\0' ? 1 : 0);
    float y = ui.px(tools.at.y + tools.size.y) - step * static_cast<float>(lines);
    const float left = ui.px(16);
    for (const ForceSign& sign : forceSigns()) {
        const float middle = std::round(y + step / 2);
        const float top = std::round(middle - font.FontSize / 2);
        const ImU32 ink = packed(textColour(*ui.palette, sign.ink));
        drawForceSign(list, ui, sign.ink, {left, middle}, ui.px(kSignLength));
        list.AddText(&font, font.FontSize, {left + ui.px(kSignLength + 10), top}, ink,
                     words(context, sign.letter));
        list.AddText(&font, font.FontSize, {left + ui.px(kWordLeft), top},
                     packed(ui.palette->muted), words(context, sign.word));
        y += step;
    }
    const float top = std::round(y + step / 2 - font.FontSize / 2);
    list.AddText(&font, font.FontSize, {left, top}, packed(ui.palette->muted), figures);
}

} // namespace gusset
