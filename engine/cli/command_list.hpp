#pragma once
// The commands, their options, and their help.

#include "cli/arguments.hpp"

namespace gusset::cli {

[[nodiscard]] std::span<const Command> commands();

[[nodiscard]] std::string usage(std::span<const Command>); // of all commands, a line or two each
[[nodiscard]] std::string usageOf(const Command&);         // of one command, in short
[[nodiscard]] std::string helpOf(const Command&); // its options, exit statuses and an example
[[nodiscard]] std::string versionText();          // the version of the program and of the formats

} // namespace gusset::cli
