#include "app/page/page_text.hpp"
#include "app/state/update.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

namespace gusset {
namespace {

Truss triangle() {
    Truss truss = support::roof();
    truss.title = "Tripod <leg>";
    return truss;
}

std::string pageTextOf(const Truss& truss) {
    const AppState state = startWith(truss);
    Derived derived;
    derive(state, derived);
    return pageTextHtml(state, derived);
}

bool has(const std::string& html, const std::string& part) {
    return html.find(part) != std::string::npos;
}

TEST_CASE("The page's tables hold the model beside the results") {
    const std::string html = pageTextOf(triangle());
    CHECK(has(html, "<caption>Joints</caption>"));
    CHECK(
        has(html,
            "data-cell=\"page.joint.2.y\" data-text=\"4\" aria-label=\"4: y (m) of joint C\">4<"));
    CHECK(has(html, "aria-label=\"A–B: ends of member A–B\">A–B<"));
    CHECK(has(html, "data-press=\"page.support.0.kind\" data-text=\"roller\""));
    CHECK(has(html, "data-cell=\"page.support.1.direction\" data-text=\"90\""));
    CHECK(has(html, "data-cell=\"page.load.0.first\" data-text=\"10\""));
    // Half of 10 kN at each support; the legs have a vertical component of 5 kN and a rise of 4 in
    // 5 m: 6.25 kN.
    CHECK(has(html, "6.25"));
}

TEST_CASE("What a user typed never becomes markup in the page's tables") {
    Truss truss = triangle();
    truss.joints[2].label = "<img src=x onerror=alert(1)>";
    const std::string html = pageTextOf(truss);
    CHECK(has(html, "<h2>Tripod &lt;leg&gt;</h2>"));
    CHECK_FALSE(has(html, "<img"));
    CHECK(has(html, "&lt;img src=x onerror=alert(1)&gt;"));
}

TEST_CASE("An empty board has its tables too") {
    const std::string html = pageTextOf({});
    CHECK(has(html, "<h2>Untitled truss</h2>"));
    CHECK(has(html, "<caption>Joints</caption>"));
    CHECK(has(
        html,
        "data-cell=\"page.joint.0.x\" data-text=\"\" aria-label=\"Add: x (m) of a new joint\""));
    CHECK_FALSE(has(html, "Remove"));
}

TEST_CASE("The drawing is summed up in words for those who do not see it") {
    const AppState state = startWith(triangle());
    Derived derived;
    derive(state, derived);
    const std::string summary = boardSummary(state, derived);
    CHECK(summary.starts_with("The board: 3 joints, 3 members, 2 supports, 1 load. "));
    CHECK(has(summary, derived.verdict.front()));
}

} // namespace
} // namespace gusset
