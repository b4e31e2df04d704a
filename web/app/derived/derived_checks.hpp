#pragma once
// What the page of checks and the utilisation labels on the board show: made when one of them is
// shown, and remade when the model or the loads change.

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
    // The key it was made from.
    std::uint64_t revision = 0;
    LoadChoice choice;
    bool ofAll = false;

    bool hasChoice = false; // there are several loads to take the worst of
    MemberChecks checks;    // no members if the truss is not solved
    CheckedLoads loads;
    std::vector<CheckRow> rows;
    std::vector<std::string> lines;
    std::vector<std::string> warnings; // what must be stated beside the forces
    std::vector<std::string> caution;

    std::uint64_t workingRevision = 0;
    MemberId worked;              // the selected member, if only one is selected
    std::vector<Passage> working; // its check; empty without one
};

// Makes everything except the check that is worked in full. Precondition: the solution is of the
// state.
[[nodiscard]] Job checksJob(const AppState&, const Solution&, const std::shared_ptr<ChecksShown>&);
// Works the check of the selected member, if it is a different one.
void checkPicked(const AppState&, ChecksShown&);

[[nodiscard]] bool showsChecks(const AppState&); // the page is on the screen
[[nodiscard]] bool showsUse(const AppState&);    // members are labelled by their use
// Whether what the board shows was made from this state.
[[nodiscard]] bool isOf(const ChecksShown&, const AppState&);

} // namespace gusset
