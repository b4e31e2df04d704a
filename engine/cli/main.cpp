// The command line: the one place that prints and opens files.

#include "cli/commands.hpp"
#include "cli/input.hpp"

#include <cstdio>

namespace {

using namespace gusset;
using namespace gusset::cli;

// Labels are a stranger's: no control character of theirs reaches a terminal or breaks a line in
// two.
std::string onOneLine(std::string text) {
    for (char& c : text) {
        const auto code = static_cast<unsigned char>(c);
        c = code < 0x20 || code == 0x7F ? '?' : c;
    }
    return text;
}

int report(const Answer& answer) {
    std::fwrite(answer.text.data(), 1, answer.text.size(), stdout);
    for (const Issue& fault : answer.faults) {
        std::fprintf(stderr, "%s\n", onOneLine(fault.at + ": " + fault.says).c_str());
    }
    return static_cast<int>(answer.exit);
}

int run(const std::vector<std::string>& words) {
    if (words.size() == 1 && (words[0] == "--help" || words[0] == "help")) {
        return report({Exit::Answered, usage(commands()), {}});
    }
    const Parsed parsed = parseArguments(commands(), words);
    if (parsed.misuse) {
        std::fprintf(stderr, "gusset: %s.\n%s", onOneLine(*parsed.misuse).c_str(),
                     usage(commands()).c_str());
        return static_cast<int>(Exit::WrongUse);
    }
    const Outcome<Reading> reading = readInput(parsed.arguments.input);
    if (!reading) {
        return report(refuse(parsed.arguments, reading.issues()));
    }
    return report(answer(englishPhrases(), parsed.arguments, reading.value()));
}

} // namespace

int main(int count, char** words) {
    return run(std::vector<std::string>(words + 1, words + count));
}
