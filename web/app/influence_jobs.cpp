#include "app/influence_jobs.hpp"

#include "hand/influence_by_hand.hpp"
#include "report/influence_by_hand_text.hpp"
#include "report/influence_text.hpp"

#include <utility>

namespace gusset {

namespace {

// Digits of a large truss would fill memory: beyond this the decimals do.
constexpr std::size_t kMostExact = 20'000; // members times joints of the path

// What the jobs have of their own: edits go on meanwhile.
using Loaded = std::shared_ptr<const Truss>;
Loaded trussOf(const AppState& state) { return std::make_shared<const Truss>(state.truss); }

} // namespace

std::string sentenceOf(const Issues& issues) {
    std::string text = issues.front().says;
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    }
    return text + ".";
}

Job pathJob(const AppState& state, const std::vector<JointId>& path,
            const std::shared_ptr<PathShown>& made) {
    made->revision = state.revision;
    made->path = path;
    const Loaded truss = trussOf(state);
    Job job;
    job.add(stageOf(
        Phrase::JobPlaces, [truss, path] { return PathAnalysisTask(*truss, path); },
        [truss, made](PathAnalysisTask& task) {
            Outcome<PathAnalysis> found = task.take();
            if (found) {
                made->analysis = std::make_shared<const PathAnalysis>(std::move(found).value());
            } else {
                made->says = sentenceOf(found.issues());
            }
        }));
    return job;
}

Job membersJob(const AppState& state, const PathShown& path,
               const std::shared_ptr<UnderShown>& made) {
    made->revision = state.revision;
    made->path = path.path;
    const Loaded truss = trussOf(state);
    Job job;
    for (const MovingLoad& load : truss->moving) {
        if (load.path != path.path) {
            continue;
        }
        job.add(stageOf(
            Phrase::JobMembers,
            [truss, analysis = path.analysis, &load] {
                return MembersUnderTask(*truss, *analysis, load);
            },
            [truss, made, &load, book = state.book](MembersUnderTask& task) {
                made->loads.push_back({captionUnder(*book, load.id),
                                       movingRows(*book, *truss, load.path, task.take())});
            }));
    }
    return job;
}

Job byHandJob(const AppState& state, const std::vector<JointId>& path, const Effect& effect,
              const std::shared_ptr<ByHandShown>& made) {
    made->revision = state.revision;
    made->path = path;
    made->effect = effect;
    const Loaded truss = trussOf(state);
    Job job;
    job.add(stageOf(
        Phrase::JobPlaces,
        [truss, made] { return InfluenceByHandTask(*truss, made->path, made->effect); },
        [truss, made, book = state.book](InfluenceByHandTask& task) {
            made->passages = influencePassages(*book, *truss, task.take(), SketchPaper::Column);
        }));
    return job;
}

Job exactPathJob(const AppState& state, const std::vector<JointId>& path,
                 const std::shared_ptr<ExactPath>& made) {
    made->revision = state.revision;
    made->path = path;
    const Loaded truss = trussOf(state);
    Job job;
    if (path.size() * truss->members.size() <= kMostExact) {
        job.add(stageOf(
            Phrase::JobExact, [truss, path] { return ExactPathTask(*truss, path); },
            [made](ExactPathTask& task) { made->found = task.take(); }));
    }
    return job;
}

} // namespace gusset
