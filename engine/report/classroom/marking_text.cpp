#include "report/classroom/marking_text.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "core/csv.hpp"
#include "core/number.hpp"
#include "phrases/classroom/marking.hpp"
#include "report/classroom/own_equation.hpp"
#include "report/text/phrases.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr int kFeedbackFigures = 4;

const std::array<Phrase<>, kSlipKinds>& namesOfKinds() {
    static constexpr std::array<Phrase<>, kSlipKinds> kPhrases{
        phrase::kKindLeftOut,      phrase::kKindWrongSign,     phrase::kKindSineForCosine,
        phrase::kKindNotResolved,  phrase::kKindToOneBar,      phrase::kKindReactionTurned,
        phrase::kKindBySymmetry,   phrase::kKindWrongArm,      phrase::kKindEarlierSign,
        phrase::kKindWrongSense,   phrase::kKindZeroMisjudged, phrase::kKindWrongFactor,
        phrase::kKindDigitsSwapped};
    return kPhrases;
}

std::string forceOf(const Truss& truss, double value) {
    NumberStyle style;
    style.form = NumberForm::Significant;
    style.digits = kFeedbackFigures;
    style.keepZeros = false;
    style.decimalSign = truss.classSettings.decimalSign;
    return withUnit(formatNumber(value, style), symbolOf(truss.units.force));
}

std::string nameOf(const Truss& truss, const std::vector<std::string>& reactions,
                   const MemberOrRestraint& of) {
    if (const auto* member = std::get_if<MemberId>(&of)) {
        return memberName(truss, *member);
    }
    return reactions[std::get<RestraintId>(of).at()];
}

std::string whereOf(const Writer& writer, const std::vector<JointId>& body) {
    if (body.size() == 1) {
        return sayPlain(writer, phrase::kWhereJoint,
                        {{"joint", writer.truss.joints[body.front().at()].label}});
    }
    return sayPlain(writer, body.size() == writer.truss.joints.size() ? phrase::kWhereWhole
                                                                      : phrase::kWhereSection);
}

std::string markText(double marks) { return significantNumber(std::round(marks * 100) / 100, 6); }

class SheetSpeaker {
public:
    SheetSpeaker(const Writer& writer, const Marking& marking, const Answers& answers)
        : writer_(writer), marking_(marking), answers_(answers),
          reactions_(readableReactions(writer.truss)) {
        nothing_.structure = structureOf(writer.truss);
    }

    std::vector<std::string> all() const {
        std::vector<std::string> said;
        if (!marking_.isOfFewSlips) {
            said.push_back(sayPlain(writer_, phrase::kTooManySlips));
        }
        for (std::size_t i = 0; i < marking_.forces.size(); ++i) {
            const MarkedForce& force = marking_.forces[i];
            if (force.isAsked && force.verdict != Verdict::Right) {
                said.push_back(of(force, i));
            }
        }
        for (std::size_t i = 0; i < marking_.questions.size(); ++i) {
            const std::string sentence = ofQuestion(i);
            if (!sentence.empty()) {
                said.push_back(sentence);
            }
        }
        return said;
    }

private:
    // Of questions that are not for forces, where there is something to say.
    std::string ofQuestion(std::size_t number) const {
        const MarkedQuestion& question = marking_.questions[number];
        if (question.isByHand) {
            return question.outOf > 0 ? sayPlain(writer_, phrase::kStepsByHand,
                                                 {{"marks", markText(question.outOf)}})
                                      : sayPlain(writer_, phrase::kStepsByHandOpen);
        }
        if (question.marks >= question.outOf) {
            return {};
        }
        const std::string marks = markText(question.marks);
        const std::string all = markText(question.outOf);
        if (std::holds_alternative<AskZeroMembers>(question.what)) {
            return sayPlain(writer_, phrase::kZerosNotRight, {{"marks", marks}, {"all", all}});
        }
        if (std::holds_alternative<AskDeterminacy>(question.what)) {
            return answers_.degree ? sayPlain(writer_, phrase::kDegreeNotRight,
                                              {{"marks", marks}, {"all", all}})
                                   : sayPlain(writer_, phrase::kDegreeBlank);
        }
        const bool isWritten = answers_.values[number].has_value();
        if (const auto* asked = std::get_if<AskDisplacement>(&question.what)) {
            const std::string& joint = writer_.truss.joints[asked->joint.at()].label;
            return isWritten ? sayPlain(writer_, phrase::kDisplacementNotRight,
                                        {{"joint", joint}, {"marks", marks}, {"all", all}})
                             : sayPlain(writer_, phrase::kDisplacementBlank, {{"joint", joint}});
        }
        if (const auto* asked = std::get_if<AskInfluence>(&question.what)) {
            const std::string& joint = writer_.truss.joints[asked->at.at()].label;
            return isWritten ? sayPlain(writer_, phrase::kOrdinateNotRight,
                                        {{"joint", joint}, {"marks", marks}, {"all", all}})
                             : sayPlain(writer_, phrase::kOrdinateBlank, {{"joint", joint}});
        }
        return {};
    }

    std::string of(const MarkedForce& force, std::size_t number) const {
        const Truss& truss = writer_.truss;
        const std::string name = nameOf(truss, reactions_, force.of);
        if (force.verdict == Verdict::Blank) {
            const std::size_t restraints = answers_.reactions.size();
            const WrittenForce& written = number < restraints
                                              ? answers_.reactions[number]
                                              : answers_.forces[number - restraints];
            if (isContradictory(written)) {
                return sayPlain(writer_, phrase::kAnswerBoth,
                                {{"answer", name}, {"written", forceOf(truss, *written.size)}});
            }
            return sayPlain(writer_, isBlank(written) ? phrase::kAnswerBlank : phrase::kAnswerHalf,
                            {{"answer", name}});
        }
        const std::string written = forceOf(truss, *force.written);
        if (force.verdict == Verdict::Carried) {
            return carried(force, name, written);
        }
        if (force.verdict == Verdict::Unsupported) {
            return !force.expected ? sayPlain(writer_, phrase::kAnswerNotAgreed,
                                              {{"answer", name}, {"written", written}})
                                   : sayPlain(writer_, phrase::kAnswerUnsupported,
                                              {{"answer", name},
                                               {"written", written},
                                               {"expected", forceOf(truss, *force.expected)}});
        }
        if (force.body.empty() && marking_.slips[*force.slip].answers.size() > 1) {
            return sayPlain(writer_, phrase::kSlipOfUnit, {{"answer", name}, {"written", written}});
        }
        return force.body.empty() ? sayPlain(writer_, phrase::kSlipSomewhere,
                                             {{"answer", name}, {"written", written}})
                                  : slip(force, name, written);
    }

    std::string carried(const MarkedForce& force, const std::string& name,
                        const std::string& written) const {
        if (force.slip && force.body.empty()) {
            return sayPlain(writer_, phrase::kAnswerOfUnit,
                            {{"answer", name}, {"written", written}});
        }
        if (force.slip) {
            return sayPlain(
                writer_, phrase::kAnswerSameSlip,
                {{"answer", name}, {"written", written}, {"where", whereOf(writer_, force.body)}});
        }
        return sayPlain(writer_,
                        force.marks < force.outOf ? phrase::kAnswerEased : phrase::kAnswerCarried,
                        {{"answer", name}, {"written", written}});
    }

    // A value that would be right for the student is said only where it is of one equation, or of
    // all of them.
    std::string slip(const MarkedForce& force, const std::string& name,
                     const std::string& written) const {
        const Truss& truss = writer_.truss;
        const std::string where = whereOf(writer_, force.body);
        const Slip& slip = marking_.slips[*force.slip];
        const auto own = std::find_if(slip.equations.begin(), slip.equations.end(),
                                      [&](const OwnEquation& each) { return each.of == force.of; });
        if (!slip.kind && own != slip.equations.end()) {
            return sayPlain(writer_, phrase::kSlipInSum,
                            {{"answer", name},
                             {"written", written},
                             {"where", where},
                             {"equation", ownEquationText(notation_, *own)},
                             {"gives", forceOf(truss, own->gives)}});
        }
        if (!slip.kind) {
            return !force.expected
                       ? sayPlain(writer_, phrase::kSlipOnlyAt,
                                  {{"answer", name}, {"written", written}, {"where", where}})
                       : sayPlain(writer_, phrase::kSlipAt,
                                  {{"answer", name},
                                   {"written", written},
                                   {"where", where},
                                   {"expected", forceOf(truss, *force.expected)}});
        }
        const std::string kind = slipName(writer_, slip.kind);
        return !force.expected
                   ? sayPlain(
                         writer_, phrase::kSlipOfKindAt,
                         {{"answer", name}, {"written", written}, {"where", where}, {"kind", kind}})
                   : sayPlain(writer_, phrase::kSlipOfKind,
                              {{"answer", name},
                               {"written", written},
                               {"where", where},
                               {"expected", forceOf(truss, *force.expected)},
                               {"kind", kind}});
    }

    const Writer& writer_;
    const Marking& marking_;
    const Answers& answers_;
    std::vector<std::string> reactions_;
    Working nothing_; // worked out: only its names are used
    Notation notation_ = notationOf(writer_, nothing_);
};

// How often each kind occurs, those that were not recognised last.
std::array<int, kSlipKinds + 1> slipCounts(const std::vector<MarkedSheet>& sheets) {
    std::array<int, kSlipKinds + 1> counts{};
    for (const MarkedSheet& sheet : sheets) {
        for (const Slip& slip : sheet.marking.slips) {
            ++counts[slip.kind ? static_cast<std::size_t>(*slip.kind) : kSlipKinds];
        }
    }
    return counts;
}
std::optional<SlipKind> kindAt(std::size_t index) {
    return index < kSlipKinds ? std::optional(static_cast<SlipKind>(index)) : std::nullopt;
}

std::string together(const std::vector<std::string>& parts, const char* between) {
    std::string text;
    for (const std::string& part : parts) {
        text += (text.empty() ? "" : between) + part;
    }
    return text;
}

} // namespace

std::vector<std::string> markingRule(const PhraseBook& book) {
    return {sayPlain(book, phrase::kRuleEach), sayPlain(book, phrase::kRuleCarried),
            sayPlain(book, phrase::kRuleSlip), sayPlain(book, phrase::kRuleRight),
            sayPlain(book, phrase::kRuleZero)};
}

std::string slipName(const PhraseBook& book, std::optional<SlipKind> kind) {
    return sayPlain(book,
                    kind ? namesOfKinds()[static_cast<std::size_t>(*kind)] : phrase::kKindUnknown);
}

std::vector<std::string> feedback(const Writer& writer, const Marking& marking,
                                  const Answers& answers) {
    return SheetSpeaker(writer, marking, answers).all();
}

std::string classText(const Writer& writer, const std::vector<MarkedSheet>& sheets) {
    std::string text;
    for (const MarkedSheet& sheet : sheets) {
        text += sayPlain(writer, phrase::kClassMarks,
                         {{"code", sheet.code},
                          {"marks", markText(sheet.marking.marks)},
                          {"all", markText(sheet.marking.outOf)}}) +
                "\n";
        for (const std::string& sentence : feedback(writer, sheet.marking, sheet.answers)) {
            text += "  " + sentence + "\n";
        }
    }
    text += "\n" + sayPlain(writer, phrase::kClassSlips) + "\n";
    const auto counts = slipCounts(sheets);
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] > 0) {
            text += "  " +
                    sayPlain(writer, phrase::kSlipCount,
                             {{"n", counts[i]}, {"kind", slipName(writer, kindAt(i))}}) +
                    "\n";
        }
    }
    text += "\n" + sayPlain(writer, phrase::kMarksRule) + "\n";
    for (const std::string& sentence : markingRule(writer)) {
        text += "  " + sentence + "\n";
    }
    return text;
}

std::string sheetCells(const Writer& writer, const MarkedSheet& sheet) {
    std::vector<std::string> slips;
    for (const Slip& slip : sheet.marking.slips) {
        slips.push_back(slipName(writer, slip.kind));
    }
    return csvTextCell(sheet.code) + "," + markText(sheet.marking.marks) + "," +
           markText(sheet.marking.outOf) + "," + csvTextCell(together(slips, "; ")) + "," +
           csvTextCell(together(feedback(writer, sheet.marking, sheet.answers), " "));
}

std::string classCsv(const Writer& writer, const std::vector<MarkedSheet>& sheets) {
    std::string text = csvHead("code,marks,of,slips,feedback");
    for (const MarkedSheet& sheet : sheets) {
        text += sheetCells(writer, sheet) + "\r\n";
    }
    text += "\r\nslip,times\r\n";
    const auto counts = slipCounts(sheets);
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] > 0) {
            text +=
                csvTextCell(slipName(writer, kindAt(i))) + "," + std::to_string(counts[i]) + "\r\n";
        }
    }
    text += "\r\n" + csvTextCell(sayPlain(writer, phrase::kMarksRule)) + "\r\n";
    for (const std::string& sentence : markingRule(writer)) {
        text += csvTextCell(sentence) + "\r\n";
    }
    return text;
}

} // namespace gusset
