#include "app/derived/influence_jobs.hpp"

#include "hand/virtual_work/influence_by_hand.hpp"
#include "phrases/results/jobs.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/solution_text.hpp"

#include <utility>

namespace gusset {

namespace {

// The exact digits of a large truss would fill memory: beyond this there are only decimals.
constexpr std::size_t kMostExact = 20'000; // members times joints of the path

// The jobs' own copy: edits go on meanwhile.
using Loaded = std::shared_ptr<const Truss>;

// Gives the result its key, and the job its truss.
template <class Made>
Loaded begin(const AppState& state, const std::vector<JointId>& path, Made& made) {
    made.revision = state.revision;
    made.path = path;
    return std::make_shared<const Truss>(state.truss);
}

// A stage whose task needs only the truss and the path.
template <class Task, class End>
Stage alongPath(Phrase<> says, const Loaded& truss, const std::vector<JointId>& path, End end) {
    return stageOf(
        says, [truss, path] { return Task(*truss, path); }, end);
}

} // namespace

Job pathJob(const AppState& state, const std::vector<JointId>& path,
            const std::shared_ptr<PathShown>& made) {
    const Loaded truss = begin(state, path, *made);
    Job job;
    job.add(alongPath<PathAnalysisTask>(
        phrase::kJobPlaces, truss, path, [made, book = state.book](PathAnalysisTask& task) {
            Outcome<PathAnalysis> found = task.take();
            if (found) {
                made->analysis = std::make_shared<const PathAnalysis>(std::move(found).value());
            } else {
                made->says = faultSentence(*book, found.issues().front());
            }
        }));
    return job;
}

Job membersJob(const AppState& state, const PathShown& path,
               const std::shared_ptr<UnderShown>& made) {
    const Loaded truss = begin(state, path.path, *made);
    Job job;
    for (const MovingLoad& load : truss->moving) {
        if (load.path != path.path) {
            continue;
        }
        job.add(stageOf(
            phrase::kJobMembers,
            [truss, analysis = path.analysis, &load] {
                return MembersUnderTask(*truss, *analysis, load);
            },
            [truss, made, &load, book = state.book](MembersUnderTask& task) {
                made->loads.push_back({captionUnder(*book, load.id),
                                       movingRows({*book, *truss}, load.path, task.take())});
            }));
    }
    return job;
}

Job byHandJob(const AppState& state, const std::vector<JointId>& path, const Effect& effect,
              const std::shared_ptr<ByHandShown>& made) {
    const Loaded truss = begin(state, path, *made);
    made->effect = effect;
    Job job;
    job.add(stageOf(
        phrase::kJobPlaces,
        [truss, made] { return InfluenceByHandTask(*truss, made->path, made->effect); },
        [truss, made, book = state.book](InfluenceByHandTask& task) {
            made->passages = influencePassages({*book, *truss}, task.take(), SketchPaper::Column);
        }));
    return job;
}

Job exactPathJob(const AppState& state, const std::vector<JointId>& path,
                 const std::shared_ptr<ExactPath>& made) {
    const Loaded truss = begin(state, path, *made);
    Job job;
    if (path.size() * truss->members.size() <= kMostExact) {
        job.add(
            alongPath<ExactPathTask>(phrase::kJobExact, truss, path,
                                     [made](ExactPathTask& task) { made->found = task.take(); }));
    }
    return job;
}

} // namespace gusset
