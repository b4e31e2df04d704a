#pragma once
// Output of answers. A failure to write is always reported.

#include <optional>
#include <string>
#include <string_view>

namespace gusset::cli {

// Call before writing: a reader that closes the pipe early, as `head` does, must not kill the
// program.
void prepareOutput();

// Writes all of it to standard output. Returns why that failed; nothing if it was written, or if
// the reader closed the pipe.
[[nodiscard]] std::optional<std::string> writeAnswer(std::string_view);

// Makes the folder, unless it is there. Returns why that failed.
[[nodiscard]] std::optional<std::string> makeFolder(const std::string& path);
// Writes a file whole or not at all, under another name first. One that has this content already is
// left alone. Returns why it failed.
[[nodiscard]] std::optional<std::string> writeWhole(const std::string& path,
                                                    std::string_view content);

// Writes a line to standard error. Control characters are spelled out, so that untrusted text can
// neither send commands to a terminal nor break the line.
void complain(std::string_view line);
void complainInLines(std::string_view ownWords);

// Behind what the file holds, at once on the disk; what could not be written, if anything.
[[nodiscard]] std::optional<std::string> append(const std::string& path, std::string_view text);
// One line on standard error, in place of the one before where that is a terminal.
void showProgress(std::string_view line, bool isLast);
[[nodiscard]] bool isTerminal(); // standard error

} // namespace gusset::cli
