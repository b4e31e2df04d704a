#pragma once
// The look of everything that is drawn with Dear ImGui: palette, typefaces and measures. One value,
// made by the page and read by panels and widgets. Dear ImGui is run in device pixels (its text is
// sharp only on whole ones); sizes in this project are CSS pixels, and Ui::px turns the one into
// the other.

#include "app/state/layout.hpp"
#include "ui/foreign.hpp"
#include "ui/palette.hpp"

#include <imgui.h>

namespace gusset {

// The faces, each rasterised at its own size. All point into the font atlas of the ImGui context.
struct Fonts {
    ImFont* body = nullptr;      // 16 px
    ImFont* small = nullptr;     // 14
    ImFont* strong = nullptr;    // 16, semi-bold
    ImFont* heading = nullptr;   // 20, semi-bold
    ImFont* variable = nullptr;  // 16, italic: symbols of quantities
    ImFont* subscript = nullptr; // 12
    ImFont* label = nullptr;     // 15: figures on the board
    ImFont* joint = nullptr;     // 15, semi-bold: names of joints on the board
};

struct Ui {
    const Palette* palette = nullptr;
    Fonts fonts;
    float scale = 0;       // device pixels a CSS pixel
    float textScale = 1;   // > 1 when presenting; already in the sizes of the fonts
    bool coarse = false;   // fingers rather than a mouse
    ForeignRuns foreign{}; // what is drawn in letters that the fonts lack

    [[nodiscard]] float px(double css) const { return static_cast<float>(css) * scale; }
    // Height of a row of a table or a list: something to be touched, or to be pointed at.
    [[nodiscard]] float rowHeight() const;
};

struct UiWish {
    Viewport viewport;
    ThemeChoice theme = ThemeChoice::System;
    float textScale = 1;
    DrawRun drawRun = nullptr; // by the browser
};

// Brings `ui` and ImGui's style into line with the wish; call each frame before ImGui::NewFrame.
// True when the font atlas was built anew, so that its texture must be uploaded.
[[nodiscard]] bool refreshUi(Ui& ui, const UiWish& wish);
// Words were drawn that have no picture yet: the next frame has them.
[[nodiscard]] bool wantsFonts(const Ui&);

[[nodiscard]] ImU32 packed(Colour);
[[nodiscard]] ImVec4 vector(Colour);

} // namespace gusset
