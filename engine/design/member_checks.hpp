#pragma once
// How far each member is used: strength on its gross area, buckling when it is pressed,
// slenderness. A preliminary check of forces along straight members, and nothing else: see
// report/results/check_text for what every sheet says of what it leaves out. SI: N, m, Pa.

#include "core/progress.hpp"
#include "design/column.hpp"
#include "design/member_make.hpp"
#include "statics/moving/envelope.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace gusset {

enum class CheckKind {
    None,     // the member carries no force
    Tension,  // strength on the gross area
    Crushing, // the same, pressed
    Buckling,
};
// What a check needs and lacks: of the model, or a force that rounding leaves known.
enum class Lack { Area, Strength, Modulus, Radius, Force };

struct MemberCheck {
    MemberId member;
    double force = 0;  // tension positive
    double error = 0;  // by how much rounding may put it off
    LoadChoice choice; // that gives it
    double length = 0; // between the joints
    MemberMake make;
    std::vector<Lack> lacks;                      // where there are any, there is no use
    ColumnFormula formula = ColumnFormula::Euler; // Euler for what is not steel
    CheckKind governing = CheckKind::None;
    double onArea = 0;   // what strength allows
    double capacity = 0; // of the governing check, never less than 0
    double use = 0;      // |force| / capacity

    double slenderness = 0; // K·L/r pressed or idle, L/r pulled; 0 where r is not known
    double limit = 0;       // 0: none
    bool tooSlender = false;
    bool bends = false; // loads between its joints bend it, which no check here counts

    // Of a member that is pressed:
    double elastic = 0;          // π²·E/λ²
    BucklingReduction reduction; // EN 1993-1-1
    CriticalStress critical;     // AISC 360
    double buckling = 0;         // what buckling allows
};

struct MemberChecks {
    std::vector<MemberCheck> members; // one each, or none at all: the truss is not solved
    MemberId worst;                   // the first with the largest use; none: nothing is used
    int over = 0;                     // members with a use of more than 1
    int slender = 0;                  // members beyond their limit of slenderness
    int unchecked = 0;                // members of which the model tells too little
    Reliance reliance;                // of the forces
    Issues faults;                    // why there are none: no envelope, no forces
};

[[nodiscard]] bool isChecked(const MemberCheck&);
[[nodiscard]] bool isOver(const MemberCheck&);       // its use is greater than 1, beyond rounding
[[nodiscard]] double useErrorOf(const MemberCheck&); // by how much rounding may put its use off
[[nodiscard]] bool isSteelFormula(ColumnFormula);

// One member under one force, N; exactly 0 for none. `member`, `error`, `choice` and `bends` are
// the caller's.
[[nodiscard]] MemberCheck checkOf(const CheckSettings&, const MemberMake&, double length,
                                  double force);

// Under the loads that the solution is for. Precondition: the solution is solve(truss, choice)'s.
[[nodiscard]] MemberChecks checkMembers(const Truss&, const Solution&, const LoadChoice&);
// The worst of each member over these choices, of which this is envelopeOf.
[[nodiscard]] MemberChecks checkMembers(const Truss&, const Envelope&,
                                        const std::vector<LoadChoice>&);

// The worst of each member over these choices in slices (core/progress); no members where there is
// no envelope of them. The truss stays where it is and as it is while the task lives.
class WorstChecksTask {
public:
    WorstChecksTask(const Truss&, std::vector<LoadChoice>);

    bool advance();
    [[nodiscard]] Progress progress() const; // choices, each looked at twice
    [[nodiscard]] MemberChecks take() { return std::move(checks_); } // once

private:
    const Truss& truss_;
    std::vector<LoadChoice> choices_;
    LoadFactors factors_;
    EnvelopeTask envelope_;
    std::optional<Envelope> extremes_{}; // once the envelope is there
    Structure structure_{};
    std::vector<bool> bends_{}; // a member each
    std::size_t bent_ = 0;      // choices that were looked through for these
    MemberChecks checks_{};
};

} // namespace gusset
