#pragma once
// What follows from the state: the solution, the working, the texts. Each is cached with the key it
// was made from, and is remade only when the key has changed and it is about to be shown.

#include "app/derived/derived_checks.hpp"
#include "app/derived/derived_moving.hpp"
#include "app/derived/shown_working.hpp"
#include "app/derived/slices.hpp"
#include "app/state/action.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "statics/solve/solver.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace gusset {

struct ExactShown {
    // The key it was made from.
    std::uint64_t revision = 0;
    LoadChoice choice;

    std::vector<std::string> forces; // "25√5/2", one per member; empty if there are none
    std::string whyNot;              // the reason, as a sentence
};
[[nodiscard]] bool isOf(const ExactShown&, const AppState&);

// Influence lines have their own jobs.
struct Jobs {
    Making<ExactShown> exact;
    Making<EnvelopeShown> envelope;
    Making<ChecksShown> checks;
    Making<ShownWorking> working;
    std::uint64_t workings = 0; // number begun so far
};

struct Derived {
    // Special members are in derived.cpp: as inline code they would be most of each object file.
    Derived();
    Derived(Derived&&) noexcept;
    Derived& operator=(Derived&&) noexcept;
    ~Derived();

    std::uint64_t revision = 0; // of the state that was solved
    LoadChoice choice;          // the loads that it was solved for
    Solver solver; // keeps what numbers do not change from one frame of a drag to the next
    Solution solution;
    std::vector<ForceRow> forces;
    std::vector<ReactionRow> reactions;
    std::vector<std::string> verdict;
    std::string whyUnsolved; // why there are no forces for these loads; empty if there are
    std::vector<std::string> warnings; // what must be stated beside any figures for these loads
    std::vector<std::string> warningsOfWorking;
    std::vector<MovementRow> movements; // these three only when displacements have been solved
    std::vector<StretchRow> stretches;
    std::vector<std::string> movementLines; // or a sentence saying why there are none

    ExactShown exact; // each made only while its page is shown
    EnvelopeShown envelope;
    InfluenceShown influence;
    ChecksShown checks; // likewise, or while members are labelled by their use
    ShownWorking working;
    Jobs jobs; // those in progress

    std::uint64_t linkRevision = 0;
    LoadChoice linkLoads;
    std::string link;      // of the committed model and the load choice, without '#'; if empty,
    std::string linkFault; // a sentence saying why there is none
};

// The solution and its rows; cheap when nothing has changed. Call once a frame, after update.
void derive(const AppState&, Derived&);
// Each of these makes what its page shows, as far as the slice allows; call it while the page is on
// the screen. True while there is more to do.
bool deriveExact(const AppState&, Derived&, Slice&);
bool deriveEnvelope(const AppState&, Derived&, Slice&);
bool deriveChecks(const AppState&, Derived&, Slice&);
bool deriveWorking(const AppState&, Derived&, Slice&);

// The verdict as a sentence for those who can't see the board: what the truss is, or why it has no
// forces. Precondition: there is a verdict.
[[nodiscard]] const std::string& newsOf(const Derived&);

// Makes the link; call when the link or its length is on the screen.
void deriveLink(const AppState&, Derived&);

// The step of the working that is shown, clamped to its length; none if there is no working or it
// belongs to another revision.
[[nodiscard]] std::optional<int> shownStep(const AppState&, const Derived&);
// Where a working that is read step by step has got to; none: it is read as a whole, as a table is,
// or there is none.
struct StepPlace {
    int step = 0;
    int count = 0;
};
[[nodiscard]] std::optional<StepPlace> stepPlace(const AppState&, const Derived&);
// The keys that leaf through the working don't know its length: this brings the step back into
// range.
void keepStepInRange(const AppState&, const Derived&, Actions&);

} // namespace gusset
