#include "report/influence_text.hpp"

#include "report/phrases.hpp"
#include "report/results_text.hpp"
#include "report/table.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr int kFigures = 4;  // significant, of displacements per unit of force
constexpr int kDecimals = 4; // of forces per unit of force, which are of the order of one

using PhraseParts = std::initializer_list<Part>;
std::string english(Phrase phrase, PhraseParts parts = {}) {
    return sayPlain(englishPhrases(), phrase, parts);
}

RichLine labelOf(const Truss& truss, JointId joint) {
    return plainLine(truss.joints[joint.at()].label);
}

RichLine column(Phrase phrase, const std::string& unit = {}) {
    return headed(say(englishPhrases(), phrase), unit);
}

// Of an ordinate: none of a force per force; "mm/kN" of a displacement.
std::string ordinateUnit(const Truss& truss, EffectKind kind) {
    const std::string force = symbolOf(truss.units.force);
    const std::string moved = symbolOf(truss.units.displacement);
    return kind != EffectKind::Displacement ? "" : force.empty() ? moved : moved + "/" + force;
}

NumberStyle ordinateStyle(EffectKind kind) {
    return kind == EffectKind::Displacement
               ? NumberStyle{.form = NumberForm::Significant, .digits = kFigures}
               : NumberStyle{.form = NumberForm::Decimals, .digits = kDecimals, .keepZeros = false};
}

std::string withTrueMinus(std::string text) {
    if (!text.empty() && text[0] == '-') {
        text.replace(0, 1, "\u2212");
    }
    return text;
}

std::string withPlus(double value, std::string text) {
    return value > 0 && text != "0" ? "+" + text : text;
}

// A value of the effect under loads: a force, or a displacement.
std::string effectValue(const Truss& truss, EffectKind kind, double value) {
    if (kind != EffectKind::Displacement) {
        return forceText(truss, value / toNewton(truss.units.force), numberStyleOf(truss));
    }
    const std::string unit = symbolOf(truss.units.displacement);
    const std::string number =
        formatNumber(value / toMetre(truss.units.displacement), ordinateStyle(kind));
    return unit.empty() ? number : number + "\u2009" + unit;
}

std::string lengthOf(const Truss& truss, double metres) {
    const std::string unit = symbolOf(truss.units.length);
    const std::string number =
        formatGiven(metres / toMetre(truss.units.length), numberStyleOf(truss));
    return unit.empty() ? number : number + "\u2009" + unit;
}

std::string areaText(const Truss& truss, const InfluenceReport& report, double area) {
    const double scale = ordinateScale(truss, report.effect.kind) / toMetre(truss.units.length);
    std::string unit = ordinateUnit(truss, report.effect.kind);
    const std::string run = symbolOf(truss.units.length);
    unit += unit.empty() || run.empty() ? run : "\u00B7" + run;
    const std::string number =
        withPlus(area, formatNumber(area * scale, ordinateStyle(report.effect.kind)));
    return unit.empty() ? number : number + "\u2009" + unit;
}

TextTable tableOf(const Truss& truss, const InfluenceReport& report) {
    const NumberStyle style = ordinateStyle(report.effect.kind);
    TextTable table;
    table.caption = influenceSentence(truss, report);
    table.head = {column(Phrase::ColumnJoint),
                  column(Phrase::ColumnFromStart, symbolOf(truss.units.length)),
                  column(Phrase::ColumnOrdinate, ordinateUnit(truss, report.effect.kind))};
    table.numeric = {false, true, true};
    if (!report.exact.empty()) {
        table.head.push_back(column(Phrase::ColumnExactly));
        table.numeric.push_back(true);
    }
    const double scale = ordinateScale(truss, report.effect.kind);
    const double metre = toMetre(truss.units.length);
    for (std::size_t i = 0; i < report.path.size(); ++i) {
        table.rows.push_back({truss.joints[report.path[i].at()].label,
                              formatGiven(report.line.at[i] / metre, numberStyleOf(truss)),
                              formatNumber(report.line.ordinates[i] * scale, style)});
        if (!report.exact.empty()) {
            table.rows.back().push_back(withTrueMinus(textOf(report.exact[i])));
        }
    }
    return table;
}

std::string trainText(const Truss& truss, const InfluenceReport& report, const MovingResult& moving,
                      const TrainPlace& place) {
    const Phrase phrase = place.reversed ? Phrase::TrainReversed : Phrase::TrainOnwards;
    return "  " +
           english(phrase,
                   {{"load", plainLine(moving.id)},
                    {"value", plainLine(effectValue(truss, report.effect.kind, place.value))},
                    {"axle", plainLine(std::to_string(place.axle + 1))},
                    {"joint", labelOf(truss, report.path[place.joint])}}) +
           "\n";
}

std::string uniformText(const Truss& truss, const InfluenceReport& report,
                        const MovingResult& moving, const UniformPlace& place) {
    const RichLine value = plainLine(effectValue(truss, report.effect.kind, place.value));
    const RichLine load = plainLine(moving.id);
    if (place.to <= place.from) {
        return "  " + english(Phrase::UniformWorst, {{"load", load}, {"value", value}}) + "\n";
    }
    return "  " +
           english(Phrase::UniformFromTo, {{"load", load},
                                           {"value", value},
                                           {"from", plainLine(lengthOf(truss, place.from))},
                                           {"to", plainLine(lengthOf(truss, place.to))}}) +
           "\n";
}

std::string movingText(const Truss& truss, const InfluenceReport& report) {
    std::string text;
    for (const MovingResult& moving : report.moving) {
        for (const TrainPlace* place : {&moving.train.largest, &moving.train.smallest}) {
            text += place->value != 0 ? trainText(truss, report, moving, *place) : "";
        }
        if (moving.uniform) {
            for (const UniformPlace* place :
                 {&moving.uniform->largest, &moving.uniform->smallest}) {
                text += place->value != 0 ? uniformText(truss, report, moving, *place) : "";
            }
        }
    }
    return text.empty() ? text : "\n" + english(Phrase::MovingHeading) + "\n" + text;
}

std::string choiceName(const LoadChoice& choice) {
    return choice.combinationId.empty() ? choice.caseId : choice.combinationId;
}

} // namespace

std::string effectName(const Truss& truss, const Effect& effect) {
    switch (effect.kind) {
    case EffectKind::MemberForce:
        return english(Phrase::EffectForce,
                       {{"member", plainLine(memberName(truss, effect.member))}});
    case EffectKind::Reaction:
        return english(effect.horizontal ? Phrase::ReactionX : Phrase::ReactionY,
                       {{"joint", labelOf(truss, effect.joint)}});
    case EffectKind::Displacement:
        break;
    }
    return english(effect.horizontal ? Phrase::EffectMoveX : Phrase::EffectMoveY,
                   {{"joint", labelOf(truss, effect.joint)}});
}

std::string signedOrdinate(const Truss& truss, const InfluenceReport& report, double value) {
    const EffectKind kind = report.effect.kind;
    const double scaled = value * ordinateScale(truss, kind);
    return withPlus(scaled, formatNumber(scaled, ordinateStyle(kind)));
}

std::string ordinateText(const Truss& truss, const InfluenceReport& report, std::size_t joint) {
    const bool exactly = truss.classSettings.form == NumberForm::Exact && !report.exact.empty();
    const double value = report.line.ordinates[joint];
    return exactly ? withPlus(value, withTrueMinus(textOf(report.exact[joint])))
                   : signedOrdinate(truss, report, value);
}

std::string influenceSentence(const Truss& truss, const InfluenceReport& report) {
    const std::vector<double>& values = report.line.ordinates;
    const auto high =
        static_cast<std::size_t>(std::max_element(values.begin(), values.end()) - values.begin());
    const auto low =
        static_cast<std::size_t>(std::min_element(values.begin(), values.end()) - values.begin());
    const Part effect{"effect", plainLine(effectName(truss, report.effect))};
    const auto isZero = [&](std::size_t i) { return ordinateText(truss, report, i) == "0"; };
    if (isZero(high) && isZero(low)) {
        return english(Phrase::InfluenceNone, {effect});
    }
    if (isZero(high) || isZero(low)) {
        const std::size_t at = isZero(high) ? low : high;
        return english(Phrase::InfluenceOne, {effect,
                                              {"value", plainLine(ordinateText(truss, report, at))},
                                              {"joint", labelOf(truss, report.path[at])}});
    }
    return english(Phrase::InfluenceBoth, {effect,
                                           {"high", plainLine(ordinateText(truss, report, high))},
                                           {"highJoint", labelOf(truss, report.path[high])},
                                           {"low", plainLine(ordinateText(truss, report, low))},
                                           {"lowJoint", labelOf(truss, report.path[low])}});
}

std::string influenceText(const Truss& truss, const InfluenceReport& report) {
    const Areas areas = areasOf(report.line);
    std::string text = tableText(tableOf(truss, report));
    text += english(Phrase::InfluenceAreas,
                    {{"positive", plainLine(areaText(truss, report, areas.positive))},
                     {"negative", plainLine(areaText(truss, report, areas.negative))}}) +
            "\n";
    for (const std::string& assumed : report.assumed) {
        text += assumed + "\n";
    }
    return text + movingText(truss, report);
}

std::string envelopeText(const Truss& truss, const std::vector<MemberEnvelope>& envelope) {
    const std::string unit = symbolOf(truss.units.force);
    const double newton = toNewton(truss.units.force);
    TextTable table;
    table.caption = english(Phrase::EnvelopeCaption);
    table.head = {column(Phrase::ColumnMember), column(Phrase::ColumnTension, unit),
                  column(Phrase::ColumnGivenBy), column(Phrase::ColumnCompression, unit),
                  column(Phrase::ColumnGivenBy)};
    table.numeric = {false, true, false, true, false};
    for (std::size_t i = 0; i < envelope.size(); ++i) {
        const MemberEnvelope& each = envelope[i];
        table.rows.push_back({memberName(truss, MemberId{static_cast<int>(i)}),
                              formatNumber(each.tension.force / newton, numberStyleOf(truss)),
                              choiceName(each.tension.choice),
                              formatNumber(-each.compression.force / newton, numberStyleOf(truss)),
                              choiceName(each.compression.choice)});
    }
    return tableText(table);
}

} // namespace gusset
