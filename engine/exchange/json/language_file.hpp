#pragma once
// Languages other than English, which pages load when one is asked for (site/language.js).

#include "core/outcome.hpp"
#include "core/phrase.hpp"

#include <string_view>

namespace gusset {

// From JSON: {"Undo: {step}": "…{step}…", …}. Sentences without a translation, or with an empty
// one, stay English. Fails if a translation has a part that its English sentence lacks.
[[nodiscard]] Outcome<PhraseBook> readLanguage(std::string_view json);

} // namespace gusset
