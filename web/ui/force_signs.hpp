#pragma once
// The legend of member forces: ink, letter and word of each kind, on the board and in saved
// pictures.

#include "canvas/scene/scene.hpp"
#include "core/phrase.hpp"

#include <array>

namespace gusset {

struct ForceSign {
    Ink ink;
    Phrase<> letter;
    Phrase<> word;
};
[[nodiscard]] const std::array<ForceSign, 3>& forceSigns();

} // namespace gusset
