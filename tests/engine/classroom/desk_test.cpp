#include "desk/desk.hpp"
#include "exchange/json/json_value.hpp"
#include "support/classroom/requests.hpp"
#include "support/english.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

struct Request {
    JsonValue value{JsonValue::Kind::Object, {}, {}, {}, {}, {}};

    Request& with(const std::string& key, JsonValue part) {
        value.members.emplace_back(key, std::move(part));
        return *this;
    }
};

JsonValue reply(const Request& request) {
    const Outcome<JsonValue> answer =
        parseJson(deskReply(englishPhrases(), jsonText(request.value)));
    REQUIRE(answer);
    return answer.value();
}

std::string wordsUnder(const JsonValue& value, const char* key) {
    const JsonValue* found = value.find(key);
    return found ? jsonText(*found) : std::string();
}

std::string blankSheet(const JsonValue& opened) {
    return R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") + "}";
}

} // namespace

TEST_CASE("A page that is opened with an exercise gets the question and nothing of the answer") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    CHECK(opened.find("questions")->items.size() == 2);
    CHECK(opened.find("reactions")->items.size() == 3);
    CHECK(opened.find("members")->items.size() == 13);
    CHECK(wordsUnder(opened, "figure").find("<svg") != std::string::npos);
    // Reactions 3 · 24 / 2 = 36; AC = −36 · 5/3 = −60, CE = −(36 · 8 − 24 · 4)/3 = −64.
    const std::string words = wordsUnder(opened, "given") + wordsUnder(opened, "questions");
    CHECK(words.find(">24<") == std::string::npos);
    for (const char* answer : {"36", "60", "64", "48"}) {
        CHECK(words.find(answer) == std::string::npos);
    }
}

TEST_CASE("A model without a question opens with what is given, to be looked at") {
    const std::string model = repositoryFile("site/examples/footbridge.json");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    CHECK(opened.find("asksNothing"));
    CHECK(wordsUnder(opened, "figure").find("<svg") != std::string::npos);
    CHECK(opened.find("questions") == nullptr);
}

TEST_CASE("A hint is the next step from the student's own numbers") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const auto hint = [&](const std::string& answers, const std::string& level) {
        return wordsUnder(reply(Request{}
                                    .with("do", textValue("hint"))
                                    .with("model", textValue(model))
                                    .with("answers", textValue(answers))
                                    .with("level", parseJson(level).value())),
                          "lines");
    };
    CHECK(hint(blankSheet(opened), "1").find("whole truss") != std::string::npos);
    // 30 is wrong (36 is right), and all zero members and verticals are found: joint A is next.
    const std::string own =
        R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") +
        R"(,"reactions":[{"of":"A:x","size":0,"sign":"0"},{"of":"A:y","size":30,"sign":"+"},)"
        R"({"of":"H:y","size":42,"sign":"+"}],"zero":["D-E"]})";
    const std::string bodyOnly = hint(own, "1");
    CHECK(bodyOnly.find("math") == std::string::npos);
    const std::string whole = hint(own, "3");
    CHECK(whole.find("math") != std::string::npos);
    CHECK(whole.find(">36<") == std::string::npos); // never the right number for a wrong one
}

TEST_CASE("Hints go no further than the exercise allows") {
    const std::string model = bridgeAsking(R"({"ask":["forces"],"hints":"none"})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const JsonValue hint = reply(Request{}
                                     .with("do", textValue("hint"))
                                     .with("model", textValue(model))
                                     .with("answers", textValue(blankSheet(opened)))
                                     .with("level", parseJson("3").value()));
    CHECK(hint.find("lines") == nullptr);
    CHECK(hint.find("more") == nullptr);
}

TEST_CASE("What the desk can't read is said, and nothing else") {
    for (const char* request : {"", "[]", "{", R"({"do":"open"})", R"({"do":"open","model":"x"})",
                                R"({"do":"hint","model":"{\"gusset\":1}"})"}) {
        const Outcome<JsonValue> answer = parseJson(deskReply(englishPhrases(), request));
        REQUIRE(answer);
        CHECK(answer.value().find("faults") != nullptr);
        CHECK(answer.value().members.size() == 1);
    }
}
