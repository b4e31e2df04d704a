#include "report/derivation/force_method_text.hpp"

#include "phrases/force_method.hpp"
#include "phrases/remarks.hpp"
#include "phrases/unit_load.hpp"
#include "report/derivation/force_method_tables.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/derivation/working_text.hpp"
#include "report/results/results_text.hpp"
#include "report/text/formula.hpp"

#include "core/signs.hpp"
#include "core/tolerance.hpp"

#include <cmath>

namespace gusset {
namespace {

RichLine name(const Token& token) { return runsOf({token}); }

// Of a released reaction.
Vec2 wayOf(const ForceMethodSheet& sheet, std::size_t i) {
    const RestraintId restraint = std::get<RestraintId>(sheet.method.releases[i].of);
    return sheet.notation.working.structure.restraints[restraint.at()].along;
}

RichLine directionOf(const ForceMethodSheet& sheet, std::size_t i) {
    return plainLine(directionWord(sheet.notation.book, wayOf(sheet, i)));
}

RichLine jointOf(const ForceMethodSheet& sheet, std::size_t i) {
    return jointName(sheet.notation, redundantSymbol(sheet, i).joint);
}

RichLine memberOf(const ForceMethodSheet& sheet, MemberId member) {
    return memberNames(sheet.notation, {member});
}

RichLine releaseLine(const ForceMethodSheet& sheet, std::size_t i) {
    const Release& release = sheet.method.releases[i];
    const RichLine x = name(redundantToken(i));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        const RichLine member = memberOf(sheet, *cut);
        return release.reason == ReleaseReason::Crossing
                   ? say(sheet.notation.book, phrase::kReleaseCrossing,
                         {{"member", member}, {"other", memberOf(sheet, release.other)}, {"x", x}})
                   : say(sheet.notation.book, phrase::kReleaseMember,
                         {{"member", member}, {"x", x}});
    }
    const bool roller = release.reason == ReleaseReason::SparesRoller;
    return say(sheet.notation.book, roller ? phrase::kReleaseRoller : phrase::kReleasePin,
               {{"joint", jointOf(sheet, i)},
                {"reaction", symbolRuns(sheet.notation, redundantSymbol(sheet, i))},
                {"x", x}});
}

Phrase<> difficultyPhrase(Difficulty difficulty) {
    switch (difficulty) {
    case Difficulty::Joints:
        return phrase::kReleasedByJoints;
    case Difficulty::Sections:
        return phrase::kReleasedBySections;
    case Difficulty::Together:
        break;
    }
    return phrase::kReleasedTogether;
}

// The count as in any working, but with a conclusion of its own.
Passage countPassage(const ForceMethodSheet& sheet) {
    const Step counting{};
    Passage passage{stepTitleLine(sheet.notation, counting)};
    for (WorkingLine& line : renderStep(sheet.notation, counting)) {
        passage.parts.push_back(std::move(line));
    }
    addSentence(passage, say(sheet.notation.book, sheet.method.counting.redundants == 1
                                                      ? phrase::kOneTooMany
                                                      : phrase::kTwoTooMany));
    return passage;
}

Passage releasePassage(const ForceMethodSheet& sheet) {
    Passage passage{say(sheet.notation.book, phrase::kTitleReleased)};
    for (std::size_t i = 0; i < sheet.method.releases.size(); ++i) {
        addSentence(passage, releaseLine(sheet, i));
    }
    addSentence(passage, say(sheet.notation.book, difficultyPhrase(sheet.method.difficulty)));
    return passage;
}

RichLine unitLine(const ForceMethodSheet& sheet, std::size_t i) {
    const Release& release = sheet.method.releases[i];
    const RichLine n = name(unitToken(i));
    const RichLine x = name(redundantToken(i));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(sheet.notation.book, phrase::kUnitCut,
                   {{"n", n}, {"x", x}, {"member", memberOf(sheet, *cut)}});
    }
    return say(
        sheet.notation.book, phrase::kUnitReaction,
        {{"n", n}, {"x", x}, {"joint", jointOf(sheet, i)}, {"direction", directionOf(sheet, i)}});
}

Passage forcesPassage(const ForceMethodSheet& sheet) {
    Passage passage{say(sheet.notation.book, phrase::kTitleReleasedForces)};
    const RichLine n0 = name(givenToken());
    const bool loaded = !sheet.method.givenTruss.loads.empty();
    addSentence(passage, say(sheet.notation.book,
                             loaded ? phrase::kGivenForces : phrase::kGivenNothing, {{"n0", n0}}));
    for (std::size_t i = 0; i < sheet.method.releases.size(); ++i) {
        addSentence(passage, unitLine(sheet, i));
    }
    addSentence(passage, say(sheet.notation.book, phrase::kFoundAsUsual));
    passage.parts.push_back(releasedForcesTable(sheet));
    return passage;
}

RichLine placeLine(const ForceMethodSheet& sheet, std::size_t i) {
    const Release& release = sheet.method.releases[i];
    const RichLine number = plainLine(std::to_string(i + 1));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(sheet.notation.book, phrase::kPlaceCut,
                   {{"i", number}, {"member", memberOf(sheet, *cut)}});
    }
    return say(sheet.notation.book, phrase::kPlaceReaction,
               {{"i", number}, {"joint", jointOf(sheet, i)}, {"direction", directionOf(sheet, i)}});
}

void addSignedNumber(const ForceMethodSheet& sheet, double value, Formula& formula) {
    const bool first = formula.empty() || formula.back().text == "=" || formula.back().text == ":";
    if (!first) {
        formula.push_back(operatorToken(value < 0 ? kMinus : "+"));
    }
    formula.push_back(
        numberToken(contribution(first ? value : std::fabs(value), sheet.notation.numbers)));
}

void addUnit(Formula& formula, const std::string& unit) {
    if (!unit.empty()) {
        formula.push_back(wordToken(unit));
    }
}

// EA·δ_10, or δ_10 alone.
Formula displacementName(const ForceMethodSheet& sheet, std::size_t i, std::size_t k) {
    Formula formula;
    if (sheet.method.timesStiffness) {
        formula = {variableToken("EA"), operatorToken(kDot)};
    }
    formula.push_back(displacementToken(i, k));
    return formula;
}

// δ_10 = Σ n_1·N_0·L/EA + Σ n_1·α·ΔT·L − … = −2.964 mm, with the separate parts shown in between if
// there are several.
Formula givenDisplacementFormula(const ForceMethodSheet& sheet, std::size_t i) {
    const GivenDisplacement& given = sheet.method.given[i];
    Formula names;
    Formula numbers;
    int parts = 0;
    const auto add = [&](double value, bool stands, const Formula& work, const char* sign) {
        if (!stands) {
            return;
        }
        if (parts++ > 0 || sign[0] != '+') {
            names.push_back(operatorToken(sign));
        }
        names.push_back(operatorToken(kSum));
        append(names, work);
        addSignedNumber(sheet, value, numbers);
    };
    const bool loaded = !sheet.method.givenTruss.loads.empty();
    add(given.elastic, loaded, elasticProduct(sheet, unitToken(i), givenToken()), "+");
    add(given.thermal, anyThermal(sheet.method), thermalProduct(i), "+");
    add(given.misfit, anyMisfit(sheet.method), misfitProduct(i), "+");
    add(given.settlement, anySettlement(sheet.method), settlementProduct(i), kMinus);
    Formula formula = displacementName(sheet, i, 0);
    formula.push_back(operatorToken("="));
    if (parts > 0) {
        append(formula, names);
        formula.push_back(operatorToken("="));
    }
    if (parts > 1) {
        append(formula, numbers);
        formula.push_back(operatorToken("="));
    }
    formula.push_back(numberToken(contribution(given.total, sheet.notation.numbers)));
    addUnit(formula, given.total == 0 ? std::string{} : givenUnit(sheet));
    return formula;
}

Formula unitDisplacementFormula(const ForceMethodSheet& sheet, std::size_t i, std::size_t k) {
    Formula formula = displacementName(sheet, i, k + 1);
    if (i != k) {
        formula.push_back(operatorToken("="));
        append(formula, displacementName(sheet, k, i + 1));
    }
    append(formula, {operatorToken("="), operatorToken(kSum)});
    append(formula, elasticProduct(sheet, unitToken(i), unitToken(k)));
    formula.push_back(operatorToken("="));
    formula.push_back(numberToken(contribution(sheet.method.unit[i][k], sheet.notation.numbers)));
    addUnit(formula, sheet.method.unit[i][k] == 0 ? std::string{} : perRedundantUnit(sheet));
    return formula;
}

RichLine indicesLine(const PhraseBook& book, const ForceMethod& method) {
    const RichLine d = name(variableToken("\u03B4"));
    const RichLine x = name(redundantToken(0));
    return method.releases.size() == 1 ? say(book, phrase::kIndicesOne, {{"d", d}, {"x", x}})
                                       : say(book, phrase::kIndicesTwo,
                                             {{"d", d}, {"x", x}, {"y", name(redundantToken(1))}});
}

Passage displacementsPassage(const ForceMethodSheet& sheet) {
    const ForceMethod& method = sheet.method;
    Passage passage{say(sheet.notation.book, phrase::kTitleDisplacements)};
    addSentence(passage, indicesLine(sheet.notation.book, method));
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        addSentence(passage, placeLine(sheet, i));
    }
    if (method.timesStiffness) {
        addSentence(passage, say(sheet.notation.book, method.assumed ? phrase::kAssumedStiffness
                                                                     : phrase::kEqualStiffness));
    }
    passage.parts.push_back(sumsTable(sheet));
    if (anyThermal(method) || anyMisfit(method)) {
        passage.parts.push_back(strainsTable(sheet));
    }
    for (std::size_t i = 0; anySettlement(method) && i < method.releases.size(); ++i) {
        passage.parts.push_back(settlementsTable(sheet, i));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        addFormula(passage, LineRole::Equation, givenDisplacementFormula(sheet, i));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        for (std::size_t k = i; k < method.releases.size(); ++k) {
            addFormula(passage, LineRole::Equation, unitDisplacementFormula(sheet, i, k));
        }
    }
    return passage;
}

RichLine conditionLine(const ForceMethodSheet& sheet, std::size_t i) {
    const Release& release = sheet.method.releases[i];
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(sheet.notation.book, phrase::kEndsMeet, {{"member", memberOf(sheet, *cut)}});
    }
    const double allowed = sheet.method.allowed[i];
    if (allowed == 0) {
        return say(sheet.notation.book, phrase::kHoldsStill,
                   {{"joint", jointOf(sheet, i)}, {"direction", directionOf(sheet, i)}});
    }
    const std::string unit = symbolOf(sheet.notation.truss.units.displacement);
    const std::string size = formatGiven(std::fabs(allowed), sheet.notation.numbers);
    const Vec2 along = wayOf(sheet, i);
    return say(sheet.notation.book, phrase::kGivesWay,
               {{"joint", jointOf(sheet, i)},
                {"size", unit.empty() ? size : size + kThinSpace + unit},
                {"direction", directionWord(sheet.notation.book, allowed < 0 ? -along : along)}});
}

// δ_10 + X_1·δ_11 + X_2·δ_12 = 0:  −2.964 + X_1·0.1234 + X_2·0.02 = 0
Formula conditionFormula(const ForceMethodSheet& sheet, std::size_t i) {
    const ForceMethod& method = sheet.method;
    const Token right = numberToken(formatGiven(method.allowed[i], sheet.notation.numbers));
    Formula formula{displacementToken(i, 0)};
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        append(formula, {operatorToken("+"), redundantToken(k), operatorToken(kDot),
                         displacementToken(i, k + 1)});
    }
    append(formula, {operatorToken("="), right, operatorToken(":")});
    addSignedNumber(sheet, method.given[i].total, formula);
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        const double factor = method.unit[i][k];
        if (factor != 0) {
            append(formula, {operatorToken(factor < 0 ? kMinus : "+"), redundantToken(k),
                             operatorToken(kDot),
                             numberToken(contribution(std::fabs(factor), sheet.notation.numbers))});
        }
    }
    append(formula, {operatorToken("="), right});
    return formula;
}

// X_1 = F_BD = 2.706 kN (tension)
Formula redundantFormula(const ForceMethodSheet& sheet, std::size_t i) {
    const double value = sheet.method.redundants[i];
    const Found found{redundantSymbol(sheet, i), value,
                      value == 0 ? FoundAs::Zero : FoundAs::AsAssumed};
    Formula formula{redundantToken(i), operatorToken("=")};
    append(formula, resultFormula(sheet.notation, found, Told::AsFound));
    return formula;
}

Passage fitPassage(const ForceMethodSheet& sheet) {
    Passage passage{say(sheet.notation.book, phrase::kTitleFits)};
    const std::size_t count = sheet.method.releases.size();
    for (std::size_t i = 0; i < count; ++i) {
        addSentence(passage, conditionLine(sheet, i));
        addFormula(passage, LineRole::Equation, conditionFormula(sheet, i));
    }
    if (count == 2 && sheet.method.unit[0][1] != 0) {
        addSentence(passage, say(sheet.notation.book, phrase::kSolveBoth));
    }
    for (std::size_t i = 0; i < count; ++i) {
        addFormula(passage, LineRole::Result, redundantFormula(sheet, i));
    }
    return passage;
}

RichLine checkLine(const ForceMethodSheet& sheet) {
    if (sheet.method.missed <= kResidual) {
        return say(sheet.notation.book, phrase::kStiffnessAgrees);
    }
    double largest = 0;
    for (const ForceMethodRow& row : sheet.method.rows) {
        largest = std::max(largest, std::fabs(row.force));
    }
    return say(sheet.notation.book, phrase::kStiffnessDiffers,
               {{"number", forceText(sheet.notation.truss, sheet.method.missed * largest,
                                     roughStyleOf(sheet.notation.truss))}});
}

Passage superpositionPassage(const ForceMethodSheet& sheet) {
    Passage passage{say(sheet.notation.book, phrase::kTitleSuperposition)};
    addSentence(passage, say(sheet.notation.book, phrase::kEffectsAdd));
    Formula sum{variableToken("N"), operatorToken("="), givenToken()};
    for (std::size_t k = 0; k < sheet.method.releases.size(); ++k) {
        append(sum, {operatorToken("+"), redundantToken(k), operatorToken(kDot), unitToken(k)});
    }
    addFormula(passage, LineRole::Equation, sum);
    passage.parts.push_back(superposedForcesTable(sheet));
    passage.parts.push_back(superposedReactionsTable(sheet));
    addSentence(passage, checkLine(sheet));
    return passage;
}

RichLine refusalLine(const Writer& writer, const ForceMethod& method) {
    switch (method.end) {
    case ForceMethodEnd::Determinate:
        return say(writer, phrase::kNoRedundant);
    case ForceMethodEnd::TooMany:
        return say(writer, phrase::kTooManyRedundants, {{"degree", method.counting.redundants}});
    case ForceMethodEnd::Moves:
        return say(writer, phrase::kCountMechanism);
    case ForceMethodEnd::NoStiffness: {
        std::vector<RichLine> names;
        for (const MemberId member : method.missing) {
            names.push_back(plainLine(memberName(writer.truss, member)));
        }
        return say(writer, phrase::kUnitLoadNoStiffness, {{"members", listOf(writer, names)}});
    }
    case ForceMethodEnd::Unstrained:
        return say(writer, phrase::kHeldTwice,
                   {{"joint", writer.truss.joints[method.shared.at()].label}});
    case ForceMethodEnd::NotWorkedOut:
    case ForceMethodEnd::Complete:
        break;
    }
    return say(writer, phrase::kNoRelease);
}

} // namespace

std::vector<Passage> forceMethodPassages(const Writer& writer, const ForceMethod& method) {
    if (method.end != ForceMethodEnd::Complete) {
        Passage passage{say(writer, phrase::kTitleReleased)};
        addSentence(passage, refusalLine(writer, method));
        return {passage};
    }
    Working whole; // for the names of reactions, and the count
    whole.structure = structureOf(writer.truss);
    whole.counting = method.counting;
    const ForceMethodSheet sheet{method, notationOf(writer, whole)};
    return {countPassage(sheet),         releasePassage(sheet), forcesPassage(sheet),
            displacementsPassage(sheet), fitPassage(sheet),     superpositionPassage(sheet)};
}

} // namespace gusset
