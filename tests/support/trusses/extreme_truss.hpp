#pragma once
// Numerically hard trusses, and a scan that compares what the engine says of them with exact
// fractions.

#include "model/truss/truss.hpp"

#include <cstdint>
#include <string>

namespace gusset::support {

// A small truss under joint forces by components, on pins and a roller: braced strips whose E·A
// differ by up to 1e12, and statically determinate trusses up to 1e9 times as long as high, of
// sizes between 1e-9 and 1e9 m. Some have temperature changes, misfits and settlements, some
// inclined rollers, some two supports at a joint.
[[nodiscard]] Truss extremeTruss(std::uint64_t seed);

struct ScanCounts {
    int right = 0;    // every force and reaction within 1e-6 of the largest, without a warning
    int flagged = 0;  // forces given, with a statement of how reliable they are
    int refused = 0;  // no forces, with the reason
    int unstable = 0; // a mechanism in exact fractions, or apart from coordinate rounding
    int refusedNeedlessly = 0; // of the refused: fractions have an answer that does not hang on the
                               // rounding of coordinates
    int flaggedNeedlessly = 0; // of the flagged: right to 1e-9, not close to a mechanism, and no
                               // stiffness that stands out
    int withoutMoves = 0;      // of the right and flagged: displacements withheld, with a statement
    std::string wrong;         // anything else, one per line; empty if all is well
};

// Over the trusses with these seeds.
[[nodiscard]] ScanCounts scanExtremes(std::uint64_t first, int count);

} // namespace gusset::support
