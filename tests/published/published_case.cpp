#include "published/published_case.hpp"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

namespace gusset::support {

namespace {

const std::filesystem::path kCases = GUSSET_PUBLISHED_CASES;

std::string contentOf(const std::filesystem::path& path) {
    std::ifstream file(path);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

// "force A-B -707.1 within 0.05": the words after `what`; the last is a value if `within` follows.
PublishedLine lineOf(const std::string& what, std::istringstream& rest) {
    PublishedLine line;
    line.what = what;
    for (std::string word; rest >> word;) {
        line.of.push_back(word);
    }
    const std::size_t count = line.of.size();
    if (count >= 3 && line.of[count - 2] == "within") {
        line.value = std::strtod(line.of[count - 3].c_str(), nullptr);
        line.within = std::strtod(line.of[count - 1].c_str(), nullptr);
        line.of.resize(count - 3);
    }
    return line;
}

PublishedCase caseOf(const std::filesystem::path& path) {
    PublishedCase result;
    result.name = path.stem().string();
    result.model = contentOf(std::filesystem::path(path).replace_extension(".json"));
    std::istringstream text(contentOf(path));
    for (std::string row; std::getline(text, row);) {
        std::istringstream rest(row);
        std::string what;
        rest >> what;
        if (what == "kind") {
            rest >> result.kind;
        } else if (what != "source" && what != "provenance" && what != "note") {
            result.lines.push_back(lineOf(what, rest));
        }
    }
    return result;
}

} // namespace

std::vector<PublishedCase> publishedCases() {
    std::vector<PublishedCase> cases;
    for (const auto& entry : std::filesystem::directory_iterator(kCases)) {
        if (entry.path().extension() == ".txt") {
            cases.push_back(caseOf(entry.path()));
        }
    }
    std::sort(cases.begin(), cases.end(),
              [](const PublishedCase& a, const PublishedCase& b) { return a.name < b.name; });
    return cases;
}

} // namespace gusset::support
