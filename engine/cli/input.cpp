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

bool isPath(const std::string& input) { return input != "-" && !looksLikeLink(input); }

Outcome<Reading> readInput(const std::string& input) {
    if (input != "-" && !isPath(input)) {
        return readLink(input);
    }
    const Outcome<std::string> text = readTextOf(input);
    if (!text) {
        return text.issues();
    }
    return readModelOrLink(text.value());
}

Outcome<std::string> readTextOf(const std::string& path) {
    if (path == "-") {
        return readAll(stdin, "standard input");
    }
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
