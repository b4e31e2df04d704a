#pragma once
// An influence line as found by hand: a unit load at each joint of a path in turn, with the
// equation that gives the effect for each position: a reaction by moments, a member force by one
// section, using the part without the load; and why the line has its shape. Method: e.g. Timoshenko
// & Young, Theory of Structures, 2nd ed., 1965, ch. 3; the shape by virtual work, after H.
// Müller-Breslau (1886).

#include "core/progress.hpp"
#include "hand/paper/working.hpp"
#include "statics/moving/influence.hpp"

#include <memory>
#include <optional>
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
    Displacement,     // a displacement has no equation of equilibrium
    NoSupport,        // no support holds the joint in that direction
    SeveralSupports,  // more than one does, or one at an angle
    NotWorkedOut,
};

struct InfluenceOrdinate {
    JointId at{};     // position of the unit load
    double place = 0; // from the path's first joint, horizontally, length units
    Working chain;    // for the truss under it: only the steps that give the effect
    double value = 0; // tension positive; a reaction is positive along its direction
};

// A reaction under the load at a distance x from the path's first joint: moments about one centre,
// wherever the load stands.
struct ReactionLaw {
    Step step;         // with the centre of its equation, which has no terms, and why this one
    double arm = 0;    // of the reaction about the centre, length units, anticlockwise positive
    double centre = 0; // where the centre lies, measured like x
    int way = 1;       // x is measured to the right; −1: to the left
    double length = 0; // of the path: 0 ≤ x ≤ length
};
[[nodiscard]] double valueAt(const ReactionLaw&, double x);

struct InfluenceByHand {
    InfluenceEnd end = InfluenceEnd::NotWorkedOut; // the rest is set when it is Complete
    InfluenceWay way = InfluenceWay::Joints;
    Effect effect{}; // as requested
    Symbol symbol{}; // the same, as the working writes it
    std::vector<JointId> path;
    JointId joint{}; // Joint: which
    Truss unloaded;  // with plain force units and full values; the truss of the steps
    Working opening; // common to all positions: zero reactions, slopes, the cut
    std::vector<InfluenceOrdinate> ordinates; // one per joint of the path
    std::optional<ReactionLaw> law;           // one equation for all of them, of a reaction
    std::vector<Surd> exact;                  // likewise, if there are exact numbers; else empty
    std::vector<JointId> corners; // of the path, without its ends: where the slope changes
};

// Precondition: analysePath accepts the path.
[[nodiscard]] InfluenceByHand influenceByHand(const Truss&, const std::vector<JointId>& path,
                                              const Effect&);

// The same in slices (core/progress). The truss must stay in place and unchanged while the task
// lives.
class InfluenceByHandTask {
public:
    InfluenceByHandTask(const Truss&, const std::vector<JointId>& path, const Effect&);
    ~InfluenceByHandTask();
    InfluenceByHandTask(InfluenceByHandTask&&) noexcept;
    InfluenceByHandTask& operator=(InfluenceByHandTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // positions of the load, each worked and made exact
    [[nodiscard]] InfluenceByHand take();    // once only

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
