#include "report/results/influence_text.hpp"

#include "core/number.hpp"
#include "core/signs.hpp"
#include "core/tolerance.hpp"
#include "phrases/results/influence.hpp"
#include "phrases/results/tables.hpp"
#include "phrases/results/trust.hpp"
#include "phrases/results/verdict.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gusset {
namespace {

constexpr int kFigures = 4;  // significant, of displacements per unit of force
constexpr int kDecimals = 4; // of forces per unit of force, which are of the order of one

// An influence line and the language it is described in.
struct LineSheet {
    const PhraseBook& book;
    const Truss& truss;
    const InfluenceReport& report;
};

RichLine column(const PhraseBook& book, Phrase<> phrase, const std::string& unit = {}) {
    return headed(book, say(book, phrase), unit);
}

// The unit of an ordinate: none for a force per force; "mm/kN" for a displacement.
std::string ordinateUnit(const Truss& truss, EffectKind kind) {
    const std::string force = symbolOf(truss.units.force);
    const std::string moved = symbolOf(truss.units.displacement);
    return kind != EffectKind::Displacement ? "" : force.empty() ? moved : moved + "/" + force;
}

// `error`: bound of the error of the number.
NumberStyle ordinateStyle(const Truss& truss, EffectKind kind, double error) {
    NumberStyle style{.form = NumberForm::Significant,
                      .digits = kFigures,
                      .decimalSign = truss.classSettings.decimalSign,
                      .lastPlace = lastPlaceOf(error, 1)};
    if (kind != EffectKind::Displacement) {
        style.form = NumberForm::Decimals;
        style.digits = kDecimals;
        style.keepZeros = false;
    }
    return style;
}

std::string withTrueMinus(std::string text) {
    if (!text.empty() && text[0] == '-') {
        text.replace(0, 1, kMinus);
    }
    return text;
}

std::string withPlus(double value, std::string text) {
    return value > 0 && text != "0" ? "+" + text : text;
}

// A value of the effect under loads, a force or a displacement, with the bound of its error.
std::string effectValue(const Truss& truss, EffectKind kind, double value, double error) {
    if (kind != EffectKind::Displacement) {
        NumberStyle style = numberStyleOf(truss);
        style.lastPlace = lastPlaceOfForces(truss, error);
        return forceText(truss, value / toNewton(truss.units.force), style);
    }
    const double unit = toMetre(truss.units.displacement);
    return withUnit(formatNumber(value / unit, ordinateStyle(truss, kind, error / unit)),
                    symbolOf(truss.units.displacement));
}

std::string areaText(const Truss& truss, const InfluenceReport& report, double area) {
    const double scale = ordinateScale(truss, report.effect.kind) / toMetre(truss.units.length);
    std::string unit = ordinateUnit(truss, report.effect.kind);
    const std::string run = symbolOf(truss.units.length);
    unit += unit.empty() || run.empty() ? run : kDot + run;
    const NumberStyle style =
        ordinateStyle(truss, report.effect.kind, report.error * report.line.at.back() * scale);
    return withUnit(withPlus(area, formatNumber(area * scale, style)), unit);
}

std::string trainLine(const LineSheet& sheet, const MovingResult& moving, const TrainPlace& place) {
    const auto& [book, truss, report] = sheet;
    const bool right = leadsRight(truss, report.path) != place.reversed;
    return sayPlain(book, phrase::kTrainAt,
                    {{"load", moving.id},
                     {"value", effectValue(truss, report.effect.kind, place.value, moving.error)},
                     {"axle", place.axle + 1},
                     {"joint", labelOf(truss, report.path[place.joint])},
                     {"way", sayPlain(book, right ? phrase::kFacingRight : phrase::kFacingLeft)}});
}

std::string uniformLine(const LineSheet& sheet, const MovingResult& moving,
                        const UniformPlace& place) {
    const auto& [book, truss, report] = sheet;
    const RichLine value =
        plainLine(effectValue(truss, report.effect.kind, place.value, moving.error));
    const RichLine load = plainLine(moving.id);
    if (place.to <= place.from) {
        return sayPlain(book, phrase::kUniformWorst, {{"load", load}, {"value", value}});
    }
    return sayPlain(book, phrase::kUniformFromTo,
                    {{"load", load},
                     {"value", value},
                     {"from", pathLength(truss, place.from)},
                     {"to", pathLength(truss, place.to)}});
}

// Values this small beside the train's greatest effect are rounding error.
bool counts(double value, double scale) { return std::fabs(value) > kZeroForce * scale; }

void addMoving(const LineSheet& sheet, const MovingResult& moving,
               std::vector<std::string>& lines) {
    const std::size_t before = lines.size();
    const double scale = std::max(moving.train.largest.value, -moving.train.smallest.value);
    for (const TrainPlace* place : {&moving.train.largest, &moving.train.smallest}) {
        if (counts(place->value, scale)) {
            lines.push_back(trainLine(sheet, moving, *place));
        }
    }
    if (moving.uniform) {
        for (const UniformPlace* place : {&moving.uniform->largest, &moving.uniform->smallest}) {
            if (place->value != 0) {
                lines.push_back(uniformLine(sheet, moving, *place));
            }
        }
    }
    if (lines.size() == before) {
        lines.push_back(sayPlain(sheet.book, phrase::kNothingFrom, {{"load", moving.id}}));
    }
}

// The joint at a position of the path, if there is one.
std::optional<std::size_t> jointOn(const InfluenceReport& report, double at) {
    const std::vector<double>& places = report.line.at;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (std::fabs(places[i] - at) <= kSameSpot * places.back()) {
            return i;
        }
    }
    return std::nullopt;
}

std::string exactText(const InfluenceReport& report, std::size_t joint) {
    const double value = report.line.ordinates[joint];
    return withPlus(value, withTrueMinus(textOf(report.exact[joint])));
}

// "−2/3 ≈ −0.6667" at a joint whose ordinate is known exactly and is not a short decimal; with its
// unit.
std::string readingOnJoint(const Truss& truss, const InfluenceReport& report, std::size_t joint) {
    const std::string decimals = signedOrdinate(truss, report, report.line.ordinates[joint]);
    const std::string exact = report.exact.empty() ? "" : exactText(report, joint);
    const bool adds = !exact.empty() && exact != decimals;
    const EffectKind kind = report.effect.kind;
    const double scale = ordinateScale(truss, kind);
    const double scaled = scale * report.line.ordinates[joint];
    const NumberStyle style = ordinateStyle(truss, kind, report.error * scale);
    return (adds ? exact +
                       (isWrittenInFull(scaled, style) ? " = " : std::string(" ") + kAlmost + " ")
                 : "") +
           withUnit(decimals, ordinateUnit(truss, report.effect.kind));
}

} // namespace

std::string effectName(const Writer& writer, const Effect& effect) {
    switch (effect.kind) {
    case EffectKind::MemberForce:
        return sayPlain(writer, phrase::kEffectForce,
                        {{"member", memberName(writer.truss, effect.member)}});
    case EffectKind::Reaction:
        return sayPlain(writer, effect.horizontal ? phrase::kReactionX : phrase::kReactionY,
                        {{"joint", labelOf(writer.truss, effect.joint)}});
    case EffectKind::Displacement:
        break;
    }
    return sayPlain(writer, effect.horizontal ? phrase::kEffectMoveX : phrase::kEffectMoveY,
                    {{"joint", labelOf(writer.truss, effect.joint)}});
}

std::string signedOrdinate(const Truss& truss, const InfluenceReport& report, double value) {
    const EffectKind kind = report.effect.kind;
    const double scale = ordinateScale(truss, kind);
    const NumberStyle style = ordinateStyle(truss, kind, report.error * scale);
    return withPlus(value, formatNumber(value * scale, style));
}

std::string ordinateText(const Truss& truss, const InfluenceReport& report, std::size_t joint) {
    const bool exactly = truss.classSettings.form == NumberForm::Exact && !report.exact.empty();
    return exactly ? exactText(report, joint)
                   : signedOrdinate(truss, report, report.line.ordinates[joint]);
}

namespace {

// Whether rounding leaves fewer figures of the ordinates than are displayed.
bool losesFigures(const Truss& truss, const InfluenceReport& report) {
    const EffectKind kind = report.effect.kind;
    const double error = trustOf(report).error;
    return kind == EffectKind::Displacement
               ? figuresOf(error) < kFigures
               : ordinateStyle(truss, kind, report.error).lastPlace < kDecimals && error > 0;
}

} // namespace

std::string influenceSentence(const Writer& writer, const InfluenceReport& report) {
    const std::vector<double>& values = report.line.ordinates;
    const auto high =
        static_cast<std::size_t>(std::max_element(values.begin(), values.end()) - values.begin());
    const auto low =
        static_cast<std::size_t>(std::min_element(values.begin(), values.end()) - values.begin());
    const std::string effect = effectName(writer, report.effect);
    const auto isZero = [&](std::size_t i) { return ordinateText(writer.truss, report, i) == "0"; };
    if (isZero(high) && isZero(low)) {
        return losesFigures(writer.truss, report) && figuresOf(trustOf(report).error) == 0
                   ? sayPlain(writer, phrase::kNoOrdinateFigures)
                   : sayPlain(writer, phrase::kInfluenceNone, {{"effect", effect}});
    }
    if (isZero(high) || isZero(low)) {
        const std::size_t at = isZero(high) ? low : high;
        return sayPlain(writer, phrase::kInfluenceOne,
                        {{"effect", effect},
                         {"value", ordinateText(writer.truss, report, at)},
                         {"joint", labelOf(writer.truss, report.path[at])}});
    }
    return sayPlain(writer, phrase::kInfluenceBoth,
                    {{"effect", effect},
                     {"high", ordinateText(writer.truss, report, high)},
                     {"highJoint", labelOf(writer.truss, report.path[high])},
                     {"low", ordinateText(writer.truss, report, low)},
                     {"lowJoint", labelOf(writer.truss, report.path[low])}});
}

std::string readingSentence(const Writer& writer, const InfluenceReport& report, double place) {
    const double at = std::clamp(place, 0.0, report.line.at.back());
    const RichLine start = labelOf(writer.truss, report.path.front());
    const std::string distance = pathLength(writer.truss, at);
    const std::optional<std::size_t> joint = jointOn(report, at);
    if (!joint) {
        const std::string value =
            withUnit(signedOrdinate(writer.truss, report, ordinateAt(report.line, at)),
                     ordinateUnit(writer.truss, report.effect.kind));
        return sayPlain(writer, phrase::kReadBetween,
                        {{"value", value}, {"distance", distance}, {"start", start}});
    }
    const std::string value = readingOnJoint(writer.truss, report, *joint);
    if (*joint == 0) {
        return sayPlain(writer, phrase::kReadAtStart, {{"value", value}, {"start", start}});
    }
    return sayPlain(writer, phrase::kReadOnJoint,
                    {{"joint", labelOf(writer.truss, report.path[*joint])},
                     {"value", value},
                     {"distance", distance},
                     {"start", start}});
}

double nearJoint(const InfluenceReport& report, double at, double slack) {
    double nearest = at;
    for (const double joint : report.line.at) {
        if (std::fabs(joint - at) <= slack) {
            nearest = joint;
            slack = std::fabs(joint - at);
        }
    }
    return nearest;
}

std::vector<OrdinateRow> ordinateRows(const Truss& truss, const InfluenceReport& report) {
    std::vector<OrdinateRow> rows;
    for (std::size_t i = 0; i < report.path.size(); ++i) {
        const double at = report.line.at[i];
        rows.push_back({.joint = report.path[i],
                        .at = at,
                        .value = report.line.ordinates[i],
                        .name = truss.joints[report.path[i].at()].label,
                        .from = formatGiven(at / toMetre(truss.units.length), numberStyleOf(truss)),
                        .ordinate = signedOrdinate(truss, report, report.line.ordinates[i]),
                        .exact = report.exact.empty() ? "" : exactText(report, i)});
    }
    return rows;
}

std::string headOfDistance(const Writer& writer) {
    return plainText(column(writer, phrase::kColumnFromStart, symbolOf(writer.truss.units.length)));
}

std::string headOfOrdinate(const Writer& writer, const InfluenceReport& report) {
    return plainText(
        column(writer, phrase::kColumnOrdinate, ordinateUnit(writer.truss, report.effect.kind)));
}

TextTable ordinateTable(const Writer& writer, const InfluenceReport& report) {
    TextTable table{influenceSentence(writer, report),
                    {column(writer, phrase::kColumnJoint), plainLine(headOfDistance(writer)),
                     plainLine(headOfOrdinate(writer, report))},
                    {},
                    {false, true, true}};
    if (!report.exact.empty()) {
        table.head.push_back(column(writer, phrase::kColumnExactly));
        table.numeric.push_back(true);
    }
    for (const OrdinateRow& row : ordinateRows(writer.truss, report)) {
        table.rows.push_back({row.name, row.from, row.ordinate});
        if (!report.exact.empty()) {
            table.rows.back().push_back(row.exact);
        }
    }
    return table;
}

std::string areaSentence(const Writer& writer, const InfluenceReport& report) {
    const Areas areas = areasOf(report.line);
    return sayPlain(writer, phrase::kInfluenceAreas,
                    {{"positive", areaText(writer.truss, report, areas.positive)},
                     {"negative", areaText(writer.truss, report, areas.negative)}});
}

std::vector<std::string> movingLines(const Writer& writer, const InfluenceReport& report) {
    std::vector<std::string> lines;
    for (const MovingResult& moving : report.moving) {
        addMoving({writer.book, writer.truss, report}, moving, lines);
    }
    return lines;
}

std::vector<std::string> lineWarnings(const Writer& writer, const InfluenceReport& report) {
    const int figures = figuresOf(trustOf(report).error);
    const bool loses = losesFigures(writer.truss, report);
    std::vector<std::string> says;
    if (loses && figures == 0) {
        says.push_back(sayPlain(writer, phrase::kNoOrdinateFigures));
    } else if (loses) {
        says.push_back(sayPlain(writer, phrase::kOrdinateFiguresLeft, {{"n", figures}}));
    }
    return trustSentences(writer, report.reliance, says);
}

std::string influenceText(const Writer& writer, const InfluenceReport& report) {
    std::string text;
    for (const std::string& sentence : lineWarnings(writer, report)) {
        text += sentence + "\n\n";
    }
    text += tableText(ordinateTable(writer, report)) + areaSentence(writer, report) + "\n";
    for (const std::string& assumed : assumptionSentences(writer, report.reliance.assumed)) {
        text += assumed + "\n";
    }
    const std::vector<std::string> moving = movingLines(writer, report);
    if (!moving.empty()) {
        text += "\n" + sayPlain(writer, phrase::kMovingHeading) + "\n";
    }
    for (const std::string& line : moving) {
        text += "  " + line + "\n";
    }
    return text;
}

std::string pathName(const Truss& truss, const std::vector<JointId>& path) {
    std::string name;
    for (const JointId joint : path) {
        name += (name.empty() ? "" : "–") + truss.joints[joint.at()].label;
    }
    return name;
}

std::string pathLength(const Truss& truss, double metres) {
    return withUnit(formatGiven(metres / toMetre(truss.units.length), numberStyleOf(truss)),
                    symbolOf(truss.units.length));
}

bool leadsRight(const Truss& truss, const std::vector<JointId>& path) {
    return truss.joints[path.back().at()].at.x > truss.joints[path.front().at()].at.x;
}

} // namespace gusset
