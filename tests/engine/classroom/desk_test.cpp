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

TEST_CASE("A check judges what is answered as a whole, and gives no answer away") {
    // DE alone carries nothing: no load at E. 13 + 3 unknowns, 16 equations: degree 0.
    const std::string model =
        bridgeAsking(R"({"ask":["zero-members","determinacy",{"what":"influence",)"
                     R"("path":["A","B","D","F","H"],"member":["C","E"],"at":"D"}]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const auto check = [&](const std::string& more) {
        const std::string answers =
            R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") + more + "}";
        return reply(Request{}
                         .with("do", textValue("check"))
                         .with("model", textValue(model))
                         .with("answers", textValue(answers)));
    };
    CHECK(wordsUnder(check(""), "questions") == "[]");
    const JsonValue right = check(R"(,"zero":["D-E"],"degree":0)");
    CHECK(wordsUnder(right, "rows") == "[]"); // no force is written
    CHECK(
        wordsUnder(right, "questions") ==
        R"([{"question":0,"says":"Right.","right":true},{"question":1,"says":"Right.","right":true}])");
    const JsonValue wrong = check(R"(,"zero":["D-E","A-B"],"degree":1,"values":[null,null,900])");
    CHECK(
        wordsUnder(wrong, "questions") ==
        R"([{"question":0,"says":"This is not right."},{"question":1,"says":"This is not right."},)"
        R"({"question":2,"says":"This is not right."}])");
}

TEST_CASE("An answer is read as what it is: a count, a displacement with its unit, an ordinate") {
    const std::string model = bridgeAsking(R"({"ask":["determinacy"]})");
    const auto typed = [&](const char* text, const char* what) {
        return reply(Request{}
                         .with("do", textValue("typed"))
                         .with("model", textValue(model))
                         .with("typed", textValue(text))
                         .with("what", textValue(what)));
    };
    CHECK(wordsUnder(typed("\u22122", "determinacy"), "count") == "-2");
    for (const char* text : {"abc", "2.5", "-", "99999"}) {
        CHECK(wordsUnder(typed(text, "determinacy"), "faults").find("no whole number") !=
              std::string::npos);
    }
    // The model's displacements are in mm.
    CHECK(wordsUnder(typed("0.00916 m", "displacement"), "size") == "9.16");
    CHECK(wordsUnder(typed("9.16 \u2193", "displacement"), "sign") == "-1");
    CHECK(typed("9 kN", "displacement").find("faults"));
    CHECK(typed("0.5 m", "influence").find("faults"));
}

TEST_CASE("A body is named to be looked at again only where all its other forces are written") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const auto says = [&](const char* way, const std::string& forces) {
        const std::string answers =
            R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") +
            R"(,"reactions":[{"of":"A:x","size":0,"sign":"0"},)"
            R"({"of":"A:y","size":36,"sign":")" +
            way + R"("},{"of":"H:y","size":36,"sign":"+"}],"forces":[)" + forces + "]}";
        const JsonValue checked = reply(Request{}
                                            .with("do", textValue("check"))
                                            .with("model", textValue(model))
                                            .with("answers", textValue(answers)));
        return wordsUnder(checked, "rows");
    };
    // True: AB = 48, AC = -60. At A all is written, at B and C it is not.
    const std::string two = says("+", R"({"of":"A-B","size":100,"sense":"T"},)"
                                      R"({"of":"A-C","size":7,"sense":"C"})");
    CHECK(two.find("joint B") == std::string::npos);
    CHECK(two.find("joint C") == std::string::npos);
    // A_y is turned round; AB and AC follow from that.
    const std::string one = says("-", R"({"of":"A-B","size":48,"sense":"C"},)"
                                      R"({"of":"A-C","size":60,"sense":"T"})");
    CHECK(one.find("look again at the whole truss") != std::string::npos);
}

TEST_CASE("Of a truss that equilibrium alone does not give, the hint and the standing say so") {
    // A rectangle with both diagonals, pin A, roller B: 6 + 3 forces, 8 equations. The whole truss
    // gives the reactions; then three members meet at every joint.
    const std::string model =
        R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0},{"id":"B","x":4,"y":0},)"
        R"({"id":"C","x":4,"y":3},{"id":"D","x":0,"y":3}],"members":[{"a":"A","b":"B"},)"
        R"({"a":"B","b":"C"},{"a":"C","b":"D"},{"a":"D","b":"A"},{"a":"A","b":"C"},)"
        R"({"a":"B","b":"D"}],"supports":[{"joint":"A","kind":"pin"},)"
        R"({"joint":"B","kind":"roller","reaction":90}],"loads":[{"joint":"C","fx":10}],)"
        R"("exercise":{"ask":["reactions","forces"]}})";
    const JsonValue opened =
        reply(Request{}.with("do", textValue("open")).with("model", textValue(model)));
    const auto ask = [&](const char* what, const std::string& more) {
        const std::string answers =
            R"({"gussetAnswers":1,"exercise":)" + wordsUnder(opened, "mark") + more + "}";
        return reply(Request{}
                         .with("do", textValue(what))
                         .with("model", textValue(model))
                         .with("answers", textValue(answers))
                         .with("joint", textValue("C")));
    };
    const std::string reactions = R"(,"reactions":[{"of":"A:x","size":10,"sign":"-"},)"
                                  R"({"of":"A:y","size":7.5,"sign":"-"},)"
                                  R"({"of":"B:y","size":7.5,"sign":"+"}])";
    for (const auto& [what, key] : {std::pair("hint", "lines"), std::pair("stand", "says")}) {
        const std::string first = wordsUnder(ask(what, ""), key);
        CHECK(first.find("its equations are too few by 1.") != std::string::npos);
        CHECK(first.find("The whole truss can be solved: 3 unknown.") != std::string::npos);
        CHECK(first.find("Choose") == std::string::npos);
        const std::string then = wordsUnder(ask(what, reactions), key);
        CHECK(then.find("too few by 1.") != std::string::npos);
        CHECK(then.find("Neither a joint nor the whole truss gives anything more now.") !=
              std::string::npos);
    }
}
