#include "exchange/files/model_file.hpp"
#include "exchange/results/json_results.hpp"

#include "model/validate/validate.hpp"
#include "support/english.hpp"
#include "support/trusses/rich_model.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>
#include <catch2/matchers/catch_matchers_string.hpp>

#include <algorithm>
#include <string>

using namespace gusset;
using Catch::Matchers::ContainsSubstring;

namespace {

// A valid file of a triangle, in which each test breaks one thing.
const char* const kTriangle = R"({"gusset":1,
"joints":[{"id":"A","x":0,"y":0},{"id":"B","x":4,"y":0},{"id":"C","x":2,"y":1.5}],
"members":[{"a":"A","b":"B"},{"a":"B","b":"C"},{"a":"A","b":"C"}],
"supports":[{"joint":"A","kind":"pin"},{"joint":"B","kind":"roller","reaction":90}],
"loads":[{"joint":"C","fy":-10}]})";

std::string with(std::string before, std::string after) {
    std::string text = kTriangle;
    const std::size_t found = text.find(before);
    REQUIRE(found != std::string::npos);
    return text.replace(found, before.size(), after);
}

// The line shown to a person: place and sentence.
std::string fault(const std::string& json) {
    const Outcome<Reading> read = readModel(json);
    REQUIRE_FALSE(read.ok());
    return support::english(read.issues().front());
}

IssueCode code(const std::string& json) {
    const Outcome<Reading> read = readModel(json);
    REQUIRE_FALSE(read.ok());
    return read.issues().front().code;
}

Truss truss(const std::string& json) {
    const Outcome<Reading> read = readModel(json);
    INFO((read ? std::string() : support::english(read.issues().front())));
    REQUIRE(read.ok());
    return read.value().truss;
}

} // namespace

TEST_CASE("A file's joints, members, supports and loads arrive in the model") {
    const Truss read = truss(kTriangle);
    REQUIRE(read.joints.size() == 3);
    CHECK(read.joints[2].label == "C");
    CHECK(read.joints[2].at == Vec2{2, 1.5});
    CHECK(read.members[1] == Member{JointId{1}, JointId{2}, "", 0, 0, {}, ""});
    CHECK(read.supports[0].kind == SupportKind::Pin);
    CHECK(read.supports[1].kind == SupportKind::Roller);
    CHECK(read.supports[1].reaction == 90);
    CHECK(std::get<JointForce>(read.loads[0].what) == JointForce{JointId{2}, 0, -10});
    CHECK(read.units == Units{}); // kN, m, mm, MPa, mm unless the file says
}

TEST_CASE("Every key of the format is read into the model") {
    const Truss read = truss(support::everyKeyOfTheFormat());
    CHECK(read.units.force == ForceUnit::kip);
    CHECK(read.units.unknown == R"({"angle":"deg"})");
    CHECK(read.joints[0].unknown == R"({"drawn":{"label":"left"}})");
    CHECK(read.joints[3].at.x == 1e-7);
    CHECK(read.members[0].warming == 20);
    CHECK(read.members[0].misfit == 1.5);
    CHECK(read.supports[0].settle == Vec2{0.5, -5});
    CHECK(read.supports[0].unknownSettle == R"({"z":1})");
    CHECK(read.supports[1].settleAlong == -0.25);
    CHECK(std::get<AngledForce>(read.loads[1].what) == AngledForce{JointId{3}, 12, -90});
    CHECK(std::get<ChordLoad>(read.loads[4].what).chord.size() == 3);
    CHECK(std::get<MemberForce>(read.loads[5].what) ==
          MemberForce{JointId{2}, JointId{0}, 2.5, 0, -3});
    CHECK(read.moving[1].uniform->perLength == -5);
    CHECK(read.moving[1].uniform->length == 4);
    CHECK(read.moving[1].uniform->unknown == R"({"of":"us"})");
    CHECK(std::holds_alternative<SelfWeight>(read.loads[6].what));
    CHECK(read.loads[0].unknown == R"({"from":[1,2.50,"x",null,true]})");
    CHECK(read.materials[0].alpha == 1.17e-5);
    CHECK_FALSE(read.materials[1].E.has_value());
    CHECK(read.sections[0].area == 12.5);
    CHECK(read.sections[1].dimensions.size() == 2);
    CHECK(read.sections[1].unknown == R"({"H":1})"); // a circular tube has no such dimension
    CHECK(read.materials[0].ultimate == 58);
    CHECK(read.materials[2].tension == 2.1);
    CHECK(read.materials[2].compression == 3.05);
    CHECK(read.materials[2].E05 == 1070);
    const Section& pair = read.sections[2];
    CHECK(pair.dimensions.size() == 5);
    CHECK(pair.inPlane == "strong");
    CHECK(pair.holes == Holes{2, 0.875, R"({"drilled":true})"});
    CHECK(pair.lag == 0.9);
    CHECK(pair.packing == 24);
    CHECK(read.sections[4].dimensions.back() == std::pair<std::string, double>{"tip", 0.3});
    CHECK(read.members[3].factors == LengthFactors{0.85, 1, R"({"why":"gusset"})"});
    CHECK(read.combinations[0].factors[1] == std::pair<std::string, double>{"deck", 1.5});
    CHECK(read.moving[0].axles[1].at == 1.8);
    CHECK(read.moving[0].axles[0].unknown == R"({"wheels":2})");
    CHECK(read.classSettings.moments == MomentSense::Clockwise);
    CHECK(read.classSettings.angles == AngleStyle::Slopes);
    CHECK(read.classSettings.symbols == SymbolStyle::S1);
    CHECK(read.classSettings.senses == AssumedSense::Guessed);
    CHECK(read.classSettings.equations == EquationLines::NumbersOnly);
    CHECK(read.classSettings.digits == 4);
    CHECK(read.classSettings.carry == CarriedValues::Rounded);
    CHECK(read.checks == CheckSettings{ColumnFormula::Aisc360, 0.9, 1.6, 2.5, BucklingCurve::A0,
                                       1.05, 1.1, 1.3, AiscSafety::Allowable, 0.85, 1.75, 0, 180,
                                       300, 0.9, 1.25, 0.1, std::vector{JointId{0}, JointId{2}},
                                       R"({"checkedBy":"us"})"});
    CHECK(read.exercise == R"({"ask":["forces"],"hidden":3.0})");
    CHECK(read.lesson == R"({"shows":["forces"],"slow":2.0})");
    CHECK(read.form == R"({"kind":"howe-roof","span":24.0})");
    CHECK(read.cases[0] == LoadCase{"dead", "permanent", R"({"by":"us"})"});
    CHECK(read.cases[1].kind.empty());
    CHECK(read.combinations[1].by == "EN 1990, 6.14b");
    CHECK(read.combinations[1].limit == "service");
    CHECK(read.combinations[0].limit.empty());
    CHECK(read.unknown == R"({"made":{"by":"hand","at":1.50,"deep":[[[]],{}]}})");
}

TEST_CASE("Reading, writing and reading again is a fixed point, unknown keys included") {
    const Truss read = truss(support::everyKeyOfTheFormat());
    for (const Layout layout : {Layout::Indented, Layout::Compact}) {
        const std::string written = writeModel(read, layout);
        CHECK(truss(written) == read);
        CHECK(writeModel(truss(written), layout) == written);
    }
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const Truss random = support::randomRichTruss(seed);
        INFO("seed " << seed);
        CHECK(truss(writeModel(random)) == random);
        CHECK(truss(writeModel(random, Layout::Compact)) == random);
    }
}

TEST_CASE("Unknown keys are noted by their place, and no more than twenty of them") {
    const Outcome<Reading> read = readModel(with(R"("x":2)", R"("x":2,"hue":1)"));
    REQUIRE(read.ok());
    REQUIRE(read.value().notes.size() == 1);
    CHECK(read.value().notes[0].code == IssueCode::UnknownKey);
    CHECK(read.value().notes[0].at == "joints[2].hue");

    std::string many = R"("x":2)";
    for (int i = 0; i < 100; ++i) {
        many += ",\"k" + std::to_string(i) + "\":0";
    }
    CHECK(readModel(with(R"("x":2)", many)).value().notes.size() == kMostIssues);
}

TEST_CASE("Numbers are written with as few digits as bring them back") {
    Truss it = truss(kTriangle);
    it.joints[1].at = {0.1, 1.0 / 3};
    it.joints[2].at = {-0.0, 1e22};
    const std::string written = writeModel(it, Layout::Compact);
    CHECK_THAT(written, ContainsSubstring(R"({"id":"B","x":0.1,"y":0.3333333333333333})"));
    CHECK_THAT(written, ContainsSubstring(R"({"id":"C","x":0,"y":1e22})"));
}

TEST_CASE("An empty board is a model") {
    const Truss empty = truss(R"({"gusset":1,"joints":[],"members":[]})");
    CHECK(empty == Truss{});
    CHECK(truss(writeModel(empty)) == empty);
}

TEST_CASE("A wrong type is named with its place and what belongs there") {
    CHECK(fault(with(R"("x":2)", R"("x":"2")")) ==
          "joints[2].x: must be a number, not text in quotes");
    CHECK(fault(with(R"("id":"C")", R"("id":3)")) ==
          "joints[2].id: must be text in quotes, not a number");
    CHECK(fault(with(R"({"a":"A","b":"B"})", "5")) ==
          "members[0]: must be an object in { }, not a number");
    CHECK(fault("[1]") == "the model: must be an object in { }, not a list in [ ]");
    CHECK(fault(with(R"("loads":[{"joint":"C","fy":-10}])", R"("loads":{})")) ==
          "loads: must be a list in [ ], not an object in { }");
    CHECK(fault(with(R"("fy":-10)", R"("fy":null)")) == "loads[0].fy: must be a number, not null");
}

TEST_CASE("A reference to nothing is named with its place") {
    CHECK_THAT(fault(with(R"({"a":"B","b":"C"})", R"({"a":"B","b":"K"})")),
               ContainsSubstring("members[1].b: no joint \"K\""));
    CHECK_THAT(fault(with(R"("joint":"C")", R"("joint":"k")")),
               ContainsSubstring("loads[0].joint: no joint \"k\""));
    CHECK_THAT(fault(with(R"("b":"B"})", R"("b":"B","section":"tube"})")),
               ContainsSubstring("members[0].section: no section \"tube\""));
}

TEST_CASE("What is missing is named") {
    CHECK(fault(with(R"("x":2,)", "")) == "joints[2].x: is missing: it must be a number");
    CHECK(fault(with(R"(,"reaction":90)", "")).starts_with("supports[1].reaction: is missing"));
    CHECK(fault(with(R"(,"kind":"pin")", "")).starts_with("supports[0].kind: is missing"));
    CHECK(fault(with(R"("fy":-10)", R"("case":"x")")).starts_with("loads[0]: a load is one of"));
    CHECK(fault(with(R"("gusset":1,)", "")).starts_with("gusset: is missing"));
    CHECK(fault("{}").starts_with("gusset: is missing"));
}

TEST_CASE("Duplicates are refused: labels, members, keys") {
    CHECK(code(with(R"("id":"C")", R"("id":"A")")) == IssueCode::UnknownName); // "C" is gone
    CHECK_THAT(fault(R"({"gusset":1,"joints":[{"id":"A","x":0,"y":0},{"id":"A","x":1,"y":0}],
                         "members":[]})"),
               ContainsSubstring("joints[1].id: \"A\" already exists"));
    CHECK_THAT(fault(with(R"({"a":"B","b":"C"})", R"({"a":"B","b":"A"})")),
               ContainsSubstring("members[1]: member BA already exists as members[0]"));
    CHECK(fault(with(R"("x":2)", R"("x":2,"x":3)")) ==
          "joints[2].x: duplicate key: keep one of the two");
}

TEST_CASE("Members without length are refused") {
    CHECK_THAT(fault(with(R"("x":4,"y":0)", R"("x":0,"y":0)")),
               ContainsSubstring("members[0]: member AB has no length"));
    CHECK_THAT(fault(with(R"({"a":"B","b":"C"})", R"({"a":"B","b":"B"})")),
               ContainsSubstring("members[1]: begins and ends at joint \"B\""));
}

TEST_CASE("Numbers that can't be computed with are refused with their place") {
    for (const char* number : {"1e308", "-1e101", "1e999", "-1e999"}) {
        CHECK(
            fault(with(R"("x":2)", std::string(R"("x":)") + number)).starts_with("joints[2].x: "));
        CHECK(code(with(R"("x":2)", std::string(R"("x":)") + number)) == IssueCode::NotFinite);
    }
    for (const char* word : {"NaN", "Infinity", "nan", "inf"}) {
        CHECK(fault(with(R"("x":2)", std::string(R"("x":)") + word)).starts_with("joints[2].x: "));
        CHECK(code(with(R"("x":2)", std::string(R"("x":)") + word)) == IssueCode::NotFinite);
    }
}

TEST_CASE("Words without meaning are refused with the words that have one") {
    CHECK(fault(with(R"("kind":"pin")", R"("kind":"hinge")")) ==
          "supports[0].kind: \"hinge\" has no meaning here: use one of \"pin\", \"roller\"");
    CHECK_THAT(fault(with(R"("gusset":1,)", R"("gusset":1,"units":{"force":"tons"},)")),
               ContainsSubstring("units.force: no unit \"tons\" here: use one of N, kN"));
    CHECK_THAT(fault(with(R"("gusset":1,)", R"("gusset":1,"class":{"moments":"up"},)")),
               ContainsSubstring("class.moments"));
    CHECK_THAT(fault(with(R"("gusset":1,)", R"("gusset":1,"class":{"numbers":{"digits":2.5}},)")),
               ContainsSubstring("class.numbers.digits"));
    CHECK_THAT(fault(with(R"("gusset":1,)",
                          R"("gusset":1,"sections":[{"id":"s","shape":"chs","D":60}],)")),
               ContainsSubstring("sections[0]: a circular hollow section needs D and t"));
}

TEST_CASE("A file of a later version says so") {
    CHECK(code(with(R"("gusset":1)", R"("gusset":2)")) == IssueCode::NewerVersion);
    CHECK_THAT(fault(with(R"("gusset":1)", R"("gusset":2)")), ContainsSubstring("later version"));
    CHECK(code(with(R"("gusset":1)", R"("gusset":0.5)")) == IssueCode::OutOfRange);
}

TEST_CASE("Broken JSON is told by line and column") {
    const std::string said = fault(with(R"("x":2,)", R"("x":2 )"));
    CHECK(said.starts_with("line 2, column "));
    CHECK_THAT(said, ContainsSubstring("joints[2]"));
    CHECK(code("") == IssueCode::Syntax);
    CHECK(code("{\"gusset\":1,") == IssueCode::Syntax);
    CHECK(code("{\"gusset\":1}x") == IssueCode::Syntax);
    CHECK(code("\xff\xfe{}") == IssueCode::Syntax);
    CHECK(code("{\"gusset\":1,\"title\":\"\xC3\x28\"}") == IssueCode::Syntax); // not UTF-8
}

TEST_CASE("What is too large or too deep is refused before it is built") {
    CHECK(code(std::string(kLargestFile + 1, ' ')) == IssueCode::TooLarge);
    CHECK(code(std::string(1'000'000, '[')) == IssueCode::TooLarge);
    std::string wide = "[0";
    for (int i = 0; i < 1'000'000; ++i) {
        wide += ",0";
    }
    CHECK(code(wide + "]") == IssueCode::TooLarge);
}

TEST_CASE("An object of a hundred thousand keys is read without searching it for each") {
    std::string keys;
    for (int i = 0; i < 100'000; ++i) {
        keys += "\"k" + std::to_string(i) + "\":1,";
    }
    CHECK(readModel("{" + keys + R"("gusset":1,"joints":[],"members":[]})").ok());
    const std::string factors = keys.substr(0, keys.size() - 1);
    CHECK(
        readModel(R"({"gusset":1,"joints":[],"members":[],"combinations":[{"id":"c","factors":{)" +
                  factors + "}}]}")
            .ok());
}

TEST_CASE("Twenty issues are told at once, no more") {
    std::string members = "{}";
    for (int i = 0; i < 50; ++i) {
        members += ",{}";
    }
    const Outcome<Reading> read =
        readModel(R"({"gusset":1,"joints":[],"members":[)" + members + "]}");
    REQUIRE_FALSE(read.ok());
    CHECK(read.issues().size() == kMostIssues);
}

TEST_CASE("The sign of decimals is kept with the class, and the usual point goes unsaid") {
    const std::string text =
        with(R"("gusset":1,)", R"("gusset":1,"class":{"numbers":{"sign":","}},)");
    const Truss commas = truss(text);
    CHECK(commas.classSettings.decimalSign == ',');
    CHECK_THAT(writeModel(commas), ContainsSubstring(R"("sign": ",")"));
    CHECK(truss(writeModel(commas)).classSettings == commas.classSettings);
    CHECK(writeModel(truss(kTriangle)).find("sign") == std::string::npos);
    // Machine-readable output keeps the point.
    CHECK_THAT(writeResults(englishPhrases(), commas, solve(commas)),
               ContainsSubstring("6.66666666667"));
    CHECK_FALSE(
        readModel(with(R"("gusset":1,)", R"("gusset":1,"class":{"numbers":{"sign":"'"}},)")).ok());
}

TEST_CASE("Results name status, counting, reactions and forces in the order of the model") {
    const Truss it = truss(kTriangle);
    const std::string results = writeResults(englishPhrases(), it, solve(it));
    CHECK_THAT(results, ContainsSubstring(R"("status": "determinate")"));
    CHECK_THAT(results, ContainsSubstring(R"({ "joint": "A", "fx": 0, "fy": 5 })"));
    // Joint C, 3-4-5 triangles: 2 · F · 3/5 = −10; then AB = 8.33… · 4/5.
    CHECK_THAT(results, ContainsSubstring(
                            R"({ "a": "A", "b": "B", "force": 6.66666666667, "sense": "T" })"));
    CHECK_THAT(results, ContainsSubstring(
                            R"({ "a": "B", "b": "C", "force": -8.33333333333, "sense": "C" })"));
    CHECK(results.find("\"mechanisms\"") == std::string::npos); // absent, never null
    CHECK(results.find("null") == std::string::npos);
}

TEST_CASE("Results of a mechanism hold its velocities and a sentence, and no forces") {
    Truss it = truss(kTriangle);
    it.supports.pop_back();
    const std::string results =
        writeResults(englishPhrases(), it, solve(it), {.mechanisms = {"It slides."}});
    CHECK_THAT(results, ContainsSubstring(R"("status": "mechanism")"));
    CHECK_THAT(results, ContainsSubstring(R"("velocities")"));
    CHECK_THAT(results, ContainsSubstring(R"("says": "It slides.")"));
    CHECK(results.find("\"force\"") == std::string::npos);
}

TEST_CASE("Results are in the force unit of the model") {
    const Truss newtons = truss(with(R"("gusset":1,)", R"("gusset":1,"units":{"force":"N"},)"));
    CHECK_THAT(writeResults(englishPhrases(), newtons, solve(newtons)),
               ContainsSubstring(R"({ "joint": "A", "fx": 0, "fy": 5 })"));
}

TEST_CASE("a key without a name is told of at a place that has one") {
    const Outcome<Reading> read =
        readModel(R"({"gusset":1,"joints":[],"members":[],"supports":[],"loads":[],"":5})");
    REQUIRE(read.ok());
    REQUIRE(read.value().notes.size() == 1);
    CHECK(read.value().notes.front().at == "\"\"");
}
