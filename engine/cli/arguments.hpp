#pragma once
// What was asked for on the command line, checked against what each command takes.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gusset::cli {

struct Option {
    std::string_view name;  // "--case"
    std::string_view value; // what its value is called, "ID"; empty: it has none
    int group = 0;          // of the options of one group only one may be given; 0: no group
    std::string_view says;  // for the help, on one line
};

struct Command {
    std::string_view name;
    std::string_view input; // what its one operand is called, "FILE"
    std::span<const Option> options;
    std::string_view says;    // for the usage, on one line
    std::string_view example; // a whole command that works in a checkout
};

struct Arguments {
    const Command* command = nullptr;
    std::string input;
    std::vector<std::pair<std::string, std::string>> options; // name and value

    [[nodiscard]] bool has(std::string_view option) const;
    [[nodiscard]] std::string valueOf(std::string_view option) const; // "" when not given
};

enum class Asks { Answer, Help, Version }; // help of the command, or of all when there is none

struct Parsed {
    Asks asks = Asks::Answer;
    Arguments arguments;
    std::optional<std::string> misuse; // what is wrong with the words, without a full stop
};

// Options stand behind the command, before or behind its operand, as "--case ID" or "--case=ID";
// behind "--" there are none.
[[nodiscard]] Parsed parseArguments(std::span<const Command>,
                                    const std::vector<std::string>& words);

} // namespace gusset::cli
