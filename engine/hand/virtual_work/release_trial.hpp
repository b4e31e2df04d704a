#pragma once
// A truss of the force method with some of its members or reactions released, worked out under what
// is given and under each redundant. Private to hand/.

#include "hand/stages/work_out.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/release.hpp"

#include <optional>
#include <vector>

namespace gusset {

struct ReleasedFrom { // the input of the method
    const Truss& truss;
    const Structure structure;
    std::vector<Vec2> loads; // force units, one per joint
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

// `strained`: the truss with what acts on it under this choice; it must stay in place.
[[nodiscard]] ReleasedFrom releasedFrom(const Truss& strained, const LoadChoice&);

// Works out a released truss under what is given, then under each redundant, until one can't be
// completed (core/progress). Must stay in place: the current working refers to a truss of the
// trial.
struct TrialTask {
    const ReleasedFrom& given;
    Truss released;
    Trial trial{};
    std::size_t unit = 0; // redundants begun
    std::optional<WorkingTask> atWork{};
    bool complete = true;

    void begin(const std::vector<Release>&); // `released` is without these
    bool advance();                          // true when there is nothing more to work out
};

} // namespace gusset
