#pragma once
// Random trusses for properties that must hold for every truss. The same seed gives the same truss
// on every platform. Coordinates are multiples of 0.1 m and loads of 0.5 kN, so that exact answers
// exist. Each truss is checked here to be statically determinate and well-conditioned by an
// independent dense elimination, without the engine.

#include "model/truss/truss.hpp"

#include <cstdint>

namespace gusset::support {

enum class Form {
    Simple,      // from a triangle, each further joint by two members
    Cantilever,  // from two wall pins without a member between them, each further joint by two
                 // members
    Compound,    // two simple trusses joined by a joint and a member, or by three members
    ThreeHinged, // two simple trusses, each on a pin, that share a joint
    ManyPins,    // a joint or two per pin, on several pins
    KBraced,     // panels of K bracing
    Complex,     // Henneberg's second construction: members split until few joints have two members
};

[[nodiscard]] Truss randomDeterminateTruss(Form, std::uint64_t seed);
[[nodiscard]] Truss randomDeterminateTruss(std::uint64_t seed); // of any form

// A statically determinate truss from which `lost` members or scalar supports were removed (at
// least one mechanism each).
[[nodiscard]] Truss randomMechanism(std::uint64_t seed, int lost = 1);

// A truss with more members and scalar supports than statically determinate, and sections for all
// members.
[[nodiscard]] Truss randomIndeterminateTruss(std::uint64_t seed);

// The truss with a material, and one of a few sections for each member.
[[nodiscard]] Truss withSections(Truss, std::uint64_t seed);
// Adds some settlements, temperature changes and misfits.
void addRandomStrains(Truss&, std::uint64_t seed);

// Adds some joint forces (at least one), by components and by angle.
void addRandomLoads(Truss&, std::uint64_t seed);

} // namespace gusset::support
