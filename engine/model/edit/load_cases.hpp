#pragma once
// Edits of load cases as wholes. A case is called as the loads in it say: kDefaultCase where they
// say nothing. What combinations say of it, and what it stands for, goes along.

#include "model/edit/edit.hpp"

#include <optional>
#include <string>

namespace gusset {

// `form`: Truss::form with that change; none: as it is.
// Fails on an empty name and on one that another case has.
[[nodiscard]] Outcome<Edit> renameCase(const Truss&, const std::string& name, const std::string& to,
                                       const std::optional<std::string>& form = {});
// `kind`: a word of design/loading/actions, or empty.
[[nodiscard]] Edit setCaseKind(const Truss&, const std::string& name, const std::string& kind,
                               const std::optional<std::string>& form = {});
// Its loads once more, in a case "name 2" of the same kind, which is in no combination yet.
[[nodiscard]] Edit copyCase(const Truss&, const std::string& name);
[[nodiscard]] Edit removeCase(const Truss&, const std::string& name); // with its loads

} // namespace gusset
