#pragma once
// Gives one input to every command and to the desk, and checks what must hold whatever the input
// is: there is an answer or a reason, the commands agree on the exit status, the output has the
// format asked for, and files and links reproduce the model unchanged.

#include "fuzz/every_command.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace gusset::support {

struct Judged {
    bool opened = false;
    long runs = 0;                   // of commands
    std::vector<std::string> broken; // failures, each with its command line
    // What took more than 5 s of the processor. For the long runs of the fuzz program to tell:
    // tests judge no times.
    std::vector<std::string> slow;
};

// `seed` chooses what the commands ask for.
[[nodiscard]] Judged judgeInput(const std::string& text, std::uint64_t seed);

// The input of a seed: mostly a model of grownModel as a file or a link, otherwise a damaged one.
[[nodiscard]] std::string inputOf(std::uint64_t seed);

} // namespace gusset::support
