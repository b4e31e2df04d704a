#pragma once
// What follows from the state: the solution, the working, the texts. Each is kept with the key it
// was made from and made again only when the key has changed and somebody looks.

#include "app/action.hpp"
#include "app/derived_checks.hpp"
#include "app/derived_moving.hpp"
#include "app/shown_working.hpp"
#include "report/movement_text.hpp"
#include "report/results_text.hpp"
#include "statics/exact.hpp"
#include "statics/solver.hpp"

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

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
    std::vector<MovementRow> movements; // these three only where the solution is displaced
    std::vector<StretchRow> stretches;
    std::vector<std::string> movementLines; // or a sentence on why it is not

    std::optional<ExactTask> exactTask; // at work while it has no result
    bool exactDone = false;
    std::vector<std::string> exactForces; // "25√5/2", a member each; empty where there are none
    std::string exactWhyNot;              // then a sentence

    EnvelopeShown envelope; // each while its page is looked at
    InfluenceShown influence;
    ChecksShown checks; // likewise, or while members are labelled by their use

    ShownWorking working;

    std::uint64_t linkRevision = 0;
    LoadChoice linkLoads;
    std::string link;      // of the committed model and the loads looked at, without '#'; or empty,
    std::string linkFault; // and a sentence on why there is none
};

// Solution and rows; cheap when nothing changed. Call once a frame after update.
void derive(const AppState&, Derived&);
// Exact forces, in slices: works for about `budget`. True while there is more to do. The next
// edit abandons it.
bool deriveExact(const AppState&, Derived&, std::chrono::microseconds budget);
// The working too; call when it is on the screen.
void deriveWorking(const AppState&, Derived&);

// The link; call when it, or its length, is on the screen.
void deriveLink(const AppState&, Derived&);

// The step of the working that is looked at, within its length; −1 when there is none or it belongs
// to another revision.
[[nodiscard]] int shownStep(const AppState&, const Derived&);
// Keys that leaf through the working don't know its length: asks for the step back that there is.
void keepStepInRange(const AppState&, const Derived&, Actions&);

} // namespace gusset
