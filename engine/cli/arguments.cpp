#include "cli/arguments.hpp"

#include <algorithm>

namespace gusset::cli {

bool Arguments::has(std::string_view option) const {
    return std::any_of(options.begin(), options.end(),
                       [&](const auto& it) { return it.first == option; });
}

std::string Arguments::valueOf(std::string_view option) const {
    for (const auto& [name, value] : options) {
        if (name == option) {
            return value;
        }
    }
    return {};
}

namespace {

template <class Named>
const Named* find(std::span<const Named> list, std::string_view name) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const Named& it) { return it.name == name; });
    return found == list.end() ? nullptr : &*found;
}

class Parser {
public:
    Parser(std::span<const Command> commands, const std::vector<std::string>& words)
        : commands_(commands), words_(words) {}

    Parsed parse() {
        parsed_.arguments.command = words_.empty() ? nullptr : find(commands_, words_[0]);
        if (words_.empty()) {
            fail("what to do? Name a command");
        } else if (!parsed_.arguments.command) {
            fail("there is no command \"" + words_[0] + "\"");
        }
        for (at_ = 1; at_ < words_.size() && !parsed_.misuse; ++at_) {
            const std::string& word = words_[at_];
            if (word.size() > 1 && word[0] == '-') {
                takeOption(word);
            } else {
                takeInput(word);
            }
        }
        if (!parsed_.misuse && parsed_.arguments.input.empty()) {
            failOfCommand("needs a " + std::string(parsed_.arguments.command->input));
        }
        return std::move(parsed_);
    }

private:
    void fail(std::string says) { parsed_.misuse = std::move(says); }
    void failOfCommand(const std::string& says) {
        fail(std::string(parsed_.arguments.command->name) + " " + says);
    }

    void takeInput(const std::string& word) {
        if (!parsed_.arguments.input.empty()) {
            return failOfCommand("takes one " + std::string(parsed_.arguments.command->input) +
                                 ", and \"" + word + "\" is one more");
        }
        parsed_.arguments.input = word;
    }

    void takeOption(const std::string& word) {
        const std::size_t equals = word.find('=');
        const std::string name = word.substr(0, equals);
        const Option* option = find(parsed_.arguments.command->options, name);
        if (!option) {
            return failOfCommand("has no option " + name);
        }
        for (const auto& [given, value] : parsed_.arguments.options) {
            const Option* other = find(parsed_.arguments.command->options, given);
            if (other == option || (option->group != 0 && other->group == option->group)) {
                return failOfCommand(other == option
                                         ? "takes " + name + " once"
                                         : "takes " + given + " or " + name + ", not both");
            }
        }
        if (!option->value.empty() && equals == std::string::npos && at_ + 1 >= words_.size()) {
            return failOfCommand("needs " + std::string(option->value) + " after " + name);
        }
        if (option->value.empty() && equals != std::string::npos) {
            return failOfCommand("takes no value for " + name);
        }
        std::string value;
        if (!option->value.empty()) {
            value = equals == std::string::npos ? words_[++at_] : word.substr(equals + 1);
        }
        parsed_.arguments.options.emplace_back(name, std::move(value));
    }

    std::span<const Command> commands_;
    const std::vector<std::string>& words_;
    std::size_t at_ = 0;
    Parsed parsed_;
};

// "[--case ID | --combination ID] [--exact]": options of one group stand together.
std::string optionsOf(const Command& command) {
    std::string text;
    int group = 0;
    for (const Option& option : command.options) {
        const bool isAlternative = option.group != 0 && option.group == group;
        if (isAlternative) {
            text.pop_back();
        }
        text += isAlternative ? " | " : " [";
        text += option.name;
        text += (option.value.empty() ? "" : " ") + std::string(option.value) + "]";
        group = option.group;
    }
    return text;
}

} // namespace

Parsed parseArguments(std::span<const Command> commands, const std::vector<std::string>& words) {
    return Parser(commands, words).parse();
}

std::string usage(std::span<const Command> commands) {
    std::string text = "Usage:\n";
    for (const Command& command : commands) {
        text += "  gusset " + std::string(command.name) + " " + std::string(command.input) +
                optionsOf(command) + "\n      " + std::string(command.says) + "\n";
    }
    return text + "FILE is a path, a link, or - for standard input.\n"
                  "Exit status: 0 answered; 1 the truss is a mechanism under these loads; "
                  "2 the input is bad; 3 wrong use.\n";
}

} // namespace gusset::cli
