// The faults of models, links, typed numbers and edits come from phrases: in an invented language
// no English word is left. Keys and words of the model file stay, as do the author's names.

#include "exchange/files/model_file.hpp"
#include "exchange/links/deflated.hpp"
#include "exchange/links/link.hpp"
#include "exchange/links/link_text.hpp"
#include "model/edit/edit.hpp"
#include "model/forms/forms.hpp"
#include "model/quantity/quantity_input.hpp"
#include "model/validate/validate.hpp"
#include "report/results/solution_text.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/moving/influence_report.hpp"
#include "statics/moving/load_paths.hpp"
#include "statics/solve/solution.hpp"
#include "support/english.hpp"
#include "support/mutation.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/small_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>
#include <utility>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

constexpr const char* kGable = R"({"gusset": 1, "title": "T",
    "joints": [{"id": "A", "x": 0, "y": 0}, {"id": "B", "x": 4, "y": 0}, {"id": "C", "x": 2, "y": 1}],
    "members": [{"a": "A", "b": "B"}, {"a": "B", "b": "C"}, {"a": "A", "b": "C", "section": "S"}],
    "supports": [{"joint": "A", "kind": "pin"}, {"joint": "B", "kind": "roller", "reaction": 90}],
    "loads": [{"joint": "C", "fx": 0, "fy": -1}, {"member": ["A", "B"], "at": 1, "fx": 0, "fy": -1}],
    "materials": [{"id": "M", "E": 210000}],
    "sections": [{"id": "S", "material": "M", "shape": "chs", "D": 60, "t": 3}],
    "combinations": [{"id": "U", "factors": {"D": 1}}],
    "moving": [{"id": "V", "path": ["A", "B"], "axles": [{"at": 0, "force": -1}]}]})";

// Keys and words of the model file, of JSON, and functions of typed numbers, which no language
// translates.
Truss namesOfFormat() {
    Truss names;
    names.title =
        "joints members supports loads materials sections combinations moving id title "
        "factors axles path fx section round chs shs rhs angle double "
        "channel flat timber inPlane strong weak lag holes count held diameter pin roller "
        "exact decimals significant clockwise anticlockwise Euler AISC NaN uD uDC sqrt "
        "asin rad";
    return names;
}

void check(const Issue& fault, const std::vector<std::string>& names = {}) {
    Truss known = namesOfFormat();
    for (const std::string& name : names) {
        known.title += " " + name;
    }
    INFO(english(fault));
    CHECK(fault.says.english != nullptr);
    CHECK(foreignWords(said(mockPhrases(), fault.says), known) == std::vector<std::string>{});
    if (fault.at.english) {
        CHECK(foreignWords(faultLine(mockPhrases(), fault), known) == std::vector<std::string>{});
    }
}

void check(const Issues& faults) {
    REQUIRE_FALSE(faults.empty());
    for (const Issue& fault : faults) {
        check(fault);
    }
}

template <class Value>
void checkRefused(const Outcome<Value>& outcome) {
    REQUIRE_FALSE(outcome.ok());
    check(outcome.issues());
}

std::string changed(const std::string& part, const std::string& into) {
    std::string text = kGable;
    const std::size_t at = text.find(part);
    REQUIRE(at != std::string::npos);
    return text.replace(at, part.size(), into);
}

struct Change {
    std::string part;
    std::string into;
};

// Every word that is not a phrase's was in the input, or is one of the file's.
void checkLeaves(const Statement& statement, const std::string& input) {
    for (const StatementPart& part : statement.parts) {
        checkLeaves(part.value, input);
    }
    for (const std::string& word : foreignWords(statement.text, namesOfFormat())) {
        INFO(word);
        CHECK(input.find(word) != std::string::npos);
    }
}

} // namespace

TEST_CASE("in a language made up for it, what is wrong with a file keeps no English word") {
    for (const char* text : {"",
                             " \n",
                             "\xFF\xFE{",
                             "{\"\xC3\"}",
                             "[]",
                             "true",
                             "{\"gusset\": NaN}",
                             "{\"a\": 1e999}",
                             "{\"a\": 1, \"a\": 2}",
                             "{\"a\" 1}",
                             "{\"a\": }",
                             "{\"a\": [1 2]}",
                             "{\"a\": 1",
                             "{1}",
                             "{\"a\": \"B",
                             "{\"a\": \"\\q\"}",
                             "{\"a\": \"\\u12\"}",
                             "{\"a\": \"\t\"}",
                             "{\"a\": \"\x01\"}",
                             "{\"a\": \"\\uD800\"}",
                             "{\"a\": \"\\uDC00\"}",
                             "{\"a\": 1.}",
                             "{\"a\": -}",
                             "{\"a\": 1e}",
                             "{\"a\": 1e+}",
                             "{\"a\": T}",
                             "{\"a\": 1} true",
                             "{\"a\": 1} false",
                             "{\"a\": 1} null",
                             "{\"a\": 1} \"B\"",
                             "{\"a\": 1} 2"}) {
        checkRefused(readModel(text));
    }
    checkRefused(readModel(std::string("{\0}", 3)));
    checkRefused(readModel(std::string(40, '[')));
    checkRefused(readModel(std::string(kLargestFile + 1, ' ')));
    for (const auto& [part, into] : std::vector<Change>{
             {R"("gusset": 1,)", ""},
             {R"("gusset": 1)", R"("gusset": 2)"},
             {R"("gusset": 1)", R"("gusset": 0)"},
             {R"("gusset": 1)", R"("gusset": "1")"},
             {R"("title": "T")", R"("title": null)"},
             {R"("title": "T")", R"("title": [1])"},
             {R"("title": "T")", R"("title": {"a": 1})"},
             {R"("title": "T")", R"("title": true)"},
             {R"("title": "T")", R"("units": {"force": "X"})"},
             {R"("title": "T")", R"("class": {"moments": "X"})"},
             {R"("title": "T")", R"("class": {"numbers": {"digits": 99}})"},
             {R"("title": "T")", R"("checks": {"K": 99})"},
             {R"("title": "T")", R"("checks": {"tensionLimit": 5})"},
             {R"("title": "T")", R"("checks": {"formula": "X"})"},
             {R"("x": 0)", R"("z": 0)"},
             {R"("x": 0)", R"("x": "0")"},
             {R"("x": 0)", R"("x": 1e200)"},
             {R"("id": "A")", R"("id": "")"},
             {R"("id": "A")", R"("id": "B")"},
             {R"("id": "B", "x")", "\"id\": \"A\u200B\", \"x\""},
             {R"("a": "A")", R"("a": "B")"},
             {R"("a": "A")", R"("a": "X")"},
             {R"("a": "B", "b": "C")", R"("a": "A", "b": "B")"},
             {R"("x": 4)", R"("x": 0)"},
             {R"("section": "S")", R"("section": "X")"},
             {R"("kind": "pin")", R"("kind": "X")"},
             {R"("kind": "pin")", R"("sort": "pin")"},
             {R"(, "reaction": 90)", ""},
             {R"("fx": 0, "fy": -1)", R"("f": 0)"},
             {R"("fx": 0, "fy": -1)", R"("fx": 0, "chord": [])"},
             {R"(["A", "B"], "at")", R"(["A"], "at")"},
             {R"(["A", "B"], "at")", R"([1, 2], "at")"},
             {R"("at": 1)", R"("at": 9)"},
             {R"({"joint": "C", "fx": 0, "fy": -1})", R"({"selfWeight": 1})"},
             {R"({"joint": "C", "fx": 0, "fy": -1})", R"({"chord": ["A"], "perLength": 1})"},
             {R"({"joint": "C", "fx": 0, "fy": -1})", R"({"chord": ["A", "A"], "perLength": 1})"},
             {R"("E": 210000)", R"("E": 0)"},
             {R"("E": 210000)", R"("E": 1e40)"},
             {R"("material": "M")", R"("material": "X")"},
             {R"("chs")", R"("X")"},
             {R"("t": 3)", R"("t": 3, "inPlane": "X")"},
             {R"("t": 3)", R"("t": 3, "lag": 2)"},
             {R"("t": 3)", R"("t": 3, "holes": {"count": 1.5, "diameter": 9})"},
             {R"("t": 3)", R"("r": 3)"},
             {R"("t": 3)", R"("t": 0)"},
             {R"("t": 3)", R"("t": 1e40)"},
             {R"("t": 3)", R"("t": 30)"},
             {R"({"D": 1})", R"({"D": "1"})"},
             {R"(, "factors": {"D": 1})", ""},
             {R"("path": ["A", "B"])", R"("path": ["A", 1])"},
             {R"(, "axles": [{"at": 0, "force": -1}])", ""},
             {R"([{"at": 0, "force": -1}])", R"([{"at": 0, "force": -1}, {"at": 0, "force": -1}])"},
         }) {
        checkRefused(readModel(changed(part, into)));
    }
}

TEST_CASE("in a language made up for it, what is noted about a model keeps no English word") {
    for (const auto& [part, into] : std::vector<Change>{
             {R"("id": "A", "x": 0)", R"("id": "A", "HUE": 1, "x": 0)"},
             {R"("id": "U")", "\"id\": \"\u200B\""},
             {R"("title": "T")", "\"title\": \"T\u200B\""},
         }) {
        const Outcome<Reading> read = readModel(changed(part, into));
        REQUIRE(read.ok());
        check(read.value().notes.front(), {"combination"}); // the name given to one without
    }
}

TEST_CASE("in a language made up for it, what a model may not intend keeps no English word") {
    Truss square;
    joint(square, "A", 0, 0);
    joint(square, "B", 2, 0);
    joint(square, "C", 2, 2);
    joint(square, "D", 0, 2);
    members(square, {"AC", "BD"});
    check(validate(square).notes); // they cross

    Truss truss = gable();
    const Vec2 middle = 0.5 * (truss.joints[0].at + truss.joints[1].at);
    joint(truss, "D", middle.x, middle.y); // on AB, without a member
    joint(truss, "E", middle.x, middle.y); // on the same spot
    joint(truss, "\u0410", 1, 9);          // looks like A
    truss.combinations.push_back({"U", {{"X", 1}}, {}});
    MovingLoad load;
    load.id = "V";
    load.path = {findJoint(truss, "A"), findJoint(truss, "B"), findJoint(truss, "C")}; // and back
    load.axles.push_back({});
    truss.moving = {load};
    check(validate(truss).notes);
    truss.moving[0].path = {findJoint(truss, "A"), findJoint(truss, "E")}; // no member
    check(validate(truss).notes);
}

TEST_CASE("in a language made up for it, what is wrong with a name keeps no English word") {
    for (const std::string& name :
         {std::string(), std::string("\xC3"), std::string(50, 'A'), std::string("A\nB"),
          std::string("A\u200B"), std::string(" ")}) {
        const auto fault = faultOfName(name, 40);
        REQUIRE(fault.has_value());
        CHECK(foreignWords(said(mockPhrases(), *fault), {}) == std::vector<std::string>{});
        Truss truss = gable();
        truss.joints[1].label = name;
        check(validate(truss).errors);
    }
    Truss truss = gable();
    truss.title = "A\nB";
    check(validate(truss).errors);
    truss.title = "";
    truss.classSettings.digits = 99;
    check(validate(truss).errors);
    for (const CheckNumber& number : kCheckNumbers) {
        Truss other = gable();
        other.checks.*number.value = -1;
        check(validate(other).errors);
    }
}

TEST_CASE("in a language made up for it, what is wrong with a link keeps no English word") {
    const std::string link = writeLink(gable());
    const auto forged = [](const std::string& text) { return sealedLink(deflated(text)); };
    for (const std::string& text : {std::string("X"),
                                    std::string("#m=2.A.1.12345"),
                                    std::string("#m=X"),
                                    std::string("#m=X.A"),
                                    std::string("#m=1.AB"),
                                    std::string(kLargestLink + 1, 'm'),
                                    link.substr(0, link.size() / 2),
                                    link.substr(0, link.size() - 3),
                                    std::string(link).replace(6, 1, "!"),
                                    std::string(link).replace(8, 1, ""),
                                    std::string(link).replace(8, 1, link[8] == 'A' ? "B" : "A"),
                                    std::string("#j={\"a\": 1"),
                                    std::string("#j=X"),
                                    sealedLink(Bytes{1, 2, 3}),
                                    forged("X"),
                                    forged("1"),
                                    forged("[[1]]"),
                                    forged("[[0, [0, 0, 4], [0, 0, 0]], [], [], [], 5]"),
                                    forged("[[0, [0, 0, 4], [0, 0, 0]], [], [], [], [], 5]"),
                                    forged("[[], [[0, 5], [1]]]"),
                                    forged(std::string(2'000'000, ' ')),
                                    forged("[[0, [0, 0, 4], [0, 0, 0]]]")}) {
        INFO(text.substr(0, 80));
        const Outcome<Reading> read = readLink(text);
        if (!read) {
            check(read.issues());
        }
    }
    for (std::size_t list = 0; list < 4; ++list) {
        std::string columns = "[";
        for (std::size_t i = 0; i < list; ++i) {
            columns += "[], ";
        }
        columns += "[[0";
        for (int i = 0; i < 10'002; ++i) {
            columns += ",0";
        }
        checkRefused(readLink(forged(columns + "]]]")));
    }
    for (const char* tail : {"&case=X", "&combination=X"}) {
        checkRefused(linkedLoads("#" + link + tail, gable()));
    }
    Truss many;
    many.joints.resize(10'001);
    checkRefused(openableLink(many));
    Truss wrong = gable();
    wrong.joints[1].label = wrong.joints[0].label;
    checkRefused(openableLink(wrong)); // it would not open
}

TEST_CASE("in a language made up for it, what is wrong with a typed number keeps no English word") {
    for (const char* text :
         {"", "1 +", "1 2", "1 )", "(1", "* 1", "?", "1,000", "1,000,000", "1e999", "1e200*1e200",
          "1/0", "1 X", "X", "sqrt(-1)", "asin 2", "((((((((((((((((((((((1"}) {
        INFO(text);
        checkRefused(readNumber(text));
    }
    checkRefused(readNumber(std::string(300, '1')));
    for (const char* text :
         {"1 X", "1 ft + 1", "1 ft ft", "(1 ft) * (1 ft)", "1 / (1 ft)", "sin(1 ft)"}) {
        INFO(text);
        checkRefused(readLength(text, LengthUnit::m));
    }
    checkRefused(readLength("1 X", LengthUnit::Plain));
    checkRefused(readForce("1 X", ForceUnit::kN));
    checkRefused(readAngle("1 X"));
    checkRefused(readForceVector("1", ForceUnit::kN));
}

TEST_CASE("in a language made up for it, why an edit can't be made keeps no English word") {
    const JointId noJoint{99};
    const MemberId noMember{99};
    Truss withChord = gable();
    withChord.loads[0].what = ChordLoad{{JointId{0}, JointId{1}}, 1};
    const LoadId chord{0};
    for (const Edit& edit : std::vector<Edit>{
             MoveJoint{noJoint, {}}, RenameJoint{JointId{0}, "B"}, SetMember{noMember, {}},
             ChangeSupport{SupportId{9}, {}}, SetLoad{LoadId{9}, {}}, RemoveMaterial{9},
             RemoveSection{9}, CopyThings{{{noJoint}, {}, {}, {}}, {}},
             CopyThings{{{}, {}, {}, {chord}}, {{{0, 1}, {-1, 0}, {}}}},
             DrawMember{{JointId{0}, {}}, {JointId{0}, {}}},
             DrawMember{{JointId{0}, {}}, {JointId{1}, {}}},
             DrawMember{{{}, {1, 0}, MemberId{0}}, {{}, {2, 0}, MemberId{0}}}}) {
        checkRefused(gusset::apply(withChord, edit));
    }
    FormSpec form;
    form.span = 0;
    checkRefused(makeForm(mockPhrases(), form));
    form.span = form.rise = 1;
    form.load = 1e200;
    checkRefused(makeForm(mockPhrases(), form));
}

TEST_CASE("in a language made up for it, why there are no forces keeps no English word") {
    Truss truss = gable();
    check(solve(truss, OneCase{"X"}).errors);
    check(solve(truss, OneCombination{"X"}).errors);
    truss.members[0].warming = 10;
    check(solve(truss).errors);
    truss = gable();
    truss.loads.push_back({SelfWeight{}, {}, {}});
    check(solve(truss).errors);
    truss = gable();
    member(truss, "A", "B"); // twice
    check(solve(truss).errors);

    truss = gable();
    pin(truss, "B"); // one support more than needed
    truss.materials.emplace_back().id = "M";
    truss.materials[0].E = 210'000;
    truss.sections.emplace_back().id = "S";
    truss.sections[0].material = "M";
    truss.sections[0].area = 100;
    truss.members[0].section = "S";
    check(solve(truss).errors);
    truss = gable();
    pin(truss, "B");
    truss.members[0].misfit = 1;
    check(solve(truss).errors);
    truss = gable();
    truss.supports[0].settle = {1, 0};
    pin(truss, "A");
    pin(truss, "B");
    check(solve(truss).errors);

    truss = gable();
    const std::vector<JointId> path{JointId{0}, JointId{1}};
    Effect effect;
    effect.kind = EffectKind::Displacement;
    effect.joint = JointId{2};
    checkRefused(influenceReport(truss, path, effect));
    effect.kind = EffectKind::Reaction;
    checkRefused(influenceReport(truss, path, effect));
    checkRefused(influenceReport(truss, {JointId{0}}, effect));
    checkRefused(pathThrough(truss, {JointId{0}}));
    truss.supports.clear();
    checkRefused(influenceReport(truss, path, effect));
    checkRefused(envelopeOf(truss, {EveryLoad{}}));
}

TEST_CASE(
    "whatever the damage to a file, its faults hold no words but phrases and the file's own") {
    Random random(19);
    for (int i = 0; i < 400; ++i) {
        std::string text = withOtherTokens(kGable, random);
        text = i % 2 == 0 ? text : mutated(text, kGable, random);
        const Outcome<Reading> read = readModel(text);
        if (read) {
            continue;
        }
        for (const Issue& fault : read.issues()) {
            INFO(text << "\n" << english(fault));
            CHECK(fault.says.english != nullptr);
            checkLeaves(fault.says, text);
        }
    }
}
