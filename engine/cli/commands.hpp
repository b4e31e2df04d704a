#pragma once
// The commands, from a model to what they print. Nothing here prints.

#include "cli/arguments.hpp"
#include "exchange/json.hpp"
#include "report/phrases.hpp"

#include <string>

namespace gusset::cli {

enum class Exit { Answered = 0, Mechanism = 1, BadInput = 2, WrongUse = 3 };

struct Answer {
    Exit exit = Exit::Answered;
    std::string text; // for standard output
    Issues faults;    // for standard error, one line each
};

[[nodiscard]] std::span<const Command> commands();
// To an input that can't be read.
[[nodiscard]] Answer refuse(const Arguments&, const Issues& faults);
[[nodiscard]] Answer answer(const PhraseBook&, const Arguments&,
                            const Reading&); // precondition: one of commands()

} // namespace gusset::cli
