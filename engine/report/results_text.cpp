#include "report/results_text.hpp"

#include "report/movement_text.hpp"
#include "report/phrases.hpp"
#include "report/table.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

constexpr const char* kThinSpace = "\u2009";
constexpr int kFileDigits = 12; // significant, in files

std::string letterOf(Sense sense) {
    switch (sense) {
    case Sense::Tension:
        return "T";
    case Sense::Compression:
        return "C";
    case Sense::Zero:
        break;
    }
    return "0";
}

Phrase wordOf(Sense sense) {
    switch (sense) {
    case Sense::Tension:
        return Phrase::WordTension;
    case Sense::Compression:
        return Phrase::WordCompression;
    case Sense::Zero:
        break;
    }
    return Phrase::WordZero;
}

double inForceUnits(const Truss& truss, const Solution& solution, double newton) {
    return isZero(solution, newton) ? 0 : newton / toNewton(truss.units.force);
}

std::string captionOf(const Truss& truss, Phrase withUnit, Phrase plain) {
    const std::string unit = symbolOf(truss.units.force);
    return unit.empty() ? sayPlain(englishPhrases(), plain)
                        : sayPlain(englishPhrases(), withUnit, {{"unit", plainLine(unit)}});
}

TextTable forceTable(const Truss& truss, const Solution& solution) {
    const PhraseBook& book = englishPhrases();
    TextTable table{captionOf(truss, Phrase::MemberForcesCaption, Phrase::MemberForcesCaptionPlain),
                    {say(book, Phrase::ColumnMember), say(book, Phrase::ColumnForce),
                     say(book, Phrase::ColumnSense)},
                    {},
                    {false, true, false}};
    for (const ForceRow& row : forceRows(truss, solution)) {
        table.rows.push_back({row.name, formatNumber(row.force, numberStyleOf(truss)), row.word});
    }
    return table;
}

TextTable reactionTable(const Truss& truss, const Solution& solution) {
    const bool letters = truss.classSettings.axes == AxisNames::HV;
    TextTable table{captionOf(truss, Phrase::ReactionsCaption, Phrase::ReactionsCaptionPlain),
                    {say(englishPhrases(), Phrase::ColumnJoint), plainLine(letters ? "H" : "x"),
                     plainLine(letters ? "V" : "y")},
                    {},
                    {false, true, true}};
    for (const ReactionRow& row : reactionRows(truss, solution)) {
        table.rows.push_back({row.name, row.x, row.y});
    }
    return table;
}

std::vector<TextTable> tablesOf(const Truss& truss, const Solution& solution) {
    if (!solution.solved) {
        return {};
    }
    std::vector<TextTable> tables{forceTable(truss, solution), reactionTable(truss, solution)};
    for (TextTable& table : movementTables(truss, solution)) {
        tables.push_back(std::move(table));
    }
    return tables;
}

std::string csvNumber(double value) { return significantNumber(value, kFileDigits); }

} // namespace

NumberStyle numberStyleOf(const Truss& truss) {
    return {.form = truss.classSettings.form, .digits = truss.classSettings.digits};
}

NumberStyle drawingStyleOf(const Truss& truss) {
    NumberStyle style = numberStyleOf(truss);
    style.keepZeros = false;
    return style;
}

std::string forceText(const Truss& truss, double force, const NumberStyle& style) {
    const std::string unit = symbolOf(truss.units.force);
    return formatNumber(force, style) + (unit.empty() ? unit : kThinSpace + unit);
}

std::vector<ForceRow> forceRows(const Truss& truss, const Solution& solution) {
    std::vector<ForceRow> rows;
    if (!solution.solved) {
        return rows;
    }
    const NumberStyle style = numberStyleOf(truss);
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double force = inForceUnits(truss, solution, solution.forces[i]);
        const Sense sense = senseOf(solution, member);
        rows.push_back({member, memberName(truss, member), force,
                        formatNumber(std::fabs(force), style), letterOf(sense),
                        sayPlain(englishPhrases(), wordOf(sense))});
    }
    return rows;
}

std::vector<ReactionRow> reactionRows(const Truss& truss, const Solution& solution) {
    std::vector<ReactionRow> rows;
    if (!solution.solved) {
        return rows;
    }
    const NumberStyle style = numberStyleOf(truss);
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (std::none_of(truss.supports.begin(), truss.supports.end(),
                         [&](const Support& support) { return support.joint == joint; })) {
            continue;
        }
        const double fx = inForceUnits(truss, solution, solution.jointReactions[i].x);
        const double fy = inForceUnits(truss, solution, solution.jointReactions[i].y);
        rows.push_back({joint, truss.joints[i].label, fx, fy, formatNumber(fx, style),
                        formatNumber(fy, style)});
    }
    return rows;
}

std::string countingLine(const Solution& solution) {
    const Counting& count = solution.counting;
    const int sum = count.members + count.reactions;
    const int need = 2 * count.joints;
    const std::string start = "m + r = " + std::to_string(count.members) + " + " +
                              std::to_string(count.reactions) + " = " + std::to_string(sum);
    if (sum == need) {
        return start + " = 2j";
    }
    return start + (sum < need ? " < " : " > ") + std::to_string(need) + " = 2j";
}

std::string resultsText(const Truss& truss, const Solution& solution) {
    std::string text;
    for (const std::string& line : verdict(truss, solution)) {
        text += line + '\n';
    }
    for (const TextTable& table : tablesOf(truss, solution)) {
        text += '\n' + tableText(table);
    }
    if (!solution.notes.empty()) {
        text += '\n' + sayPlain(englishPhrases(), Phrase::NotesHeading) + '\n';
        for (const Issue& note : solution.notes) {
            text += "  " + note.says + '\n';
        }
    }
    return text;
}

std::string resultsCsv(const Truss& truss, const Solution& solution) {
    const std::string unit = symbolOf(truss.units.force);
    std::string text = "kind,name,force,sense,fx,fy,unit\r\n";
    for (const ForceRow& row : forceRows(truss, solution)) {
        text += "member," + csvTextCell(row.name) + ',' + csvNumber(row.force) + ',' + row.letter +
                ",,," + unit + "\r\n";
    }
    for (const ReactionRow& row : reactionRows(truss, solution)) {
        text += "reaction," + csvTextCell(row.name) + ",,," + csvNumber(row.fx) + ',' +
                csvNumber(row.fy) + ',' + unit + "\r\n";
    }
    return text;
}

std::string resultsHtml(const Truss& truss, const Solution& solution) {
    std::string html;
    for (const std::string& line : verdict(truss, solution)) {
        html += "<p>" + escapeHtml(line) + "</p>\n";
    }
    for (const TextTable& table : tablesOf(truss, solution)) {
        html += tableHtml(table);
    }
    if (!solution.notes.empty()) {
        html += "<ul>\n";
        for (const Issue& note : solution.notes) {
            html += "<li>" + escapeHtml(note.says) + "</li>\n";
        }
        html += "</ul>\n";
    }
    return html;
}

std::string escapeHtml(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (const char c : text) {
        switch (c) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += c;
        }
    }
    return out;
}

std::string csvTextCell(std::string_view text) {
    // OWASP ASVS 4.0.3, 5.3.10: a spreadsheet runs a cell that starts with one of these.
    const bool runs = !text.empty() && std::string_view("=+-@\t\r").find(text[0]) != text.npos;
    std::string cell = runs ? "'" : "";
    cell += text;
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
        return cell;
    }
    std::string quoted = "\"";
    for (const char c : cell) {
        quoted += c == '"' ? "\"\"" : std::string(1, c);
    }
    return quoted + '"';
}

} // namespace gusset
