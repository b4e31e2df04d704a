#pragma once
// The values of a working as fractions and roots, beside the decimals that it is computed with.

#include "model/truss/truss.hpp"
#include "statics/solve/exact.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct ExactValues {             // all or none
    std::vector<Surd> forces;    // force units, a member each
    std::vector<Surd> reactions; // along each restraint
};

// A larger truss is worked with decimals: nobody writes such fractions, and the page would wait.
inline constexpr std::size_t kLargestExactWorking = 100; // members

// None where the class does not write exact numbers, the truss is too large, or its forces are not
// fractions and roots (ExactSolution::whyNot).
[[nodiscard]] ExactValues exactValuesOf(const Truss&, const LoadChoice&);
// The same in slices (core/progress).
class ExactValuesTask {
public:
    ExactValuesTask(const Truss&, const LoadChoice&);

    bool advance();
    [[nodiscard]] ExactValues take(); // once

private:
    std::optional<ExactTask> task_; // none where there are none
};

} // namespace gusset
