// A short run of the fuzz program's work, and what longer runs have found; tests/fuzz/run goes on
// for hours.
#include "fuzz/grown_model.hpp"
#include "fuzz/judge.hpp"
#include "fuzz/soundness.hpp"
#include "support/files.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>

using namespace gusset::support;

namespace {

struct Kept {
    std::string name;
    std::string text;
};

// One per line: a name, a tab, a model.
std::vector<Kept> corpus() {
    std::vector<Kept> kept;
    const std::string file = repositoryFile("tests/fuzz/corpus.txt");
    for (std::size_t start = 0; start < file.size();) {
        const std::size_t end = std::min(file.find('\n', start), file.size());
        const std::string line = file.substr(start, end - start);
        const std::size_t tab = line.find('\t');
        if (tab != std::string::npos) {
            kept.push_back({line.substr(0, tab), line.substr(tab + 1)});
        }
        start = end + 1;
    }
    return kept;
}

} // namespace

TEST_CASE("Every command answers soundly to inputs that are grown and damaged") {
    long runs = 0;
    long opened = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const Judged judged = judgeInput(inputOf(seed), seed);
        runs += judged.runs;
        opened += judged.opened ? 1 : 0;
        for (const std::string& broken : judged.broken) {
            FAIL_CHECK("seed " << seed << ": " << broken);
        }
    }
    CHECK(runs > 2500);
    CHECK(opened > 50); // not all damaged texts are unreadable
}

// Each covers something that those before it do not, or once broke a command.
TEST_CASE("Every command answers soundly to the models of the corpus") {
    const std::vector<Kept> kept = corpus();
    REQUIRE(kept.size() > 20);
    for (const Kept& each : kept) {
        const Judged judged = judgeInput(each.text, 1);
        CHECK(judged.opened);
        for (const std::string& broken : judged.broken) {
            FAIL_CHECK(each.name << ": " << broken);
        }
    }
}

TEST_CASE("One seed gives one input") {
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        CHECK(inputOf(seed) == inputOf(seed));
    }
    CHECK(inputOf(1) != inputOf(2));
}

TEST_CASE("Scanners of output object to what is not well-formed") {
    CHECK(faultOfJson(R"({"a":[1,-2.5e-7,"\u00e9",null,true],"b":{}})").empty());
    for (const char* bad : {"", "{", "{}x", "[1,]", "[01]", "[1.]", "[nan]", "[inf]", "[\"\n\"]",
                            "[\"\\x\"]", "{\"a\"}", "{a:1}", "[\"\xff\"]", "\"\\u12g4\"", "[.5]"}) {
        CHECK_FALSE(faultOfJson(bad).empty());
    }
    CHECK(faultOfMarkup("<p class=\"a\">x &amp; y<b/></p>\n").empty());
    for (const char* bad : {"<p>", "</p>", "<p></b>", "<p>&x;</p>", "<p a=b></p>", "a < b", "a > b",
                            "<p>\x01</p>", "<p>\uFFFE</p>", "<p a=\"<\"></p>", "<p", "&", "\xC3"}) {
        CHECK_FALSE(faultOfMarkup(bad).empty());
    }
    CHECK(faultOfCsv("a,\"b,\"\"\n\"\n1,2\n").empty());
    CHECK_FALSE(faultOfCsv("a,b\n1\n").empty());
    CHECK_FALSE(faultOfCsv("a,\"b\n").empty());
    CHECK_FALSE(faultOfUtf8("\xED\xA0\x80").empty()); // a surrogate
    CHECK_FALSE(faultOfUtf8("\xE0\x80\x80").empty()); // overlong
    CHECK(faultOfNumbers("finance, informal, Ninf").empty());
    CHECK_FALSE(faultOfNumbers("F = nan kN").empty());
    CHECK_FALSE(faultOfNumbers("\u2212inf").empty());
}
