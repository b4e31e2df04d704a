#pragma once
// Trusses that are hard on arithmetic, and a scan that holds what the engine says of them against
// whole fractions.

#include "model/truss/truss.hpp"

#include <cstdint>
#include <string>

namespace gusset::support {

// A small truss under joint forces by components, on pins and a roller: braced strips whose E·A
// differ by up to 1e12, and determinate trusses as much as 1e9 times as long as high, of sizes
// between 1e-9 and 1e9 m. Some have temperatures, lacks of fit and settlements, some rollers on
// slopes, some two supports at a joint.
[[nodiscard]] Truss extremeTruss(std::uint64_t seed);

struct ScanCounts {
    int right = 0;    // every force and reaction within 1e-6 of the largest, nothing to be said
    int flagged = 0;  // forces given, and in words how far they can be relied on
    int refused = 0;  // no forces, and in words why
    int unstable = 0; // a mechanism, in fractions too or but for the rounding of its coordinates
    int refusedNeedlessly = 0; // of the refused: fractions have an answer that does not hang on the
                               // rounding of coordinates
    int flaggedNeedlessly = 0; // of the flagged: right to 1e-9, not close to a mechanism, and no
                               // stiffness that stands out
    int withoutMoves = 0;      // of the right and flagged: displacements kept back, and said
    std::string wrong;         // what was none of these, a line each; empty if all is well
};

// Of the trusses with these seeds.
[[nodiscard]] ScanCounts scanExtremes(std::uint64_t first, int count);

} // namespace gusset::support
