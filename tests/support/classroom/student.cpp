#include "support/classroom/student.hpp"

#include "classroom/marking/free_bodies.hpp"
#include "core/number.hpp"
#include "support/classroom/mistakes.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace gusset::support {

double roundedToFigures(double value, int figures) {
    return std::strtod(significantNumber(value, figures).c_str(), nullptr);
}

double halfUnit(double value, int figures) {
    return value == 0 ? 0
                      : 0.5 * std::pow(10.0, std::floor(std::log10(std::abs(value))) - figures + 1);
}

bool couldBe(const std::vector<double>& written, const Result& result) {
    for (std::size_t i = 0; i < written.size(); ++i) {
        const double most = result.blurs[i] + halfUnit(written[i], kWrittenFigures);
        if (std::abs(written[i] - result.values[i]) > most * (1 + kFlat) + kFlat) {
            return false;
        }
    }
    return true;
}

Student::Student(const Truss& truss, const Exercise& exercise, const AnswerKey& key,
                 std::uint64_t seed)
    : truss_(truss), exercise_(exercise), key_(key), structure_(structureOf(truss)),
      loads_(jointLoads(truss, exercise.loads)), truth_(key.reactions), random_(seed) {
    for (Vec2& load : loads_) {
        load = (1 / toNewton(truss.units.force)) * load;
    }
    truth_.insert(truth_.end(), key.forces.begin(), key.forces.end());
    values_.resize(truth_.size());
}

std::vector<Pull> Student::pullsOn(const std::vector<JointId>& body) const {
    std::vector<Pull> pulls;
    std::vector<bool> isIn(structure_.joints.size());
    for (const JointId joint : body) {
        isIn[joint.at()] = true;
        if (loads_[joint.at()] != Vec2{}) {
            pulls.push_back({{}, loads_[joint.at()], structure_.joints[joint.at()], 1, true});
        }
    }
    const auto add = [&](std::size_t of, Vec2 along, Vec2 at) {
        pulls.push_back({of, along, at, values_[of].value_or(0), values_[of].has_value()});
    };
    for (std::size_t i = 0; i < structure_.restraints.size(); ++i) {
        const Restraint& restraint = structure_.restraints[i];
        if (isIn[restraint.joint.at()]) {
            add(i, restraint.along, structure_.joints[restraint.joint.at()]);
        }
    }
    for (std::size_t i = 0; i < structure_.bars.size(); ++i) {
        const Bar& bar = structure_.bars[i];
        const auto a = static_cast<std::size_t>(bar.a);
        const auto b = static_cast<std::size_t>(bar.b);
        if (isIn[a] != isIn[b]) {
            add(structure_.restraints.size() + i, isIn[a] ? bar.along : -bar.along,
                structure_.joints[isIn[a] ? a : b]);
        }
    }
    return pulls;
}

// The equations that can be written together for these unknowns; none if they are too many.
std::vector<std::vector<Row>> Student::rowsFor(const std::vector<JointId>& body,
                                               const std::vector<Pull>& unknown) const {
    const Row across{{1, 0}, false, {}};
    const Row up{{0, 1}, false, {}};
    if (body.size() == 1 && unknown.size() == 2) {
        return {{across, up}};
    }
    std::vector<Row> single{across, up};
    std::vector<std::vector<Row>> ways;
    for (std::size_t i = 0; body.size() > 1 && i < structure_.restraints.size(); ++i) {
        const Vec2 centre = structure_.joints[structure_.restraints[i].joint.at()];
        if (i > 0 && single.back().centre == centre) {
            continue;
        }
        single.push_back({{}, true, centre});
        if (unknown.size() == 3) {
            ways.push_back({across, up, single.back()});
        }
    }
    for (const Row& row : single) {
        const auto holds = [&](const Pull& pull) { return isHeld(row, pull); };
        if (std::count_if(unknown.begin(), unknown.end(), holds) == 1) {
            ways.push_back({row});
        }
    }
    return ways;
}

bool Student::isHeld(const Row& row, const Pull& pull) const {
    return std::abs(row.share(pull.along, pull.at)) >
           kFlat * (row.isMoment ? structure_.extent : 1);
}

std::optional<StudentStep> Student::stepBy(const std::vector<Row>& rows, std::vector<Pull> pulls,
                                           Slips slips) const {
    // An unknown that a single equation does not hold stays one.
    std::erase_if(pulls, [&](const Pull& pull) {
        return !pull.isKnown && rows.size() == 1 && !isHeld(rows[0], pull);
    });
    Table table;
    for (const Row& row : rows) {
        std::vector<double>& shares = table.emplace_back();
        for (const Pull& pull : pulls) {
            shares.push_back(row.share(pull.along, pull.at));
        }
    }
    const std::optional<Result> right = solved(pulls, table);
    if (!right) {
        return std::nullopt;
    }
    StudentStep step{{}, {}, *right, {}};
    for (const Pull& pull : pulls) {
        if (!pull.isKnown) {
            step.unknowns.push_back(*pull.of);
        }
    }
    if (slips == Slips::Listed) {
        listSlips(pulls, rows, structure_, step);
    }
    return step;
}

void Student::addSteps(std::vector<StudentStep>& steps, const std::vector<JointId>& body,
                       Slips slips) const {
    const std::vector<Pull> pulls = pullsOn(body);
    std::vector<Pull> unknown;
    std::copy_if(pulls.begin(), pulls.end(), std::back_inserter(unknown),
                 [](const Pull& pull) { return !pull.isKnown; });
    for (const std::vector<Row>& rows : rowsFor(body, unknown)) {
        if (std::optional<StudentStep> step = stepBy(rows, pulls, slips)) {
            step->body = body;
            steps.push_back(std::move(*step));
        }
    }
}

std::vector<StudentStep> Student::steps(Slips slips) const {
    std::vector<StudentStep> steps;
    addSteps(steps, allJoints(structure_), slips);
    for (std::size_t i = 0; i < structure_.joints.size(); ++i) {
        addSteps(steps, {JointId{static_cast<int>(i)}}, slips);
    }
    return steps;
}

std::optional<StudentStep> Student::next() {
    std::vector<StudentStep> now = steps(Slips::Listed);
    if (!now.empty() && now.front().body.size() > 1) {
        std::erase_if(now, [](const StudentStep& step) { return step.body.size() == 1; });
    }
    if (!now.empty()) {
        return random_.pick(now);
    }
    // Stuck: one force by a section, without a slip.
    for (std::size_t i = 0; i < values_.size(); ++i) {
        if (!values_[i]) {
            return StudentStep{{}, {i}, {{truth_[i]}, {0}}, {}};
        }
    }
    return std::nullopt;
}

void Student::go(const StudentStep& step, const std::vector<double>& values) {
    for (std::size_t i = 0; i < step.unknowns.size(); ++i) {
        values_[step.unknowns[i]] = values[i];
    }
}

Answers Student::sheet(int figures) const {
    Answers answers = blankAnswers(truss_, exercise_);
    for (std::size_t i = 0; i < values_.size(); ++i) {
        const double rounded = std::abs(*values_[i]) < 1e-9 * key_.largest
                                   ? 0
                                   : roundedToFigures(*values_[i], figures);
        const WrittenForce force{std::abs(rounded), rounded > 0 ? 1 : rounded < 0 ? -1 : 0};
        const std::size_t restraints = answers.reactions.size();
        (i < restraints ? answers.reactions[i] : answers.forces[i - restraints]) = force;
    }
    return answers;
}

} // namespace gusset::support
