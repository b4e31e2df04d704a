#pragma once
// Text for a script, which frees it.

#include <cstdlib>
#include <cstring>
#include <string>

namespace gusset {

[[nodiscard]] inline char* forScript(const std::string& text) {
    auto* copy = static_cast<char*>(std::malloc(text.size() + 1));
    if (copy) {
        std::memcpy(copy, text.c_str(), text.size() + 1);
    }
    return copy;
}

} // namespace gusset
