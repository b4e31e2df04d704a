#include "classroom/exercise/variant_code.hpp"
#include "course/course.hpp"
#include "exchange/links/link.hpp"
#include "support/classroom/requests.hpp"
#include "support/english.hpp"
#include "support/quoted.hpp"
#include "support/reading/mock_language.hpp"

#include <catch2/catch_test_macros.hpp>

#include <set>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

// The answer to {"do": …, and the rest as it stands}.
JsonValue courseAnswer(const std::string& wish, const std::string& rest,
                       const CourseTold& told = {}) {
    const std::string request = "{\"do\":" + quoted(wish) + "," + rest + "}";
    const Outcome<JsonValue> answer = parseJson(courseReply(englishPhrases(), request, told));
    REQUIRE(answer);
    return answer.value();
}
std::string modelPart(const std::string& model) { return "\"model\":" + quoted(model); }

std::string plainBridge() { return repositoryFile("site/examples/footbridge.json"); }

std::string faultsIn(const JsonValue& answer) {
    const JsonValue* faults = answer.find("faults");
    return faults ? jsonText(*faults) : std::string();
}

JsonValue variantsOfBridge(const std::string& rest, const CourseTold& told = {}) {
    return courseAnswer("variants",
                        modelPart(bridgeAsking(R"({"ask":["reactions","forces"]})")) + "," + rest,
                        told);
}

} // namespace

TEST_CASE("A truss opens to be asked about, is given a question, and opens again with it") {
    const JsonValue opened = courseAnswer("open", modelPart(plainBridge()));
    CHECK(faultsIn(opened).empty());
    CHECK(opened.find("exercise") == nullptr);
    CHECK(opened.find("lowestPath")->items.size() == 5); // A, B, D, F, H of the bottom chord
    const std::string question =
        R"({"ask":["reactions",{"what":"forces","members":[["A","C"]],"marks":3}],)"
        R"("tolerance":{"figures":3,"floor":0.2},"hints":"none","checks":"at-the-end"})";
    const JsonValue made =
        courseAnswer("set", modelPart(plainBridge()) + ",\"exercise\":" + question);
    REQUIRE(faultsIn(made).empty());
    const std::string link = textUnder(made, "link");
    CHECK(link.starts_with("x=1."));
    const JsonValue again = courseAnswer("open", modelPart(link));
    CHECK(textUnder(courseAnswer("set", modelPart(link)), "mark") == textUnder(made, "mark"));
    const JsonValue* exercise = again.find("exercise");
    REQUIRE(exercise);
    CHECK(exercise->find("ask")->items.size() == 2);
    CHECK(exercise->find("tolerance")->find("figures")->number == 3);
    CHECK(exercise->find("tolerance")->find("floor")->number == 0.2);
    CHECK(textUnder(*exercise, "hints") == "none");
    CHECK(textUnder(*exercise, "checks") == "at-the-end");
}

TEST_CASE("A question that the truss can't answer is not set") {
    const auto fault = [](const std::string& ask) {
        return faultsIn(
            courseAnswer("set", modelPart(plainBridge()) + ",\"exercise\":{\"ask\":" + ask + "}"));
    };
    CHECK(fault(R"([{"what":"displacement","joint":"D"}])").find("E and A") != std::string::npos);
    CHECK(fault(R"([])").find("at least one question") != std::string::npos);
    CHECK(fault(R"(["forces","forces"])").find("asked twice") != std::string::npos);
}

TEST_CASE("The loads that a link shows are those that the question begins with") {
    std::string model = plainBridge();
    const Outcome<Reading> reading = readModelOrLink(model);
    REQUIRE(reading);
    Truss truss = reading.value().truss;
    truss.loads.front().caseId = "wind";
    const Outcome<std::string> link = openableLink(truss, OneCase{"wind"});
    REQUIRE(link);
    const JsonValue opened = courseAnswer("open", modelPart(link.value()));
    CHECK(faultsIn(opened).empty());
    CHECK(textUnder(opened, "case") == "wind");
}

TEST_CASE("Variants are told of as they are found, and each has its student, code and link") {
    std::vector<Progress> heard;
    const JsonValue made = variantsOfBridge(
        R"("vary":["lengths","rise","loads"],"decimals":1,"seed":"7","address":"https://x.org/",)"
        R"("students":"Name\nAda\nEmmy\n=cmd\n")",
        [&](const Progress& progress) { heard.push_back(progress); });
    REQUIRE(faultsIn(made).empty());
    const std::vector<JsonValue>& variants = made.find("variants")->items;
    REQUIRE(variants.size() == 3);
    REQUIRE(heard.size() == 2); // the third ends it
    CHECK(heard[0] == Progress{1, 3});
    CHECK(heard[1] == Progress{2, 3});
    CHECK(textUnder(variants[1], "student") == "Emmy");
    CHECK(textUnder(variants[0], "code") != textUnder(variants[1], "code"));
    const std::string links = textUnder(made, "links");
    CHECK(links.find("2,Emmy," + textUnder(variants[1], "code") + ",https://x.org/#" +
                     textUnder(variants[1], "link")) != std::string::npos);
    CHECK(links.find("'=cmd") != std::string::npos); // no formula of a spreadsheet
    for (const JsonValue& variant : variants) {
        CHECK(textUnder(variant, "figure").starts_with("<svg"));
        const JsonValue opened = courseAnswer("open", modelPart(textUnder(variant, "link")));
        CHECK(opened.find("exercise")->find("variant")->number == variant.find("number")->number);
    }
}

TEST_CASE("Of wishes that can't be met the one to blame is said") {
    CHECK(faultsIn(variantsOfBridge(R"("vary":[],"decimals":0,"count":2,"seed":"1")"))
              .find("nothing may vary") != std::string::npos);
    CHECK(faultsIn(variantsOfBridge(R"("vary":["loads"],"decimals":0,"count":2,"seed":"one")"))
              .find("digits alone") != std::string::npos);
    CHECK(faultsIn(variantsOfBridge(R"("vary":["loads"],"decimals":0,"count":0,"seed":"1")"))
              .find("from 1 to 400") != std::string::npos);
}

TEST_CASE("A truss is made from nothing, with as many zero members as wished") {
    const JsonValue made = courseAnswer("form", R"("joints":7,"zeros":2,"held":"ends","seed":"3")");
    REQUIRE(faultsIn(made).empty());
    const JsonValue opened = courseAnswer("open", modelPart(textUnder(made, "model")));
    CHECK(opened.find("joints")->items.size() == 7);
    CHECK(faultsIn(courseAnswer("form", R"("joints":7,"held":"wall","seed":"3")"))
              .find("ask for 6 or 8") != std::string::npos);
}

TEST_CASE("Sheets of several exercises are one document") {
    const std::string models = "\"models\":[" + quoted(bridgeAsking(R"({"ask":["forces"]})")) +
                               "," + quoted(bridgeAsking(R"({"ask":["reactions"]})")) + "]";
    std::vector<Progress> heard;
    const std::string html = textUnder(
        courseAnswer("handout", models + R"(,"kind":"questions","paper":"Letter","address":"")",
                     [&](const Progress& progress) { heard.push_back(progress); }),
        "html");
    CHECK(heard == std::vector<Progress>{{1, 2}, {2, 2}});
    std::size_t sheets = 0;
    for (auto at = html.find("<article"); at != html.npos; at = html.find("<article", at + 1)) {
        ++sheets;
    }
    CHECK(sheets == 2);
    CHECK(html.find("letter") != std::string::npos);
    CHECK(faultsIn(courseAnswer("handout", R"("models":[])")).find("asks nothing") !=
          std::string::npos);
}

TEST_CASE("Questions for a platform take the picture that the page has drawn") {
    const std::string models =
        "\"models\":[" + quoted(bridgeAsking(R"({"ask":["reactions"]})")) + "]";
    // The head of a PNG of 2 × 1 px.
    const std::string png = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAAB";
    const JsonValue file = courseAnswer("export", models + ",\"format\":\"moodle\",\"pictures\":[" +
                                                      quoted(png) + "]");
    CHECK(textUnder(file, "name") == "questions.xml");
    CHECK(textUnder(courseAnswer("export", models + R"(,"format":"qti12")"), "base64")
              .starts_with("UEsD")); // "PK\3": a zip
    // "PD94bWwg" is "<?xml ".
    CHECK(textUnder(file, "base64").starts_with("PD94bWwg"));
}

TEST_CASE("Sheets are marked, each by its own exercise, and what can't be is said with its place") {
    const JsonValue made =
        variantsOfBridge(R"("vary":["loads"],"decimals":1,"seed":"1","count":2)");
    REQUIRE(faultsIn(made).empty());
    const std::vector<JsonValue>& variants = made.find("variants")->items;
    std::string models;
    std::string sheets;
    for (const JsonValue& variant : variants) {
        models += (models.empty() ? "" : ",") + quoted(textUnder(variant, "link"));
        const std::string answers = R"({"gussetAnswers":1,"exercise":")" +
                                    textUnder(variant, "mark") + R"(","code":")" +
                                    textUnder(variant, "code") + R"("})";
        sheets +=
            (sheets.empty() ? "" : ",") + ("{\"name\":\"s\",\"text\":" + quoted(answers)) + "}";
    }
    const JsonValue marked =
        courseAnswer("mark", "\"models\":[" + models + "],\"sheets\":[" + sheets +
                                 R"(,{"name":"odd","text":"x\n#a=1.broken"}])");
    REQUIRE(faultsIn(marked).empty());
    const std::vector<JsonValue>& rows = marked.find("sheets")->items;
    REQUIRE(rows.size() == 2);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CHECK(textUnder(rows[i], "code") == textUnder(variants[i], "code"));
        CHECK(rows[i].find("variant")->number == static_cast<double>(i + 1));
        CHECK(rows[i].find("marks")->number == 0); // blank
    }
    CHECK(jsonText(*marked.find("notes")).find("odd, row 2") != std::string::npos);
    CHECK(textUnder(marked, "csv").find(textUnder(variants[0], "code")) != std::string::npos);
    CHECK(!marked.find("rule")->items.empty());
}

TEST_CASE("A table may hold the rows of several variants, and only a row of none is refused") {
    const JsonValue made =
        variantsOfBridge(R"("vary":["loads"],"decimals":1,"seed":"1","count":2)");
    REQUIRE(faultsIn(made).empty());
    std::string models;
    for (const JsonValue& variant : made.find("variants")->items) {
        models += (models.empty() ? "" : ",") + quoted(textUnder(variant, "link"));
    }
    const std::string table = "code;variant;A_y\r\nK1;1;36\r\nK2;2;12,5\r\nK3;3;1\r\n";
    const JsonValue marked =
        courseAnswer("mark", "\"models\":[" + models + R"(],"sheets":[{"name":"t","text":)" +
                                 quoted(table) + "}]");
    REQUIRE(faultsIn(marked).empty());
    CHECK(marked.find("sheets")->items.size() == 2);
    REQUIRE(marked.find("notes"));
    const std::string notes = jsonText(*marked.find("notes"));
    CHECK(notes.find("row 4") != std::string::npos);
    CHECK(notes.find("row 2") == std::string::npos);
}

TEST_CASE("Two sheets with one code are both marked, and the second is said with its place") {
    const JsonValue marked = courseAnswer(
        "mark", "\"models\":[" + quoted(bridgeAsking(R"({"ask":["reactions","forces"]})")) +
                    R"(],"sheets":[{"name":"t","text":"code;A_y\nK1;36\nK2;12\n"},)"
                    R"({"name":"u","text":"code;A_y\nK1;30\n"}])");
    REQUIRE(faultsIn(marked).empty());
    CHECK(marked.find("sheets")->items.size() == 3);
    REQUIRE(marked.find("notes"));
    REQUIRE(marked.find("notes")->items.size() == 1);
    CHECK(marked.find("notes")->items[0].text ==
          "u, row 2: \"K1\" is in t, row 2 too: both are marked");
}

TEST_CASE("What the course can't read is said, and nothing else") {
    for (const char* request :
         {"", "[]", "{", R"({"do":"open"})", R"({"do":"fly"})", R"({"do":"open","model":"x"})",
          R"({"do":"set","model":"{\"gusset\":1}"})", R"({"do":"mark","models":["{}"]})"}) {
        const Outcome<JsonValue> answer = parseJson(courseReply(englishPhrases(), request));
        REQUIRE(answer);
        CHECK(answer.value().find("faults") != nullptr);
        CHECK(answer.value().members.size() == 1);
    }
}

TEST_CASE("The codes of a series differ, and sheets of paper and links carry them") {
    Exercise exercise;
    CHECK(variantCode(exercise).empty());
    exercise.seed = 123456789012345u;
    std::set<std::string> codes;
    for (int number = 1; number <= 400; ++number) {
        exercise.variant = number;
        codes.insert(variantCode(exercise));
        CHECK(variantCode(exercise).size() == 5);
    }
    CHECK(codes.size() == 400);
    const JsonValue made =
        variantsOfBridge(R"("vary":["loads"],"decimals":1,"seed":"1","count":1)");
    REQUIRE(faultsIn(made).empty());
    const JsonValue& variant = made.find("variants")->items.front();
    const std::string code = textUnder(variant, "code");
    CHECK(textUnder(variant, "link").ends_with("&code=" + code));
    const std::string html =
        textUnder(courseAnswer("handout", "\"models\":[" + quoted(textUnder(variant, "link")) +
                                              R"(],"address":"https://x.org/exercise/")"),
                  "html");
    CHECK(html.find("<span class=\"blank\">" + code + "</span>") != std::string::npos);
    CHECK(html.find("&amp;code=" + code) != std::string::npos);
}

TEST_CASE("In another language nothing that the course says is left in English") {
    const auto foreign = [](const std::string& request) {
        const Outcome<JsonValue> answer = parseJson(courseReply(mockPhrases(), request));
        REQUIRE(answer);
        std::string said;
        for (const char* key : {"faults", "notes", "rule"}) {
            if (const JsonValue* texts = answer.value().find(key)) {
                for (const JsonValue& text : texts->items) {
                    said += text.text + "\n";
                }
            }
        }
        CHECK_FALSE(said.empty());
        return foreignWords(said, {});
    };
    const std::string bridge = modelPart(bridgeAsking(R"({"ask":["reactions"]})"));
    CHECK(foreign(R"({"do":"fly"})") == std::vector<std::string>{"do"}); // a key
    CHECK(foreign(R"({"do":"form","joints":7,"seed":"x"})").empty());
    CHECK(foreign(R"({"do":"variants",)" + bridge + R"(,"vary":["loads"],"seed":"x"})").empty());
    CHECK(foreign(R"({"do":"mark","models":[)" + quoted(bridgeAsking(R"({"ask":["forces"]})")) +
                  R"(],"sheets":[{"name":"1","text":"#a=1.broken"}]})")
              .empty());
}

TEST_CASE("A slip is shown on its body with the student's own numbers") {
    const std::string model = bridgeAsking(R"({"ask":["reactions","forces"]})");
    const std::string mark = textUnder(courseAnswer("set", modelPart(model)), "mark");
    // A_y = H_y = 36; upright at A: 0.6 AC + 36 = 0 gives −60, and with 0.8, −45.
    const std::string sheet =
        R"({"gussetAnswers":1,"exercise":")" + mark +
        R"(","reactions":[{"of":"A:x","size":0,"sign":"0"},{"of":"A:y","size":36,"sign":"+"},)"
        R"({"of":"H:y","size":36,"sign":"+"}],"forces":[{"of":"A-C","size":45,"sense":"C"},{"of":"A-B","size":36,"sense":"T"}]})";
    const JsonValue marked =
        courseAnswer("mark", "\"models\":[" + quoted(model) +
                                 "],\"sheets\":[{\"name\":\"s\",\"text\":" + quoted(sheet) + "}]");
    REQUIRE(faultsIn(marked).empty());
    const std::vector<JsonValue>& slips = marked.find("sheets")->items.front().find("slips")->items;
    REQUIRE(slips.size() == 1);
    CHECK(textUnder(slips[0], "kind") == "sine for cosine");
    CHECK(jsonText(*slips[0].find("body")) == R"(["A"])");
    REQUIRE(!slips[0].find("equations")->items.empty());
    const JsonValue& equation = slips[0].find("equations")->items.front();
    CHECK(equation.find("written")->number == -45);
    CHECK(equation.find("gives")->number == -60);
    CHECK(textUnder(equation, "says").starts_with("<math"));
}

// 33 for A_y = 36: about H, A_y · 16 = 24 · (12 + 8 + 4), which the student's number does not give:
// anticlockwise, −33 · 16 + 576 = 48 is left.
TEST_CASE("A marked sheet brings the equation of an unknown slip in the student's own numbers") {
    const std::string model = bridgeAsking(R"({"ask":["reactions"]})");
    const std::string mark = textUnder(courseAnswer("set", modelPart(model)), "mark");
    const std::string answers =
        R"({"gussetAnswers":1,"exercise":)" + quoted(mark) +
        R"(,"reactions":[{"of":"A:x","size":0,"sign":"0"},{"of":"A:y","size":33,"sign":"+"},)"
        R"({"of":"H:y","size":39,"sign":"+"}]})";
    const JsonValue marked = courseAnswer(
        "mark", "\"models\":[" + quoted(model) +
                    "],\"sheets\":[{\"name\":\"one\",\"text\":" + quoted(answers) + "}]");
    const JsonValue& sheet = marked.find("sheets")->items.front();
    REQUIRE(sheet.find("slips")->items.size() == 1);
    const JsonValue& slip = sheet.find("slips")->items[0];
    CHECK(textUnder(slip, "kind") == "not recognised");
    CHECK(slip.find("body")->items.size() == 8);
    const JsonValue& equation = slip.find("equations")->items.back();
    CHECK(textUnder(equation, "sum") == "moments");
    CHECK(textUnder(equation, "about") == "H");
    CHECK(textUnder(equation, "of") == "A:y");
    CHECK(equation.find("written")->number == 33);
    CHECK(equation.find("gives")->number == 36);
    CHECK(equation.find("left")->number == 48);
    CHECK(equation.find("terms")->items.size() == 4); // three loads and A_y
    CHECK(textUnder(equation, "says").starts_with("<math"));
    CHECK(sheet.find("fewSlips")->boolean);
}
