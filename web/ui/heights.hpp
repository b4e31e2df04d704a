#pragma once
// Only the visible part of a long text is laid out: the heights of its pieces are known once they
// have been laid out.

#include <imgui.h>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace gusset {

struct HeightsKey {
    std::uint64_t text = 0; // which text
    float width = 0;        // device px in which it is laid out
    float size = 0;         // of its letters
    float tallest = 0;      // of its drawings, if that depends on something

    friend bool operator==(const HeightsKey&, const HeightsKey&) = default;
};

// Device px, including the gaps between pieces; 0: not laid out yet.
struct PassageHeights {
    float whole = 0;
    std::vector<float> pieces{}; // title, then parts
};

struct Heights {
    HeightsKey key;
    std::vector<PassageHeights> passages;
};
// Makes room for this many passages; discards what is known if the key has changed.
void prepare(Heights&, const HeightsKey&, std::size_t passages);

// Whether something of this height at ImGui's cursor lies wholly outside the visible part.
[[nodiscard]] bool isOutOfSight(float height);
// Moves the cursor as something of this height would.
void leaveRoom(float height);

// In the next frame the window is scrolled by this much, unless it is scrolled to another place.
void scrollOn(float by);

// Lays out a piece unless it is known to be out of sight. `heights` null: always.
template <class Draw>
void whereSeen(std::vector<float>* heights, std::size_t piece, Draw draw) {
    if (!heights) {
        draw();
        return;
    }
    if (heights->size() <= piece) {
        heights->resize(piece + 1);
    }
    float& height = (*heights)[piece];
    if (height > 0 && isOutOfSight(height)) {
        leaveRoom(height);
        return;
    }
    const float top = ImGui::GetCursorScreenPos().y;
    draw();
    height = ImGui::GetCursorScreenPos().y - top;
}

} // namespace gusset
