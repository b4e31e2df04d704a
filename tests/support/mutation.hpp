#pragma once
// Seeded damage to links and files, and what must hold of the reading whatever the damage: an
// outcome or an issue with words, never a crash, and an outcome that can be written and read again.

#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// Bytes of a text changed, lost, doubled, swapped in; pieces cut, repeated, taken from `spare`.
[[nodiscard]] std::string mutated(std::string text, const std::string& spare, Random&);

// JSON whose syntax stays: a number or two become others, a text becomes another of the file's, an
// element of a list is doubled or lost.
[[nodiscard]] std::string withOtherTokens(std::string json, Random&);

struct FuzzTally {
    long opened = 0;                 // read as a model in spite of the damage
    long refused = 0;                // with an issue
    std::vector<std::string> broken; // what must hold and did not, with the text
};

// One text, mutated and read. The kinds of text, in turn: a model file, a link, the compact text
// within a link, and the deflated bytes within a link, these two with a right checksum again.
void fuzzOnce(Random&, FuzzTally&);

} // namespace gusset::support
