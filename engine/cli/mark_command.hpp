#pragma once
// gusset mark: what a class has handed in, marked row by row.

#include "cli/arguments.hpp"
#include "cli/commands.hpp"

#include <functional>

namespace gusset::cli {

// Where the marks go while there are more to come; nothing is lost of those that went.
struct MarkSink {
    // A line of the table, which is then safe; false if it could not be written.
    std::function<bool(const std::string& line)> put;
    std::function<void(const std::string& line, bool isLast)> progress;
    std::string before; // what an earlier run has put, if this one is to go on
};
// What can be gone on with: a table without a last line that was not finished.
[[nodiscard]] std::string wholeLines(const std::string& table);
// The answer's text is the table where nothing takes it line by line, and else how often each slip
// was made in all that stands in it.
[[nodiscard]] Answer answerMark(const PhraseBook&, const Arguments&, const MarkSink&);

} // namespace gusset::cli
