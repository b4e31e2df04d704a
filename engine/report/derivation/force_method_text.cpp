#include "report/derivation/force_method_text.hpp"

#include "core/number.hpp"
#include "phrases/working/force_method.hpp"
#include "phrases/working/remarks.hpp"
#include "phrases/working/unit_load.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/force_method_formulas.hpp"
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

// A force of the state beside each member; a cut one is dashed.
template <class ForceOf, class TextOf>
std::vector<MemberWords> besideMembers(const ForceMethodNotes& notes, ForceOf forceOf,
                                       TextOf textOf) {
    std::vector<MemberWords> members;
    for (const ForceMethodRow& row : notes.method.rows) {
        const Member& member = notes.notation.truss.members[row.member.at()];
        const bool cut = isReleased(notes.method.releases, row.member);
        const double force = forceOf(row);
        const SketchInk sense = force > 0 ? SketchInk::Tension : SketchInk::Compression;
        members.push_back({member.a, member.b, cut ? RichLine{} : plainLine(textOf(force)),
                           force == 0 ? SketchInk::Zero : sense, cut});
    }
    return members;
}

ReleasedState givenState(const ForceMethodNotes& notes) {
    return {&notes.method.givenTruss, &notes.method.givenWorking, name(givenToken()),
            besideMembers(
                notes, [](const ForceMethodRow& row) { return row.given; },
                [&](double force) {
                    return formatNumber(force, drawingStyleOf(notes.notation.truss));
                })};
}

ReleasedState unitState(const ForceMethodNotes& notes, std::size_t i) {
    return {&notes.method.unitTrusses[i], &notes.method.unitWorkings[i], name(unitToken(i)),
            besideMembers(
                notes, [i](const ForceMethodRow& row) { return row.unit[i]; },
                [&](double force) { return unitForce(force, notes.notation.numbers); })};
}

// Adds the truss with these forces, and how they were found.
void addState(Passage& passage, const PhraseBook& book, const ReleasedState& state,
              SketchPaper paper) {
    if (state.truss->joints.size() <= kLargestBody) {
        const Notation notation = notationOf({book, *state.truss}, *state.working);
        passage.parts.push_back(trussSketch(notation, state.members, paper));
    }
    if (paper == SketchPaper::Page) { // a column has no room for what is not read on the way
        passage.folded.push_back({say(book, phrase::kHowFound, {{"forces", state.forces}}),
                                  workingPassages({book, *state.truss}, *state.working)});
    }
}

Passage forcesPassage(const ForceMethodNotes& notes, SketchPaper paper) {
    const ForceMethod& method = notes.method;
    Passage passage{say(notes.notation.book, phrase::kTitleReleasedForces)};
    const RichLine n0 = name(givenToken());
    const bool loaded = !method.givenTruss.loads.empty();
    addSentence(passage, say(notes.notation.book,
                             loaded ? phrase::kGivenForces : phrase::kGivenNothing, {{"n0", n0}}));
    if (loaded) {
        addState(passage, notes.notation.book, givenState(notes), paper);
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        addSentence(passage, unitLine(notes, i));
        addState(passage, notes.notation.book, unitState(notes, i), paper);
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
                {"size", withUnit(size, unit)},
                {"direction", directionWord(notes.notation.book, allowed < 0 ? -along : along)}});
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
    if (superpositionCarriesMore(notes)) {
        addSentence(passage, say(notes.notation.book, phrase::kPartsCarryMore));
    }
    passage.parts.push_back(superposedForcesTable(notes));
    passage.parts.push_back(superposedReactionsTable(notes));
    addSentence(passage, checkLine(notes));
    return passage;
}

} // namespace

RichLine forceMethodRefusal(const Writer& writer, const ForceMethod& method) {
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

namespace {

RichLine releaseNames(const Writer& writer, const ForceMethod& method, bool membersAsCut) {
    Working whole;
    whole.structure = structureOf(writer.truss);
    const ForceMethodNotes notes{method, notationOf(writer, whole)};
    std::vector<RichLine> names;
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        const auto* cut = std::get_if<MemberId>(&method.releases[i].of);
        names.push_back(membersAsCut && cut
                            ? memberOf(notes, *cut)
                            : symbolRuns(notes.notation, redundantSymbol(notes, i)));
    }
    return listOf(writer, names);
}

} // namespace

RichLine redundantNames(const Writer& writer, const ForceMethod& method) {
    return releaseNames(writer, method, false);
}

RichLine releasedNames(const Writer& writer, const ForceMethod& method) {
    return releaseNames(writer, method, true);
}

namespace {

Working wholeOf(const Writer& writer, const ForceMethod& method) {
    Working whole; // for the names of reactions, and the count
    whole.structure = structureOf(writer.truss);
    whole.counting = method.counting;
    return whole;
}

} // namespace

std::vector<ReleasedState> releasedStates(const Writer& writer, const ForceMethod& method) {
    const Working whole = wholeOf(writer, method);
    const ForceMethodNotes notes{method, notationOf(writer, whole)};
    std::vector<ReleasedState> states;
    if (!method.givenTruss.loads.empty()) {
        states.push_back(givenState(notes));
    }
    for (std::size_t i = 0; i < method.releases.size(); ++i) {
        states.push_back(unitState(notes, i));
    }
    return states;
}

std::vector<Passage> forceMethodPassages(const Writer& writer, const ForceMethod& method,
                                         SketchPaper paper) {
    if (method.end != ForceMethodEnd::Complete) {
        Passage passage{say(writer, phrase::kTitleReleased)};
        addSentence(passage, forceMethodRefusal(writer, method));
        return {passage};
    }
    const Working whole = wholeOf(writer, method);
    const ForceMethodNotes notes{method, notationOf(writer, whole)};
    return {countPassage(notes),         releasePassage(notes), forcesPassage(notes, paper),
            displacementsPassage(notes), fitPassage(notes),     superpositionPassage(notes)};
}

} // namespace gusset
