// Files and links of every format that was ever on main: tests/data/formats.
#include "exchange/files/model_file.hpp"
#include "exchange/links/link.hpp"
#include "support/english.hpp"
#include "support/files.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace gusset;

namespace {

const std::string kFolder = "tests/data/formats/";

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        lines.push_back(text.substr(start, end - start));
        start = end + 1;
    }
    return lines;
}

// The model as opened, written again; or else why it did not open.
std::string opened(const Outcome<Reading>& reading) {
    return reading ? writeModel(reading.value().truss) : support::english(reading.issues().front());
}

} // namespace

TEST_CASE("Files and links of every form that ever was open to the model they were made of") {
    const auto forms = linesOf(support::repositoryFile(kFolder + "list.txt"));
    REQUIRE(forms.size() >= 5);
    for (const std::string& form : forms) {
        INFO(form);
        const auto kept = [&](const char* name) {
            return support::repositoryFile(kFolder + form + "/" + name);
        };
        const std::string model = kept("model.json");
        const std::string link = linesOf(kept("link.txt")).front();
        CHECK(opened(readModel(kept("file.json"))) == model);
        CHECK(opened(readLink(link)) == model);
        CHECK(opened(readLink("https://example.org/gusset/#" + link)) == model);
        CHECK(opened(readModel(model)) == model);
        // And today's program writes a link to the same model.
        CHECK(opened(readLink(writeLink(readModel(model).value().truss))) == model);
    }
}
