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

// K of these members, which must not be none: empty where each has that of the checks, or where
// they differ.
[[nodiscard]] std::string factorText(const Truss&, const std::vector<MemberId>&, FactorField);
[[nodiscard]] std::string factorLook(const Truss&, const std::vector<MemberId>&, FactorField);
// An empty text: that of the checks.
[[nodiscard]] Outcome<Edit> factorEdit(const std::vector<MemberId>&, FactorField,
                                       const std::string& text);
// Whether all of these joints are held out of the plane of the truss; and the edit that holds them,
// or lets go of them.
[[nodiscard]] bool areHeld(const Truss&, const std::vector<JointId>&);
[[nodiscard]] Edit holdEdit(const Truss&, const std::vector<JointId>&, bool hold);

// A number of the settings: what it is called, and the hint while it is empty.
struct CheckFactor {
    double CheckSettings::*number;
    Phrase<> says;
    Phrase<> hint{};
};
// Those that the chosen formula uses, those that every formula uses, and those of timber if there
// is any.
[[nodiscard]] std::vector<CheckFactor> factorsOf(const Truss&);

} // namespace gusset
