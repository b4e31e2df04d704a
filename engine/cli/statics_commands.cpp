#include "cli/statics_commands.hpp"

#include "cli/names.hpp"
#include "cli/verdicts.hpp"
#include "core/csv.hpp"
#include "core/number.hpp"
#include "exchange/results/json_statics.hpp"
#include "model/validate/validate.hpp"
#include "report/results/envelope_text.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "report/sketch/influence_sketch.hpp"
#include "report/sketch/sketch_svg.hpp"

namespace gusset::cli {

namespace {

Issue unknown(std::string_view what, std::string says) {
    return {IssueCode::UnknownName, std::string(what), std::move(says)};
}

// A row with the number of figures that rounding leaves, if these are fewer than are written,
// followed by `empty` empty cells.
std::string figuresRow(const Trust& trust, std::size_t empty) {
    const int figures = figuresOf(trust.error);
    return figures < kFileDigits
               ? "figures," + std::to_string(figures) + std::string(empty, ',') + "\r\n"
               : std::string{};
}

std::string csvOf(const Truss& truss, const InfluenceReport& report) {
    const double scale = ordinateScale(truss, report.effect.kind);
    const double metre = toMetre(truss.units.length);
    const int lastPlace = lastPlaceOf(report.error * scale, 1);
    std::string text = csvHead("joint,at,ordinate");
    for (std::size_t i = 0; i < report.path.size(); ++i) {
        text += csvTextCell(truss.joints[report.path[i].at()].label) + "," +
                fileNumber(report.line.at[i] / metre) + "," +
                fileNumber(report.line.ordinates[i] * scale, lastPlace) + "\r\n";
    }
    return text + figuresRow(trustOf(report), 1);
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

Answer answerLine(const PhraseBook& book, const Arguments& arguments, const Reading& reading,
                  const InfluenceReport& report) {
    const Truss& truss = reading.truss;
    const Issues& notes = reading.notes;
    std::vector<std::string> warnings = lineWarnings({book, truss}, report);
    if (arguments.has("--json")) {
        const ResultSentences sentences{.assumed =
                                            assumptionSentences(book, report.reliance.assumed),
                                        .warnings = std::move(warnings)};
        return {Exit::Answered, writeInfluence(book, truss, report, sentences, notes), notes};
    }
    if (arguments.has("--text")) {
        return {Exit::Answered, influenceText({book, truss}, report), notes};
    }
    const std::string drawn = arguments.has("--svg")
                                  ? svgOf(influenceSketch({book, truss}, report, {}))
                                  : csvOf(truss, report);
    return {Exit::Answered, drawn, joined(notes, notesOnForces(warnings))};
}

} // namespace

std::string exactText(const Writer& writer, const ExactSolution& exact) {
    if (!exact.solved) {
        const std::string whyNot = inexactSentence(writer, exact.whyNot);
        return whyNot.empty() ? whyNot : whyNot + "\n";
    }
    const std::string unit = symbolOf(writer.truss.units.force);
    std::string text;
    for (std::size_t i = 0; i < exact.forces.size(); ++i) {
        text += memberName(writer.truss, MemberId{static_cast<int>(i)}) + " = " +
                textOf(exact.forces[i]) + (unit.empty() ? "" : " " + unit) + "\n";
    }
    return text;
}

Answer answerInfluence(const PhraseBook& book, const Arguments& arguments, const Reading& given) {
    if (!arguments.has("--path") || !arguments.has("--of")) {
        return {
            Exit::WrongUse, {}, {unknown("influence", "needs --path A,B,C and --of member:A-B")}};
    }
    const Reading reading = withoutLooseJoints(given);
    const Outcome<InfluenceReport> report = reportOf(arguments, reading.truss);
    if (!report) {
        return noAnswer(book, arguments, reading.truss, report.issues());
    }
    return answerLine(book, arguments, reading, report.value());
}

namespace {

std::string csvOf(const Truss& truss, const Envelope& envelope) {
    const double newton = toNewton(truss.units.force);
    const int lastPlace = lastPlaceOfForces(truss, forceErrorOf(envelope.reliance));
    std::string text = csvHead("member,tension,by,compression,by");
    const auto column = [&](const ForceExtreme& extreme) -> std::string {
        if (isZero(envelope.reliance, extreme.force)) {
            return ",0,";
        }
        return "," + fileNumber(extreme.force / newton, lastPlace) + "," +
               csvTextCell(choiceName(extreme.choice));
    };
    for (std::size_t i = 0; i < envelope.members.size(); ++i) {
        const MemberEnvelope& each = envelope.members[i];
        text += csvTextCell(memberName(truss, MemberId{static_cast<int>(i)})) +
                column(each.tension) + column(each.compression) + "\r\n";
    }
    return text + figuresRow(envelope.reliance.trust, 3);
}

// The reader's notes, whether the forces hold for these loads only, and cases without loads.
Issues notesOfEnvelope(const Reading& reading, const Envelope& envelope) {
    return joined(joined(reading.notes, notesOfMechanism(envelope.reliance.status, true)),
                  absentCases(reading.truss));
}

} // namespace

Answer answerEnvelope(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    const std::vector<LoadChoice> choices = envelopeChoices(truss);
    const Outcome<Envelope> found = envelopeOf(truss, choices);
    if (!found) {
        return noAnswer(book, arguments, truss, found.issues());
    }
    const Envelope& envelope = found.value();
    const Issues notes = notesOfEnvelope(reading, envelope);
    if (arguments.has("--text")) {
        return {Exit::Answered, envelopeText({book, truss}, envelope), notes};
    }
    std::vector<std::string> warnings = trustSentences({book, truss}, envelope);
    if (arguments.has("--json")) {
        const ResultSentences sentences{.assumed =
                                            assumptionSentences(book, envelope.reliance.assumed),
                                        .warnings = std::move(warnings)};
        return {Exit::Answered, writeEnvelope(book, truss, envelope, sentences, notes), notes};
    }
    return {Exit::Answered, csvOf(truss, envelope), joined(notes, notesOnForces(warnings))};
}

} // namespace gusset::cli
