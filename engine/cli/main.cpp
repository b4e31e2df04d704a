// The command line. See usage() for the commands and Exit for the exit statuses.

#include "cli/command_list.hpp"
#include "cli/commands.hpp"
#include "cli/drawing_commands.hpp"
#include "cli/input.hpp"
#include "cli/mark_command.hpp"
#include "cli/output.hpp"
#include "cli/profiles_command.hpp"
#include "phrases/faults/class_lists.hpp"
#include "report/results/solution_text.hpp"

namespace {

using namespace gusset;
using namespace gusset::cli;

// Each line names the file, so that it is clear by itself when many files are read in a row.
std::string lineOf(const Issue& fault, const std::string& file) {
    const std::string line = faultLine(englishPhrases(), fault);
    return file.empty() || fault.at == file ? line : file + ": " + line;
}

int lost(const std::string& what, const std::string& why) {
    complain("gusset: " + what + " could not be written (" + why +
             "): make room, or write it somewhere else");
    return static_cast<int>(Exit::LostOutput);
}

// Says on standard error how far it has come; 0 when all are written.
int writeFiles(const Answer& answer) {
    if (const std::optional<std::string> why = makeFolder(answer.folder)) {
        return lost("the folder " + answer.folder, *why);
    }
    std::size_t count = 0;
    for (const NamedFile& file : answer.files) {
        const std::string path = answer.folder + "/" + file.name;
        if (const std::optional<std::string> why = writeWhole(path, file.content)) {
            return lost(path, *why);
        }
        complain(std::to_string(++count) + " of " + std::to_string(answer.files.size()) + ": " +
                 path);
    }
    return 0;
}

int report(const Answer& answer, const std::string& file = {}) {
    if (const int failed = answer.files.empty() ? 0 : writeFiles(answer)) {
        return failed;
    }
    const std::optional<std::string> unwritten = writeAnswer(answer.text);
    for (const Issue& fault : answer.faults) {
        complain(lineOf(fault, file));
    }
    if (unwritten) {
        return lost("the answer", *unwritten);
    }
    return static_cast<int>(answer.exit);
}

int reportMisuse(const Parsed& parsed) {
    const Command* command = parsed.arguments.command;
    complain("gusset: " + *parsed.misuse + ".");
    complainInLines(command ? usageOf(*command) : usage(commands()));
    return static_cast<int>(Exit::WrongUse);
}

// Lines of faults name the files themselves.
int runSeveral(const Arguments& arguments) {
    std::vector<std::string> inputs{arguments.input};
    inputs.insert(inputs.end(), arguments.more.begin(), arguments.more.end());
    std::vector<NamedReading> readings;
    for (const std::string& input : inputs) {
        const std::string file = isPath(input) ? input : "";
        Outcome<Reading> reading = readInput(input);
        if (!reading) {
            return report(refuse(englishPhrases(), arguments, reading.issues()), file);
        }
        readings.push_back({file, std::move(reading).value()});
    }
    return report(answerSeveral(englishPhrases(), arguments, readings));
}

Issue refusedOut(const std::string& file) {
    return {IssueCode::Duplicate, file, phrase::kMarksAreThere};
}

// Row by row into a file, or onto standard output.
int runMark(const Arguments& arguments) {
    const std::string out = arguments.valueOf("--out");
    MarkSink sink;
    if (const Outcome<std::string> old = out.empty() ? Issue{} : readTextOf(out); old) {
        if (!arguments.has("--resume") && !old.value().empty()) {
            return report({Exit::BadInput, {}, {refusedOut(out)}});
        }
        sink.before = wholeLines(old.value());
        if (const std::optional<std::string> why = writeWhole(out, sink.before)) {
            return lost(out, *why);
        }
    }
    std::optional<std::string> unwritten;
    sink.put = [&](const std::string& line) {
        unwritten = out.empty() ? writeAnswer(line) : append(out, line);
        return !unwritten;
    };
    const bool isWatched = isTerminal() || arguments.has("--progress");
    sink.progress = [&](const std::string& line, bool isLast) {
        if (isWatched) {
            showProgress(line, isLast);
        }
    };
    Answer given = answerMark(englishPhrases(), arguments, sink);
    if (unwritten) {
        return lost(out.empty() ? "the answer" : out, *unwritten);
    }
    const std::string& input = arguments.input;
    return report(given, given.text.empty() && isPath(input) ? input : "");
}

int runTrace(const Arguments& arguments) {
    const Outcome<std::string> text = readTextOf(arguments.input);
    const Answer given = text ? answerTrace(arguments, text.value())
                              : refuse(englishPhrases(), arguments, text.issues());
    return report(given,
                  given.exit != Exit::WrongUse && isPath(arguments.input) ? arguments.input : "");
}

int run(const std::vector<std::string>& words) {
    const Parsed parsed = parseArguments(commands(), words);
    if (parsed.misuse) {
        return reportMisuse(parsed);
    }
    if (parsed.asks == Asks::Version) {
        return report({Exit::Answered, versionText(), {}});
    }
    if (parsed.asks == Asks::Help) {
        return report(
            {Exit::Answered,
             parsed.arguments.command ? helpOf(*parsed.arguments.command) : usage(commands()),
             {}});
    }
    if (takesSeveral(*parsed.arguments.command)) {
        return runSeveral(parsed.arguments);
    }
    if (parsed.arguments.command->name == "mark") {
        return runMark(parsed.arguments);
    }
    if (parsed.arguments.command->name == "trace") {
        return runTrace(parsed.arguments);
    }
    if (parsed.arguments.command->name == "profiles") {
        return report(answerProfiles(englishPhrases(), parsed.arguments));
    }
    const std::string& input = parsed.arguments.input;
    const Outcome<Reading> reading = input.empty() ? Reading{} : readInput(input);
    const Answer given = reading ? answer(englishPhrases(), parsed.arguments, reading.value())
                                 : refuse(englishPhrases(), parsed.arguments, reading.issues());
    return report(given, given.exit != Exit::WrongUse && isPath(input) ? input : "");
}

} // namespace

int main(int count, char** words) {
    prepareOutput();
    return run(std::vector<std::string>(words + 1, words + count));
}
