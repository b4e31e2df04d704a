#pragma once
// The keys and words of the model file's settings, shared by reader and writer.

#include "exchange/files/object_reader.hpp"
#include "model/truss/limits.hpp"
#include "model/truss/truss.hpp"

#include <tuple>

namespace gusset {

inline constexpr int kFormatVersion = 1;

template <class Unit>
struct UnitField {
    std::string_view key;
    Unit Units::*value;
    std::optional<Unit> (*named)(std::string_view);
};
template <class Settings, class Value>
struct WordField {
    std::string_view key;
    Value Settings::*value;
    WordList words; // one for each value, in order; if Value is a char, the words are the values
};
struct DigitsField { // a whole number up to kMostDigits
    std::string_view key;
    int ClassSettings::*value;
};
template <class Unit>
UnitField(std::string_view, Unit Units::*, std::optional<Unit> (*)(std::string_view))
    -> UnitField<Unit>;
template <class Settings, class Value>
WordField(std::string_view, Value Settings::*, WordList) -> WordField<Settings, Value>;

inline constexpr WordList kSupportWords{"pin", "roller"};
inline constexpr WordList kFormulaWords{"Euler", "EN 1993-1-1", "AISC 360-16"};

inline constexpr std::tuple kUnitFields{
    UnitField{"force", &Units::force, forceUnitNamed},
    UnitField{"length", &Units::length, lengthUnitNamed},
    UnitField{"section", &Units::section, lengthUnitNamed},
    UnitField{"stress", &Units::stress, stressUnitNamed},
    UnitField{"displacement", &Units::displacement, lengthUnitNamed},
};
inline constexpr std::tuple kClassFields{
    WordField{"moments", &ClassSettings::moments, {"clockwise", "anticlockwise"}},
    WordField{"angles", &ClassSettings::angles, {"sin-cos", "cosines", "slopes"}},
    WordField{"axes", &ClassSettings::axes, {"H-V", "X-Y"}},
    WordField{"symbols", &ClassSettings::symbols, {"F_AB", "AB", "S1"}},
    WordField{"senses", &ClassSettings::senses, {"tension", "guessed"}},
    WordField{"equations", &ClassSettings::equations, {"symbols", "numbers"}},
};
inline constexpr std::tuple kNumbersFields{
    // in "numbers" of "class"
    WordField{"form", &ClassSettings::form, {"exact", "decimals", "significant"}},
    DigitsField{"digits", &ClassSettings::digits},
    WordField{"sign", &ClassSettings::decimalSign, {".", ","}},
    WordField{"carry", &ClassSettings::carry, {"full", "rounded"}},
};
inline constexpr std::tuple kCheckFields{
    // followed by kCheckNumbers
    WordField{"formula", &CheckSettings::formula, kFormulaWords},
    WordField{"curve", &CheckSettings::curve, {"a0", "a", "b", "c", "d"}},
    WordField{"safety", &CheckSettings::safety, {"phi", "omega"}},
};

// Calls `each` with every field of one of these tuples, in file order.
template <class Fields, class Each>
void eachSetting(const Fields& fields, const Each& each) {
    std::apply([&](const auto&... field) { (each(field), ...); }, fields);
}

} // namespace gusset
