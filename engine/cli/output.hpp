#pragma once
// Where answers go. What can't be written is not taken for written.

#include <optional>
#include <string>
#include <string_view>

namespace gusset::cli {

// Before anything is written: a reader that stops reading, as `head` does, ends no program.
void prepareOutput();

// To standard output, to the last byte. Gives back why it was lost; nothing when it was written, or
// when whoever reads it had enough of it.
[[nodiscard]] std::optional<std::string> writeAnswer(std::string_view);

// A line on standard error. A stranger's words in it are spelled out: nothing of theirs reaches a
// terminal as a command or breaks the line in two.
void complain(std::string_view line);
void complainInLines(std::string_view ownWords);

} // namespace gusset::cli
