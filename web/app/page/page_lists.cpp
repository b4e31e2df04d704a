#include "app/page/page_lists.hpp"

#include "app/fields/check_field.hpp"
#include "app/fields/field_key.hpp"
#include "app/fields/load_cells.hpp"
#include "app/page/page_html.hpp"
#include "phrases/columns.hpp"
#include "phrases/model.hpp"
#include "phrases/page_text.hpp"
#include "phrases/picked.hpp"
#include "phrases/results.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/table.hpp"
#include "report/text/html.hpp"

#include <algorithm>

namespace gusset {
namespace {

std::string listHtml(const Writer& writer, const ListField& field) {
    if (!canType(writer.truss, field)) {
        return {};
    }
    const std::string has = listLook(writer.truss, field);
    const std::string look = has.empty() && field.kind == ListFieldKind::CaseKind
                                 ? sayPlain(writer, phrase::kNone)
                                 : has;
    const bool isNew = look.empty() && field.kind == ListFieldKind::CombinationName;
    const std::string name = listName(writer, field);
    return isNew ? buttonHtml({"cell", keyOf(field), "", sayPlain(writer, phrase::kAdd),
                               sayPlain(writer, phrase::kAddThat, {{"what", name}})})
                 : typedHtml(writer.book, field, listText(writer.truss, field), look, name);
}

std::string removeListed(const PhraseBook& book, const PageControl& control,
                         const std::string& what) {
    return buttonHtml({"press", keyOf(control), "", sayPlain(book, phrase::kRemove),
                       sayPlain(book, phrase::kRemoveThat, {{"what", what}})});
}

std::string headedIn(const PhraseBook& book, Phrase<> name, const std::string& unit) {
    return plainText(headed(book, say(book, name), unit));
}

// A row with no words: its empty places are cells all the same.
std::string combinationRows(const Writer& writer, int row, const std::vector<std::string>& cases) {
    const Truss& truss = writer.truss;
    const std::string& id = truss.combinations[static_cast<std::size_t>(row)].id;
    const std::size_t count = std::max<std::size_t>(cases.size(), 1);
    const std::string span = count > 1 ? " rowspan=\"" + std::to_string(count) + "\"" : "";
    std::string html;
    for (std::size_t part = 0; part < count; ++part) {
        html += "<tr>";
        if (part == 0) {
            html += "<th scope=\"rowgroup\"" + span + ">" +
                    listHtml(writer, {ListFieldKind::CombinationName, row, 0}) + "</th>";
        }
        const bool has = part < cases.size();
        html += inCell(has ? escapeHtml(cases[part]) : std::string()) +
                inCell(has ? listHtml(writer, {ListFieldKind::Factor, row, static_cast<int>(part)})
                           : std::string());
        if (part == 0) {
            html += "<td" + span + ">" +
                    removeListed(writer.book, {PagePress::RemoveCombination, row, 0}, id) + "</td>";
        }
        html += "</tr>\n";
    }
    return html;
}

std::string axlesHtml(const Writer& writer, int row) {
    const MovingLoad& load = writer.truss.moving[static_cast<std::size_t>(row)];
    const Units& units = writer.truss.units;
    std::string html =
        tableBegin(sayPlain(writer, phrase::kAxlesOf, {{"load", load.id}}),
                   {sayPlain(writer, phrase::kCellAxle),
                    headedIn(writer.book, phrase::kBehindFirst, symbolOf(units.length)),
                    headedIn(writer.book, phrase::kPushesDown, symbolOf(units.force)),
                    sayPlain(writer, phrase::kRemoveHeading)});
    const int count = static_cast<int>(load.axles.size());
    for (int axle = 0; axle <= count; ++axle) {
        const std::string number = std::to_string(axle + 1);
        const bool removable = axle < count && canRemoveAxle(load);
        html += "<tr>" + inRowHead(number) +
                inCell(listHtml(writer, {ListFieldKind::AxleAt, row, axle})) +
                inCell(listHtml(writer, {ListFieldKind::AxleForce, row, axle})) +
                inCell(removable ? removeListed(writer.book, {PagePress::RemoveAxle, row, axle},
                                                sayPlain(writer, phrase::kAxleOfLoad,
                                                         {{"n", number}, {"load", load.id}}))
                                 : std::string()) +
                "</tr>\n";
    }
    return html + kTableEnd;
}

std::string movingLoadHtml(const Writer& writer, int row) {
    const MovingLoad& load = writer.truss.moving[static_cast<std::size_t>(row)];
    const auto typed = [&](ListFieldKind kind) {
        return "<p>" + escapeHtml(listName(writer, {kind, row, 0})) + " " +
               listHtml(writer, {kind, row, 0}) + "</p>\n";
    };
    return typed(ListFieldKind::MovingName) +
           lineHtml(sayPlain(writer, phrase::kAlongPath,
                             {{"path", pathName(writer.truss, load.path)}})) +
           axlesHtml(writer, row) + typed(ListFieldKind::SpreadForce) +
           typed(ListFieldKind::SpreadLength) + "<p>" +
           removeListed(writer.book, {PagePress::RemoveMoving, row, 0}, load.id) + "</p>\n";
}

} // namespace

std::string casesHtml(const AppState& state) {
    const Writer writer{*state.book, state.truss};
    const std::vector<std::string> cases = caseNames(state.truss);
    if (cases.empty()) {
        return {};
    }
    std::string html = tableBegin(
        sayPlain(writer, phrase::kHeadCases),
        {sayPlain(writer, phrase::kCellName), sayPlain(writer, phrase::kCellStandsFor),
         sayPlain(writer, phrase::kCopyHeading), sayPlain(writer, phrase::kRemoveHeading)});
    for (int row = 0; row < static_cast<int>(cases.size()); ++row) {
        const std::string& name = cases[static_cast<std::size_t>(row)];
        html += "<tr><th scope=\"row\">" + listHtml(writer, {ListFieldKind::CaseName, row, 0}) +
                "</th>" + inCell(listHtml(writer, {ListFieldKind::CaseKind, row, 0})) +
                inCell(buttonHtml({"press", keyOf(PageControl{PagePress::CopyCase, row, 0}), "",
                                   sayPlain(writer, phrase::kCopyThis),
                                   sayPlain(writer, phrase::kCopyThat, {{"what", name}})})) +
                inCell(removeListed(writer.book, {PagePress::RemoveCase, row, 0}, name)) +
                "</tr>\n";
    }
    return html + kTableEnd;
}

std::string combinationsHtml(const AppState& state) {
    const Writer writer{*state.book, state.truss};
    const std::vector<std::string> cases = caseNames(state.truss);
    const int count = static_cast<int>(state.truss.combinations.size());
    std::string html = tableBegin(
        sayPlain(writer, phrase::kHeadCombinations),
        {sayPlain(writer, phrase::kCellCombination), sayPlain(writer, phrase::kCellOfCase),
         sayPlain(writer, phrase::kCellTimes), sayPlain(writer, phrase::kRemoveHeading)});
    for (int row = 0; row < count; ++row) {
        html += combinationRows(writer, row, cases);
    }
    return html + "<tr class=\"new\">" +
           inCell(listHtml(writer, {ListFieldKind::CombinationName, count, 0})) +
           "<td></td><td></td>" + "<td></td></tr>\n" + kTableEnd;
}

std::string movingLoadsHtml(const AppState& state) {
    const Writer writer{*state.book, state.truss};
    std::string html;
    for (int row = 0; row < static_cast<int>(state.truss.moving.size()); ++row) {
        html += movingLoadHtml(writer, row);
    }
    return html;
}

std::string settingsHtml(const AppState& state) {
    std::string html = headingHtml(*state.book, phrase::kHeadUnits) +
                       questionHtml(state, PageQuestion::ForceUnits) +
                       questionHtml(state, PageQuestion::LengthUnits) +
                       headingHtml(*state.book, phrase::kClassHeading);
    for (std::size_t i = 0; i < classQuestions().size(); ++i) {
        const int first = static_cast<int>(PageQuestion::FirstOfClass);
        html += questionHtml(state, static_cast<PageQuestion>(first + static_cast<int>(i)));
        html += i == kBeforeFigures ? questionHtml(state, PageQuestion::Figures) : "";
    }
    return html;
}

std::string checkSettingsHtml(const AppState& state) {
    const PhraseBook& book = *state.book;
    const CheckSettings& settings = state.truss.checks;
    std::string html = questionHtml(state, PageQuestion::Formula);
    html += settings.formula == ColumnFormula::En1993 ? questionHtml(state, PageQuestion::Curve)
                                                      : std::string();
    html += settings.formula == ColumnFormula::Aisc360 ? questionHtml(state, PageQuestion::Safety)
                                                       : std::string();
    html += tableBegin(sayPlain(book, phrase::kFactorsOfChecks),
                       {sayPlain(book, phrase::kCellName), sayPlain(book, phrase::kValueHeading)});
    for (const CheckFactor& factor : factorsOf(state.truss)) {
        const CheckField field{factor.number};
        const std::string name = sayPlain(book, factor.says);
        const std::string look = checkLook(state.truss, field);
        html += "<tr>" + inRowHead(escapeHtml(name)) +
                inCell(typedHtml(book, field, checkText(state.truss, field),
                                 look.empty() ? sayPlain(book, factor.hint) : look, name)) +
                "</tr>\n";
    }
    return html + kTableEnd;
}

} // namespace gusset
