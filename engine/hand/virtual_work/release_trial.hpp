#pragma once
// A truss of the force method with some of its members or reactions released, worked out under what
// is given and under each redundant. Private to hand/.

#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/release.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct ReleasedFrom { // what the method starts from
    const Truss& truss;
    const Structure structure;
    std::vector<Vec2> loads; // force units, a joint each
};

// A released truss with its workings under what is given and under each redundant.
struct Trial {
    std::vector<Release> releases;
    Truss givenTruss;
    Working givenWorking;
    ByRedundant<Truss> unitTrusses;
    ByRedundant<Working> unitWorkings;
    Difficulty difficulty = Difficulty::Joints;
};

// `strained`: the truss with what of it acts under this choice; it stays where it is.
[[nodiscard]] ReleasedFrom releasedFrom(const Truss& strained, const LoadChoice&);

// Works a released truss out under what is given, then under each redundant, as long as that comes
// to an end (core/progress). Stays where it is: the working in hand looks at a truss of the trial.
struct TrialTask {
    const ReleasedFrom& given;
    Truss released;
    Trial trial{};
    std::size_t unit = 0; // redundants begun
    std::optional<WorkingTask> atWork{};
    bool complete = true;

    void begin(const std::vector<Release>&); // of which `released` is without
    bool advance();                          // true when there is nothing more to work out
};

} // namespace gusset
