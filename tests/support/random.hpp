#pragma once
// Seeded random numbers that are the same on every platform: the standard library's distributions
// are not. Generator: SplitMix64, G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom
// number generators, OOPSLA 2014.

#include <cassert>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace gusset::support {

class Random {
public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    [[nodiscard]] std::uint64_t bits() {
        state_ += 0x9e3779b97f4a7c15u;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return z ^ (z >> 31);
    }
    // low ≤ result ≤ high; the small modulo bias does not matter here.
    [[nodiscard]] int integer(int low, int high) {
        assert(low <= high);
        return low + static_cast<int>(bits() % static_cast<std::uint64_t>(high - low + 1));
    }
    [[nodiscard]] bool oneIn(int n) { return integer(1, n) == 1; }
    // A multiple of 1/steps, as a person could have typed.
    [[nodiscard]] double decimal(double low, double high, int steps) {
        return integer(static_cast<int>(low * steps), static_cast<int>(high * steps)) /
               static_cast<double>(steps);
    }
    template <class T>
    [[nodiscard]] const T& pick(const std::vector<T>& from) {
        assert(!from.empty());
        return from[static_cast<std::size_t>(integer(0, static_cast<int>(from.size()) - 1))];
    }

private:
    std::uint64_t state_;
};

} // namespace gusset::support
