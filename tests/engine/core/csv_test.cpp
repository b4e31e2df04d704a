// Tables as people have them.
#include "core/csv.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

using Table = std::vector<CsvRow>;

TEST_CASE("A table is read with commas, semicolons or tabs, whichever its headings have most of") {
    const Table table{{"a", "b"}, {"1,5", "x"}};
    CHECK(csvRows("a;b\n1,5;x") == table);
    CHECK(csvRows("\xEF\xBB\xBF a\tb\r\n1,5 \t x") == table);
    CHECK(csvRows("a,b\r\"1,5\",x") == table);
}

TEST_CASE(
    "Quotes hold separators, ends of lines and quotes; one that is never closed is a letter") {
    CHECK(csvRows("\"a\"\"b,\nc\",d") == Table{{"a\"b,\nc", "d"}});
    CHECK(csvRows("\"a,b\nc,d") == Table{{"\"a", "b"}, {"c", "d"}});
    CHECK(csvRows("5\" pipe,b") == Table{{"5\" pipe", "b"}});
}

TEST_CASE("Blank lines are rows, so that rows keep their numbers; an empty table has one") {
    CHECK(csvRows("a\n\nb\n") == Table{{"a"}, {""}, {"b"}, {""}});
    CHECK(csvRows("") == Table{{""}});
    CHECK(isBlankRow(csvRows(",,").front()));
}

TEST_CASE("What a table was written with is read back, also what a spreadsheet would run") {
    for (const char* text : {"=1+1", "@x", "a,\"b\"", "-5", "plain"}) {
        CHECK(csvRows(csvHead("h") + csvTextCell(text) + "\r\n")[1][0] == text);
    }
}
