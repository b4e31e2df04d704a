#include "app/derived_moving.hpp"

#include "app/slices.hpp"
#include "report/influence_by_hand_text.hpp"
#include "report/solution_text.hpp"

#include "model/validate.hpp"
#include "statics/load_paths.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

InfluenceShown::InfluenceShown() = default;
InfluenceShown::InfluenceShown(InfluenceShown&&) noexcept = default;
InfluenceShown& InfluenceShown::operator=(InfluenceShown&&) noexcept = default;
InfluenceShown::~InfluenceShown() = default;

namespace {

// Digits of a large truss would fill memory: beyond this the decimals do.
constexpr std::size_t kMostExact = 20'000; // members times joints of the path
constexpr double kFinger = 9;              // px from a joint that still mean it

bool pageIsOnScreen(const AppState& state, ResultPage page) {
    const NotebookState& notebook = state.notebook;
    return notebook.open && notebook.tab == NotebookTab::Forces && notebook.results == page;
}

const Support* supportAt(const Truss& truss, JointId joint) {
    for (const Support& support : truss.supports) {
        if (support.joint == joint) {
            return &support;
        }
    }
    return nullptr;
}

template <class Id, class List>
bool isOnly(const std::vector<Id>& ids, const List& list) {
    return ids.size() == 1 && ids.front().at() < list.size();
}

// The joint that one selected thing stands for; none.
JointId jointIn(const Truss& truss, const Things& selection) {
    if (isOnly(selection.joints, truss.joints)) {
        return selection.joints.front();
    }
    if (isOnly(selection.supports, truss.supports)) {
        return truss.supports[selection.supports.front().at()].joint;
    }
    return {};
}

Effect ofJoint(EffectKind kind, JointId joint, bool horizontal) {
    Effect effect;
    effect.kind = kind;
    effect.joint = joint;
    effect.horizontal = horizontal;
    return effect;
}

std::vector<JointId> pickedJoints(const Truss& truss, const InfluenceView& view) {
    std::vector<JointId> joints;
    for (const std::string& label : view.picked) {
        if (const JointId joint = findJoint(truss, label); joint.valid()) {
            joints.push_back(joint);
        }
    }
    return joints;
}

void addPath(std::vector<PathOption>& paths, PathOption option) {
    const bool known = std::any_of(paths.begin(), paths.end(), [&](const PathOption& other) {
        return other.path == option.path && other.kind != PathKind::Moving;
    });
    if (!option.path.empty() && !known) {
        paths.push_back(std::move(option));
    }
}

std::vector<PathOption> pathsOf(const Truss& truss, const InfluenceView& view) {
    std::vector<PathOption> paths;
    for (const MovingLoad& load : truss.moving) {
        paths.push_back({PathKind::Moving, load.id, load.path});
    }
    addPath(paths, {PathKind::Bottom, "bottom chord", lowestPath(truss)});
    addPath(paths, {PathKind::Top, "top chord", highestPath(truss)});
    const Outcome<std::vector<JointId>> picked = pathThrough(truss, pickedJoints(truss, view));
    if (picked) {
        paths.push_back({PathKind::Picked, "picked joints", picked.value()});
    }
    return paths;
}

std::size_t chosenOf(const std::vector<PathOption>& paths, const InfluenceView& view) {
    const auto found = std::find_if(paths.begin(), paths.end(), [&](const PathOption& option) {
        return option.kind == view.path &&
               (view.path != PathKind::Moving || option.name == view.load);
    });
    return found == paths.end() ? 0 : static_cast<std::size_t>(found - paths.begin());
}

std::string sentenceOf(const Issues& issues) {
    std::string text = issues.front().says;
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text + ".";
}

double largestAt(const InfluenceLine& line) {
    const auto& values = line.ordinates;
    const auto most = std::max_element(values.begin(), values.end(), [](double a, double b) {
        return std::fabs(a) < std::fabs(b);
    });
    return line.at[static_cast<std::size_t>(most - values.begin())];
}

// The analysis stands while model and path do. False when there is none; then `says` is set.
bool analyse(const AppState& state, InfluenceShown& shown) {
    const std::vector<JointId>& path = shown.paths[shown.chosen].path;
    if (shown.analysis && shown.revision == state.revision && shown.analysis->path == path) {
        return true;
    }
    shown.analysis.reset();
    shown.members.clear();
    const std::uint64_t made = shown.exact.made;
    shown.exact = {};
    shown.exact.made = made;
    Outcome<PathAnalysis> analysis = analysePath(state.truss, path);
    if (!analysis) {
        shown.says = sentenceOf(analysis.issues());
        return false;
    }
    shown.analysis = std::move(analysis).value();
    return true;
}

std::vector<Surd> exactOf(const InfluenceShown& shown) {
    std::vector<Surd> ordinates;
    if (shown.exact.done && shown.effect.kind != EffectKind::Displacement) {
        for (const ExactSolution& found : shown.exact.found) {
            ordinates.push_back(exactEffect(found, shown.effect));
        }
    }
    return ordinates;
}

void describe(const AppState& state, InfluenceShown& shown) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    const InfluenceReport& report = *shown.report;
    shown.at =
        std::clamp(shown.view.at.value_or(largestAt(report.line)), 0.0, report.line.at.back());
    shown.ordinate = ordinateAt(report.line, shown.at);
    shown.value = signedOrdinate(truss, report, shown.ordinate);
    shown.title = influenceSentence(book, truss, report);
    shown.reading = readingSentence(book, truss, report, shown.at);
    shown.areas = areaSentence(book, truss, report);
    shown.ordinates = ordinateRows(truss, report);
    shown.assumed = assumptionSentences(book, report.assumed);
    shown.moving = movingLines(book, truss, report);
    shown.look = {.width = shown.width, .mark = shown.at};
    shown.sketch = influenceSketch(book, truss, report, shown.look);
}

void deriveMembers(const AppState& state, InfluenceShown& shown) {
    const Truss& truss = state.truss;
    if (!shown.view.members || !shown.members.empty()) {
        return;
    }
    for (const MovingLoad& load : truss.moving) {
        if (load.path == shown.analysis->path) {
            shown.members.push_back({captionUnder(*state.book, load.id),
                                     movingRows(*state.book, truss, load.path,
                                                membersUnder(truss, *shown.analysis, load))});
        }
    }
}

bool sameEffect(const Effect& one, const Effect& other) {
    return one.kind == other.kind && one.member == other.member && one.joint == other.joint &&
           one.horizontal == other.horizontal;
}

// Not again for every place that is read off.
void deriveByHand(const AppState& state, InfluenceShown& shown) {
    const std::vector<JointId>& path = shown.analysis->path;
    const bool current = !shown.byHand.empty() && shown.byHandRevision == state.revision &&
                         sameEffect(shown.byHandEffect, shown.effect) && shown.byHandPath == path;
    if (!shown.view.byHand || current) {
        return;
    }
    shown.byHand =
        influencePassages(*state.book, state.truss,
                          influenceByHand(state.truss, path, shown.effect), SketchPaper::Column);
    shown.byHandRevision = state.revision;
    shown.byHandEffect = shown.effect;
    shown.byHandPath = path;
}

bool isCurrent(const AppState& state, const InfluenceShown& shown, double width) {
    return shown.revision == state.revision && shown.view == state.notebook.influence &&
           shown.selection == state.selection && shown.width == width &&
           shown.exactMade == shown.exact.made;
}

// Everything but the keys; on the way out `says` tells why there is no line.
void makeInfluence(const AppState& state, InfluenceShown& shown) {
    const Truss& truss = state.truss;
    shown.report.reset();
    shown.says.clear();
    shown.paths.clear();
    if (const Issues errors = validate(truss).errors; !errors.empty()) {
        shown.analysis.reset();
        shown.says = sentenceOf(errors);
        return;
    }
    shown.paths = pathsOf(truss, shown.view);
    shown.chosen = chosenOf(shown.paths, shown.view);
    const std::optional<Effect> effect = effectFor(truss, shown.selection, shown.view.horizontal);
    if (shown.paths.empty() || !effect) {
        shown.analysis.reset();
        shown.says =
            sayPlain(*state.book, shown.paths.empty() ? Phrase::NoPath : Phrase::NoSupportForLine);
        return;
    }
    shown.effect = *effect;
    shown.canTurn = effect->kind != EffectKind::MemberForce;
    if (!analyse(state, shown)) {
        return;
    }
    Outcome<InfluenceReport> report = influenceReport(truss, *shown.analysis, shown.effect);
    if (!report) {
        shown.says = sentenceOf(report.issues());
        return;
    }
    shown.report = std::move(report).value();
    shown.report->exact = exactOf(shown);
    describe(state, shown);
    deriveMembers(state, shown);
    deriveByHand(state, shown);
}

// No more digits than a pixel is worth: 6.0 m, not 5.987.
double toPixelWorth(const Truss& truss, double at, double perPixel) {
    if (!(perPixel > 0)) {
        return at;
    }
    const double unit = toMetre(truss.units.length);
    const double step = unit * std::pow(10.0, std::ceil(std::log10(perPixel / unit)));
    return step * std::round(at / step);
}

} // namespace

bool showsInfluence(const AppState& state) { return pageIsOnScreen(state, ResultPage::Influence); }

bool showsEnvelope(const AppState& state) { return pageIsOnScreen(state, ResultPage::Envelope); }

std::optional<Effect> effectFor(const Truss& truss, const Things& selection, bool horizontal) {
    if (isOnly(selection.members, truss.members)) {
        Effect effect;
        effect.member = selection.members.front();
        return effect;
    }
    if (const JointId joint = jointIn(truss, selection); joint.valid()) {
        const EffectKind kind =
            supportAt(truss, joint) ? EffectKind::Reaction : EffectKind::Displacement;
        return ofJoint(kind, joint, horizontal);
    }
    if (truss.supports.empty()) {
        return std::nullopt;
    }
    return ofJoint(EffectKind::Reaction, truss.supports.front().joint, horizontal);
}

void deriveInfluence(const AppState& state, InfluenceShown& shown, double width) {
    if (isCurrent(state, shown, width)) {
        return;
    }
    shown.view = state.notebook.influence;
    shown.selection = state.selection;
    shown.width = width;
    shown.exactMade = shown.exact.made;
    makeInfluence(state, shown);
    shown.revision = state.revision;
    shown.exactMade = shown.exact.made;
}

bool deriveExactOrdinates(const AppState& state, InfluenceShown& shown,
                          std::chrono::microseconds budget) {
    ExactPath& exact = shown.exact;
    if (exact.done || !shown.report || shown.revision != state.revision) {
        return false;
    }
    const std::vector<JointId>& path = shown.analysis->path;
    if (path.size() * state.truss.members.size() > kMostExact) {
        exact.done = true;
        return false;
    }
    const Deadline end = after(budget);
    while (exact.found.size() < path.size()) {
        if (!exact.task) {
            const Truss loaded = withUnitLoad(state.truss, path[exact.found.size()]);
            exact.task.emplace(loaded, LoadChoice{});
        }
        if (!advanceUntil(end, *exact.task)) {
            return true;
        }
        if (!exact.task->result().solved) { // nor will the next be: it is the truss
            exact.found.clear();
            break;
        }
        exact.found.push_back(exact.task->result());
        exact.task.reset();
    }
    exact.task.reset();
    exact.done = true;
    ++exact.made;
    return true; // what shows them is to be made again
}

void deriveEnvelope(const AppState& state, EnvelopeShown& shown) {
    const bool wantsCases = state.notebook.envelopeOfCases;
    if (shown.revision == state.revision && shown.ofCases == wantsCases) {
        return;
    }
    shown = {.revision = state.revision, .ofCases = wantsCases, .says = {}, .rows = {}};
    const std::vector<LoadChoice> cases = caseChoices(state.truss);
    const std::vector<LoadChoice> combinations = combinationChoices(state.truss);
    shown.hasChoice = cases.size() > 1 && combinations.size() > 1;
    const bool takesCases = cases.size() > 1 && (wantsCases || combinations.size() < 2);
    const std::vector<LoadChoice>& choices = takesCases ? cases : combinations;
    shown.says = envelopeSentence(*state.book, choices);
    if (choices.size() < 2) {
        return;
    }
    const Outcome<std::vector<MemberEnvelope>> envelope = envelopeOf(state.truss, choices);
    if (envelope) {
        shown.rows = envelopeRows(state.truss, envelope.value());
    } else {
        shown.says = sentenceOf(envelope.issues());
    }
}

double placeUnder(const Truss& truss, const InfluenceShown& shown, double x) {
    const InfluenceReport& report = *shown.report;
    const double at = readOffAt(truss, report, shown.look, x);
    const double slack = std::fabs(readOffAt(truss, report, shown.look, x + kFinger) - at);
    const double other = std::fabs(readOffAt(truss, report, shown.look, x - kFinger) - at);
    const double reach = std::max(slack, other); // one of them is held to the end
    return nearJoint(report, toPixelWorth(truss, at, reach / kFinger), reach);
}

} // namespace gusset
