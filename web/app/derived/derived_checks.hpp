#pragma once
// What the page of checks and the board's figures of use show: made when one of them is looked at,
// and made again when the model or the loads changed.

#include "app/derived/slices.hpp"
#include "app/state/state.hpp"
#include "report/derivation/passage.hpp"
#include "report/results/check_text.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace gusset {

struct ChecksShown {
    // What it was made from.
    std::uint64_t revision = 0;
    LoadChoice choice;
    bool ofAll = false;

    bool hasChoice = false; // there are several loads of which the worst can be taken
    MemberChecks checks;    // no members: the truss is not solved
    CheckedLoads loads;
    std::vector<CheckRow> rows;
    std::vector<std::string> lines;
    std::vector<std::string> warnings; // of these, what must be known of the forces
    std::vector<std::string> caution;

    std::uint64_t workingRevision = 0;
    MemberId worked;              // the one member that is picked, if only one is
    std::vector<Passage> working; // its check; empty without one
};

// Makes all but the check that is worked. Precondition: the solution is of the state.
[[nodiscard]] Job checksJob(const AppState&, const Solution&, const std::shared_ptr<ChecksShown>&);
// Works the check of the picked member, if it is another.
void checkPicked(const AppState&, ChecksShown&);

[[nodiscard]] bool showsChecks(const AppState&); // the page is on the screen
[[nodiscard]] bool showsUse(const AppState&);    // members are labelled by their use
// What the board shows is of this state.
[[nodiscard]] bool isOf(const ChecksShown&, const AppState&);

} // namespace gusset
