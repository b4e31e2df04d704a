#pragma once
// Choices that follow from a seed, the same natively and as WebAssembly. Generator: SplitMix64,
// G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
// Private to classroom/variants.

#include <cassert>
#include <cstddef>
#include <cstdint>
#include <span>

namespace gusset {

class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(seed) {}

    [[nodiscard]] std::uint64_t bits() {
        state_ += 0x9e3779b97f4a7c15u;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return z ^ (z >> 31);
    }
    // 0 ≤ result < count; the small modulo bias does not matter here.
    [[nodiscard]] std::size_t below(std::size_t count) {
        assert(count > 0);
        return static_cast<std::size_t>(bits() % count);
    }
    template <class T, std::size_t Size>
    [[nodiscard]] const T& pick(std::span<const T, Size> from) {
        return from[below(from.size())];
    }

private:
    std::uint64_t state_;
};

} // namespace gusset
