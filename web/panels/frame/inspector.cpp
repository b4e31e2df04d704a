// What is picked, over the tools: what it is, its values to type, and its removal.
#include "app/fields/cell_text.hpp"
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr double kHeight = 48;
constexpr double kRemoveWidth = 44;

struct Picked {
    HitKind kind = HitKind::None;
    int index = -1;
};

// The one thing that is selected; nothing when there are several.
Picked pickedOf(const AppState& state) {
    const Things& things = state.selection;
    const std::size_t count =
        things.joints.size() + things.members.size() + things.supports.size() + things.loads.size();
    if (count != 1) {
        return {};
    }
    if (!things.joints.empty()) {
        return {HitKind::Joint, things.joints.front().index};
    }
    if (!things.members.empty()) {
        return {HitKind::Member, things.members.front().index};
    }
    return things.supports.empty() ? Picked{HitKind::Load, things.loads.front().index}
                                   : Picked{HitKind::Support, things.supports.front().index};
}

std::string titleOf(const Truss& truss, const Picked& picked) {
    const auto at = static_cast<std::size_t>(picked.index);
    switch (picked.kind) {
    case HitKind::Joint:
        return "Joint " + truss.joints[at].label;
    case HitKind::Member:
        return "Member " + memberName(truss, MemberId{picked.index});
    case HitKind::Support:
        return (truss.supports[at].kind == SupportKind::Pin ? "Pin at " : "Roller at ") +
               jointLabel(truss, truss.supports[at].joint);
    case HitKind::Load: {
        const JointId joint = jointOf(truss.loads[at]);
        return joint.valid() ? "Load at " + jointLabel(truss, joint) : "Load";
    }
    case HitKind::None:
        break;
    }
    return "";
}

std::string memberFacts(const PanelContext& context, int member) {
    const Truss& truss = context.state.truss;
    std::string facts =
        quantity(formatNumber(length(memberVector(truss, MemberId{member})), numberStyleOf(truss)),
                 symbolOf(truss.units.length));
    for (const ForceRow& row : context.derived.forces) {
        if (row.member.index == member) {
            const Phrase phrase = row.sense == Sense::Tension       ? Phrase::FactTension
                                  : row.sense == Sense::Compression ? Phrase::FactCompression
                                                                    : Phrase::FactNoForce;
            const std::string value = quantity(row.value, symbolOf(truss.units.force));
            facts += " · " + sayPlain(*context.state.book, phrase, {{"value", plainLine(value)}});
        }
    }
    return facts;
}

CellTable tableOf(HitKind kind) {
    return kind == HitKind::Joint     ? CellTable::Joints
           : kind == HitKind::Support ? CellTable::Supports
           : kind == HitKind::Load    ? CellTable::Loads
                                      : CellTable::Members;
}

} // namespace

float stripWords(const Ui& ui, const ImFont& font, ImVec2 at, std::string_view text, Colour ink) {
    const ImVec2 size = textSize(font, text);
    putText(*ImGui::GetWindowDrawList(), font, {at.x, std::round(at.y - size.y / 2)}, packed(ink),
            text);
    return at.x + size.x + ui.px(8);
}

namespace {

void figures(PanelContext& context, const Picked& picked, const Table::Box& room) {
    const Truss& truss = context.state.truss;
    const Ui& ui = context.ui;
    std::vector<Cell> cells;
    for (int column = 0; column < columnsOf(tableOf(picked.kind)); ++column) {
        const Cell cell{tableOf(picked.kind), picked.index, column};
        if (!pickedName(truss, cell).empty() && canType(truss, cell)) {
            cells.push_back(cell);
        }
    }
    const float each =
        (room.high.x - room.low.x) / std::max<float>(2, static_cast<float>(cells.size()));
    float x = room.low.x;
    for (const Cell& cell : cells) {
        const float y = (room.low.y + room.high.y) / 2;
        const float left =
            stripWords(ui, *ui.fonts.small, {x, y}, pickedName(truss, cell), ui.palette->muted);
        FieldLook look;
        look.field = PickedCell{cell};
        look.name = cellName(truss, cell);
        look.text = cellText(truss, cell);
        look.look = cellLook(truss, cell);
        look.align = Align::Right;
        look.framed = true;
        field(context,
              {{left, room.low.y + ui.px(4)}, {x + each - ui.px(6), room.high.y - ui.px(4)}}, look);
        x += each;
    }
}

// To the shortest way to a member's force or a support's reaction.
void why(PanelContext& context) {
    if (button(context.ui, "Why?", {})) {
        turnTo(WorkingPage::OneForce, context.actions);
    }
}

bool hasWhy(const PanelContext& context, const Picked& picked) {
    return context.derived.solution.solved &&
           (picked.kind == HitKind::Member || picked.kind == HitKind::Support);
}

void removeIt(PanelContext& context, const Picked& picked) {
    const std::string label = "Remove " + titleOf(context.state.truss, picked) + "###remove picked";
    if (button(context.ui, label.c_str(), {.icon = Icon::Trash, .showText = false})) {
        context.actions.push_back(Commit{Remove{only(picked.kind, picked.index)}});
        context.actions.push_back(SetSelection{});
    }
}

} // namespace

bool inspector(PanelContext& context) {
    const Picked picked = pickedOf(context.state);
    const Truss& truss = context.state.truss;
    if (picked.kind == HitKind::None || context.state.gesture.kind != GestureKind::None ||
        picked.index >= rowsOf(truss, tableOf(picked.kind))) {
        return false;
    }
    const Ui& ui = context.ui;
    const Rect& tools = context.layout.tools;
    const Rect place{{tools.at.x, tools.at.y - kHeight - 4}, {tools.size.x, kHeight}};
    beginSheet(ui, "picked", place, {.padding = {10, 2}});
    const ImVec2 low{ui.px(place.at.x), ui.px(place.at.y)};
    const ImVec2 high{low.x + ui.px(place.size.x), low.y + ui.px(kHeight)};
    ImGui::GetWindowDrawList()->AddRect(low, high, packed(ui.palette->rule), 0, 0, ui.px(1));
    const float middle = (low.y + high.y) / 2;
    const float x = stripWords(ui, *ui.fonts.strong, {low.x + ui.px(12), middle},
                               titleOf(truss, picked), ui.palette->ink);
    const bool asks = hasWhy(context, picked);
    const float right =
        high.x - ui.px(kRemoveWidth + 4) - (asks ? buttonWidth(ui, "Why?") + ui.px(6) : 0);
    if (picked.kind == HitKind::Member) {
        stripWords(ui, *ui.fonts.body, {x, middle}, memberFacts(context, picked.index),
                   ui.palette->ink);
    } else {
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
