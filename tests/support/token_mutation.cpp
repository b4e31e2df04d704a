// Damage that keeps JSON's syntax, so that most of it is read; see mutation.hpp.
#include "support/mutation.hpp"

#include <algorithm>
#include <cctype>

namespace gusset::support {

namespace {

struct Piece {
    std::size_t start = 0;
    std::size_t size = 0;
};

std::size_t endOfText(const std::string& json, std::size_t i) {
    for (++i; i < json.size() && json[i] != '"'; ++i) {
        i += json[i] == '\\' ? 1 : 0;
    }
    return std::min(i + 1, json.size());
}

bool isNumberPart(char c) {
    return std::isdigit(static_cast<unsigned char>(c)) || c == '-' || c == '+' || c == '.' ||
           c == 'e' || c == 'E';
}

struct Tokens {
    std::vector<Piece> numbers;
    std::vector<Piece> texts;
    std::vector<Piece> lists; // innermost objects and arrays, with their brackets
};

Tokens tokensOf(const std::string& json) {
    Tokens tokens;
    std::size_t opened = std::string::npos;
    for (std::size_t i = 0; i < json.size();) {
        const std::size_t start = i;
        if (json[i] == '"') {
            i = endOfText(json, i);
            tokens.texts.push_back({start, i - start});
        } else if (std::isdigit(static_cast<unsigned char>(json[i])) || json[i] == '-') {
            while (i < json.size() && isNumberPart(json[i])) {
                ++i;
            }
            tokens.numbers.push_back({start, i - start});
        } else {
            if (json[i] == '{' || json[i] == '[') {
                opened = i;
            } else if ((json[i] == '}' || json[i] == ']') && opened != std::string::npos) {
                tokens.lists.push_back({opened, i + 1 - opened});
                opened = std::string::npos;
            }
            ++i;
        }
    }
    return tokens;
}

const std::vector<std::string>& tellingNumbers() {
    static const std::vector<std::string> kNumbers{"0",          "-0",     "1",
                                                   "-1",         "2",      "0.5",
                                                   "3",          "-4.25",  "90",
                                                   "45",         "1e-9",   "1e9",
                                                   "1e-14",      "1e14",   "1e100",
                                                   "-1e100",     "1e101",  "1e308",
                                                   "1e-308",     "5e-324", "1e-7",
                                                   "1e7",        "1e16",   "0.1",
                                                   "360",        "1e3",    "33.3333333333333333",
                                                   "2147483648", "12",     "13",
                                                   "1e-100",     "7"};
    return kNumbers;
}

void replace(std::string& json, const Piece& piece, const std::string& with) {
    json.replace(piece.start, piece.size, with);
}

} // namespace

std::string withOtherTokens(std::string json, Random& random) {
    for (int left = random.integer(1, 2); left > 0; --left) {
        const Tokens tokens = tokensOf(json);
        const int what = random.integer(0, 9);
        if (what < 6 && !tokens.numbers.empty()) {
            const Piece number = random.pick(tokens.numbers); // argument order is unspecified
            replace(json, number,
                    random.oneIn(3) ? std::to_string(random.integer(-9, 99))
                                    : random.pick(tellingNumbers()));
        } else if (what < 8 && !tokens.texts.empty()) {
            const Piece other = random.pick(tokens.texts);
            replace(json, random.pick(tokens.texts), json.substr(other.start, other.size));
        } else if (!tokens.lists.empty()) {
            const Piece list = random.pick(tokens.lists);
            const std::string text = json.substr(list.start, list.size);
            replace(json, list, random.oneIn(4) ? std::string("0") : text + "," + text);
        }
    }
    return json;
}

} // namespace gusset::support
