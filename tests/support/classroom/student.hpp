#pragma once
// A student who works a truss by its supports and joints, in an order of his own, and makes the
// slips that a test tells him to. Written apart from the marking that it tests.

#include "support/random.hpp"

#include "classroom/marking/marking.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

inline constexpr int kWrittenFigures = 4; // on every sheet
// Of unknowns, with the most that rounding of the known values to the figures of a sheet can
// change them.
struct Result {
    std::vector<double> values;
    std::vector<double> blurs;
};
// A slip that could be made at one step of a student's way, and what it gives there.
struct PossibleSlip {
    SlipKind kind;
    Result result; // of the step's unknowns
};
struct StudentStep {
    std::vector<JointId> body;
    std::vector<std::size_t> unknowns; // reactions are numbered first, then members
    Result right;                      // with the values found so far
    std::vector<PossibleSlip> slips;
};
enum class Slips { NotListed, Listed };

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

    [[nodiscard]] double share(Vec2 force, Vec2 where) const {
        return isMoment ? cross(where - centre, force) : dot(along, force);
    }
};

class Student {
public:
    Student(const Truss&, const Exercise&, const AnswerKey&, std::uint64_t seed);

    // The next step with what can go wrong at it; none at the end. Precondition: `go` was called
    // for the step before.
    [[nodiscard]] std::optional<StudentStep> next();
    // All that could be next, by the whole or by a joint.
    [[nodiscard]] std::vector<StudentStep> steps(Slips) const;
    void go(const StudentStep&, const std::vector<double>& values);

    [[nodiscard]] const std::vector<std::optional<double>>& values() const { return values_; }
    [[nodiscard]] const std::vector<double>& truth() const { return truth_; }
    // To so many significant figures.
    [[nodiscard]] Answers sheet(int figures) const;

private:
    [[nodiscard]] std::vector<Pull> pullsOn(const std::vector<JointId>&) const;
    [[nodiscard]] std::vector<std::vector<Row>> rowsFor(const std::vector<JointId>&,
                                                        const std::vector<Pull>& unknown) const;
    [[nodiscard]] bool isHeld(const Row&, const Pull&) const;
    [[nodiscard]] std::optional<StudentStep> stepBy(const std::vector<Row>&, std::vector<Pull>,
                                                    Slips) const;
    void addSteps(std::vector<StudentStep>&, const std::vector<JointId>& body, Slips) const;

    const Truss& truss_;
    const Exercise& exercise_;
    const AnswerKey& key_;
    Structure structure_;
    std::vector<Vec2> loads_; // force units
    std::vector<double> truth_;
    std::vector<std::optional<double>> values_;
    Random random_;
};

[[nodiscard]] double roundedToFigures(double, int figures);
[[nodiscard]] double halfUnit(double, int figures); // of its last figure
// Whether these values, rounded, can stand on a sheet for a result, by rounding alone.
[[nodiscard]] bool couldBe(const std::vector<double>& written, const Result&);

} // namespace gusset::support
