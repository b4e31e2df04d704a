#pragma once
// What is on the screen, as the bytes passed to the graphics driver for it. A frame that would pass
// the same bytes again is not drawn: while panels settle, many frames are identical, and drawing
// them would drain a phone's battery or, in software rendering, occupy a whole processor.

#include "core/vec2.hpp"

#include <cstddef>
#include <span>
#include <vector>

struct ImDrawData;

namespace gusset {

class Screen {
public:
    // Adds a part of the frame about to be drawn, in a fixed order. The bytes must not include
    // padding.
    void add(std::span<const std::byte>);
    void add(const ImDrawData&);
    void add(double number) { add(std::as_bytes(std::span(&number, 1))); }
    void add(Vec2 point) {
        add(point.x);
        add(point.y);
    }

    // Whether the parts differ from those of the previous frame; starts the next frame.
    [[nodiscard]] bool changes();

    void forget() { isKnown_ = false; } // the textures or the context have changed

private:
    std::vector<std::byte> shown_;
    std::vector<std::byte> next_;
    bool isKnown_ = false;
};

} // namespace gusset
