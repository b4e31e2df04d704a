#include "fuzz/judge.hpp"

#include "cli/command_list.hpp"
#include "cli/commands.hpp"
#include "cli/drawing_commands.hpp"
#include "cli/input.hpp"
#include "desk/desk.hpp"
#include "exchange/drawings/dxf_writer.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "exchange/links/link.hpp"
#include "fuzz/every_request.hpp"
#include "fuzz/lectern_requests.hpp"
#include "fuzz/soundness.hpp"
#include "fuzz/workshop_requests.hpp"
#include "lectern/lectern.hpp"
#include "support/drawing/written_drawing.hpp"
#include "support/english.hpp"
#include "support/mutation.hpp"
#include "workshop/workshop.hpp"

#include <algorithm>
#include <ctime>

namespace gusset::support {

namespace {

using cli::Answer;
using cli::Exit;

constexpr double kSlow = 5; // s of the processor for one command

std::string spelled(const CommandLine& words) {
    std::string line;
    for (const std::string& word : words) {
        line += (line.empty() ? "" : " ") + word;
    }
    return line;
}

// A refusal is text, whatever format was asked for.
bool isDrawn(const std::string& text) { return text.rfind("<svg", 0) == 0; }

std::string faultOfForm(const cli::Arguments& arguments, const Answer& answer) {
    const std::string& text = answer.text;
    if (text.empty()) {
        return {};
    }
    if (arguments.has("--json") || arguments.command->name == "open") {
        return faultOfJson(text);
    }
    std::string fault = faultOfUtf8(text);
    const bool isPage = arguments.has("--html") || arguments.command->name == "handout";
    if (fault.empty() && (isPage || (arguments.has("--svg") && isDrawn(text)))) {
        fault = faultOfMarkup(text);
    }
    // Exact forces are lines of text below the table.
    if (fault.empty() && arguments.has("--csv") && !arguments.has("--exact")) {
        fault = faultOfCsv(text);
    }
    return fault.empty() && arguments.command->name != "link" ? faultOfNumbers(text) : fault;
}

std::string faultOfWords(const Answer& answer) {
    const bool refuses = answer.exit == Exit::BadInput || answer.exit == Exit::WrongUse;
    if (refuses && answer.faults.empty()) {
        return "refused without a word";
    }
    for (const Issue& issue : answer.faults) {
        if (issue.at.empty() || issue.says.empty()) {
            return "an issue without place or words";
        }
        if (const std::string fault = faultOfUtf8(support::english(issue)); !fault.empty()) {
            return "an issue: " + fault;
        }
    }
    if (answer.exit == Exit::Answered && answer.text.empty()) {
        return "answered with nothing";
    }
    return {};
}

class Judge {
public:
    Judge(const std::string& text, std::uint64_t seed) : text_(text), random_(seed) {}

    Judged judge() {
        const Outcome<Reading> read = readModelOrLink(text_);
        if (!read) {
            refusal(read.issues());
            return std::move(judged_);
        }
        judged_.opened = true;
        comesBack(read.value().truss);
        for (const CommandLine& words : everyCommand(read.value().truss, random_)) {
            run(words, read.value());
        }
        for (const std::string& request : everyRequest(read.value().truss, random_)) {
            ask("desk", request, [&] { return deskReply(englishPhrases(), request); });
        }
        for (const std::string& request : workshopRequests(read.value().truss, random_)) {
            ask("workshop", request, [&] { return workshopReply(englishPhrases(), request); });
        }
        Lectern lectern(englishPhrases());
        for (const std::string& request : lecternRequests(read.value().truss, random_)) {
            ask("lectern", request, [&] { return lectern.reply(request); });
        }
        for (const std::string& drawing : everyDrawing(read.value().truss)) {
            trace(mutated(drawing, text_, random_));
        }
        return std::move(judged_);
    }

private:
    void demand(const std::string& fault, const std::string& of) {
        if (!fault.empty()) {
            judged_.broken.push_back(of + ": " + fault);
        }
    }

    template <class Reply>
    auto timed(const std::string& name, const Reply& answer) {
        const std::clock_t start = std::clock();
        auto reply = answer();
        const double seconds = static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        if (seconds > kSlow) {
            judged_.slow.push_back(name + ": takes " + std::to_string(seconds) + " s");
        }
        return reply;
    }

    void refusal(const Issues& issues) {
        for (const CommandLine& words : {CommandLine{"solve", "-", "--json"}, {"working", "-"}}) {
            const cli::Parsed parsed = cli::parseArguments(cli::commands(), words);
            const Answer answer = cli::refuse(englishPhrases(), parsed.arguments, issues);
            ++judged_.runs;
            demand(faultOfForm(parsed.arguments, answer), spelled(words));
            demand(faultOfWords(answer), spelled(words));
        }
    }

    void comesBack(const Truss& truss) {
        const Outcome<Reading> fromFile = readModel(writeModel(truss));
        demand(fromFile && fromFile.value().truss == truss ? "" : "another model comes back",
               "file");
        const Outcome<Reading> fromLink = readLink(writeLink(truss));
        demand(fromLink && fromLink.value().truss == truss ? "" : "another model comes back",
               "link");
    }

    void run(const CommandLine& words, const Reading& reading) {
        const cli::Parsed parsed = cli::parseArguments(cli::commands(), words);
        ++judged_.runs;
        if (parsed.misuse) {
            return demand(parsed.misuse->empty() ? "misuse without a word" : "", spelled(words));
        }
        const Answer answer = timed(spelled(words), [&] {
            return cli::answer(englishPhrases(), parsed.arguments, reading);
        });
        demand(faultOfForm(parsed.arguments, answer), spelled(words));
        demand(faultOfWords(answer), spelled(words));
        agrees(words, answer);
    }

    // Desk and lectern answer in JSON, or say what is wrong and nothing else.
    template <class Reply>
    void ask(const char* where, const std::string& request, const Reply& answer) {
        const std::string name = where + (" " + request.substr(0, request.find(',')));
        ++judged_.runs;
        const std::string reply = timed(name, answer);
        demand(faultOfJson(reply), name);
        demand(reply == R"({"faults":[]})" ? "refused without a word" : "", name);
    }

    // The model as drawn, in every form that is read.
    std::vector<std::string> everyDrawing(const Truss& truss) {
        const std::vector<Stroke> strokes = drawnStrokes(truss, 0, random_);
        return {writeDxf(englishPhrases(), truss, truss.units.length), trussTable(truss),
                strokesAsDxf(strokes, 1, random_), strokesAsSvg(strokes, 1, random_)};
    }

    // A damaged drawing becomes a model that opens, or is refused with words.
    void trace(const std::string& drawing) {
        const CommandLine words{"trace", "-"};
        const cli::Parsed parsed = cli::parseArguments(cli::commands(), words);
        ++judged_.runs;
        const Answer answer =
            timed(spelled(words), [&] { return cli::answerTrace(parsed.arguments, drawing); });
        demand(faultOfWords(answer), spelled(words) + " of\n" + drawing);
        if (answer.exit == Exit::Answered && !readModel(answer.text)) {
            demand("no sound model", spelled(words) + " of\n" + drawing);
        }
    }

    // All commands on the whole model must end with the exit status of `solve`.
    void agrees(const CommandLine& words, const Answer& answer) {
        if (words == CommandLine{"solve", "-", "--text"}) {
            whole_ = answer.exit;
        }
        const bool ofWhole = words == CommandLine{"solve", "-", "--json"} ||
                             words == CommandLine{"solve", "-", "--csv"} ||
                             words == CommandLine{"working", "-", "--text"} ||
                             words == CommandLine{"working", "-", "--html"} ||
                             words == CommandLine{"check", "-"};
        if (ofWhole && answer.exit != whole_) {
            demand("exit status " + std::to_string(static_cast<int>(answer.exit)) +
                       " where solve has " + std::to_string(static_cast<int>(whole_)),
                   spelled(words));
        }
    }

    const std::string& text_;
    Random random_;
    Exit whole_ = Exit::Answered;
    Judged judged_;
};

} // namespace

Judged judgeInput(const std::string& text, std::uint64_t seed) { return Judge(text, seed).judge(); }

} // namespace gusset::support
