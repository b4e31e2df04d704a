#include "report/derivation/force_polygon_text.hpp"

#include "phrases/results/tables.hpp"
#include "phrases/results/verdict.hpp"
#include "phrases/working/force_polygon.hpp"
#include "phrases/working/remarks.hpp"
#include "report/formula/notation.hpp"
#include "report/results/results_text.hpp"
#include "report/results/table.hpp"
#include "report/text/html.hpp"

#include <cmath>

namespace gusset {
namespace {

std::string refusalText(const Writer& writer, const ForcePolygon& polygon) {
    const auto joint = [&] { return plainLine(writer.truss.joints[polygon.joint.at()].label); };
    switch (polygon.refusal) {
    case PolygonRefusal::None:
        break;
    case PolygonRefusal::NoMember:
        return sayPlain(writer.book,
                        writer.truss.joints.empty() ? phrase::kNothingDrawn : phrase::kNoMember);
    case PolygonRefusal::NoWorking:
        return sayPlain(writer, phrase::kPolygonNoWorking);
    case PolygonRefusal::CrossingMembers:
        return sayPlain(writer, phrase::kPolygonCrossing,
                        {{"a", memberName(writer.truss, polygon.members[0])},
                         {"b", memberName(writer.truss, polygon.members[1])}});
    case PolygonRefusal::NotConnected:
        return sayPlain(writer, phrase::kPolygonNotConnected, {{"joint", joint()}});
    case PolygonRefusal::ForceInside:
        return sayPlain(writer, phrase::kPolygonForceInside, {{"joint", joint()}});
    }
    return {};
}

std::string whatOf(const Writer& writer, const PolygonLine& line) {
    if (line.member.valid()) {
        return memberName(writer.truss, line.member);
    }
    const RichLine joint = plainLine(writer.truss.joints[line.joint.at()].label);
    return sayPlain(writer, line.reaction ? phrase::kReactionAt : phrase::kLoadAt,
                    {{"joint", joint}});
}

std::string senseWord(const Writer& writer, const PolygonLine& line) {
    if (!line.member.valid()) {
        return {};
    }
    if (roundedTo(line.force, numberStyleOf(writer.truss)) == 0) {
        return sayPlain(writer, phrase::kWordZero);
    }
    return sayPlain(writer, line.force < 0 ? phrase::kWordCompression : phrase::kWordTension);
}

TextTable tableOf(const Writer& writer, const ForcePolygon& polygon) {
    TextTable table;
    table.caption = sayPlain(writer, phrase::kPolygonCaption);
    table.head = {
        say(writer, phrase::kColumnLine), say(writer, phrase::kColumnStandsFor),
        headed(writer, say(writer, phrase::kColumnForce), symbolOf(writer.truss.units.force)),
        say(writer, phrase::kColumnSense)};
    table.numeric = {false, false, true, false};
    for (const PolygonLine& line : polygon.lines) {
        table.rows.push_back({polygonLineName(polygon, line), whatOf(writer, line),
                              formatNumber(std::fabs(line.force), numberStyleOf(writer.truss)),
                              senseWord(writer, line)});
    }
    return table;
}

std::string pointAt(const ForcePolygon& polygon, int space) {
    return polygonPointName(polygon.spaces[static_cast<std::size_t>(space)]);
}

std::string outsideSentence(const Writer& writer, const ForcePolygon& polygon,
                            const PolygonStep& step) {
    std::vector<RichLine> names;
    for (std::size_t i = step.first; i < step.first + step.count; ++i) {
        names.push_back(plainLine(polygonLineName(polygon, polygon.lines[i])));
    }
    return sayPlain(writer, phrase::kPolygonOutside, {{"lines", listOf(writer, names)}});
}

std::string meetsSentence(const Writer& writer, const ForcePolygon& polygon,
                          const PolygonStep& step) {
    const PolygonLine& one = polygon.lines[step.first];
    const PolygonLine& other = polygon.lines[step.first + 1];
    return sayPlain(writer, phrase::kPolygonMeets,
                    {{"a", pointAt(polygon, one.from)},
                     {"member", memberName(writer.truss, one.member)},
                     {"b", pointAt(polygon, other.from)},
                     {"other", memberName(writer.truss, other.member)},
                     {"point", pointAt(polygon, one.to)}});
}

bool hasNoLength(const Writer& writer, const PolygonLine& line) {
    return roundedTo(line.force, numberStyleOf(writer.truss)) == 0;
}

std::string measuredSentence(const Writer& writer, const ForcePolygon& polygon,
                             const PolygonLine& line) {
    const auto point = [&](int space) {
        return polygon.spaces[static_cast<std::size_t>(space)].point;
    };
    return sayPlain(
        writer, phrase::kPolygonMeasured,
        {{"member", memberName(writer.truss, line.member)},
         {"a", pointAt(polygon, line.from)},
         {"size", forceText(writer.truss, std::fabs(line.force), numberStyleOf(writer.truss))},
         {"direction", directionWord(writer, point(line.to) - point(line.from))},
         {"point", pointAt(polygon, line.to)}});
}

std::string checkSentence(const Writer& writer, const ForcePolygon& polygon,
                          const PolygonLine& line) {
    const std::string member = memberName(writer.truss, line.member);
    return hasNoLength(writer, line)
               ? sayPlain(writer, phrase::kPolygonNoLength,
                          {{"a", pointAt(polygon, line.from)},
                           {"b", pointAt(polygon, line.to)},
                           {"member", member}})
               : sayPlain(writer, phrase::kPolygonCheck,
                          {{"line", polygonLineName(polygon, line)}, {"member", member}});
}

// Whether a line is said together with the one before it.
bool continuesSentence(const PolygonStep& step, std::size_t line) {
    const std::size_t place = line - step.first;
    return place > 0 &&
           (step.move == PolygonMove::Outside || (step.move == PolygonMove::Meets && place == 1));
}

std::string drawnSentence(const Writer& writer, const ForcePolygon& polygon,
                          const PolygonStep& step, std::size_t index) {
    const PolygonLine& line = polygon.lines[index];
    const bool first = index == step.first || continuesSentence(step, index);
    if (step.move == PolygonMove::Outside) {
        return outsideSentence(writer, polygon, step);
    }
    if (step.move == PolygonMove::Meets && first) {
        return meetsSentence(writer, polygon, step);
    }
    if (step.move == PolygonMove::Measured && first && !hasNoLength(writer, line)) {
        return measuredSentence(writer, polygon, line);
    }
    return checkSentence(writer, polygon, line);
}

RichLine openingLine(const Writer& writer, const ForcePolygon& polygon) {
    return say(writer,
               polygon.insideByNumber ? phrase::kPolygonOpening : phrase::kPolygonOpeningLetters);
}

} // namespace

std::string polygonLineSentence(const Writer& writer, const ForcePolygon& polygon,
                                std::size_t line) {
    for (const PolygonStep& step : polygon.steps) {
        if (line >= step.first && line < step.first + step.count) {
            return drawnSentence(writer, polygon, step, line);
        }
    }
    return {};
}

std::string polygonPointName(const PolygonSpace& space) {
    std::string name = space.name;
    if (name[0] >= 'A' && name[0] <= 'Z') {
        name[0] = static_cast<char>(name[0] - 'A' + 'a');
    }
    return name;
}

std::string polygonLineName(const ForcePolygon& polygon, const PolygonLine& line) {
    return polygonPointName(polygon.spaces[static_cast<std::size_t>(line.from)]) + "\u2013" +
           polygonPointName(polygon.spaces[static_cast<std::size_t>(line.to)]);
}

Passage forcePolygonPassage(const Writer& writer, const ForcePolygon& polygon) {
    Passage passage{say(writer, phrase::kPolygonTitle)};
    if (polygon.refusal != PolygonRefusal::None) {
        addSentence(passage, plainLine(refusalText(writer, polygon)));
        return passage;
    }
    addSentence(passage, openingLine(writer, polygon));
    for (const PolygonStep& step : polygon.steps) {
        for (std::size_t i = step.first; i < step.first + step.count; ++i) {
            if (!continuesSentence(step, i)) {
                addSentence(passage, plainLine(drawnSentence(writer, polygon, step, i)));
            }
        }
    }
    passage.parts.push_back(tableOf(writer, polygon));
    return passage;
}

std::string forcePolygonText(const Writer& writer, const ForcePolygon& polygon) {
    if (polygon.refusal != PolygonRefusal::None) {
        return refusalText(writer, polygon) + '\n';
    }
    return passagesText({forcePolygonPassage(writer, polygon)});
}

std::string forcePolygonHtml(const Writer& writer, const ForcePolygon& polygon) {
    if (polygon.refusal != PolygonRefusal::None) {
        return "<p>" + escapeHtml(refusalText(writer, polygon)) + "</p>\n";
    }
    return passagesHtml({forcePolygonPassage(writer, polygon)});
}

} // namespace gusset
