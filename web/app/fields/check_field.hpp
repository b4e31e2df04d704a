#pragma once
// The numbers by which members are checked, as fields that can be typed into.

#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

[[nodiscard]] const CheckNumber& checkNumberOf(const CheckField&); // of kCheckNumbers
// What stands in the field when typing begins, and the same to look at. A limit of 0 is no limit,
// and stands as nothing.
[[nodiscard]] std::string checkText(const Truss&, const CheckField&);
[[nodiscard]] std::string checkLook(const Truss&, const CheckField&);
// Fails with a sentence when the text can't be read. Nothing is what is usual; of a limit, none.
[[nodiscard]] Outcome<Edit> checkEdit(const Truss&, const CheckField&, const std::string& text);

} // namespace gusset
