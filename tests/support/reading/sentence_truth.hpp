#pragma once
// What the sentences of a working claim, derived again from the model and the solver's answer:
// symmetry, rules for zero-force members, places off the truss, loads, the count.

#include "model/truss/truss.hpp"

#include <string>

namespace gusset::support {

struct SentenceCounts { // of those that were judged
    int inclined = 0;
    int shared = 0;
    int symmetric = 0;
    int together = 0;
    int zeros = 0;
    int leftOut = 0;
    int places = 0;
    int halves = 0; // reactions by symmetry
};

// The first sentence of the truss's working that is not true of it, and what is wrong with it;
// empty if all are. The truss is statically determinate.
[[nodiscard]] std::string falseSentence(const Truss&, SentenceCounts&);

} // namespace gusset::support
