#pragma once
// The greatest tension and compression of each member over load cases and combinations, and which
// gives it. One factorisation serves them all.

#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "statics/solution.hpp"

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

[[nodiscard]] std::vector<LoadChoice> combinationChoices(const Truss&); // each of them alone
[[nodiscard]] std::vector<LoadChoice> caseChoices(const Truss&);        // likewise
// The choices that an envelope runs over: every combination, or every case when the model has none.
[[nodiscard]] std::vector<LoadChoice> envelopeChoices(const Truss&);

// A member each. Issues when the model has faults or can't be solved.
[[nodiscard]] Outcome<std::vector<MemberEnvelope>> envelopeOf(const Truss&,
                                                              const std::vector<LoadChoice>&);

// The same in slices (core/progress). The truss stays where it is and as it is while the task
// lives.
class EnvelopeTask {
public:
    EnvelopeTask(const Truss&, std::vector<LoadChoice>);
    ~EnvelopeTask();
    EnvelopeTask(EnvelopeTask&&) noexcept;
    EnvelopeTask& operator=(EnvelopeTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const;                   // choices
    [[nodiscard]] Outcome<std::vector<MemberEnvelope>> take(); // once

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
