#pragma once
// The commands and what they take, and how that is told.

#include "cli/arguments.hpp"

namespace gusset::cli {

[[nodiscard]] std::span<const Command> commands();

[[nodiscard]] std::string usage(std::span<const Command>); // of all, a line or two each
[[nodiscard]] std::string usageOf(const Command&);         // of one, in short
[[nodiscard]] std::string helpOf(const Command&);          // its options, exits and an example
[[nodiscard]] std::string versionText();                   // and of the formats

} // namespace gusset::cli
