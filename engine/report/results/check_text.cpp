#include "report/results/check_text.hpp"

#include "core/csv.hpp"
#include "core/number.hpp"
#include "phrases/results/checks.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/text/html.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

constexpr std::size_t kMostMembers = 12; // members in a sentence
constexpr int kMostDecimals = 6;         // for a use close to 1

RichLine given(const Truss& truss, double value) {
    return plainLine(formatNumber(value, typedStyleOf(truss)));
}

std::string slendernessText(const Truss& truss, double slenderness) {
    return slenderness == 0
               ? std::string{}
               : formatNumber(slenderness, {.form = NumberForm::Decimals,
                                            .digits = 0,
                                            .decimalSign = truss.classSettings.decimalSign});
}

RichLine wordOf(const PhraseBook& book, Lack lack) {
    switch (lack) {
    case Lack::Area:
        return say(book, phrase::kLackArea);
    case Lack::Strength:
        return say(book, phrase::kWordStrength);
    case Lack::Modulus:
        return say(book, phrase::kLackModulus);
    case Lack::Radius:
        return say(book, phrase::kLackRadius);
    case Lack::Force:
        break;
    }
    return say(book, phrase::kLackForce);
}

RichLine lacksOf(const PhraseBook& book, const std::vector<Lack>& lacks) {
    std::vector<RichLine> words;
    for (const Lack lack : lacks) {
        words.push_back(wordOf(book, lack));
    }
    return listOf(book, words);
}

std::string remarkOf(const Writer& writer, const MemberCheck& check) {
    std::vector<RichLine> remarks;
    if (!isChecked(check)) {
        remarks.push_back(
            say(writer, phrase::kRemarkLacks, {{"what", lacksOf(writer, check.lacks)}}));
    }
    if (isOver(check)) {
        remarks.push_back(say(writer, phrase::kRemarkOver));
    }
    if (check.tooSlender) {
        remarks.push_back(
            say(writer, phrase::kRemarkSlender, {{"limit", given(writer.truss, check.limit)}}));
    }
    if (remarks.size() == 2) {
        return sayPlain(writer, phrase::kRemarksBoth, {{"a", remarks[0]}, {"b", remarks[1]}});
    }
    return remarks.empty() ? std::string{} : plainText(remarks.front());
}

// The names of the members for which `isSo` holds; only the first dozen if there are many.
template <class IsSo>
RichLine membersWhere(const Writer& writer, const MemberChecks& checks, IsSo isSo) {
    std::vector<RichLine> names;
    std::size_t more = 0;
    for (const MemberCheck& check : checks.members) {
        if (isSo(check) && names.size() < kMostMembers) {
            names.push_back(plainLine(memberName(writer.truss, check.member)));
        } else if (isSo(check)) {
            ++more;
        }
    }
    if (more == 0) {
        return listOf(writer, names);
    }
    RichLine list;
    for (const RichLine& name : names) {
        list = list.empty() ? name : say(writer, phrase::kListMore, {{"a", list}, {"b", name}});
    }
    return say(writer, phrase::kListAndMore, {{"list", list}, {"n", more}});
}

class CheckLines {
public:
    CheckLines(const Writer& writer, const MemberChecks& checks)
        : writer_(writer), checks_(checks) {}

    void sayLoads(const CheckedLoads& loads) {
        if (loads.worst) {
            std::vector<RichLine> names;
            for (const LoadChoice& choice : loads.choices) {
                names.push_back(plainLine(choiceName(choice)));
            }
            add(phrase::kCheckOverChoices, {{"choices", listOf(writer_, names)}});
        } else if (const std::string name = choiceName(loads.choices.front()); !name.empty()) {
            add(phrase::kCheckUnder, {{"loads", name}});
        } else {
            add(phrase::kCheckUnderAll);
        }
    }

    void sayFormula() {
        const CheckSettings& it = writer_.truss.checks;
        const RichLine k = number(it.effectiveLength);
        switch (it.formula) {
        case ColumnFormula::Euler:
            add(phrase::kCheckByEuler, {{"strength", number(it.strengthFactor)},
                                        {"euler", number(it.eulerFactor)},
                                        {"k", k}});
            return;
        case ColumnFormula::En1993:
            add(phrase::kCheckByEn1993, {{"curve", curveName(it.curve)},
                                         {"m0", number(it.gammaM0)},
                                         {"m1", number(it.gammaM1)},
                                         {"k", k}});
            break;
        case ColumnFormula::Aisc360:
            if (it.safety == AiscSafety::Resistance) {
                add(phrase::kCheckByPhi, {{"phi", number(it.phi)}, {"k", k}});
            } else {
                add(phrase::kCheckByOmega, {{"omega", number(it.omega)}, {"k", k}});
            }
            break;
        }
        if (const RichLine others = membersWhere(writer_, checks_, isNotSteel); !others.empty()) {
            add(phrase::kCheckNotSteel, {{"strength", number(it.strengthFactor)},
                                         {"euler", number(it.eulerFactor)},
                                         {"members", others}});
        }
    }

    void sayVerdict() {
        if (checks_.worst.valid()) {
            const MemberCheck& worst = checks_.members[checks_.worst.at()];
            add(phrase::kCheckWorst, {{"member", memberName(writer_.truss, worst.member)},
                                      {"use", useText(writer_.truss, worst.use, useErrorOf(worst))},
                                      {"check", checkWord(writer_, worst.governing)}});
        }
        sayOfThose(phrase::kCheckOver, isOver);
        sayOfThose(phrase::kCheckSlender,
                   [](const MemberCheck& check) { return check.tooSlender; });
        if (checks_.over == 0 && checks_.slender == 0 && checks_.unchecked == 0) {
            add(phrase::kCheckHolds);
        }
    }

    void sayReliance() {
        for (const auto& lines : {standingSentences(writer_, checks_.reliance),
                                  trustSentences(writer_, checks_.reliance)}) {
            lines_.insert(lines_.end(), lines.begin(), lines.end());
        }
    }

    // Members that lack the same data are named together.
    void sayLacks() {
        std::vector<std::vector<Lack>> told;
        for (const MemberCheck& check : checks_.members) {
            const std::vector<Lack>& lacks = check.lacks;
            if (lacks.empty() || std::find(told.begin(), told.end(), lacks) != told.end()) {
                continue;
            }
            told.push_back(lacks);
            add(phrase::kCheckLacks,
                {{"what", lacksOf(writer_, lacks)},
                 {"members", membersWhere(writer_, checks_, [&](const MemberCheck& other) {
                      return other.lacks == lacks;
                  })}});
        }
    }

    void sayBends() {
        sayOfThose(phrase::kCheckBends, [](const MemberCheck& check) { return check.bends; });
    }

    [[nodiscard]] std::vector<std::string> take() { return std::move(lines_); }

private:
    void add(Phrase<> phrase) { lines_.push_back(sayPlain(writer_, phrase)); }
    template <PartName... Names>
    void add(Phrase<Names...> phrase, const PartsOf<Words, Names...>& parts) {
        lines_.push_back(sayPlain(writer_, phrase, parts));
    }

    template <class IsSo>
    void sayOfThose(decltype("{members}"_phrase) phrase, IsSo isSo) {
        if (const RichLine members = membersWhere(writer_, checks_, isSo); !members.empty()) {
            add(phrase, {{"members", members}});
        }
    }

    [[nodiscard]] RichLine number(double value) const { return given(writer_.truss, value); }

    static bool isNotSteel(const MemberCheck& check) {
        return check.make.area && !check.make.steel;
    }

    const Writer writer_;
    const MemberChecks& checks_;
    std::vector<std::string> lines_;
};

// "0" for a member that carries no force, empty where the use is not known.
std::string useOf(const Truss& truss, const MemberCheck& check) {
    if (!isChecked(check)) {
        return {};
    }
    return check.governing == CheckKind::None ? "0" : useText(truss, check.use, useErrorOf(check));
}

// For files: the same in every language.
const char* fileWordOf(CheckKind kind) {
    constexpr std::array kWords{"", "tension", "crushing", "buckling"};
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
    return sayPlain(book,
                    kind == CheckKind::Buckling ? phrase::kWordBuckling : phrase::kWordStrength);
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
    return check.tooSlender ? sayPlain(writer, phrase::kBoardUseSlender,
                                       {{"use", use}, {"limit", given(writer.truss, check.limit)}})
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
        row.faulty = row.over || check.tooSlender || !isChecked(check);
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

std::vector<std::string> checkLines(const Writer& writer, const MemberChecks& checks,
                                    const CheckedLoads& loads) {
    if (checks.members.empty()) {
        std::vector<std::string> says{sayPlain(writer, phrase::kCheckNothing)};
        for (const Issue& fault : checks.faults) {
            says.push_back(faultSentence(writer.book, fault));
        }
        return says;
    }
    CheckLines lines(writer, checks);
    lines.sayVerdict();
    lines.sayReliance();
    lines.sayLacks();
    lines.sayBends();
    lines.sayLoads(loads);
    lines.sayFormula();
    return lines.take();
}

std::vector<std::string> checkWarnings(const Writer& writer, const MemberChecks& checks) {
    CheckLines lines(writer, checks);
    if (!checks.members.empty()) {
        lines.sayReliance();
    }
    return lines.take();
}

std::vector<std::string> lackLines(const Writer& writer, const MemberChecks& checks) {
    CheckLines lines(writer, checks);
    lines.sayLacks();
    return lines.take();
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
