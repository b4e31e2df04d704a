#include "exchange/exercises/handed_in.hpp"

#include "exchange/exercises/answers_file.hpp"
#include "phrases/faults/class_lists.hpp"

#include <algorithm>

namespace gusset {

HandedInAs kindOfHandedIn(std::string_view text) {
    if (text.find(kAnswersLink) != text.npos) {
        return HandedInAs::Links;
    }
    const std::size_t start = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    return start != text.npos && text[start] == '{' ? HandedInAs::Sheet : HandedInAs::Table;
}

std::vector<LinkedSheet> linkedSheets(std::string_view text) {
    std::vector<LinkedSheet> sheets;
    for (std::size_t row = 1; !text.empty(); ++row) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.find_first_not_of(" \t\r") != line.npos) {
            sheets.push_back({row, linkedAnswers(line)});
        }
    }
    return sheets;
}

Statement placeOfRow(std::size_t row) { return statement(phrase::kPlaceRow, {{"row", row}}); }

} // namespace gusset
