#pragma once
// The utilisation of each member: strength on the gross area, buckling in compression, slenderness.
// A preliminary check of forces along straight members, and nothing else: see
// report/results/check_text for what every sheet says it leaves out. SI: N, m, Pa.

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
    Crushing, // the same, in compression
    Buckling,
};
// What a check needs but lacks: data of the model, or a force that exceeds its rounding error.
enum class Lack { Area, Strength, Modulus, Radius, Force };

struct MemberCheck {
    MemberId member;
    double force = 0;  // tension positive
    double error = 0;  // rounding error bound
    LoadChoice choice; // the choice that gives it
    double length = 0; // between the joints
    MemberMake make;
    std::vector<Lack> lacks;                      // if there are any, there is no use
    ColumnFormula formula = ColumnFormula::Euler; // Euler for anything but steel
    CheckKind governing = CheckKind::None;
    double onArea = 0;   // capacity by strength
    double capacity = 0; // of the governing check, never less than 0
    double use = 0;      // |force| / capacity

    double slenderness = 0; // L/r in tension, else K·L/r; 0 where r is not known
    double limit = 0;       // 0: none
    bool tooSlender = false;
    bool bends = false; // loads between its joints bend it, which these checks ignore

    // For a member in compression:
    double elastic = 0;          // π²·E/λ²
    BucklingReduction reduction; // EN 1993-1-1
    CriticalStress critical;     // AISC 360
    double buckling = 0;         // capacity by buckling
};

struct MemberChecks {
    std::vector<MemberCheck> members; // one per member, or none: the truss is not solved
    MemberId worst;    // the first with the largest use; none if no member has a force
    int over = 0;      // members with a use above 1
    int slender = 0;   // members beyond their slenderness limit
    int unchecked = 0; // members for which the model lacks data
    Reliance reliance; // of the forces
    Issues faults;     // why there are no checks: no envelope, no forces
};

[[nodiscard]] bool isChecked(const MemberCheck&);
[[nodiscard]] bool isOver(const MemberCheck&);       // its use exceeds 1 by more than rounding
[[nodiscard]] double useErrorOf(const MemberCheck&); // rounding error bound of its use

// One member under one force, N; exactly 0 for no force. `member`, `error`, `choice` and `bends`
// are left to the caller.
[[nodiscard]] MemberCheck checkOf(const CheckSettings&, const MemberMake&, double length,
                                  double force);

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
    [[nodiscard]] Progress progress() const;                         // choices, each counted twice
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
    MemberChecks checks_{};
};

} // namespace gusset
