#include "support/files.hpp"

#include <cstdio>
#include <cstdlib>

namespace gusset::support {

std::string repositoryFile(const std::string& path) {
    const std::string whole = std::string(GUSSET_REPOSITORY) + "/" + path;
    std::FILE* file = std::fopen(whole.c_str(), "rb");
    if (!file) {
        std::fprintf(stderr, "%s is not there\n", whole.c_str());
        std::abort();
    }
    std::string text;
    char piece[4096];
    for (std::size_t count = 1; count > 0;) {
        count = std::fread(piece, 1, sizeof piece, file);
        text.append(piece, count);
    }
    std::fclose(file);
    return text;
}

} // namespace gusset::support
