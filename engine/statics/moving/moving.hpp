#pragma once
// Loads that move along an influence line, placed for the extreme: trains of axles, and a uniform
// load of any length. The effect of a train is linear between the positions where an axle is at a
// joint, so the extreme is at one of these, found exactly. The effect of a uniform load changes
// where an end passes a joint, and is greatest there or where both ends are at equal ordinates.

#include "statics/moving/influence.hpp"

namespace gusset {

struct Wheel {
    double behind = 0; // m behind the first axle
    double force = 0;  // N, positive up
};
[[nodiscard]] std::vector<Wheel> wheelsOf(const Truss&, const MovingLoad&);

// The position of a train for an extreme.
struct TrainPlace {
    double value = 0;      // of the effect, N or m
    double first = 0;      // m from the start of the path to the first axle
    bool reversed = false; // facing the start of the path
    std::size_t axle = 0;  // index of an axle that is at a joint
    std::size_t joint = 0; // that joint, by its place in the path
};
struct TrainExtremes {
    TrainPlace largest;  // value ≥ 0; 0 when the train is off the truss
    TrainPlace smallest; // value ≤ 0
};
// The train may face either way.
[[nodiscard]] TrainExtremes extremesOf(const InfluenceLine&, const std::vector<Wheel>&);

struct UniformPlace {
    double value = 0;
    double from = 0; // m from the start of the path
    double to = 0;
};
struct UniformExtremes {
    UniformPlace largest;
    UniformPlace smallest;
};
// A load of `length` (m) that pushes down with `perLength` (N/m, > 0).
[[nodiscard]] UniformExtremes extremesOfUniform(const InfluenceLine&, double perLength,
                                                double length);

// As in the model: of a given length, or of the most unfavourable length (then `from` and `to` are
// not set).
[[nodiscard]] UniformExtremes extremesOf(const Truss&, const InfluenceLine&, const MovingUniform&);

// The extremes of every member's force under a train, from the responses of one factorisation.
[[nodiscard]] std::vector<TrainExtremes> movingEnvelope(const PathAnalysis&,
                                                        const std::vector<Wheel>&);

} // namespace gusset
