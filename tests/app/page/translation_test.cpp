#include "exchange/json/language_file.hpp"
#include "phrases/frame.hpp"
#include "report/text/phrases.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

TEST_CASE("a language says the sentences that it translates, and the others stay English") {
    const Outcome<PhraseBook> book =
        readLanguage(R"({"Undo: {step}": "{step} wird zurückgenommen", "Redo": ""})");
    REQUIRE(book);
    CHECK(sayPlain(book.value(), phrase::kUndoStep, {{"step", "Pin"}}) ==
          "Pin wird zurückgenommen");
    CHECK(sayPlain(book.value(), phrase::kRedo) == "Redo");
    CHECK(sayPlain(book.value(), phrase::kUndo) == "Undo");
}

TEST_CASE("a translation may leave a part out or repeat it, but has no part of its own") {
    CHECK(readLanguage(R"({"Undo: {step}": "zurück"})"));
    CHECK(readLanguage(R"({"Undo: {step}": "{step}, {step}"})"));
    for (const char* bad :
         {R"({"Undo: {step}": "{schritt} zurück"})", R"({"Undo: {step}": "{step zurück"})",
          R"({"Undo: {step}": "step} zurück"})", R"({"Undo: {step}": "{{step}} zurück"})",
          R"({"Undo: {step}": 5})", R"({"Undo)", ""}) {
        CAPTURE(bad);
        CHECK_FALSE(readLanguage(bad));
    }
}

TEST_CASE("a fault of a language names the sentence") {
    const Outcome<PhraseBook> book = readLanguage(R"({"Redo": "Nochmals", "Undo": "{x}"})");
    REQUIRE_FALSE(book);
    CHECK(book.issues().front().at == "Undo");
}
