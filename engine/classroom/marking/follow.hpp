#pragma once
// The least set of slips that explains a sheet, whatever order it was worked in. Private to
// classroom/marking.

#include "classroom/marking/slip_kinds.hpp"

namespace gusset {

// What a sheet is judged by. Values by the number of the unknown, force units.
struct SheetBasis {
    Structure structure;
    std::vector<PartOfTruss> parts; // in the order in which one would try them
    std::vector<double> truth;
    double largest = 0;
    Tolerance tolerance{};
    double metre = 1; // of a length unit
};

struct Account { // of one unknown
    Verdict verdict = Verdict::Blank;
    std::optional<double> expected{};
    std::optional<std::size_t> part{}; // on which it was found
    std::optional<std::size_t> slip{};
    bool isTrivial = false; // no other force that is not 0 is in its equation
};
struct FoundSlip {
    std::optional<std::size_t> part{};
    std::vector<SlipKind> fits{};
    std::vector<int> answers{};
};
struct Explanation {
    std::vector<Account> accounts;
    std::vector<FoundSlip> slips;
    bool isOfFewSlips = true; // or no small set explains the sheet: these are as they come
};
// Precondition: the truss is statically determinate.
[[nodiscard]] Explanation explainSheet(const SheetBasis&,
                                       const std::vector<std::optional<double>>& written);

[[nodiscard]] bool isRight(const SheetBasis&, int unknown, double written);

} // namespace gusset
