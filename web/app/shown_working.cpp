#include "app/shown_working.hpp"

#include "hand/explain.hpp"
#include "hand/force_method.hpp"
#include "hand/force_polygon.hpp"
#include "hand/sections.hpp"
#include "hand/unit_load.hpp"
#include "report/force_method_text.hpp"
#include "report/force_polygon_text.hpp"
#include "report/movement_text.hpp"
#include "report/unit_load_text.hpp"
#include "report/working_text.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

constexpr double kPolygonSide = 300; // px: the column is a little wider

// Selecting something on the board doesn't change the working of the whole truss.
Things aboutFor(const AppState& state) {
    const WorkingPage page = state.notebook.working;
    return page == WorkingPage::OneForce || page == WorkingPage::Displacement ? state.selection
                                                                              : Things{};
}

struct Maker {
    const AppState& state;
    const Solution& solution;
    ShownWorking& shown;

    [[nodiscard]] const Truss& truss() const { return state.truss; }
    [[nodiscard]] const PhraseBook& book() const { return *state.book; }

    void steps(Working working) {
        shown.passages = workingPassages(book(), truss(), working, SketchPaper::Column);
        shown.working = std::move(working);
    }
    void ask(Phrase phrase) { shown.asks = sayPlain(book(), phrase); }
};

void makeTruss(Maker& maker) {
    if (maker.solution.status == Status::Indeterminate) {
        maker.shown.passages =
            forceMethodPassages(maker.book(), maker.truss(),
                                forceMethod(maker.truss(), maker.state.choice, maker.solution));
        return;
    }
    maker.steps(workOut(maker.truss(), maker.state.choice, maker.solution));
}

bool isAt(const Working& working, const Symbol& symbol, JointId joint) {
    return symbol.kind == SymbolKind::Reaction && symbol.joint == joint &&
           symbol.restraint < static_cast<int>(working.structure.restraints.size());
}

std::vector<Symbol> reactionsAt(const Working& working, JointId joint) {
    std::vector<Symbol> symbols;
    for (const Step& step : working.steps) {
        for (const Found& found : step.found) {
            if (isAt(working, found.symbol, joint) &&
                std::find(symbols.begin(), symbols.end(), found.symbol) == symbols.end()) {
                symbols.push_back(found.symbol);
            }
        }
    }
    return symbols;
}

// The joint whose reactions are asked for: a support that is picked, or its joint.
JointId supportedJoint(const AppState& state) {
    const Things& picked = state.selection;
    if (!picked.supports.empty()) {
        return state.truss.supports[picked.supports.front().at()].joint;
    }
    for (const Support& support : state.truss.supports) {
        if (!picked.joints.empty() && support.joint == picked.joints.front()) {
            return support.joint;
        }
    }
    return {};
}

void makeOneForce(Maker& maker) {
    const AppState& state = maker.state;
    const std::vector<MemberId>& members = state.selection.members;
    if (members.size() > 1) {
        maker.steps(workCut(maker.truss(), state.choice, maker.solution, members));
        return;
    }
    if (members.size() == 1) {
        maker.steps(state.notebook.bySection
                        ? workSection(maker.truss(), state.choice, maker.solution, members.front())
                        : explain(maker.truss(), state.choice, maker.solution,
                                  {SymbolKind::MemberForce, members.front()}));
        return;
    }
    const JointId joint = supportedJoint(state);
    if (!joint.valid()) {
        maker.ask(Phrase::PickForce);
        return;
    }
    const Working whole = workOut(maker.truss(), state.choice, maker.solution);
    maker.steps(stepsFor(whole, reactionsAt(whole, joint)));
}

void makeDisplacement(Maker& maker) {
    const AppState& state = maker.state;
    const bool picked = !state.selection.joints.empty();
    const JointId joint = picked ? state.selection.joints.front() : furthestJoint(maker.solution);
    if (!joint.valid()) {
        maker.ask(Phrase::PickJoint);
        return;
    }
    const DisplacementAxis axis =
        state.notebook.horizontal ? DisplacementAxis::X : DisplacementAxis::Y;
    maker.shown.passages = {
        unitLoadPassage(maker.book(), maker.truss(),
                        unitLoadTable(maker.truss(), state.choice, maker.solution, joint, axis))};
}

void makePolygon(Maker& maker) {
    ForcePolygon polygon = forcePolygon(maker.truss(), maker.state.choice, maker.solution);
    maker.shown.passages = {forcePolygonPassage(maker.book(), maker.truss(), polygon)};
    if (polygon.refusal == PolygonRefusal::None) {
        const Working working = workOut(maker.truss(), maker.state.choice, maker.solution);
        maker.shown.spaces = spacesSketch(notationOf(maker.book(), maker.truss(), working), polygon,
                                          SketchPaper::Column);
    }
    maker.shown.polygon = std::move(polygon);
}

int litLine(const AppState& state, const ForcePolygon& polygon) {
    const std::vector<MemberId>& members = state.selection.members;
    for (std::size_t i = 0; members.size() == 1 && i < polygon.lines.size(); ++i) {
        if (polygon.lines[i].member == members.front()) {
            return static_cast<int>(i);
        }
    }
    return -1;
}

// As far as the step that is looked at, with the line of the picked member standing out.
void drawPolygon(const AppState& state, ShownWorking& shown) {
    const int count = static_cast<int>(shown.polygon.lines.size());
    if (shown.page != WorkingPage::Polygon || count == 0) {
        return;
    }
    const int drawn =
        state.notebook.wholeWorking ? count : std::clamp(state.notebook.step + 1, 1, count);
    const int lit = litLine(state, shown.polygon);
    if (drawn == shown.drawn && lit == shown.lit) {
        return;
    }
    shown.drawing =
        polygonDrawing(*state.book, state.truss, shown.polygon,
                       {.drawn = drawn, .lit = lit, .width = kPolygonSide, .height = kPolygonSide});
    shown.drawn = drawn;
    shown.lit = lit;
}

void make(Maker& maker) {
    switch (maker.state.notebook.working) {
    case WorkingPage::Truss:
        makeTruss(maker);
        break;
    case WorkingPage::OneForce:
        makeOneForce(maker);
        break;
    case WorkingPage::Displacement:
        makeDisplacement(maker);
        break;
    case WorkingPage::Polygon:
        makePolygon(maker);
        break;
    case WorkingPage::Settings:
        break;
    }
}

} // namespace

bool isShown(const AppState& state, const ShownWorking& shown) {
    const NotebookState& notebook = state.notebook;
    return shown.revision == state.revision && shown.choice.caseId == state.choice.caseId &&
           shown.choice.combinationId == state.choice.combinationId &&
           shown.page == notebook.working && shown.bySection == notebook.bySection &&
           shown.horizontal == notebook.horizontal && shown.about == aboutFor(state);
}

void showWorking(const AppState& state, const Solution& solution, ShownWorking& shown) {
    if (isShown(state, shown)) {
        drawPolygon(state, shown);
        return;
    }
    shown = {.revision = state.revision,
             .choice = state.choice,
             .page = state.notebook.working,
             .bySection = state.notebook.bySection,
             .horizontal = state.notebook.horizontal,
             .about = aboutFor(state),
             .working = {},
             .passages = {},
             .asks = {},
             .polygon = {},
             .spaces = {},
             .drawing = {}};
    // A model with errors has no counting either; its errors stand in the verdict.
    if (solution.status != Status::Invalid) {
        Maker maker{state, solution, shown};
        make(maker);
        drawPolygon(state, shown);
    }
}

int stepsOf(const ShownWorking& shown) {
    return static_cast<int>(shown.polygon.lines.empty() ? shown.passages.size()
                                                        : shown.polygon.lines.size());
}

} // namespace gusset
