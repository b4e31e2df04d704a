// The working read back from its print: see support/printed_working.
#include "exchange/files/model_file.hpp"
#include "exchange/json/json_value.hpp"
#include "hand/paper/working.hpp"
#include "report/derivation/working_text.hpp"

#include "published/published_case.hpp"
#include "support/files.hpp"
#include "support/reading/printed_working.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <cctype>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr int kRandomTrusses = 500;
constexpr int kSettings = 12;

// Both renderings of a truss's working.
struct Printed {
    std::string text;
    std::vector<Passage> passages;
};

Printed printed(const Truss& truss, const Solution& solution) {
    const Working working = workOut(truss, {}, solution);
    return {workingText({englishPhrases(), truss}, working),
            workingPassages({englishPhrases(), truss}, working)};
}

// Every value of every setting within twelve, in changing combinations.
ClassSettings settingsOf(int index) {
    ClassSettings settings;
    settings.angles = static_cast<AngleStyle>(index % 3);
    settings.form = static_cast<NumberForm>((index / 3 + index) % 3);
    settings.symbols = static_cast<SymbolStyle>((index / 2 + 1) % 3);
    settings.moments = static_cast<MomentSense>(index % 2);
    settings.axes = static_cast<AxisNames>(index / 2 % 2);
    settings.senses = static_cast<AssumedSense>(index / 4 % 2);
    settings.equations = static_cast<EquationLines>(index % 5 == 4);
    settings.carry = static_cast<CarriedValues>(index % 4 == 3);
    settings.digits = settings.form == NumberForm::Significant ? 3 + index % 3 : 1 + index % 4;
    return settings;
}

struct Totals {
    int workings = 0;
    int equations = 0;
    int results = 0;
    int slopes = 0;
    int inSymbols = 0;
    int quotients = 0;
};

void add(Totals& totals, const PrintedReading& reading) {
    ++totals.workings;
    totals.equations += reading.equations;
    totals.results += reading.results;
    totals.slopes += reading.slopes;
    totals.inSymbols += reading.inSymbols;
    totals.quotients += reading.quotients;
}

void requireReadable(const Truss& truss, Totals& totals) {
    const Solution solution = solve(truss);
    if (!solution.solved || solution.counting.redundants > 0) {
        return;
    }
    const Printed print = printed(truss, solution);
    const PrintedReading text = readPrintedText(print.text, truss, solution);
    const PrintedReading formulas = readPrintedPassages(print.passages, truss, solution);
    INFO(print.text);
    REQUIRE(text.objection == "");
    REQUIRE(formulas.objection == "");
    REQUIRE(text.equations == formulas.equations);
    REQUIRE(text.results == formulas.results);
    add(totals, text);
}

void requireReadableInAllSettings(Truss truss, Totals& totals) {
    requireReadable(truss, totals);
    for (int i = 0; i < kSettings; ++i) {
        INFO("settings " << i);
        truss.classSettings = settingsOf(i);
        requireReadable(truss, totals);
    }
}

Truss opened(const std::string& model) {
    const Outcome<Reading> reading = readModel(model);
    REQUIRE(reading.ok());
    return reading.value().truss;
}

bool isFormula(const std::string& line) { return line.rfind("    ", 0) == 0; }

// Positions of the first significant figures of the numbers in a text's formulas.
std::vector<std::size_t> firstFigures(const std::string& text) {
    std::vector<std::size_t> places;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = text.find('\n', at) + 1;
        const std::string line = text.substr(at, end - at);
        bool inNumber = false;
        for (std::size_t i = 0; isFormula(line) && i < line.size(); ++i) {
            const bool figure = std::isdigit(static_cast<unsigned char>(line[i])) != 0;
            if (figure && !inNumber && line[i] != '0') {
                places.push_back(at + i);
            }
            // The zeros before the first significant figure of 0.05 don't count.
            inNumber = (figure && (inNumber || line[i] != '0')) || (inNumber && line[i] == '.');
        }
        at = end;
    }
    return places;
}

} // namespace

TEST_CASE("the printed working of every example balances in its own digits") {
    const JsonValue index = parseJson(repositoryFile("site/examples/index.json")).value();
    Totals totals;
    for (const JsonValue& item : index.find("examples")->items) {
        const std::string file = item.find("file")->text;
        INFO(file);
        requireReadableInAllSettings(opened(repositoryFile("site/examples/" + file)), totals);
    }
    CHECK(totals.workings >= 100);
    CHECK(totals.equations > 10 * totals.workings);
    CHECK(totals.slopes > 0);
    CHECK(totals.inSymbols > 5 * totals.workings);
    CHECK(totals.quotients > 2 * totals.workings);
}

TEST_CASE("the printed working of every published case balances in its own digits") {
    Totals totals;
    for (const PublishedCase& published : publishedCases()) {
        INFO(published.name);
        requireReadableInAllSettings(opened(published.model), totals);
    }
    CHECK(totals.workings >= 20 * (kSettings + 1));
    CHECK(totals.equations > 5 * totals.workings);
    CHECK(totals.results > 5 * totals.workings);
}

TEST_CASE("the printed working of random trusses balances in its own digits") {
    Totals totals;
    for (int seed = 0; seed < kRandomTrusses; ++seed) {
        INFO("seed " << seed);
        Truss truss = randomDeterminateTruss(static_cast<std::uint64_t>(seed));
        truss.classSettings = settingsOf(seed % kSettings);
        requireReadable(truss, totals);
    }
    CHECK(totals.workings == kRandomTrusses);
    CHECK(totals.slopes >= kRandomTrusses / 2);
}

TEST_CASE("a reader of the print objects to every number that is changed") {
    int changed = 0;
    for (const WorkedTruss& worked : workedTrusses()) {
        const Solution solution = solve(worked.truss);
        const std::string text = printed(worked.truss, solution).text;
        REQUIRE(readPrintedText(text, worked.truss, solution).objection == "");
        for (const std::size_t place : firstFigures(text)) {
            std::string wrong = text;
            wrong[place] = wrong[place] == '9' ? '8' : static_cast<char>(wrong[place] + 1);
            INFO(worked.file << ": " << wrong.substr(place, 12) << " in "
                             << wrong.substr(text.rfind('\n', place) + 1, 60));
            CHECK(readPrintedText(wrong, worked.truss, solution).objection != "");
            ++changed;
        }
    }
    CHECK(changed > 500);
}

TEST_CASE("a reader of the print objects to a sense, a sign, a name or an order that is changed") {
    const WorkedTruss worked = workedTrusses().front(); // the shed roof
    const Solution solution = solve(worked.truss);
    const std::string text = printed(worked.truss, solution).text;
    const auto objectionWith = [&](const std::string& was, const std::string& is) {
        std::string wrong = text;
        const std::size_t at = wrong.find(was);
        REQUIRE(at != std::string::npos);
        wrong.replace(at, was.size(), is);
        return readPrintedText(wrong, worked.truss, solution).objection;
    };
    CHECK(objectionWith("(compression)", "(tension)") != "");
    CHECK(objectionWith("9.00\u2009kN \u2191", "9.00\u2009kN \u2193") != "");
    CHECK(objectionWith("A_y + F_AD\u2009sin", "A_y \u2212 F_AD\u2009sin") != "");
    CHECK(objectionWith("A_y + F_AD\u2009sin", "P_C + F_AD\u2009sin") != "");
    CHECK(objectionWith("\u2212 P_C", "+ P_C") != "");
    CHECK(objectionWith("9.00/", "9.10/") != "");
    CHECK(objectionWith("9.00 + F_AD\u2009sin", "9.00 \u2212 F_AD\u2009sin") != "");
    CHECK(objectionWith("9.00 + F_AD\u2009sin", "9 + F_AF\u2009sin") != "");
    CHECK(objectionWith("F_AD\u2009sin\u2009\u03B1", "F_AD\u2009cos\u2009\u03B1") != "");
    CHECK(objectionWith("Joint A, \u03A3F_y\n",
                        "Joint A, \u03A3F_y\n    F_AF = 12\u2009kN (tension)\n") != "");
    CHECK(objectionWith("\u03B1 is the inclination to the horizontal of AD, DC,",
                        "\u03B1 is the inclination to the horizontal of AD, CF,") != "");
}

TEST_CASE("a reader of the print objects to a rounded number that is said to be equal") {
    const std::string almost = " \u2248 ";
    int changed = 0;
    for (const WorkedTruss& worked : workedTrusses()) {
        const Solution solution = solve(worked.truss);
        const bool rounds = worked.truss.classSettings.carry == CarriedValues::Rounded;
        if (rounds || !solution.solved || solution.counting.redundants > 0) {
            continue;
        }
        const std::string text = printed(worked.truss, solution).text;
        for (std::size_t at = text.find(almost); at != std::string::npos;
             at = text.find(almost, at + 1)) {
            const std::size_t line = text.rfind('\n', at) + 1;
            if (text.substr(line, at - line).find(" = ") != std::string::npos) {
                continue; // the exact value comes first
            }
            std::string wrong = text;
            wrong.replace(at, almost.size(), " = ");
            INFO(worked.file << ": " << text.substr(line, text.find('\n', line) - line));
            CHECK(readPrintedText(wrong, worked.truss, solution).objection != "");
            ++changed;
        }
    }
    CHECK(changed > 20);
}
