#include "ui/rich_layout.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

namespace gusset {
namespace {

struct Piece { // a stretch in one face
    std::string_view text;
    const ImFont* font = nullptr;
    float drop = 0; // device px below the line of the text
    float width = 0;
};
struct Word { // is not broken
    std::vector<Piece> pieces;
    float width = 0;
    bool spaceBefore = false;
};

const ImFont& faceOf(const Ui& ui, RunStyle style, const ImFont* face) {
    switch (style) {
    case RunStyle::Variable:
        return *ui.fonts.variable;
    case RunStyle::Subscript:
        return *ui.fonts.subscript;
    case RunStyle::Strong:
        return *ui.fonts.strong;
    case RunStyle::Plain:
        break;
    }
    return face ? *face : *ui.fonts.body;
}

Piece pieceOf(const Ui& ui, std::string_view text, RunStyle style, const ImFont* face) {
    const ImFont& font = faceOf(ui, style, face);
    Piece piece{text, &font, 0, 0};
    piece.width =
        font.CalcTextSizeA(font.FontSize, FLT_MAX, 0, text.data(), text.data() + text.size()).x;
    if (style == RunStyle::Subscript) {
        piece.drop = ui.fonts.body->FontSize * 0.48f;
        piece.width += ui.px(1);
    }
    return piece;
}

// Words end at spaces; a word may go through several runs.
std::vector<Word> wordsOf(const Ui& ui, const RichLine& line, const ImFont* face) {
    std::vector<Word> words(1);
    for (const Run& run : line) {
        std::string_view rest = run.text;
        while (!rest.empty()) {
            const std::size_t space = rest.find(' ');
            const std::string_view head = rest.substr(0, space);
            if (!head.empty()) {
                const Piece piece = pieceOf(ui, head, run.style, face);
                words.back().width += piece.width;
                words.back().pieces.push_back(piece);
            }
            if (space == std::string_view::npos) {
                break;
            }
            words.push_back({{}, 0, true});
            rest.remove_prefix(space + 1);
        }
    }
    return words;
}

void drawWord(ImDrawList& list, const Word& word, ImVec2 at, ImU32 ink) {
    for (const Piece& piece : word.pieces) {
        list.AddText(piece.font, piece.font->FontSize,
                     {std::round(at.x), std::round(at.y + piece.drop)}, ink, piece.text.data(),
                     piece.text.data() + piece.text.size());
        at.x += piece.width;
    }
}

} // namespace

RichSize drawRich(const Ui& ui, const RichLine& line, const RichLook& look) {
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    const float right = ImGui::GetContentRegionAvail().x;
    const ImFont& face = look.face ? *look.face : *ui.fonts.body;
    const float space = face.GetCharAdvance(' ');
    const float lineHeight = std::round(face.FontSize * 1.45f);
    const float lead = (lineHeight - face.FontSize) / 2;
    const float first = ui.px(look.indent);
    const float later = ui.px(look.indent + look.hanging);
    ImVec2 pen{first, 0};
    RichSize size;
    for (const Word& word : wordsOf(ui, line, look.face)) {
        const float before = word.spaceBefore ? space : 0;
        if (pen.x + before + word.width > right && pen.x > later) {
            pen = {later, pen.y + lineHeight};
        } else {
            pen.x += before;
        }
        drawWord(*ImGui::GetWindowDrawList(), word, {origin.x + pen.x, origin.y + pen.y + lead},
                 packed(look.ink));
        pen.x += word.width;
        size.width = std::max(size.width, pen.x);
    }
    size.height = pen.y + lineHeight;
    ImGui::Dummy({std::min(size.width, right), size.height});
    return size;
}

} // namespace gusset
