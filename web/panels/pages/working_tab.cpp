#include "panels/frame/panel_context.hpp"
#include "panels/frame/tabs.hpp"
#include "panels/pages/passages.hpp"
#include "panels/pages/working_steps.hpp"
#include "phrases/working.hpp"
#include "ui/sketch_view.hpp"

#include <algorithm>
#include <array>
#include <span>

namespace gusset {
namespace {

void bar(PanelContext& context, const StepPlace& place) {
    previousStep(context, place);
    ImGui::SameLine();
    nextStep(context, place, {});
    ImGui::SameLine();
    besideButtons(context.ui, stepOfMany(context, place));
    ImGui::SameLine();
    allSteps(context);
    rule(context.ui);
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

// The polygon as far as it is drawn; a touch on one of its lines selects its member.
void polygon(PanelContext& context) {
    const Ui& ui = context.ui;
    const ShownWorking& shown = context.derived.working;
    beginScroll(ui, "polygon");
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
    if (!shownStep(context.state, context.derived)) {
        nothingToShow(context);
        return;
    }
    sentences(context, context.derived.warningsOfWorking, context.derived.warningsOfWorking);
    const std::optional<StepPlace> place = stepPlace(context.state, context.derived);
    if (place && !context.layout.reading) {
        bar(context, *place);
    }
    if (!context.derived.working.polygon.lines.empty()) {
        polygon(context);
        return;
    }
    workingSteps(context, place);
}

} // namespace gusset
