#include "report/sheet/sheet_results.hpp"

#include "design/member_checks.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/sheet.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/check_text.hpp"
#include "report/results/envelope_text.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sheet/sheet_model.hpp"
#include "report/sheet/sheet_profiles.hpp"
#include "report/sheet/sheet_table.hpp"
#include "report/text/html.hpp"
#include "statics/moving/influence_report.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// How many columns of forces a page has room for, and of how many there is room for the envelope
// beside them.
constexpr std::size_t kColumnsUpright = 5;
constexpr std::size_t kColumnsAcross = 9;
constexpr std::size_t kBesideEnvelope = 4; // fewer
constexpr std::size_t kNarrowAcross = 8;   // columns that leave room for the reactions beside them

// Of a table of checks that has others beside it.
constexpr std::size_t kFewChecks = 20;

// One choice that a table has a column for, and the forces under it.
struct Column {
    LoadChoice choice;
    std::vector<ForceRow> forces{};
    std::vector<ReactionRow> reactions{};
};

// "the combinations snow and wind"; one by one where they are not of one kind.
RichLine namesOf(const PhraseBook& book, const std::vector<LoadChoice>& choices) {
    const auto are = [&](bool (*kind)(const LoadChoice&)) {
        return choices.size() > 1 && std::all_of(choices.begin(), choices.end(), kind);
    };
    const bool combinations = are(isCombination);
    const bool alike = combinations || are(isOneCase);
    std::vector<RichLine> names;
    for (const LoadChoice& choice : choices) {
        names.push_back(plainLine(alike ? choiceName(choice) : loadsName(book, choice)));
    }
    const RichLine list = listOf(book, names);
    if (!alike) {
        return list;
    }
    return say(book, combinations ? phrase::kUnderCombinations : phrase::kUnderCases,
               {{"names", list}});
}

std::string underLoads(const Writer& writer, const std::string& table,
                       const std::vector<LoadChoice>& choices) {
    return sayPlain(writer, phrase::kTableUnder,
                    {{"table", table}, {"loads", namesOf(writer, choices)}});
}

std::string inUnit(const Writer& writer, decltype("{unit}"_phrase) withUnit, Phrase<> plain,
                   const std::string& unit) {
    return unit.empty() ? sayPlain(writer, plain) : sayPlain(writer, withUnit, {{"unit", unit}});
}

std::vector<LoadChoice> choicesOf(const std::vector<Column>& columns) {
    std::vector<LoadChoice> choices;
    for (const Column& column : columns) {
        choices.push_back(column.choice);
    }
    return choices;
}

void addColumns(const PhraseBook& book, const std::vector<Column>& columns, TextTable& table) {
    for (const Column& column : columns) {
        table.head.push_back(plainLine(loadsHead(book, column.choice)));
        table.numeric.push_back(true);
    }
}

TextTable forcesTable(const Writer& writer, const std::vector<Column>& columns,
                      const std::vector<EnvelopeRow>& envelope) {
    const std::string unit = symbolOf(writer.truss.units.force);
    TextTable table{
        underLoads(writer,
                   inUnit(writer, phrase::kMemberForcesCaption, phrase::kMemberForcesSigned, unit),
                   choicesOf(columns)),
        {say(writer, phrase::kColumnMember)},
        {},
        {false}};
    addColumns(writer, columns, table);
    if (!envelope.empty()) {
        const RichLine by = say(writer, phrase::kCellBy);
        for (const Phrase<> side :
             {phrase::kColumnGreatestTension, phrase::kColumnGreatestCompression}) {
            table.head.push_back(say(writer, side));
            table.numeric.push_back(true);
            table.head.push_back(by);
            table.numeric.push_back(false);
        }
    }
    for (std::size_t i = 0; i < writer.truss.members.size(); ++i) {
        std::vector<Words> row{memberName(writer.truss, MemberId{static_cast<int>(i)})};
        for (const Column& column : columns) {
            row.push_back(column.forces[i].number);
        }
        if (!envelope.empty()) {
            row.insert(row.end(), {envelope[i].tension, envelope[i].tensionBy,
                                   envelope[i].compression, envelope[i].compressionBy});
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

TextTable reactionsTable(const Writer& writer, const std::vector<Column>& columns) {
    const bool letters = writer.truss.classSettings.axes == AxisNames::HV;
    const std::string unit = symbolOf(writer.truss.units.force);
    TextTable table{
        underLoads(writer,
                   inUnit(writer, phrase::kReactionsCaption, phrase::kReactionsCaptionPlain, unit),
                   choicesOf(columns)),
        {say(writer, phrase::kColumnJoint), say(writer, phrase::kColumnAxis)},
        {},
        {false, false}};
    addColumns(writer, columns, table);
    for (std::size_t i = 0; i < columns.front().reactions.size(); ++i) {
        const std::string& joint = columns.front().reactions[i].name;
        std::vector<Words> right{joint, letters ? "H" : "x"};
        std::vector<Words> up{joint, letters ? "V" : "y"};
        for (const Column& column : columns) {
            right.push_back(column.reactions[i].x);
            up.push_back(column.reactions[i].y);
        }
        table.rows.push_back(std::move(right));
        table.rows.push_back(std::move(up));
    }
    return table;
}

// The columns that have forces; `says` gets a sentence for each that has none.
std::vector<Column> solvedColumns(const Writer& writer, const SheetLoads& loads,
                                  std::vector<std::string>& says) {
    std::vector<Column> columns;
    for (const LoadChoice& choice : loads.tabled) {
        const Solution solution =
            choice == loads.shown ? loads.solution : solve(writer.truss, choice);
        if (solution.solved) {
            columns.push_back(
                {choice, forceRows(writer, solution), reactionRows(writer.truss, solution)});
            continue;
        }
        says.push_back(sayPlain(
            writer, phrase::kNoForcesUnder,
            {{"loads", loadsName(writer, choice)}, {"why", verdict(writer, solution).front()}}));
    }
    return columns;
}

std::vector<EnvelopeRow> envelopeOver(const Truss& truss, const SheetLoads& loads) {
    if (loads.enveloped.size() < 2) {
        return {};
    }
    const Outcome<Envelope> envelope = envelopeOf(truss, loads.enveloped);
    return envelope ? envelopeRows(truss, envelope.value()) : std::vector<EnvelopeRow>{};
}

// Length units: horizontally between the outermost supports, or, if all are above each other,
// vertically. 0 if there are not two apart.
double spanOf(const Truss& truss) {
    if (truss.supports.empty()) {
        return 0;
    }
    Extent box{truss.joints[truss.supports.front().joint.at()].at, {}};
    box.high = box.low;
    for (const Support& support : truss.supports) {
        const Vec2 at = truss.joints[support.joint.at()].at;
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    const Vec2 size = box.high - box.low;
    return size.x > 0 ? size.x : size.y;
}

// "L/2340", to three figures; empty for no displacement.
std::string partOfSpan(const Writer& writer, double span, double displacement) {
    if (displacement == 0 || !(span > 0)) {
        return {};
    }
    const Units& units = writer.truss.units;
    const double ratio =
        span * toMetre(units.length) / std::fabs(displacement * toMetre(units.displacement));
    return sayPlain(writer, phrase::kPartOfSpan,
                    {{"n", formatNumber(ratio, movementStyleOf(writer.truss, 0))}});
}

TextTable tableOfDisplacements(const Writer& writer, const SheetLoads& loads, double span) {
    const std::string unit = symbolOf(writer.truss.units.displacement);
    TextTable table{
        underLoads(writer,
                   inUnit(writer, phrase::kMovementCaption, phrase::kMovementCaptionPlain, unit),
                   {loads.shown}),
        {say(writer, phrase::kColumnJoint), plainLine("x"), plainLine("y"),
         say(writer, phrase::kTotal), say(writer, phrase::kColumnOfSpan)},
        {},
        {false, true, true, true, true}};
    for (const MovementRow& row : movementRows(writer.truss, loads.solution)) {
        table.rows.push_back({row.name, row.x, row.y, row.total, partOfSpan(writer, span, row.dy)});
    }
    return table;
}

// Of the standard that governs: EN 1993-1-1, AISC 360-16 or, for timber, EN 1995-1-1, which the
// sentences above name.
std::string clauseOf(const MemberCheck& check) {
    struct Clauses {
        const char* tension;
        const char* net;
        const char* crushing;
        const char* buckling;
    };
    constexpr Clauses kSteel{"6.2.3", "6.2.3", "6.2.4", "6.3.1"};
    constexpr Clauses kAisc{"D2(a)", "D2(b)", "E3", "E3"};
    constexpr Clauses kTimber{"6.1.2", "6.1.2", "6.1.4", "6.3.2"};
    if (!check.byTimber && check.formula == ColumnFormula::Euler) {
        return {};
    }
    const Clauses& clauses = check.byTimber                            ? kTimber
                             : check.formula == ColumnFormula::Aisc360 ? kAisc
                                                                       : kSteel;
    switch (check.governing) {
    case CheckKind::None:
        break;
    case CheckKind::Tension:
        return clauses.tension;
    case CheckKind::Net:
        return clauses.net;
    case CheckKind::Crushing:
        return clauses.crushing;
    case CheckKind::Buckling:
        return clauses.buckling;
    }
    return {};
}

TextTable withClauses(const Writer& writer, TextTable table, const MemberChecks& checks,
                      bool worst) {
    constexpr std::ptrdiff_t kAfterForce = 2;
    constexpr std::ptrdiff_t kAfterCheck = 3;
    const auto insert = [&](std::ptrdiff_t at, RichLine head, auto cellOf) {
        table.head.insert(table.head.begin() + at, std::move(head));
        table.numeric.insert(table.numeric.begin() + at, false);
        for (std::size_t i = 0; i < table.rows.size(); ++i) {
            table.rows[i].insert(table.rows[i].begin() + at, Words(cellOf(checks.members[i])));
        }
    };
    if (std::any_of(checks.members.begin(), checks.members.end(),
                    [](const MemberCheck& check) { return !clauseOf(check).empty(); })) {
        insert(kAfterCheck, say(writer, phrase::kColumnClause),
               [](const MemberCheck& check) { return clauseOf(check); });
    }
    if (worst) {
        insert(kAfterForce, say(writer, phrase::kCellBy), [&](const MemberCheck& check) {
            return check.force == 0 ? std::string{} : loadsHead(writer, check.choice);
        });
    }
    return table;
}

} // namespace

SheetLoads sheetLoads(const Truss& truss, const LoadChoice& shown) {
    SheetLoads loads{shown, solve(truss, shown), envelopeChoices(truss), {}};
    if (loads.enveloped.size() == 1 && !isCombination(loads.enveloped.front())) {
        loads.enveloped = {LoadChoice{}}; // the only case is every load
    }
    loads.tabled = loads.enveloped;
    if (std::find(loads.tabled.begin(), loads.tabled.end(), shown) == loads.tabled.end()) {
        loads.tabled.insert(loads.tabled.begin(), shown);
    }
    return loads;
}

SheetForces sheetForces(const Writer& writer, const SheetLoads& loads, bool across) {
    SheetForces forces{standingSentences(writer, relianceOf(loads.solution)), {}};
    const std::vector<Column> columns = solvedColumns(writer, loads, forces.says);
    const std::vector<EnvelopeRow> envelope = envelopeOver(writer.truss, loads);
    const std::size_t room = across ? kColumnsAcross : kColumnsUpright;
    const bool together = columns.size() + kBesideEnvelope <= room + 2;
    for (std::size_t from = 0; from < columns.size(); from += room) {
        const auto begin = columns.begin() + static_cast<std::ptrdiff_t>(from);
        const auto end =
            columns.begin() + static_cast<std::ptrdiff_t>(std::min(columns.size(), from + room));
        const std::vector<Column> part(begin, end);
        forces.tables.push_back(
            forcesTable(writer, part, together ? envelope : std::vector<EnvelopeRow>{}));
        forces.tables.push_back(reactionsTable(writer, part));
    }
    if (!together && !envelope.empty()) {
        forces.tables.push_back(envelopeTable(
            writer, underLoads(writer, sayPlain(writer, phrase::kEnvelopeCaption), loads.enveloped),
            envelope));
    }
    return forces;
}

std::vector<TextTable> movingForceTables(const Writer& writer) {
    std::vector<TextTable> tables;
    for (const MovingLoad& load : writer.truss.moving) {
        const auto analysis = analysePath(writer.truss, load.path);
        if (analysis) {
            tables.push_back(envelopeTable(
                writer, captionUnder(writer, load.id),
                movingRows(writer, load.path, membersUnder(writer.truss, analysis.value(), load))));
        }
    }
    return tables;
}

TextTable displacementsTable(const Writer& writer, const SheetLoads& loads) {
    return tableOfDisplacements(writer, loads, spanOf(writer.truss));
}

std::string forcesHtml(const Writer& writer, const SheetLoads& loads, bool across) {
    const SheetForces forces = sheetForces(writer, loads, across);
    const std::vector<TextTable> moving = movingForceTables(writer);
    std::string html =
        paragraphsHtml(forces.says) +
        sheetTablesHtml(writer, forces.tables, across ? kNarrowAcross : kNarrowColumns) +
        sheetTablesHtml(writer, moving);
    if (!moving.empty()) {
        html += paragraphsHtml({sayPlain(writer, phrase::kAxleExplained)});
    }
    return html;
}

std::string displacementsHtml(const Writer& writer, const SheetLoads& loads) {
    const double span = spanOf(writer.truss);
    std::vector<std::string> says = movementLines(writer, loads.solution);
    if (loads.solution.displaced && span > 0) {
        says.push_back(
            sayPlain(writer, phrase::kSpanIs, {{"length", sheetLength(writer.truss, span)}}));
    }
    return paragraphsHtml(says) + sheetTableHtml(writer, displacementsTable(writer, loads));
}

SheetChecks sheetChecks(const Writer& writer, const SheetLoads& loads) {
    CheckedLoads checked{{loads.shown}};
    MemberChecks checks;
    if (loads.enveloped.size() < 2) {
        checks = checkMembers(writer.truss, loads.solution, loads.shown);
    } else {
        checked = {loads.enveloped, true};
        if (const auto envelope = envelopeOf(writer.truss, loads.enveloped)) {
            checks = checkMembers(writer.truss, envelope.value(), loads.enveloped);
        }
    }
    SheetChecks made{checkLines(writer, checks, checked),
                     withClauses(writer, checkTable(writer, checks), checks, checked.worst)};
    made.table.caption = underLoads(writer, made.table.caption, checked.choices);
    if (std::all_of(checks.members.begin(), checks.members.end(),
                    [](const MemberCheck& check) { return check.governing == CheckKind::None; })) {
        made.table.rows.clear(); // the sentences say why none is checked
    }
    return made;
}

std::string checksPartHtml(const Writer& writer, const SheetLoads& loads, bool across) {
    const SheetChecks checks = sheetChecks(writer, loads);
    const std::string table = sheetTableHtml(writer, checks.table);
    const std::string profiles = sheetTableHtml(writer, profilesTable(writer));
    const std::string caution = "<div class=\"caution\">\n" + cautionHtml(writer) + "</div>\n";
    // A table that may go on over pages has the width to itself.
    const bool together = across && checks.table.rows.size() <= kFewChecks;
    return paragraphsHtml(checks.says) + (together ? "" : table) + "<div class=\"checked\">\n" +
           (together ? table + "<div>\n" + profiles + caution + "</div>\n" : profiles + caution) +
           "</div>\n";
}

} // namespace gusset
