#pragma once
// A question about a truss: what is asked, how exactly it must be answered, and what help there is.
// The file keeps it under the key "exercise", with members and joints by their labels; here they
// are positions in the truss that it was read with.

#include "core/ids.hpp"
#include "statics/equilibrium/structure.hpp"

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace gusset {

struct AskReactions { // of every support, by size and direction
    bool operator==(const AskReactions&) const = default;
};
struct AskForces { // of these members, each with tension or compression
    std::vector<MemberId> members;
    bool operator==(const AskForces&) const = default;
};
struct AskZeroMembers { // which members carry nothing
    bool operator==(const AskZeroMembers&) const = default;
};
struct AskDeterminacy { // whether it is determinate, and the degree of indeterminacy
    bool operator==(const AskDeterminacy&) const = default;
};
enum class Axis { X, Y };
struct AskDisplacement { // of a joint along an axis, displacement units, positive along +x and up
    JointId joint;
    Axis axis = Axis::Y;
    bool operator==(const AskDisplacement&) const = default;
};
struct AskInfluence { // the ordinate at a joint of the path, for a unit load downward
    std::vector<JointId> path;
    MemberId of;
    JointId at;
    bool operator==(const AskInfluence&) const = default;
};
struct AskSteps { // the equations by which the forces are found
    bool operator==(const AskSteps&) const = default;
};

struct Question {
    std::variant<AskReactions, AskForces, AskZeroMembers, AskDeterminacy, AskDisplacement,
                 AskInfluence, AskSteps>
        what;
    double marks = 0; // for all of it; 0: as many as the rule gives (classroom/marking)

    bool operator==(const Question&) const = default;
};

// A value is right if it differs from the true one by no more than this.
struct Tolerance {
    double percent = 1; // of the true value …
    double floor = 0.1; // … but at least per cent of the largest force of the answer
    int figures = 0;    // if not 0: right to this many significant figures, instead of `percent`

    bool operator==(const Tolerance&) const = default;
};

enum class Hints { None, Bodies, Equations, Terms }; // each includes those before it
enum class Checking { AtOnce, AtTheEnd };

struct Exercise {
    std::string text; // what the instructor says, or empty
    std::vector<Question> questions;
    Tolerance tolerance;
    Hints hints = Hints::Terms;
    Checking checking = Checking::AtOnce;
    LoadChoice loads{};     // under which the answers are sought
    int variant = 0;        // its number in a series; 0: none
    std::uint64_t seed = 0; // that the series was made from

    bool operator==(const Exercise&) const = default;
};

} // namespace gusset
