#pragma once
// What students hand in, as it comes: the sheet of one of them, links to such sheets, one a line,
// or the table of a class.

#include "core/outcome.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

enum class HandedInAs { Sheet, Links, Table };
[[nodiscard]] HandedInAs kindOfHandedIn(std::string_view text);

struct LinkedSheet {
    std::size_t row = 1;       // in the text
    Outcome<std::string> json; // for readAnswers, or why the link can't be read
};
[[nodiscard]] std::vector<LinkedSheet> linkedSheets(std::string_view text); // blank lines left out

[[nodiscard]] Statement placeOfRow(std::size_t row);

} // namespace gusset
