#include "core/statement.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

namespace {

constexpr auto kNoLength = "{member} has no length: move {joint}"_phrase;
constexpr auto kInRow = "Row {n}: {fault}"_phrase;
constexpr auto kThere = "there"_phrase;

} // namespace

TEST_CASE("a statement is said in the language of whoever shows it") {
    const Statement fault = statement(kNoLength, {{"joint", "B"}, {"member", "AB"}});
    CHECK(said(englishPhrases(), fault) == "AB has no length: move B");
    const PhraseBook other{[](const char*) { return "{joint}!? {member}, {joint}"; }};
    CHECK(said(other, fault) == "B!? AB, B");
}

TEST_CASE("a statement may be a part of another, and text stays as it is in every language") {
    const Statement whole = statement(
        kInRow,
        {{"n", 3}, {"fault", statement(kNoLength, {{"member", "{x}"}, {"joint", kThere}})}});
    CHECK(said(englishPhrases(), whole) == "Row 3: {x} has no length: move there");
    CHECK(said(englishPhrases(), "5 kN") == "5 kN");
    CHECK(Statement().empty());
    CHECK_FALSE(whole.empty());
}

TEST_CASE("statements are equal when their phrase and all their parts are") {
    const auto about = [](const char* joint) {
        return statement(kNoLength, {{"member", "AB"}, {"joint", joint}});
    };
    CHECK(about("B") == about("B"));
    CHECK_FALSE(about("B") == about("C"));
    CHECK_FALSE(Statement(kThere) == Statement("there"));
}
