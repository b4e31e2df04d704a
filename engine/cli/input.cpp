#include "cli/input.hpp"

#include "exchange/link.hpp"

#include <cstdio>

namespace gusset::cli {

namespace {

// One byte more than is read as a model, so that the reader sees that it is too large.
std::string readAll(std::FILE* file) {
    std::string text;
    char piece[1 << 16];
    std::size_t count = sizeof piece;
    while (count == sizeof piece && text.size() <= kLargestFile) {
        count = std::fread(piece, 1, sizeof piece, file);
        text.append(piece, count);
    }
    return text;
}

} // namespace

Outcome<Reading> readText(std::string_view text) {
    const std::size_t start = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    const bool isJson =
        start != std::string_view::npos && (text[start] == '{' || text[start] == '[');
    return !isJson && looksLikeLink(text) ? readLink(text) : readModel(text);
}

Outcome<Reading> readInput(const std::string& input) {
    if (input == "-") {
        return readText(readAll(stdin));
    }
    if (looksLikeLink(input)) {
        return readLink(input);
    }
    std::FILE* file = std::fopen(input.c_str(), "rb");
    if (!file) {
        return Issue{IssueCode::Missing, input,
                     "this file can't be opened: name one that is there"};
    }
    const std::string text = readAll(file);
    std::fclose(file);
    return readText(text);
}

} // namespace gusset::cli
