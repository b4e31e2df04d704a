#include "report/influence_by_hand_text.hpp"

#include "report/exact_notation.hpp"
#include "report/formula.hpp"
#include "report/phrases.hpp"
#include "report/remark_text.hpp"
#include "report/working_text.hpp"

#include <algorithm>

namespace gusset {
namespace {

const PhraseBook& book() { return englishPhrases(); }

struct Writer {
    const InfluenceByHand& line;
    Notation notation;
    RichLine effect; // F_BC, A_y
};

Vec2 directionOf(const Writer& writer) {
    const auto restraint = static_cast<std::size_t>(writer.line.symbol.restraint);
    return writer.notation.working.structure.restraints[restraint].along;
}

bool isReaction(const Writer& writer) { return writer.line.symbol.kind == SymbolKind::Reaction; }

Passage beginning(const Writer& writer) {
    Passage passage{say(book(), Phrase::TitleInfluence, {{"effect", writer.effect}})};
    addSentence(passage, say(book(), Phrase::LoadMoves,
                             {{"effect", writer.effect},
                              {"joints", jointNames(writer.notation, writer.line.path)}}));
    addSentence(passage, isReaction(writer)
                             ? say(book(), Phrase::ReactionPositive,
                                   {{"direction", plainLine(directionWord(directionOf(writer)))}})
                             : say(book(), Phrase::AssumedAway));
    if (writer.line.way == InfluenceWay::Joint) {
        addSentence(passage, say(book(), Phrase::JointForAll,
                                 {{"joint", jointName(writer.notation, writer.line.joint)},
                                  {"effect", writer.effect}}));
    }
    return passage;
}

// One place: the steps without titles of their own, the part that is looked at said first.
Passage placeOf(const Writer& writer, const InfluenceOrdinate& ordinate) {
    const Notation& notation = writer.notation;
    Passage passage{
        say(book(), Phrase::TitleLoadAt, {{"joint", jointName(notation, ordinate.at)}})};
    for (const Step& step : ordinate.chain.steps) {
        if (step.kind == StepKind::SectionEquation && writer.line.way == InfluenceWay::Section) {
            addSentence(passage, lookAtLine(notation, step.body));
        }
        for (WorkingLine& line : renderStep(notation.truss, ordinate.chain, step)) {
            passage.parts.push_back(std::move(line));
        }
    }
    return passage;
}

TextTable ordinateTable(const Writer& writer) {
    const Notation& notation = writer.notation;
    const InfluenceByHand& line = writer.line;
    TextTable table;
    table.caption = sayPlain(book(), Phrase::OrdinatesCaption, {{"effect", writer.effect}});
    table.head = {
        say(book(), Phrase::ColumnJoint),
        headed(say(book(), Phrase::ColumnFromStart), symbolOf(notation.truss.units.length)),
        say(book(), Phrase::ColumnOrdinate)};
    table.numeric = {false, true, true};
    if (!line.exact.empty()) {
        table.head.push_back(say(book(), Phrase::ColumnExactly));
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
            table.rows.back().push_back(plainText(runsOf(surdTokens(notation, line.exact[i]))));
        }
    }
    return table;
}

RichLine shapeLine(const Writer& writer) {
    const bool zero = std::all_of(writer.line.ordinates.begin(), writer.line.ordinates.end(),
                                  [](const auto& ordinate) { return ordinate.value == 0; });
    if (zero) {
        return say(book(), Phrase::ShapeZero);
    }
    return writer.line.corners.empty()
               ? say(book(), Phrase::ShapeStraight)
               : say(book(), Phrase::ShapeCorners,
                     {{"joints", jointNames(writer.notation, writer.line.corners)}});
}

RichLine reasonLine(const Writer& writer) {
    switch (writer.line.way) {
    case InfluenceWay::Reaction:
        return writer.line.corners.empty()
                   ? say(book(), Phrase::ReasonReaction, {{"effect", writer.effect}})
                   : RichLine{};
    case InfluenceWay::Joint:
        return say(book(), Phrase::ReasonJoint,
                   {{"joint", jointName(writer.notation, writer.line.joint)}});
    case InfluenceWay::Section:
        return say(book(), Phrase::ReasonSection);
    case InfluenceWay::Joints:
        break;
    }
    return {};
}

RichLine virtualLine(const Writer& writer) {
    if (!isReaction(writer)) {
        return say(book(), Phrase::VirtualCut,
                   {{"member", memberNames(writer.notation, {writer.line.symbol.member})}});
    }
    return say(book(), Phrase::VirtualSupport,
               {{"joint", jointName(writer.notation, writer.line.symbol.joint)},
                {"direction", plainLine(directionWord(-directionOf(writer)))},
                {"effect", writer.effect}});
}

RichLine refusalLine(const Truss& truss, const InfluenceByHand& line, const Effect& effect) {
    const RichLine joint =
        effect.joint.valid() ? plainLine(truss.joints[effect.joint.at()].label) : RichLine{};
    switch (line.end) {
    case InfluenceEnd::NotByEquilibrium:
        return say(book(), Phrase::InfluenceNeedsEquilibrium);
    case InfluenceEnd::Displacement:
        return say(book(), Phrase::InfluenceOfDisplacement, {{"joint", joint}});
    case InfluenceEnd::NoSupport:
        return say(book(), Phrase::InfluenceNoSupport, {{"joint", joint}});
    case InfluenceEnd::SeveralSupports:
        return say(book(), Phrase::InfluenceManySupports, {{"joint", joint}});
    case InfluenceEnd::NotWorkedOut:
    case InfluenceEnd::Complete:
        break;
    }
    return say(book(), Phrase::InfluenceNotFound);
}

} // namespace

std::vector<Passage> influencePassages(const Truss& truss, const InfluenceByHand& line,
                                       const Effect& effect, SketchPaper paper) {
    if (line.end != InfluenceEnd::Complete) {
        Passage passage{say(book(), Phrase::TitleShape)};
        addSentence(passage, refusalLine(truss, line, effect));
        return {passage};
    }
    const Notation notation = notationOf(line.unloaded, line.opening);
    const Writer writer{line, notation, symbolRuns(notation, line.symbol)};
    std::vector<Passage> passages{beginning(writer)};
    for (Passage& passage : workingPassages(line.unloaded, line.opening, paper)) {
        passages.push_back(std::move(passage));
    }
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        passages.push_back(placeOf(writer, ordinate));
    }
    passages.push_back({say(book(), Phrase::TitleOrdinates), {ordinateTable(writer)}});
    Passage shape{say(book(), Phrase::TitleShape)};
    addSentence(shape, shapeLine(writer));
    addSentence(shape, reasonLine(writer));
    addSentence(shape, virtualLine(writer));
    passages.push_back(std::move(shape));
    return passages;
}

} // namespace gusset
