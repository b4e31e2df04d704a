#include "cli/statics_commands.hpp"

#include "cli/names.hpp"
#include "exchange/json_statics.hpp"
#include "report/number.hpp"
#include "report/results_text.hpp"

namespace gusset::cli {

namespace {

constexpr int kDigits = 12; // of CSV and text, as of JSON

Issue unknown(std::string_view what, std::string says) {
    return {IssueCode::UnknownName, std::string(what), std::move(says)};
}

bool hasSupport(const Truss& truss, JointId joint) {
    for (const Support& support : truss.supports) {
        if (support.joint == joint) {
            return true;
        }
    }
    return false;
}

// What hinders this effect although the truss is solved.
Issues faultsOfEffect(const Truss& truss, const PathAnalysis& analysis, const Effect& effect) {
    if (effect.kind == EffectKind::Reaction && !hasSupport(truss, effect.joint)) {
        return {unknown("reaction", "joint " + truss.joints[effect.joint.at()].label +
                                        " has no support: name one that has")};
    }
    if (effect.kind == EffectKind::Displacement &&
        analysis.responses.front().displacements.empty()) {
        return {{IssueCode::Missing, "members",
                 "displacements need E and A of every member: give each a section with A and a "
                 "material with E"}};
    }
    return {};
}

std::string csvOf(const Truss& truss, const InfluenceReport& report) {
    const double scale = ordinateScale(truss, report.kind);
    const double metre = toMetre(truss.units.length);
    std::string text = "joint,at,ordinate\n";
    for (std::size_t i = 0; i < report.path.size(); ++i) {
        text += csvTextCell(truss.joints[report.path[i].at()].label) + "," +
                significantNumber(report.line.at[i] / metre, kDigits) + "," +
                significantNumber(report.line.ordinates[i] * scale, kDigits) + "\n";
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
    const Outcome<PathAnalysis> analysis = analysePath(truss, path.value());
    if (!analysis) {
        return analysis.issues();
    }
    if (const Issues faults = faultsOfEffect(truss, analysis.value(), effect.value());
        !faults.empty()) {
        return faults;
    }
    InfluenceReport report;
    report.of = arguments.valueOf("--of");
    report.kind = effect.value().kind;
    report.path = path.value();
    report.line = influenceLine(analysis.value(), effect.value());
    report.exact = exactOrdinates(truss, report.path, effect.value());
    report.assumed = analysis.value().assumed;
    for (const MovingLoad& load : truss.moving) {
        if (load.path == report.path) {
            MovingResult result{load.id, extremesOf(report.line, wheelsOf(truss, load)), {}};
            if (load.uniform) {
                result.uniform = extremesOf(truss, report.line, *load.uniform);
            }
            report.moving.push_back(std::move(result));
        }
    }
    return report;
}

} // namespace

std::string exactText(const Truss& truss, const ExactSolution& exact) {
    if (!exact.solved) {
        return exact.whyNot.empty() ? "" : exact.whyNot + "\n";
    }
    const std::string unit = symbolOf(truss.units.force);
    std::string text;
    for (std::size_t i = 0; i < exact.forces.size(); ++i) {
        text += memberName(truss, MemberId{static_cast<int>(i)}) + " = " + textOf(exact.forces[i]) +
                (unit.empty() ? "" : " " + unit) + "\n";
    }
    return text;
}

Answer answerInfluence(const Arguments& arguments, const Reading& reading) {
    if (!arguments.has("--path") || !arguments.has("--of")) {
        return {
            Exit::WrongUse, {}, {unknown("influence", "needs --path A,B,C and --of member:A-B")}};
    }
    const Outcome<InfluenceReport> report = reportOf(arguments, reading.truss);
    if (!report) {
        return {Exit::BadInput, {}, report.issues()};
    }
    return {Exit::Answered,
            arguments.has("--json") ? writeInfluence(reading.truss, report.value())
                                    : csvOf(reading.truss, report.value()),
            {}};
}

Answer answerEnvelope(const Arguments& arguments, const Reading& reading) {
    const Truss& truss = reading.truss;
    const Outcome<std::vector<MemberEnvelope>> envelope = envelopeOf(truss, envelopeChoices(truss));
    if (!envelope) {
        return {Exit::BadInput, {}, envelope.issues()};
    }
    if (arguments.has("--json")) {
        return {Exit::Answered, writeEnvelope(truss, envelope.value()), {}};
    }
    const double newton = toNewton(truss.units.force);
    std::string text = "member,tension,by,compression,by\n";
    const auto column = [&](const ForceExtreme& extreme) {
        const LoadChoice& by = extreme.choice;
        return "," + significantNumber(extreme.force / newton, kDigits) + "," +
               csvTextCell(by.combinationId.empty() ? by.caseId : by.combinationId);
    };
    for (std::size_t i = 0; i < envelope.value().size(); ++i) {
        const MemberEnvelope& each = envelope.value()[i];
        text += csvTextCell(memberName(truss, MemberId{static_cast<int>(i)})) +
                column(each.tension) + column(each.compression) + "\n";
    }
    return {Exit::Answered, text, {}};
}

} // namespace gusset::cli
