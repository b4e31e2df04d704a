#pragma once
// The greatest tension and compression of each member over load cases and combinations, and which
// gives it. One factorisation serves them all.

#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "statics/solve/reliance.hpp"

#include <memory>
#include <vector>

namespace gusset {

struct ForceExtreme {
    double force = 0;  // N; 0 when no choice pulls (or presses) the member
    LoadChoice choice; // that gives it
};
struct MemberEnvelope {
    ForceExtreme tension;
    ForceExtreme compression; // force ≤ 0
};
struct Envelope {
    std::vector<MemberEnvelope> members; // one each
    Reliance reliance;                   // of all the choices that it runs over
};

[[nodiscard]] std::vector<LoadChoice> combinationChoices(const Truss&); // each of them alone
[[nodiscard]] std::vector<LoadChoice> caseChoices(const Truss&);        // likewise
// The choices that an envelope runs over: every combination, or every case when the model has none.
[[nodiscard]] std::vector<LoadChoice> envelopeChoices(const Truss&);

// Issues when the model has faults or can't be solved under one of them.
[[nodiscard]] Outcome<Envelope> envelopeOf(const Truss&, const std::vector<LoadChoice>&);

// The same in slices (core/progress). The truss stays where it is and as it is while the task
// lives.
class EnvelopeTask {
public:
    EnvelopeTask(const Truss&, std::vector<LoadChoice>);
    ~EnvelopeTask();
    EnvelopeTask(EnvelopeTask&&) noexcept;
    EnvelopeTask& operator=(EnvelopeTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // choices
    [[nodiscard]] Outcome<Envelope> take();  // once

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
