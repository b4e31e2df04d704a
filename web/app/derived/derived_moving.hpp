#pragma once
// What the pages of envelopes and influence lines show: made when one is looked at, and made again
// when the model, the path, the effect or the width of the plot changed.

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
    bool hasChoice = false;            // between cases and combinations
    std::string says;                  // what it runs over, why there is none, or how to get one
    bool refused = false;              // there is none, though there are loads to take it over
    std::vector<std::string> warnings; // what must be known of its forces
    std::vector<EnvelopeRow> rows;
};

struct PathOption {
    PathKind kind = PathKind::Moving;
    std::string name; // of the moving load, or what the path is
    std::vector<JointId> path;
};

struct InfluenceShown {
    // Moved and ended in derived_moving.cpp, once: as inline code they would be most of
    // each object file.
    InfluenceShown();
    InfluenceShown(InfluenceShown&&) noexcept;
    InfluenceShown& operator=(InfluenceShown&&) noexcept;
    ~InfluenceShown();

    // What it was made from.
    std::uint64_t revision = 0;
    InfluenceView view;
    Things selection;
    double width = 0;     // px, of the plot
    bool isExact = false; // with the exact ordinates

    std::vector<PathOption> paths;
    std::size_t chosen = 0; // of these, if there are any
    std::string says;       // why there is no line, and what to do; empty when there is one
    Effect effect;
    bool canTurn = false; // the effect has a horizontal twin
    std::optional<InfluenceReport> report;
    std::vector<std::string> assumed;  // what it rests on, in sentences
    std::vector<std::string> warnings; // and what must be known of its figures

    double at = 0;       // m from the start: where it is read
    double ordinate = 0; // there, N per N or m per N
    std::string value;   // the same as it is read
    std::string title;
    std::string reading;
    std::string areas;
    std::vector<OrdinateRow> ordinates;
    std::vector<std::string> moving; // lines
    InfluenceLook look;
    Sketch sketch;

    PathShown path;     // each as its key says, also of an earlier revision
    UnderShown members; // only where they are asked for, as the next
    ByHandShown byHand;
    ExactPath exact;
    InfluenceJobs jobs; // at work on these
};

// `width`: px that the plot may take. True while there is more to do: the line itself comes first,
// then what else is asked for; exact ordinates last, and not in a drag.
bool deriveInfluence(const AppState&, InfluenceShown&, double width, Slice&);
// These are there, and of this state.
[[nodiscard]] bool hasMembers(const AppState&, const InfluenceShown&);
[[nodiscard]] bool hasByHand(const AppState&, const InfluenceShown&);

[[nodiscard]] Job envelopeJob(const AppState&, const std::shared_ptr<EnvelopeShown>&);
[[nodiscard]] bool isOf(const EnvelopeShown&, const AppState&);

// Of a plot, for a finger that lies `x` px from its left edge: the place, m from the start of the
// path; on a joint when it is close to one.
[[nodiscard]] double placeUnder(const Truss&, const InfluenceShown&, double x);

// What the selection asks for: the force of a member, the reaction of a supported joint, the
// displacement of another; else the first upright reaction. Nothing when there is neither.
[[nodiscard]] std::optional<Effect> effectFor(const Truss&, const Things& selection,
                                              bool horizontal);

} // namespace gusset
