#include "app/page/page_text.hpp"

#include "app/fields/field_key.hpp"
#include "app/fields/page_controls.hpp"
#include "app/page/page_html.hpp"
#include "app/page/page_lists.hpp"
#include "app/page/page_tables.hpp"
#include "phrases/frame.hpp"
#include "phrases/model.hpp"
#include "phrases/page_text.hpp"
#include "phrases/results.hpp"
#include "phrases/results/board.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/influence.hpp"
#include "phrases/results/jobs.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "report/sketch/sketch_svg.hpp"
#include "report/text/html.hpp"

#include <string_view>

namespace gusset {

namespace {

constexpr int kWorkingLevel = 4; // of headings below those of the parts

// Without numbers, so that these tables are not remade in every frame.
std::string atWork(const PhraseBook& book, Phrase<> what) {
    return lineHtml(sayPlain(book, phrase::kJobAtWork, {{"what", say(book, what)}}));
}

std::string checksBody(const AppState& state, const Derived& derived, bool worked) {
    const ChecksShown& shown = derived.checks;
    if (!isOf(shown, state)) {
        return atWork(*state.book, phrase::kJobMembers);
    }
    return checksHtml({*state.book, state.truss}, shown.checks, shown.loads) +
           (worked ? passagesHtml(shown.working, kWorkingLevel) : std::string());
}

std::string envelopeBody(const AppState& state, const Derived& derived) {
    const EnvelopeShown& shown = derived.envelope;
    if (!isOf(shown, state)) {
        return atWork(*state.book, phrase::kJobLoads);
    }
    return paragraphsHtml(shown.warnings) +
           (shown.rows.empty()
                ? lineHtml(shown.says)
                : tableHtml(envelopeTable({*state.book, state.truss}, shown.says, shown.rows)));
}

std::string underMoving(const AppState& state, const InfluenceShown& shown) {
    if (!shown.view.members) {
        return {};
    }
    if (!hasMembers(state, shown)) {
        return atWork(*state.book, phrase::kJobMembers);
    }
    std::string html;
    for (const MembersUnder& under : shown.members.loads) {
        html += tableHtml(envelopeTable({*state.book, state.truss}, under.caption, under.rows));
    }
    return html;
}

std::string lineBody(const AppState& state, const InfluenceShown& shown) {
    const PhraseBook& book = *state.book;
    if (!shown.report) {
        return shown.says.empty() ? atWork(book, phrase::kJobPlaces) : lineHtml(shown.says);
    }
    return paragraphsHtml(shown.warnings) + lineHtml(shown.reading) +
           tableHtml(ordinateTable({book, state.truss}, *shown.report)) + lineHtml(shown.areas) +
           paragraphsHtml(shown.assumed) + paragraphsHtml(shown.moving);
}

// Which path, as a list: a moving load by its name.
std::string pathQuestion(const AppState& state, const InfluenceShown& shown) {
    std::vector<PageOption> options;
    for (const PathOption& option : shown.paths) {
        const std::string load = option.kind == PathKind::Moving ? " " + option.name : "";
        options.push_back({std::to_string(static_cast<int>(option.kind)) + load, option.name,
                           options.size() == shown.chosen});
    }
    return options.empty() ? std::string()
                           : selectHtml(sayPlain(*state.book, phrase::kTravelsAlong),
                                        PageControl{PagePress::ChoosePath}, options);
}

std::string listQuestion(const AppState& state, PageList list, decltype("{names}"_phrase) sentence,
                         Phrase<> name) {
    const PhraseBook& book = *state.book;
    const std::string text = listText(state, list);
    const std::string look = text.empty() ? sayPlain(book, phrase::kNone) : text;
    return sentenceHtml(book, sentence, typedHtml(book, list, text, look, sayPlain(book, name)));
}

// Adds a load to the path shown.
std::string addMovingButton(const AppState& state, const InfluenceShown& shown) {
    if (!shown.report) {
        return {};
    }
    std::string path;
    for (const JointId joint : shown.report->path) {
        path += (path.empty() ? "" : ",") + std::to_string(joint.index);
    }
    return "<p>" +
           buttonHtml({"press", keyOf(PageControl{PagePress::AddMoving}), path,
                       sayPlain(*state.book, phrase::kAddMoving), ""}) +
           "</p>\n";
}

std::string influencePart(const AppState& state, const Derived& derived) {
    const InfluenceShown& shown = derived.influence;
    const PhraseBook& book = *state.book;
    std::string html =
        pathQuestion(state, shown) +
        listQuestion(state, PageList::Path, phrase::kPathThrough, phrase::kJointsOfPath) +
        questionHtml(state, PageQuestion::About) +
        (shown.canTurn ? questionHtml(state, PageQuestion::Way) : std::string()) +
        lineBody(state, shown) + addMovingButton(state, shown);
    if (!shown.report) {
        return html;
    }
    html += partButtonHtml(state, PagePart::ByHand, phrase::kWorkingByHand);
    if (shown.view.byHand) {
        html += hasByHand(state, shown) ? passagesHtml(shown.byHand.passages, kWorkingLevel)
                                        : atWork(book, phrase::kJobWorking);
    }
    if (!shown.moving.empty()) {
        html += partButtonHtml(state, PagePart::UnderMoving, phrase::kAllUnderThese) +
                underMoving(state, shown);
    }
    return html;
}

std::string exactPart(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    const ExactShown& shown = derived.exact;
    if (!isOf(shown, state)) {
        return atWork(book, phrase::kJobExact);
    }
    TextTable table{sayPlain(book, phrase::kExactForces),
                    {say(book, phrase::kColumnMember), say(book, phrase::kColumnForce)},
                    {},
                    {false, true}};
    for (const ForceRow& row : derived.forces) {
        if (row.member.at() < shown.forces.size()) {
            table.rows.push_back({row.name, shown.forces[row.member.at()]});
        }
    }
    return (shown.whyNot.empty() ? std::string() : lineHtml(shown.whyNot)) +
           (table.rows.empty() ? std::string() : tableHtml(table));
}

std::string checksPart(const AppState& state, const Derived& derived) {
    return (derived.checks.hasChoice ? questionHtml(state, PageQuestion::CheckedLoads)
                                     : std::string()) +
           checkSettingsHtml(state) + questionHtml(state, PageQuestion::About) +
           checksBody(state, derived, true);
}

std::string envelopePart(const AppState& state, const Derived& derived) {
    return (derived.envelope.hasChoice ? questionHtml(state, PageQuestion::EnvelopeOf)
                                       : std::string()) +
           envelopeBody(state, derived);
}

// One part of the page: its heading, the button that shows it, and what it shows.
std::string part(const AppState& state, const Derived& derived, PagePart which, Phrase<> name,
                 std::string (*body)(const AppState&, const Derived&)) {
    return headingHtml(*state.book, name) + partButtonHtml(state, which, name) +
           (isShown(state, which) ? body(state, derived) : std::string());
}

// The loads of the results, if they could be others.
std::string loadsNamed(const AppState& state) {
    const Choices answers = loadAnswers(state);
    for (const Choice& answer : answers) {
        if (answer.isNow && answers.size() > 1) {
            return answer.name;
        }
    }
    return {};
}

// Undo and redo, by the names of their steps.
std::string historyHtml(const AppState& state) {
    const PhraseBook& book = *state.book;
    const auto button = [&](PagePress press, Phrase<> alone, decltype("{step}"_phrase) withStep,
                            const Statement& step) {
        const std::string look = step.empty()
                                     ? sayPlain(book, alone)
                                     : sayPlain(book, withStep, {{"step", said(book, step)}});
        return buttonHtml({"press", keyOf(PageControl{press}), "", look, ""});
    };
    return "<p class=\"buttons\">" +
           button(PagePress::Undo, phrase::kUndo, phrase::kUndoStep, state.history.undoName()) +
           button(PagePress::Redo, phrase::kRedo, phrase::kRedoStep, state.history.redoName()) +
           "</p>\n";
}

std::string workingQuestions(const AppState& state) {
    std::string html = questionHtml(state, PageQuestion::Working);
    const WorkingPage page = state.notebook.working;
    if (page == WorkingPage::OneForce || page == WorkingPage::Displacement) {
        html += questionHtml(state, PageQuestion::About);
    }
    if (page == WorkingPage::OneForce) {
        html += questionHtml(state, PageQuestion::ForceBy) +
                listQuestion(state, PageList::Cut, phrase::kSectionThrough, phrase::kMembersCut);
    }
    if (page == WorkingPage::Displacement) {
        html += questionHtml(state, PageQuestion::Axis);
    }
    return html;
}

// The drawing of the polygon with all its lines, whatever step the notebook shows.
std::string polygonHtml(const AppState& state, const ShownWorking& shown) {
    const std::size_t count = shown.polygon.lines.size();
    if (count == 0) {
        return {};
    }
    const PolygonDrawing whole =
        polygonDrawing({*state.book, state.truss}, shown.polygon, {.drawn = count});
    return figureHtml(shown.spaces) + figureHtml(whole.sketch);
}

} // namespace

std::string pageTextHtml(const AppState& state, const Derived& derived, PageCells cells) {
    const Truss& truss = state.truss;
    const PhraseBook& book = *state.book;
    const bool typed = cells == PageCells::Typed;
    const std::string title =
        truss.title.empty() ? sayPlain(book, phrase::kUntitledTruss) : truss.title;
    std::string html = "<h2>" + escapeHtml(title) + "</h2>\n";
    html += typed ? historyHtml(state) : "";
    html += headingHtml(book, phrase::kTabResults);
    html += typed ? questionHtml(state, PageQuestion::Loads) : "";
    html += resultsHtml({book, truss}, derived.solution, loadsNamed(state));
    html += headingHtml(book, phrase::kTheModel);
    html += typed ? lineHtml(sayPlain(book, phrase::kPressToType)) : "";
    html += modelTablesHtml({book, truss}, cells);
    if (typed) {
        html += headingHtml(book, phrase::kCasesHeading) + casesHtml(state) +
                combinationsHtml(state) + movingLoadsHtml(state) + settingsHtml(state);
    }
    return html;
}

std::string partsHtml(const AppState& state, const Derived& derived) {
    std::string html =
        part(state, derived, PagePart::Envelope, phrase::kEnvelopeHeading, envelopePart);
    html += part(state, derived, PagePart::Influence, phrase::kPageInfluence, influencePart);
    html += part(state, derived, PagePart::Checks, phrase::kPageChecks, checksPart);
    html += part(state, derived, PagePart::Exact, phrase::kExactValues, exactPart);
    return html;
}

std::string movingHtml(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    std::string html;
    if ((showsChecks(state) || showsUse(state)) && isOf(derived.checks, state)) {
        html += headingHtml(book, phrase::kCheckCaption) +
                checksBody(state, derived, showsChecks(state));
    }
    if (showsEnvelope(state)) {
        html += headingHtml(book, phrase::kEnvelopeHeading) + envelopeBody(state, derived);
    }
    if (showsInfluence(state)) {
        html += headingHtml(book, phrase::kInfluenceHeading) + lineBody(state, derived.influence) +
                underMoving(state, derived.influence);
    }
    return html;
}

std::string workingHtml(const AppState& state, const Derived& derived) {
    const PhraseBook& book = *state.book;
    const ShownWorking& shown = derived.working;
    const std::string head = headingHtml(book, phrase::kWorkingHeading) + workingQuestions(state);
    if (!isShown(state, shown)) {
        return head + atWork(book, phrase::kJobWorking);
    }
    return head + paragraphsHtml(derived.warningsOfWorking) +
           (shown.asks.empty() ? std::string() : lineHtml(shown.asks)) + polygonHtml(state, shown) +
           passagesHtml(shown.passages, kWorkingLevel);
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
