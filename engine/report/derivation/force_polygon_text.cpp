#include "report/derivation/force_polygon_text.hpp"

#include "phrases/results/tables.hpp"
#include "phrases/results/verdict.hpp"
#include "phrases/working/force_polygon.hpp"
#include "phrases/working/remarks.hpp"
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

} // namespace

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
    addSentence(passage, say(writer, phrase::kPolygonOpening));
    passage.parts.push_back(tableOf(writer, polygon));
    return passage;
}

std::string forcePolygonText(const Writer& writer, const ForcePolygon& polygon) {
    if (polygon.refusal != PolygonRefusal::None) {
        return refusalText(writer, polygon) + '\n';
    }
    return sayPlain(writer, phrase::kPolygonOpening) + "\n\n" + tableText(tableOf(writer, polygon));
}

std::string forcePolygonHtml(const Writer& writer, const ForcePolygon& polygon) {
    const auto paragraph = [](const std::string& line) {
        return "<p>" + escapeHtml(line) + "</p>\n";
    };
    if (polygon.refusal != PolygonRefusal::None) {
        return paragraph(refusalText(writer, polygon));
    }
    return paragraph(sayPlain(writer, phrase::kPolygonOpening)) +
           tableHtml(tableOf(writer, polygon));
}

} // namespace gusset
