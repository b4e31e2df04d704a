#include "report/results/results_text.hpp"

#include "phrases/results/tables.hpp"
#include "report/text/html.hpp"

#include "core/csv.hpp"
#include "core/number.hpp"
#include "core/utf8.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/table.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

struct SenseNames {
    Phrase<> letter;
    Phrase<> word;
    const char* inFiles; // the same in every language
};
SenseNames namesOf(Sense sense) {
    switch (sense) {
    case Sense::Tension:
        return {phrase::kLetterTension, phrase::kWordTension, "T"};
    case Sense::Compression:
        return {phrase::kLetterCompression, phrase::kWordCompression, "C"};
    case Sense::Zero:
        break;
    }
    return {phrase::kLetterZero, phrase::kWordZero, "0"};
}

double inForceUnits(const Truss& truss, const Solution& solution, double newton) {
    return isZero(solution, newton) ? 0 : newton / toNewton(truss.units.force);
}

std::string captionOf(const Writer& writer, decltype("{unit}"_phrase) withUnit, Phrase<> plain) {
    const std::string unit = symbolOf(writer.truss.units.force);
    return unit.empty() ? sayPlain(writer, plain) : sayPlain(writer, withUnit, {{"unit", unit}});
}

TextTable forceTable(const Writer& writer, const Solution& solution) {
    TextTable table{captionOf(writer, phrase::kMemberForcesCaption, phrase::kMemberForcesSigned),
                    {say(writer, phrase::kColumnMember), say(writer, phrase::kColumnForce),
                     say(writer, phrase::kColumnSense)},
                    {},
                    {false, true, false}};
    for (const ForceRow& row : forceRows(writer, solution)) {
        table.rows.push_back({row.name, row.number, row.word});
    }
    return table;
}

TextTable reactionTable(const Writer& writer, const Solution& solution) {
    const bool letters = writer.truss.classSettings.axes == AxisNames::HV;
    TextTable table{captionOf(writer, phrase::kReactionsCaption, phrase::kReactionsCaptionPlain),
                    {say(writer, phrase::kColumnJoint), plainLine(letters ? "H" : "x"),
                     plainLine(letters ? "V" : "y")},
                    {},
                    {false, true, true}};
    for (const ReactionRow& row : reactionRows(writer.truss, solution)) {
        table.rows.push_back({row.name, row.x, row.y});
    }
    return table;
}

std::vector<TextTable> tablesOf(const Writer& writer, const Solution& solution) {
    if (!solution.solved) {
        return {};
    }
    std::vector<TextTable> tables{forceTable(writer, solution), reactionTable(writer, solution)};
    for (TextTable& table : movementTables(writer, solution)) {
        tables.push_back(std::move(table));
    }
    return tables;
}

} // namespace

NumberStyle numberStyleOf(const Truss& truss) {
    return {.form = truss.classSettings.form,
            .digits = truss.classSettings.digits,
            .decimalSign = truss.classSettings.decimalSign};
}

NumberStyle drawingStyleOf(const Truss& truss) {
    NumberStyle style = numberStyleOf(truss);
    style.keepZeros = false;
    return style;
}

NumberStyle typedStyleOf(const Truss& truss) {
    return {NumberForm::Significant, 6, truss.classSettings.decimalSign, false};
}

NumberStyle roughStyleOf(const Truss& truss) {
    return {.form = NumberForm::Significant,
            .digits = 2,
            .decimalSign = truss.classSettings.decimalSign};
}

std::string forceText(const Truss& truss, double force, const NumberStyle& style) {
    const std::string unit = symbolOf(truss.units.force);
    return withUnit(formatNumber(force, style), unit);
}

std::vector<ForceRow> forceRows(const Writer& writer, const Solution& solution) {
    std::vector<ForceRow> rows;
    if (!solution.solved) {
        return rows;
    }
    const NumberStyle style = forceStyleOf(writer.truss, solution);
    for (std::size_t i = 0; i < writer.truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        const double force = inForceUnits(writer.truss, solution, solution.forces[i]);
        const Sense sense = senseOf(solution, member);
        const SenseNames names = namesOf(sense);
        rows.push_back({member, memberName(writer.truss, member), force, formatNumber(force, style),
                        formatNumber(std::fabs(force), style), sense,
                        sayPlain(writer, names.letter), sayPlain(writer, names.word)});
    }
    return rows;
}

std::vector<ReactionRow> reactionRows(const Truss& truss, const Solution& solution) {
    std::vector<ReactionRow> rows;
    if (!solution.solved) {
        return rows;
    }
    const NumberStyle style = forceStyleOf(truss, solution);
    std::vector<bool> supported(truss.joints.size());
    for (const Support& support : truss.supports) {
        supported[support.joint.at()] = true;
    }
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        const JointId joint{static_cast<int>(i)};
        if (!supported[i]) {
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

std::string resultsText(const Writer& writer, const Solution& solution) {
    std::string text;
    for (const std::string& line : verdict(writer, solution)) {
        text += line + '\n';
    }
    for (const TextTable& table : tablesOf(writer, solution)) {
        text += '\n' + tableText(table);
    }
    if (solution.solved) {
        text += '\n' + residualSentence(writer, solution) + '\n';
    }
    if (!solution.notes.empty()) {
        text += '\n' + sayPlain(writer, phrase::kNotesHeading) + '\n';
        for (const Issue& note : solution.notes) {
            text += "  " + said(writer.book, note.says) + '\n';
        }
    }
    return text;
}

std::string resultsCsv(const Truss& truss, const Solution& solution, const ExactSolution& exact) {
    const std::string unit = symbolOf(truss.units.force);
    std::string text = csvHead(exact.solved ? "kind,name,force,sense,fx,fy,unit,exact"
                                            : "kind,name,force,sense,fx,fy,unit");
    const int lastPlace = forceStyleOf(truss, solution).lastPlace;
    const auto end = [&](const std::string& surd) {
        return unit + (exact.solved ? "," + csvTextCell(surd) : "") + "\r\n";
    };
    for (std::size_t i = 0; solution.solved && i < truss.members.size(); ++i) {
        const MemberId member{static_cast<int>(i)};
        text += "member," + csvTextCell(memberName(truss, member)) + ',' +
                fileNumber(inForceUnits(truss, solution, solution.forces[i]), lastPlace) + ',' +
                namesOf(senseOf(solution, member)).inFiles + ",,," +
                end(exact.solved ? textOf(exact.forces[i]) : "");
    }
    for (const ReactionRow& row : reactionRows(truss, solution)) {
        text += "reaction," + csvTextCell(row.name) + ",,," + fileNumber(row.fx, lastPlace) + ',' +
                fileNumber(row.fy, lastPlace) + ',' + end("");
    }
    if (solution.solved && figuresLeft(solution) < kFileDigits) {
        text += "figures," + std::to_string(figuresLeft(solution)) + ",,,,," +
                (exact.solved ? "," : "") + "\r\n";
    }
    return text;
}

std::string resultsHtml(const Writer& writer, const Solution& solution, const std::string& under) {
    std::string html = paragraphsHtml(verdict(writer, solution));
    for (TextTable& table : tablesOf(writer, solution)) {
        if (!under.empty()) {
            table.caption = sayPlain(writer, phrase::kCaptionUnder,
                                     {{"caption", table.caption}, {"loads", under}});
        }
        html += tableHtml(table);
    }
    if (solution.solved) {
        html += "<p>" + escapeHtml(residualSentence(writer, solution)) + "</p>\n";
    }
    if (!solution.notes.empty()) {
        html += "<ul>\n";
        for (const Issue& note : solution.notes) {
            html += "<li>" + escapeHtml(said(writer.book, note.says)) + "</li>\n";
        }
        html += "</ul>\n";
    }
    return html;
}

} // namespace gusset
