#pragma once
// What the pages of envelopes and influence lines show: made when one is shown, and remade when the
// model, the path, the effect or the width of the plot changes.

#include "app/derived/influence_jobs.hpp"
#include "app/derived/slices.hpp"
#include "app/state/state.hpp"
#include "report/derivation/passage.hpp"
#include "report/results/envelope_text.hpp"
#include "report/results/influence_text.hpp"
#include "report/sketch/influence_sketch.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct EnvelopeShown {
    std::uint64_t revision = 0; // what it was made from
    bool ofCases = false;
    bool hasChoice = false; // between cases and combinations
    std::string says;       // which loads it covers, why there is none, or how to get one
    bool refused = false;   // there is none, though there are loads to take it over
    std::vector<std::string> warnings; // what must be stated beside its forces
    std::vector<EnvelopeRow> rows;
};

struct PathOption {
    PathKind kind = PathKind::Moving;
    std::string name; // of the moving load, or a description of the path
    std::vector<JointId> path;
};

struct InfluenceShown {
    // Special members are in derived_moving.cpp: as inline code they would be most of each object
    // file.
    InfluenceShown();
    InfluenceShown(InfluenceShown&&) noexcept;
    InfluenceShown& operator=(InfluenceShown&&) noexcept;
    ~InfluenceShown();

    // The key it was made from.
    std::uint64_t revision = 0;
    InfluenceView view;
    Things selection;
    double width = 0;     // px, of the plot
    bool isExact = false; // with the exact ordinates

    std::vector<PathOption> paths;
    std::size_t chosen = 0; // index into these, if there are any
    std::string says;       // why there is no line, and what to do; empty when there is one
    Effect effect;
    bool canTurn = false; // the effect has a horizontal counterpart
    std::optional<InfluenceReport> report;
    std::vector<std::string> assumed;  // its assumptions, in sentences
    std::vector<std::string> warnings; // what must be stated beside its figures

    double at = 0;       // m from the start: where the line is read
    double ordinate = 0; // at that place, N per N or m per N
    std::string value;   // the ordinate as text
    std::string title;
    std::string reading;
    std::string areas;
    std::vector<OrdinateRow> ordinates;
    std::vector<std::string> moving; // lines
    InfluenceLook look;
    Sketch sketch;

    PathShown path;     // each valid for its own key, which may be an earlier revision
    UnderShown members; // made only when asked for, like the next
    ByHandShown byHand;
    ExactPath exact;
    InfluenceJobs jobs; // those in progress
};

// `width`: px available to the plot. True while there is more to do: the line itself comes first,
// then whatever else is asked for; exact ordinates come last, and never during a drag.
bool deriveInfluence(const AppState&, InfluenceShown&, double width, Slice&);
// Whether these have been made, from this state.
[[nodiscard]] bool hasMembers(const AppState&, const InfluenceShown&);
[[nodiscard]] bool hasByHand(const AppState&, const InfluenceShown&);

[[nodiscard]] Job envelopeJob(const AppState&, const std::shared_ptr<EnvelopeShown>&);
[[nodiscard]] bool isOf(const EnvelopeShown&, const AppState&);

// The place on the path under a finger `x` px from the left edge of the plot, in m from the start;
// snaps to a joint that is close.
[[nodiscard]] double placeUnder(const Truss&, const InfluenceShown&, double x);

// The effect that the selection suggests: the force of a member, the reaction of a supported joint,
// the displacement of any other joint; else the first vertical reaction. None if there is neither.
[[nodiscard]] std::optional<Effect> effectFor(const Truss&, const Things& selection,
                                              bool horizontal);

} // namespace gusset
