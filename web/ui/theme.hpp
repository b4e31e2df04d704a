#pragma once
// The look of everything drawn with Dear ImGui: palette, typefaces and measures. One value, made by
// the page and read by panels and widgets. Dear ImGui runs in device pixels (its text is sharp only
// on whole ones); sizes in this project are CSS pixels, and Ui::px converts them.

#include "app/state/focused_item.hpp"
#include "app/state/layout.hpp"
#include "ui/foreign.hpp"
#include "ui/palette.hpp"

#include <imgui.h>

namespace gusset {

// The faces, each rasterised at its own size. All are in the font atlas of the ImGui context.
struct Fonts {
    ImFont* body = nullptr;      // 16 px
    ImFont* small = nullptr;     // 14
    ImFont* strong = nullptr;    // 16, semi-bold
    ImFont* heading = nullptr;   // 20, semi-bold
    ImFont* variable = nullptr;  // 16, italic: symbols of quantities
    ImFont* subscript = nullptr; // 12
    ImFont* label = nullptr;     // values on the board
    ImFont* joint = nullptr;     // 15, semi-bold: names of joints on the board
};

struct Ui {
    const Palette* palette = nullptr;
    Fonts fonts;
    float scale = 0;                // device pixels per CSS pixel
    bool coarse = false;            // fingers rather than a mouse
    ForeignRuns foreign{};          // runs drawn in letters that the fonts lack
    FocusedItem* focused = nullptr; // noted as it is drawn (drawFocus)

    [[nodiscard]] float px(double css) const { return static_cast<float>(css) * scale; }
    // Height of a row of a table or a list, large enough for a finger if touch is used, else for a
    // mouse.
    [[nodiscard]] float rowHeight() const;
};

struct UiWish {
    Viewport viewport;
    ThemeChoice theme = ThemeChoice::System;
    DrawRun drawRun = nullptr; // by the browser
};

// Brings `ui` and ImGui's style up to date with the wish; call each frame before ImGui::NewFrame.
// True if the font atlas was rebuilt, so that its texture must be uploaded.
[[nodiscard]] bool refreshUi(Ui& ui, const UiWish& wish);
// Words were drawn that have no picture yet: the next frame will have them.
[[nodiscard]] bool wantsFonts(const Ui&);

[[nodiscard]] ImU32 packed(Colour);
[[nodiscard]] ImVec4 vector(Colour);

} // namespace gusset
