#pragma once
// Several numbers that go through the same arithmetic together: right-hand sides of one matrix,
// whose entries are then loaded once for all of them.

#include <array>
#include <cstddef>

namespace gusset {

inline constexpr std::size_t kLanes = 4;

struct Lanes {
    std::array<double, kLanes> at{};

    Lanes() = default;
    explicit Lanes(double all) { at.fill(all); }

    Lanes& operator-=(const Lanes& other) {
        for (std::size_t i = 0; i < kLanes; ++i) {
            at[i] -= other.at[i];
        }
        return *this;
    }
    friend Lanes operator*(double factor, Lanes lanes) {
        for (double& value : lanes.at) {
            value *= factor;
        }
        return lanes;
    }
    friend Lanes operator/(Lanes lanes, double divisor) {
        for (double& value : lanes.at) {
            value /= divisor;
        }
        return lanes;
    }
    friend bool operator==(const Lanes&, const Lanes&) = default;
};

} // namespace gusset
