#pragma once
// Choices between a few answers, as the notebook offers them in rows of words and the page's own
// tables in lists: what can be answered, what is chosen now, and what each answer does.

#include "app/state/action.hpp"
#include "core/phrase.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/class_settings.hpp"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <vector>

namespace gusset {

struct Choice {
    std::string name;
    bool isNow = false;
    Actions does{};
};
using Choices = std::vector<Choice>;

// In which loads act: all, one case, one combination. One answer if there is no choice.
[[nodiscard]] Choices loadAnswers(const AppState&);

// One convention in which a class writes its working.
struct ClassQuestion {
    Phrase<> asks;
    std::span<const Phrase<>> answers;
    int (*now)(const ClassSettings&) = nullptr;
    void (*set)(ClassSettings&, int) = nullptr;
};
[[nodiscard]] std::span<const ClassQuestion> classQuestions(); // in the notebook's order
// Decimals or significant figures: asked after this one of them.
inline constexpr std::size_t kBeforeFigures = 6;
inline constexpr int kMostFigures = 6;
[[nodiscard]] int leastFigures(const ClassSettings&);

[[nodiscard]] std::span<const ForceUnit> forceUnits();
[[nodiscard]] std::span<const LengthUnit> lengthUnits();
// Converts the numbers of the model, unless they are kept or one of the units has no size.
[[nodiscard]] SetUnits unitsEdit(const Units& now, const Units& wanted, bool keepsNumbers);

[[nodiscard]] std::array<std::string, 3> checkFormulas(const PhraseBook&);
// As the codes themselves write them, in every language.
inline constexpr std::array kCurves{"a₀", "a", "b", "c", "d"};
inline constexpr std::array kSafeties{"φ (LRFD)", "Ω (ASD)"};

// A browser's list of more answers than this can't be searched.
inline constexpr std::size_t kMostAsked = 1000; // members, and as many joints

// The questions of the page's own tables, numbered as in the keys of its fields.
enum class PageQuestion {
    Loads,
    About, // what the working, the check or the influence line is about
    EnvelopeOf,
    CheckedLoads,
    Formula,
    Curve,
    Safety,
    Way, // of an influence line
    Working,
    ForceBy,
    Axis,
    ForceUnits,
    LengthUnits,
    Figures,
    FirstOfClass // and so on, in the order of classQuestions
};
[[nodiscard]] Phrase<> questionOf(PageQuestion);
[[nodiscard]] Choices answersTo(const AppState&, PageQuestion);

} // namespace gusset
