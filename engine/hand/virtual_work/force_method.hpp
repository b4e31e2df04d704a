#pragma once
// The force method for one and two redundants, as written by hand: release as many members or
// reactions as the degree of indeterminacy; find the forces N0 of the released truss under what is
// given, and n1, n2 under each redundant of size 1; from Σ n·e the displacements δ at the releases;
// the redundants from the compatibility conditions; and N = N0 + X1·n1 + X2·n2 (Maxwell 1864, Mohr
// 1874; e.g. Timoshenko & Young, Theory of Structures, 2nd ed., 1965, ch. 7).
//
// The model's units throughout. Index 0 is for what is given, 1 and 2 for the redundants.

#include "core/progress.hpp"
#include "hand/paper/working.hpp"

#include <array>
#include <memory>
#include <vector>

namespace gusset {

// Why one would release this one.
enum class ReleaseReason {
    SparesRoller, // the truss is stable without this roller
    PinSlides,    // a roller is enough in place of this pin
    Crossing,     // two members cross, and one of them is enough
    SparesMember, // the truss is stable without this member
};
struct Release {
    MemberOrRestraint of; // a cut member, its force the redundant; or a released reaction
    ReleaseReason reason = ReleaseReason::SparesMember;
    MemberId other{}; // Crossing: the member that stays
};

[[nodiscard]] bool isReleased(const std::vector<Release>&, const MemberOrRestraint&);

inline constexpr int kMostRedundants = 2; // the most that anyone works by hand
template <class Value>
using ByRedundant = std::array<Value, kMostRedundants>; // those beyond the degree are zero

struct ForceMethodRow { // a member
    MemberId member{};
    double given = 0;           // N0, force units; 0 for a cut member
    ByRedundant<double> unit{}; // n1, n2: no unit; 1 for the cut member itself
    double length = 0;          // L, length units
    double stiffness = 0;       // EA, force units; 0 if the model does not give it
    double weight = 0;  // factor of a product n·N: L/EA, displacement units per force unit; or L,
                        // length units, if the sums are multiplied by EA
    double thermal = 0; // α·ΔT·L, displacement units
    double misfit = 0;  // made too long, displacement units
    double force = 0;   // N, force units
};
struct ForceMethodReaction {
    RestraintId restraint{};
    double given = 0; // force units, like the rest
    ByRedundant<double> unit{};
    double settle = 0; // along the reaction, displacement units
    double force = 0;
};

// δ10 or δ20, by cause; displacement units, or force times length units if multiplied by EA.
struct GivenDisplacement {
    double elastic = 0;    // Σ n·N0·L/EA
    double thermal = 0;    // Σ n·α·ΔT·L
    double misfit = 0;     // Σ n·ΔL
    double settlement = 0; // −Σ r·Δ, of the supports that remain
    double total = 0;
};

enum class ForceMethodEnd {
    Complete,
    Determinate,  // there is no redundant
    TooMany,      // more redundants than kMostRedundants
    Moves,        // a mechanism
    NoStiffness,  // `missing` lists the members with unknown EA
    NotWorkedOut, // no release leaves a truss that can be worked by hand
    Unstrained,   // `shared`: supports at it share a reaction that strains no member
};

enum class Difficulty { Joints, Sections, Together }; // the method needed for the released truss

struct ForceMethod {
    ForceMethodEnd end = ForceMethodEnd::NotWorkedOut; // the rest is set when it is Complete
    Counting counting;
    std::vector<MemberId> missing;
    JointId shared{};
    std::vector<Release> releases; // one per redundant
    Difficulty difficulty = Difficulty::Joints;
    bool timesStiffness = false;      // EA is the same for all members and is left out of the sums
    bool assumed = false;             // ... because the model gives none
    std::vector<ForceMethodRow> rows; // one per member, in the order of the model
    std::vector<ForceMethodReaction> reactions; // one per restraint
    ByRedundant<GivenDisplacement> given{};     // δ10, δ20
    ByRedundant<ByRedundant<double>> unit{};    // δ11 δ12, δ21 δ22; per force unit
    ByRedundant<double> allowed{};    // movement of the support at the release along its reaction
    ByRedundant<double> redundants{}; // X1, X2, force units
    double missed = 0; // the largest difference from the solution's forces over its largest force
    Truss givenTruss;
    Working givenWorking;
    ByRedundant<Truss> unitTrusses;
    ByRedundant<Working> unitWorkings;
};

// Precondition: the solution is solve(truss, choice)'s. It is only used for a comparison at the
// end.
[[nodiscard]] ForceMethod forceMethod(const Truss&, const LoadChoice&, const Solution&);

// The same in slices (core/progress). The truss and the solution must stay in place and unchanged
// while the task lives.
class ForceMethodTask {
public:
    ForceMethodTask(const Truss&, const LoadChoice&, const Solution&);
    ~ForceMethodTask();
    ForceMethodTask(ForceMethodTask&&) noexcept;
    ForceMethodTask& operator=(ForceMethodTask&&) noexcept;

    bool advance();
    [[nodiscard]] Progress progress() const; // released trusses worked out, of those to be tried
    [[nodiscard]] ForceMethod take();        // once only

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
