// What the lesson's page asks, and what it is told.

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "lectern/lectern.hpp"

#include "support/english.hpp"
#include "support/files.hpp"
#include "support/quoted.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

using namespace gusset;
using namespace gusset::support;

namespace {

struct Page {
    Lectern lectern{englishPhrases()};

    JsonValue ask(const std::string& request) {
        const Outcome<JsonValue> reply = parseJson(lectern.reply(request));
        REQUIRE(reply);
        return reply.value();
    }
    JsonValue open(const std::string& model) {
        return ask(R"({"do":"open","model":)" + quoted(model) + "}");
    }
};

std::string footbridge() { return repositoryFile("site/examples/footbridge.json"); }

std::string bridgeWith(const std::string& lesson) {
    std::string text = footbridge();
    text.insert(text.find_last_of('}'), ",\"lesson\":" + lesson);
    return text;
}

std::string textOf(const JsonValue& value, const char* key) {
    const JsonValue* found = value.find(key);
    return found ? (found->kind == JsonValue::Kind::Text ? found->text : jsonText(*found))
                 : std::string();
}

} // namespace

TEST_CASE("a model without a plan is opened with all its forces") {
    Page page;
    const JsonValue opened = page.open(footbridge());
    CHECK(opened.find("faults") == nullptr);
    CHECK(textOf(opened, "plan") == R"({"shows":[{"of":"forces"}]})");
    CHECK(opened.find("lessons")->items.size() == 1);
    CHECK(opened.find("lessons")->items[0].find("steps")->items.size() > 10);
}

TEST_CASE("a step is drawn as large as the screen, and says where the truss stands") {
    Page page;
    (void)page.open(footbridge());
    const JsonValue drawn =
        page.ask(R"({"do":"stage","item":0,"step":0,"stroke":0,"width":800,"height":600})");
    CHECK(textOf(drawn, "svg").find("viewBox=\"0 0 800 600\"") != std::string::npos);
    CHECK(drawn.find("board")->find("scale")->number > 0);
}

TEST_CASE("a place that is not there is refused, as is a request before anything is open") {
    Page page;
    CHECK(page.ask(R"({"do":"stage","item":0,"step":0,"stroke":0})").find("faults") != nullptr);
    (void)page.open(footbridge());
    for (const char* request :
         {R"({"do":"stage","item":1,"step":0,"stroke":0})",
          R"({"do":"stage","item":0,"step":9999,"stroke":0})",
          R"({"do":"stage","item":0,"step":-1,"stroke":0})", R"({"do":"answer","member":99})",
          R"({"do":"move","joint":"none","x":1,"y":1})", R"({"do":"dance"})", R"({})"}) {
        INFO(request);
        CHECK(page.ask(request).find("faults") != nullptr);
    }
}

TEST_CASE("a model that can't be read leaves the lesson that is open") {
    Page page;
    (void)page.open(footbridge());
    CHECK(page.open("no model").find("faults") != nullptr);
    CHECK(page.ask(R"({"do":"stage","item":0,"step":0,"stroke":0,"width":800,"height":600})")
              .find("svg") != nullptr);
}

TEST_CASE("a plan goes into the model and its link, and comes back the same") {
    Page page;
    (void)page.open(footbridge());
    const std::string plan =
        R"({"shows":[{"of":"forces","without":["count"],"pauses":[{"before":"whole","says":"Look!"}]},)"
        R"({"of":"member","member":["A","B"]},{"of":"polygon"}],"values":"hidden"})";
    const JsonValue planned = page.ask(R"({"do":"plan","plan":)" + plan + "}");
    REQUIRE(planned.find("faults") == nullptr);
    Page student;
    const JsonValue opened = student.open("#" + textOf(planned, "link"));
    CHECK(textOf(opened, "plan") == plan);
    CHECK(opened.find("lessons")->items.size() == 3);
}

TEST_CASE("a plan with a name that is not there is refused, and the name is said") {
    struct Bad {
        const char* lesson;
        const char* names;
    };
    Page page;
    for (const Bad& bad : {Bad{R"({"shows":[{"of":"member","member":["A","Zoe"]}]})", "Zoe"},
                           Bad{R"({"shows":["waltz"]})", "waltz"},
                           Bad{R"({"shows":[{"of":"displacement","joint":"Zoe"}]})", "Zoe"},
                           Bad{R"({"shows":[{"of":"influence","path":["A","Zoe"],)"
                               R"("member":["A","B"]}]})",
                               "Zoe"}}) {
        INFO(bad.lesson);
        const JsonValue opened = page.open(bridgeWith(bad.lesson));
        REQUIRE(opened.find("faults") != nullptr);
        CHECK(opened.find("faults")->items.front().text.find(bad.names) != std::string::npos);
    }
    for (const char* lesson : {R"({"shows":[{"of":"section","members":[]}]})", R"({"shows":5})"}) {
        CHECK(page.open(bridgeWith(lesson)).find("faults") != nullptr);
    }
}

// A gable 8 m wide and 3 m high under 24 kN: rafters 20 kN in compression (see small_truss.hpp).
TEST_CASE("a force that a pause asks for is judged by size and sense") {
    Page page;
    (void)page.open(writeModel(gable()));
    const auto judged = [&](const std::string& typed) {
        const std::size_t rafter = memberAt(gable(), "A", "C");
        return page.ask(R"({"do":"answer","member":)" + std::to_string(rafter) + R"(,"typed":")" +
                        typed + R"("})");
    };
    CHECK(judged("20 C").find("right") != nullptr);
    CHECK(judged("-20").find("right") != nullptr);
    CHECK(judged("20 T").find("right") == nullptr);
    CHECK(judged("16 C").find("right") == nullptr);
    CHECK(judged("20").find("faults") != nullptr); // tension or compression is not said
    CHECK(judged("twenty").find("faults") != nullptr);
}

TEST_CASE("a moved joint gives another model, and leaves the one that is open until it is opened") {
    Page page;
    (void)page.open(writeModel(gable()));
    const JsonValue moved = page.ask(R"({"do":"move","joint":"C","x":4,"y":4})");
    const JsonValue opened = page.open(textOf(moved, "model"));
    CHECK(opened.find("faults") == nullptr);
    CHECK(textOf(opened, "model").find("\"y\":4") != std::string::npos);
}

TEST_CASE("captions follow what was shown, and a new chapter begins with another step") {
    Page page;
    (void)page.open(footbridge());
    const JsonValue made = page.ask(
        R"({"do":"captions","shown":[{"says":"One & two.","title":"First","about":"0 a","from":0,"to":2},)"
        R"({"says":"Three.","title":"First","about":"0 a","from":2,"to":5},)"
        R"({"says":"Four.","title":"Second","about":"0 b","from":5,"to":9.25}]})");
    CHECK(textOf(made, "list") == "0:00 First\n0:05 Second\n");
    CHECK(textOf(made, "captions") == "WEBVTT\n"
                                      "\n00:00:00.000 --> 00:00:02.000\nOne &amp; two.\n"
                                      "\n00:00:02.000 --> 00:00:05.000\nThree.\n"
                                      "\n00:00:05.000 --> 00:00:09.250\nFour.\n");
    CHECK(textOf(made, "chapters") == "WEBVTT\n"
                                      "\n00:00:00.000 --> 00:00:05.000\nFirst\n"
                                      "\n00:00:05.000 --> 00:00:09.250\nSecond\n");
    CHECK(textOf(made, "transcript") == "First\n\nOne & two. Three.\n\nSecond\n\nFour.\n");
}

TEST_CASE("captions of a lesson that nobody has recorded go at a speaker's pace") {
    Page page;
    (void)page.open(footbridge());
    CHECK(textOf(page.ask(R"({"do":"captions"})"), "list").find("0:00 ") == 0);
    // 1.5 s to look, and five words at 150 a minute.
    const JsonValue pace = page.ask(R"({"do":"pace","says":"Five words at this pace."})");
    CHECK(pace.find("seconds")->number == 3.5);
}
