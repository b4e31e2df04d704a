#include "canvas/scene/lesson.hpp"
#include "panels/frame/panel_context.hpp"
#include "phrases/frame.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// The part of the board that no panel covers, CSS px.
Rect freeBoard(const PanelContext& context) {
    const double top = context.layout.header.size.y;
    const bool column = !context.layout.narrow && context.layout.notebook.size.x > 0;
    const double right = column ? context.layout.notebook.at.x : context.viewport.size.x;
    return {{0, top}, {right, context.layout.tools.at.y - top}};
}

void strip(PanelContext& context, const Message& message) {
    const Ui& ui = context.ui;
    const Rect board = freeBoard(context);
    const double width = std::min(board.size.x - 16, 560.0);
    const double inner = width - 12 - 34 - kTouchTarget - 4;
    const ImFont& font = *ui.fonts.body;
    const TextFit fit{.wrap = ui.px(inner)};
    const ImVec2 size = textSize(font, message.text, fit);
    const double height = std::max<double>(size.y / ui.scale + 20, kTouchTarget + 4);
    const Rect place{{board.at.x + (board.size.x - width) / 2, board.at.y + 8}, {width, height}};
    const bool problem = message.kind == MessageKind::Problem;
    beginSheet(ui, "message", place, {.padding = {12, 2}});
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    const ImVec2 high{low.x + ui.px(width), low.y + ui.px(height)};
    const Colour ink = problem ? ui.palette->warning : ui.palette->accent;
    list.AddRect(low, high, packed(ink), ui.px(3), 0, ui.px(1.5));
    const float y = (low.y + high.y) / 2;
    drawIcon(list, problem ? Icon::Problem : Icon::Info, {low.x + ui.px(24), y}, ui.px(22),
             packed(ink));
    putText(list, font, {low.x + ui.px(44), std::round(y - size.y / 2)}, packed(ui.palette->ink),
            message.text, fit);
    ImGui::SetCursorScreenPos({high.x - ui.px(kTouchTarget + 2), y - ui.px(kTouchTarget / 2)});
    if (button(ui, wordsAs(context, phrase::kCloseMessage, "##close").c_str(),
               {.icon = Icon::Close, .showText = false})) {
        context.actions.push_back(Say{MessageKind::Info, ""});
    }
    endSheet();
}

// Nothing is drawn yet: how to start. The words lie on the paper and let strokes through.
void beginning(PanelContext& context) {
    const Ui& ui = context.ui;
    const bool drawing = context.state.tool == Tool::Member;
    const char* says = words(context, drawing ? phrase::kDrawFirst : phrase::kEmptyBoard);
    const char* members = words(context, phrase::kDrawMembers);
    const char* start = words(context, phrase::kStartPage);
    const float draw = drawing ? 0 : buttonWidth(ui, members, {.icon = Icon::Member});
    const float choose = buttonWidth(ui, start, {.icon = Icon::Mark});
    const double width = (draw + choose) / ui.scale + 8;
    const double height = targetHeight(ui) / ui.scale;
    const Rect board = freeBoard(context);
    const Vec2 middle = board.at + 0.5 * board.size;
    const ImFont& font = *ui.fonts.body;
    const float wrap = ui.px(board.size.x - 32);
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, wrap, says);
    ImGui::GetBackgroundDrawList()->AddText(
        &font, font.FontSize,
        {std::round(ui.px(middle.x) - size.x / 2), std::round(ui.px(middle.y - 12) - size.y)},
        packed(ui.palette->ink), says, nullptr, wrap);
    beginSheet(ui, "beginning", {{middle.x - width / 2, middle.y}, {width, height}},
               {.padding = {0, 0}});
    if (!drawing) {
        if (button(ui, members, {.icon = Icon::Member, .primary = true})) {
            context.actions.push_back(SetTool{Tool::Member});
        }
        ImGui::SameLine(0, ui.px(8));
    }
    if (button(ui, wordsAs(context, phrase::kStartPage, "##beginning").c_str(),
               {.icon = Icon::Mark})) {
        context.requests.showStart = true;
    }
    endSheet();
}

} // namespace

void messagePanel(PanelContext& context) {
    const AppState& state = context.state;
    if (!state.message.text.empty()) {
        strip(context, state.message);
    }
    if (state.truss.joints.empty() && !state.view.teaches &&
        state.gesture.kind == GestureKind::None) {
        beginning(context);
    }
}

} // namespace gusset
