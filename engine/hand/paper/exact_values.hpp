#pragma once
// The values of a working as fractions and roots, in addition to its decimals.

#include "model/truss/truss.hpp"
#include "statics/solve/exact.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct ExactValues {             // all or none
    std::vector<Surd> forces;    // force units, one per member
    std::vector<Surd> reactions; // along each restraint
};

// A larger truss is worked in decimals: nobody writes such long fractions, and the page would have
// to wait.
inline constexpr std::size_t kLargestExactWorking = 100; // members

// None if the class does not use exact numbers, the truss is too large, or its forces are not
// fractions and roots (ExactSolution::whyNot).
[[nodiscard]] ExactValues exactValuesOf(const Truss&, const LoadChoice&);
// The same in slices (core/progress).
class ExactValuesTask {
public:
    ExactValuesTask(const Truss&, const LoadChoice&);

    bool advance();
    [[nodiscard]] ExactValues take(); // once only

private:
    std::optional<ExactTask> task_; // none if there are no exact values
};

} // namespace gusset
