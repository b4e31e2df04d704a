#include "cli/output.hpp"

#include "cli/input.hpp"
#include "model/validate/characters.hpp"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <sys/stat.h>
#include <unistd.h>

namespace gusset::cli {

void prepareOutput() { std::signal(SIGPIPE, SIG_IGN); }

std::optional<std::string> writeAnswer(std::string_view text) {
    if (text.empty()) {
        return std::nullopt;
    }
    errno = 0;
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if ((written && std::fflush(stdout) == 0) || errno == EPIPE) {
        return std::nullopt;
    }
    return std::strerror(errno);
}

std::optional<std::string> makeFolder(const std::string& path) {
    errno = 0;
    struct stat found {};
    if (mkdir(path.c_str(), 0777) == 0 ||
        (errno == EEXIST && stat(path.c_str(), &found) == 0 && S_ISDIR(found.st_mode))) {
        return std::nullopt;
    }
    return std::strerror(errno == 0 ? EEXIST : errno);
}

std::optional<std::string> writeWhole(const std::string& path, std::string_view content) {
    if (const Outcome<std::string> old = readTextOf(path); old && old.value() == content) {
        return std::nullopt;
    }
    const std::string unfinished = path + ".part";
    errno = 0;
    std::FILE* file = std::fopen(unfinished.c_str(), "wb");
    if (!file) {
        return std::strerror(errno);
    }
    const bool written = std::fwrite(content.data(), 1, content.size(), file) == content.size();
    const bool closed = std::fclose(file) == 0;
    if (written && closed && std::rename(unfinished.c_str(), path.c_str()) == 0) {
        return std::nullopt;
    }
    const std::string why = std::strerror(errno);
    std::remove(unfinished.c_str());
    return why;
}

void complain(std::string_view line) { std::fprintf(stderr, "%s\n", spelled(line).c_str()); }

void complainInLines(std::string_view ownWords) {
    std::fwrite(ownWords.data(), 1, ownWords.size(), stderr);
}

std::optional<std::string> append(const std::string& path, std::string_view text) {
    errno = 0;
    std::FILE* file = std::fopen(path.c_str(), "ab");
    if (!file) {
        return std::strerror(errno);
    }
    const bool written = std::fwrite(text.data(), 1, text.size(), file) == text.size();
    const bool closed = std::fclose(file) == 0;
    return written && closed ? std::nullopt : std::optional<std::string>(std::strerror(errno));
}

void showProgress(std::string_view line, bool isLast) {
    const std::string text = spelled(line);
    if (isTerminal()) {
        std::fprintf(stderr, "\r%s%s", text.c_str(), isLast ? "\n" : "");
    } else {
        std::fprintf(stderr, "%s\n", text.c_str());
    }
}

bool isTerminal() { return isatty(STDERR_FILENO) != 0; }

} // namespace gusset::cli
