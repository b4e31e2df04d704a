#include "app/twin.hpp"

#include "app/page_tables.hpp"

#include <string_view>

namespace gusset {

namespace {

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
    html += "<p>A value that is pressed can be typed over.</p>\n";
    html += modelTablesHtml(truss);
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
