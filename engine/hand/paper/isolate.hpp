#pragma once
// Equations of a free body with one unknown only, found the way a person looks for them: a moment
// centre through which all other unknown lines pass, a sum without the others. Private to hand/.

#include "hand/paper/body.hpp"

namespace gusset {

enum class WayKind {
    SumLeavesOne,   // the sum along an axis
    MomentCentre,   // moments about a joint that all others pass through
    CentreOffTruss, // or about a point that is not a joint
    SumAcross,      // a sum across all others, which are parallel
};
struct Isolation {
    Symbol unknown;
    Equation equation;
    WayKind way;
    Remark remark;                 // why this equation
    std::vector<Remark> details{}; // what its factors are, and where forces were moved
};

// How an unknown can be isolated, before the equation is written.
struct Way {
    WayKind kind = WayKind::SumLeavesOne;
    EquationKind equation = EquationKind::SumX;
    JointId centre{};      // MomentCentre: moments about this joint
    Vec2 at{};             // CentreOffTruss: the centre; SumAcross: the direction of the sum
    std::size_t terms = 0; // of the equation
};
// The way that isolate() uses.
[[nodiscard]] std::optional<Way> wayTo(const Sheet&, const Body&, const Symbol&);
[[nodiscard]] Isolation written(const Sheet&, const Body&, const Symbol&, const Way&);

// For one unknown of the body. In order: the sum along an axis, moments about a joint (the shortest
// equation), moments about the point off the truss where the other lines meet, a sum across
// parallel lines.
[[nodiscard]] std::optional<Isolation> isolate(const Sheet&, const Body&, const Symbol&);

// For one unknown, by a sum across all others, which are parallel.
[[nodiscard]] std::optional<Isolation> isolateAcross(const Sheet&, const Body&, const Symbol&);

// For the best unknown: by moments about the joint where most unknowns meet, or first by the sum
// along an axis; then by other means.
enum class Preference { Moments, Sums };
[[nodiscard]] std::optional<Isolation> isolateAny(const Sheet&, const Body&, Preference);

} // namespace gusset
