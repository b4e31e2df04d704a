#include "desk/guidance.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/practice/standing.hpp"
#include "phrases/classroom/practice.hpp"
#include "report/derivation/working_text.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr int kEquationLevel = 2;
constexpr int kTermLevel = 3;

std::string bodyName(const Writer& writer, JointId joint, bool first) {
    if (!joint.valid()) {
        return sayPlain(writer, first ? phrase::kTheWholeTrussFirst : phrase::kTheWholeTruss);
    }
    return sayPlain(writer, first ? phrase::kTheJointFirst : phrase::kTheJoint,
                    {{"joint", writer.truss.joints[joint.at()].label}});
}

std::string namesOf(const Writer& writer, const std::vector<MemberOrRestraint>& forces) {
    const std::vector<std::string> reactions = readableReactions(writer.truss);
    std::string names;
    for (const MemberOrRestraint& force : forces) {
        const auto* member = std::get_if<MemberId>(&force);
        names +=
            (names.empty() ? "" : ", ") + (member ? memberName(writer.truss, *member)
                                                  : reactions[std::get<RestraintId>(force).at()]);
    }
    return names;
}

// The body to choose instead of one that gives nothing: the whole truss if it gives a reaction.
std::optional<JointId> betterBody(const Structure& structure, const HasFound& found) {
    if (!standingOfWhole(structure, found).given.empty()) {
        return JointId{};
    }
    const std::vector<JointId> useful = usefulJoints(structure, found);
    return useful.empty() ? std::nullopt : std::optional(useful.front());
}

bool isFound(const HasFound& found, const Symbol& symbol) {
    switch (symbol.kind) {
    case SymbolKind::MemberForce:
        return found.forces[symbol.member.at()];
    case SymbolKind::Reaction:
        return found.reactions[symbol.restraint.at()];
    default:
        return true;
    }
}

bool bringsSomething(const Step& step, const HasFound& found) {
    return std::any_of(step.found.begin(), step.found.end(),
                       [&](const Found& item) { return !isFound(found, item.symbol); });
}

std::optional<double> writtenValue(const Answers& answers, const Symbol& symbol) {
    if (symbol.kind == SymbolKind::MemberForce) {
        if (answers.zeros[symbol.member.at()] == true) {
            return 0;
        }
        return valueOf(answers.forces[symbol.member.at()]);
    }
    return symbol.kind == SymbolKind::Reaction ? valueOf(answers.reactions[symbol.restraint.at()])
                                               : std::nullopt;
}

// The equation as this student would write it: what is known has the value that was written, and
// what has none is still unknown.
Equation asTheStudent(Equation equation, const Answers& answers) {
    for (Term& term : equation.terms) {
        for (Factor& factor : term.factors) {
            if (factor.kind != FactorKind::Known) {
                continue;
            }
            if (const std::optional<double> value = writtenValue(answers, factor.symbol)) {
                factor.value = *value;
            } else {
                factor.kind = FactorKind::Unknown;
            }
        }
    }
    return equation;
}

void addEquations(const Notation& notation, const DeskRequest& request, const Step& step, int level,
                  std::vector<std::string>& lines) {
    for (const Equation& written : step.equations) {
        const Equation equation = asTheStudent(written, request.answers);
        const std::string centre = equation.about.valid()
                                       ? request.truss.joints[equation.about.at()].label
                                       : std::string();
        const std::vector<Formula> forms = equationLines(notation, equation, centre);
        lines.push_back(mathMl(forms.front()));
        if (level >= kTermLevel && forms.size() > 1) {
            lines.push_back(mathMl(forms.back()));
        }
    }
}

} // namespace

std::string standingText(const Writer& writer, const DeskRequest& request, JointId joint) {
    const Structure structure = structureOf(request.truss);
    const HasFound found = foundIn(request.answers);
    const Standing standing =
        joint.valid() ? standingAt(structure, found, joint) : standingOfWhole(structure, found);
    const std::string count = std::to_string(standing.unknowns.size());
    if (standing.unknowns.empty()) {
        return sayPlain(writer, phrase::kBodyNothingLeft,
                        {{"body", bodyName(writer, joint, false)}});
    }
    if (standing.given.size() == standing.unknowns.size()) {
        return sayPlain(writer, phrase::kBodyGivesAll,
                        {{"body", bodyName(writer, joint, true)}, {"unknowns", count}});
    }
    if (!standing.given.empty()) {
        return sayPlain(writer, phrase::kBodyGivesSome,
                        {{"body", bodyName(writer, joint, true)},
                         {"given", namesOf(writer, standing.given)},
                         {"unknowns", count}});
    }
    const std::optional<JointId> other = betterBody(structure, found);
    return other ? sayPlain(writer, phrase::kBodyTooMany,
                            {{"unknowns", count},
                             {"body", bodyName(writer, joint, false)},
                             {"other", bodyName(writer, *other, false)}})
                 : sayPlain(writer, phrase::kBodyTooManyNow,
                            {{"unknowns", count}, {"body", bodyName(writer, joint, false)}});
}

std::vector<std::string> hintHtml(const Writer& writer, const DeskRequest& request, int level) {
    const LoadChoice& loads = request.exercise->loads;
    const Working working = workOut(request.truss, loads, solve(request.truss, loads));
    const Notation notation = notationOf(writer, working);
    const HasFound found = foundIn(request.answers);
    const auto next = std::find_if(working.steps.begin(), working.steps.end(),
                                   [&](const Step& step) { return bringsSomething(step, found); });
    if (next == working.steps.end()) {
        return {htmlOf(say(writer, phrase::kHintNothingLeft))};
    }
    std::vector<std::string> lines{
        htmlOf(say(writer, phrase::kHintNext, {{"step", stepTitleLine(notation, *next)}}))};
    if (level >= kEquationLevel) {
        addEquations(notation, request, *next, level, lines);
    }
    return lines;
}

} // namespace gusset
