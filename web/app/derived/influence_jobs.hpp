#pragma once
// The slow parts of the page of influence lines, and the jobs that make them (app/derived/slices).
// Each job has a copy of the truss, since edits go on meanwhile.

#include "app/derived/slices.hpp"
#include "app/state/state.hpp"
#include "report/derivation/passage.hpp"
#include "report/results/envelope_text.hpp"
#include "statics/moving/influence.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace gusset {

struct MembersUnder { // one moving load
    std::string caption;
    std::vector<EnvelopeRow> rows;
};

// The slow parts of an influence line, each with the key it was made from.
struct PathShown {
    std::uint64_t revision = 0;
    std::vector<JointId> path;
    std::shared_ptr<const PathAnalysis> analysis;
    std::string says; // why there is none
};
struct UnderShown { // of all members
    std::uint64_t revision = 0;
    std::vector<JointId> path;
    std::vector<MembersUnder> loads;
};
struct ByHandShown {
    std::uint64_t revision = 0;
    std::vector<JointId> path;
    Effect effect;
    std::vector<Passage> passages;
};
// Exact forces under a unit load at each joint of the path in turn.
struct ExactPath {
    std::uint64_t revision = 0;
    std::vector<JointId> path;
    std::vector<ExactSolution> found; // one per joint of the path; empty if there are none
};
struct InfluenceJobs {
    Making<PathShown> path;
    Making<UnderShown> members;
    Making<ByHandShown> byHand;
    Making<ExactPath> exact;
};

[[nodiscard]] Job pathJob(const AppState&, const std::vector<JointId>& path,
                          const std::shared_ptr<PathShown>&);
[[nodiscard]] Job membersJob(const AppState&, const PathShown&, const std::shared_ptr<UnderShown>&);
[[nodiscard]] Job byHandJob(const AppState&, const std::vector<JointId>& path, const Effect&,
                            const std::shared_ptr<ByHandShown>&);
[[nodiscard]] Job exactPathJob(const AppState&, const std::vector<JointId>& path,
                               const std::shared_ptr<ExactPath>&);

} // namespace gusset
