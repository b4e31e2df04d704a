#include "report/force_polygon_text.hpp"

#include "report/phrases.hpp"
#include "report/results_text.hpp"
#include "report/table.hpp"

#include <cmath>

namespace gusset {
namespace {

std::string phrase(Phrase phrase, std::initializer_list<Part> parts = {}) {
    return sayPlain(englishPhrases(), phrase, parts);
}

std::string refusalText(const Truss& truss, const ForcePolygon& polygon) {
    const auto joint = [&] { return plainLine(truss.joints[polygon.joint.at()].label); };
    switch (polygon.refusal) {
    case PolygonRefusal::None:
        break;
    case PolygonRefusal::NoWorking:
        return phrase(Phrase::PolygonNoWorking);
    case PolygonRefusal::CrossingMembers:
        return phrase(Phrase::PolygonCrossing,
                      {{"a", plainLine(memberName(truss, polygon.members[0]))},
                       {"b", plainLine(memberName(truss, polygon.members[1]))}});
    case PolygonRefusal::NotConnected:
        return phrase(Phrase::PolygonNotConnected, {{"joint", joint()}});
    case PolygonRefusal::ForceInside:
        return phrase(Phrase::PolygonForceInside, {{"joint", joint()}});
    }
    return {};
}

std::string whatOf(const Truss& truss, const PolygonLine& line) {
    if (line.member.valid()) {
        return memberName(truss, line.member);
    }
    const RichLine joint = plainLine(truss.joints[line.joint.at()].label);
    return phrase(line.reaction ? Phrase::ReactionAt : Phrase::LoadAt, {{"joint", joint}});
}

std::string senseWord(const Truss& truss, const PolygonLine& line) {
    if (!line.member.valid()) {
        return {};
    }
    if (roundedTo(line.force, numberStyleOf(truss)) == 0) {
        return phrase(Phrase::WordZero);
    }
    return phrase(line.force < 0 ? Phrase::WordCompression : Phrase::WordTension);
}

TextTable tableOf(const Truss& truss, const ForcePolygon& polygon) {
    const PhraseBook& book = englishPhrases();
    TextTable table;
    table.caption = phrase(Phrase::PolygonCaption);
    table.head = {say(book, Phrase::ColumnLine), say(book, Phrase::ColumnStandsFor),
                  headed(say(book, Phrase::ColumnForce), symbolOf(truss.units.force)),
                  say(book, Phrase::ColumnSense)};
    table.numeric = {false, false, true, false};
    for (const PolygonLine& line : polygon.lines) {
        table.rows.push_back({polygonLineName(polygon, line), whatOf(truss, line),
                              formatNumber(std::fabs(line.force), numberStyleOf(truss)),
                              senseWord(truss, line)});
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

Passage forcePolygonPassage(const Truss& truss, const ForcePolygon& polygon) {
    Passage passage{say(englishPhrases(), Phrase::PolygonTitle)};
    if (polygon.refusal != PolygonRefusal::None) {
        addSentence(passage, plainLine(refusalText(truss, polygon)));
        return passage;
    }
    addSentence(passage, say(englishPhrases(), Phrase::PolygonOpening));
    passage.parts.push_back(tableOf(truss, polygon));
    return passage;
}

std::string forcePolygonText(const Truss& truss, const ForcePolygon& polygon) {
    if (polygon.refusal != PolygonRefusal::None) {
        return refusalText(truss, polygon) + '\n';
    }
    return phrase(Phrase::PolygonOpening) + "\n\n" + tableText(tableOf(truss, polygon));
}

std::string forcePolygonHtml(const Truss& truss, const ForcePolygon& polygon) {
    const auto paragraph = [](const std::string& line) {
        return "<p>" + escapeHtml(line) + "</p>\n";
    };
    if (polygon.refusal != PolygonRefusal::None) {
        return paragraph(refusalText(truss, polygon));
    }
    return paragraph(phrase(Phrase::PolygonOpening)) + tableHtml(tableOf(truss, polygon));
}

} // namespace gusset
