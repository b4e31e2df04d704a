#include "cli/statics_commands.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "exchange/json_statics.hpp"
#include "model/validate.hpp"
#include "report/csv.hpp"
#include "report/envelope_text.hpp"
#include "report/influence_sketch.hpp"
#include "report/influence_text.hpp"
#include "report/number.hpp"
#include "report/results_text.hpp"
#include "report/sketch_svg.hpp"
#include "report/solution_text.hpp"

namespace gusset::cli {

namespace {

constexpr int kDigits = 12; // of CSV and text, as of JSON

Issue unknown(std::string_view what, std::string says) {
    return {IssueCode::UnknownName, std::string(what), std::move(says)};
}

std::string csvOf(const Truss& truss, const InfluenceReport& report) {
    const double scale = ordinateScale(truss, report.effect.kind);
    const double metre = toMetre(truss.units.length);
    std::string text = csvHead("joint,at,ordinate");
    for (std::size_t i = 0; i < report.path.size(); ++i) {
        text += csvTextCell(truss.joints[report.path[i].at()].label) + "," +
                significantNumber(report.line.at[i] / metre, kDigits) + "," +
                significantNumber(report.line.ordinates[i] * scale, kDigits) + "\r\n";
    }
    return text;
}

Outcome<InfluenceReport> reportOf(const Arguments& arguments, const Truss& truss) {
    const Outcome<std::vector<JointId>> path = pathNamed(truss, arguments.valueOf("--path"));
    if (!path) {
        return path.issues();
    }
    const Outcome<Effect> effect = effectNamed(truss, arguments.valueOf("--of"));
    if (!effect) {
        return effect.issues();
    }
    Outcome<InfluenceReport> report = influenceReport(truss, path.value(), effect.value());
    if (!report) {
        return report.issues();
    }
    InfluenceReport named = std::move(report).value();
    named.of = arguments.valueOf("--of");
    return named;
}

} // namespace

std::string exactText(const PhraseBook& book, const Truss& truss, const ExactSolution& exact) {
    if (!exact.solved) {
        const std::string whyNot = inexactSentence(book, truss, exact.whyNot);
        return whyNot.empty() ? whyNot : whyNot + "\n";
    }
    const std::string unit = symbolOf(truss.units.force);
    std::string text;
    for (std::size_t i = 0; i < exact.forces.size(); ++i) {
        text += memberName(truss, MemberId{static_cast<int>(i)}) + " = " + textOf(exact.forces[i]) +
                (unit.empty() ? "" : " " + unit) + "\n";
    }
    return text;
}

Answer answerInfluence(const PhraseBook& book, const Arguments& arguments, const Reading& given) {
    if (!arguments.has("--path") || !arguments.has("--of")) {
        return {
            Exit::WrongUse, {}, {unknown("influence", "needs --path A,B,C and --of member:A-B")}};
    }
    const Reading reading = withoutLooseJoints(given);
    const Issues& notes = reading.notes;
    const Outcome<InfluenceReport> report = reportOf(arguments, reading.truss);
    if (!report) {
        return noAnswer(book, arguments, reading.truss, report.issues());
    }
    if (arguments.has("--json")) {
        return {Exit::Answered,
                writeInfluence(reading.truss, report.value(),
                               assumptionSentences(book, report.value().assumed), notes),
                notes};
    }
    if (arguments.has("--svg")) {
        return {Exit::Answered, svgOf(influenceSketch(book, reading.truss, report.value(), {})),
                notes};
    }
    return {Exit::Answered,
            arguments.has("--text") ? influenceText(book, reading.truss, report.value())
                                    : csvOf(reading.truss, report.value()),
            notes};
}

namespace {

std::string csvOf(const Truss& truss, const std::vector<MemberEnvelope>& envelope) {
    const double newton = toNewton(truss.units.force);
    std::string text = csvHead("member,tension,by,compression,by");
    const auto column = [&](const ForceExtreme& extreme) {
        const LoadChoice& by = extreme.choice;
        return "," + significantNumber(extreme.force / newton, kDigits) + "," +
               csvTextCell(by.combinationId.empty() ? by.caseId : by.combinationId);
    };
    for (std::size_t i = 0; i < envelope.size(); ++i) {
        const MemberEnvelope& each = envelope[i];
        text += csvTextCell(memberName(truss, MemberId{static_cast<int>(i)})) +
                column(each.tension) + column(each.compression) + "\r\n";
    }
    return text;
}

// What the file holds that has no part in an envelope, and whether it holds for these loads alone.
Issues notesOfEnvelope(const Reading& reading, const std::vector<LoadChoice>& choices) {
    Issues notes = reading.notes;
    for (const Issues& more :
         {notesOfMechanism(reading.truss, choices), absentCases(reading.truss)}) {
        notes.insert(notes.end(), more.begin(), more.end());
    }
    return notes;
}

} // namespace

Answer answerEnvelope(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    const std::vector<LoadChoice> choices = envelopeChoices(truss);
    const Outcome<std::vector<MemberEnvelope>> envelope = envelopeOf(truss, choices);
    if (!envelope) {
        return noAnswer(book, arguments, truss, envelope.issues());
    }
    const Issues notes = notesOfEnvelope(reading, choices);
    if (arguments.has("--json")) {
        return {Exit::Answered, writeEnvelope(truss, envelope.value(), notes), notes};
    }
    return {Exit::Answered,
            arguments.has("--text") ? envelopeText(book, truss, envelope.value())
                                    : csvOf(truss, envelope.value()),
            notes};
}

} // namespace gusset::cli
