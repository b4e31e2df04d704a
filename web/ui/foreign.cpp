#include "ui/foreign.hpp"

#include "ui/font_data.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace gusset {
namespace {

constexpr ImWchar kFirstCode = 0xE000;  // of the private use area, which no embedded typeface uses
constexpr std::size_t kMostRuns = 1000; // beyond this there are question marks
constexpr std::size_t kMostInk = 4'000'000; // px of the atlas

struct Letter {
    std::uint32_t code = 0;
    std::size_t bytes = 1;
};

// Invalid UTF-8 counts as a letter that no typeface has.
Letter letterAt(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    const std::size_t bytes = first < 0x80 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
    if (bytes > text.size()) {
        return {kFirstCode, text.size()};
    }
    std::uint32_t code = bytes == 1 ? first : first & (0xFFU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        code = code << 6U | (byte(i) & 0x3FU);
    }
    return {code, bytes};
}

bool isOurs(const ImFont& font, std::uint32_t code) {
    return code < 0x80 ||
           (code < kFirstCode && font.FindGlyphNoFallback(static_cast<ImWchar>(code)) != nullptr);
}

// Symbols, arrows and dashes separate words, as blanks do.
bool isLetter(std::uint32_t code) {
    const bool figure = code >= '0' && code <= '9';
    const bool latin = (code >= 'A' && code <= 'Z') || (code >= 'a' && code <= 'z');
    return figure || latin || (code >= 0xC0 && (code < 0x2000 || code >= 0x2C00));
}

struct Word {
    std::size_t bytes = 0;
    bool foreign = false; // one missing letter is enough: faces are not mixed within a word
};

Word wordAt(const ImFont& font, std::string_view text) {
    Word word;
    while (word.bytes < text.size()) {
        const Letter letter = letterAt(text.substr(word.bytes));
        const bool ours = isOurs(font, letter.code);
        if (ours && !isLetter(letter.code)) {
            break;
        }
        word.foreign = word.foreign || !ours;
        word.bytes += letter.bytes;
    }
    return word;
}

// Blanks between two foreign words belong to the run, so that words of a right-to-left script are
// in their order.
std::size_t runLength(const ImFont& font, std::string_view text) {
    std::size_t end = 0;
    std::size_t at = 0;
    for (Word word = wordAt(font, text); word.foreign; word = wordAt(font, text.substr(at))) {
        at += word.bytes;
        end = at;
        while (at < text.size() && text[at] == ' ') {
            ++at;
        }
    }
    return end;
}

std::string codeText(std::size_t place) {
    const auto code = static_cast<std::uint32_t>(kFirstCode + place);
    return {static_cast<char>(0xE0U | code >> 12U), static_cast<char>(0x80U | (code >> 6U & 0x3FU)),
            static_cast<char>(0x80U | (code & 0x3FU))};
}

std::string glyphOf(const ImFont& font, std::string_view run) {
    auto* known = static_cast<ForeignRuns*>(font.ContainerAtlas->UserData);
    const ImVector<ImFont*>& fonts = font.ContainerAtlas->Fonts;
    const int index =
        static_cast<int>(std::find(fonts.begin(), fonts.end(), &font) - fonts.begin());
    const auto isSame = [&](const ForeignRun& one) { return one.font == index && one.text == run; };
    auto found = std::find_if(known->runs.begin(), known->runs.end(), isSame);
    if (found == known->runs.end()) {
        if (known->runs.size() >= kMostRuns) {
            return "?";
        }
        known->runs.push_back({std::string(run), index});
        found = known->runs.end() - 1;
    }
    return codeText(static_cast<std::size_t>(found - known->runs.begin()));
}

} // namespace

std::string settable(const ImFont& font, std::string_view text) {
    std::string set;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::string_view rest = text.substr(at);
        const Word word = wordAt(font, rest);
        const std::size_t length = word.foreign      ? runLength(font, rest)
                                   : word.bytes == 0 ? letterAt(rest).bytes
                                                     : word.bytes;
        const std::string_view part = rest.substr(0, length);
        set += word.foreign ? glyphOf(font, part) : std::string(part);
        at += length;
    }
    return set;
}

ImVec2 textSize(const ImFont& font, std::string_view text, const TextFit& fit) {
    const std::string words = settable(font, text);
    const float size = fit.size > 0 ? fit.size : font.FontSize;
    return font.CalcTextSizeA(size, FLT_MAX, fit.wrap, words.data(), words.data() + words.size());
}

void putText(ImDrawList& list, const ImFont& font, ImVec2 at, ImU32 ink, std::string_view text,
             const TextFit& fit) {
    const std::string words = settable(font, text);
    const float size = fit.size > 0 ? fit.size : font.FontSize;
    list.AddText(&font, size, at, ink, words.data(), words.data() + words.size(), fit.wrap,
                 fit.clip);
}

namespace {

// In a line of the embedded fonts, the baseline and the em as fractions of the line height: Inter's
// ascender, descender and em are 2728, 680 and 2816 units (tables hhea and head).
constexpr float kBaseline = 2728.0f / 3408.0f;
constexpr float kEm = 2816.0f / 3408.0f;
constexpr float kAbove = 0.25f; // of a line, above it for taller scripts; the same below

const ImFontConfig& ownConfig(const ImFontAtlas& atlas, const ImFont* font) {
    return *std::find_if(
        atlas.ConfigData.begin(), atlas.ConfigData.end(),
        [&](const ImFontConfig& one) { return one.DstFont == font && !one.MergeMode; });
}

} // namespace

std::vector<RunGlyph> addRuns(ImFontAtlas& atlas, ForeignRuns& known, DrawRun draw) {
    std::vector<RunGlyph> glyphs;
    std::size_t ink = 0;
    for (std::size_t i = 0; i < known.runs.size() && ink < kMostInk; ++i) {
        const ForeignRun& run = known.runs[i];
        ImFont* font = atlas.Fonts[run.font];
        const ImFontConfig& config = ownConfig(atlas, font);
        const float line = config.SizePixels;
        const float above = std::round(kAbove * line);
        const RunLook look{kEm * line, config.FontData == interSemibold().data(),
                           config.FontData == interItalic().data()};
        RunPicture picture = draw(run.text, look,
                                  {static_cast<int>(line + 2 * above),
                                   static_cast<int>(std::round(above + kBaseline * line))});
        if (picture.ink.empty()) {
            continue;
        }
        ink += picture.ink.size();
        const int rect = atlas.AddCustomRectFontGlyph(
            font, static_cast<ImWchar>(kFirstCode + i), picture.width, picture.height,
            static_cast<float>(picture.width), {0, -above});
        glyphs.push_back({rect, std::move(picture)});
    }
    known.drawn = known.runs.size();
    return glyphs;
}

void copyRuns(ImFontAtlas& atlas, const std::vector<RunGlyph>& glyphs) {
    for (const RunGlyph& glyph : glyphs) {
        const ImFontAtlasCustomRect& rect = *atlas.GetCustomRectByIndex(glyph.rect);
        const RunPicture& picture = glyph.picture;
        for (int row = 0; rect.IsPacked() && row < picture.height; ++row) {
            const unsigned char* from =
                picture.ink.data() + static_cast<std::size_t>(row) * picture.width;
            std::copy_n(from, picture.width,
                        atlas.TexPixelsAlpha8 + (rect.Y + row) * atlas.TexWidth + rect.X);
        }
    }
}

} // namespace gusset
