#pragma once
// The lightest profiles that pass: one for each group of members, from lists, under all
// combinations, with the limit on deflection; with self-weight and, in indeterminate trusses, the
// forces that come with the stiffness, until nothing changes any more.
//
// What comes out passes, and no group alone can take a lighter profile of its list. In a
// determinate truss without self-weight and a limit on deflection that is the lightest choice there
// is; otherwise exchanges between up to six groups are tried, and there may still be a lighter one.
// It is preliminary, as the checks are.

#include "core/outcome.hpp"
#include "core/progress.hpp"
#include "design/member_checks.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct SizingGroup {
    std::string name;
    std::vector<MemberId> members;
    std::vector<Section> profiles; // whose materials the truss has; in any order
};

struct SizingWish {
    std::vector<SizingGroup> groups; // members in none of them keep their sections
    double deflection = 0;           // m, of any joint, upright, in service; 0: no limit
};

enum class SizingReason {
    Begins,
    Strength,
    Slenderness,
    Uncovered, // the checks do not cover the member, or lack data for it
    Deflection,
    Lighter,
    Serves, // heavier, so that other groups can be lighter by more
    NoneEnough,
};
struct SizingStep {
    std::size_t group = 0;
    std::string from{}; // ids of profiles; empty: the beginning
    std::string to{};
    SizingReason reason = SizingReason::Begins;
    MemberId member{}; // that asked for it, if one did
    double use = 0;    // its use of `from`
};

struct SizedGroup {
    std::string profile;       // its id
    bool isEnough = false;     // false: even the heaviest that was tried is not
    MemberId worst{};          // the member with the greatest use
    double use = 0;            // of that
    double mass = 0;           // kg, of all its members
    double length = 0;         // m, likewise
    std::string nextLighter{}; // the profile below it in its list, if there is one
};

struct Sizing {
    Truss truss; // with the profiles as sections
    std::vector<SizedGroup> groups;
    std::vector<SizingStep> path;
    double mass = 0;                    // kg, of all members that can be weighed
    std::optional<double> deflection{}; // m, the largest in service; none: a stiffness is not known
    bool isEnough = false;              // all groups, and the deflection
    MemberChecks checks{};              // of `truss`, the worst of each member
};

// Fails on a group without members or profiles, on a profile without mass, on a mechanism, and
// where the truss has no forces (the issues say why).
[[nodiscard]] Outcome<Sizing> lightest(const Truss&, const SizingWish&);

// Whether a check is passed: nothing is lacking or not covered, used no more than allowed, and not
// too slender.
[[nodiscard]] bool passes(const MemberCheck&);

// The combinations of strength, or whatever else there is: cases, or all loads together.
[[nodiscard]] std::vector<LoadChoice> strengthChoices(const Truss&);
// Those of serviceability, or else each case and all of them together.
[[nodiscard]] std::vector<LoadChoice> serviceChoices(const Truss&);
// The largest upright movement of a joint under these, m; nothing without displacements.
[[nodiscard]] std::optional<double> deflectionOf(const Truss&, const std::vector<LoadChoice>&);
// Of each member by A, length and density, kg; 0 where the truss does not say.
[[nodiscard]] std::vector<double> massesOf(const Truss&);

// With fewer different profiles the truss is heavier: the least mass, kg, with 1, 2, … of them, of
// the profiles that pass under the forces of this sizing and stand in the lists of all the groups
// that share them. Nothing for more than kMostSharing groups, or if not enough.
inline constexpr std::size_t kMostSharing = 8;
[[nodiscard]] std::vector<std::optional<double>> massByProfiles(const Sizing&, const SizingWish&);

} // namespace gusset
