#pragma once
// Equations that are solved together, line by line.

#include "core/phrase.hpp"

namespace gusset::phrase {

inline constexpr auto kPairInNumbers =
    "With numbers for all that is known, and the unknowns on the left:"_phrase;
inline constexpr auto kPairStart = "({number}) holds only {left}."_phrase;
inline constexpr auto kPairEqual =
    "By ({number}) the two are equal: put that into ({second})."_phrase;
inline constexpr auto kPairOpposite =
    "By ({number}) the two are equal and opposite: put that into ({second})."_phrase;
inline constexpr auto kPairSubstitute = "{unknown} has the factor 1 in ({number}): express it by "
                                        "the other unknown and put that into ({second})."_phrase;
inline constexpr auto kPairAdd = "{unknown} has the same factor in both, with opposite signs: add "
                                 "the two, and it drops out."_phrase;
inline constexpr auto kPairSubtract = "{unknown} has the same factor in both: subtract the second "
                                      "from the first, and it drops out."_phrase;
inline constexpr auto kPairMultiplyAdd =
    "Multiply so that {unknown} gets the same factor in both, with opposite signs, and add: it "
    "drops out."_phrase;
inline constexpr auto kPairMultiplySubtract =
    "Multiply so that {unknown} gets the same factor in both, and subtract: it drops out."_phrase;
inline constexpr auto kPairPutBack = "Put {unknown} into ({number}):"_phrase;

inline constexpr auto kSolvedInFull =
    "Between two equations and their answers the numbers are written rounded and carried in full; "
    "only the answers are rounded."_phrase;

} // namespace gusset::phrase
