#pragma once
// The commands, from a model to the text of the answer. Nothing here prints.

#include "cli/command_list.hpp"
#include "exchange/files/model_file.hpp"
#include "report/text/phrases.hpp"

#include <string>
#include <vector>

namespace gusset::cli {

// Mechanism: there are no forces, as the truss moves under its loads or is too close to a
// mechanism, or the drawing asked for can't be made. The answer says why.
enum class Exit { Answered = 0, Mechanism = 1, BadInput = 2, WrongUse = 3, LostOutput = 4 };

struct NamedFile {
    std::string name; // without a folder
    std::string content;
};

struct Answer {
    Exit exit = Exit::Answered;
    std::string text;               // for standard output
    Issues faults;                  // for standard error, one line each
    std::string folder{};           // for the files
    std::vector<NamedFile> files{}; // to be written; the text is said if all of them are
};

// The answer to an input that can't be read.
[[nodiscard]] Answer refuse(const PhraseBook&, const Arguments&, const Issues& faults);
[[nodiscard]] Answer answer(const PhraseBook&, const Arguments&,
                            const Reading&); // precondition: one of commands()

// For a command that takes several inputs.
struct NamedReading {
    std::string name; // of its file; empty for a link or standard input
    Reading reading;
};
[[nodiscard]] Answer answerSeveral(const PhraseBook&, const Arguments&,
                                   const std::vector<NamedReading>&);
// Places within this file.
[[nodiscard]] Issues inFile(const PhraseBook&, const Issues&, const std::string& name);

} // namespace gusset::cli
