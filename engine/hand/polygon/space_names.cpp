#include "hand/polygon/space_names.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool isLetter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }

bool isDigit(char c) { return c >= '0' && c <= '9'; }

std::string inSmallLetters(std::string name) {
    for (char& c : name) {
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return name;
}

} // namespace

SpaceNames::SpaceNames(const Truss& truss) {
    for (const Joint& joint : truss.joints) {
        const std::string& label = joint.label;
        taken_.insert(inSmallLetters(label));
        if (!label.empty() && isLetter(label.front())) {
            first_ = 'P'; // far from the letters that joints usually have
        }
        if (!label.empty() && std::all_of(label.begin(), label.end(), isDigit)) {
            byNumber_ = false;
        }
    }
}

std::string SpaceNames::nextLetter() {
    constexpr int kLetters = 26;
    for (;;) {
        const int place = letters_++;
        const int letter = (first_ - 'A' + place) % kLetters;
        std::string name(1, static_cast<char>('A' + letter));
        name += place < kLetters ? "" : std::to_string(place / kLetters);
        if (!taken_.contains(inSmallLetters(name))) {
            return name;
        }
    }
}

std::string SpaceNames::nextOutside() { return nextLetter(); }

std::string SpaceNames::nextInside() {
    return byNumber_ ? std::to_string(++numbers_) : nextLetter();
}

} // namespace gusset
