#pragma once
// Trusses that are hard on arithmetic, and a scan that holds what the engine says of them against
// whole fractions.

#include "model/truss.hpp"

#include <cstdint>
#include <string>

namespace gusset::support {

// A small truss under joint forces by components, on pins and a roller: braced strips whose E·A
// differ by up to 1e12, and determinate trusses as much as 1e9 times as long as high, of sizes
// between 1e-9 and 1e9 m.
[[nodiscard]] Truss extremeTruss(std::uint64_t seed);

struct ScanCounts {
    int right = 0;     // every force within 1e-6 of the largest, nothing to be said
    int flagged = 0;   // forces given, and in words how far they can be relied on
    int refused = 0;   // no forces, and in words why
    int unstable = 0;  // a mechanism, in fractions too or but for the rounding of its coordinates
    std::string wrong; // what was none of these, a line each; empty if all is well
};

// Of the trusses with these seeds.
[[nodiscard]] ScanCounts scanExtremes(std::uint64_t first, int count);

} // namespace gusset::support
