#include "ui/rich_layout.hpp"

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>
#include <vector>

namespace gusset {
namespace {

constexpr std::string_view kRoot = "\u221A";
constexpr double kRadicalWidth = 9; // CSS px of the radical sign
constexpr double kBarOver = 2;      // a fraction's bar beyond its parts, on either side
constexpr float kBetweenLines = 1.45F;

// A run in one face. `below` is the denominator of a fraction.
struct Piece {
    std::string_view text;
    std::string_view below;
    const ImFont* font = nullptr;
    RunStyle style = RunStyle::Plain;
    float drop = 0; // device px below the line of the text
    float width = 0;
};
struct LaidWord { // not broken across lines
    std::vector<Piece> pieces;
    float width = 0;
    bool spaceBefore = false;
    bool tall = false; // holds a fraction
};
struct Line {
    std::vector<LaidWord> words;
    std::vector<float> at; // device px from the left
    bool tall = false;
};

const ImFont& faceOf(const Ui& ui, RunStyle style, const ImFont* face) {
    switch (style) {
    case RunStyle::Variable:
        return *ui.fonts.variable;
    case RunStyle::Subscript:
        return *ui.fonts.subscript;
    case RunStyle::Strong:
        return *ui.fonts.strong;
    case RunStyle::Fraction:
        return *ui.fonts.small;
    case RunStyle::Plain:
    case RunStyle::Root:
        break;
    }
    return face ? *face : *ui.fonts.body;
}

float widthOf(const ImFont& font, std::string_view text) { return textSize(font, text).x; }

// Text with radicals: √ covers the digits, or the name, that follow it.
struct Rooted {
    std::string_view before;
    std::string_view under;
    std::string_view after;
};

std::optional<Rooted> rootedIn(std::string_view text) {
    const std::size_t root = text.find(kRoot);
    if (root == std::string_view::npos) {
        return std::nullopt;
    }
    const std::string_view rest = text.substr(root + kRoot.size());
    const auto covered = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
               c == '.';
    };
    std::size_t end = 0;
    while (end < rest.size() && covered(rest[end])) {
        ++end;
    }
    return Rooted{text.substr(0, root), rest.substr(0, end), rest.substr(end)};
}

float widthOfRooted(const Ui& ui, const ImFont& font, std::string_view text) {
    const std::optional<Rooted> rooted = rootedIn(text);
    return rooted ? widthOf(font, rooted->before) + ui.px(kRadicalWidth) +
                        widthOf(font, rooted->under) + ui.px(1) + widthOf(font, rooted->after)
                  : widthOf(font, text);
}

Piece pieceOf(const Ui& ui, std::string_view text, RunStyle style, const ImFont* face) {
    const ImFont& font = faceOf(ui, style, face);
    Piece piece{.text = text, .below = {}, .font = &font, .style = style};
    if (style == RunStyle::Fraction) {
        const std::size_t bar = text.find('/');
        piece.text = text.substr(0, bar);
        piece.below = bar == std::string_view::npos ? "" : text.substr(bar + 1);
        piece.width =
            std::max(widthOfRooted(ui, font, piece.text), widthOfRooted(ui, font, piece.below)) +
            ui.px(4 * kBarOver);
        return piece;
    }
    piece.width = widthOfRooted(ui, font, text);
    if (style == RunStyle::Subscript) {
        piece.drop = ui.fonts.body->FontSize * 0.48f;
        piece.width += ui.px(1);
    }
    return piece;
}

bool isCount(std::string_view word) {
    return !word.empty() && word.find_first_not_of("0123456789") == std::string_view::npos;
}

// A line doesn't end with the sign before a term, within a product, or between a number and what it
// counts: "2 × 8 joints".
bool endsLine(const LaidWord& word, std::string_view next) {
    constexpr std::string_view kTimes = "×";
    if (word.pieces.empty() || word.pieces.back().style != RunStyle::Plain) {
        return true;
    }
    const std::string_view text = word.pieces.back().text;
    const bool counts =
        next.starts_with(kTimes) || (!next.empty() && next.front() >= 'a' && next.front() <= 'z');
    return !staysWithNext(text) && text != kTimes && !(isCount(text) && counts);
}

// Words end at the spaces where a line may end; a word may extend over several runs.
std::vector<LaidWord> wordsOf(const Ui& ui, const RichLine& line, const ImFont* face) {
    std::vector<LaidWord> words(1);
    for (const Run& run : line) {
        std::string_view rest = run.text;
        while (!rest.empty()) {
            const std::size_t space = rest.find(' ');
            const std::string_view head = rest.substr(0, space);
            if (!head.empty()) {
                const Piece piece = pieceOf(ui, head, run.style, face);
                words.back().width += piece.width;
                words.back().tall = words.back().tall || run.style == RunStyle::Fraction;
                words.back().pieces.push_back(piece);
            }
            if (space == std::string_view::npos) {
                break;
            }
            if (endsLine(words.back(), rest.substr(space + 1))) {
                words.push_back({{}, 0, true, false});
            } else {
                const Piece gap = pieceOf(ui, rest.substr(space, 1), RunStyle::Plain, face);
                words.back().width += gap.width;
                words.back().pieces.push_back(gap);
            }
            rest.remove_prefix(space + 1);
        }
    }
    return words;
}

// Broken at spaces to fit the available width.
std::vector<Line> linesOf(const Ui& ui, std::vector<LaidWord> words, const RichLook& look,
                          float right) {
    const ImFont& face = look.face ? *look.face : *ui.fonts.body;
    const float space = face.GetCharAdvance(' ');
    const float later = ui.px(look.indent + look.hanging);
    std::vector<Line> lines(1);
    float pen = ui.px(look.indent);
    for (LaidWord& word : words) {
        const float before = word.spaceBefore ? space : 0;
        if (pen + before + word.width > right && pen > later) {
            lines.emplace_back();
            pen = later;
        } else {
            pen += before;
        }
        Line& line = lines.back();
        line.tall = line.tall || word.tall;
        line.at.push_back(pen);
        pen += word.width;
        line.words.push_back(std::move(word));
    }
    return lines;
}

void put(ImDrawList& list, const ImFont& font, ImVec2 at, ImU32 ink, std::string_view text) {
    putText(list, font, {std::round(at.x), std::round(at.y)}, ink, text);
}

struct LinePen {
    const Ui& ui;
    ImDrawList& list;
    ImU32 ink;
};

void putRooted(const LinePen& pen, const ImFont& font, ImVec2 at, std::string_view text) {
    const std::optional<Rooted> rooted = rootedIn(text);
    if (!rooted) {
        put(pen.list, font, at, pen.ink, text);
        return;
    }
    const auto [before, under, after] = *rooted;
    put(pen.list, font, at, pen.ink, before);
    const float size = font.FontSize;
    const float x = std::round(at.x + widthOf(font, before));
    const float sign = pen.ui.px(kRadicalWidth);
    const float end = x + sign + widthOf(font, under);
    const float thick = std::max(1.0f, pen.ui.px(1.1));
    const float top = std::round(at.y + 0.08f * size);
    pen.list.PathLineTo({x + 0.08f * sign, at.y + 0.62f * size});
    pen.list.PathLineTo({x + 0.28f * sign, at.y + 0.54f * size});
    pen.list.PathLineTo({x + 0.55f * sign, at.y + 0.92f * size});
    pen.list.PathLineTo({x + 0.92f * sign, top});
    pen.list.PathLineTo({end, top});
    pen.list.PathStroke(pen.ink, 0, thick);
    put(pen.list, font, {x + sign, at.y}, pen.ink, under);
    put(pen.list, font, {end + pen.ui.px(1), at.y}, pen.ink, after);
}

// The bar at mid-height of the line, its parts above and below.
void putFraction(const LinePen& pen, const Piece& piece, ImVec2 at, float lineSize) {
    const ImFont& font = *piece.font;
    const float inner = piece.width - pen.ui.px(2 * kBarOver);
    const float left = at.x + pen.ui.px(kBarOver);
    const float bar = std::round(at.y + 0.55f * lineSize);
    const auto centred = [&](std::string_view text, float y) {
        const float width = widthOfRooted(pen.ui, font, text);
        putRooted(pen, font, {left + (inner - width) / 2, y}, text);
    };
    centred(piece.text, bar - font.FontSize - pen.ui.px(1.5));
    centred(piece.below, bar + pen.ui.px(2));
    pen.list.AddRectFilled({left, bar}, {left + inner, bar + std::max(1.0f, pen.ui.px(1.1))},
                           pen.ink);
}

void drawWord(const LinePen& pen, const LaidWord& word, ImVec2 at, float lineSize) {
    for (const Piece& piece : word.pieces) {
        if (piece.style == RunStyle::Fraction) {
            putFraction(pen, piece, at, lineSize);
        } else {
            putRooted(pen, *piece.font, {at.x, at.y + piece.drop}, piece.text);
        }
        at.x += piece.width;
    }
}

} // namespace

RichSize drawRich(const Ui& ui, const RichLine& line, const RichLook& look) {
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    const float right = ImGui::GetContentRegionAvail().x;
    const ImFont& face = look.face ? *look.face : *ui.fonts.body;
    const float plain = std::round(face.FontSize * kBetweenLines);
    const float tall = std::round(2 * ui.fonts.small->FontSize + ui.px(12));
    const LinePen pen{ui, *ImGui::GetWindowDrawList(), packed(look.ink)};
    RichSize size;
    for (const Line& row : linesOf(ui, wordsOf(ui, line, look.face), look, right)) {
        const float height = row.tall ? std::max(tall, plain) : plain;
        const float lead = (height - face.FontSize) / 2;
        for (std::size_t i = 0; i < row.words.size(); ++i) {
            drawWord(pen, row.words[i], {origin.x + row.at[i], origin.y + size.height + lead},
                     face.FontSize);
            size.width = std::max(size.width, row.at[i] + row.words[i].width);
        }
        size.height += height;
    }
    ImGui::Dummy({std::min(size.width, right), size.height});
    return size;
}

} // namespace gusset
