#pragma once
// What follows from the state: the solution, the working, the texts. Each is kept with the key it
// was made from and made again only when the key has changed and somebody looks.

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
    // What it was made from.
    std::uint64_t revision = 0;
    LoadChoice choice;

    std::vector<std::string> forces; // "25√5/2", a member each; empty where there are none
    std::string whyNot;              // then a sentence
};
[[nodiscard]] bool isOf(const ExactShown&, const AppState&);

// Influence lines have theirs by themselves.
struct Jobs {
    Making<ExactShown> exact;
    Making<EnvelopeShown> envelope;
    Making<ChecksShown> checks;
    Making<ShownWorking> working;
    std::uint64_t workings = 0; // begun so far
};

struct Derived {
    // Moved and ended in derived.cpp, once: as inline code they would be most of each
    // object file.
    Derived();
    Derived(Derived&&) noexcept;
    Derived& operator=(Derived&&) noexcept;
    ~Derived();

    std::uint64_t revision = 0; // of the state that the solution belongs to
    LoadChoice choice;          // and the loads it is for
    Solver solver; // keeps from one frame of a drag to the next what numbers do not change
    Solution solution;
    std::vector<ForceRow> forces;
    std::vector<ReactionRow> reactions;
    std::vector<std::string> verdict;
    std::string whyUnsolved;           // of these, why there are no forces; empty if there are
    std::vector<std::string> warnings; // of these, what must be known beside figures anywhere
    std::vector<std::string> warningsOfWorking;
    std::vector<MovementRow> movements; // these three only where the solution is displaced
    std::vector<StretchRow> stretches;
    std::vector<std::string> movementLines; // or a sentence on why it is not

    ExactShown exact; // each while its page is looked at
    EnvelopeShown envelope;
    InfluenceShown influence;
    ChecksShown checks; // likewise, or while members are labelled by their use
    ShownWorking working;
    Jobs jobs; // at work on these

    std::uint64_t linkRevision = 0;
    LoadChoice linkLoads;
    std::string link;      // of the committed model and the loads looked at, without '#'; or empty,
    std::string linkFault; // and a sentence on why there is none
};

// Solution and rows; cheap when nothing changed. Call once a frame after update.
void derive(const AppState&, Derived&);
// The following make what its page shows, as far as the slice goes; call when it is on the screen.
// True while there is more to do.
bool deriveExact(const AppState&, Derived&, Slice&);
bool deriveEnvelope(const AppState&, Derived&, Slice&);
bool deriveChecks(const AppState&, Derived&, Slice&);
bool deriveWorking(const AppState&, Derived&, Slice&);

// Of the verdict the sentence to tell whoever does not see the board: what it is, or why it has no
// forces. Precondition: there is a verdict.
[[nodiscard]] const std::string& newsOf(const Derived&);

// The link; call when it, or its length, is on the screen.
void deriveLink(const AppState&, Derived&);

// The step of the working that is looked at, within its length; none when there is none or it
// belongs to another revision.
[[nodiscard]] std::optional<int> shownStep(const AppState&, const Derived&);
// Keys that leaf through the working don't know its length: asks for the step back that there is.
void keepStepInRange(const AppState&, const Derived&, Actions&);

} // namespace gusset
