#include "hand/working.hpp"
#include "report/working_text.hpp"

#include "support/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cstdio>
#include <string>

using namespace gusset;

namespace {

// GUSSET_TEST_DATA comes from the build: the folder tests/data.
std::string reviewed(const std::string& name) {
    const std::string path = std::string(GUSSET_TEST_DATA) + "/working/" + name + ".txt";
    std::FILE* file = std::fopen(path.c_str(), "rb");
    std::string text;
    if (file) {
        for (int c = std::fgetc(file); c != EOF; c = std::fgetc(file)) {
            text += static_cast<char>(c);
        }
        std::fclose(file);
    }
    return text;
}

std::string workedText(const Truss& truss) {
    const Solution solution = solve(truss);
    return truss.title + "\n\n" + workingText(truss, workOut(truss, {}, solution));
}

} // namespace

// To change a working on purpose: put what the failure prints into the file, and read it aloud.
TEST_CASE("the working of each reviewed truss reads as it was reviewed") {
    for (const auto& [file, truss] : support::workedTrusses()) {
        INFO("tests/data/working/" << file << ".txt");
        CHECK(workedText(truss) == reviewed(file));
    }
}
