#pragma once
// Words in letters that the embedded typefaces lack (other scripts, emoji): the browser draws each
// run of them as a whole, so that scripts which join or reorder their letters come out right, and
// the picture is stored in the font atlas as one glyph. Runs are noted when they are first drawn
// and have their pictures from the next frame on.

#include "app/page/foreign_run.hpp"

#include <imgui.h>

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct ForeignRun {
    std::string text;
    int font = 0; // index in the atlas, in the order of adding
};
struct ForeignRuns {
    std::vector<ForeignRun> runs{};
    std::size_t drawn = 0; // this many from the start have pictures, if there was room for them
};

// The text with each run of words that contain letters missing from `font` replaced by one glyph of
// the atlas; notes new runs in the atlas's UserData, which is a ForeignRuns.
[[nodiscard]] std::string settable(const ImFont& font, std::string_view text);

// All words are measured and drawn by these two functions, so that no letters are missing.
struct TextFit {
    float wrap = 0; // device px; 0: one line
    float size = 0; // device px; 0: the font's own
    const ImVec4* clip = nullptr;
};
[[nodiscard]] ImVec2 textSize(const ImFont&, std::string_view, const TextFit& = {});
void putText(ImDrawList&, const ImFont&, ImVec2 at, ImU32 ink, std::string_view,
             const TextFit& = {});

// Between adding the fonts of an atlas and building it, and after building it.
struct RunGlyph {
    int rect = 0; // index in the atlas
    RunPicture picture;
};
[[nodiscard]] std::vector<RunGlyph> addRuns(ImFontAtlas&, ForeignRuns&, DrawRun);
void copyRuns(ImFontAtlas&, const std::vector<RunGlyph>&);

} // namespace gusset
