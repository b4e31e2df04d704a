#include "app/twin.hpp"

#include "report/number.hpp"

#include <initializer_list>
#include <string_view>

namespace gusset {

namespace {

using Cells = std::initializer_list<std::string_view>;

std::string tableStart(std::string_view caption, Cells head) {
    std::string html = "<table>\n<caption>" + escapeHtml(caption) + "</caption>\n<thead><tr>";
    for (const std::string_view cell : head) {
        html += "<th scope=\"col\">" + escapeHtml(cell) + "</th>";
    }
    return html + "</tr></thead>\n<tbody>\n";
}

std::string tableRow(Cells cells) {
    std::string html = "<tr>";
    bool first = true;
    for (const std::string_view cell : cells) {
        html += first ? "<th scope=\"row\">" + escapeHtml(cell) + "</th>"
                      : "<td>" + escapeHtml(cell) + "</td>";
        first = false;
    }
    return html + "</tr>\n";
}

constexpr std::string_view kTableEnd = "</tbody>\n</table>\n";

std::string withUnit(std::string_view what, std::string_view unit) {
    return unit.empty() ? std::string(what) : std::string(what) + " (" + std::string(unit) + ")";
}

const std::string& labelOf(const Truss& truss, JointId joint) {
    return truss.joints[joint.at()].label;
}

std::string jointsTable(const Truss& truss) {
    const std::string_view unit = symbolOf(truss.units.length);
    std::string html = tableStart("Joints", {"joint", withUnit("x", unit), withUnit("y", unit)});
    for (const Joint& joint : truss.joints) {
        html += tableRow({joint.label, shortestNumber(joint.at.x), shortestNumber(joint.at.y)});
    }
    return html.append(kTableEnd);
}

std::string membersTable(const Truss& truss) {
    std::string html = tableStart("Members", {"member", "from", "to"});
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Member& member = truss.members[i];
        html += tableRow({memberName(truss, MemberId{static_cast<int>(i)}),
                          labelOf(truss, member.a), labelOf(truss, member.b)});
    }
    return html.append(kTableEnd);
}

std::string supportsTable(const Truss& truss) {
    std::string html = tableStart("Supports", {"joint", "kind", "direction of the reaction"});
    for (const Support& support : truss.supports) {
        const bool pin = support.kind == SupportKind::Pin;
        html += tableRow({labelOf(truss, support.joint), pin ? "pin" : "roller",
                          pin ? "any" : shortestNumber(support.reaction) + "°"});
    }
    return html.append(kTableEnd);
}

std::string chordName(const Truss& truss, const ChordLoad& load) {
    std::string name = "chord ";
    for (const JointId joint : load.chord) {
        name += labelOf(truss, joint);
    }
    return name;
}

std::string loadRow(const Truss& truss, const Load& load) {
    const std::string caseId = load.caseId.empty() ? kDefaultCase : load.caseId;
    const std::string force = symbolOf(truss.units.force);
    const std::string length = symbolOf(truss.units.length);
    if (const auto components = forceOf(load)) {
        return tableRow({labelOf(truss, jointOf(load)), shortestNumber(components->x),
                         shortestNumber(components->y), caseId});
    }
    if (const auto* chord = std::get_if<ChordLoad>(&load.what)) {
        return tableRow({chordName(truss, *chord), "0",
                         shortestNumber(chord->perLength) + " per " +
                             (length.empty() ? "unit of length" : length),
                         caseId});
    }
    return tableRow({"all members", "0", "self-weight", caseId});
}

std::string loadsTable(const Truss& truss) {
    const std::string_view unit = symbolOf(truss.units.force);
    std::string html =
        tableStart("Loads", {"at", withUnit("to the right", unit), withUnit("up", unit), "case"});
    for (const Load& load : truss.loads) {
        html += loadRow(truss, load);
    }
    return html.append(kTableEnd);
}

std::string counted(std::size_t count, std::string_view one) {
    return std::to_string(count) + " " + std::string(one) + (count == 1 ? "" : "s");
}

} // namespace

std::string twinHtml(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    std::string html =
        "<h2>" + escapeHtml(truss.title.empty() ? "Untitled truss" : truss.title) + "</h2>\n";
    html += resultsHtml(truss, derived.solution);
    html += "<h3>The model</h3>\n";
    html += jointsTable(truss) + membersTable(truss);
    if (!truss.supports.empty()) {
        html += supportsTable(truss);
    }
    if (!truss.loads.empty()) {
        html += loadsTable(truss);
    }
    return html;
}

std::string movingHtml(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    const auto line = [](const std::string& text) { return "<p>" + escapeHtml(text) + "</p>\n"; };
    if (showsEnvelope(state)) {
        const EnvelopeShown& shown = derived.envelope;
        return "<h3>Envelope</h3>\n" +
               (shown.rows.empty() ? line(shown.says)
                                   : tableHtml(envelopeTable(truss, shown.says, shown.rows)));
    }
    if (!showsInfluence(state)) {
        return {};
    }
    const InfluenceShown& shown = derived.influence;
    std::string html = "<h3>Influence line</h3>\n";
    if (!shown.report) {
        return html + line(shown.says);
    }
    html +=
        line(shown.reading) + tableHtml(ordinateTable(truss, *shown.report)) + line(shown.areas);
    for (const std::string& moving : shown.moving) {
        html += line(moving);
    }
    for (const MembersUnder& under : shown.members) {
        html += tableHtml(envelopeTable(truss, under.caption, under.rows));
    }
    return html;
}

std::string boardSummary(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    std::string text = "The board: " + counted(truss.joints.size(), "joint") + ", " +
                       counted(truss.members.size(), "member") + ", " +
                       counted(truss.supports.size(), "support") + ", " +
                       counted(truss.loads.size(), "load") + ".";
    if (!derived.verdict.empty()) {
        text += " " + derived.verdict.front();
    }
    return text;
}

} // namespace gusset
