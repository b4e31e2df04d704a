#include "app/derived/derived_moving.hpp"

#include "phrases/results.hpp"
#include "phrases/results/jobs.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"

#include "model/validate/validate.hpp"
#include "statics/moving/load_paths.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

InfluenceShown::InfluenceShown() = default;
InfluenceShown::InfluenceShown(InfluenceShown&&) noexcept = default;
InfluenceShown& InfluenceShown::operator=(InfluenceShown&&) noexcept = default;
InfluenceShown::~InfluenceShown() = default;

namespace {

constexpr double kFinger = 9; // px from a joint that still count as on it

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

// The joint that a single selected thing stands for; none otherwise.
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

std::vector<PathOption> pathsOf(const Writer& writer, const InfluenceView& view) {
    const Truss& truss = writer.truss;
    std::vector<PathOption> paths;
    for (const MovingLoad& load : truss.moving) {
        paths.push_back({PathKind::Moving, load.id, load.path});
    }
    addPath(paths, {PathKind::Bottom, sayPlain(writer, phrase::kBottomChord), lowestPath(truss)});
    addPath(paths, {PathKind::Top, sayPlain(writer, phrase::kTopChord), highestPath(truss)});
    const Outcome<std::vector<JointId>> picked = pathThrough(truss, pickedJoints(truss, view));
    if (picked) {
        paths.push_back(
            {PathKind::Picked, sayPlain(writer, phrase::kPickedJoints), picked.value()});
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

double largestAt(const InfluenceLine& line) {
    const auto& values = line.ordinates;
    const auto most = std::max_element(values.begin(), values.end(), [](double a, double b) {
        return std::fabs(a) < std::fabs(b);
    });
    return line.at[static_cast<std::size_t>(most - values.begin())];
}

bool sameEffect(const Effect& one, const Effect& other) {
    return one.kind == other.kind && one.member == other.member && one.joint == other.joint &&
           one.horizontal == other.horizontal;
}

const std::vector<JointId>& pathOf(const InfluenceShown& shown) {
    return shown.paths[shown.chosen].path;
}

template <class Made>
bool isOfPath(const Made& made, const AppState& state, const std::vector<JointId>& path) {
    return made.revision == state.revision && made.path == path;
}

std::vector<Surd> exactOf(const AppState& state, const InfluenceShown& shown) {
    std::vector<Surd> ordinates;
    if (isOfPath(shown.exact, state, shown.path.path) &&
        shown.effect.kind != EffectKind::Displacement) {
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
    shown.title = influenceSentence({book, truss}, report);
    shown.reading = readingSentence({book, truss}, report, shown.at);
    shown.areas = areaSentence({book, truss}, report);
    shown.ordinates = ordinateRows(truss, report);
    shown.assumed = assumptionSentences(book, report.reliance.assumed);
    shown.warnings = lineWarnings({book, truss}, report);
    shown.moving = movingLines({book, truss}, report);
    shown.look = {.width = shown.width, .mark = shown.at};
    shown.sketch = influenceSketch({book, truss}, report, shown.look);
}

// Chooses the effect and the path; if that fails, `says` tells why there is no line.
void chooseLine(const AppState& state, InfluenceShown& shown) {
    const Truss& truss = state.truss;
    shown.report.reset();
    shown.says.clear();
    shown.paths.clear();
    if (const Issues errors = validate(truss).errors; !errors.empty()) {
        shown.says = faultSentence(*state.book, errors.front());
        return;
    }
    shown.paths = pathsOf({*state.book, truss}, shown.view);
    shown.chosen = chosenOf(shown.paths, shown.view);
    const std::optional<Effect> effect = effectFor(truss, shown.selection, shown.view.horizontal);
    if (shown.paths.empty() || !effect) {
        shown.says = sayPlain(*state.book,
                              shown.paths.empty() ? phrase::kNoPath : phrase::kNoSupportForLine);
        return;
    }
    shown.effect = *effect;
    shown.canTurn = effect->kind != EffectKind::MemberForce;
}

// The line itself, from the analysis of its path. Precondition: the analysis exists or says why
// not.
void makeLine(const AppState& state, InfluenceShown& shown) {
    if (!shown.path.analysis) {
        shown.says = shown.path.says;
        return;
    }
    Outcome<InfluenceReport> report =
        influenceReport(state.truss, *shown.path.analysis, shown.effect);
    if (!report) {
        shown.says = faultSentence(*state.book, report.issues().front());
        return;
    }
    shown.report = std::move(report).value();
    shown.report->exact = exactOf(state, shown);
    shown.isExact = isOfPath(shown.exact, state, shown.path.path);
    describe(state, shown);
}

bool derivePath(const AppState& state, InfluenceShown& shown, Slice& slice) {
    const std::vector<JointId>& path = pathOf(shown);
    return bringUpToDate(
        slice, shown.jobs.path, shown.path,
        [&](const PathShown& made) { return isOfPath(made, state, path); },
        [&](const auto& made) { return pathJob(state, path, made); });
}

// What is asked for besides the line.
bool deriveBeside(const AppState& state, InfluenceShown& shown, Slice& slice) {
    const auto isNow = [&](const auto& made) { return isOfPath(made, state, shown.path.path); };
    bool more = false;
    if (shown.view.members) {
        more = bringUpToDate(slice, shown.jobs.members, shown.members, isNow,
                             [&](const auto& made) { return membersJob(state, shown.path, made); });
    }
    if (shown.view.byHand) {
        // Not remade for every place that is read.
        const auto isByHand = [&](const ByHandShown& made) {
            return isNow(made) && sameEffect(made.effect, shown.effect);
        };
        more = bringUpToDate(slice, shown.jobs.byHand, shown.byHand, isByHand,
                             [&](const auto& made) {
                                 return byHandJob(state, shown.path.path, shown.effect, made);
                             }) ||
               more;
    }
    return more;
}

bool deriveExactPath(const AppState& state, InfluenceShown& shown, Slice& slice) {
    if (state.gesture.kind != GestureKind::None) {
        return false;
    }
    return bringUpToDate(
        slice, shown.jobs.exact, shown.exact,
        [&](const ExactPath& made) { return isOfPath(made, state, shown.path.path); },
        [&](const auto& made) { return exactPathJob(state, shown.path.path, made); });
}

bool isCurrent(const AppState& state, const InfluenceShown& shown, double width) {
    return shown.revision == state.revision && shown.view == state.notebook.influence &&
           shown.selection == state.selection && shown.width == width;
}

// No more digits than a pixel resolves: 6.0 m, not 5.987.
double toPixelWorth(const Truss& truss, double at, double perPixel) {
    if (!(perPixel > 0)) {
        return at;
    }
    const double unit = toMetre(truss.units.length);
    const double step = unit * std::pow(10.0, std::ceil(std::log10(perPixel / unit)));
    return step * std::round(at / step);
}

} // namespace

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

bool hasMembers(const AppState& state, const InfluenceShown& shown) {
    return isOfPath(shown.members, state, shown.path.path);
}

bool hasByHand(const AppState& state, const InfluenceShown& shown) {
    return isOfPath(shown.byHand, state, shown.path.path) &&
           sameEffect(shown.byHand.effect, shown.effect);
}

bool deriveInfluence(const AppState& state, InfluenceShown& shown, double width, Slice& slice) {
    if (!isCurrent(state, shown, width)) {
        shown.view = state.notebook.influence;
        shown.selection = state.selection;
        shown.width = width;
        shown.revision = state.revision;
        chooseLine(state, shown);
    }
    if (!shown.says.empty()) {
        return false;
    }
    if (derivePath(state, shown, slice)) {
        return true;
    }
    if (!shown.report) {
        makeLine(state, shown);
    }
    if (!shown.report) {
        return false;
    }
    if (deriveBeside(state, shown, slice) || deriveExactPath(state, shown, slice)) {
        return true;
    }
    if (!shown.isExact && isOfPath(shown.exact, state, shown.path.path)) {
        makeLine(state, shown);
    }
    return false;
}

bool isOf(const EnvelopeShown& shown, const AppState& state) {
    return shown.revision == state.revision && shown.ofCases == state.notebook.envelopeOfCases;
}

Job envelopeJob(const AppState& state, const std::shared_ptr<EnvelopeShown>& shown) {
    const bool wantsCases = state.notebook.envelopeOfCases;
    shown->revision = state.revision;
    shown->ofCases = wantsCases;
    const std::vector<LoadChoice> cases = caseChoices(state.truss);
    const std::vector<LoadChoice> combinations = combinationChoices(state.truss);
    shown->hasChoice = cases.size() > 1 && !combinations.empty();
    const std::vector<LoadChoice> choices =
        shown->hasChoice && wantsCases ? cases : envelopeChoices(state.truss);
    shown->says = envelopeSentence(*state.book, choices);
    Job job;
    if (choices.size() < 2 && combinations.empty()) {
        return job;
    }
    const auto truss = std::make_shared<const Truss>(state.truss);
    job.add(stageOf(
        phrase::kJobLoads, [truss, choices] { return EnvelopeTask(*truss, choices); },
        [truss, shown, book = state.book](EnvelopeTask& task) {
            const Outcome<Envelope> envelope = task.take();
            if (envelope) {
                shown->rows = envelopeRows(*truss, envelope.value());
                shown->warnings = envelopeWarnings({*book, *truss}, envelope.value());
            } else {
                shown->refused = true;
                shown->says = faultSentence(*book, envelope.issues().front());
            }
        }));
    return job;
}

double placeUnder(const Truss& truss, const InfluenceShown& shown, double x) {
    const InfluenceReport& report = *shown.report;
    const double at = readOffAt(truss, report, shown.look, x);
    const double slack = std::fabs(readOffAt(truss, report, shown.look, x + kFinger) - at);
    const double other = std::fabs(readOffAt(truss, report, shown.look, x - kFinger) - at);
    const double reach = std::max(slack, other); // one may be cut short by an end
    return nearJoint(report, toPixelWorth(truss, at, reach / kFinger), reach);
}

} // namespace gusset
