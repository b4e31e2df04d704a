#include "support/classroom/student.hpp"

#include "core/number.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <string>

namespace gusset::support {

namespace {

// Results closer than this share of the larger one are the same on a sheet of four figures, after
// the rounding of what they come from.
constexpr double kSame = 2e-3;
constexpr double kFlat = 1e-9;

struct Pull {                      // a force on the body
    std::optional<std::size_t> of; // none: a load
    Vec2 along;                    // a load: the force
    Vec2 at;
    double value = 1; // of a known one
    bool isKnown = true;
};
struct Row { // ΣF along `along`, or ΣM about `centre`
    Vec2 along;
    bool isMoment = false;
    Vec2 centre;

    double share(Vec2 force, Vec2 at) const {
        const Vec2 arm = at - centre;
        return isMoment ? arm.x * force.y - arm.y * force.x : dot(along, force);
    }
};
using Table = std::vector<std::vector<double>>; // share of each pull in each row

// Cramer's rule, as by hand.
double determinant(const Table& m) {
    if (m.size() == 1) {
        return m[0][0];
    }
    if (m.size() == 2) {
        return m[0][0] * m[1][1] - m[0][1] * m[1][0];
    }
    return m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
           m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
           m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
}

std::optional<std::vector<double>> solved(const std::vector<Pull>& pulls, const Table& table) {
    Table matrix(table.size());
    std::vector<double> rest(table.size());
    for (std::size_t r = 0; r < table.size(); ++r) {
        for (std::size_t p = 0; p < pulls.size(); ++p) {
            if (pulls[p].isKnown) {
                rest[r] -= table[r][p] * pulls[p].value;
            } else {
                matrix[r].push_back(table[r][p]);
            }
        }
    }
    const double whole = determinant(matrix);
    if (std::abs(whole) < 1e-3) {
        return std::nullopt;
    }
    std::vector<double> values;
    for (std::size_t c = 0; c < table.size(); ++c) {
        Table changed = matrix;
        for (std::size_t r = 0; r < table.size(); ++r) {
            changed[r][c] = rest[r];
        }
        values.push_back(determinant(changed) / whole);
    }
    return values;
}

bool leans(Vec2 along) {
    return std::abs(along.x) > kFlat * length(along) && std::abs(along.y) > kFlat * length(along);
}
Vec2 exchanged(Vec2 v) {
    return {std::copysign(std::abs(v.y), v.x), std::copysign(std::abs(v.x), v.y)};
}
bool differs(double a, double b) { return std::abs(a - b) > 0.05 * std::abs(b); }
double exchangedDigits(double value) {
    std::string text = significantNumber(std::abs(value), 4);
    for (std::size_t i = 0; i + 1 < text.size(); ++i) {
        if (text[i] != '.' && text[i + 1] != '.' && text[i] != text[i + 1]) {
            std::swap(text[i], text[i + 1]);
            break;
        }
    }
    return std::copysign(std::strtod(text.c_str(), nullptr), value);
}

class Mistaker {
public:
    Mistaker(const std::vector<Pull>& pulls, const std::vector<Row>& rows, StudentStep& step,
             std::size_t restraints)
        : pulls_(pulls), rows_(rows), step_(step), restraints_(restraints) {
        for (const Row& row : rows) {
            std::vector<double>& shares = table_.emplace_back();
            for (const Pull& pull : pulls) {
                shares.push_back(row.share(pull.along, pull.at));
            }
        }
    }

    void all() {
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            if (!pulls_[p].isKnown || pulls_[p].value != 0) {
                ofTerm(p);
            }
        }
        for (std::size_t i = 0; i < step_.unknowns.size(); ++i) {
            ofValue(i);
        }
        taken();
    }

private:
    void put(SlipKind kind, std::optional<std::vector<double>> values) {
        if (values) {
            step_.slips.push_back({kind, *values});
        }
    }
    void with(SlipKind kind, std::size_t p, std::optional<std::size_t> only,
              const std::function<double(const Row&, double)>& change) {
        Table table = table_;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (!only || *only == r) {
                table[r][p] = change(rows_[r], table[r][p]);
            }
        }
        put(kind, solved(pulls_, table));
    }
    void ofTerm(std::size_t p) {
        const Pull& pull = pulls_[p];
        std::size_t holding = 0;
        for (const auto& row : table_) {
            holding += std::abs(row[p]) > kFlat ? 1 : 0;
        }
        const auto none = [](const Row&, double) { return 0.0; };
        const auto turned = [](const Row&, double share) { return -share; };
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (std::abs(table_[r][p]) <= kFlat) {
                continue;
            }
            if (pull.isKnown || holding > 1) {
                with(SlipKind::LeftOut, p, r, none);
                with(SlipKind::WrongSign, p, r, turned);
            }
            if (leans(pull.along) && !rows_[r].isMoment) {
                with(SlipKind::NotResolved, p, r, [&](const Row&, double share) {
                    return std::copysign(length(pull.along), share);
                });
            }
            if (leans(pull.along)) {
                with(SlipKind::SineForCosine, p, r, [&](const Row& row, double) {
                    return row.share(exchanged(pull.along), pull.at);
                });
            }
            if (rows_[r].isMoment) {
                with(SlipKind::WrongArm, p, r, [&](const Row& row, double share) {
                    return std::copysign(length(pull.along) * length(pull.at - row.centre), share);
                });
            }
        }
        if (pull.isKnown && holding > 1) {
            with(SlipKind::LeftOut, p, {}, none);
            with(pull.of ? SlipKind::EarlierSign : SlipKind::WrongSign, p, {}, turned);
        }
        if (leans(pull.along)) {
            with(SlipKind::SineForCosine, p, {},
                 [&](const Row& row, double) { return row.share(exchanged(pull.along), pull.at); });
        }
    }
    // A slip in one value, with the others as they follow from the equations, or from one of them
    // with the wrong value in it.
    void ofValue(std::size_t i) {
        const bool isReaction = step_.unknowns[i] < restraints_;
        const auto becomes = [&](SlipKind kind, double value) {
            std::vector<double> values = step_.right;
            values[i] = value;
            put(kind, values);
            for (std::size_t k = 0; k < values.size(); ++k) {
                for (std::size_t r = 0; k != i && r < rows_.size(); ++r) {
                    std::vector<double> carried = values;
                    if (const std::optional<double> other = balanced(r, k, values)) {
                        carried[k] = *other;
                        put(kind, carried);
                    }
                }
            }
        };
        becomes(isReaction ? SlipKind::ReactionTurned : SlipKind::WrongSense, -step_.right[i]);
        if (!isReaction) {
            becomes(SlipKind::ZeroMisjudged, 0);
        }
        for (const double factor : {2.0, 10.0, 1000.0, 9.81}) {
            becomes(SlipKind::WrongFactor, step_.right[i] * factor);
            becomes(SlipKind::WrongFactor, step_.right[i] / factor);
        }
        becomes(SlipKind::DigitsSwapped, exchangedDigits(step_.right[i]));
    }
    // Unknown k from one row with these values for the others.
    std::optional<double> balanced(std::size_t r, std::size_t k,
                                   const std::vector<double>& values) const {
        double rest = 0;
        double share = 0;
        std::size_t unknown = 0;
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            if (pulls_[p].isKnown) {
                rest -= table_[r][p] * pulls_[p].value;
            } else if (unknown == k) {
                share = table_[r][p];
                ++unknown;
            } else {
                rest -= table_[r][p] * values[unknown];
                ++unknown;
            }
        }
        return std::abs(share) > 1e-3 ? std::optional(rest / share) : std::nullopt;
    }
    void taken() {
        if (rows_.size() == 2 && step_.body.size() == 1) {
            alone(0);
            alone(1);
        } else if (rows_.size() == 3) {
            halved();
        }
    }
    // Both members of a joint from the same sum, each without the other.
    void alone(std::size_t r) {
        double rest = 0;
        std::vector<double> values;
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            rest -= pulls_[p].isKnown ? table_[r][p] * pulls_[p].value : 0;
        }
        for (std::size_t p = 0; p < pulls_.size(); ++p) {
            if (!pulls_[p].isKnown && std::abs(table_[r][p]) > 1e-3) {
                values.push_back(rest / table_[r][p]);
            }
        }
        // If one of the two stands alone in that sum anyway, the other's term is merely left out.
        if (values.size() == 2 && differs(values[0], step_.right[0]) &&
            differs(values[1], step_.right[1])) {
            put(SlipKind::ToOneBar, values);
        }
    }
    void halved() {
        double total = 0;
        std::vector<double> values = step_.right;
        std::vector<std::size_t> upright;
        std::size_t i = 0;
        for (const Pull& pull : pulls_) {
            total += pull.of ? 0 : pull.along.y;
            if (pull.of && !pull.isKnown) {
                if (std::abs(pull.along.y) > 1 - kFlat) {
                    upright.push_back(i);
                }
                ++i;
            }
        }
        if (upright.size() == 2 && total != 0) {
            values[upright[0]] = values[upright[1]] = -total / 2;
            put(SlipKind::BySymmetry, values);
        }
    }

    const std::vector<Pull>& pulls_;
    const std::vector<Row>& rows_;
    StudentStep& step_;
    std::size_t restraints_;
    Table table_;
};

} // namespace

double roundedToFigures(double value, int figures) {
    return std::strtod(significantNumber(value, figures).c_str(), nullptr);
}

bool looksTheSame(const std::vector<double>& a, const std::vector<double>& b) {
    double largest = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        largest = std::max({largest, std::abs(a[i]), std::abs(b[i])});
    }
    for (std::size_t i = 0; i < a.size(); ++i) {
        if (std::abs(a[i] - b[i]) > kSame * largest) {
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

std::optional<StudentStep> Student::stepOn(const std::vector<JointId>& body) const {
    std::vector<Pull> pulls;
    StudentStep step{body, {}, {}, {}};
    const auto isIn = [&](std::size_t joint) {
        return std::any_of(body.begin(), body.end(),
                           [&](JointId each) { return each.at() == joint; });
    };
    const auto add = [&](std::size_t of, Vec2 along, Vec2 at) {
        pulls.push_back({of, along, at, values_[of].value_or(0), values_[of].has_value()});
        if (!values_[of]) {
            step.unknowns.push_back(of);
        }
    };
    for (const JointId joint : body) {
        if (loads_[joint.at()] != Vec2{}) {
            pulls.push_back({{}, loads_[joint.at()], structure_.joints[joint.at()], 1, true});
        }
    }
    for (std::size_t i = 0; i < structure_.restraints.size(); ++i) {
        const Restraint& restraint = structure_.restraints[i];
        if (isIn(restraint.joint.at())) {
            add(i, restraint.along, structure_.joints[restraint.joint.at()]);
        }
    }
    for (std::size_t i = 0; i < structure_.bars.size(); ++i) {
        const Bar& bar = structure_.bars[i];
        const auto a = static_cast<std::size_t>(bar.a);
        const auto b = static_cast<std::size_t>(bar.b);
        if (isIn(a) != isIn(b)) {
            add(structure_.restraints.size() + i, isIn(a) ? bar.along : -bar.along,
                structure_.joints[isIn(a) ? a : b]);
        }
    }
    std::vector<Row> rows;
    const bool isWhole = body.size() > 1;
    if (step.unknowns.empty() || step.unknowns.size() > (isWhole ? 3u : 2u) ||
        (isWhole && step.unknowns.size() != 3)) {
        return std::nullopt;
    }
    const Row across{{1, 0}, false, {}};
    const Row up{{0, 1}, false, {}};
    if (isWhole) {
        rows = {across, up,
                Row{{}, true, structure_.joints[structure_.restraints.front().joint.at()]}};
    } else if (step.unknowns.size() == 2) {
        rows = {across, up};
    } else {
        const auto unknown = std::find_if(pulls.begin(), pulls.end(),
                                          [](const Pull& pull) { return !pull.isKnown; });
        rows = {std::abs(unknown->along.x) > std::abs(unknown->along.y) ? across : up};
    }
    Table table;
    for (const Row& row : rows) {
        std::vector<double>& shares = table.emplace_back();
        for (const Pull& pull : pulls) {
            shares.push_back(row.share(pull.along, pull.at));
        }
    }
    const std::optional<std::vector<double>> right = solved(pulls, table);
    if (!right) {
        return std::nullopt;
    }
    step.right = *right;
    Mistaker(pulls, rows, step, structure_.restraints.size()).all();
    return step;
}

std::optional<StudentStep> Student::next() {
    std::vector<JointId> all;
    for (std::size_t i = 0; i < structure_.joints.size(); ++i) {
        all.push_back(JointId{static_cast<int>(i)});
    }
    if (std::optional<StudentStep> whole = stepOn(all)) {
        return whole;
    }
    std::vector<StudentStep> steps;
    for (const JointId joint : all) {
        if (std::optional<StudentStep> step = stepOn({joint})) {
            steps.push_back(std::move(*step));
        }
    }
    if (!steps.empty()) {
        return random_.pick(steps);
    }
    // Stuck: one force by a section, without a slip.
    for (std::size_t i = 0; i < values_.size(); ++i) {
        if (!values_[i]) {
            return StudentStep{{}, {i}, {truth_[i]}, {}};
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
