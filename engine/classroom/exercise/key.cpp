#include "classroom/exercise/key.hpp"

#include "phrases/faults/exercises.hpp"
#include "statics/moving/influence.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

Statement placeOfQuestion(std::size_t index) {
    return statement(phrase::kPlaceQuestion, {{"n", index + 1}});
}

bool needsForces(const Question& question) {
    return !std::holds_alternative<AskDeterminacy>(question.what);
}

class KeyMaker {
public:
    KeyMaker(const Truss& truss, const Exercise& exercise)
        : truss_(truss), exercise_(exercise), solution_(solve(truss, exercise.loads)) {}

    Outcome<AnswerKey> make() {
        for (std::size_t i = 0; i < exercise_.questions.size(); ++i) {
            if (needsForces(exercise_.questions[i]) && !solution_.solved) {
                return Issue{IssueCode::Unstable, placeOfQuestion(i), phrase::kAskedOfUnsolved};
            }
        }
        readForces();
        key_.degree = solution_.counting.mechanisms > 0 ? -solution_.counting.mechanisms
                                                        : solution_.counting.redundants;
        key_.values.resize(exercise_.questions.size());
        for (std::size_t i = 0; i < exercise_.questions.size(); ++i) {
            const auto& what = exercise_.questions[i].what;
            if (const auto* asked = std::get_if<AskDisplacement>(&what)) {
                if (!solution_.displaced) {
                    return Issue{IssueCode::Missing, placeOfQuestion(i),
                                 phrase::kAskedOfUndisplaced};
                }
                key_.values[i] = displacement(*asked);
            } else if (const auto* line = std::get_if<AskInfluence>(&what)) {
                const Outcome<double> value = ordinate(*line);
                if (!value) {
                    return value.issues();
                }
                key_.values[i] = value.value();
            }
        }
        return std::move(key_);
    }

private:
    void readForces() {
        if (!solution_.solved) {
            return;
        }
        const double unit = toNewton(truss_.units.force);
        for (const double force : solution_.forces) {
            key_.forces.push_back(isZero(solution_, force) ? 0 : force / unit);
        }
        for (const double reaction : solution_.reactions) {
            key_.reactions.push_back(isZero(solution_, reaction) ? 0 : reaction / unit);
        }
        for (const std::vector<double>* all : {&key_.forces, &key_.reactions}) {
            for (const double force : *all) {
                key_.largest = std::max(key_.largest, std::abs(force));
            }
        }
    }

    double displacement(const AskDisplacement& asked) const {
        const Vec2 moved = solution_.displacements[asked.joint.at()];
        return (asked.axis == Axis::X ? moved.x : moved.y) / toMetre(truss_.units.displacement);
    }

    Outcome<double> ordinate(const AskInfluence& asked) const {
        const Effect effect{EffectKind::MemberForce, asked.of, {}, false};
        const Outcome<PathAnalysis> analysis = analysePath(truss_, asked.path);
        if (!analysis) {
            return analysis.issues();
        }
        const auto at = std::find(asked.path.begin(), asked.path.end(), asked.at);
        return influenceLine(analysis.value(), effect)
            .ordinates[static_cast<std::size_t>(at - asked.path.begin())];
    }

    const Truss& truss_;
    const Exercise& exercise_;
    Solution solution_;
    AnswerKey key_;
};

} // namespace

Outcome<AnswerKey> keyOf(const Truss& truss, const Exercise& exercise) {
    return KeyMaker(truss, exercise).make();
}

double allowance(const Tolerance& tolerance, double value, double largest) {
    const double floor = largest * tolerance.floor / 100;
    if (tolerance.figures == 0) {
        return std::max(std::abs(value) * tolerance.percent / 100, floor);
    }
    if (value == 0) {
        return floor;
    }
    // Half a unit of the last of so many figures.
    const double power = std::floor(std::log10(std::abs(value))) - tolerance.figures + 1;
    return std::max(0.5 * std::pow(10.0, power), floor);
}

} // namespace gusset
