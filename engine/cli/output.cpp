#include "cli/output.hpp"

#include "model/validate/characters.hpp"

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>

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

void complain(std::string_view line) { std::fprintf(stderr, "%s\n", spelled(line).c_str()); }

void complainInLines(std::string_view ownWords) {
    std::fwrite(ownWords.data(), 1, ownWords.size(), stderr);
}

} // namespace gusset::cli
