#include "cli/input.hpp"

#include "exchange/links/link.hpp"

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace gusset::cli {

namespace {

// Why a file could not be opened or read, and what to do.
Issue unreadable(const std::string& name, int error) {
    const auto because = [&](std::string says) {
        return Issue{IssueCode::Missing, name, std::move(says)};
    };
    switch (error) {
    case ENOENT:
    case ENOTDIR:
        return because("there is no such file: name an existing one");
    case EISDIR:
        return because("is a folder: name a file in it");
    case EACCES:
    case EPERM:
        return because("may not be read: ask for the right to, or name another");
    default:
        return because(std::string("can't be read (") + std::strerror(error) +
                       "): name another file");
    }
}

// Stops soon after the largest size of a model, so that the reader sees that the file is too large.
Outcome<std::string> readAll(std::FILE* file, const std::string& name) {
    std::string text;
    char piece[1 << 16];
    std::size_t count = sizeof piece;
    while (count == sizeof piece && text.size() <= kLargestFile) {
        errno = 0;
        count = std::fread(piece, 1, sizeof piece, file);
        text.append(piece, count);
    }
    if (std::ferror(file) != 0) {
        return unreadable(name, errno);
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

bool isPath(const std::string& input) { return input != "-" && !looksLikeLink(input); }

Outcome<Reading> readInput(const std::string& input) {
    if (input != "-" && !isPath(input)) {
        return readLink(input);
    }
    const Outcome<std::string> text =
        input == "-" ? readAll(stdin, "standard input") : readPlain(input);
    if (!text) {
        return text.issues();
    }
    return readText(text.value());
}

Outcome<std::string> readPlain(const std::string& path) {
    errno = 0;
    std::FILE* file = std::fopen(path.c_str(), "rb");
    if (!file) {
        return unreadable(path, errno);
    }
    Outcome<std::string> text = readAll(file, path);
    std::fclose(file);
    return text;
}

} // namespace gusset::cli
