#include "support/classroom/worked_sheet.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset::support {

namespace {

Exercise everyForce(const Truss& truss) {
    Exercise exercise;
    AskForces forces;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        forces.members.push_back(MemberId{static_cast<int>(i)});
    }
    exercise.questions = {{AskReactions{}, 0}, {forces, 0}};
    return exercise;
}

// Twice the tolerance, so that it is a slip and not a rounding.
bool isWrong(const Asked& asked, double right, double value) {
    return std::abs(value - right) >
           2 * allowance(asked.exercise.tolerance, right, asked.key.largest);
}
bool isWrongAt(const Asked& asked, const StudentStep& step, const PossibleSlip& slip) {
    for (std::size_t i = 0; i < slip.result.values.size(); ++i) {
        if (isWrong(asked, step.right.values[i], slip.result.values[i])) {
            return true;
        }
    }
    return false;
}

bool isLikeAnother(const StudentStep& step, const PossibleSlip& slip) {
    return std::any_of(step.slips.begin(), step.slips.end(), [&](const PossibleSlip& other) {
        return other.kind != slip.kind && !outranks(slip.kind, other.kind) &&
               couldBe(slip.result.values, other.result);
    });
}

std::vector<MemberOrRestraint> named(const Asked& asked, const std::vector<std::size_t>& unknowns) {
    std::vector<MemberOrRestraint> names;
    const int restraints = static_cast<int>(asked.key.reactions.size());
    for (const std::size_t unknown : unknowns) {
        const int number = static_cast<int>(unknown);
        names.push_back(number < restraints ? MemberOrRestraint(RestraintId{number})
                                            : MemberOrRestraint(MemberId{number - restraints}));
    }
    return names;
}

std::vector<double> roundedValues(const Student& student) {
    std::vector<double> values;
    for (const std::optional<double>& value : student.values()) {
        values.push_back(roundedToFigures(*value, kWrittenFigures));
    }
    return values;
}

// Beside the student goes one who does the same with rounded values.
class Worker {
public:
    Worker(const Asked& asked, const std::vector<SlipKind>& kinds, std::uint64_t seed)
        : asked_(asked), kinds_(kinds), student_(asked.truss, asked.exercise, asked.key, seed),
          random_(seed + 1) {}

    Worked work() {
        const Student before = student_;
        Student rounding = student_;
        int wait = random_.integer(0, static_cast<int>(asked_.truss.joints.size()) / 2);
        while (const std::optional<StudentStep> step = student_.next()) {
            const std::optional<StudentStep> rounded = rounding.next();
            if (step->body.empty() && !worked_.made.empty()) {
                // Only a section would go on, and this one forgets the slip: no student works so.
                worked_.made.clear();
                worked_.sheet = blankAnswers(asked_.truss, asked_.exercise);
                return std::move(worked_);
            }
            const std::vector<std::size_t> fitting = slipsAt(*step, wait);
            if (fitting.empty() || !rounded || rounded->slips.size() != step->slips.size()) {
                go(*step, step->right, rounding, rounded ? rounded->right : step->right);
                continue;
            }
            const std::size_t which = random_.pick(fitting);
            const PossibleSlip& slip = step->slips[which];
            worked_.made.push_back(
                {slip.kind, step->body, named(asked_, step->unknowns),
                 isLikeAnother(*step, slip) ? Hidden::AtTheStep : Hidden::Nowhere});
            go(*step, slip.result, rounding, rounded->slips[which].result);
            wait = random_.integer(0, 2);
        }
        worked_.sheet = student_.sheet(kWrittenFigures);
        judge(before, rounding);
        return std::move(worked_);
    }

private:
    std::vector<std::size_t> slipsAt(const StudentStep& step, int& wait) {
        std::vector<std::size_t> fitting;
        for (std::size_t i = 0; i < step.slips.size(); ++i) {
            const bool changes = isWrongAt(asked_, step, step.slips[i]);
            worked_.possible += 1;
            worked_.without += changes ? 0 : 1;
            if (changes && worked_.made.size() < kinds_.size() &&
                step.slips[i].kind == kinds_[worked_.made.size()]) {
                fitting.push_back(i);
            }
        }
        const bool isTime = worked_.made.size() < kinds_.size() && --wait < 0;
        return isTime ? fitting : std::vector<std::size_t>{};
    }

    void go(const StudentStep& step, const Result& result, Student& rounding,
            const Result& rounded) {
        student_.go(step, result.values);
        std::vector<double> values;
        for (const double value : rounded.values) {
            values.push_back(roundedToFigures(value, kWrittenFigures));
        }
        rounding.go(step, values);
    }

    void judge(const Student& before, const Student& rounding) {
        if (worked_.made.size() < kinds_.size() || kinds_.empty()) {
            return;
        }
        for (std::size_t i = 0; i < asked_.key.reactions.size() + asked_.key.forces.size(); ++i) {
            const double value = *student_.values()[i];
            if (std::abs(value - *rounding.values()[i]) >
                allowance(asked_.exercise.tolerance, value, asked_.key.largest) / 2) {
                worked_.made.front().hidden = Hidden::InRounding;
                return;
            }
        }
        if (worked_.hidden() != Hidden::Nowhere) {
            return;
        }
        std::vector<SlipKind> kinds = kinds_;
        std::sort(kinds.begin(), kinds.end());
        SlipSets ways = waysTo(roundedValues(student_), before, kinds.size());
        ways.erase(kinds);
        if (!ways.empty()) {
            worked_.made.front().hidden = Hidden::InTheSheet;
        }
    }

    const Asked& asked_;
    const std::vector<SlipKind>& kinds_;
    Student student_;
    Random random_;
    Worked worked_;
};

} // namespace

Asked::Asked(Truss model)
    : truss(std::move(model)), exercise(everyForce(truss)), key(keyOf(truss, exercise).value()) {}

Hidden Worked::hidden() const {
    for (const Made& each : made) {
        if (each.hidden != Hidden::Nowhere) {
            return each.hidden;
        }
    }
    return Hidden::Nowhere;
}

Worked workWith(const Asked& asked, const std::vector<SlipKind>& kinds, std::uint64_t seed) {
    return Worker(asked, kinds, seed).work();
}

} // namespace gusset::support
