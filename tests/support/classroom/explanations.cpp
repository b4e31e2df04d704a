#include "support/classroom/explanations.hpp"

#include <algorithm>

namespace gusset::support {

namespace {

class Explainer {
public:
    Explainer(const std::vector<double>& written, std::size_t most)
        : written_(written), most_(most) {}

    void explain(Student student, const std::vector<SlipKind>& kinds) {
        takeWhatFollows(student);
        const std::vector<StudentStep> steps =
            student.steps(kinds.size() < most_ ? Slips::Listed : Slips::NotListed);
        if (steps.empty()) {
            explainWithoutStep(std::move(student), kinds);
            return;
        }
        for (const StudentStep& step : steps) {
            const std::vector<double> here = writtenFor(step);
            for (const SlipKind kind : kindsOf(step, here)) {
                Student next = student;
                next.go(step, here);
                std::vector<SlipKind> more = kinds;
                more.insert(std::lower_bound(more.begin(), more.end(), kind), kind);
                explain(std::move(next), more);
            }
        }
    }

    SlipSets found;

private:
    std::vector<double> writtenFor(const StudentStep& step) const {
        std::vector<double> values;
        for (const std::size_t unknown : step.unknowns) {
            values.push_back(written_[unknown]);
        }
        return values;
    }

    void takeWhatFollows(Student& student) const {
        for (bool goesOn = true; goesOn;) {
            goesOn = false;
            for (const StudentStep& step : student.steps(Slips::NotListed)) {
                const std::vector<double> here = writtenFor(step);
                const bool isNew = std::none_of(
                    step.unknowns.begin(), step.unknowns.end(),
                    [&](std::size_t unknown) { return student.values()[unknown].has_value(); });
                if (isNew && couldBe(here, step.right)) {
                    student.go(step, here);
                    goesOn = true;
                }
            }
        }
    }

    // At the end, or where only a section goes on.
    void explainWithoutStep(Student student, const std::vector<SlipKind>& kinds) {
        const auto& values = student.values();
        const auto first = std::find(values.begin(), values.end(), std::nullopt);
        if (first == values.end()) {
            found.insert(kinds);
            return;
        }
        const auto unknown = static_cast<std::size_t>(first - values.begin());
        const Result truth{{student.truth()[unknown]}, {0}};
        if (couldBe({written_[unknown]}, truth)) {
            student.go({{}, {unknown}, truth, {}}, {written_[unknown]});
            explain(std::move(student), kinds);
        }
    }

    std::set<SlipKind> kindsOf(const StudentStep& step, const std::vector<double>& here) const {
        std::set<SlipKind> kinds;
        for (const PossibleSlip& slip : step.slips) {
            if (couldBe(here, slip.result)) {
                kinds.insert(slip.kind);
            }
        }
        const std::set<SlipKind> all = kinds;
        std::erase_if(kinds, [&](SlipKind kind) {
            return std::any_of(all.begin(), all.end(),
                               [&](SlipKind other) { return outranks(other, kind); });
        });
        return kinds;
    }

    const std::vector<double>& written_;
    std::size_t most_;
};

} // namespace

bool outranks(SlipKind kind, SlipKind other) {
    const auto rank = [](SlipKind each) {
        switch (each) {
        case SlipKind::ZeroMisjudged:
        case SlipKind::BySymmetry:
            return 0;
        case SlipKind::WrongSign:
        case SlipKind::EarlierSign:
            return 2;
        case SlipKind::WrongArm:
            return 3;
        case SlipKind::DigitsSwapped:
            return 4;
        default:
            return 1;
        }
    };
    const bool isSeen = kind == SlipKind::WrongSense || kind == SlipKind::ReactionTurned;
    return rank(kind) < rank(other) && (rank(kind) == 0 || rank(other) > 2 || isSeen);
}

SlipSets waysTo(const std::vector<double>& written, const Student& student, std::size_t most) {
    Explainer explainer(written, most);
    explainer.explain(student, {});
    return explainer.found;
}

} // namespace gusset::support
