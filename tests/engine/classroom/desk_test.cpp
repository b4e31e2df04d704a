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

TEST_CASE("A free body is drawn with the names of its forces, and with the student's own values") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const auto body = [&](const std::string& answers) {
        return reply(Request{}
                         .with("do", textValue("body"))
                         .with("model", textValue(model))
                         .with("answers", textValue(answers))
                         .with("joint", textValue("A")));
    };
    const JsonValue blank = body(blankSheet(opened));
    REQUIRE(blank.find("forces")->items.size() == 4); // A_x, A_y, AB, AC
    CHECK(wordsUnder(blank.find("forces")->items[3], "name") == "\"F_AC\"");
    CHECK(wordsUnder(blank.find("forces")->items[3], "angle") == "\"α\"");
    CHECK(blank.find("forces")->items[2].find("angle") == nullptr); // AB is level
    const std::string drawing = blank.find("figure")->text;
    for (const char* thing : {"0", "1", "2", "3"}) {
        CHECK(drawing.find("data-thing=\"" + std::string(thing) + "\"") != std::string::npos);
    }
    CHECK(drawing.find("= 30") == std::string::npos);
    // 30 is wrong (36 is right), and is drawn as it was found.
    const JsonValue own = body(R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") +
                               R"(,"reactions":[{"of":"A:y","size":30,"sign":"+"}]})");
    CHECK(own.find("figure")->text.find("= 30") != std::string::npos);
}

TEST_CASE("A part beside a cut is a body: what it gives, by which sum, and its equation") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const JsonValue cut = parseJson(R"(["B-D","C-D","C-E"])").value();
    const auto ask = [&](const char* what, JsonValue through) {
        return reply(
            Request{}
                .with("do", textValue(what))
                .with("model", textValue(model))
                .with("answers",
                      textValue(R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") +
                                R"(,"reactions":[{"of":"A:x","size":0,"sign":"0"},)"
                                R"({"of":"A:y","size":36,"sign":"+"}]})"))
                .with("cut", std::move(through))
                .with("part", textValue("A"))
                .with("level", parseJson("3").value()));
    };
    const JsonValue parts = ask("cut", cut);
    REQUIRE(parts.find("parts")->items.size() == 2);
    CHECK(wordsUnder(parts.find("parts")->items[0], "says").find("A, B and C") !=
          std::string::npos);
    CHECK(wordsUnder(ask("cut", parseJson(R"(["B-D"])").value()), "says").find("hangs together") !=
          std::string::npos);
    const std::string says = wordsUnder(ask("stand", cut), "says");
    CHECK(says.find("can be solved: 3 unknown") != std::string::npos);
    CHECK(says.find("moments about D leaves only CE") != std::string::npos);
    CHECK(says.find("vertical forces leaves only CD") != std::string::npos);
    // About C, of the first unknown BD: 36 · 4 = 3 BD.
    const std::string hint = wordsUnder(ask("hint", cut), "lines");
    CHECK(hint.find("moments about C leaves only BD") != std::string::npos);
    CHECK(hint.find("<math") != std::string::npos);
    CHECK(hint.find("48") == std::string::npos); // never what it comes to
    CHECK(ask("body", parseJson(R"(["B-D"])").value()).find("faults") != nullptr);
}

TEST_CASE("An equation is kept as it was built, and judged only where the exercise allows it") {
    for (const std::string check : {"at-once", "at-the-end"}) {
        const std::string model =
            bridgeAsking(R"({"ask":["reactions","forces"],"checks":")" + check + "\"}");
        const JsonValue opened =
            reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
        // At A: A_x + F_AB + F_AC sin α, where cos α is right.
        const JsonValue terms =
            parseJson(R"([{"sign":1},{"sign":0},{"sign":1},{"sign":1,"by":"sine"}])").value();
        const JsonValue built = reply(Request{}
                                          .with("do", textValue("equation"))
                                          .with("model", textValue(model))
                                          .with("answers", textValue(blankSheet(opened)))
                                          .with("joint", textValue("A"))
                                          .with("sum", textValue("x"))
                                          .with("terms", terms)
                                          .with("judge", parseJson("true").value()));
        CHECK(wordsUnder(built, "html").find("sin") != std::string::npos);
        CHECK(wordsUnder(built, "equations") ==
              R"([{"joint":"A","sum":"x","terms":[{"of":"A:x","sign":"+"},)"
              R"({"of":"A-B","sign":"+"},{"of":"A-C","sign":"+","by":"sine"}]}])");
        CHECK(built.find("terms")->items.empty() == (check == "at-the-end"));
        std::string kept = blankSheet(opened);
        kept.insert(kept.find_last_of('}'), ",\"equations\":" + wordsUnder(built, "equations"));
        const JsonValue listed = reply(Request{}
                                           .with("do", textValue("equations"))
                                           .with("model", textValue(model))
                                           .with("answers", textValue(kept)));
        REQUIRE(listed.find("equations")->items.size() == 1);
        CHECK(wordsUnder(listed.find("equations")->items[0], "body") == "\"Joint A\"");
    }
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
