#include "core/vec2.hpp"

#include <catch2/catch_test_macros.hpp>

using namespace gusset;

TEST_CASE("the length of a 3-4-5 triangle's long side is exactly 5") { CHECK(length({3, 4}) == 5); }

TEST_CASE("a force to the left above a point turns anticlockwise about it") {
    // 2 m up, 10 N to the left: +20 N m by the right-hand rule.
    CHECK(cross({0, 2}, {-10, 0}) == 20);
}
