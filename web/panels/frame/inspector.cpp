// What is picked, over the tools: what it is, its values to type, and its removal.
#include "panels/frame/parts.hpp"
#include "panels/frame/tabs.hpp"
#include "phrases/picked.hpp"
#include "phrases/tables.hpp"
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

std::string labelOf(const Truss& truss, JointId joint) {
    return joint.valid() ? truss.joints[joint.at()].label : "";
}

std::string titleOf(const AppState& state, const Picked& picked) {
    const PhraseBook& book = *state.book;
    const Truss& truss = state.truss;
    const auto at = static_cast<std::size_t>(picked.index);
    switch (picked.kind) {
    case HitKind::Joint:
        return sayPlain(book, phrase::kTheJoint, {{"joint", truss.joints[at].label}});
    case HitKind::Member:
        return sayPlain(book, phrase::kThatMember,
                        {{"member", memberName(truss, MemberId{picked.index})}});
    case HitKind::Support:
        return sayPlain(
            book, truss.supports[at].kind == SupportKind::Pin ? phrase::kPinAt : phrase::kRollerAt,
            {{"joint", labelOf(truss, truss.supports[at].joint)}});
    case HitKind::Load: {
        const JointId joint = jointOf(truss.loads[at]);
        return joint.valid()
                   ? sayPlain(book, phrase::kThatLoadAt, {{"joint", labelOf(truss, joint)}})
                   : sayPlain(book, phrase::kThatLoad);
    }
    case HitKind::None:
        break;
    }
    return "";
}

std::string forceFact(const PanelContext& context, const ForceRow& row) {
    if (row.sense == Sense::Zero) {
        return words(context, phrase::kFactNoForce);
    }
    return sayPlain(*context.state.book,
                    row.sense == Sense::Tension ? phrase::kFactTension : phrase::kFactCompression,
                    {{"value", quantity(row.value, symbolOf(context.state.truss.units.force))}});
}

std::string memberFacts(const PanelContext& context, int member) {
    const Truss& truss = context.state.truss;
    std::string facts =
        quantity(formatNumber(length(memberVector(truss, MemberId{member})), numberStyleOf(truss)),
                 symbolOf(truss.units.length));
    for (const ForceRow& row : context.derived.forces) {
        if (row.member.index == member) {
            facts += " · " + forceFact(context, row);
        }
    }
    return facts;
}

struct Figure { // a value to type, with its name before it
    Phrase<> name;
    int column = 0;
};
std::vector<Figure> figuresOf(const Truss& truss, const Picked& picked) {
    switch (picked.kind) {
    case HitKind::Joint:
        return {{phrase::kSignX, column::kJointX}, {phrase::kSignY, column::kJointY}};
    case HitKind::Support:
        return {{phrase::kPushesAt, column::kSupportDirection}};
    case HitKind::Load: {
        const Load& load = truss.loads[static_cast<std::size_t>(picked.index)];
        if (std::holds_alternative<AngledForce>(load.what)) {
            return {{phrase::kSize, column::kLoadFirst}, {phrase::kAngle, column::kLoadSecond}};
        }
        return {{phrase::kSignAcross, column::kLoadFirst}, {phrase::kSignUp, column::kLoadSecond}};
    }
    case HitKind::Member:
    case HitKind::None:
        break;
    }
    return {};
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
    std::vector<Figure> list = figuresOf(truss, picked);
    const CellTable table = tableOf(picked.kind);
    std::erase_if(list, [&](const Figure& figure) {
        return !canType(truss, {table, picked.index, figure.column});
    });
    const float each =
        (room.high.x - room.low.x) / std::max<float>(2, static_cast<float>(list.size()));
    float x = room.low.x;
    for (const Figure& figure : list) {
        const float y = (room.low.y + room.high.y) / 2;
        const float left =
            stripWords(ui, *ui.fonts.small, {x, y}, words(context, figure.name), ui.palette->muted);
        const Cell cell{table, picked.index, figure.column};
        FieldLook look;
        look.key = kPickedPrefix + keyOf(cell);
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
    if (button(context.ui, words(context, phrase::kWhy))) {
        turnTo(WorkingPage::OneForce, context.actions);
    }
}

bool hasWhy(const PanelContext& context, const Picked& picked) {
    return context.derived.solution.solved &&
           (picked.kind == HitKind::Member || picked.kind == HitKind::Support);
}

void removeIt(PanelContext& context, const Picked& picked) {
    const std::string label = sayPlain(*context.state.book, phrase::kRemoveThat,
                                       {{"what", titleOf(context.state, picked)}}) +
                              "###remove picked";
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
                               titleOf(context.state, picked), ui.palette->ink);
    const bool asks = hasWhy(context, picked);
    const float right = high.x - ui.px(kRemoveWidth + 4) -
                        (asks ? buttonWidth(ui, words(context, phrase::kWhy)) + ui.px(6) : 0);
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
