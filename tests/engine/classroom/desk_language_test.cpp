// What the desk says comes from phrases: in an invented language no English word is left in its
// answers, and no decimal point if the class has a comma.

#include "desk/desk.hpp"
#include "exchange/json/json_value.hpp"
#include "fuzz/every_request.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

using namespace gusset;
using namespace gusset::support;

namespace {

// Words of programs, and names of the model.
constexpr std::array<std::string_view, 14> kNotSaid{"model", "link",   "answers",   "mark", "of",
                                                    "what",  "joints", "joint",     "part", "ends",
                                                    "hints", "code",   "equations", "cut"};

// All that people read in an answer, with "equations" only where it is a list of written ones.
void addSaid(const JsonValue& value, std::vector<std::string>& said) {
    if (value.kind == JsonValue::Kind::Text) {
        said.push_back(textOfHtml(value.text));
    }
    for (const JsonValue& item : value.items) {
        addSaid(item, said);
    }
    for (const auto& [key, part] : value.members) {
        if (std::find(kNotSaid.begin(), kNotSaid.end(), key) == kNotSaid.end()) {
            addSaid(part, said);
        }
    }
}

} // namespace

TEST_CASE("The desk's answers leave no English word in another language") {
    std::vector<Truss> trusses = exampleTrusses();
    for (std::uint64_t seed = 0; seed < 20; ++seed) {
        trusses.push_back(randomDeterminateTruss(seed));
        trusses.push_back(randomMechanism(seed));
    }
    long texts = 0;
    for (std::size_t i = 0; i < trusses.size(); ++i) {
        Truss& truss = trusses[i];
        truss.classSettings.decimalSign = ',';
        Truss known = truss;
        known.title += " seven NaN"; // are typed as answers
        Random random(i + 1);
        for (const std::string& request : everyRequest(truss, random)) {
            const Outcome<JsonValue> answer = parseJson(deskReply(mockPhrases(), request));
            REQUIRE(answer);
            std::vector<std::string> said;
            addSaid(answer.value(), said);
            for (const std::string& text : said) {
                INFO(truss.title << ", " << request.substr(0, 60) << ":\n" << text);
                CHECK(foreignWords(text, known) == std::vector<std::string>{});
                CHECK_FALSE(hasDecimalPoint(text));
                ++texts;
            }
        }
    }
    CHECK(texts > 2000);
}
