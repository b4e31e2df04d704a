#include "ui/fitted.hpp"

#include "ui/fit.hpp"

#include <array>
#include <cmath>
#include <string>

namespace gusset {
namespace {

// The face asked for, and the smaller ones.
std::vector<const ImFont*> facesFrom(const Ui& ui, const ImFont& font) {
    std::vector<const ImFont*> faces{&font};
    for (const ImFont* smaller : {ui.fonts.small, ui.fonts.subscript}) {
        if (smaller->FontSize < faces.back()->FontSize) {
            faces.push_back(smaller);
        }
    }
    return faces;
}

ImVec2 placeOf(const FittedLook& look, ImVec2 size) {
    return {std::round(look.align == Align::Right ? look.high.x - size.x : look.low.x),
            std::round((look.low.y + look.high.y - size.y) / 2)};
}

// What does not fit ends in "…".
float putCut(ImDrawList& list, const ImFont& font, std::string_view text, const FittedLook& look) {
    const std::string dots = "…";
    const float room = look.high.x - look.low.x - textSize(font, dots).x;
    std::string words = settable(font, text);
    const char* cut = nullptr;
    (void)font.CalcTextSizeA(font.FontSize, std::fmax(room, 0.0f), 0, words.c_str(), nullptr, &cut);
    words.resize(static_cast<std::size_t>(cut - words.c_str()));
    words.erase(words.find_last_not_of(' ') + 1);
    words += dots;
    const ImVec2 size = font.CalcTextSizeA(font.FontSize, FLT_MAX, 0, words.c_str());
    const ImVec2 at{std::round(look.low.x), std::round((look.low.y + look.high.y - size.y) / 2)};
    list.AddText(&font, font.FontSize, at, look.ink, words.c_str());
    return size.x;
}

// The room of the decimals that it lacks beside the other numbers of its column.
float roomAfter(const ImFont& font, std::string_view text, int decimals) {
    const int own = decimalsIn(text);
    const float figure = textSize(font, "0").x;
    return own < decimals ? static_cast<float>(decimals - own) * figure +
                                (own == 0 ? textSize(font, ".").x : 0)
                          : 0;
}

float putNumber(ImDrawList& list, const std::vector<const ImFont*>& faces, std::string_view text,
                FittedLook look) {
    const float after = roomAfter(*look.font, text, look.decimals);
    if (textSize(*look.font, text).x + after <= look.high.x - look.low.x) {
        look.high.x -= after;
    }
    const FittedNumber fitted = fitNumber(text, look.high.x - look.low.x, faces.size(),
                                          [&](std::size_t face, std::string_view number) -> double {
                                              return textSize(*faces[face], number).x;
                                          });
    const ImFont& font = *faces[fitted.face];
    const TextFit fit{.size = font.FontSize * static_cast<float>(fitted.shrunk)};
    const ImVec2 size = textSize(font, fitted.text, fit);
    putText(list, font, placeOf(look, size), look.ink, fitted.text, fit);
    return size.x;
}

} // namespace

float putFitted(ImDrawList& list, const Ui& ui, std::string_view text, const FittedLook& look) {
    const std::vector<const ImFont*> faces = facesFrom(ui, *look.font);
    if (look.isNumber && isNumberText(text)) {
        return putNumber(list, faces, text, look);
    }
    for (const ImFont* face : faces) {
        if (face == ui.fonts.subscript && face != look.font) {
            break; // too small for sentences, so the text is cut instead
        }
        const ImVec2 size = textSize(*face, text);
        if (size.x <= look.high.x - look.low.x) {
            putText(list, *face, placeOf(look, size), look.ink, text);
            return size.x;
        }
    }
    const TextFit lines{.wrap = look.high.x - look.low.x};
    const ImVec2 size = textSize(*ui.fonts.small, text, lines);
    if (look.wraps && size.y <= look.high.y - look.low.y && size.x <= lines.wrap) {
        putText(list, *ui.fonts.small, placeOf(look, size), look.ink, text, lines);
        return size.x;
    }
    return putCut(list, *look.font, text, look);
}

bool fitsWhole(const Ui& ui, const ImFont& font, std::string_view text, float room) {
    const ImFont& least = font.FontSize > ui.fonts.small->FontSize ? *ui.fonts.small : font;
    return textSize(least, text).x <= room;
}

} // namespace gusset
