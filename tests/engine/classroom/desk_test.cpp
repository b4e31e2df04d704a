#include "desk/desk.hpp"
#include "exchange/json/json_value.hpp"
#include "support/english.hpp"
#include "support/files.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

JsonValue textValue(std::string text) {
    JsonValue value{JsonValue::Kind::Text, {}, {}, {}, {}, {}};
    value.text = std::move(text);
    return value;
}

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

// The footbridge of the examples, asking for this.
std::string bridgeAsking(const std::string& exercise) {
    std::string text = repositoryFile("site/examples/footbridge.json");
    text.insert(text.find_last_of('}'), ",\"exercise\":" + exercise);
    return text;
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

TEST_CASE("A model without a question opens to be asked, and is given one") {
    const std::string model = repositoryFile("site/examples/footbridge.json");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    CHECK(opened.find("faults") == nullptr);
    CHECK(opened.find("questions") == nullptr);
    const Outcome<JsonValue> exercise = parseJson(R"({"ask":["reactions"]})");
    const JsonValue made = reply(Request{}
                                     .with("do", textValue("set"))
                                     .with("model", textValue(model))
                                     .with("exercise", exercise.value()));
    CHECK(wordsUnder(made, "link").starts_with("\"x=1."));
    const JsonValue again = reply(
        Request{}.with("do", textValue("open")).with("model", textValue(made.find("link")->text)));
    CHECK(again.find("questions")->items.size() == 1);
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

// 33 for A_y = 36: about H, A_y · 16 = 24 · (12 + 8 + 4), which the student's number does not give:
// anticlockwise, −33 · 16 + 576 = 48 is left.
TEST_CASE("A marked sheet brings the equation of an unknown slip in the student's own numbers") {
    const std::string model = bridgeAsking(R"({"ask":["reactions"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const std::string answers =
        R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") +
        R"(,"reactions":[{"of":"A:x","size":0,"sign":"0"},{"of":"A:y","size":33,"sign":"+"},)"
        R"({"of":"H:y","size":39,"sign":"+"}]})";
    const JsonValue marked = reply(Request{}
                                       .with("do", textValue("mark"))
                                       .with("model", textValue(model))
                                       .with("answers", textValue(answers)));
    REQUIRE(marked.find("slips")->items.size() == 1);
    const JsonValue& slip = marked.find("slips")->items[0];
    CHECK(slip.find("kind") == nullptr);
    CHECK(slip.find("body")->items.size() == 8);
    const JsonValue& equation = slip.find("equations")->items.back();
    CHECK(equation.find("sum")->text == "moments");
    CHECK(equation.find("about")->text == "H");
    CHECK(equation.find("of")->text == "A:y");
    CHECK(equation.find("written")->number == 33);
    CHECK(equation.find("gives")->number == 36);
    CHECK(equation.find("left")->number == 48);
    CHECK(equation.find("terms")->items.size() == 4); // three loads and A_y
    CHECK(equation.find("says")->text.starts_with("<math"));
    CHECK(marked.find("fewSlips")->boolean);
}
