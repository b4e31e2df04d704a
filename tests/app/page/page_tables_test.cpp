#include "app/fields/fields.hpp"
#include "app/page/page_tables.hpp"
#include "support/reading/written.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

namespace gusset {
namespace {

// What the page sends when a cell was edited or a button pressed.
void send(AppState& state, const std::string& key, const std::string& text) {
    state = support::typedIn(std::move(state), "page." + key, text);
}

TEST_CASE("A truss is made in the page's tables alone, from an empty board, and taken back step by "
          "step") {
    AppState state = startWith({});
    send(state, "joint.0.x", "0");
    send(state, "joint.1.x", "3 m");
    send(state, "joint.1.y", "4");
    send(state, "member.0.ends", "AB");
    send(state, "support.0.joint", "A");
    send(state, "support.0.kind", "roller");
    send(state, "load.0.joint", "B");
    send(state, "load.0.first", "5");
    send(state, "title", "Strut");
    const Truss& truss = state.truss;
    REQUIRE(truss.joints.size() == 2);
    CHECK(truss.joints[1].at == Vec2{3, 4});
    CHECK(truss.members.size() == 1);
    REQUIRE(truss.supports.size() == 1);
    CHECK(truss.supports[0].kind == SupportKind::Roller);
    REQUIRE(truss.loads.size() == 1);
    CHECK(forceOf(truss.loads[0])->y == -5);
    CHECK(truss.title == "Strut");
    for (int step = 0; step < 9; ++step) {
        update(state, {Undo{}});
    }
    CHECK(state.truss.joints.empty());
}

TEST_CASE("Each thing is removed by its button in the page's tables") {
    AppState state = startWith(support::roof());
    send(state, "load.0.remove", "");
    send(state, "support.1.remove", "");
    send(state, "member.2.remove", "");
    CHECK(state.truss.loads.empty());
    CHECK(state.truss.supports.size() == 1);
    CHECK(state.truss.members.size() == 2);
    send(state, "joint.0.remove", "");
    CHECK(state.truss.joints.size() == 2);
    CHECK(state.truss.members.size() == 1); // BC: the other was removed with joint A
}

TEST_CASE("A text that can't be read leaves the model as it was and is explained") {
    AppState state = startWith(support::roof());
    const Truss before = state.truss;
    send(state, "joint.0.x", "three");
    CHECK(state.truss == before);
    CHECK(state.message.kind == MessageKind::Problem);
    CHECK_FALSE(state.message.text.empty());
}

TEST_CASE("Buttons and cells of rows that are gone do nothing") {
    AppState state = startWith(support::roof());
    const Truss before = state.truss;
    for (const char* key : {"joint.99.remove", "support.7.kind", "joint.9.x", "load.5.case"}) {
        send(state, key, "1");
    }
    CHECK(state.truss == before);
}

} // namespace
} // namespace gusset

TEST_CASE("a model of very many joints has its first rows on the page, and a word of the rest") {
    Truss truss;
    for (int i = 0; i < 5003; ++i) {
        truss.joints.push_back({"J" + std::to_string(i), {static_cast<double>(i), 0}, {}});
    }
    const std::string html = modelTablesHtml({englishPhrases(), truss});
    CHECK(support::contains(html, " of joint J4999"));
    CHECK(support::contains(html, " of a new joint"));
    CHECK_FALSE(support::contains(html, "joint J5000"));
    CHECK(support::contains(html, "<p>3 more rows are too many for this page"));
}
