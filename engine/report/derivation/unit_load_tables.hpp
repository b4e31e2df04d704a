#pragma once
// Names and tables of the unit load method. Private to report/.

#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/virtual_work_table.hpp"

namespace gusset {

struct UnitLoadNotes {
    const Writer& writer;
    const UnitLoadTable& unit;
    NumberStyle numbers;
    std::string moved; // the unit of displacements
    int answer = 0;    // decimals of the displacement
    int shares = 0;    // of each part of it
};
[[nodiscard]] UnitLoadNotes unitLoadNotes(const Writer&, const UnitLoadTable&);

// N, e, n, δ, r
[[nodiscard]] Token forceToken();
[[nodiscard]] Token growthToken();
[[nodiscard]] Token underUnitToken();
[[nodiscard]] Token soughtToken();
[[nodiscard]] Token unitReactionToken();

[[nodiscard]] bool anyOf(const UnitLoadTable&, double UnitLoadRow::*part);
// All that adds to the displacement: n·e of each member, then −r·Δ of each support that moves.
[[nodiscard]] std::vector<double> partsOf(const UnitLoadTable&);

// Without columns that are zero for all members.
[[nodiscard]] TextTable unitLoadMembers(const UnitLoadNotes&);
[[nodiscard]] TextTable unitLoadSettlements(const UnitLoadNotes&);

} // namespace gusset
