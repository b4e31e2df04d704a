#pragma once
// The command line, parsed and checked against the options of each command.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset::cli {

struct Option {
    std::string_view name;  // "--case"
    std::string_view value; // placeholder of its value, "ID"; empty if it takes none
    int group = 0;          // only one option of a group may be given; 0: no group
    std::string_view says;  // one line for the help
};

struct Command {
    std::string_view name;
    std::string_view input; // placeholder of its first operand, "FILE"; of one or more, "FILE…"
    std::span<const Option> options;
    std::string_view says;      // one line for the usage
    std::string_view example;   // a complete command line that works in a checkout
    std::string_view more = {}; // placeholder of further operands, of which it needs one
    bool mayLackInput = false;
};

[[nodiscard]] bool takesSeveral(const Command&); // inputs

struct Arguments {
    const Command* command = nullptr;
    std::string input;
    std::vector<std::string> more{};                          // further operands
    std::vector<std::pair<std::string, std::string>> options; // name and value

    [[nodiscard]] bool has(std::string_view option) const;
    [[nodiscard]] std::string valueOf(std::string_view option) const; // "" when not given
};

enum class Asks { Answer, Help, Version }; // Help: on the command, or on all if none is named

struct Parsed {
    Asks asks = Asks::Answer;
    Arguments arguments;
    std::optional<std::string> misuse; // what is wrong with the arguments, without a full stop
};

// Options come after the command, before or after its operand, as "--case ID" or "--case=ID";
// nothing after "--" is an option.
[[nodiscard]] Parsed parseArguments(std::span<const Command>,
                                    const std::vector<std::string>& words);

} // namespace gusset::cli
