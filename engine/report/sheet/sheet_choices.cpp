#include "report/sheet/sheet_choices.hpp"

#include "phrases/results/sheet.hpp"
#include "statics/moving/envelope.hpp"

#include <algorithm>

namespace gusset {
namespace {

constexpr std::array<std::string_view, kSheetParts> kPartWords{
    "drawing", "diagram", "model", "cases", "forces", "displacements", "checks", "working"};

constexpr double kPxOfMm = 96 / 25.4;
constexpr double kSideMargins = 30; // mm, both together, as in the @page rule

} // namespace

LoadChoice usualLoads(const Truss& truss) {
    const std::vector<LoadChoice> combinations = combinationChoices(truss);
    return combinations.empty() ? LoadChoice{} : combinations.front();
}

std::optional<std::array<bool, kSheetParts>> partsNamed(std::string_view names) {
    std::array<bool, kSheetParts> parts{};
    while (true) {
        const std::size_t end = names.find(',');
        const auto word = std::find(kPartWords.begin(), kPartWords.end(), names.substr(0, end));
        if (word == kPartWords.end()) {
            return std::nullopt;
        }
        parts[static_cast<std::size_t>(word - kPartWords.begin())] = true;
        if (end == names.npos) {
            return parts;
        }
        names.remove_prefix(end + 1);
    }
}

std::string partNames() {
    std::string names;
    for (const std::string_view word : kPartWords) {
        names += (names.empty() ? "" : ",") + std::string(word);
    }
    return names;
}

std::optional<SheetSize> sizeNamed(std::string_view name) {
    if (name == "A4") {
        return SheetSize::A4;
    }
    return name == "Letter" ? std::optional(SheetSize::Letter) : std::nullopt;
}

double widthOf(const SheetChoices& choices) {
    const bool isA4 = choices.size == SheetSize::A4;
    const double width = isA4 ? 210 : 215.9; // mm
    const double height = isA4 ? 297 : 279.4;
    return ((choices.across ? height : width) - kSideMargins) * kPxOfMm;
}

std::string loadsName(const PhraseBook& book, const LoadChoice& choice) {
    const std::string name = choiceName(choice);
    if (isCombination(choice)) {
        return sayPlain(book, phrase::kUnderCombination, {{"name", name}});
    }
    return isOneCase(choice) ? sayPlain(book, phrase::kUnderCase, {{"name", name}})
                             : sayPlain(book, phrase::kUnderEveryLoad);
}

std::string loadsHead(const PhraseBook& book, const LoadChoice& choice) {
    const std::string name = choiceName(choice);
    return name.empty() ? sayPlain(book, phrase::kHeadEveryLoad) : name;
}

} // namespace gusset
