// Several selected things: what they are, and what can be done with all of them at once.
#include "canvas/hands/arrange.hpp"
#include "canvas/hands/several_field.hpp"
#include "canvas/hands/tool.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/picked.hpp"

#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr double kTitleRow = 48;
constexpr double kButtonRow = 46;
constexpr int kColumnsOfPhone = 4;

struct Word {
    Phrase<> label;
    std::optional<SeveralKind> typed; // opens a field; none: opens a list
    bool needsMembers = false;
    const char* id = "";
};
constexpr std::array kWords{
    Word{phrase::kMove, SeveralKind::Move},
    Word{phrase::kCopy, SeveralKind::Copy},
    Word{phrase::kMirror, std::nullopt},
    Word{phrase::kTurn, SeveralKind::Turn},
    Word{phrase::kRepeat, SeveralKind::Repeat},
    Word{phrase::kSection, std::nullopt, true},
    Word{phrase::kWarm, SeveralKind::Warm, true, "##warm"},
};

std::vector<Word> wordsFor(const AppState& state) {
    std::vector<Word> words;
    if (state.selection.joints.empty() && state.selection.members.empty()) {
        return words;
    }
    for (const Word& word : kWords) {
        if (!word.needsMembers || !state.selection.members.empty()) {
            words.push_back(word);
        }
    }
    return words;
}

int columnsFor(const PanelContext& context, std::size_t words) {
    return context.layout.narrow ? kColumnsOfPhone : std::max(static_cast<int>(words), 1);
}

void mirrorList(PanelContext& context) {
    struct Choice {
        Phrase<> label;
        Side side;
    };
    constexpr std::array kChoices{
        Choice{phrase::kToTheRight, Side::Right}, Choice{phrase::kToTheLeft, Side::Left},
        Choice{phrase::kUpwards, Side::Above}, Choice{phrase::kDownwards, Side::Below}};
    for (const Choice& choice : kChoices) {
        if (button(context.ui, words(context, choice.label), {.full = true})) {
            if (const auto edit = mirrorSelection(context.state, choice.side)) {
                context.actions.push_back(Commit{*edit});
            }
            ImGui::CloseCurrentPopup();
        }
    }
}

void sectionList(PanelContext& context) {
    const AppState& state = context.state;
    for (const Section& section : state.truss.sections) {
        if (button(context.ui, (section.id + "##several").c_str(), {.full = true})) {
            context.actions.push_back(Commit{UseSection{state.selection.members, section.id}});
            ImGui::CloseCurrentPopup();
        }
    }
    if (button(context.ui, words(context, phrase::kSectionsAndMaterials), {.full = true})) {
        turnTo(NotebookTab::Model, context.actions);
        ImGui::CloseCurrentPopup();
    }
}

void list(PanelContext& context, const Word& word, bool opens) {
    const Ui& ui = context.ui;
    const char* id = words(context, word.label);
    if (opens) {
        ImGui::OpenPopup(id);
    }
    ImGui::SetNextWindowPos({ImGui::GetItemRectMin().x, ImGui::GetItemRectMin().y - ui.px(4)},
                            ImGuiCond_Always, {0.4f, 1});
    ImGui::SetNextWindowSize({ui.px(230), 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {ui.px(10), ui.px(8)});
    if (ImGui::BeginPopup(id, ImGuiWindowFlags_NoMove)) {
        word.needsMembers ? sectionList(context) : mirrorList(context);
        ImGui::EndPopup();
    }
    ImGui::PopStyleVar();
}

// The row of commands, or the field of the one that was pressed.
void wordRow(PanelContext& context, const std::vector<Word>& list_, const Table::Box& box) {
    const Ui& ui = context.ui;
    const int columns = columnsFor(context, list_.size());
    const float width = (box.high.x - box.low.x) / static_cast<float>(columns);
    for (std::size_t i = 0; i < list_.size(); ++i) {
        const auto column = static_cast<float>(static_cast<int>(i) % columns);
        const auto row = static_cast<float>(static_cast<int>(i) / columns);
        ImGui::SetCursorScreenPos(
            {box.low.x + column * width, box.low.y + row * ui.px(kButtonRow)});
        const bool pressed = cellButton(ui, wordsAs(context, list_[i].label, list_[i].id).c_str(),
                                        {width - ui.px(2), ui.px(kTouchTarget)});
        if (!list_[i].typed) {
            list(context, list_[i], pressed);
        } else if (pressed) {
            const SeveralKind kind = *list_[i].typed;
            context.actions.push_back(BeginField{kind, severalText(context.state, kind)});
        }
    }
}

void typed(PanelContext& context, SeveralKind kind, const Table::Box& box) {
    const Ui& ui = context.ui;
    const float middle = box.low.y + ui.px(kTouchTarget) / 2;
    const float left = stripWords(ui, *ui.fonts.body, {box.low.x + ui.px(6), middle},
                                  words(context, severalName(kind)), ui.palette->ink);
    FieldLook look;
    look.field = kind;
    look.name = words(context, severalName(kind));
    look.numeric = kind == SeveralKind::Warm;
    look.framed = true;
    const float right = std::min(box.high.x, left + ui.px(170));
    field(context, {{left, box.low.y}, {right, box.low.y + ui.px(kTouchTarget)}}, look);
    const char* example = words(context, severalExample(kind));
    const ImFont& font = *ui.fonts.small;
    const float room = font.CalcTextSizeA(font.FontSize, FLT_MAX, 0, example).x;
    const bool beside = right + ui.px(56) + room < box.high.x;
    if (beside) { // to the right of the field's sign button
        stripWords(ui, font, {right + ui.px(8), middle}, example, ui.palette->muted);
    } else if (context.layout.narrow) {
        stripWords(ui, font, {box.low.x + ui.px(6), middle + ui.px(kButtonRow)}, example,
                   ui.palette->muted);
    }
}

void titleRow(PanelContext& context, const Table::Box& box) {
    const Ui& ui = context.ui;
    const AppState& state = context.state;
    const std::string text = selectionText(state);
    const float middle = (box.low.y + box.high.y) / 2;
    stripWords(ui, *ui.fonts.strong, {box.low.x + ui.px(6), middle},
               text.empty() ? words(context, phrase::kDrawAround) : text, ui.palette->ink);
    float right = box.high.x;
    const auto place = [&](float width) {
        right -= width + ui.px(4);
        ImGui::SetCursorScreenPos({right, middle - targetHeight(ui) / 2});
    };
    if (!text.empty()) {
        place(targetHeight(ui));
        if (button(ui, words(context, phrase::kRemoveAll),
                   {.icon = Icon::Trash, .showText = false})) {
            context.actions.push_back(Commit{Remove{state.selection}});
        }
    }
    place(buttonWidth(ui, words(context, phrase::kDone)));
    if (button(ui, words(context, phrase::kDone))) {
        context.actions.push_back(PickSeveral{false});
        context.actions.push_back(SetSelection{});
    }
}

} // namespace

bool severalPanel(PanelContext& context) {
    const AppState& state = context.state;
    const bool several = state.picksSeveral || (countOf(state.selection) > 1 && !cutsByDrag(state));
    if (!several || state.gesture.kind != GestureKind::None) {
        return false;
    }
    const std::vector<Word> list_ = wordsFor(state);
    const int columns = columnsFor(context, list_.size());
    const int rows = (static_cast<int>(list_.size()) + columns - 1) / columns;
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const double height = kTitleRow + 4 + kButtonRow * rows;
    const Rect place{{tools.at.x, tools.at.y - height - 4}, {tools.size.x, height}};
    beginSheet(ui, "several", place, {.padding = {4, 2}});
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    const ImVec2 high{low.x + ui.px(place.size.x), low.y + ui.px(height)};
    ImGui::GetWindowDrawList()->AddRect(low, high, packed(ui.palette->rule), 0, 0, ui.px(1));
    const float side = ui.px(5);
    const float titleEnd = low.y + ui.px(kTitleRow + 2);
    titleRow(context, {{low.x + side, low.y + ui.px(2)}, {high.x - side, titleEnd}});
    const Table::Box below{{low.x + side, titleEnd}, {high.x - side, high.y}};
    if (const auto* kind = openField<SeveralKind>(state)) {
        typed(context, *kind, below);
    } else {
        wordRow(context, list_, below);
    }
    endSheet();
    return true;
}

} // namespace gusset
