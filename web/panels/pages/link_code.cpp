#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/share.hpp"
#include "report/sketch/qr_code.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kLargest = 300; // CSS px

// Adjacent dark modules in a row are one rectangle: fewer vertices, no seams.
void drawModules(const QrCode& code, ImVec2 corner, float module) {
    ImDrawList& list = *ImGui::GetWindowDrawList();
    for (int y = 0; y < code.side; ++y) {
        for (int x = 0; x < code.side;) {
            const auto row = code.dark.begin() + y * code.side;
            const auto begin = std::find(row + x, row + code.side, true);
            const auto end = std::find(begin, row + code.side, false);
            const float top = corner.y + static_cast<float>(y) * module;
            const float left = corner.x + static_cast<float>(begin - row) * module;
            const float right = corner.x + static_cast<float>(end - row) * module;
            if (begin != end) {
                list.AddRectFilled({left, top}, {right, top + module}, IM_COL32_BLACK);
            }
            x = static_cast<int>(end - row);
        }
    }
}

} // namespace

void linkCode(PanelContext& context) {
    const Ui& ui = context.ui;
    if (!context.linkCode) {
        smallPrint(ui, words(context, phrase::kNoCode));
        return;
    }
    const QrCode& code = *context.linkCode;
    const auto modules = static_cast<float>(code.side + 2 * kQuietModules);
    const float room = std::min(ui.px(kLargest), ImGui::GetContentRegionAvail().x);
    // Whole device pixels, so that every edge is sharp.
    const float module = std::max(1.0f, std::floor(room / modules));
    const ImVec2 screen = ImGui::GetCursorScreenPos();
    const ImVec2 corner{std::round(screen.x), std::round(screen.y)};
    const float side = module * modules;
    ImGui::GetWindowDrawList()->AddRectFilled(corner, {corner.x + side, corner.y + side},
                                              IM_COL32_WHITE);
    const float quiet = module * kQuietModules;
    drawModules(code, {corner.x + quiet, corner.y + quiet}, module);
    ImGui::Dummy({side, side});
    if (listRow(ui, words(context, phrase::kSaveCode), words(context, phrase::kForHandout))) {
        context.requests.saveCode = true;
    }
}

} // namespace gusset
