#pragma once
// A student who works a truss by its supports and joints, in an order of his own, and makes the
// slips that a test tells him to. Written apart from the marking that it tests.

#include "support/random.hpp"

#include "classroom/marking/marking.hpp"

#include <optional>
#include <vector>

namespace gusset::support {

// A slip that could be made at one step of a student's way, and what it gives there.
struct PossibleSlip {
    SlipKind kind;
    std::vector<double> values; // of the step's unknowns
};
struct StudentStep {
    std::vector<JointId> body;
    std::vector<std::size_t> unknowns; // reactions are numbered first, then members
    std::vector<double> right;         // with the values found so far
    std::vector<PossibleSlip> slips;   // those that change a value by more than the tolerance
};

class Student {
public:
    Student(const Truss&, const Exercise&, const AnswerKey&, std::uint64_t seed);

    // The next step with what can go wrong at it; none at the end. Precondition: `go` was called
    // for the step before.
    [[nodiscard]] std::optional<StudentStep> next();
    void go(const StudentStep&, const std::vector<double>& values);

    // To so many significant figures.
    [[nodiscard]] Answers sheet(int figures) const;

private:
    [[nodiscard]] std::optional<StudentStep> stepOn(const std::vector<JointId>&) const;

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
// Whether two results are so close that rounded sheets can't tell them apart.
[[nodiscard]] bool looksTheSame(const std::vector<double>&, const std::vector<double>&);

} // namespace gusset::support
