#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/frame.hpp"
#include "phrases/results/board.hpp"

#include <algorithm>
#include <string>

namespace gusset {
namespace {

struct Command {
    std::string label;
    Icon icon = Icon::None;
    bool enabled = true;
    bool selected = false;
    bool showText = false;
    Action action;
};

void commandButton(PanelContext& context, const Command& command) {
    const ButtonLook look{.icon = command.icon,
                          .showText = command.showText,
                          .selected = command.selected,
                          .enabled = command.enabled};
    if (button(context.ui, command.label.c_str(), look)) {
        context.actions.push_back(command.action);
    }
    ImGui::SameLine(0, context.ui.px(2));
}

// The part after ### is constant while the words name the step.
std::string naming(const PanelContext& context, Phrase<> alone, decltype("{step}"_phrase) withStep,
                   const Statement& step) {
    const PhraseBook& book = *context.state.book;
    return step.empty() ? words(context, alone)
                        : sayPlain(book, withStep, {{"step", said(book, step)}});
}

// A header narrower than this shows icons only.
bool isShort(const PanelContext& context) { return context.layout.header.size.x < kNarrowBelow; }

float shareWidth(const PanelContext& context) {
    return buttonWidth(context.ui, words(context, phrase::kCopyLink),
                       {.icon = Icon::Share, .showText = !isShort(context)});
}

// On a narrow page the title has the room of what can't be undone or redone.
bool showsCommand(const PanelContext& context, const Statement& step) {
    return !isShort(context) || !step.empty();
}

float commandsWidth(const PanelContext& context) {
    const History& history = context.state.history;
    const int square = 2 + (isShort(context) ? 0 : 1) +
                       (showsCommand(context, history.undoName()) ? 1 : 0) +
                       (showsCommand(context, history.redoName()) ? 1 : 0);
    const float one = buttonWidth(context.ui, "##one", {.icon = Icon::Undo, .showText = false});
    return static_cast<float>(square) * (one + context.ui.px(2)) + shareWidth(context) +
           context.ui.px(2);
}

void titleField(PanelContext& context, float height) {
    const Ui& ui = context.ui;
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float room = ImGui::GetContentRegionAvail().x - commandsWidth(context) - ui.px(8);
    const float width = std::max(room, ui.px(40));
    FieldLook look;
    look.field = TitleField::Header;
    look.name = words(context, phrase::kTitle);
    look.text = look.look = context.state.truss.title;
    look.hint = words(context, phrase::kUntitledTruss);
    look.numeric = false;
    look.font = isShort(context) ? ui.fonts.strong : ui.fonts.heading;
    look.wraps = look.marked = true;
    field(context, {low, {low.x + width, low.y + height}}, look);
    ImGui::Dummy({width, height});
}

void commands(PanelContext& context) {
    const History& history = context.state.history;
    const Statement on = history.redoName();
    if (showsCommand(context, history.undoName())) {
        undoButton(context);
        ImGui::SameLine(0, context.ui.px(2));
    }
    if (showsCommand(context, on)) {
        commandButton(context, {naming(context, phrase::kRedo, phrase::kRedoStep, on) + "###redo",
                                Icon::Redo, !on.empty(), false, false, Redo{}});
    }
    if (!isShort(context)) {
        commandButton(context, {wordsAs(context, phrase::kFitDrawing, "##fit"), Icon::Fit, true,
                                false, false, ZoomToFit{}});
    }
    viewMenu(context);
    ImGui::SameLine(0, context.ui.px(2));
    if (button(context.ui, words(context, phrase::kCopyLink),
               {.icon = Icon::Share, .showText = !isShort(context)})) {
        context.requests.copyLink = true;
    }
    ImGui::SameLine(0, context.ui.px(2));
    const bool open = context.state.notebook.open;
    commandButton(context, {wordsAs(context, open ? phrase::kCloseNotebook : phrase::kOpenNotebook,
                                    "###notebook"),
                            Icon::Notebook, true, open, false, Set{&NotebookState::open, !open}});
}

// The product's mark: the way to everything that is not this board.
void startButton(PanelContext& context, float side) {
    const ButtonLook look{.icon = Icon::Mark, .showText = false, .side = side};
    if (button(context.ui, wordsAs(context, phrase::kStartPage, "##start").c_str(), look)) {
        context.requests.showStart = true;
    }
    ImGui::SameLine(0, context.ui.px(2));
}

} // namespace

void undoButton(PanelContext& context) {
    const Statement back = context.state.history.undoName();
    const std::string label = naming(context, phrase::kUndo, phrase::kUndoStep, back) + "###undo";
    if (button(context.ui, label.c_str(),
               {.icon = Icon::Undo, .showText = false, .enabled = !back.empty()})) {
        context.actions.push_back(Undo{});
    }
}

void headerPanel(PanelContext& context) {
    const Ui& ui = context.ui;
    const Rect& place = context.layout.header;
    const float side = isShort(context) ? 2 : 12;
    // The way out of the board and its title are targets of full size for a mouse too.
    const float large = ui.px(kTouchTarget);
    const float height = targetHeight(ui);
    const auto above = [&](float of) {
        return ui.px(place.at.y) + std::round((ui.px(place.size.y) - of) / 2);
    };
    if (context.layout.reading) {
        const float gap = static_cast<float>(place.size.y - height / ui.scale) / 2;
        beginSheet(ui, "header", place, {.padding = {12, gap}});
        readerHeader(context);
    } else {
        beginSheet(ui, "header", place, {.padding = {side, 0}});
        ImGui::SetCursorScreenPos({ImGui::GetCursorScreenPos().x, above(large)});
        startButton(context, large);
        titleField(context, large);
        // Not by SameLine, which would keep the buttons at the height of the title's field.
        ImGui::SetCursorScreenPos({ImGui::GetItemRectMax().x + ui.px(8), above(height)});
        commands(context);
    }
    const float bottom = std::round(ui.px(place.at.y + place.size.y));
    ImGui::GetWindowDrawList()->AddRectFilled({0, bottom - std::max(1.0f, ui.px(1))},
                                              {ui.px(place.size.x), bottom},
                                              packed(ui.palette->rule));
    endSheet();
}

} // namespace gusset
