#include "app/page/sheet_request.hpp"

#include "exchange/forms/outline_file.hpp"
#include "exchange/links/link.hpp"
#include "statics/moving/envelope.hpp"

#include <algorithm>
#include <optional>
#include <vector>

namespace gusset {
namespace {

// What stands behind "name=" on a line of its own.
std::optional<std::string> wished(std::string_view wish, std::string_view name) {
    while (!wish.empty()) {
        const std::string_view line = wish.substr(0, wish.find('\n'));
        if (line.size() > name.size() && line.starts_with(name) && line[name.size()] == '=') {
            return std::string(line.substr(name.size() + 1));
        }
        wish.remove_prefix(std::min(wish.size(), line.size() + 1));
    }
    return std::nullopt;
}

LoadChoice loadsWished(std::string_view wish) {
    if (const auto id = wished(wish, "combination"); id && !id->empty()) {
        return OneCombination{*id};
    }
    const auto id = wished(wish, "case");
    return id && !id->empty() ? LoadChoice{OneCase{*id}} : LoadChoice{};
}

std::string wishFor(const LoadChoice& choice) {
    const std::string name = choiceName(choice);
    if (name.empty()) {
        return name;
    }
    return (isCombination(choice) ? "combination=" : "case=") + name;
}

SheetChoices choicesOf(const PhraseBook& book, const Truss& truss, std::string_view wish) {
    SheetChoices choices;
    const LoadChoice loads = loadsWished(wish);
    choices.loads = isThere(truss, loads) ? loads : LoadChoice{};
    choices.parts = partsNamed(wished(wish, "parts").value_or("")).value_or(choices.parts);
    choices.size = sizeNamed(wished(wish, "paper").value_or("")).value_or(choices.size);
    choices.across = wished(wish, "across").has_value();
    choices.project = wished(wish, "project").value_or("");
    choices.author = wished(wish, "author").value_or("");
    choices.date = wished(wish, "date").value_or("");
    choices.outline = standingOutline(book, truss);
    return choices;
}

} // namespace

std::string sheetOf(const AppState& state, std::string_view wish, std::string_view address,
                    const SheetStyles& styles) {
    SheetChoices choices = choicesOf(*state.book, state.committed, wish);
    if (!address.empty()) {
        const Outcome<std::string> link = openableLink(state.committed, choices.loads);
        choices.link = link ? std::string(address) + "#" + link.value() : std::string{};
    }
    return sheetHtml({*state.book, state.committed}, choices, styles);
}

std::string sheetTablesOf(const AppState& state, std::string_view wish) {
    return sheetCsv({*state.book, state.committed}, choicesOf(*state.book, state.committed, wish));
}

std::string sheetLoadsOf(const AppState& state) {
    const LoadChoice first =
        state.choice == LoadChoice{} ? usualLoads(state.committed) : state.choice;
    std::vector<LoadChoice> choices{first};
    for (const auto& more : {combinationChoices(state.committed), caseChoices(state.committed),
                             std::vector<LoadChoice>{{}}}) {
        choices.insert(choices.end(), more.begin(), more.end());
    }
    std::string lines;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        if (i == 0 || choices[i] != first) {
            lines += wishFor(choices[i]) + "\t" + loadsName(*state.book, choices[i]) + "\n";
        }
    }
    return lines;
}

} // namespace gusset
