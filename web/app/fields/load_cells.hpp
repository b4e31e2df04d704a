#pragma once
// Load cases, combinations and moving loads as fields that can be edited: what a field holds, what
// it is called, and the edit that a typed text asks for.

#include "app/fields/field.hpp"
#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "model/edit/edit.hpp"
#include "model/truss/truss.hpp"
#include "report/text/writer.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] bool canType(const Truss&, const ListField&);
[[nodiscard]] bool isNamed(const ListField&); // holds words, not a number
// The text of the field when typing begins, and the text for display.
[[nodiscard]] std::string listText(const Truss&, const ListField&);
[[nodiscard]] std::string listLook(const Truss&, const ListField&);
// Fails with a sentence when the text can't be read. Precondition: canType.
[[nodiscard]] Outcome<Edit> listEdit(const Truss&, const ListField&, const std::string& text);
// The next field by Tab or Enter among those of one combination or one moving load.
[[nodiscard]] std::optional<ListField> listFieldAfter(const Truss&, const ListField&, FieldEnd);
// For screen readers: "force of axle 2 of moving load crane".
[[nodiscard]] std::string listName(const Writer&, const ListField&);

// A moving load of one axle on a path, with an unused name and a force similar to those in the
// model.
[[nodiscard]] Edit addMovingLoad(const Writer&, const std::vector<JointId>& path);
[[nodiscard]] Edit removeMovingLoad(const Truss&, int row);
// Precondition: the load has another axle, or a spread load.
[[nodiscard]] Edit removeAxle(const Truss&, int row, int axle);
[[nodiscard]] bool canRemoveAxle(const MovingLoad&);
[[nodiscard]] Edit removeCombination(const Truss&, int row);

} // namespace gusset
