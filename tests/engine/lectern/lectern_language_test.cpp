// A lesson in another language: of what the lectern says, writes and draws, no English word is
// left, and no decimal point if the class has a comma.

#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "lectern/lectern.hpp"
#include "support/english.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <array>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

struct Foreign {
    Truss truss;
    Lectern lectern{mockPhrases()};
    long texts = 0;

    JsonValue ask(const std::string& request) { return parseJson(lectern.reply(request)).value(); }

    // That nothing of a text is left in English.
    void examine(const std::string& text) {
        INFO(truss.title << ", " << truss.lesson << ":\n" << text);
        CHECK(foreignWords(text, truss) == std::vector<std::string>{});
        CHECK_FALSE(hasDecimalPoint(text));
        ++texts;
    }
    void examineSteps(const JsonValue& lesson) {
        for (const JsonValue& step : lesson.find("steps")->items) {
            examine(textUnder(step, "title"));
            for (const JsonValue& spoken : step.find("strokes")->items) {
                examine(spoken.text);
            }
            if (const JsonValue* uses = step.find("uses")) {
                for (const JsonValue& use : uses->items) {
                    examine(textUnder(use, "says"));
                }
            }
        }
    }
    void examineAll() {
        JsonValue model{JsonValue::Kind::Text, {}, {}, {}, {}, {}};
        model.text = writeModel(truss, Layout::Compact);
        const JsonValue opened = ask(R"({"do":"open","model":)" + jsonText(model) + "}");
        INFO(truss.title << ", " << truss.lesson << jsonText(opened).substr(0, 300));
        REQUIRE(opened.find("faults") == nullptr);
        for (const JsonValue& lesson : opened.find("lessons")->items) {
            examineSteps(lesson);
        }
        for (const JsonValue& question : opened.find("questions")->items) {
            examine(question.text);
        }
        for (long i = 0, of = 1; i < of; ++i) {
            const JsonValue picture = ask(R"({"do":"picture","index":)" + std::to_string(i) + "}");
            examine(textOfHtml(textUnder(picture, "svg")));
            of = static_cast<long>(numberUnder(picture, "of"));
        }
        const JsonValue captions = ask(R"({"do":"captions"})");
        for (const char* key : {"list", "transcript"}) {
            examine(textUnder(captions, key));
        }
    }
};

// Which derivations there are of a truss.
std::vector<std::string> plansOf(const Truss& truss) {
    const auto label = [&](JointId joint) { return "\"" + truss.joints[joint.at()].label + "\""; };
    const Member& member = truss.members.front();
    const std::string ends = "[" + label(member.a) + "," + label(member.b) + "]";
    return {R"({"shows":["forces"]})", R"({"shows":["polygon"],"values":"hidden"})",
            R"({"shows":[{"of":"member","member":)" + ends + "}]}",
            R"({"shows":[{"of":"displacement","joint":)" + label(member.b) + "}]}",
            R"({"shows":["force-method"]})"};
}

} // namespace

TEST_CASE("a lesson in another language leaves no English word, whatever is derived") {
    std::vector<Truss> trusses = exampleTrusses();
    for (const WorkedTruss& redundant : redundantTrusses()) {
        trusses.push_back(redundant.truss);
    }
    trusses.push_back(randomMechanism(3));
    long texts = 0;
    for (Truss& truss : trusses) {
        truss.classSettings.decimalSign = ',';
        for (const std::string& plan : plansOf(truss)) {
            truss.lesson = plan;
            Foreign page{truss};
            page.examineAll();
            texts += page.texts;
        }
    }
    CHECK(texts > 4000);
}

TEST_CASE("the lectern speaks the language that it is given, and refuses one with other parts") {
    Lectern lectern(englishPhrases());
    CHECK(lectern.reply(R"({"do":"speak","language":"{\"Count\":\"{x}\"}"})").find("faults") !=
          std::string::npos);
    CHECK(
        lectern.reply(
            R"({"do":"speak","language":"{\"What is the force in {member}?\":\"{member} ?\"}"})") ==
        "{}");
    JsonValue model{JsonValue::Kind::Text, {}, {}, {}, {}, {}};
    model.text = writeModel(gable(), Layout::Compact);
    const std::string opened = lectern.reply(R"({"do":"open","model":)" + jsonText(model) + "}");
    CHECK(opened.find("\"AB ?\"") != std::string::npos);
    CHECK(opened.find("Count") != std::string::npos); // not translated
}
