#pragma once
// Of a long text only what is in sight is laid out: how high its pieces are is known once they
// were.

#include <imgui.h>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace gusset {

struct HeightsKey {
    std::uint64_t text = 0; // which
    float width = 0;        // device px that it is laid out in
    float size = 0;         // of its letters
    float tallest = 0;      // of its drawings, where that depends on something

    friend bool operator==(const HeightsKey&, const HeightsKey&) = default;
};

// Device px, with what stands between pieces; 0: not laid out yet.
struct PassageHeights {
    float whole = 0;
    std::vector<float> pieces{}; // title, then parts
};

struct Heights {
    HeightsKey key;
    std::vector<PassageHeights> passages;
};
// Ready for so many passages; forgets what it knows when the key is another.
void prepare(Heights&, const HeightsKey&, std::size_t passages);

// Whether something that begins at ImGui's cursor and is so high lies wholly beyond what is seen.
[[nodiscard]] bool isOutOfSight(float height);
// Moves the cursor on as something would that is so high.
void leaveRoom(float height);

// In the next frame the window is scrolled so far beyond where it is, unless it is sent elsewhere.
void scrollOn(float by);

// Lays a piece out unless it is known to be out of sight. `heights`: none: always.
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
