#pragma once
// When there are more marks of one kind than a board can show apart, one stands for all within the
// radius of a joint's ring, and those off the board are omitted: the number drawn depends on the
// board and not on the size of the truss. Fewer marks are all drawn.

#include "core/vec2.hpp"

#include <cstddef>
#include <cstdint>
#include <unordered_set>

namespace gusset {

class Thinning {
public:
    Thinning(std::size_t marks, Vec2 boardSize); // CSS px

    [[nodiscard]] bool isNeeded() const { return needed_; }
    [[nodiscard]] bool leavesOut(Vec2 place); // call once per mark, in turn
    [[nodiscard]] bool isOffBoard(Vec2 place) const;

private:
    bool needed_;
    Vec2 board_;
    std::unordered_set<std::uint64_t> taken_; // cells as wide as a joint ring's radius
};

// Whether both ends of a line lie under the same ring.
[[nodiscard]] bool isUnderOneRing(Vec2 a, Vec2 b);

} // namespace gusset
