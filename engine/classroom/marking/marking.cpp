#include "classroom/marking/marking.hpp"

#include "classroom/marking/own_equations.hpp"
#include "statics/solve/solution.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

constexpr double kMethodMark = 1;
constexpr double kAccuracyMark = 1;

// Wrong in accuracy alone: the equation has the right terms (Edexcel, M1: "the correct number of
// terms", all of them resolved).
bool keepsMethod(SlipKind kind) {
    return kind != SlipKind::LeftOut && kind != SlipKind::NotResolved &&
           kind != SlipKind::ToOneBar && kind != SlipKind::BySymmetry &&
           kind != SlipKind::ZeroMisjudged;
}

// The whole, the joints in the order of the working, then the two sides of its sections.
std::vector<std::vector<JointId>> bodiesInOrder(const Structure& structure,
                                                const Working& working) {
    const std::vector<JointId> all = allJoints(structure);
    std::vector<std::vector<JointId>> bodies{all};
    std::vector<std::vector<JointId>> sections;
    std::vector<bool> isIn(all.size());
    const auto addJoint = [&](JointId joint) {
        if (joint.valid() && !isIn[joint.at()]) {
            isIn[joint.at()] = true;
            bodies.push_back({joint});
        }
    };
    for (const Step& step : working.steps) {
        addJoint(step.joint);
        if (step.kind == StepKind::SectionIntro && step.body.size() > 1) {
            std::vector<JointId> rest;
            std::copy_if(all.begin(), all.end(), std::back_inserter(rest), [&](JointId joint) {
                return std::find(step.body.begin(), step.body.end(), joint) == step.body.end();
            });
            sections.push_back(step.body);
            sections.push_back(rest);
        }
    }
    std::for_each(all.begin(), all.end(), addJoint);
    bodies.insert(bodies.end(), sections.begin(), sections.end());
    return bodies;
}

} // namespace

struct MarkingScheme::Basis {
    const Truss& truss;
    const Exercise& exercise;
    AnswerKey key;
    bool carries = false;
    SheetBasis sheet{};
    std::vector<std::optional<std::size_t>> askedBy{}; // of each unknown: the question

    Basis(const Truss& model, const Exercise& asked, AnswerKey answers)
        : truss(model), exercise(asked), key(std::move(answers)) {
        sheet.structure = structureOf(truss);
        sheet.truth = key.reactions;
        sheet.truth.insert(sheet.truth.end(), key.forces.begin(), key.forces.end());
        sheet.largest = key.largest;
        sheet.tolerance = exercise.tolerance;
        sheet.metre = toMetre(truss.units.length);
        askedBy.resize(sheet.structure.restraints.size() + truss.members.size());
        for (std::size_t i = 0; i < exercise.questions.size(); ++i) {
            noteAsked(i);
        }
        const Solution solution = solve(truss, exercise.loads);
        carries = solution.status == Status::Determinate && solution.solved;
        if (carries) {
            addParts(workOut(truss, exercise.loads, solution));
        }
    }

    void addParts(const Working& working) {
        std::vector<Vec2> loads = jointLoads(truss, sheet.structure, exercise.loads);
        for (Vec2& load : loads) {
            load = (1 / toNewton(truss.units.force)) * load;
        }
        for (const std::vector<JointId>& body : bodiesInOrder(sheet.structure, working)) {
            PartOfTruss part = partOf(sheet.structure, loads, body);
            if (!part.forces.empty()) {
                sheet.parts.push_back(std::move(part));
            }
        }
    }

    void noteAsked(std::size_t question) {
        const std::size_t restraints = sheet.structure.restraints.size();
        const auto ask = [&](std::size_t unknown) {
            askedBy[unknown] = askedBy[unknown].value_or(question);
        };
        const auto& what = exercise.questions[question].what;
        if (std::holds_alternative<AskReactions>(what)) {
            for (std::size_t i = 0; i < restraints; ++i) {
                ask(i);
            }
        } else if (const auto* forces = std::get_if<AskForces>(&what)) {
            for (const MemberId member : forces->members) {
                ask(restraints + member.at());
            }
        }
    }

    std::vector<std::optional<double>> writtenIn(const Answers& answers) const {
        std::vector<std::optional<double>> written;
        for (const WrittenForce& reaction : answers.reactions) {
            written.push_back(valueOf(reaction));
        }
        for (std::size_t i = 0; i < answers.forces.size(); ++i) {
            const WrittenForce& force = answers.forces[i];
            const bool isNought = isBlank(force) && answers.zeros[i] == true;
            written.push_back(isNought ? std::optional(0.0) : valueOf(force));
        }
        return written;
    }

    // In a truss that equilibrium alone does not solve, and where nothing was solved.
    Explanation withoutCarrying(const std::vector<std::optional<double>>& written) const {
        Explanation found;
        found.accounts.resize(written.size());
        for (std::size_t i = 0; i < sheet.truth.size(); ++i) {
            if (!written[i]) {
                continue;
            }
            const int unknown = static_cast<int>(i);
            const bool right = isRight(sheet, unknown, *written[i]);
            found.accounts[i].verdict = right ? Verdict::Right : Verdict::Slip;
            if (!right) {
                found.accounts[i].slip = found.slips.size();
                found.slips.push_back({{}, {}, {unknown}});
            }
        }
        return found;
    }

    static double marksOf(const MarkedForce& force, bool isTrivial,
                          const std::vector<Slip>& slips) {
        switch (force.verdict) {
        case Verdict::Right:
        case Verdict::Unsupported:
            return kMethodMark + kAccuracyMark;
        case Verdict::Carried:
            return isTrivial && force.truth != 0 ? kMethodMark : kMethodMark + kAccuracyMark;
        case Verdict::Slip: {
            // Of a slip that is not recognised the equation may well have been right.
            const std::optional<SlipKind>& kind = slips[*force.slip].kind;
            return !kind || keepsMethod(*kind) ? kMethodMark : 0;
        }
        case Verdict::Blank:
            break;
        }
        return 0;
    }

    Slip tell(const FoundSlip& found, const Explanation& all,
              std::vector<std::optional<double>> values) const {
        Slip slip;
        slip.fits = found.fits;
        if (found.fits.size() == 1) {
            slip.kind = found.fits.front();
        }
        for (const int answer : found.answers) {
            slip.answers.push_back(unknownNumbered(sheet.structure, answer));
        }
        if (found.part) {
            slip.body = sheet.parts[*found.part].joints;
            const Rounding rounding = roundingOf(values);
            for (std::size_t i = 0; i < values.size(); ++i) { // a blank is what would stand in it
                values[i] = values[i] ? values[i] : all.accounts[i].expected;
            }
            slip.equations =
                brokenSums(sheet, sheet.parts[*found.part], values, found.answers, rounding);
        }
        return slip;
    }

    Marking report(const Explanation& found,
                   const std::vector<std::optional<double>>& written) const {
        Marking marking;
        const auto bodyOf = [&](std::optional<std::size_t> part) {
            return part ? sheet.parts[*part].joints : std::vector<JointId>{};
        };
        marking.isOfFewSlips = found.isOfFewSlips;
        for (const FoundSlip& slip : found.slips) {
            marking.slips.push_back(tell(slip, found, written));
        }
        marking.questions.resize(exercise.questions.size());
        for (std::size_t i = 0; i < written.size(); ++i) {
            const Account& account = found.accounts[i];
            MarkedForce force{unknownNumbered(sheet.structure, static_cast<int>(i)),
                              askedBy[i].has_value(),
                              account.verdict,
                              written[i],
                              sheet.truth.empty() ? 0 : sheet.truth[i],
                              account.expected,
                              bodyOf(account.part),
                              account.slip,
                              0,
                              0};
            if (force.isAsked) {
                force.outOf = kMethodMark + kAccuracyMark;
                force.marks = marksOf(force, account.isTrivial, marking.slips);
                marking.questions[*askedBy[i]].marks += force.marks;
                marking.questions[*askedBy[i]].outOf += force.outOf;
            }
            marking.forces.push_back(std::move(force));
        }
        return marking;
    }

    // One mark for each member that carries nothing, less one for each that does.
    MarkedQuestion zeroMembers(const Answers& answers) const {
        MarkedQuestion marked;
        for (std::size_t i = 0; i < key.forces.size(); ++i) {
            const bool isZero = key.forces[i] == 0;
            marked.outOf += isZero ? 1 : 0;
            marked.marks += answers.zeros[i] != true ? 0 : isZero ? 1 : -1;
        }
        marked.marks = std::max(marked.marks, 0.0);
        return marked;
    }

    void markOthers(Marking& marking, const Answers& answers) const {
        for (std::size_t i = 0; i < exercise.questions.size(); ++i) {
            const auto& what = exercise.questions[i].what;
            MarkedQuestion& marked = marking.questions[i];
            if (std::holds_alternative<AskZeroMembers>(what)) {
                marked = zeroMembers(answers);
            } else if (std::holds_alternative<AskDeterminacy>(what)) {
                marked = {answers.degree == key.degree ? 1.0 : 0.0, 1, false, {}};
            } else if (std::holds_alternative<AskSteps>(what)) {
                marked = {0, exercise.questions[i].marks, true, {}};
            } else if (key.values[i]) {
                const double truth = *key.values[i];
                const bool right =
                    answers.values[i] &&
                    std::abs(*answers.values[i] - truth) <=
                        allowance(exercise.tolerance, truth, std::abs(truth)) * (1 + 1e-9);
                marked = {right ? kMethodMark + kAccuracyMark : 0,
                          kMethodMark + kAccuracyMark,
                          false,
                          {}};
            }
            marked.what = what;
        }
    }

    // To the marks that the exercise gives for a question, where it does.
    void scale(Marking& marking) const {
        for (std::size_t i = 0; i < marking.questions.size(); ++i) {
            MarkedQuestion& question = marking.questions[i];
            if (question.isByHand) {
                continue;
            }
            const double marks = exercise.questions[i].marks;
            const double by = marks > 0 && question.outOf > 0 ? marks / question.outOf : 1;
            question.marks *= by;
            question.outOf *= by;
            marking.marks += question.marks;
            marking.outOf += question.outOf;
            for (std::size_t k = 0; k < marking.forces.size(); ++k) {
                if (askedBy[k] == i) {
                    marking.forces[k].marks *= by;
                    marking.forces[k].outOf *= by;
                }
            }
        }
    }
};

MarkingScheme::MarkingScheme(const Truss& truss, const Exercise& exercise, AnswerKey key)
    : basis_(std::make_unique<Basis>(truss, exercise, std::move(key))) {}
MarkingScheme::~MarkingScheme() = default;
MarkingScheme::MarkingScheme(MarkingScheme&&) noexcept = default;
MarkingScheme& MarkingScheme::operator=(MarkingScheme&&) noexcept = default;

Marking MarkingScheme::mark(const Answers& answers) const {
    const std::vector<std::optional<double>> written = basis_->writtenIn(answers);
    Marking marking = basis_->report(basis_->carries ? explainSheet(basis_->sheet, written)
                                                     : basis_->withoutCarrying(written),
                                     written);
    basis_->markOthers(marking, answers);
    basis_->scale(marking);
    return marking;
}

} // namespace gusset
