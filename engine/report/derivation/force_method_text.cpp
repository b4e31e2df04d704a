#include "report/derivation/force_method_text.hpp"

#include "phrases/working/force_method.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/unit_load.hpp"
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
Vec2 wayOf(const ForceMethodNotes& notes, std::size_t i) {
    const RestraintId restraint = std::get<RestraintId>(notes.method.releases[i].of);
    return notes.notation.working.structure.restraints[restraint.at()].along;
}

RichLine directionOf(const ForceMethodNotes& notes, std::size_t i) {
    return plainLine(directionWord(notes.notation.book, wayOf(notes, i)));
}

RichLine jointOf(const ForceMethodNotes& notes, std::size_t i) {
    return jointName(notes.notation, redundantSymbol(notes, i).joint);
}

RichLine memberOf(const ForceMethodNotes& notes, MemberId member) {
    return memberNames(notes.notation, {member});
}

RichLine releaseLine(const ForceMethodNotes& notes, std::size_t i) {
    const Release& release = notes.method.releases[i];
    const RichLine x = name(redundantToken(i));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        const RichLine member = memberOf(notes, *cut);
        return release.reason == ReleaseReason::Crossing
                   ? say(notes.notation.book, phrase::kReleaseCrossing,
                         {{"member", member}, {"other", memberOf(notes, release.other)}, {"x", x}})
                   : say(notes.notation.book, phrase::kReleaseMember,
                         {{"member", member}, {"x", x}});
    }
    const bool roller = release.reason == ReleaseReason::SparesRoller;
    return say(notes.notation.book, roller ? phrase::kReleaseRoller : phrase::kReleasePin,
               {{"joint", jointOf(notes, i)},
                {"reaction", symbolRuns(notes.notation, redundantSymbol(notes, i))},
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
Passage countPassage(const ForceMethodNotes& notes) {
    const Step counting{};
    Passage passage{stepTitleLine(notes.notation, counting)};
    for (WorkingLine& line : renderStep(notes.notation, counting)) {
        passage.parts.push_back(std::move(line));
    }
    addSentence(passage, say(notes.notation.book, notes.method.counting.redundants == 1
                                                      ? phrase::kOneTooMany
                                                      : phrase::kTwoTooMany));
    return passage;
}

Passage releasePassage(const ForceMethodNotes& notes) {
    Passage passage{say(notes.notation.book, phrase::kTitleReleased)};
    for (std::size_t i = 0; i < notes.method.releases.size(); ++i) {
        addSentence(passage, releaseLine(notes, i));
    }
    addSentence(passage, say(notes.notation.book, difficultyPhrase(notes.method.difficulty)));
    return passage;
}

RichLine unitLine(const ForceMethodNotes& notes, std::size_t i) {
    const Release& release = notes.method.releases[i];
    const RichLine n = name(unitToken(i));
    const RichLine x = name(redundantToken(i));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(notes.notation.book, phrase::kUnitCut,
                   {{"n", n}, {"x", x}, {"member", memberOf(notes, *cut)}});
    }
    return say(
        notes.notation.book, phrase::kUnitReaction,
        {{"n", n}, {"x", x}, {"joint", jointOf(notes, i)}, {"direction", directionOf(notes, i)}});
}

Passage forcesPassage(const ForceMethodNotes& notes) {
    Passage passage{say(notes.notation.book, phrase::kTitleReleasedForces)};
    const RichLine n0 = name(givenToken());
    const bool loaded = !notes.method.givenTruss.loads.empty();
    addSentence(passage, say(notes.notation.book,
                             loaded ? phrase::kGivenForces : phrase::kGivenNothing, {{"n0", n0}}));
    for (std::size_t i = 0; i < notes.method.releases.size(); ++i) {
        addSentence(passage, unitLine(notes, i));
    }
    addSentence(passage, say(notes.notation.book, phrase::kFoundAsUsual));
    passage.parts.push_back(releasedForcesTable(notes));
    return passage;
}

RichLine placeLine(const ForceMethodNotes& notes, std::size_t i) {
    const Release& release = notes.method.releases[i];
    const RichLine number = plainLine(std::to_string(i + 1));
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(notes.notation.book, phrase::kPlaceCut,
                   {{"i", number}, {"member", memberOf(notes, *cut)}});
    }
    return say(notes.notation.book, phrase::kPlaceReaction,
               {{"i", number}, {"joint", jointOf(notes, i)}, {"direction", directionOf(notes, i)}});
}

void addSignedNumber(const ForceMethodNotes& notes, double value, Formula& formula) {
    const bool first = formula.empty() || formula.back().text == "=" || formula.back().text == ":";
    if (!first) {
        formula.push_back(operatorToken(value < 0 ? kMinus : "+"));
    }
    formula.push_back(
        numberToken(contribution(first ? value : std::fabs(value), notes.notation.numbers)));
}

void addUnit(Formula& formula, const std::string& unit) {
    if (!unit.empty()) {
        formula.push_back(wordToken(unit));
    }
}

// EA·δ_10, or δ_10 alone.
Formula displacementName(const ForceMethodNotes& notes, std::size_t i, std::size_t k) {
    Formula formula;
    if (notes.method.timesStiffness) {
        formula = {variableToken("EA"), operatorToken(kDot)};
    }
    formula.push_back(displacementToken(i, k));
    return formula;
}

// δ_10 = Σ n_1·N_0·L/EA + Σ n_1·α·ΔT·L − … = −2.964 mm, with the separate parts shown in between if
// there are several.
Formula givenDisplacementFormula(const ForceMethodNotes& notes, std::size_t i) {
    const GivenDisplacement& given = notes.method.given[i];
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
        addSignedNumber(notes, value, numbers);
    };
    const bool loaded = !notes.method.givenTruss.loads.empty();
    add(given.elastic, loaded, elasticProduct(notes, unitToken(i), givenToken()), "+");
    add(given.thermal, anyThermal(notes.method), thermalProduct(i), "+");
    add(given.misfit, anyMisfit(notes.method), misfitProduct(i), "+");
    add(given.settlement, anySettlement(notes.method), settlementProduct(i), kMinus);
    Formula formula = displacementName(notes, i, 0);
    formula.push_back(operatorToken("="));
    if (parts > 0) {
        append(formula, names);
        formula.push_back(operatorToken("="));
    }
    if (parts > 1) {
        append(formula, numbers);
        formula.push_back(operatorToken("="));
    }
    formula.push_back(numberToken(contribution(given.total, notes.notation.numbers)));
    addUnit(formula, given.total == 0 ? std::string{} : givenUnit(notes));
    return formula;
}

Formula unitDisplacementFormula(const ForceMethodNotes& notes, std::size_t i, std::size_t k) {
    Formula formula = displacementName(notes, i, k + 1);
    if (i != k) {
        formula.push_back(operatorToken("="));
        append(formula, displacementName(notes, k, i + 1));
    }
    append(formula, {operatorToken("="), operatorToken(kSum)});
    append(formula, elasticProduct(notes, unitToken(i), unitToken(k)));
    formula.push_back(operatorToken("="));
    formula.push_back(numberToken(contribution(notes.method.unit[i][k], notes.notation.numbers)));
    addUnit(formula, notes.method.unit[i][k] == 0 ? std::string{} : perRedundantUnit(notes));
    return formula;
}

RichLine indicesLine(const PhraseBook& book, const ForceMethod& method) {
    const RichLine d = name(variableToken("\u03B4"));
    const RichLine x = name(redundantToken(0));
    return method.releases.size() == 1 ? say(book, phrase::kIndicesOne, {{"d", d}, {"x", x}})
                                       : say(book, phrase::kIndicesTwo,
                                             {{"d", d}, {"x", x}, {"y", name(redundantToken(1))}});
}

Passage displacementsPassage(const ForceMethodNotes& notes) {
    const ForceMethod& method = notes.method;
    Passage passage{say(notes.notation.book, phrase::kTitleDisplacements)};
    addSentence(passage, indicesLine(notes.notation.book, method));
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        addSentence(passage, placeLine(notes, i));
    }
    if (method.timesStiffness) {
        addSentence(passage, say(notes.notation.book, method.assumed ? phrase::kAssumedStiffness
                                                                     : phrase::kEqualStiffness));
    }
    passage.parts.push_back(sumsTable(notes));
    if (anyThermal(method) || anyMisfit(method)) {
        passage.parts.push_back(strainsTable(notes));
    }
    for (std::size_t i = 0; anySettlement(method) && i < method.releases.size(); ++i) {
        passage.parts.push_back(settlementsTable(notes, i));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        addFormula(passage, LineRole::Equation, givenDisplacementFormula(notes, i));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        for (std::size_t k = i; k < method.releases.size(); ++k) {
            addFormula(passage, LineRole::Equation, unitDisplacementFormula(notes, i, k));
        }
    }
    return passage;
}

RichLine conditionLine(const ForceMethodNotes& notes, std::size_t i) {
    const Release& release = notes.method.releases[i];
    if (const auto* cut = std::get_if<MemberId>(&release.of)) {
        return say(notes.notation.book, phrase::kEndsMeet, {{"member", memberOf(notes, *cut)}});
    }
    const double allowed = notes.method.allowed[i];
    if (allowed == 0) {
        return say(notes.notation.book, phrase::kHoldsStill,
                   {{"joint", jointOf(notes, i)}, {"direction", directionOf(notes, i)}});
    }
    const std::string unit = symbolOf(notes.notation.truss.units.displacement);
    const std::string size = formatGiven(std::fabs(allowed), notes.notation.numbers);
    const Vec2 along = wayOf(notes, i);
    return say(notes.notation.book, phrase::kGivesWay,
               {{"joint", jointOf(notes, i)},
                {"size", unit.empty() ? size : size + kThinSpace + unit},
                {"direction", directionWord(notes.notation.book, allowed < 0 ? -along : along)}});
}

// δ_10 + X_1·δ_11 + X_2·δ_12 = 0:  −2.964 + X_1·0.1234 + X_2·0.02 = 0
Formula conditionFormula(const ForceMethodNotes& notes, std::size_t i) {
    const ForceMethod& method = notes.method;
    const Token right = numberToken(formatGiven(method.allowed[i], notes.notation.numbers));
    Formula formula{displacementToken(i, 0)};
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        append(formula, {operatorToken("+"), redundantToken(k), operatorToken(kDot),
                         displacementToken(i, k + 1)});
    }
    append(formula, {operatorToken("="), right, operatorToken(":")});
    addSignedNumber(notes, method.given[i].total, formula);
    for (std::size_t k = 0; k < method.releases.size(); ++k) {
        const double factor = method.unit[i][k];
        if (factor != 0) {
            append(formula, {operatorToken(factor < 0 ? kMinus : "+"), redundantToken(k),
                             operatorToken(kDot),
                             numberToken(contribution(std::fabs(factor), notes.notation.numbers))});
        }
    }
    append(formula, {operatorToken("="), right});
    return formula;
}

// X_1 = F_BD = 2.706 kN (tension)
Formula redundantFormula(const ForceMethodNotes& notes, std::size_t i) {
    const double value = notes.method.redundants[i];
    const Found found{redundantSymbol(notes, i), value,
                      value == 0 ? FoundAs::Zero : FoundAs::AsAssumed};
    Formula formula{redundantToken(i), operatorToken("=")};
    append(formula, resultFormula(notes.notation, found, Told::AsFound));
    return formula;
}

Passage fitPassage(const ForceMethodNotes& notes) {
    Passage passage{say(notes.notation.book, phrase::kTitleFits)};
    const std::size_t count = notes.method.releases.size();
    for (std::size_t i = 0; i < count; ++i) {
        addSentence(passage, conditionLine(notes, i));
        addFormula(passage, LineRole::Equation, conditionFormula(notes, i));
    }
    if (count == 2 && notes.method.unit[0][1] != 0) {
        addSentence(passage, say(notes.notation.book, phrase::kSolveBoth));
    }
    for (std::size_t i = 0; i < count; ++i) {
        addFormula(passage, LineRole::Result, redundantFormula(notes, i));
    }
    return passage;
}

RichLine checkLine(const ForceMethodNotes& notes) {
    if (notes.method.missed <= kResidual) {
        return say(notes.notation.book, phrase::kStiffnessAgrees);
    }
    double largest = 0;
    for (const ForceMethodRow& row : notes.method.rows) {
        largest = std::max(largest, std::fabs(row.force));
    }
    return say(notes.notation.book, phrase::kStiffnessDiffers,
               {{"number", forceText(notes.notation.truss, notes.method.missed * largest,
                                     roughStyleOf(notes.notation.truss))}});
}

Passage superpositionPassage(const ForceMethodNotes& notes) {
    Passage passage{say(notes.notation.book, phrase::kTitleSuperposition)};
    addSentence(passage, say(notes.notation.book, phrase::kEffectsAdd));
    Formula sum{variableToken("N"), operatorToken("="), givenToken()};
    for (std::size_t k = 0; k < notes.method.releases.size(); ++k) {
        append(sum, {operatorToken("+"), redundantToken(k), operatorToken(kDot), unitToken(k)});
    }
    addFormula(passage, LineRole::Equation, sum);
    passage.parts.push_back(superposedForcesTable(notes));
    passage.parts.push_back(superposedReactionsTable(notes));
    addSentence(passage, checkLine(notes));
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
    const ForceMethodNotes notes{method, notationOf(writer, whole)};
    return {countPassage(notes),         releasePassage(notes), forcesPassage(notes),
            displacementsPassage(notes), fitPassage(notes),     superpositionPassage(notes)};
}

} // namespace gusset
