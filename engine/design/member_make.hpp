#pragma once
// What members are made of, as far as the model says, in SI.

#include "model/truss/truss.hpp"

#include <optional>
#include <vector>

namespace gusset {

// Two angles back to back, their gap in the plane of the truss.
struct PairMake {
    double single = 0;             // m, least radius of gyration of one angle by itself
    std::optional<double> packing; // m, between packing plates or connectors
};

// A flat part of a section, as wide or as slender as a table of local buckling looks at it.
enum class PartKind {
    Internal, // held along both edges: a wall of a box
    Web,      // likewise, of an I section or a channel
    Outstand, // held along one: half a flange
    Leg,      // of an angle: h/t, and (b + h)/2t
    Tube,     // d/t
};
struct FlatPart {
    PartKind kind = PartKind::Internal;
    double ratio = 0;    // c/t, h/t or d/t
    double together = 0; // Leg: (b + h)/2t
};

// Strengths of timber along the grain, Pa, as far as its material states them.
struct TimberMake {
    std::optional<double> tension;
    std::optional<double> compression;
    std::optional<double> E05;
};

struct MemberMake {
    std::optional<double> area;     // m²
    std::optional<double> radius;   // m, radius of gyration about the weak axis
    std::optional<double> modulus;  // Pa
    std::optional<double> strength; // Pa
    // Whether the formulas of steel standards apply: not a timber section, and E between 180 and
    // 220 GPa, as for all structural steels. If stresses have no unit, E is not checked.
    bool steel = false;

    // m, radii of gyration for bending in the plane of the truss and out of it; none: the weak one,
    // as unless the section says which axis bends in the plane, or is a double angle.
    std::optional<double> inRadius{};
    std::optional<double> outRadius{};
    std::optional<PairMake> pair{};
    std::vector<FlatPart> parts{}; // none: nothing that buckles locally, or not known; nor are
                                   // limits that depend on the strength, if stresses have no unit

    bool holed = false;
    std::optional<double> net{}; // m², less holes; none where the section has no shape to tell how
                                 // thick it is where they are
    double lag = 1;              // AISC 360-16, D3: U
    std::optional<double> ultimate{};   // Pa
    std::optional<TimberMake> timber{}; // a timber section whose material states one of them
};

[[nodiscard]] std::vector<MemberMake> makesOf(const Truss&); // one per member

} // namespace gusset
