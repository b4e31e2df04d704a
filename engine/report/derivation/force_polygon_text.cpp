#include "report/derivation/force_polygon_text.hpp"

#include "phrases/force_polygon.hpp"
#include "phrases/remarks.hpp"
#include "phrases/tables.hpp"
#include "phrases/verdict.hpp"
#include "report/results/results_text.hpp"
#include "report/results/table.hpp"
#include "report/text/html.hpp"

#include <cmath>

namespace gusset {
namespace {

std::string refusalText(const PhraseBook& book, const Truss& truss, const ForcePolygon& polygon) {
    const auto joint = [&] { return plainLine(truss.joints[polygon.joint.at()].label); };
    switch (polygon.refusal) {
    case PolygonRefusal::None:
        break;
    case PolygonRefusal::NoMember:
        return sayPlain(book, truss.joints.empty() ? phrase::kNothingDrawn : phrase::kNoMember);
    case PolygonRefusal::NoWorking:
        return sayPlain(book, phrase::kPolygonNoWorking);
    case PolygonRefusal::CrossingMembers:
        return sayPlain(book, phrase::kPolygonCrossing,
                        {{"a", memberName(truss, polygon.members[0])},
                         {"b", memberName(truss, polygon.members[1])}});
    case PolygonRefusal::NotConnected:
        return sayPlain(book, phrase::kPolygonNotConnected, {{"joint", joint()}});
    case PolygonRefusal::ForceInside:
        return sayPlain(book, phrase::kPolygonForceInside, {{"joint", joint()}});
    }
    return {};
}

std::string whatOf(const PhraseBook& book, const Truss& truss, const PolygonLine& line) {
    if (line.member.valid()) {
        return memberName(truss, line.member);
    }
    const RichLine joint = plainLine(truss.joints[line.joint.at()].label);
    return sayPlain(book, line.reaction ? phrase::kReactionAt : phrase::kLoadAt,
                    {{"joint", joint}});
}

std::string senseWord(const PhraseBook& book, const Truss& truss, const PolygonLine& line) {
    if (!line.member.valid()) {
        return {};
    }
    if (roundedTo(line.force, numberStyleOf(truss)) == 0) {
        return sayPlain(book, phrase::kWordZero);
    }
    return sayPlain(book, line.force < 0 ? phrase::kWordCompression : phrase::kWordTension);
}

TextTable tableOf(const PhraseBook& book, const Truss& truss, const ForcePolygon& polygon) {
    TextTable table;
    table.caption = sayPlain(book, phrase::kPolygonCaption);
    table.head = {say(book, phrase::kColumnLine), say(book, phrase::kColumnStandsFor),
                  headed(book, say(book, phrase::kColumnForce), symbolOf(truss.units.force)),
                  say(book, phrase::kColumnSense)};
    table.numeric = {false, false, true, false};
    for (const PolygonLine& line : polygon.lines) {
        table.rows.push_back({polygonLineName(polygon, line), whatOf(book, truss, line),
                              formatNumber(std::fabs(line.force), numberStyleOf(truss)),
                              senseWord(book, truss, line)});
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

Passage forcePolygonPassage(const PhraseBook& book, const Truss& truss,
                            const ForcePolygon& polygon) {
    Passage passage{say(book, phrase::kPolygonTitle)};
    if (polygon.refusal != PolygonRefusal::None) {
        addSentence(passage, plainLine(refusalText(book, truss, polygon)));
        return passage;
    }
    addSentence(passage, say(book, phrase::kPolygonOpening));
    passage.parts.push_back(tableOf(book, truss, polygon));
    return passage;
}

std::string forcePolygonText(const PhraseBook& book, const Truss& truss,
                             const ForcePolygon& polygon) {
    if (polygon.refusal != PolygonRefusal::None) {
        return refusalText(book, truss, polygon) + '\n';
    }
    return sayPlain(book, phrase::kPolygonOpening) + "\n\n" +
           tableText(tableOf(book, truss, polygon));
}

std::string forcePolygonHtml(const PhraseBook& book, const Truss& truss,
                             const ForcePolygon& polygon) {
    const auto paragraph = [](const std::string& line) {
        return "<p>" + escapeHtml(line) + "</p>\n";
    };
    if (polygon.refusal != PolygonRefusal::None) {
        return paragraph(refusalText(book, truss, polygon));
    }
    return paragraph(sayPlain(book, phrase::kPolygonOpening)) +
           tableHtml(tableOf(book, truss, polygon));
}

} // namespace gusset
