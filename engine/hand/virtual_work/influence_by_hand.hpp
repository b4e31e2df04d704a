#pragma once
// An influence line as it is found by hand: a unit load at each joint of a path in turn, and for
// each place the equation that gives the effect: a reaction by moments, a member force by one
// section, looking at the part on which the load does not stand; and why the line has the shape
// that it has. Method: e.g. Timoshenko & Young, Theory of Structures, 2nd ed., 1965, ch. 3; the
// shape by virtual work, as H. Müller-Breslau (1886) has it.

#include "core/progress.hpp"
#include "hand/paper/working.hpp"
#include "statics/moving/influence.hpp"

#include <memory>
#include <vector>

namespace gusset {

enum class InfluenceWay {
    Reaction, // each ordinate by one equation of the whole truss
    Joint,    // by the same equation of one joint for all
    Section,  // by the same cut for all
    Joints,   // by whichever steps give it
};
enum class InfluenceEnd {
    Complete,
    NotByEquilibrium, // indeterminate, or a mechanism
    Displacement,     // of a displacement there is no equation of equilibrium
    NoSupport,        // no support holds the joint that way
    SeveralSupports,  // more than one does, or one at an angle
    NotWorkedOut,
};

struct InfluenceOrdinate {
    JointId at{};     // where the unit load stands
    double place = 0; // from the path's first joint, horizontally, length units
    Working chain;    // of the truss under it: the steps that give the effect, and no others
    double value = 0; // tension positive; of a reaction positive along its direction
};

struct InfluenceByHand {
    InfluenceEnd end = InfluenceEnd::NotWorkedOut; // what follows is there when Complete
    InfluenceWay way = InfluenceWay::Joints;
    Effect effect{}; // what was asked for
    Symbol symbol{}; // the same as the working writes it
    std::vector<JointId> path;
    JointId joint{}; // Joint: which
    Truss unloaded;  // plain force units, full values; the steps' truss
    Working opening; // what holds for every place: zero reactions, slopes, the cut
    std::vector<InfluenceOrdinate> ordinates; // a joint of the path each
    std::vector<Surd> exact;      // likewise, where exact numbers can be had; else empty
    std::vector<JointId> corners; // of the path, without its ends: where the slope changes
};

// Precondition: analysePath accepts the path.
[[nodiscard]] InfluenceByHand influenceByHand(const Truss&, const std::vector<JointId>& path,
                                              const Effect&);

// The same in slices (core/progress). The truss stays where it is and as it is while the task
// lives.
class InfluenceByHandTask {
public:
    InfluenceByHandTask(const Truss&, const std::vector<JointId>& path, const Effect&);
    ~InfluenceByHandTask();
    InfluenceByHandTask(InfluenceByHandTask&&) noexcept;
    InfluenceByHandTask& operator=(InfluenceByHandTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // places of the load, each worked and made exact
    [[nodiscard]] InfluenceByHand take();    // once

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
