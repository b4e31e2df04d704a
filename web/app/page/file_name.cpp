#include "app/page/file_name.hpp"

#include "core/utf8.hpp"
#include "model/validate/characters.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

// Microsoft, "Naming Files, Paths, and Namespaces": these characters, names that end in a space or
// a full stop, and device names, whatever extension follows. The slash and NUL are forbidden by
// POSIX.
constexpr std::string_view kForbidden = "<>:\"/\\|?*";
constexpr std::array<std::string_view, 4> kDevices{"CON", "PRN", "AUX", "NUL"};

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

bool isDevice(std::string_view title) {
    std::string name(title.substr(0, title.find('.')));
    name.erase(name.find_last_not_of(' ') + 1);
    std::transform(name.begin(), name.end(), name.begin(), upper);
    if (std::find(kDevices.begin(), kDevices.end(), name) != kDevices.end()) {
        return true;
    }
    const bool numbered = name.starts_with("COM") || name.starts_with("LPT");
    const std::string_view number =
        std::string_view(name).substr(std::min<std::size_t>(3, name.size()));
    const bool figure = number.size() == 1 && number[0] >= '0' && number[0] <= '9';
    return numbered && (figure || number == "¹" || number == "²" || number == "³");
}

bool isForbidden(const Character& character) {
    return !character.sound || visibilityOf(character.code) == Visibility::Hidden ||
           (character.code < 0x80 &&
            kForbidden.find(static_cast<char>(character.code)) != kForbidden.npos);
}

// With a hyphen in place of each run of forbidden characters.
std::string allowed(std::string_view title) {
    std::string name;
    while (!title.empty()) {
        const Character character = firstCharacter(title);
        if (!isForbidden(character)) {
            name += title.substr(0, character.bytes);
        } else if (!name.empty() && name.back() != '-') {
            name += '-';
        }
        title.remove_prefix(character.bytes);
    }
    return name;
}

// Cuts at the start of a character, so that none is split.
std::string_view cutTo(std::string_view name, std::size_t most) {
    std::size_t size = std::min(name.size(), most);
    while (size > 0 && size < name.size() &&
           (static_cast<unsigned char>(name[size]) & 0xC0) == 0x80) {
        --size;
    }
    return name.substr(0, size);
}

// Strips a leading full stop, which would hide the file, forbidden endings, and a hyphen put in
// here.
std::string_view trimmed(std::string_view name) {
    const std::size_t first = name.find_first_not_of(" .-");
    if (first == name.npos) {
        return {};
    }
    return name.substr(first, name.find_last_not_of(" .-") + 1 - first);
}

} // namespace

std::string fileNameFor(std::string_view title, std::string_view ending) {
    const std::string whole = allowed(title);
    std::string name(trimmed(cutTo(trimmed(whole), kLongestFileName - ending.size())));
    if (name.empty() || isDevice(name)) {
        name = name.empty() ? "truss" : "truss-" + name;
    }
    return name.append(ending);
}

} // namespace gusset
