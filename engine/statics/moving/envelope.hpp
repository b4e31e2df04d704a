#pragma once
// The greatest tension and compression of each member over load cases and combinations, with the
// choice that gives it. One factorisation serves them all.

#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "statics/solve/reliance.hpp"

#include <memory>
#include <vector>

namespace gusset {

struct ForceExtreme {
    double force = 0;  // N; 0 when no choice puts the member in tension (or compression)
    LoadChoice choice; // that gives it
};
struct MemberEnvelope {
    ForceExtreme tension;
    ForceExtreme compression; // force ≤ 0
};
struct Envelope {
    std::vector<MemberEnvelope> members; // one per member
    Reliance reliance;                   // over all these choices
};

[[nodiscard]] std::vector<LoadChoice> combinationChoices(const Truss&); // each combination alone
[[nodiscard]] std::vector<LoadChoice> caseChoices(const Truss&);        // each case alone
// The choices for an envelope: every combination, or every case when the model has none.
[[nodiscard]] std::vector<LoadChoice> envelopeChoices(const Truss&);

// Issues when the model has errors or can't be solved under one of them.
[[nodiscard]] Outcome<Envelope> envelopeOf(const Truss&, const std::vector<LoadChoice>&);

// The same in slices (core/progress). The truss must stay in place and unchanged while the task
// lives.
class EnvelopeTask {
public:
    EnvelopeTask(const Truss&, std::vector<LoadChoice>);
    ~EnvelopeTask();
    EnvelopeTask(EnvelopeTask&&) noexcept;
    EnvelopeTask& operator=(EnvelopeTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // choices
    [[nodiscard]] Outcome<Envelope> take();  // once only

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
