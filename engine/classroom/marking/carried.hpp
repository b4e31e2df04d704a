#pragma once
// What follows from a student's own values on a part of the truss. Private to classroom/marking.

#include "classroom/marking/free_bodies.hpp"
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
    std::vector<Estimate> expected;            // by one equation: the one that it follows from
    std::vector<Sum> by;                       // that equation
    std::vector<bool> isAgreed;                // of each: all equations of the part give the same
};
// Errors of rounding are independent of each other.
[[nodiscard]] double ofBoth(double error, double another);

// Equations that are solved together for their unknowns.
struct SolvedTogether {
    std::vector<Sum> sums;
    std::vector<int> unknowns;
};
using Shares = std::vector<std::vector<double>>; // of each sum, of each force of the part

// Compares what is written for a part with its equations, within rounding. All that is passed in
// must outlive it.
class PartAsWritten {
public:
    PartAsWritten(const Structure&, const PartOfTruss&, const OwnValues&, const Rounding&,
                  const WrittenHere&);

    [[nodiscard]] const std::vector<int>& unknowns() const { return unknowns_; } // of the part
    [[nodiscard]] const ActingForce& forceOf(int unknown) const;
    [[nodiscard]] bool isWritten(std::size_t which, const Estimate&) const;
    // Whether the value balances one of the plain sums with all others as they are written.
    [[nodiscard]] bool isCarried(std::size_t which) const;
    // Whether these values follow from as many sums as they are, with all others as written.
    [[nodiscard]] bool areCarried(const std::vector<std::size_t>& which) const;
    // Of each unknown of these equations, with changed shares or not; none if they do not determine
    // it.
    [[nodiscard]] std::optional<std::vector<Estimate>> solved(const SolvedTogether&,
                                                              const Shares&) const;

private:
    [[nodiscard]] std::optional<double> writtenFor(int unknown) const;
    [[nodiscard]] bool balances(std::size_t which, const Sum&) const;

    const Structure& structure_;
    const PartOfTruss& part_;
    const OwnValues& own_;
    const Rounding& rounding_;
    const WrittenHere& here_;
    std::vector<int> unknowns_;
};

} // namespace gusset
