#pragma once
// What is on the screen, as the bytes that the graphics driver was handed for it. A frame that
// would hand it the same again is not drawn: while panels settle, many are the same, and on a phone
// each drawn one costs a battery, in software a whole processor.

#include "core/vec2.hpp"

#include <cstddef>
#include <span>
#include <vector>

struct ImDrawData;

namespace gusset {

class Screen {
public:
    // The parts of the frame that is about to be drawn, in a fixed order. Numbers without padding.
    void add(std::span<const std::byte>);
    void add(const ImDrawData&);
    void add(double number) { add(std::as_bytes(std::span(&number, 1))); }
    void add(Vec2 point) {
        add(point.x);
        add(point.y);
    }

    // Whether these are other than those before; the next frame begins.
    [[nodiscard]] bool changes();

    void forget() { isKnown_ = false; } // its textures or its context have changed

private:
    std::vector<std::byte> shown_;
    std::vector<std::byte> next_;
    bool isKnown_ = false;
};

} // namespace gusset
