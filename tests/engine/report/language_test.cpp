// Everything that the engine says about a truss comes from phrases: in an invented language no
// English word is left, and no decimal point if the class has a comma.

#include "hand/stages/explain.hpp"
#include "hand/stages/sections.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/verdict.hpp"
#include "phrases/working/steps.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/check_working.hpp"
#include "report/derivation/force_method_text.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/force_polygon_text.hpp"
#include "report/derivation/influence_by_hand_text.hpp"
#include "report/derivation/unit_load_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/check_text.hpp"
#include "report/results/envelope_text.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/sheet/sheet.hpp"
#include "report/sketch/influence_sketch.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "statics/moving/load_paths.hpp"
#include "support/reading/mock_language.hpp"
#include "support/trusses/example_trusses.hpp"
#include "support/trusses/random_truss.hpp"
#include "support/trusses/small_truss.hpp"
#include "support/trusses/worked_truss.hpp"

#include <catch2/catch_test_macros.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace gusset;
using namespace gusset::support;

namespace {

// Examples, the reviewed trusses, and trusses with faults.
std::vector<Truss> allKinds() {
    std::vector<Truss> trusses = exampleTrusses();
    for (const WorkedTruss& worked : workedTrusses()) {
        trusses.push_back(worked.truss);
    }
    for (const WorkedTruss& redundant : redundantTrusses()) {
        trusses.push_back(redundant.truss);
    }
    for (std::uint64_t seed = 0; seed < 12; ++seed) {
        trusses.push_back(randomMechanism(seed, static_cast<int>(seed % 4) + 1));
        trusses.push_back(randomDeterminateTruss(seed));
    }
    trusses.emplace_back();
    return trusses;
}

// A solved truss, and the texts about it.
struct Reader {
    Truss truss;
    Solution solution;
    const PhraseBook& book = mockPhrases();

    void check(const char* what, const std::string& text) const {
        INFO(truss.title << ", " << what << ":\n" << text);
        CHECK(foreignWords(text, truss) == std::vector<std::string>{});
        CHECK_FALSE(hasDecimalPoint(text));
    }
    void check(const char* what, const std::vector<Passage>& passages) const {
        check(what, passagesText(passages));
        check(what, textOfHtml(passagesHtml(passages)));
    }
    void check(const char* what, const Working& working) const {
        check(what, workingPassages({book, truss}, working));
    }
};

Reader readerOf(Truss truss) {
    truss.classSettings.decimalSign = ',';
    return {truss, solve(truss)};
}

void checkResults(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    reader.check("results", resultsText({book, truss}, solution));
    reader.check("results as HTML", textOfHtml(resultsHtml({book, truss}, solution)));
    for (const std::string& line : movementLines({book, truss}, solution)) {
        reader.check("movement", line);
    }
    if (!truss.joints.empty() && solution.status != Status::Invalid) {
        reader.check("why inexact", inexactSentence({book, truss}, solveExactly(truss).whyNot));
    }
}

void checkOneForce(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    std::vector<MemberId> cut;
    for (std::size_t i = 0; i < truss.members.size() && i < 12; ++i) {
        const MemberId member{static_cast<int>(i)};
        reader.check("one force", explain(truss, {}, solution,
                                          {.kind = SymbolKind::MemberForce, .member = member}));
        reader.check("by a section", workSection(truss, {}, solution, member));
        cut.push_back(member);
        if (cut.size() <= 5) {
            reader.check("a cut", workCut(truss, {}, solution, cut));
        }
    }
}

void checkDisplacements(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    for (std::size_t i = 0; i < truss.joints.size() && i < 6; ++i) {
        for (const DisplacementAxis axis : {DisplacementAxis::X, DisplacementAxis::Y}) {
            const UnitLoadTable table =
                unitLoadTable(truss, {}, solution, JointId{static_cast<int>(i)}, axis);
            reader.check("unit load", std::vector<Passage>{unitLoadPassage({book, truss}, table)});
        }
    }
}

void checkPolygon(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    const ForcePolygon polygon = forcePolygon(truss, {}, solution);
    reader.check("polygon", forcePolygonText({book, truss}, polygon));
    reader.check("polygon as HTML", textOfHtml(forcePolygonHtml({book, truss}, polygon)));
    if (polygon.refusal == PolygonRefusal::None) {
        const Working working = workOut(truss, {}, solution);
        reader.check("spaces",
                     textOfHtml(svgOf(spacesSketch(notationOf({book, truss}, working), polygon))));
        reader.check("polygon drawn",
                     textOfHtml(svgOf(polygonDrawing({book, truss}, polygon, {}).sketch)));
    }
}

std::vector<Effect> effectsOn(const Truss& truss) {
    std::vector<Effect> effects;
    for (std::size_t i = 0; i < truss.members.size() && i < 5; ++i) {
        Effect force;
        force.member = MemberId{static_cast<int>(i)};
        effects.push_back(force);
    }
    for (const bool horizontal : {false, true}) {
        for (const EffectKind kind : {EffectKind::Reaction, EffectKind::Displacement}) {
            Effect effect;
            effect.kind = kind;
            effect.joint = truss.supports.front().joint;
            effect.horizontal = horizontal;
            effects.push_back(effect);
            effect.joint = JointId{static_cast<int>(truss.joints.size()) - 1};
            effects.push_back(effect);
        }
    }
    return effects;
}

void checkInfluence(const Reader& reader, const std::vector<JointId>& path, const Effect& effect) {
    const auto& [truss, solution, book] = reader;
    reader.check("influence by hand",
                 influencePassages({book, truss}, influenceByHand(truss, path, effect)));
    const auto report = influenceReport(truss, path, effect);
    if (report) {
        reader.check("influence", influenceText({book, truss}, report.value()));
        for (const double at : {0.0, 1.25, report.value().line.at.back()}) {
            reader.check("reading", readingSentence({book, truss}, report.value(), at));
        }
        reader.check("influence drawn",
                     textOfHtml(svgOf(influenceSketch({book, truss}, report.value(), {}))));
    }
}

void checkMoving(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    for (const MovingLoad& load : truss.moving) {
        const auto analysis = analysePath(truss, load.path);
        REQUIRE(analysis.ok());
        const auto rows =
            movingRows({book, truss}, load.path, membersUnder(truss, analysis.value(), load));
        reader.check("members under a moving load",
                     tableText(envelopeTable({book, truss}, captionUnder(book, load.id), rows)));
        for (const Effect& effect : effectsOn(truss)) {
            checkInfluence(reader, load.path, effect);
        }
    }
    const std::vector<JointId> chord = lowestPath(truss);
    if (truss.moving.empty() && chord.size() > 1 && analysePath(truss, chord).ok()) {
        for (const Effect& effect : effectsOn(truss)) {
            checkInfluence(reader, chord, effect);
        }
    }
}

void checkEnvelope(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    const std::vector<LoadChoice> choices = envelopeChoices(truss);
    reader.check("what the envelope is over", envelopeSentence(book, choices));
    if (const auto envelope = envelopeOf(truss, choices); envelope) {
        reader.check("envelope", envelopeText({book, truss}, envelope.value()));
    }
}

// By every formula, and with members that pass, fail, carry no force, or lack data.
void checkMemberChecks(Reader reader) {
    auto& [truss, solution, book] = reader;
    for (int i = 0; i < 4; ++i) {
        truss.checks.formula = static_cast<ColumnFormula>(std::min(i, 2));
        truss.checks.safety = static_cast<AiscSafety>(i % 2);
        truss.checks.tensionLimit = i == 0 ? 0 : 20;
        const MemberChecks checks = checkMembers(truss, solution, {});
        for (const CheckedLoads& loads :
             {CheckedLoads{}, CheckedLoads{{OneCase{"loads"}}}, CheckedLoads{{{}, {}}, true}}) {
            reader.check("checks", checksText({book, truss}, checks, loads));
            reader.check("checks as HTML", textOfHtml(checksHtml({book, truss}, checks, loads)));
        }
        for (const MemberCheck& check : checks.members) {
            reader.check("one check", checkPassages({book, truss}, check));
            reader.check("on the board", useLabel({book, truss}, check));
            reader.check("stress on the board", stressOf(truss, solution, check.member));
        }
    }
}

// A sheet's words, without its styles.
std::string wordsOfSheet(const Writer& writer, const SheetChoices& choices) {
    std::string html = sheetHtml(writer, choices, {});
    for (std::size_t at = html.find("<style>"); at != html.npos; at = html.find("<style>")) {
        html.erase(at, html.find("</style>") - at);
    }
    return textOfHtml(html);
}

void checkSheet(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    SheetChoices choices{.loads = usualLoads(truss)};
    choices.across = truss.members.size() % 2 == 0;
    choices.parts.fill(true);
    reader.check("sheet", wordsOfSheet({book, truss}, choices));
}

// The truss with two sections of steel and one of timber on its members in turn.
Truss withStrength(Truss truss) {
    truss.materials = {{"steel", 210e3, 235, 7850, 1.2e-5, {}}, {"oak", 11e3, 18, 600, 5e-6, {}}};
    truss.sections = {{"bar", "steel", 1000, 25, "", {}, {}},
                      {"post", "oak", {}, {}, "timber", {{"B", 60}, {"H", 80}}, {}},
                      {"rod", "steel", 100, {}, "", {}, {}}};
    truss.units.stress = StressUnit::MPa;
    truss.units.section = LengthUnit::mm;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        truss.members[i].section = truss.sections[i % 3].id;
    }
    return truss;
}

void checkWorking(const Reader& reader) {
    const auto& [truss, solution, book] = reader;
    reader.check("working", workOut(truss, {}, solution));
    reader.check("force method",
                 forceMethodPassages({book, truss}, forceMethod(truss, {}, solution)));
    checkOneForce(reader);
    checkDisplacements(reader);
    checkPolygon(reader);
}

ClassSettings otherSettings() {
    ClassSettings settings;
    settings.moments = MomentSense::Clockwise;
    settings.angles = AngleStyle::Slopes;
    settings.axes = AxisNames::HV;
    settings.senses = AssumedSense::Guessed;
    settings.form = NumberForm::Exact;
    settings.carry = CarriedValues::Rounded;
    return settings;
}

} // namespace

TEST_CASE("in a language made up for it, results, working and drawings keep no English word") {
    for (const Truss& truss : allKinds()) {
        const Reader reader = readerOf(truss);
        checkResults(reader);
        checkSheet(reader);
        if (!truss.joints.empty()) {
            checkWorking(reader);
            checkMoving(reader);
            checkEnvelope(reader);
        }
    }
}

TEST_CASE("nor do checks of members, by any formula") {
    for (const Truss& truss : exampleTrusses()) {
        checkMemberChecks(readerOf(truss));
        checkMemberChecks(readerOf(withStrength(truss)));
        checkSheet(readerOf(withStrength(truss)));
    }
    checkMemberChecks(readerOf(Truss{}));
}

TEST_CASE("nor do they under other class settings") {
    for (Truss truss : exampleTrusses()) {
        truss.classSettings = otherSettings();
        const Reader reader = readerOf(truss);
        checkResults(reader);
        checkWorking(reader);
        truss.classSettings.angles = AngleStyle::Cosines;
        checkWorking(readerOf(truss));
    }
}

TEST_CASE(
    "the search for English words finds one, also inside HTML, and lets the model's names be") {
    Truss truss = roof();
    truss.title = "Tripod";
    CHECK(foreignWords("Tripod: F_AB = 5 kN, sin α", truss).empty());
    CHECK(foreignWords(sayPlain(mockPhrases(), phrase::kNoMember), truss).empty());
    CHECK(foreignWords(sayPlain(englishPhrases(), phrase::kTitleClosingSums), truss) ==
          std::vector<std::string>{"Check"});
    CHECK(foreignWords(textOfHtml("<p class=\"result\">5 kN up</p>"), truss) ==
          std::vector<std::string>{"up"});
    CHECK(hasDecimalPoint("2.5"));
    CHECK_FALSE(hasDecimalPoint("2,5. 3"));
}

TEST_CASE("a sentence's parts may come in any order, and as often as a language needs") {
    CHECK(sayPlain(mockPhrases(), phrase::kListTwo, {{"b", "B"}, {"a", "A"}}) == "B анг A");
    const PhraseBook twice{[](const char*) { return "{b}, {a}, {b}"; }};
    CHECK(sayPlain(twice, phrase::kListTwo, {{"a", 1}, {"b", "B"}}) == "B, 1, B");
}
