#include "app/page/file_name.hpp"

#include "core/utf8.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;

TEST_CASE("The letters and figures of every script stay in a file's name") {
    CHECK(fileNameFor("Dachbinder Größe 2", ".json") == "Dachbinder Größe 2.json");
    CHECK(fileNameFor("Ферма моста", ".csv") == "Ферма моста.csv");
    CHECK(fileNameFor("屋根トラス", ".svg") == "屋根トラス.svg");
    CHECK(fileNameFor("جملون", "-code.svg") == "جملون-code.svg");
    CHECK(fileNameFor("Roof, span 18 m (v1.2)", ".json") == "Roof, span 18 m (v1.2).json");
}

// Microsoft, "Naming Files, Paths, and Namespaces", and POSIX: the slash.
TEST_CASE("What a file system forbids becomes a hyphen") {
    CHECK(fileNameFor("a/b\\c:d*e?f\"g<h>i|j", ".json") == "a-b-c-d-e-f-g-h-i-j.json");
    CHECK(fileNameFor("span 18 m: <draft>", ".json") == "span 18 m- -draft.json");
    CHECK(fileNameFor("../../etc/passwd", ".json") == "etc-passwd.json");
    CHECK(fileNameFor("a\nb\u202Etxt.\u200B", ".json") == "a-b-txt.json");
    CHECK(fileNameFor(" .roof. ", ".json") == "roof.json");
    CHECK(fileNameFor("a\xFF\xFE"
                      "b",
                      ".json") == "a-b.json");
}

TEST_CASE("No file has an empty name, or that of a device") {
    for (const char* title : {"", "   ", "...", "///", "\u200B"}) {
        CHECK(fileNameFor(title, ".json") == "truss.json");
    }
    CHECK(fileNameFor("CON", ".json") == "truss-CON.json");
    CHECK(fileNameFor("nul.1", ".json") == "truss-nul.1.json");
    CHECK(fileNameFor("com7", ".json") == "truss-com7.json");
    CHECK(fileNameFor("LPT²", ".json") == "truss-LPT².json");
    CHECK(fileNameFor("console", ".json") == "console.json");
    CHECK(fileNameFor("com10", ".json") == "com10.json");
}

// File systems allow a name of 255 bytes, some programs far fewer; the page limits itself to 120.
TEST_CASE("A long title is cut between characters") {
    for (const char* letter : {"a", "é", "桁", "🌉"}) {
        std::string title;
        for (int i = 0; i < 200; ++i) {
            title += letter;
        }
        const std::string name = fileNameFor(title, "-code.svg");
        CHECK(name.size() <= kLongestFileName);
        CHECK(name.size() > kLongestFileName - 4);
        CHECK_FALSE(faultOfUtf8(name));
        CHECK(name.ends_with(std::string(letter) + "-code.svg"));
    }
}
