#include "desk/guidance.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/practice/standing.hpp"
#include "desk/building.hpp"
#include "phrases/classroom/practice.hpp"
#include "report/derivation/working_text.hpp"
#include "report/text/math_ml.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr int kEquationLevel = 2;
constexpr int kTermLevel = 3;

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
std::optional<std::vector<JointId>> betterBody(const Structure& structure, const HasFound& found) {
    if (!standingOfWhole(structure, found).given.empty()) {
        return allJoints(structure);
    }
    const std::vector<JointId> useful = usefulJoints(structure, found);
    return useful.empty() ? std::nullopt : std::optional(std::vector<JointId>{useful.front()});
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

std::string nameOf(const DeskBody& body, const MemberOrRestraint& force) {
    const auto* member = std::get_if<MemberId>(&force);
    return body.names[member ? body.paper.structure.restraints.size() + member->at()
                             : std::get<RestraintId>(force).at()];
}

int numberOf(const Structure& structure, const MemberOrRestraint& force) {
    const auto* member = std::get_if<MemberId>(&force);
    return member ? static_cast<int>(structure.restraints.size()) + member->index
                  : std::get<RestraintId>(force).index;
}

// A sum on a part, or its words where it is none that can be built on the page.
struct Leaving {
    std::optional<AskedSum> sum;
    std::string says;
};

Leaving leavingOnly(const Writer& writer, const DeskBody& body, const std::vector<bool>& known,
                    const MemberOrRestraint& force) {
    const Structure& structure = body.paper.structure;
    const int number = numberOf(structure, force);
    const std::string name = nameOf(body, force);
    const std::optional<AskedSum> sum =
        sumLeavingOnly(structure, body.part, known, number, askedSum(body, SumKind::X, JointId{}));
    if (!sum) {
        const std::optional<Sum> far = sumFor(body.part, known, number, structure.extent);
        const bool isMoment = far && far->takesMoments;
        return {std::nullopt,
                sayPlain(writer, isMoment ? phrase::kLeavesOnlyFar : phrase::kLeavesOnlyAcross,
                         {{"unknown", name}})};
    }
    if (sum->kind == SumKind::Moments) {
        return {sum, sayPlain(writer, phrase::kLeavesOnlyMoments,
                              {{"joint", jointLabels(writer, {sum->about})}, {"unknown", name}})};
    }
    return {sum,
            sayPlain(writer, sum->kind == SumKind::X ? phrase::kLeavesOnlyX : phrase::kLeavesOnlyY,
                     {{"unknown", name}})};
}

// That equilibrium alone does not give this truss, and by how much if that is not asked; empty of a
// truss that it does give.
std::string beyondEquilibrium(const Writer& writer, const DeskRequest& request) {
    const Solution solution = solve(request.truss, request.exercise->loads);
    if (solution.status == Status::Determinate) {
        return {};
    }
    if (solution.counting.redundants == 0) {
        return sayPlain(writer, phrase::kBeyondMechanism);
    }
    const std::vector<Question>& asked = request.exercise->questions;
    const bool isAsked = std::any_of(asked.begin(), asked.end(), [](const Question& question) {
        return std::holds_alternative<AskDeterminacy>(question.what);
    });
    return isAsked ? sayPlain(writer, phrase::kBeyondEquilibriumAsked)
                   : sayPlain(writer, phrase::kBeyondEquilibrium,
                              {{"n", std::to_string(solution.counting.redundants)}});
}

// What a body gives that gives something.
std::string givingText(const Writer& writer, const std::vector<JointId>& joints,
                       const Standing& standing) {
    const std::string count = std::to_string(standing.unknowns.size());
    const std::string name = bodyName(writer, joints, Begins::Sentence);
    return standing.given.size() == standing.unknowns.size()
               ? sayPlain(writer, phrase::kBodyGivesAll, {{"body", name}, {"unknowns", count}})
               : sayPlain(writer, phrase::kBodyGivesSome,
                          {{"body", name},
                           {"given", namesOf(writer, standing.given)},
                           {"unknowns", count}});
}

// What can still be found of a truss that equilibrium alone does not give.
std::string stillGiven(const Writer& writer, const Structure& structure, const HasFound& found) {
    const std::optional<std::vector<JointId>> other = betterBody(structure, found);
    return other ? givingText(writer, *other, standingOfPart(structure, found, *other))
                 : sayPlain(writer, phrase::kBeyondNothing);
}

std::string standingOn(const Writer& writer, const DeskRequest& request, const DeskBody& body,
                       const HasFound& found) {
    const Structure& structure = body.paper.structure;
    const std::vector<JointId>& joints = body.part.joints;
    const Standing standing = standingOfPart(structure, found, joints);
    const std::string count = std::to_string(standing.unknowns.size());
    if (standing.unknowns.empty()) {
        return sayPlain(writer, phrase::kBodyNothingLeft,
                        {{"body", bodyName(writer, joints, Begins::Inside)}});
    }
    if (!standing.given.empty()) {
        return givingText(writer, joints, standing);
    }
    if (const std::string beyond = beyondEquilibrium(writer, request); !beyond.empty()) {
        return sayPlain(writer, phrase::kBodyTooManyHere,
                        {{"unknowns", count}, {"body", bodyName(writer, joints, Begins::Inside)}}) +
               " " + beyond + " " + stillGiven(writer, structure, found);
    }
    const std::optional<std::vector<JointId>> other = betterBody(structure, found);
    return other ? sayPlain(writer, phrase::kBodyTooMany,
                            {{"unknowns", count},
                             {"body", bodyName(writer, joints, Begins::Inside)},
                             {"other", bodyName(writer, *other, Begins::Inside)}})
                 : sayPlain(
                       writer, phrase::kBodyTooManyNow,
                       {{"unknowns", count}, {"body", bodyName(writer, joints, Begins::Inside)}});
}

// Of a part that gives something: what it gives, the sum to take, the sum with its terms.
std::vector<std::string> partHint(const Writer& writer, const DeskRequest& request,
                                  const DeskBody& body, const HasFound& found, int level) {
    const Standing standing = standingOfPart(body.paper.structure, found, body.part.joints);
    std::vector<std::string> lines{htmlOf(plainLine(standingOn(writer, request, body, found)))};
    if (level < kEquationLevel || standing.given.empty()) {
        return lines;
    }
    const Leaving leaving = leavingOnly(writer, body, knownIn(found), standing.given.front());
    lines.push_back(htmlOf(plainLine(leaving.says)));
    if (level >= kTermLevel && leaving.sum) {
        const auto terms = rightTerms(body.paper.structure, body.part, *leaving.sum);
        for (std::string& line : equationHtml(writer, body, *leaving.sum, terms)) {
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

} // namespace

std::string standingText(const Writer& writer, const DeskRequest& request, const DeskBody& body) {
    const HasFound found = foundIn(request.answers);
    std::string text = standingOn(writer, request, body, found);
    const Standing standing = standingOfPart(body.paper.structure, found, body.part.joints);
    const bool tellsSums = !request.body.cut.empty() && request.exercise->hints >= Hints::Equations;
    for (std::size_t i = 0; tellsSums && i < standing.given.size(); ++i) {
        text += " " + leavingOnly(writer, body, knownIn(found), standing.given[i]).says;
    }
    return text;
}

std::vector<std::string> hintHtml(const Writer& writer, const DeskRequest& request,
                                  const DeskBody& body, int level) {
    const LoadChoice& loads = request.exercise->loads;
    const HasFound found = foundIn(request.answers);
    if (!request.body.cut.empty() &&
        !standingOfPart(body.paper.structure, found, body.part.joints).given.empty()) {
        return partHint(writer, request, body, found, level);
    }
    const Working working = workOut(request.truss, loads, solve(request.truss, loads));
    const Notation notation = notationOf(writer, working);
    const auto next = std::find_if(working.steps.begin(), working.steps.end(),
                                   [&](const Step& step) { return bringsSomething(step, found); });
    const std::vector<bool> known = knownIn(found);
    const bool isAllWritten = std::all_of(known.begin(), known.end(), [](bool is) { return is; });
    if (next == working.steps.end() && !isAllWritten) {
        return {htmlOf(plainLine(beyondEquilibrium(writer, request))),
                htmlOf(plainLine(stillGiven(writer, body.paper.structure, found)))};
    }
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
