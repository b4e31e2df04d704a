#include "canvas/hands/heard.hpp"

#include "app/derived/thing_text.hpp"
#include "app/fields/typed_text.hpp"
#include "canvas/hands/arrange.hpp"
#include "canvas/hands/board_menu.hpp"
#include "core/number.hpp"
#include "phrases/frame.hpp"
#include "phrases/heard.hpp"
#include "phrases/tools.hpp"
#include "report/lesson/spoken.hpp"
#include "report/results/results_text.hpp"

#include <array>
#include <cmath>
#include <string_view>
#include <utility>

namespace gusset {
namespace {

// The joint that is elsewhere than before, if it is only one.
JointId movedJoint(const Truss& before, const Truss& after) {
    JointId moved;
    if (before.joints.size() != after.joints.size()) {
        return moved;
    }
    for (std::size_t i = 0; i < after.joints.size(); ++i) {
        if (before.joints[i].at != after.joints[i].at) {
            if (moved.valid()) {
                return {};
            }
            moved = JointId{static_cast<int>(i)};
        }
    }
    return moved;
}

std::string stepHeard(const AppState& state) {
    const PhraseBook& book = *state.book;
    const std::string name = said(book, state.lastStep.name);
    if (state.lastStep.kind == HistoryMove::Undone) {
        return sayPlain(book, phrase::kHeardUndone, {{"step", name}});
    }
    if (state.lastStep.kind == HistoryMove::Redone) {
        return sayPlain(book, phrase::kHeardRedone, {{"step", name}});
    }
    const auto& past = state.history.past();
    const JointId moved = past.empty() ? JointId{} : movedJoint(past.back().truss, state.committed);
    if (!moved.valid()) {
        return sayPlain(book, phrase::kHeardDone, {{"step", name}});
    }
    const Joint& joint = state.committed.joints[moved.at()];
    const NumberStyle style = typedStyleOf(state.committed);
    return sayPlain(book, phrase::kHeardMoved,
                    {{"joint", joint.label},
                     {"x", formatNumber(joint.at.x, style)},
                     {"y", formatNumber(joint.at.y, style)}});
}

const ForceRow* largestOf(const std::vector<ForceRow>& rows, Sense sense) {
    const ForceRow* largest = nullptr;
    for (const ForceRow& row : rows) {
        const bool more = largest == nullptr || std::fabs(row.force) > std::fabs(largest->force);
        largest = row.sense == sense && more ? &row : largest;
    }
    return largest;
}

// Empty if there are no forces to speak of.
std::string largestForces(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    const ForceRow* pulled = largestOf(derived.forces, Sense::Tension);
    const ForceRow* pushed = largestOf(derived.forces, Sense::Compression);
    const auto sizeOf = [&](const ForceRow& row) {
        return withUnit(row.size, symbolOf(state.truss.units.force));
    };
    if (pulled && pushed) {
        return sayPlain(book, phrase::kHeardLargestBoth,
                        {{"tension", sizeOf(*pulled)},
                         {"pulled", pulled->name},
                         {"compression", sizeOf(*pushed)},
                         {"pushed", pushed->name}});
    }
    if (const ForceRow* one = pulled ? pulled : pushed) {
        return sayPlain(book,
                        pulled ? phrase::kHeardLargestTension : phrase::kHeardLargestCompression,
                        {{"force", sizeOf(*one)}, {"member", one->name}});
    }
    return derived.forces.empty() ? std::string() : sayPlain(book, phrase::kHeardNoForces);
}

std::string then(const PhraseBook& book, const std::string& what, const std::string& news) {
    return news.empty() ? what
                        : sayPlain(book, phrase::kHeardThen, {{"what", what}, {"news", news}});
}

std::string menuHeard(const AppState& state, bool opens) {
    const PhraseBook& book = *state.book;
    const std::vector<MenuLine> lines = boardMenuLines(state);
    const std::size_t lit = state.menu.lit.value_or(0);
    if (lit >= lines.size()) {
        return {};
    }
    const std::string line =
        sayPlain(book, phrase::kHeardLine,
                 {{"line", lines[lit].label}, {"i", lit + 1}, {"n", lines.size()}});
    return opens ? sayPlain(book, phrase::kHeardMenu,
                            {{"title", boardMenuTitle(state)}, {"line", line}})
                 : line;
}

std::string pickedHeard(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    const Hit one = onlyOne(state.selection);
    if (one && isThere(state.truss, *one)) {
        return thingHeard(state, derived, *one);
    }
    return state.selection.empty()
               ? sayPlain(book, phrase::kHeardNonePicked)
               : sayPlain(book, phrase::kHeardPicked, {{"what", selectionText(state)}});
}

struct PanelName {
    std::string_view window;
    Phrase<> name;
};
constexpr std::array kPanelNames{
    PanelName{"header", phrase::kPanelHeader},   PanelName{"beginning", phrase::kPanelBeginning},
    PanelName{"tools", phrase::kPanelTools},     PanelName{"picked", phrase::kPanelPicked},
    PanelName{"several", phrase::kPanelPicked},  PanelName{"notebook", phrase::kPanelNotebook},
    PanelName{"message", phrase::kPanelMessage},
};

std::string itemHeard(const PhraseBook& book, const FocusedItem& item, bool entersPanel) {
    std::string text = item.name;
    for (const auto& [heading, value] : item.cells) {
        const std::string cell = heading.empty() ? value
                                                 : sayPlain(book, phrase::kHeardValue,
                                                            {{"name", heading}, {"value", value}});
        text = text.empty() ? cell
                            : sayPlain(book, phrase::kHeardMore, {{"what", text}, {"more", cell}});
    }
    if (item.state == ItemState::Chosen) {
        text = sayPlain(book, phrase::kHeardChosen, {{"item", text}});
    } else if (item.state != ItemState::Plain) {
        text = sayPlain(book, item.state == ItemState::On ? phrase::kHeardOn : phrase::kHeardOff,
                        {{"item", text}});
    }
    for (const PanelName& panel : kPanelNames) {
        if (entersPanel && panel.window == item.panel && !text.empty()) {
            return sayPlain(book, phrase::kHeardInPanel,
                            {{"panel", sayPlain(book, panel.name)}, {"item", text}});
        }
    }
    return text;
}

HeardStep stepOnScreen(const AppState& state, const Derived& derived) {
    const NotebookState& notebook = state.notebook;
    const std::optional<int> step = shownStep(state, derived);
    const bool onScreen = notebook.open && notebook.tab == NotebookTab::Working &&
                          notebook.working != WorkingPage::Settings && !notebook.wholeWorking;
    return {onScreen && step.has_value(), notebook.working, step.value_or(0)};
}

std::string workingHeard(const AppState& state, const Derived& derived, int step) {
    const PhraseBook& book = *state.book;
    const ShownWorking& shown = derived.working;
    const bool draws = !shown.polygon.lines.empty();
    const std::string says =
        draws ? shown.drawingSays
              : spokenPassage(book, shown.passages[static_cast<std::size_t>(step)]);
    return sayPlain(book, phrase::kHeardStep,
                    {{"i", step + 1}, {"n", stepsOf(shown)}, {"step", says}});
}

// Everything that can be said of the state, noted as heard.
Heard allOf(const Heard& before, const AppState& state, const Derived& derived,
            const FocusedItem& item) {
    Heard now = before;
    now.message = state.message.serial;
    now.step = state.lastStep.serial;
    if (before.revision != state.revision || before.choice != state.choice) {
        now.revision = state.revision;
        now.choice = state.choice;
        now.verdict = derived.verdict.empty() ? "" : newsOf(derived);
        now.largest = largestForces(state, derived);
    }
    if (showsInfluence(state) && derived.influence.report) {
        now.reading = derived.influence.reading;
    }
    now.picked = state.selection;
    now.menu = state.menu;
    now.drawing = state.chain.active;
    now.item = item;
    if (isShown(state, derived.working)) { // else it is being made, and said when it is ready
        now.working = stepOnScreen(state, derived);
    }
    return now;
}

std::string itemNews(const Heard& before, const Heard& now, const PhraseBook& book) {
    if (now.item.panel.empty()) {
        return sayPlain(book, phrase::kHeardBoard);
    }
    return itemHeard(book, now.item, now.item.panel != before.item.panel);
}

} // namespace

std::string announcement(Heard& heard, const AppState& state, const Derived& derived,
                         const FocusedItem& item) {
    const PhraseBook& book = *state.book;
    const Heard now = allOf(heard, state, derived, item);
    const Heard before = std::exchange(heard, now);
    const std::string news = now.verdict != before.verdict   ? now.verdict
                             : now.largest != before.largest ? now.largest
                                                             : std::string();
    if (now.message != before.message && !state.message.text.empty()) {
        return state.message.text;
    }
    if (now.step != before.step) {
        return then(book, stepHeard(state), news);
    }
    if (now.menu != before.menu && now.menu.open) {
        return menuHeard(state, !before.menu.open || now.menu.page != before.menu.page);
    }
    if (now.drawing && !before.drawing) {
        return sayPlain(book,
                        state.chain.byFinger ? phrase::kNextPlaceByFinger : phrase::kNextPlace);
    }
    if (now.picked != before.picked) {
        return pickedHeard(state, derived);
    }
    if (now.working != before.working && now.working.onScreen) {
        return workingHeard(state, derived, now.working.step);
    }
    if (!news.empty()) {
        return news;
    }
    if (now.item != before.item) {
        return itemNews(before, now, book);
    }
    if (now.menu.open != before.menu.open) {
        return sayPlain(book, phrase::kHeardMenuClosed);
    }
    return now.reading != before.reading ? now.reading : std::string();
}

} // namespace gusset
