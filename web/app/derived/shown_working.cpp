#include "app/derived/shown_working.hpp"

#include "hand/polygon/force_polygon.hpp"
#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/unit_load.hpp"
#include "phrases/results/jobs.hpp"
#include "phrases/results/tables.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/movement_text.hpp"

#include <algorithm>
#include <utility>

namespace gusset {

namespace {

constexpr double kPolygonSide = 300; // px: the column is slightly wider

// What the working is about. Selecting something doesn't change the working of the whole truss.
Things aboutFor(const AppState& state) {
    const WorkingPage page = state.notebook.working;
    return page == WorkingPage::OneForce || page == WorkingPage::Displacement ? state.selection
                                                                              : Things{};
}

// The job's own copies: edits go on meanwhile.
struct Given {
    Truss truss;
    LoadChoice choice;
    Solution solution;
    const PhraseBook& book;
};

struct Maker {
    const AppState& state;
    std::shared_ptr<const Given> given;
    std::shared_ptr<ShownWorking> shown;
    Job job{};

    void ask(Phrase<> phrase) const { shown->asks = sayPlain(*state.book, phrase); }

    // Adds a stage of one unit that runs `work` on the given and the shown values.
    void once(Phrase<> says, void (*work)(const Given&, ShownWorking&)) {
        job.add(stageOf(says, [given = given, shown = shown, work] { work(*given, *shown); }));
    }
    // Adds the working of the whole truss, into shown->working.
    void workOutWhole() {
        job.add(stageOf(
            phrase::kJobWorking,
            [given = given] { return WorkingTask(given->truss, given->choice, given->solution); },
            [shown = shown](WorkingTask& task) { shown->working = task.take(); }));
    }
    // Adds the passages of the steps made so far.
    void writeSteps() {
        job.add(stageOf(
            phrase::kJobSteps,
            [given = given, shown = shown] {
                return WorkingPassagesTask({given->book, given->truss}, shown->working,
                                           SketchPaper::Column);
            },
            [shown = shown](WorkingPassagesTask& task) { shown->passages = task.take(); }));
    }
};

// The members cut and the supports let go.
Things releasedBy(const Truss& truss, const ForceMethod& method) {
    const Structure structure = structureOf(truss);
    Things things;
    for (const Release& release : method.releases) {
        if (const auto* cut = std::get_if<MemberId>(&release.of)) {
            things.members.push_back(*cut);
        } else {
            const std::size_t let = std::get<RestraintId>(release.of).at();
            things.supports.push_back(structure.restraints[let].support);
        }
    }
    return things;
}

// How the forces of one state of the released truss were found, instead of the method; nothing
// where the method has no such state.
void writeReleasedSteps(Maker& maker, const std::shared_ptr<const ForceMethod>& method, int state) {
    maker.job.add(stageOf(
        phrase::kJobSteps,
        [given = maker.given, method, state] {
            const auto unit = static_cast<std::size_t>(state - 2);
            const bool isUnit = state > 1 && unit < method->releases.size();
            return WorkingPassagesTask(
                {given->book, isUnit ? method->unitTrusses[unit] : method->givenTruss},
                isUnit ? method->unitWorkings[unit] : method->givenWorking, SketchPaper::Column);
        },
        [shown = maker.shown, state](WorkingPassagesTask& task) {
            if (state <= 1 + shown->redundants && shown->redundants > 0) {
                shown->passages = task.take();
            }
        }));
}

void makeTruss(Maker& maker) {
    if (maker.given->solution.status != Status::Indeterminate) {
        maker.workOutWhole();
        maker.writeSteps();
        return;
    }
    const auto method = std::make_shared<ForceMethod>();
    maker.job.add(stageOf(
        phrase::kJobReleases,
        [given = maker.given] {
            return ForceMethodTask(given->truss, given->choice, given->solution);
        },
        [given = maker.given, shown = maker.shown, method](ForceMethodTask& task) {
            *method = task.take();
            if (method->end == ForceMethodEnd::Complete) {
                shown->redundants = static_cast<int>(method->releases.size());
                shown->released = releasedBy(given->truss, *method);
            }
            shown->passages =
                forceMethodPassages({given->book, given->truss}, *method, SketchPaper::Column);
        }));
    if (maker.state.notebook.releasedState > 0) {
        writeReleasedSteps(maker, method, maker.state.notebook.releasedState);
    }
}

bool isAt(const Working& working, const Symbol& symbol, JointId joint) {
    return symbol.kind == SymbolKind::Reaction && symbol.joint == joint &&
           symbol.restraint.at() < working.structure.restraints.size();
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

// The joint whose reactions are asked for: that of the selected support, or the selected joint.
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

void makeOneMember(Maker& maker, MemberId member) {
    if (maker.state.notebook.bySection) {
        maker.job.add(
            stageOf(phrase::kJobShortest, [given = maker.given, shown = maker.shown, member] {
                shown->working = workSection(given->truss, given->choice, given->solution, member);
            }));
        return;
    }
    maker.workOutWhole();
    maker.job.add(stageOf(phrase::kJobShortest, [given = maker.given, shown = maker.shown, member] {
        shown->working = explain(given->truss, given->choice, given->solution, shown->working,
                                 {SymbolKind::MemberForce, member});
    }));
}

void makeOneForce(Maker& maker) {
    const std::vector<MemberId>& members = maker.state.selection.members;
    const JointId joint = supportedJoint(maker.state);
    if (members.size() > 1) {
        maker.job.add(
            stageOf(phrase::kJobShortest, [given = maker.given, shown = maker.shown, members] {
                shown->working = workCut(given->truss, given->choice, given->solution, members);
            }));
    } else if (members.size() == 1) {
        makeOneMember(maker, members.front());
    } else if (joint.valid()) {
        maker.workOutWhole();
        maker.job.add(stageOf(phrase::kJobShortest, [shown = maker.shown, joint] {
            shown->working = stepsFor(shown->working, reactionsAt(shown->working, joint));
        }));
    } else {
        maker.ask(phrase::kPickForce);
        return;
    }
    maker.writeSteps();
}

void makeDisplacement(Maker& maker) {
    const AppState& state = maker.state;
    const bool picked = !state.selection.joints.empty();
    const JointId joint =
        picked ? state.selection.joints.front() : furthestJoint(maker.given->solution);
    if (!joint.valid()) {
        maker.ask(phrase::kPickJoint);
        return;
    }
    const DisplacementAxis axis =
        state.notebook.horizontal ? DisplacementAxis::X : DisplacementAxis::Y;
    maker.job.add(stageOf(
        phrase::kJobWorking,
        [given = maker.given, joint, axis] {
            return UnitLoadTask(given->truss, given->choice, given->solution, joint, axis);
        },
        [given = maker.given, shown = maker.shown](UnitLoadTask& task) {
            const UnitLoadTable table = task.take();
            if (table.method && table.complete) {
                shown->released = releasedBy(given->truss, *table.method);
            }
            shown->passages = {unitLoadPassage({given->book, given->truss}, table)};
        }));
}

void makePolygon(Maker& maker) {
    maker.workOutWhole();
    maker.once(phrase::kJobPolygon, [](const Given& given, ShownWorking& shown) {
        shown.polygon = forcePolygon(given.truss, shown.working);
        shown.passages = {forcePolygonPassage({given.book, given.truss}, shown.polygon)};
    });
    maker.job.add(stageOf(
        phrase::kJobPolygon,
        [given = maker.given, shown = maker.shown] {
            return SpacesSketchTask(notationOf({given->book, given->truss}, shown->working),
                                    shown->polygon, SketchPaper::Column);
        },
        [shown = maker.shown](SpacesSketchTask& task) {
            shown->spaces = task.take();
            shown->working = {}; // the page has lines instead of steps
        }));
}

// That of the selected member, else the newest of those drawn one after the other.
std::optional<std::size_t> litLine(const AppState& state, const ForcePolygon& polygon,
                                   std::size_t drawn) {
    const std::vector<MemberId>& members = state.selection.members;
    for (std::size_t i = 0; members.size() == 1 && i < polygon.lines.size(); ++i) {
        if (polygon.lines[i].member == members.front()) {
            return i;
        }
    }
    return state.notebook.wholeWorking ? std::nullopt : std::optional(drawn - 1);
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
    return shown.revision == state.revision && shown.choice == state.choice &&
           shown.page == notebook.working && shown.bySection == notebook.bySection &&
           shown.horizontal == notebook.horizontal &&
           shown.releasedState == notebook.releasedState && shown.about == aboutFor(state);
}

Job workingJob(const AppState& state, const Solution& solution,
               const std::shared_ptr<ShownWorking>& shown) {
    shown->revision = state.revision;
    shown->choice = state.choice;
    shown->page = state.notebook.working;
    shown->bySection = state.notebook.bySection;
    shown->horizontal = state.notebook.horizontal;
    shown->releasedState = state.notebook.releasedState;
    shown->about = aboutFor(state);
    // A model with errors has no count of members and joints either; its errors are in the verdict.
    if (solution.status == Status::Invalid) {
        return {};
    }
    Maker maker{
        state,
        std::make_shared<const Given>(Given{state.truss, state.choice, solution, *state.book}),
        shown};
    make(maker);
    return std::move(maker.job);
}

void drawPolygon(const AppState& state, ShownWorking& shown) {
    const std::size_t count = shown.polygon.lines.size();
    if (shown.page != WorkingPage::Polygon || count == 0) {
        return;
    }
    const auto step = static_cast<std::size_t>(std::max(state.notebook.step, 0));
    const std::size_t drawn = state.notebook.wholeWorking ? count : std::min(step + 1, count);
    const std::optional<std::size_t> lit = litLine(state, shown.polygon, drawn);
    const Writer writer{*state.book, state.truss};
    shown.drawingSays = state.notebook.wholeWorking
                            ? std::string()
                            : polygonLineSentence(writer, shown.polygon, drawn - 1);
    if (drawn == shown.drawn && lit == shown.lit) {
        return;
    }
    shown.drawing =
        polygonDrawing(writer, shown.polygon,
                       {.drawn = drawn, .lit = lit, .width = kPolygonSide, .height = kPolygonSide});
    shown.drawn = drawn;
    shown.lit = lit;
}

int stepsOf(const ShownWorking& shown) {
    return static_cast<int>(shown.polygon.lines.empty() ? shown.passages.size()
                                                        : shown.polygon.lines.size());
}

} // namespace gusset
