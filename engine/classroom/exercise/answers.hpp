#pragma once
// What a student wrote: sizes and directions apart, since they are typed apart and can be wrong
// apart. Never a name.

#include "classroom/exercise/exercise.hpp"
#include "classroom/exercise/written_equation.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

// +1: tension of a member, or along Restraint::along of a reaction; −1: compression, or against;
// 0: zero.
struct WrittenForce {
    std::optional<double> size; // force units, not negative
    std::optional<int> sign;

    bool operator==(const WrittenForce&) const = default;
};
[[nodiscard]] bool isBlank(const WrittenForce&);
// A size, and said to be zero.
[[nodiscard]] bool isContradictory(const WrittenForce&);
// With its sign; nothing if either is missing, unless the force is said to be zero, or if they
// contradict each other.
[[nodiscard]] std::optional<double> valueOf(const WrittenForce&);

struct Answers {
    std::string exercise; // checksum of the exercise that they are for: see exerciseMark
    int variant = 0;
    std::string code;                          // a random one, to tell sheets apart
    std::vector<WrittenForce> reactions;       // of each Restraint of the structure
    std::vector<WrittenForce> forces;          // of each member
    std::vector<std::optional<bool>> zeros;    // of each member: whether it carries nothing
    std::optional<int> degree;                 // of indeterminacy; negative: mechanism
    std::vector<std::optional<double>> values; // of each question that asks for one value
    std::vector<WrittenEquation> equations{};  // that the student kept, in the order of keeping

    bool operator==(const Answers&) const = default;
};

[[nodiscard]] std::vector<MemberId> allMembers(const Truss&);
// Blank answers of the right sizes.
[[nodiscard]] Answers blankAnswers(const Truss&, const Exercise&);

} // namespace gusset
