#include "report/results/check_text.hpp"

#include "core/csv.hpp"
#include "core/number.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/check_words.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr int kMostDecimals = 6; // for a use close to 1

std::string slendernessText(const Truss& truss, double slenderness) {
    return slenderness == 0
               ? std::string{}
               : formatNumber(slenderness, {.form = NumberForm::Decimals,
                                            .digits = 0,
                                            .decimalSign = truss.classSettings.decimalSign});
}

void addRemarksOnMake(const Writer& writer, const MemberCheck& check,
                      std::vector<RichLine>& remarks) {
    if (isLocallySlender(check)) {
        remarks.push_back(say(writer, check.formula == ColumnFormula::Aisc360
                                          ? phrase::kRemarkSlenderElement
                                          : phrase::kRemarkClass4));
    }
    if (check.packing == Packing::Unknown) {
        remarks.push_back(say(writer, phrase::kRemarkPackingUnknown));
    }
    if (check.packing == Packing::Far) {
        remarks.push_back(say(writer, phrase::kRemarkPackingFar));
    }
    if (check.reverses) {
        remarks.push_back(say(writer, phrase::kRemarkReverses));
    }
}

std::string remarkOf(const Writer& writer, const MemberCheck& check) {
    std::vector<RichLine> remarks;
    if (!isChecked(check)) {
        remarks.push_back(
            say(writer, phrase::kRemarkLacks, {{"what", lacksText(writer, check.lacks)}}));
    }
    if (isOver(check)) {
        remarks.push_back(say(writer, phrase::kRemarkOver));
    }
    if (check.tooSlender) {
        remarks.push_back(say(writer, phrase::kRemarkSlender,
                              {{"limit", givenNumber(writer.truss, check.limit)}}));
    }
    addRemarksOnMake(writer, check, remarks);
    RichLine all;
    for (const RichLine& remark : remarks) {
        all = all.empty() ? remark : say(writer, phrase::kRemarksBoth, {{"a", all}, {"b", remark}});
    }
    return plainText(all);
}

// "0" for a member that carries no force, empty where the use is not known.
std::string useOf(const Truss& truss, const MemberCheck& check) {
    if (!isChecked(check)) {
        return {};
    }
    return check.governing == CheckKind::None ? "0" : useText(truss, check.use, useErrorOf(check));
}

// For files: the same in every language.
const char* fileWordOf(CheckKind kind) {
    constexpr std::array kWords{"", "tension", "crushing", "buckling", "net"};
    return kWords[static_cast<std::size_t>(kind)];
}

std::string csvRow(const Writer& writer, const MemberCheck& check) {
    const double newtons = toNewton(writer.truss.units.force);
    const bool checked = isChecked(check);
    const bool loaded = checked && check.governing != CheckKind::None;
    return "member," + csvTextCell(memberName(writer.truss, check.member)) + ',' +
           fileNumber(check.force / newtons, lastPlaceOfForces(writer.truss, check.error)) + ',' +
           fileWordOf(check.governing) + ',' +
           (loaded ? fileNumber(check.capacity / newtons) : "") + ',' +
           (checked ? fileNumber(check.use, lastPlaceOf(useErrorOf(check), 1)) : "") + ',' +
           (check.slenderness > 0 ? fileNumber(check.slenderness) : "") + ',' +
           (check.limit > 0 ? fileNumber(check.limit) : "") + ',' +
           csvTextCell(remarkOf(writer, check)) + ',' + symbolOf(writer.truss.units.force) + "\r\n";
}

} // namespace

std::string curveName(BucklingCurve curve) {
    constexpr std::array kNames{"a\u2080", "a", "b", "c", "d"};
    return kNames[static_cast<std::size_t>(curve)];
}

std::string checkWord(const PhraseBook& book, CheckKind kind) {
    return sayPlain(book, kind == CheckKind::Buckling ? phrase::kWordBuckling
                          : kind == CheckKind::Net    ? phrase::kWordNet
                                                      : phrase::kWordStrength);
}

std::string useText(const Truss& truss, double use, double error) {
    NumberStyle style{.form = NumberForm::Decimals,
                      .digits = 2,
                      .decimalSign = truss.classSettings.decimalSign,
                      .lastPlace = lastPlaceOf(error, 1)};
    while (use > 1 && style.digits < kMostDecimals && roundedTo(use, style) <= 1) {
        ++style.digits;
    }
    return formatNumber(use, style);
}

std::string useLabel(const Writer& writer, const MemberCheck& check) {
    const std::string use = useOf(writer.truss, check);
    if (use.empty()) {
        return sayPlain(writer, phrase::kBoardUnknown);
    }
    if (isOver(check)) {
        return sayPlain(writer, phrase::kBoardUseOver, {{"use", use}});
    }
    return check.tooSlender
               ? sayPlain(writer, phrase::kBoardUseSlender,
                          {{"use", use}, {"limit", givenNumber(writer.truss, check.limit)}})
               : use;
}

std::string stressOf(const Truss& truss, const Solution& solution, MemberId member) {
    if (!solution.solved || std::isnan(solution.stresses[member.at()])) {
        return {};
    }
    const bool zero = isZero(solution, solution.forces[member.at()]);
    const double stress =
        zero ? 0 : std::fabs(solution.stresses[member.at()]) / toPascal(truss.units.stress);
    const std::string unit = symbolOf(truss.units.stress);
    const NumberStyle style{NumberForm::Significant, 3, truss.classSettings.decimalSign, false};
    return withUnit(formatNumber(stress, style), unit);
}

std::vector<CheckRow> checkRows(const Writer& writer, const MemberChecks& checks) {
    std::vector<CheckRow> rows;
    const NumberStyle style = numberStyleOf(writer.truss);
    const NumberStyle ofForces = forceStyleOf(writer.truss, checks.reliance);
    const double newtons = toNewton(writer.truss.units.force);
    for (const MemberCheck& check : checks.members) {
        CheckRow row;
        row.member = check.member;
        row.name = memberName(writer.truss, check.member);
        row.force = check.force == 0 ? "0" : formatNumber(check.force / newtons, ofForces);
        if (check.governing != CheckKind::None) {
            row.check = checkWord(writer, check.governing);
            row.allowed = formatNumber(check.capacity / newtons, style);
        }
        row.use = useOf(writer.truss, check);
        row.slenderness = slendernessText(writer.truss, check.slenderness);
        row.remark = remarkOf(writer, check);
        row.over = isOver(check);
        row.faulty = row.over || check.tooSlender || !isChecked(check) || isLocallySlender(check) ||
                     check.packing == Packing::Far;
        rows.push_back(std::move(row));
    }
    return rows;
}

TextTable checkTable(const Writer& writer, const MemberChecks& checks) {
    const std::string unit = symbolOf(writer.truss.units.force);
    TextTable table{
        sayPlain(writer, phrase::kCheckCaption),
        {say(writer, phrase::kColumnMember),
         headed(writer, say(writer, phrase::kColumnForce), unit), say(writer, phrase::kColumnCheck),
         headed(writer, say(writer, phrase::kColumnAllowed), unit), say(writer, phrase::kColumnUse),
         say(writer, phrase::kColumnSlenderness), say(writer, phrase::kColumnRemark)},
        {},
        {false, true, false, true, true, true, false}};
    for (const CheckRow& row : checkRows(writer, checks)) {
        table.rows.push_back(
            {row.name, row.force, row.check, row.allowed, row.use, row.slenderness, row.remark});
    }
    return table;
}

std::vector<std::string> cautionLines(const PhraseBook& book) {
    return {sayPlain(book, phrase::kCautionPreliminary), sayPlain(book, phrase::kCautionLeftOut),
            sayPlain(book, phrase::kCautionDecide)};
}

std::string cautionText(const PhraseBook& book) {
    std::string text = "\n";
    for (const std::string& line : cautionLines(book)) {
        text += line + '\n';
    }
    return text;
}

std::string cautionHtml(const PhraseBook& book) {
    std::string html;
    for (const std::string& line : cautionLines(book)) {
        html += "<p><strong>" + escapeHtml(line) + "</strong></p>\n";
    }
    return html;
}

std::string checksText(const Writer& writer, const MemberChecks& checks,
                       const CheckedLoads& loads) {
    std::string text;
    for (const std::string& line : checkLines(writer, checks, loads)) {
        text += line + '\n';
    }
    if (!checks.members.empty()) {
        text += '\n' + tableText(checkTable(writer, checks));
    }
    return text + cautionText(writer);
}

std::string checksHtml(const Writer& writer, const MemberChecks& checks,
                       const CheckedLoads& loads) {
    std::string html = paragraphsHtml(checkLines(writer, checks, loads));
    if (!checks.members.empty()) {
        html += tableHtml(checkTable(writer, checks));
    }
    return html + cautionHtml(writer);
}

std::string checksCsv(const Writer& writer, const MemberChecks& checks) {
    std::string text = csvHead("kind,name,force,check,allowed,use,slenderness,limit,remark,unit");
    for (const MemberCheck& check : checks.members) {
        text += csvRow(writer, check);
    }
    if (const int figures = figuresLeft(checks.reliance); figures < kFileDigits) {
        text += "figures," + std::to_string(figures) + ",,,,,,,,\r\n";
    }
    for (const std::string& line : cautionLines(writer)) {
        text += "caution," + csvTextCell(line) + ",,,,,,,,\r\n";
    }
    return text;
}

} // namespace gusset
