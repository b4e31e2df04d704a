#pragma once
// Families of trusses in any size, for measuring how a method grows and for properties that must
// hold at size as well. All are 3 m a panel or a side, on a pin and a roller, with 10 kN down on
// many joints; all but Lattice are determinate. Joints bear the usual labels; members have none or
// one section.

#include "model/truss/truss.hpp"

#include <array>
#include <string_view>

namespace gusset::support {

enum class Family {
    Warren,
    Pratt,
    K,        // panels of K bracing that opens to the middle: no joint to begin with at its ends
    Compound, // a chain of stiff triangles, each hinged and tied to the one before
    Complex,  // a ring of triangles that lacks three members: no joint has two members, and no
              // section holds one force alone
    Lattice,  // posts and both diagonals in every panel, indeterminate to the degree of panels
    Fink,     // posts under a chord, each trussed by two ties, over ever shorter spans
    Grown,    // joint by joint, each by two members to a random side of what stands
};
inline constexpr std::array kFamilies{Family::Warren,   Family::Pratt,   Family::K,
                                      Family::Compound, Family::Complex, Family::Lattice,
                                      Family::Fink,     Family::Grown};
[[nodiscard]] std::string_view nameOf(Family);

// With about so many members. Precondition: members ≥ 30.
[[nodiscard]] Truss familyTruss(Family, int members);

// The truss with one steel section for all members: E, A, radius of gyration, strength, density.
[[nodiscard]] Truss withOneSection(Truss);

} // namespace gusset::support
