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

constexpr std::string_view kAndMore = "…";

bool takesSeveral(const Command& command) { return command.input.ends_with(kAndMore); }

namespace {

// "FILE", also of "FILE…".
std::string inputOf(const Command& command) {
    const std::size_t more = takesSeveral(command) ? kAndMore.size() : 0;
    return std::string(command.input.substr(0, command.input.size() - more));
}

template <class Named>
const Named* find(std::span<const Named> list, std::string_view name) {
    const auto found =
        std::find_if(list.begin(), list.end(), [&](const Named& it) { return it.name == name; });
    return found == list.end() ? nullptr : &*found;
}

bool isOption(const std::string& word) { return word.size() > 1 && word[0] == '-'; }
bool isHelp(const std::string& word) { return word == "--help" || word == "-h"; }

class Parser {
public:
    Parser(std::span<const Command> commands, const std::vector<std::string>& words)
        : commands_(commands), words_(words) {}

    Parsed parse() {
        takeFirst();
        bool optionsEnd = false;
        while (parsed_.asks == Asks::Answer && !parsed_.misuse && at_ < words_.size()) {
            const std::string& word = words_[at_++];
            if (!optionsEnd && word == "--") {
                optionsEnd = true;
            } else if (!optionsEnd && isHelp(word)) {
                parsed_.asks = Asks::Help;
            } else if (!optionsEnd && isOption(word)) {
                takeOption(word);
            } else {
                takeInput(word);
            }
        }
        if (parsed_.asks == Asks::Answer && !parsed_.misuse && parsed_.arguments.input.empty() &&
            !parsed_.arguments.command->mayLackInput) {
            failOfCommand("needs a " + inputOf(*parsed_.arguments.command));
        }
        if (parsed_.asks == Asks::Answer && !parsed_.misuse && parsed_.arguments.more.empty() &&
            !parsed_.arguments.command->more.empty()) {
            failOfCommand("needs " + std::string(parsed_.arguments.command->more) + " after the " +
                          std::string(parsed_.arguments.command->input));
        }
        return std::move(parsed_);
    }

private:
    void fail(std::string says) { parsed_.misuse = std::move(says); }
    void failOfCommand(const std::string& says) {
        fail(std::string(parsed_.arguments.command->name) + " " + says);
    }

    // The command, or --help or --version of the program itself.
    void takeFirst() {
        if (words_.empty()) {
            return fail("what to do? Name a command");
        }
        const std::string& word = words_[at_++];
        const bool isVersion = word == "--version";
        if (isVersion || isHelp(word) || word == "help") {
            parsed_.asks = isVersion ? Asks::Version : Asks::Help;
            return isVersion || at_ == words_.size() ? void() : takeCommand(words_[at_]);
        }
        if (isOption(word)) {
            return fail("options come after the command, and " + word + " comes before it");
        }
        takeCommand(word);
    }

    void takeCommand(const std::string& name) {
        parsed_.arguments.command = find(commands_, name);
        if (!parsed_.arguments.command) {
            fail("there is no command \"" + name + "\"");
        }
    }

    void takeInput(const std::string& word) {
        const std::string what = inputOf(*parsed_.arguments.command);
        if (word.empty()) {
            return failOfCommand("needs a " + what + ", and the one given is empty");
        }
        const Command& command = *parsed_.arguments.command;
        if (!parsed_.arguments.input.empty() && (takesSeveral(command) || !command.more.empty())) {
            return parsed_.arguments.more.push_back(word);
        }
        if (!parsed_.arguments.input.empty()) {
            return failOfCommand("takes one " + what + ", but \"" + word + "\" was given too");
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
        if (isHindered(*option)) {
            return;
        }
        if (option->value.empty()) {
            parsed_.arguments.options.emplace_back(name, "");
            return equals == std::string::npos ? void()
                                               : failOfCommand("takes no value for " + name);
        }
        const bool isNext = equals == std::string::npos;
        if (isNext && (at_ >= words_.size() || words_[at_].starts_with("--"))) {
            return failOfCommand("needs " + std::string(option->value) + " after " + name);
        }
        const std::string value = isNext ? words_[at_++] : word.substr(equals + 1);
        if (value.empty()) {
            return failOfCommand("needs " + std::string(option->value) + " after " + name +
                                 ", and what is given is empty");
        }
        parsed_.arguments.options.emplace_back(name, value);
    }

    // Whether the option was given before, or another of its group.
    bool isHindered(const Option& option) {
        for (const auto& [given, value] : parsed_.arguments.options) {
            const Option* other = find(parsed_.arguments.command->options, given);
            const std::string name(option.name);
            if (other == &option) {
                failOfCommand("takes " + name + " once");
            } else if (option.group != 0 && other->group == option.group) {
                failOfCommand("takes " + given + " or " + name + ", not both");
            }
        }
        return parsed_.misuse.has_value();
    }

    std::span<const Command> commands_;
    const std::vector<std::string>& words_;
    std::size_t at_ = 0; // index of the next word
    Parsed parsed_;
};

} // namespace

Parsed parseArguments(std::span<const Command> commands, const std::vector<std::string>& words) {
    return Parser(commands, words).parse();
}

} // namespace gusset::cli
