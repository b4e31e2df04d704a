#include "panels/pages/working_steps.hpp"

#include "panels/frame/tabs.hpp"
#include "panels/pages/passages.hpp"
#include "ui/sketch_view.hpp"

#include <algorithm>
#include <string>
#include <variant>

namespace gusset {
namespace {

constexpr double kInColumn = 1.5;     // largest magnification of a drawing in the column
constexpr double kReaderLeast = 0.25; // of the height, in reading mode
constexpr double kReaderMost = 0.5;
constexpr double kStepIndent = 14; // CSS px
constexpr const char* kWordsHeight = "height of the words";

// Only what follows from the current body is shown, below the drawing of it.
bool showsBodyAlone(const PanelContext& context) { return context.layout.reading; }

// So that a body and its equations are seen together, the drawings get the height that the words
// around them leave, which is known from the previous frame.
SketchLook sketchLook(const PanelContext& context) {
    if (!showsBodyAlone(context)) {
        return {.largest = kInColumn};
    }
    const float words = ImGui::GetStateStorage()->GetFloat(ImGui::GetID(kWordsHeight), 0);
    const double high = ImGui::GetWindowHeight();
    const double left = std::clamp(high - words, kReaderLeast * high, kReaderMost * high);
    return {.largest = kInColumn, .tallest = left / context.ui.px(1)};
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

// One step; the current one has a mark in the margin. Pressing a step makes it the current one, but
// a finger that reads them one by one may rest on them.
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
    if (pressed && !(context.layout.reading && !context.state.notebook.wholeWorking)) {
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
struct StepColumn {
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

// Whether the step has to be brought into view: it was newly chosen, or was in view before the
// window changed its size.
bool isToFollow(int step, bool inView) {
    ImGuiStorage& memory = *ImGui::GetStateStorage();
    int& followed = *memory.GetIntRef(ImGui::GetID("step followed"), -1);
    bool& wasInView = *memory.GetBoolRef(ImGui::GetID("step.in_view"));
    float& width = *memory.GetFloatRef(ImGui::GetID("step.width"));
    float& height = *memory.GetFloatRef(ImGui::GetID("step.height"));
    const ImVec2 now = ImGui::GetWindowSize();
    const bool resized = width != now.x || height != now.y;
    const bool follows = followed != step || (resized && wasInView);
    followed = step;
    width = now.x;
    height = now.y;
    wasInView = follows || inView;
    return follows;
}

// `moves`: device px by which the step will have moved down in the next frame.
void follow(const Ui& ui, int step, float top, float moves) {
    const float bottom = ImGui::GetCursorScreenPos().y;
    const float windowTop = ImGui::GetWindowPos().y;
    const float height = ImGui::GetWindowHeight();
    if (!isToFollow(step, bottom > windowTop && top < windowTop + height)) {
        return;
    }
    if (top < windowTop || bottom - top > height) {
        ImGui::SetScrollFromPosY(top - windowTop - ui.px(4) + moves, 0);
    } else if (bottom > windowTop + height) {
        ImGui::SetScrollFromPosY(bottom - windowTop + ui.px(8) + moves, 1);
    }
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

// Step by step, the earlier ones stay visible where there is room.
Span shownSpan(const PanelContext& context, const std::optional<StepPlace>& place) {
    if (!place || context.state.notebook.wholeWorking) {
        return {0, stepsOf(context.derived.working)};
    }
    const int from = showsBodyAlone(context) ? drawnFrom(context.derived.working, place->step) : 0;
    return {from, place->step + 1};
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
void leafByFinger(PanelContext& context, const StepPlace& place) {
    const int to = place.step + leafedByFinger(context.ui);
    if (to != place.step && to >= 0 && to < place.count) {
        setStep(context, to);
    }
}

} // namespace

void workingSteps(PanelContext& context, const std::optional<StepPlace>& place) {
    const auto page = static_cast<int>(context.state.notebook.working);
    beginScroll(context.ui, ("working " + std::to_string(page)).c_str());
    if (place) {
        leafByFinger(context, *place);
    }
    const Ui& ui = context.ui;
    const Span span = shownSpan(context, place);
    const SketchLook look = sketchLook(context);
    const float begin = ImGui::GetCursorPosY();
    const float room = ImGui::GetContentRegionAvail().x;
    prepare(context.heights,
            {context.derived.working.serial, room, ui.fonts.body->FontSize,
             static_cast<float>(look.tallest)},
            context.derived.working.passages.size());
    StepColumn steps{context, look};
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    for (int i = span.begin; i < span.end; ++i) {
        const float top = ImGui::GetCursorScreenPos().y;
        const bool current = place && i == place->step;
        steps.step(i, current);
        if (current) {
            follow(ui, i, top, steps.all);
        }
    }
    steps.end();
    ImGui::PopStyleVar();
    gap(ui, 16);
    if (showsBodyAlone(context)) {
        keepWordsHeight(context, span, look, ImGui::GetCursorPosY() - begin);
    }
    endScroll();
}

} // namespace gusset
