#include "app/page/page_text.hpp"

#include "app/page/page_tables.hpp"
#include "phrases/page_text.hpp"
#include "phrases/results/board.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/jobs.hpp"
#include "phrases/results/lists.hpp"
#include "report/text/html.hpp"

#include <string_view>

namespace gusset {

namespace {

std::string heading(const PhraseBook& book, Phrase<> phrase) {
    return "<h3>" + escapeHtml(sayPlain(book, phrase)) + "</h3>\n";
}

std::string checksPart(const AppState& state, const Derived& derived) {
    const ChecksShown& shown = derived.checks;
    if (!(showsChecks(state) || showsUse(state)) || !isOf(shown, state)) {
        return {};
    }
    const PhraseBook& book = *state.book;
    return heading(book, phrase::kCheckCaption) +
           checksHtml({book, state.truss}, shown.checks, shown.loads) +
           (showsChecks(state) ? passagesHtml(shown.working) : std::string{});
}

std::string line(const std::string& text) { return "<p>" + escapeHtml(text) + "</p>\n"; }

// Without numbers, so that these tables are not remade in every frame.
std::string atWork(const PhraseBook& book, Phrase<> what) {
    return line(sayPlain(book, phrase::kJobAtWork, {{"what", say(book, what)}}));
}

std::string movingPart(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    if (showsEnvelope(state)) {
        const EnvelopeShown& shown = derived.envelope;
        if (!isOf(shown, state)) {
            return heading(book, phrase::kEnvelopeHeading) + atWork(book, phrase::kJobLoads);
        }
        return heading(book, phrase::kEnvelopeHeading) + paragraphsHtml(shown.warnings) +
               (shown.rows.empty()
                    ? line(shown.says)
                    : tableHtml(envelopeTable({book, truss}, shown.says, shown.rows)));
    }
    if (!showsInfluence(state)) {
        return {};
    }
    const InfluenceShown& shown = derived.influence;
    std::string html = heading(book, phrase::kInfluenceHeading);
    if (!shown.report) {
        return html + (shown.says.empty() ? atWork(book, phrase::kJobPlaces) : line(shown.says));
    }
    html += paragraphsHtml(shown.warnings) + line(shown.reading) +
            tableHtml(ordinateTable({book, truss}, *shown.report)) + line(shown.areas) +
            paragraphsHtml(shown.assumed) + paragraphsHtml(shown.moving);
    if (!shown.view.members) {
        return html;
    }
    if (!hasMembers(state, shown)) {
        return html + atWork(book, phrase::kJobMembers);
    }
    for (const MembersUnder& under : shown.members.loads) {
        html += tableHtml(envelopeTable({book, truss}, under.caption, under.rows));
    }
    return html;
}

} // namespace

std::string pageTextHtml(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    const std::string title =
        truss.title.empty() ? sayPlain(book, phrase::kUntitledTruss) : truss.title;
    std::string html = "<h2>" + escapeHtml(title) + "</h2>\n";
    html += resultsHtml({book, truss}, derived.solution);
    html += heading(book, phrase::kTheModel) + line(sayPlain(book, phrase::kPressToType));
    html += modelTablesHtml({book, truss});
    return html;
}

std::string movingHtml(const AppState& state, const Derived& derived) {
    return checksPart(state, derived) + movingPart(state, derived);
}

std::string workingHtml(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    return heading(book, phrase::kWorkingHeading) + (isShown(state, derived.working)
                                                         ? passagesHtml(derived.working.passages)
                                                         : atWork(book, phrase::kJobWorking));
}

std::string boardSummary(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    const auto counted = [&](std::size_t count, Phrase<> one, CountedPhrase many) {
        return countedWords(book, static_cast<int>(count), one, many);
    };
    std::string text = sayPlain(
        book, phrase::kBoardSummary,
        {{"joints", counted(truss.joints.size(), phrase::kOneJoint, phrase::kManyJoints)},
         {"members", counted(truss.members.size(), phrase::kOneMember, phrase::kManyMembers)},
         {"supports", counted(truss.supports.size(), phrase::kOneSupport, phrase::kManySupports)},
         {"loads", counted(truss.loads.size(), phrase::kOneLoad, phrase::kManyLoads)}});
    if (!derived.verdict.empty()) {
        text += " " + newsOf(derived);
    }
    return text;
}

} // namespace gusset
