#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/passages.hpp"
#include "phrases/working.hpp"
#include "ui/sketch_view.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <variant>

namespace gusset {
namespace {

constexpr double kInColumn = 1.5;       // largest magnification of a drawing in the column
constexpr double kProjected = 3;        // the same on a projector
constexpr double kProjectedLeast = 0.3; // of the available height
constexpr double kProjectedMost = 0.65;
constexpr double kStepIndent = 14; // CSS px
constexpr const char* kWordsHeight = "height of the words";

void setStep(PanelContext& context, int step) {
    context.actions.push_back(Set{&NotebookState::step, step});
}

void bar(PanelContext& context, int step, int count) {
    const Ui& ui = context.ui;
    if (button(ui, words(context, phrase::kPreviousStep),
               {.icon = Icon::Previous, .showText = false, .enabled = step > 0})) {
        setStep(context, step - 1);
    }
    ImGui::SameLine();
    if (button(ui, words(context, phrase::kNextStep),
               {.icon = Icon::Next,

                .enabled = step + 1 < count,
                .primary = true})) {
        setStep(context, step + 1);
    }
    ImGui::SameLine();
    besideButtons(
        ui, sayPlain(*context.state.book, phrase::kOneOfMany, {{"i", step + 1}, {"n", count}}));
    ImGui::SameLine();
    const bool whole = context.state.notebook.wholeWorking;
    if (toggle(ui, words(context, phrase::kAllSteps), whole)) {
        context.actions.push_back(Set{&NotebookState::wholeWorking, !whole});
    }
    rule(ui);
}

// On a projector the drawings get all the height that the words around them leave, which is known
// from the previous frame.
SketchLook sketchLook(const PanelContext& context) {
    if (!context.state.view.presenting) {
        return {.largest = kInColumn};
    }
    const float words = ImGui::GetStateStorage()->GetFloat(ImGui::GetID(kWordsHeight), 0);
    const double high = ImGui::GetWindowHeight();
    const double left = std::clamp(high - words, kProjectedLeast * high, kProjectedMost * high);
    return {.largest = kProjected, .tallest = left / context.ui.px(1)};
}

float drawingsHeight(const Ui& ui, const Passage& passage, const SketchLook& look, float room) {
    float height = 0;
    for (const auto& part : passage.parts) {
        if (const auto* sketch = std::get_if<Sketch>(&part)) {
            height += sketchHeight(ui, *sketch, look, room);
        }
    }
    return height;
}

// The assumed height of a passage not laid out yet, CSS px; corrected as soon as it is.
constexpr double kUsualPassage = 150;
constexpr int kLaidOutAhead = 40; // passages out of sight, per frame

// One step; the current one has a mark in the margin. Pressing a step makes it the current one.
void stepLines(PanelContext& context, int index, bool current, const SketchLook& look) {
    const Ui& ui = context.ui;
    ImGui::PushID(index);
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const float width = ImGui::GetContentRegionAvail().x;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    list.ChannelsSplit(2);
    list.ChannelsSetCurrent(1);
    ImGui::Indent(ui.px(kStepIndent));
    gap(ui, 4);
    const auto at = static_cast<std::size_t>(index);
    drawPassage(ui, index, context.derived.working.passages[at], look,
                &context.heights.passages[at].pieces);
    gap(ui, 8);
    ImGui::Unindent(ui.px(kStepIndent));
    const ImVec2 end = ImGui::GetCursorScreenPos();
    ImGui::SetCursorScreenPos(low);
    const bool pressed = ImGui::InvisibleButton("step", {width, std::max(end.y - low.y, 1.0f)});
    list.ChannelsSetCurrent(0);
    if (current) {
        list.AddRectFilled(low, {low.x + width, end.y}, packed(ui.palette->accentWash));
        list.AddRectFilled(low, {low.x + ui.px(4), end.y}, packed(ui.palette->accent));
    } else if (ImGui::IsItemHovered()) {
        list.AddRectFilled(low, {low.x + width, end.y}, packed(ui.palette->wash));
    }
    list.ChannelsMerge();
    if (showsFocus()) {
        drawFocus(ui, plainText(context.derived.working.passages[at].title));
    }
    if (pressed) {
        setStep(context, index);
    }
    ImGui::PopID();
}

// A step out of sight keeps its room, and can still be reached with the keyboard.
void stepRoom(PanelContext& context, int index, float height) {
    ImGui::PushID(index);
    if (ImGui::InvisibleButton("step", {ImGui::GetContentRegionAvail().x, height})) {
        setStep(context, index);
    }
    ImGui::PopID();
}

// Steps one below the other, laid out where they are visible. A few others are laid out in advance
// in each frame; the view is scrolled by any change in the height above it.
struct Column {
    PanelContext& context;
    const SketchLook& look;
    int ahead = kLaidOutAhead;
    float above = 0; // device px by which the height above the visible part was underestimated
    float all = 0;   // the same for the whole

    void step(int index, bool current) {
        PassageHeights& heights = context.heights.passages[static_cast<std::size_t>(index)];
        const bool known = heights.whole > 0;
        const float room = known ? heights.whole : context.ui.px(kUsualPassage);
        const bool hidden = isOutOfSight(room) && (known || !current);
        if (hidden && (known || ahead == 0)) {
            context.requests.drawAgain = context.requests.drawAgain || !known;
            stepRoom(context, index, room);
            return;
        }
        const ImVec2 top = ImGui::GetCursorScreenPos();
        const bool isAbove = top.y < ImGui::GetWindowPos().y;
        stepLines(context, index, current, look);
        heights.whole = ImGui::GetCursorScreenPos().y - top.y;
        if (hidden) { // for this frame it keeps the height it had
            --ahead;
            context.requests.drawAgain = true;
            ImGui::SetCursorScreenPos({top.x, top.y + room});
            all += heights.whole - room;
            above += isAbove ? heights.whole - room : 0;
        }
    }
    void end() const {
        if (all != 0) {
            ImGui::SetCursorPosY(ImGui::GetCursorPosY() + all);
            scrollOn(above);
        }
    }
};

// A newly chosen step is scrolled into view, once. `moves`: device px by which it will have moved
// down in the next frame.
void follow(const Ui& ui, int step, float top, float moves) {
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    const ImGuiID slot = ImGui::GetID("step followed");
    if (memory.GetInt(slot, -1) == step) {
        return;
    }
    memory.SetInt(slot, step);
    const float bottom = ImGui::GetCursorScreenPos().y;
    const float windowTop = ImGui::GetWindowPos().y;
    const float height = ImGui::GetWindowHeight();
    if (top < windowTop || bottom - top > height) {
        ImGui::SetScrollFromPosY(top - windowTop - ui.px(4) + moves, 0);
    } else if (bottom > windowTop + height) {
        ImGui::SetScrollFromPosY(bottom - windowTop + ui.px(8) + moves, 1);
    }
}

WorkingPage pageChoice(PanelContext& context) {
    constexpr std::array<Phrase<>, 5> kPages{phrase::kPageTruss, phrase::kPageForce,
                                             phrase::kPageDisplacement, phrase::kPagePolygon,
                                             phrase::kPageSettings};
    const int now = static_cast<int>(context.state.notebook.working);
    const int chosen = wordChoice(context.ui, "workings", words(context, kPages), now);
    if (chosen != now) {
        turnTo(static_cast<WorkingPage>(chosen), context.actions);
    }
    return context.state.notebook.working;
}

// A choice of two methods, stored in `setting`; changing it returns to the first step.
void eitherOf(PanelContext& context, const char* id, std::span<const char* const> ways,
              bool NotebookState::*setting) {
    const bool now = context.state.notebook.*setting;
    const bool chosen = wordChoice(context.ui, id, ways, now ? 1 : 0) == 1;
    if (chosen != now) {
        context.actions.push_back(Set{setting, chosen});
        context.actions.push_back(Set{&NotebookState::step, 0});
    }
}

// The force method, or how the forces of one state of its released truss were found.
void releasedStates(PanelContext& context) {
    const bool two = context.derived.working.redundants == 2;
    const std::array kStates{phrase::kMethodItself, phrase::kStateGiven,
                             two ? phrase::kStateFirst : phrase::kStateRedundant,
                             phrase::kStateSecond};
    const auto all = words(context, kStates);
    const std::size_t count = two ? all.size() : all.size() - 1;
    const int now = std::min(context.state.notebook.releasedState, static_cast<int>(count) - 1);
    const int chosen = wordChoice(context.ui, "states", std::span(all).first(count), now);
    if (chosen != now) {
        context.actions.push_back(Set{&NotebookState::releasedState, chosen});
        context.actions.push_back(Set{&NotebookState::step, 0});
    }
}

// The options of a page.
void pageOptions(PanelContext& context, WorkingPage page) {
    if (page == WorkingPage::Truss && context.derived.working.redundants > 0) {
        releasedStates(context);
    }
    if (page == WorkingPage::OneForce && context.state.selection.members.size() == 1) {
        constexpr std::array<Phrase<>, 2> kWays{phrase::kShortestWay, phrase::kByASection};
        eitherOf(context, "way", words(context, kWays), &NotebookState::bySection);
    }
    if (page == WorkingPage::Displacement) {
        constexpr std::array<Phrase<>, 2> kAxes{phrase::kVertical, phrase::kHorizontal};
        eitherOf(context, "axis", words(context, kAxes), &NotebookState::horizontal);
    }
}

// A table is read as a whole, a derivation or a drawing step by step.
bool goesByStep(WorkingPage page) { return page != WorkingPage::Displacement; }

// The polygon as far as it is drawn; a touch on one of its lines selects its member.
void polygon(PanelContext& context) {
    const Ui& ui = context.ui;
    const ShownWorking& shown = context.derived.working;
    beginScroll(ui, "working");
    (void)drawSketch(ui, "spaces", shown.spaces);
    gap(ui, 8);
    const std::optional<Vec2> at =
        drawSketch(ui, "polygon", shown.drawing.sketch, {.readable = true});
    if (at) {
        const auto line = polygonLineAt(shown.drawing, *at, kTouchTarget / 2);
        const MemberId member = line ? shown.polygon.lines[*line].member : MemberId{};
        if (member.valid() && !holds(context.state.selection, member)) {
            context.actions.push_back(SetSelection{thingsOf(member)});
        }
    }
    if (!shown.drawingSays.empty()) {
        gap(ui, 4);
        paragraph(ui, shown.drawingSays);
    }
    gap(ui, 8);
    drawPassage(ui, 0, shown.passages.front());
    gap(ui, 16);
    endScroll();
}

void nothingToShow(PanelContext& context) {
    gap(context.ui, 4);
    if (!context.derived.working.asks.empty()) {
        paragraph(context.ui, context.derived.working.asks);
        return;
    }
    verdictInstead(context);
}

struct Span { // of passages; `end` is excluded
    int begin = 0;
    int end = 0;
};

bool hasSketch(const Passage& passage) {
    return std::any_of(passage.parts.begin(), passage.parts.end(),
                       [](const auto& part) { return std::holds_alternative<Sketch>(part); });
}

// The passage where the body that this step refers to was drawn: it stays visible with what follows
// from it.
int drawnFrom(const ShownWorking& shown, int step) {
    const std::vector<Step>& steps = shown.working.steps;
    const auto at = [](int index) { return static_cast<std::size_t>(index); };
    if (at(step) >= steps.size() || at(step) >= shown.passages.size()) {
        return step;
    }
    int from = step;
    while (from > 0 && !hasSketch(shown.passages[at(from)]) &&
           steps[at(from - 1)].body == steps[at(step)].body) {
        --from;
    }
    return hasSketch(shown.passages[at(from)]) ? from : step;
}

// Step by step, the earlier ones stay visible, but on a projector the current body has all the
// room.
Span shownSpan(const PanelContext& context, std::optional<int> step, int count) {
    if (!step || context.state.notebook.wholeWorking) {
        return {0, count};
    }
    const bool alone = context.state.view.presenting;
    return {alone ? drawnFrom(context.derived.working, *step) : 0, *step + 1};
}

// `height`: of everything shown.
void keepWordsHeight(PanelContext& context, const Span& span, const SketchLook& look,
                     float height) {
    const float room = ImGui::GetContentRegionAvail().x - context.ui.px(kStepIndent);
    for (int i = span.begin; i < span.end; ++i) {
        const Passage& passage = context.derived.working.passages[static_cast<std::size_t>(i)];
        height -= drawingsHeight(context.ui, passage, look, room);
    }
    ImGui::GetStateStorage()->SetFloat(ImGui::GetID(kWordsHeight), height);
}

// A swipe leafs forward or back.
void leafByFinger(PanelContext& context, int step, int count) {
    const int to = step + leafedByFinger(context.ui);
    if (to != step && to >= 0 && to < count) {
        setStep(context, to);
    }
}

void passages(PanelContext& context, std::optional<int> step, int count) {
    beginScroll(context.ui, "working");
    if (step) {
        leafByFinger(context, *step, count);
    }
    const Ui& ui = context.ui;
    const Span span = shownSpan(context, step, count);
    const SketchLook look = sketchLook(context);
    const float begin = ImGui::GetCursorPosY();
    const float room = ImGui::GetContentRegionAvail().x;
    prepare(context.heights,
            {context.derived.working.serial, room, ui.fonts.body->FontSize,
             static_cast<float>(look.tallest)},
            static_cast<std::size_t>(count));
    Column column{context, look};
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    for (int i = span.begin; i < span.end; ++i) {
        const float top = ImGui::GetCursorScreenPos().y;
        column.step(i, i == step);
        if (i == step) {
            follow(ui, *step, top, column.all);
        }
    }
    column.end();
    ImGui::PopStyleVar();
    gap(ui, 16);
    if (context.state.view.presenting) {
        keepWordsHeight(context, span, look, ImGui::GetCursorPosY() - begin);
    }
    endScroll();
}

} // namespace

void workingTab(PanelContext& context) {
    const WorkingPage page = pageChoice(context);
    if (page == WorkingPage::Settings) {
        classSettings(context);
        return;
    }
    pageOptions(context, page);
    if (!isShown(context.state, context.derived.working)) {
        progressOf(context, context.derived.jobs.working);
        return;
    }
    const std::optional<int> step = shownStep(context.state, context.derived);
    if (!step) {
        nothingToShow(context);
        return;
    }
    sentences(context, context.derived.warningsOfWorking, context.derived.warningsOfWorking);
    const int count = stepsOf(context.derived.working);
    const bool byStep = goesByStep(page) && count > 1;
    if (byStep) {
        bar(context, *step, count);
    }
    if (!context.derived.working.polygon.lines.empty()) {
        polygon(context);
        return;
    }
    passages(context, byStep ? step : std::nullopt, count);
}

} // namespace gusset
