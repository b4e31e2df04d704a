#pragma once
// An equation of equilibrium as a student writes it: a body, a sum, and what is said of each force
// in it.

#include "core/ids.hpp"

#include <optional>
#include <vector>

namespace gusset {

// A free body: a joint; or, without one, the part beside a cut; or, without a cut, the whole truss.
struct ChosenBody {
    JointId joint{};
    std::vector<MemberId> cut{};
    JointId part{}; // a joint of the part that is meant

    bool operator==(const ChosenBody&) const = default;
};

enum class Multiplier { Whole, Sine, Cosine, Arm }; // of the force's angle with the horizontal
struct BuiltTerm {
    int sign = 0; // 0: the force is not in the equation
    Multiplier by = Multiplier::Whole;
    double arm = 0; // length units, not negative

    bool operator==(const BuiltTerm&) const = default;
};

enum class SumKind { X, Y, Moments };
struct WrittenTerm {
    std::optional<MemberOrRestraint> of{}; // none: the load …
    JointId at{};                          // … on this joint …
    SumKind along = SumKind::X;            // … along this axis, X or Y
    BuiltTerm term{};

    bool operator==(const WrittenTerm&) const = default;
};
struct WrittenEquation {
    ChosenBody body{};
    SumKind sum = SumKind::X;
    JointId about{};                  // of moments
    std::vector<WrittenTerm> terms{}; // none that is not in it

    bool operator==(const WrittenEquation&) const = default;
};

} // namespace gusset
