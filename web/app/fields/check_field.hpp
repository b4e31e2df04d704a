#pragma once
// The settings of the member checks, as fields that can be edited.

#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] const CheckNumber& checkNumberOf(const CheckField&); // from kCheckNumbers
// The text of the field when typing begins, and the text for display. A limit of 0 means no limit,
// and both are empty.
[[nodiscard]] std::string checkText(const Truss&, const CheckField&);
[[nodiscard]] std::string checkLook(const Truss&, const CheckField&);
// Fails with a sentence when the text can't be read. An empty text restores the default; for a
// limit, it removes the limit.
[[nodiscard]] Outcome<Edit> checkEdit(const Truss&, const CheckField&, const std::string& text);

// A number of the settings: what it is called, and the hint while it is empty.
struct CheckFactor {
    double CheckSettings::*number;
    Phrase<> says;
    Phrase<> hint{};
};
// Those that the chosen formula uses, and those that every formula uses.
[[nodiscard]] std::vector<CheckFactor> factorsOf(const CheckSettings&);

} // namespace gusset
