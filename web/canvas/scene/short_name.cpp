#include "canvas/scene/short_name.hpp"

#include <string_view>
#include <vector>

namespace gusset {
namespace {

// Combining marks and joiners: never separated from the letter before them.
bool joinsOn(std::string_view letter) {
    const bool combines = letter >= "\u0300" && letter <= "\u036F";
    const bool selects = letter >= "\uFE00" && letter <= "\uFE0F";
    return combines || selects || letter == "\u200D";
}

// Letters in UTF-8, each with its combining marks.
std::vector<std::string_view> lettersOf(std::string_view name) {
    std::vector<std::string_view> letters;
    std::size_t at = 0;
    bool joined = false;
    while (at < name.size()) {
        std::size_t end = at + 1;
        while (end < name.size() && (static_cast<unsigned char>(name[end]) & 0xC0U) == 0x80U) {
            ++end;
        }
        const std::string_view one = name.substr(at, end - at);
        if (!letters.empty() && (joined || joinsOn(one))) {
            std::string_view& last = letters.back();
            last = {last.data(), last.size() + one.size()};
        } else {
            letters.push_back(one);
        }
        joined = one == "\u200D";
        at = end;
    }
    return letters;
}

} // namespace

std::string shortName(const std::string& name, int letters) {
    const std::vector<std::string_view> all = lettersOf(name);
    const auto most = static_cast<std::size_t>(letters);
    if (all.size() <= most) {
        return name;
    }
    const std::size_t behind = (most - 1) / 2;
    const std::size_t before = most - 1 - behind;
    std::string text;
    for (std::size_t i = 0; i < before; ++i) {
        text += all[i];
    }
    text += "…";
    for (std::size_t i = all.size() - behind; i < all.size(); ++i) {
        text += all[i];
    }
    return text;
}

} // namespace gusset
