#pragma once
// What every page of the classroom shows of a truss, into an object that is open: its title, the
// model as text, figure and tables of what is given, and the names of members and joints.

#include "classroom/exercise/exercise.hpp"
#include "exchange/json/json_text.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

void writeGiven(JsonText&, const Writer&, const LoadChoice&, const std::vector<Question>&);

// A sentence for each.
[[nodiscard]] std::vector<std::string> faultSentences(const PhraseBook&, const Issues&);

// The answer to a request that can't be met, with a sentence for each fault.
[[nodiscard]] std::string refusal(const std::vector<std::string>& faults);
[[nodiscard]] std::string refusalOf(const PhraseBook&, const Issues&);

} // namespace gusset
