#pragma once
// Seeded damage to links and files, and what must hold when they are read, whatever the damage: an
// outcome or an issue with words, never a crash, and an outcome that can be written and read again.

#include "support/random.hpp"

#include <string>
#include <vector>

namespace gusset::support {

// Bytes of a text changed, lost, doubled or inserted; pieces cut out, repeated, or taken from
// `spare`.
[[nodiscard]] std::string mutated(std::string text, const std::string& spare, Random&);

// JSON whose syntax is kept: a number or two are replaced by others, a text by another of the
// file's, and an element of a list is doubled or lost.
[[nodiscard]] std::string withOtherTokens(std::string json, Random&);

struct FuzzTally {
    long opened = 0;                 // read as a model despite the damage
    long refused = 0;                // with an issue
    std::vector<std::string> broken; // what should hold and did not, with the text
};

// One text, mutated and read. The kinds of text, in turn: a model file, a link, the compact text
// within a link, and the deflated bytes within a link, the last two with a corrected checksum.
void fuzzOnce(Random&, FuzzTally&);

} // namespace gusset::support
