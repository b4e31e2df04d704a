#include "support/reading/mock_language.hpp"

#include <algorithm>
#include <cctype>
#include <functional>
#include <map>
#include <memory>
#include <set>

namespace gusset::support {
namespace {

bool isLatin(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }
bool isDigit(char c) { return c >= '0' && c <= '9'; }

// а (U+0430) for a, А (U+0410) for A, and so on through the alphabet.
void addCyrillic(std::string& text, char letter) {
    const bool capital = letter >= 'A' && letter <= 'Z';
    const int code = capital ? 0x410 + (letter - 'A') : 0x430 + (letter - 'a');
    text += static_cast<char>(0xC0 | (code >> 6));
    text += static_cast<char>(0x80 | (code & 0x3F));
}

std::string spoken(std::string_view english) {
    std::string text;
    for (const char c : english) {
        if (isLatin(c)) {
            addCyrillic(text, c);
        } else if (c == '.') {
            text += "。"; // in reverse order, a full stop may end up between two digits
        } else {
            text += c;
        }
    }
    return text;
}

// "Joint {joint}: …" → "{joint}: …Joint ", in the other letters: pieces and parts in reverse order.
std::string mockSentence(std::string_view english) {
    std::string sentence;
    while (!english.empty()) {
        const bool part = english.front() == '{';
        const std::size_t end =
            std::min(part ? english.find('}') + 1 : english.find('{'), english.size());
        const std::string_view piece = english.substr(0, end);
        sentence.insert(0, part ? std::string(piece) : spoken(piece));
        english.remove_prefix(end);
    }
    return sentence;
}

// Phrases are made up as they are asked for.
PhraseBook makeMock() {
    auto known = std::make_shared<std::map<std::string, std::string, std::less<>>>();
    return {[known](const char* english) {
        auto found = known->find(english);
        if (found == known->end()) {
            found = known->emplace(english, mockSentence(english)).first;
        }
        return found->second.c_str();
    }};
}

// Symbols and units, which are the same in every language.
const std::set<std::string, std::less<>> kSigns{
    "sin", "cos", "tan",                            // functions
    "kN",  "lbf", "kip", "mm",  "cm",  "ft",  "in", // units of force and length
    "Pa",  "kPa", "MPa", "GPa", "psi", "ksi",       // and of stress
    "kg",  "lb",                                    // units of mass and density
    "cr",                                           // critical, of EN 1993 in all its languages
};

std::set<std::string> wordsOf(const std::string& name) {
    std::set<std::string> words;
    std::string word;
    for (const char c : name + ' ') {
        if (isLatin(c)) {
            word += c;
        } else if (!word.empty()) {
            words.insert(word);
            word.clear();
        }
    }
    return words;
}

// Names given by the model's author, which are not translated.
std::set<std::string> namesIn(const Truss& truss) {
    std::string names = truss.title + ' ' + std::string(kDefaultCase);
    for (const Joint& joint : truss.joints) {
        names += ' ' + joint.label;
        names += ' ' + joint.label + "x " + joint.label + "y"; // its reactions: F_x, or R_Fx
    }
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        names += ' ' + memberName(truss, MemberId{static_cast<int>(i)});
    }
    for (const Load& load : truss.loads) {
        names += ' ' + load.caseId;
    }
    for (const Combination& combination : truss.combinations) {
        names += ' ' + combination.id;
    }
    for (const MovingLoad& load : truss.moving) {
        names += ' ' + load.id;
    }
    for (const Material& material : truss.materials) {
        names += ' ' + material.id;
    }
    for (const Section& section : truss.sections) {
        names += ' ' + section.id + ' ' + section.shape; // shapes are typed as files write them
    }
    return wordsOf(names);
}

bool isSymbol(const std::string& word) {
    return word.size() < 2 ||
           std::none_of(word.begin(), word.end(), [](char c) { return c >= 'a' && c <= 'z'; });
}

} // namespace

const PhraseBook& mockPhrases() {
    static const PhraseBook mock = makeMock();
    return mock;
}

std::vector<std::string> foreignWords(std::string_view text, const Truss& truss) {
    const std::set<std::string> names = namesIn(truss);
    std::vector<std::string> foreign;
    for (const std::string& word : wordsOf(std::string(text))) {
        if (!isSymbol(word) && !kSigns.contains(word) && !names.contains(word)) {
            foreign.push_back(word);
        }
    }
    return foreign;
}

std::string textOfHtml(std::string_view html) {
    std::string text;
    while (!html.empty()) {
        const char c = html.front();
        const char until = c == '<' ? '>' : c == '&' ? ';' : '\0';
        if (until == '\0') {
            text += c;
            html.remove_prefix(1);
            continue;
        }
        text += ' ';
        html.remove_prefix(std::min(html.find(until), html.size() - 1) + 1);
    }
    return text;
}

bool hasDecimalPoint(std::string_view text) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if (text[i] == '.' && isDigit(text[i - 1]) && isDigit(text[i + 1])) {
            return true;
        }
    }
    return false;
}

} // namespace gusset::support
