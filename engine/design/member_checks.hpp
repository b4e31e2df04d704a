#pragma once
// The utilisation of each member: strength on the gross area and on the net one, buckling in
// compression, in the plane of the truss and out of it, slenderness; and how far joints move.
// A preliminary check of forces along straight members, and nothing else: see
// report/results/check_text for what every sheet says it leaves out. SI: N, m, Pa.

#include "core/progress.hpp"
#include "design/column.hpp"
#include "design/flat_parts.hpp"
#include "design/member_lengths.hpp"
#include "design/member_make.hpp"
#include "statics/moving/envelope.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace gusset {

enum class CheckKind {
    None,     // the member carries no force
    Tension,  // strength on the gross area
    Crushing, // the same, in compression
    Buckling,
    Net, // in tension: rupture of what holes leave
};
// What a check needs but lacks: data of the model, or a force that exceeds its rounding error.
enum class Lack {
    Area,
    Strength,
    Modulus,
    Radius,
    Force,
    Ultimate,  // tensile strength, for a section with holes
    HoleDepth, // a shape, to tell how thick the section is at its holes
    Along,     // timber: strength along the grain, in tension or compression
    Modulus05, // timber: E_0,05
};

// How slender a member is in one direction.
struct Slenderness {
    double factor = 1; // K
    double length = 0; // m
    double radius = 0; // m; 0: not known
    double value = 0;  // K·L/r; 0 where r is not known
};

// What is known of the packing of a double angle in compression.
enum class Packing {
    None,    // no double angle, or not pressed by a standard for steel
    Unknown, // no distance is stated
    Close, // EN 1993-1-1, 6.4.4: not more than 15 i_min; AISC 360-16, E6.2: a/r_i not more than 3/4
           // of the slenderness of the whole
    Far,   // more than that: not covered
};

struct MemberCheck {
    MemberId member;
    double force = 0;  // tension positive
    double error = 0;  // rounding error bound
    LoadChoice choice; // the choice that gives it
    double length = 0; // between the joints
    MemberLength lengths;
    MemberMake make;
    std::vector<Lack> lacks;                      // if there are any, there is no use
    ColumnFormula formula = ColumnFormula::Euler; // Euler for anything but steel
    CheckKind governing = CheckKind::None;
    double onArea = 0;   // capacity by strength
    double capacity = 0; // of the governing check, never less than 0
    double onNet = 0;    // capacity by the net area, of a member in tension with holes; else 0
    double use = 0;      // |force| / capacity

    double slenderness = 0; // L/r in tension, else the larger K·L/r; 0 where r is not known
    double limit = 0;       // 0: none
    bool tooSlender = false;
    bool bends = false;    // loads between its joints bend it, which these checks ignore
    bool reverses = false; // pulled under one choice and pressed under another
    bool byTimber = false; // EN 1995-1-1

    // For a member in compression:
    Slenderness in;       // in the plane of the truss
    Slenderness out;      // out of it
    bool twoWays = false; // the two differ
    bool outGoverns = false;
    Packing packing = Packing::None;
    double tied = 0;     // AISC 360-16, (E6-2): λ out of plane of a double angle; 0: not changed
    LocalBuckling local; // by the standard of the formula; number 0: not looked at
    TimberReduction timber;      // EN 1995-1-1
    double elastic = 0;          // π²·E/λ²
    BucklingReduction reduction; // EN 1993-1-1
    CriticalStress critical;     // AISC 360
    double buckling = 0;         // capacity by buckling
};

// The joint that moves farthest over these choices.
struct MovementCheck {
    JointId joint;
    double moved = 0;   // m
    double span = 0;    // m, L: between the supports that are farthest apart
    double allowed = 0; // m, L/x
    LoadChoice choice;
    bool known = false; // there are displacements under every choice, and two supports apart
};

struct MemberChecks {
    std::vector<MemberCheck> members; // one per member, or none: the truss is not solved
    MemberId worst;    // the first with the largest use; none if no member has a force
    int over = 0;      // members with a use above 1
    int slender = 0;   // members beyond their slenderness limit
    int unchecked = 0; // members for which the model lacks data
    std::optional<MovementCheck> movement; // if the settings limit it
    Reliance reliance;                     // of the forces
    Issues faults;                         // why there are no checks: no envelope, no forces
};

[[nodiscard]] bool isChecked(const MemberCheck&);
[[nodiscard]] bool isLocallySlender(const MemberCheck&); // class 4, or a slender element
[[nodiscard]] bool isOver(const MemberCheck&);           // its use exceeds 1 by more than rounding
[[nodiscard]] double useErrorOf(const MemberCheck&);     // rounding error bound of its use

// One member under one force, N; exactly 0 for no force. `member`, `error`, `choice` and `bends`
// are left to the caller.
[[nodiscard]] MemberCheck checkOf(const CheckSettings&, const MemberMake&, const MemberLength&,
                                  double force);
// The same length in and out of the plane, with the K of the settings.
[[nodiscard]] MemberCheck checkOf(const CheckSettings&, const MemberMake&, double length,
                                  double force);
[[nodiscard]] bool movesTooFar(const MovementCheck&);

// Under the solution's loads. Precondition: the solution is solve(truss, choice)'s.
[[nodiscard]] MemberChecks checkMembers(const Truss&, const Solution&, const LoadChoice&);
// The worst for each member over these choices, of which this is envelopeOf.
[[nodiscard]] MemberChecks checkMembers(const Truss&, const Envelope&,
                                        const std::vector<LoadChoice>&);

// The worst for each member over these choices, in slices (core/progress); no members if there is
// no envelope of them. The truss must stay in place and unchanged while the task lives.
class WorstChecksTask {
public:
    WorstChecksTask(const Truss&, std::vector<LoadChoice>);

    bool advance();
    [[nodiscard]] Progress progress() const; // choices, each counted twice, or three times
    [[nodiscard]] MemberChecks take() { return std::move(checks_); } // once only

private:
    const Truss& truss_;
    std::vector<LoadChoice> choices_;
    LoadFactors factors_;
    EnvelopeTask envelope_;
    std::optional<Envelope> extremes_{}; // set once the envelope is found
    Structure structure_{};
    std::vector<bool> bends_{}; // one per member
    std::size_t bent_ = 0;      // choices already checked for bending
    std::size_t moved_ = 0;     // and for the movement of joints
    std::optional<MovementCheck> movement_{};
    MemberChecks checks_{};
};

} // namespace gusset
