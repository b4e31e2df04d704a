// The selected thing, above the tools: what it is, its values as fields, and a remove button.
#include "app/derived/thing_text.hpp"
#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/picked.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kHeight = 48;
constexpr double kRemoveWidth = 44;

std::string memberFacts(const PanelContext& context, MemberId member) {
    const std::string force = memberForce(context.state, context.derived, member);
    return memberLength(context.state.truss, member) + (force.empty() ? force : " · " + force);
}

CellTable tableOf(const ThingId& thing) {
    return static_cast<CellTable>(thing.index()); // the two enumerations have the same order
}

} // namespace

float stripWords(const Ui& ui, const ImFont& font, ImVec2 at, std::string_view text, Colour ink) {
    const ImVec2 size = textSize(font, text);
    putText(*ImGui::GetWindowDrawList(), font, {at.x, std::round(at.y - size.y / 2)}, packed(ink),
            text);
    return at.x + size.x + ui.px(8);
}

namespace {

void figures(PanelContext& context, const ThingId& picked, const Table::Box& room) {
    const Truss& truss = context.state.truss;
    const Ui& ui = context.ui;
    std::vector<Cell> cells;
    for (int column = 0; column < columnsOf(tableOf(picked)); ++column) {
        const Cell cell{tableOf(picked), rowOf(picked), column};
        if (pickedName(truss, cell) && canType(truss, cell)) {
            cells.push_back(cell);
        }
    }
    const float each =
        (room.high.x - room.low.x) / std::max<float>(2, static_cast<float>(cells.size()));
    float x = room.low.x;
    for (const Cell& cell : cells) {
        const float y = (room.low.y + room.high.y) / 2;
        const float left = stripWords(ui, *ui.fonts.small, {x, y},
                                      words(context, *pickedName(truss, cell)), ui.palette->muted);
        FieldLook look;
        look.field = PickedCell{cell};
        look.name = cellName({*context.state.book, truss}, cell);
        look.text = cellText(truss, cell);
        look.look = cellLook(truss, cell);
        look.align = Align::Right;
        look.framed = true;
        field(context,
              {{left, room.low.y + ui.px(4)}, {x + each - ui.px(6), room.high.y - ui.px(4)}}, look);
        x += each;
    }
}

// In one line if there is room, else in two.
void memberWords(const Ui& ui, const Table::Box& room, const std::string& title,
                 const std::string& facts) {
    const Colour ink = ui.palette->ink;
    const float middle = (room.low.y + room.high.y) / 2;
    const float beside =
        room.low.x + textSize(*ui.fonts.strong, title).x + ui.px(8); // as stripWords leaves it
    if (beside + textSize(*ui.fonts.body, facts).x <= room.high.x) {
        stripWords(ui, *ui.fonts.strong, {room.low.x, middle}, title, ink);
        stripWords(ui, *ui.fonts.body, {beside, middle}, facts, ink);
        return;
    }
    const float apart = ui.px(10);
    stripWords(ui, *ui.fonts.strong, {room.low.x, middle - apart}, title, ink);
    putFitted(*ImGui::GetWindowDrawList(), ui, facts,
              {.low = {room.low.x, middle},
               .high = {room.high.x, middle + 2 * apart},
               .font = ui.fonts.small,
               .ink = packed(ink)});
}

// Leads to the shortest way to a member's force or a support's reaction.
void why(PanelContext& context) {
    if (button(context.ui, words(context, phrase::kWhy))) {
        turnTo(WorkingPage::OneForce, context.actions);
    }
}

bool hasWhy(const PanelContext& context, const ThingId& picked) {
    return context.derived.solution.solved &&
           (std::holds_alternative<MemberId>(picked) || std::holds_alternative<SupportId>(picked));
}

void removeIt(PanelContext& context, const ThingId& picked) {
    const std::string label = sayPlain(*context.state.book, phrase::kRemoveThat,
                                       {{"what", thingTitle(context.state, picked)}}) +
                              "###remove picked";
    if (button(context.ui, label.c_str(), {.icon = Icon::Trash, .showText = false})) {
        context.actions.push_back(Commit{Remove{thingsOf(picked)}});
        context.actions.push_back(SetSelection{});
    }
}

} // namespace

bool inspector(PanelContext& context) {
    const Hit one = onlyOne(context.state.selection);
    const Truss& truss = context.state.truss;
    if (!one || context.state.gesture.kind != GestureKind::None || !isThere(truss, *one)) {
        return false;
    }
    const ThingId& picked = *one;
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const Rect place{{tools.at.x, tools.at.y - kHeight - 4}, {tools.size.x, kHeight}};
    beginSheet(ui, "picked", place, {.padding = {10, 2}});
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    const ImVec2 high{low.x + ui.px(place.size.x), low.y + ui.px(kHeight)};
    ImGui::GetWindowDrawList()->AddRect(low, high, packed(ui.palette->rule), 0, 0, ui.px(1));
    const float middle = (low.y + high.y) / 2;
    const std::string title = thingTitle(context.state, picked);
    const bool asks = hasWhy(context, picked);
    const float right = high.x - ui.px(kRemoveWidth + 4) -
                        (asks ? buttonWidth(ui, words(context, phrase::kWhy)) + ui.px(6) : 0);
    const ImVec2 left{low.x + ui.px(12), middle};
    if (const MemberId member = hitOf<MemberId>(picked); member.valid()) {
        memberWords(ui, {{left.x, low.y}, {right, high.y}}, title, memberFacts(context, member));
    } else {
        const float x = stripWords(ui, *ui.fonts.strong, left, title, ui.palette->ink);
        figures(context, picked, {{x, low.y}, {right, high.y}});
    }
    ImGui::SetCursorScreenPos({right, middle - targetHeight(ui) / 2});
    if (asks) {
        why(context);
        ImGui::SameLine(0, ui.px(6));
    }
    removeIt(context, picked);
    endSheet();
    return true;
}

} // namespace gusset
