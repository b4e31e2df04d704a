#pragma once
// Families of trusses of any size, for measuring how the cost of a method grows and for properties
// that must also hold for large trusses. All have panels or sides of 3 m, a pin and a roller, and
// 10 kN down on many joints; all but Lattice are statically determinate. Joints have the usual
// labels; members have no section or the same one.

#include "model/truss/truss.hpp"

#include <array>
#include <string_view>

namespace gusset::support {

enum class Family {
    Warren,
    Pratt,
    K,        // panels of K bracing that opens to the middle: no joint at its ends to start from
    Compound, // a chain of stiff triangles, each hinged and tied to the one before
    Complex,  // a ring of triangles with three members missing: no joint has only two members, and
              // no section isolates a single force
    Lattice,  // posts and both diagonals in every panel, indeterminate to the degree of panels
    Fink,     // posts under a chord, each trussed by two ties, over successively shorter spans
    Grown,    // joint by joint, each by two members to a random side of the existing truss
};
inline constexpr std::array kFamilies{Family::Warren,   Family::Pratt,   Family::K,
                                      Family::Compound, Family::Complex, Family::Lattice,
                                      Family::Fink,     Family::Grown};
[[nodiscard]] std::string_view nameOf(Family);

// With approximately this many members. Precondition: members ≥ 30.
[[nodiscard]] Truss familyTruss(Family, int members);

// The truss with one steel section for all members: E, A, radius of gyration, strength, density.
[[nodiscard]] Truss withOneSection(Truss);

} // namespace gusset::support
