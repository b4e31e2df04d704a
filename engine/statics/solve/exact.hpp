#pragma once
// Exact forces. With force densities q = F/L the equations of equilibrium have the coordinate
// differences as coefficients (H.-J. Schek, Computer Methods in Applied Mechanics and Engineering 3
// (1974) 115–134), so that a truss whose coordinates and loads are decimals has rational densities,
// and forces F = q·√(L²). Zeros and ranks are then exact.

#include "core/progress.hpp"
#include "statics/solve/solution.hpp"

#include <memory>
#include <string>
#include <vector>

namespace gusset {

// numerator·√radicand/denominator, in lowest terms; the numerator carries the sign. Each is a
// string of decimal digits.
struct Surd {
    std::string numerator = "0";
    std::string radicand = "1";
    std::string denominator = "1";
    double value = 0;
};
[[nodiscard]] std::string textOf(const Surd&); // "-35√2/2"

enum class InexactReason {
    None,
    Coordinates, // a joint's coordinates are not decimals
    Slope,       // a roller's slope is not a ratio of whole numbers
    Components,  // a load's components are not decimals
    TooLarge,    // more members than kLargestExact
    Redundant,   // equilibrium alone does not determine the forces
    SetInMotion, // a mechanism that the loads set in motion
};
struct WhyInexact {
    InexactReason reason = InexactReason::None;
    JointId joint{};
    LoadId load{};
};

struct ExactSolution {
    bool read = false;   // the counting below is exact; else see whyNot
    bool solved = false; // forces and reactions are too; else see whyNot
    WhyInexact whyNot;
    Counting counting;           // without the split into external and internal
    bool critical = false;       // m + r = 2j, yet a mechanism
    std::vector<Surd> forces;    // in the model's force unit, one per member, tension positive
    std::vector<Surd> reactions; // likewise along each restraint (statics/equilibrium/structure)
    struct Reaction {
        Surd x;
        Surd y;
    };
    std::vector<Reaction> jointReactions; // in the model's force unit, one per joint; all rational
};

inline constexpr std::size_t kLargestExact = 400; // members

// Calculates in slices, so that no frame waits for it (core/progress).
class ExactTask {
public:
    // Precondition: validate found no error.
    ExactTask(const Truss&, const LoadChoice&);
    ~ExactTask();
    ExactTask(ExactTask&&) noexcept;
    ExactTask& operator=(ExactTask&&) noexcept;

    // Does at most this many steps of elimination; true when there is a result.
    bool advance(int steps = 8);
    [[nodiscard]] Progress progress() const;           // steps of elimination
    [[nodiscard]] const ExactSolution& result() const; // precondition: advance() returned true

private:
    struct State;
    std::unique_ptr<State> state_;
};

[[nodiscard]] ExactSolution solveExactly(const Truss&, const LoadChoice& = {});

} // namespace gusset
