#include "desk/building.hpp"

#include "phrases/classroom/practice.hpp"
#include "phrases/faults/exercises.hpp"
#include "report/derivation/angle_marks.hpp"
#include "report/formula/notation.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

bool isReaction(const DeskBody& body, const ActingForce& force) {
    return force.of < static_cast<int>(body.paper.structure.restraints.size());
}

std::string forceText(const Writer& writer, const DeskBody& body, const ActingForce& force) {
    const std::string arrow = directionArrow(force.along);
    if (force.of == kGivenLoad) {
        const double size = length(force.along) / toNewton(writer.truss.units.force);
        return sayPlain(writer, phrase::kForceLoad,
                        {{"joint", jointLabels(writer, {force.joint})},
                         {"size", givenForce(notationOf(writer, body), size)},
                         {"arrow", arrow}});
    }
    const std::string& name = body.names[static_cast<std::size_t>(force.of)];
    return isReaction(body, force)
               ? sayPlain(writer, phrase::kForceReaction, {{"reaction", name}, {"arrow", arrow}})
               : sayPlain(writer, phrase::kForceMember, {{"member", name}});
}

std::string verdictText(const Writer& writer, TermVerdict verdict) {
    switch (verdict) {
    case TermVerdict::Right:
        return {};
    case TermVerdict::Missing:
        return sayPlain(writer, phrase::kTermMissing);
    case TermVerdict::NotInIt:
        return sayPlain(writer, phrase::kTermNotInIt);
    case TermVerdict::WrongSign:
        return sayPlain(writer, phrase::kTermWrongSign);
    case TermVerdict::WrongMultiplier:
        return sayPlain(writer, phrase::kTermWrongMultiplier);
    case TermVerdict::WrongArm:
        break;
    }
    return sayPlain(writer, phrase::kTermWrongArm);
}

std::string wholeText(const Writer& writer, const DeskRequest& request, const DeskBody& body) {
    std::string unknowns;
    for (std::size_t i = 0; i < body.part.forces.size(); ++i) {
        const int of = body.part.forces[i].of;
        if (of != kGivenLoad && request.terms[i].sign != 0 &&
            !body.own[static_cast<std::size_t>(of)]) {
            unknowns += (unknowns.empty() ? "" : ", ") + body.names[static_cast<std::size_t>(of)];
        }
    }
    return unknowns.empty() ? sayPlain(writer, phrase::kEquationRightKnown)
                            : sayPlain(writer, phrase::kEquationRight, {{"unknowns", unknowns}});
}

Vec2 unitOf(const ActingForce& force) { return (1 / length(force.along)) * force.along; }

Factor forceFactor(const DeskBody& body, const ActingForce& force) {
    const Symbol symbol = symbolOf(body.paper.structure, force);
    if (force.of == kGivenLoad) {
        return {.kind = FactorKind::Load,
                .value = length(force.along) / toNewton(body.truss.units.force),
                .symbol = symbol};
    }
    const std::optional<double>& value = body.own[static_cast<std::size_t>(force.of)];
    return {.kind = value ? FactorKind::Known : FactorKind::Unknown,
            .value = value.value_or(0),
            .symbol = symbol};
}

Term termOf(const DeskBody& body, const ActingForce& force, const BuiltTerm& built) {
    Term term{built.sign, {forceFactor(body, force)}};
    const Vec2 along = unitOf(force);
    const AngleLine* line = angleLineOf(body.paper, along);
    if (built.by == Multiplier::Arm) {
        term.factors.push_back({.kind = FactorKind::Arm, .value = built.arm});
    } else if (line && built.by == Multiplier::Sine) {
        term.factors.push_back(
            {.kind = FactorKind::Sine, .value = std::abs(along.y), .symbol = line->angle});
    } else if (line && built.by == Multiplier::Cosine) {
        term.factors.push_back(
            {.kind = FactorKind::Cosine, .value = std::abs(along.x), .symbol = line->angle});
    }
    return term;
}

EquationKind kindOf(SumKind sum) {
    return sum == SumKind::X   ? EquationKind::SumX
           : sum == SumKind::Y ? EquationKind::SumY
                               : EquationKind::SumMoments;
}

// What a kept equation says of each force on its body.
std::vector<BuiltTerm> termsOf(const DeskBody& body, const WrittenEquation& equation) {
    std::vector<BuiltTerm> terms;
    for (const ActingForce& force : body.part.forces) {
        const WrittenTerm named = namedTerm(body, force);
        const auto found = std::find_if(
            equation.terms.begin(), equation.terms.end(), [&](const WrittenTerm& written) {
                return written.of
                           ? written.of == named.of
                           : !named.of && written.at == named.at && written.along == named.along;
            });
        terms.push_back(found == equation.terms.end() ? BuiltTerm{} : found->term);
    }
    return terms;
}

} // namespace

WrittenTerm namedTerm(const DeskBody& body, const ActingForce& force) {
    WrittenTerm named;
    if (force.of != kGivenLoad) {
        named.of = unknownNumbered(body.paper.structure, force.of);
        return named;
    }
    named.at = force.joint;
    named.along = std::abs(force.along.x) > std::abs(force.along.y) ? SumKind::X : SumKind::Y;
    return named;
}

std::vector<ForceSaid> forcesSaid(const Writer& writer, const DeskBody& body) {
    const Notation notation = notationOf(writer, body);
    std::vector<ForceSaid> said;
    for (const ActingForce& force : body.part.forces) {
        const AngleLine* line = angleLineOf(body.paper, unitOf(force));
        const std::string angle = line ? angleToken(line->angle).text : std::string();
        const RichLine name = symbolRuns(notation, symbolOf(body.paper.structure, force));
        const std::string says = forceText(writer, body, force);
        const RichLine shown =
            force.of != kGivenLoad && isReaction(body, force)
                ? say(writer, phrase::kForceReaction,
                      {{"reaction", name}, {"arrow", directionArrow(force.along)}})
                : plainLine(says);
        said.push_back({says, htmlOf(shown), plainText(name), htmlOf(name), angle});
    }
    return said;
}

AskedSum askedSum(const DeskBody& body, SumKind kind, JointId about) {
    return {kind, about, body.truss.classSettings.moments == MomentSense::Clockwise,
            toMetre(body.truss.units.length)};
}

std::vector<std::string> equationHtml(const Writer& writer, const DeskBody& body,
                                      const AskedSum& sum, const std::vector<BuiltTerm>& terms) {
    const Notation notation = notationOf(writer, body);
    Equation equation;
    equation.kind = kindOf(sum.kind);
    equation.about = sum.about;
    for (std::size_t i = 0; i < body.part.forces.size(); ++i) {
        if (terms[i].sign != 0) {
            equation.terms.push_back(termOf(body, body.part.forces[i], terms[i]));
        }
    }
    std::vector<std::string> lines;
    for (const Formula& formula : equationLines(notation, equation, {})) {
        lines.push_back(mathMl(formula));
    }
    return lines;
}

Outcome<KeptEquation> keptEquation(const Writer& writer, const DeskRequest& request,
                                   const WrittenEquation& written) {
    const Outcome<DeskBody> body = deskBody(request, written.body);
    if (!body) {
        return body.issues();
    }
    const AskedSum sum = askedSum(body.value(), written.sum, written.about);
    return KeptEquation{
        bodyName(writer, body.value().part.joints, Begins::Sentence),
        equationHtml(writer, body.value(), sum, termsOf(body.value(), written)).front()};
}

Outcome<EquationSaid> equationSaid(const Writer& writer, const DeskRequest& request,
                                   const DeskBody& body) {
    if (request.terms.size() != body.part.forces.size() ||
        (request.sum == SumKind::Moments && !request.about.valid())) {
        return Issue{IssueCode::Missing, phrase::kPlaceAnswers, phrase::kNoSuchEquation};
    }
    const AskedSum sum = askedSum(body, request.sum, request.about);
    EquationSaid said;
    said.html = equationHtml(writer, body, sum, request.terms);
    said.written = {
        request.body, request.sum, request.sum == SumKind::Moments ? request.about : JointId{}, {}};
    for (std::size_t i = 0; i < request.terms.size(); ++i) {
        if (request.terms[i].sign != 0) {
            said.written.terms.push_back(namedTerm(body, body.part.forces[i]));
            said.written.terms.back().term = request.terms[i];
        }
    }
    if (!request.asksJudgement || request.exercise->checking == Checking::AtTheEnd) {
        return said;
    }
    bool isRight = true;
    for (const TermVerdict verdict :
         judgeTerms(body.paper.structure, body.part, sum, request.terms)) {
        said.terms.push_back({verdict == TermVerdict::Right, verdictText(writer, verdict)});
        isRight = isRight && verdict == TermVerdict::Right;
    }
    if (isRight) {
        said.says = wholeText(writer, request, body);
    }
    return said;
}

} // namespace gusset
