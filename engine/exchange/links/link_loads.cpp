#include "exchange/links/link_loads.hpp"

#include "exchange/links/percent.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr std::string_view kCase = "&case=";
constexpr std::string_view kCombination = "&combination=";

// RFC 3986 §2.3, percent signs, and UTF-8, which some programs leave unencoded.
bool isOfName(char c) {
    const char lower = static_cast<char>(c | 0x20);
    return (c >= '0' && c <= '9') || (lower >= 'a' && lower <= 'z') ||
           std::string_view("%-._~").find(c) != std::string_view::npos ||
           static_cast<unsigned char>(c) >= 0x80;
}

// The name at the beginning, without the full stop of a sentence that the link may end.
std::string_view nameAt(std::string_view text) {
    const auto end = std::find_if_not(text.begin(), text.end(), isOfName);
    text = text.substr(0, static_cast<std::size_t>(end - text.begin()));
    return text.substr(0, text.find_last_not_of('.') + 1);
}

// JSON that was not percent-encoded may contain the mark in one of its strings: then the JSON
// continues after it, up to a brace.
bool isInsideJson(std::string_view before, std::string_view behind) {
    const bool jsonEnds =
        before.ends_with('}') || before.ends_with("%7D") || before.ends_with("%7d");
    return before.starts_with("j=") &&
           (!jsonEnds || behind.find_first_of("}\"") != std::string_view::npos ||
            behind.find("%22") != std::string_view::npos);
}

LoadChoice choiceNamed(std::string_view mark, const std::string& name) {
    if (name.empty()) {
        return EveryLoad{};
    }
    return mark == kCase ? LoadChoice{OneCase{name}} : LoadChoice{OneCombination{name}};
}

} // namespace

std::string linkTailOf(const LoadChoice& loads) {
    if (std::holds_alternative<EveryLoad>(loads)) {
        return {};
    }
    return std::string(isCombination(loads) ? kCombination : kCase) +
           percentEncoded(choiceName(loads));
}

LinkTail withoutTail(std::string_view fragment) {
    for (const std::string_view mark : {kCase, kCombination}) {
        const std::size_t found = fragment.rfind(mark);
        if (found == std::string_view::npos) {
            continue;
        }
        const std::string_view before = fragment.substr(0, found);
        const std::string_view behind = fragment.substr(found + mark.size());
        if (!isInsideJson(before, behind)) {
            return {before, choiceNamed(mark, percentDecoded(nameAt(behind)))};
        }
    }
    return {fragment, {}};
}

} // namespace gusset
