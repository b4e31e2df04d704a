#include "report/derivation/influence_by_hand_text.hpp"

#include "core/signs.hpp"
#include "phrases/results/influence.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/working/influence_by_hand.hpp"
#include "phrases/working/remarks.hpp"
#include "report/derivation/remark_text.hpp"
#include "report/derivation/virtual_work_table.hpp"
#include "report/derivation/working_text.hpp"
#include "report/formula/exact_notation.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

struct LineWriter {
    const InfluenceByHand& line;
    Notation notation;
    RichLine effect; // F_BC, A_y
};

Vec2 directionOf(const LineWriter& writer) {
    const auto restraint = writer.line.symbol.restraint.at();
    return writer.notation.working.structure.restraints[restraint].along;
}

bool isReaction(const LineWriter& writer) {
    return writer.line.symbol.kind == SymbolKind::Reaction;
}

Passage beginning(const LineWriter& writer) {
    Passage passage{
        say(writer.notation.book, phrase::kTitleInfluence, {{"effect", writer.effect}})};
    addSentence(passage, say(writer.notation.book, phrase::kLoadMoves,
                             {{"effect", writer.effect},
                              {"joints", jointNames(writer.notation, writer.line.path)}}));
    addSentence(passage,
                isReaction(writer)
                    ? say(writer.notation.book, phrase::kReactionPositive,
                          {{"direction", directionWord(writer.notation.book, directionOf(writer))}})
                    : say(writer.notation.book, phrase::kAssumedAway));
    if (writer.line.way == InfluenceWay::Joint) {
        addSentence(passage, say(writer.notation.book, phrase::kJointForAll,
                                 {{"joint", jointName(writer.notation, writer.line.joint)},
                                  {"effect", writer.effect}}));
    }
    return passage;
}

// One position of the load: its steps without titles of their own, after a sentence naming the part
// considered.
Passage placeOf(const LineWriter& writer, const InfluenceOrdinate& ordinate) {
    const Notation& notation = writer.notation;
    Passage passage{say(writer.notation.book, phrase::kTitleLoadAt,
                        {{"joint", jointName(notation, ordinate.at)}})};
    const Notation chain = notationOf({notation.book, notation.truss}, ordinate.chain);
    for (const Step& step : ordinate.chain.steps) {
        if (step.kind == StepKind::SectionEquation && writer.line.way == InfluenceWay::Section) {
            addSentence(passage, lookAtLine(notation, step.body));
        }
        for (WorkingLine& line : renderStep(chain, step)) {
            passage.parts.push_back(std::move(line));
        }
    }
    return passage;
}

Token placeToken() { return variableToken("x"); }

// x = 12 m
RichLine placeIs(const LineWriter& writer, double x) {
    Formula formula{placeToken(), operatorToken("="),
                    numberToken(formatGiven(x, writer.notation.numbers))};
    const std::string unit = symbolOf(writer.notation.truss.units.length);
    if (x != 0 && !unit.empty()) {
        formula.push_back(wordToken(unit));
    }
    return runsOf(formula);
}

// The lever arm of the load about the centre, and the sign of its moment with it, anticlockwise
// positive: (12 − x), x, (x + 2).
struct LoadArm {
    Formula arm;
    int sign = 1;
};
LoadArm armOfLoad(const LineWriter& writer, const ReactionLaw& law) {
    const auto length = [&](double value) {
        return numberToken(formatGiven(value, writer.notation.numbers));
    };
    if (law.centre > 0) {
        return {{operatorToken("("), length(law.centre), operatorToken(kMinus), placeToken(),
                 operatorToken(")")},
                law.way};
    }
    if (law.centre == 0) {
        return {{placeToken()}, -law.way};
    }
    return {{operatorToken("("), placeToken(), operatorToken("+"), length(-law.centre),
             operatorToken(")")},
            -law.way};
}

// ⟲ΣM_B = 0:  −A_y · 12 + 1 · (12 − x) = 0
Formula lawEquation(const LineWriter& writer, const ReactionLaw& law) {
    const bool clockwise = writer.notation.truss.classSettings.moments == MomentSense::Clockwise;
    const int sense = clockwise ? -1 : 1;
    const LoadArm load = armOfLoad(writer, law);
    Formula formula = sumName(writer.notation, law.step.equations.front(), centreName(law.step));
    append(formula, {operatorToken("="), numberToken("0"), operatorToken(":")});
    if (sense * law.arm < 0) {
        formula.push_back(operatorToken(kMinus));
    }
    append(formula, {symbolToken(writer.notation, writer.line.symbol), operatorToken(kDot),
                     numberToken(formatGiven(std::fabs(law.arm), writer.notation.numbers)),
                     operatorToken(sense * load.sign < 0 ? kMinus : "+"), numberToken("1"),
                     operatorToken(kDot)});
    append(formula, load.arm);
    append(formula, {operatorToken("="), numberToken("0")});
    return formula;
}

// "1", or "10/12" where that has no end.
Token ratioToken(const LineWriter& writer, double above, double below) {
    const NumberStyle& numbers = writer.notation.numbers;
    if (isGivenInFull(above / below)) {
        return numberToken(formatGiven(above / below, numbers));
    }
    return {.kind = TokenKind::Fraction,
            .text = formatGiven(above, numbers),
            .below = formatGiven(below, numbers)};
}

// A_y = 1 − x/12
Formula lawResult(const LineWriter& writer, const ReactionLaw& law) {
    const double arm = std::fabs(law.arm);
    const double start = valueAt(law, 0);
    const bool falls = law.way * law.arm < 0;
    Formula formula{symbolToken(writer.notation, writer.line.symbol), operatorToken("=")};
    if (law.centre != 0) {
        if (start < 0) {
            formula.push_back(operatorToken(kMinus));
        }
        formula.push_back(ratioToken(writer, std::fabs(law.centre), arm));
    }
    if (falls || law.centre != 0) {
        formula.push_back(operatorToken(falls ? kMinus : "+"));
    }
    formula.push_back({.kind = TokenKind::Fraction,
                       .text = "x",
                       .below = formatGiven(arm, writer.notation.numbers)});
    return formula;
}

// A reaction, wherever the load stands.
Passage placeAnywhere(const LineWriter& writer, const ReactionLaw& law) {
    const Notation& notation = writer.notation;
    const RichLine x = runsOf({placeToken()});
    const RichLine start = jointName(notation, writer.line.path.front());
    Passage passage{say(notation.book, phrase::kTitleLoadAnywhere, {{"x", x}})};
    addSentence(passage, say(notation.book, phrase::kLoadAtX,
                             {{"x", x},
                              {"joint", start},
                              {"direction",
                               directionWord(notation.book, {static_cast<double>(law.way), 0})}}));
    for (const Remark& remark : law.step.remarks) {
        addSentence(passage, remarkLine(notation, remark));
    }
    addFormula(passage, LineRole::Equation, lawEquation(writer, law));
    addFormula(passage, LineRole::Result, lawResult(writer, law));
    addSentence(passage, say(notation.book, phrase::kHoldsForX,
                             {{"joint", start},
                              {"from", placeIs(writer, 0)},
                              {"end", jointName(notation, writer.line.path.back())},
                              {"to", placeIs(writer, law.length)}}));
    return passage;
}

TextTable ordinateTable(const LineWriter& writer) {
    const Notation& notation = writer.notation;
    const InfluenceByHand& line = writer.line;
    TextTable table;
    table.caption =
        sayPlain(writer.notation.book, phrase::kOrdinatesCaption, {{"effect", writer.effect}});
    table.head = {say(writer.notation.book, phrase::kColumnJoint),
                  headed(writer.notation.book, say(writer.notation.book, phrase::kColumnFromStart),
                         symbolOf(notation.truss.units.length)),
                  say(writer.notation.book, phrase::kColumnOrdinate)};
    table.numeric = {false, true, true};
    if (!line.exact.empty()) {
        table.head.push_back(say(writer.notation.book, phrase::kColumnExactly));
        table.numeric.push_back(true);
    }
    NumberStyle decimals = notation.numbers;
    decimals.form = NumberForm::Decimals;
    decimals.digits = 4;
    for (std::size_t i = 0; i < line.ordinates.size(); ++i) {
        const InfluenceOrdinate& ordinate = line.ordinates[i];
        table.rows.push_back({plainText(jointName(notation, ordinate.at)),
                              formatGiven(ordinate.place, notation.numbers),
                              formatNumber(ordinate.value, decimals)});
        if (!line.exact.empty()) {
            table.rows.back().push_back(runsOf(surdTokens(notation, line.exact[i])));
        }
    }
    return table;
}

RichLine shapeLine(const LineWriter& writer) {
    const bool zero = std::all_of(writer.line.ordinates.begin(), writer.line.ordinates.end(),
                                  [](const auto& ordinate) { return ordinate.value == 0; });
    if (zero) {
        return say(writer.notation.book, phrase::kShapeZero);
    }
    return writer.line.corners.empty()
               ? say(writer.notation.book, phrase::kShapeStraight)
               : say(writer.notation.book,
                     writer.line.corners.size() == 1 ? phrase::kShapeCorner : phrase::kShapeCorners,
                     {{"joints", jointNames(writer.notation, writer.line.corners)}});
}

// The part that the section's equation is of.
std::vector<JointId> partOf(const InfluenceOrdinate& ordinate) {
    for (const Step& step : ordinate.chain.steps) {
        if (step.kind == StepKind::SectionEquation) {
            return step.body;
        }
    }
    return {};
}

// Corners that are not beside the cut: only the reactions in the equation can cause them, as when a
// hinge lies on the way.
std::vector<JointId> cornersOfReactions(const InfluenceByHand& line) {
    std::vector<JointId> corners = line.corners;
    for (std::size_t i = 1; i < line.ordinates.size(); ++i) {
        if (partOf(line.ordinates[i - 1]) != partOf(line.ordinates[i])) {
            std::erase(corners, line.ordinates[i - 1].at);
            std::erase(corners, line.ordinates[i].at);
        }
    }
    return corners;
}

RichLine sectionReason(const LineWriter& writer) {
    const std::vector<JointId> corners = cornersOfReactions(writer.line);
    return corners.empty() ? say(writer.notation.book, phrase::kReasonSection)
                           : say(writer.notation.book, phrase::kReasonSectionCorners,
                                 {{"joints", jointNames(writer.notation, corners)}});
}

RichLine reasonLine(const LineWriter& writer) {
    switch (writer.line.way) {
    case InfluenceWay::Reaction:
        return writer.line.corners.empty()
                   ? say(writer.notation.book, phrase::kReasonReaction, {{"effect", writer.effect}})
                   : RichLine{};
    case InfluenceWay::Joint:
        return say(writer.notation.book, phrase::kReasonJoint,
                   {{"joint", jointName(writer.notation, writer.line.joint)}});
    case InfluenceWay::Section:
        return sectionReason(writer);
    case InfluenceWay::Joints:
        break;
    }
    return {};
}

RichLine virtualLine(const LineWriter& writer) {
    if (!isReaction(writer)) {
        return say(writer.notation.book, phrase::kVirtualCut,
                   {{"member", memberNames(writer.notation, {writer.line.symbol.member})}});
    }
    return say(writer.notation.book, phrase::kVirtualSupport,
               {{"joint", jointName(writer.notation, writer.line.symbol.joint)},
                {"direction", directionWord(writer.notation.book, -directionOf(writer))},
                {"effect", writer.effect}});
}

RichLine refusalLine(const Writer& writer, const InfluenceByHand& line) {
    const JointId at = line.effect.joint;
    const RichLine joint = at.valid() ? plainLine(writer.truss.joints[at.at()].label) : RichLine{};
    switch (line.end) {
    case InfluenceEnd::NotByEquilibrium:
        return say(writer, phrase::kInfluenceNeedsEquilibrium);
    case InfluenceEnd::Displacement:
        return say(writer, phrase::kInfluenceOfDisplacement, {{"joint", joint}});
    case InfluenceEnd::NoSupport:
        return say(writer, phrase::kInfluenceNoSupport, {{"joint", joint}});
    case InfluenceEnd::SeveralSupports:
        return say(writer, phrase::kInfluenceManySupports, {{"joint", joint}});
    case InfluenceEnd::NotWorkedOut:
    case InfluenceEnd::Complete:
        break;
    }
    return say(writer, phrase::kInfluenceNotFound);
}

} // namespace

std::vector<Passage> influencePassages(const Writer& writer, const InfluenceByHand& line,
                                       SketchPaper paper) {
    if (line.end != InfluenceEnd::Complete) {
        Passage passage{say(writer, phrase::kTitleShape)};
        addSentence(passage, refusalLine(writer, line));
        return {passage};
    }
    const Notation notation = notationOf({writer, line.unloaded}, line.opening);
    const LineWriter by{line, notation, symbolRuns(notation, line.symbol)};
    std::vector<Passage> passages{beginning(by)};
    for (Passage& passage : workingPassages({writer, line.unloaded}, line.opening, paper)) {
        passages.push_back(std::move(passage));
    }
    if (line.law) {
        passages.push_back(placeAnywhere(by, *line.law));
    } else {
        for (const InfluenceOrdinate& ordinate : line.ordinates) {
            passages.push_back(placeOf(by, ordinate));
        }
    }
    passages.push_back({say(writer, phrase::kOrdinates), {ordinateTable(by)}});
    Passage shape{say(writer, phrase::kTitleShape)};
    addSentence(shape, shapeLine(by));
    addSentence(shape, reasonLine(by));
    addSentence(shape, virtualLine(by));
    passages.push_back(std::move(shape));
    return passages;
}

} // namespace gusset
