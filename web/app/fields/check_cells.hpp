#pragma once
// The numbers by which members are checked, as fields that can be typed into. Their keys are those
// of the file: "checks.K".

#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "core/outcome.hpp"

#include <string>

namespace gusset {

[[nodiscard]] std::string keyOf(const CheckNumber&);
[[nodiscard]] const CheckNumber* checkNumberOf(const std::string& key); // null: of another field
// What stands in the field when typing begins, and the same to look at. A limit of 0 is no limit,
// and stands as nothing.
[[nodiscard]] std::string checkText(const Truss&, const CheckNumber&);
[[nodiscard]] std::string checkLook(const Truss&, const CheckNumber&);
// Fails with a sentence when the text can't be read. Nothing is what is usual; of a limit, none.
[[nodiscard]] Outcome<Edit> checkEdit(const Truss&, const CheckNumber&, const std::string& text);

// The text of such a field came back: as finishCell.
bool finishCheckField(const AppState&, const FieldDone&, Actions&);

} // namespace gusset
