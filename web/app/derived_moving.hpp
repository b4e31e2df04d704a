#pragma once
// What the pages of envelopes and influence lines show: made when one is looked at, and made again
// when the model, the path, the effect or the width of the plot changed.

#include "app/state.hpp"
#include "report/envelope_text.hpp"
#include "report/influence_sketch.hpp"
#include "report/influence_text.hpp"
#include "report/passage.hpp"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct EnvelopeShown {
    std::uint64_t revision = 0; // what it was made from
    bool ofCases = false;
    bool hasChoice = false; // between cases and combinations
    std::string says;       // what it runs over, why there is none, or how to get one
    std::vector<EnvelopeRow> rows;
};

struct PathOption {
    PathKind kind = PathKind::Moving;
    std::string name; // of the moving load, or what the path is
    std::vector<JointId> path;
};

struct MembersUnder { // one moving load
    std::string caption;
    std::vector<EnvelopeRow> rows;
};

// Exact forces under a unit load on each joint of the path in turn, found in slices.
struct ExactPath {
    std::vector<ExactSolution> found; // a joint of the path each; empty when there are none
    std::optional<ExactTask> task;    // at work on the next one
    bool done = false;
    std::uint64_t made = 0; // grows when `found` is complete
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
    double width = 0; // px, of the plot
    std::uint64_t exactMade = 0;

    std::vector<PathOption> paths;
    std::size_t chosen = 0; // of these, if there are any
    std::string says;       // why there is no line, and what to do; empty when there is one
    std::optional<PathAnalysis> analysis;
    Effect effect;
    bool canTurn = false; // the effect has a horizontal twin
    std::optional<InfluenceReport> report;
    std::vector<std::string> assumed; // what it rests on, in sentences

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
    std::vector<MembersUnder> members;
    std::vector<Passage> byHand; // empty unless it is looked at
    std::uint64_t byHandRevision = 0;
    Effect byHandEffect;
    std::vector<JointId> byHandPath;
    ExactPath exact;
};

// `width`: px that the plot may take.
void deriveInfluence(const AppState&, InfluenceShown&, double width);
// Exact ordinates, in slices of about `budget`; call after deriveInfluence. True while there is
// more to do. The next edit, or another path, abandons it.
bool deriveExactOrdinates(const AppState&, InfluenceShown&, std::chrono::microseconds budget);
void deriveEnvelope(const AppState&, EnvelopeShown&);

// The page is on the screen.
[[nodiscard]] bool showsInfluence(const AppState&);
[[nodiscard]] bool showsEnvelope(const AppState&);

// Of a plot, for a finger that lies `x` px from its left edge: the place, m from the start of the
// path; on a joint when it is close to one.
[[nodiscard]] double placeUnder(const Truss&, const InfluenceShown&, double x);

// What the selection asks for: the force of a member, the reaction of a supported joint, the
// displacement of another; else the first upright reaction. Nothing when there is neither.
[[nodiscard]] std::optional<Effect> effectFor(const Truss&, const Things& selection,
                                              bool horizontal);

} // namespace gusset
