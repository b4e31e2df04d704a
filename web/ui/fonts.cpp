#include "ui/fonts.hpp"

#include "ui/font_data.hpp"

#include <cmath>

namespace gusset {
namespace {

using Bytes = std::span<const unsigned char>;

// Kept for the life of the program: the atlas reads them when it is built.
constexpr ImWchar kEverything[] = {0x20, 0x17f, 0x370, 0x45f, 0x2000, 0x2bff, 0};
// Names of joints and symbols may be in any embedded script, but subscripts need few letters.
constexpr ImWchar kSubscripts[] = {0x20, 0xff, 0x391, 0x3c9, 0x2009, 0x2009, 0x2212, 0x2212, 0};

struct Face {
    Bytes bytes;
    double size = 16; // CSS px
    const ImWchar* letters = kEverything;
};

class Builder {
public:
    Builder(ImFontAtlas& atlas, float scale) : atlas_(atlas), scale_(scale) {}

    // Letters missing from the face come from the text face and from the symbols.
    [[nodiscard]] ImFont* add(const Face& face) {
        ImFont* font = addOne(face, false);
        if (face.bytes.data() != interRegular().data()) {
            addOne({interRegular(), face.size, face.letters}, true);
        }
        addOne({dejavuSigns(), face.size, face.letters}, true);
        font->FallbackChar = '?';
        return font;
    }

private:
    ImFont* addOne(const Face& face, bool merge) {
        ImFontConfig config;
        config.FontDataOwnedByAtlas = false;
        config.MergeMode = merge;
        config.GlyphRanges = face.letters;
        // On coarse screens letters are positioned at thirds of a pixel, on fine ones at whole
        // pixels.
        const bool fine = scale_ >= 1.5f;
        config.OversampleH = fine ? 1 : 3;
        config.PixelSnapH = fine;
        config.RasterizerMultiply = fine ? 1.0f : 1.1f;
        const float size = std::round(static_cast<float>(face.size) * scale_);
        // The atlas takes a pointer to non-const, but does not write through it.
        auto* data = const_cast<unsigned char*>(face.bytes.data());
        return atlas_.AddFontFromMemoryTTF(data, static_cast<int>(face.bytes.size()), size,
                                           &config);
    }

    ImFontAtlas& atlas_;
    float scale_;
};

} // namespace

Fonts buildFonts(ImFontAtlas& atlas, float scale, ForeignRuns& runs, DrawRun draw) {
    atlas.Clear();
    atlas.UserData = &runs;
    atlas.TexDesiredWidth = scale >= 1.5f ? 2048 : 1024;
    atlas.Flags |= ImFontAtlasFlags_NoMouseCursors;
    Builder builder(atlas, scale);
    Fonts fonts;
    fonts.body = builder.add({interRegular(), 16});
    fonts.small = builder.add({interRegular(), 14});
    fonts.strong = builder.add({interSemibold(), 16});
    fonts.heading = builder.add({interSemibold(), 20});
    fonts.variable = builder.add({interItalic(), 16});
    fonts.subscript = builder.add({interRegular(), 12, kSubscripts});
    fonts.label = builder.add({interRegular(), 15});
    fonts.joint = builder.add({interSemibold(), 15});
    const std::vector<RunGlyph> glyphs = addRuns(atlas, runs, draw);
    atlas.Build();
    copyRuns(atlas, glyphs);
    return fonts;
}

} // namespace gusset
