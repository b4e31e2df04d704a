#pragma once
// One input, given to every command, and what must hold of the answers whatever the input: an
// answer or words, an exit status that the commands agree on, output of the form that was asked
// for, and a model that files and links bring back unchanged.

#include "fuzz/every_command.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace gusset::support {

struct Judged {
    bool opened = false;
    long runs = 0;                   // of commands
    std::vector<std::string> broken; // what does not hold, with the command line
};

// `seed` picks what the commands ask for.
[[nodiscard]] Judged judgeInput(const std::string& text, std::uint64_t seed);

// The input of a seed: mostly a grown model as a file or a link, else one that was damaged.
[[nodiscard]] std::string inputOf(std::uint64_t seed);

} // namespace gusset::support
