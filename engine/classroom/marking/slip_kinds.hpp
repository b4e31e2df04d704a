#pragma once
// Which single slip gives what a student wrote, on a part of the truss. Private to
// classroom/marking.

#include "classroom/marking/free_bodies.hpp"
#include "classroom/marking/marking.hpp"
#include "classroom/marking/written.hpp"

namespace gusset {

// A student's values, by the number of the unknown, as far as they are used.
struct OwnValues {
    std::vector<bool> known;
    std::vector<double> value; // force units
    std::vector<double> error; // how far it may be from what was worked with
};
// How many times the usual error of a result still counts as rounding.
inline constexpr double kRoundings = 2;
struct Estimate {
    double value = 0;
    double error = 0; // from rounding alone, the usual one
};
// The value of an unknown that makes a sum 0 with the own values; precondition: its share is not 0.
[[nodiscard]] Estimate estimate(const PartOfTruss&, const Sum&, const OwnValues&, int unknown);

// What is written for the unknowns of a part that its equations give.
struct WrittenHere {
    std::vector<int> unknowns;
    std::vector<std::optional<double>> values; // of each of them; none if blank
    std::vector<bool> follows;                 // of each of them: from the part's equation for it
    std::vector<Estimate> expected;
};
// The kinds that give all written values within rounding, each once.
[[nodiscard]] std::vector<SlipKind> slipsThatFit(const Structure&, const PartOfTruss&,
                                                 const OwnValues&, const Rounding&,
                                                 const WrittenHere&);
// Of two written values of a joint that do not follow: whether one still balances one of the sums
// along x and y with the other as it is written.
[[nodiscard]] bool balancesOneSum(const Structure&, const PartOfTruss&, const OwnValues&,
                                  const Rounding&, const WrittenHere&, std::size_t which);

} // namespace gusset
