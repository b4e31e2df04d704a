#pragma once
// A written force from one line of text: "12,5 kN T", "T 12.5", "−12.5", "← 5", "5 compression";
// any dash, any space, a unit or none.

#include "classroom/exercise/answers.hpp"
#include "core/outcome.hpp"
#include "model/truss/units.hpp"

#include <string_view>

namespace gusset {

// How a force may give its sense beside a number, and what a number without one means.
struct SenseRule {
    enum class Words { Any, OfMember, OfReaction } words = Words::Any;
    Vec2 along{1, 1};      // of a reaction, whose arrows are compared with it
    bool isSigned = false; // without a sense, positive; else its sense is missing
};
// Blank for an empty text. A sense beside a minus decides. An issue if it is no force of a sense
// that the rule has.
[[nodiscard]] Outcome<WrittenForce> readWritten(std::string_view text, ForceUnit,
                                                const SenseRule& = {});
// The same for a displacement, "9,16 mm ↓", and for a number without a unit.
[[nodiscard]] Outcome<WrittenForce> readWrittenLength(std::string_view text, LengthUnit);
[[nodiscard]] Outcome<WrittenForce> readWrittenNumber(std::string_view text);
// A whole number, negative or not, of at most four figures; an issue if it is none.
[[nodiscard]] Outcome<int> readWrittenCount(std::string_view text);
// With ASCII hyphens and plain spaces, and of "1.234,5" only the last sign, which is the decimal
// one: as numbers are then read (model/quantity).
[[nodiscard]] std::string withPlainNumbers(std::string_view text);

} // namespace gusset
