#pragma once
// Load cases as fields: what each is called and what it stands for. Private to app/fields; see
// load_cells.

#include "app/state/field_id.hpp"
#include "core/outcome.hpp"
#include "model/edit/edit.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

[[nodiscard]] bool ofCases(const ListField&);
// Precondition of the others: ofCases, and the truss has the case of that row.
[[nodiscard]] std::string caseText(const Truss&, const ListField&);
[[nodiscard]] Outcome<Edit> editCase(const Truss&, const ListField&, const std::string& text);
[[nodiscard]] std::string caseFieldName(const Writer&, const ListField&);

} // namespace gusset
