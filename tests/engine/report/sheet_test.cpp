// The sheet: what it says of which truss, under which loads.

#include "report/sheet/sheet.hpp"

#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;
using namespace gusset::support;

TEST_CASE("a sheet of an empty board says that there is nothing to draw") {
    const Truss empty;
    const std::string html = sheetHtml({englishPhrases(), empty}, {}, {});
    CHECK(html.find("<table") == html.npos);
}
