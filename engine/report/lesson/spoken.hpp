#pragma once
// A working as it is heard: formulas in words, since a screen reader skips or misreads their signs.

#include "report/derivation/passage.hpp"

#include <string>

namespace gusset {

// "F AB equals 60 over 12 equals 5 kN up".
[[nodiscard]] std::string spokenFormula(const PhraseBook&, const Formula&);
// A sentence that begins with a word of its phrase, not with a name.
[[nodiscard]] std::string withCapital(std::string);
// The same as a sentence, which begins with a capital unless it begins with a symbol.
[[nodiscard]] std::string spokenSentence(const PhraseBook&, const Formula&);
// "→ 3" is "to the right 3"; other texts stay.
[[nodiscard]] std::string spokenArrow(const PhraseBook&, const std::string&);
// "kN" is kilonewtons; what is no unit of force or length stays.
[[nodiscard]] std::string spokenUnit(const PhraseBook&, const std::string&);
// A sentence with names in it: "F AB is zero".
[[nodiscard]] std::string spokenLine(const PhraseBook&, const RichLine&);
// Of a table, which may name a symbol as on paper: "Ordinates of F_CG."
[[nodiscard]] std::string spokenCaption(const PhraseBook&, std::string);
// A pause after what was said, unless it ends in one; and more after such a pause.
void endSaid(std::string&);
void addSaid(std::string&, const std::string& more);
// Its title, sentences and formulas, and the captions of its tables.
[[nodiscard]] std::string spokenPassage(const PhraseBook&, const Passage&);

} // namespace gusset
