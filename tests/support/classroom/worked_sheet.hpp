#pragma once
// Sheets with slips in them: a student works a truss, makes the slips that a test tells him to, and
// it is judged whether these can be told from others. Nothing here asks marking.

#include "support/classroom/explanations.hpp"

#include <array>

namespace gusset::support {

// A truss with all its reactions and forces asked for.
struct Asked {
    Truss truss;
    Exercise exercise;
    AnswerKey key;

    explicit Asked(Truss);
};

// Why a slip can't be told from others.
enum class Hidden {
    Nowhere,    // it can be told
    InRounding, // a student who carries no more figures than he writes gets other values: rounding
                // alone looks like a slip
    AtTheStep,  // another kind of slip gives the same there, such as sine for cosine at 45°
    InTheSheet, // other slips, no more than were made, give the same sheet
};
inline constexpr int kHiddenReasons = 4;

struct Made {
    SlipKind kind;
    std::vector<JointId> body;
    std::vector<MemberOrRestraint> unknowns; // of the step
    Hidden hidden = Hidden::Nowhere;
};
struct Worked {
    Answers sheet;
    std::vector<Made> made;
    int possible = 0; // slips that could have been made at the steps, of any kind
    int without = 0;  // of these, that change no value by more than twice the tolerance

    [[nodiscard]] Hidden hidden() const; // any of those that were made
};
// Works the truss and makes slips of these kinds, each at the first step after a random one where
// it changes a value by more than twice the tolerance; none are made if only a section would go on
// behind one, as this student then forgets it. Fewer may find a place.
[[nodiscard]] Worked workWith(const Asked&, const std::vector<SlipKind>&, std::uint64_t seed);

} // namespace gusset::support
