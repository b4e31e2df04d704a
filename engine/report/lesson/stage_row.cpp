#include "report/lesson/stage_row.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace gusset {
namespace {

constexpr double kRowHeight = 1.5; // font sizes
constexpr double kFractionRowHeight = 2.4;
constexpr double kInFraction = 0.8; // its letters over those of the row
constexpr double kFromBar = 0.6;    // font sizes, from the bar to the middle of a number
constexpr double kBesideBar = 0.1;
constexpr double kBarWidth = 0.06;

// A fraction, or the words between two.
struct RowPiece {
    RichLine words{};
    RichLine above{};
    RichLine below{};
    double before = 0; // font sizes; spaces at the ends of words are not painted
    double after = 0;
};

bool isFraction(const RowPiece& piece) { return !piece.below.empty(); }

// L, EA, x; or a number.
RichLine partOfFraction(const std::string& text) {
    const bool isName = (text[0] >= 'A' && text[0] <= 'Z') || (text[0] >= 'a' && text[0] <= 'z');
    return {{text, isName ? RunStyle::Variable : RunStyle::Plain}};
}

RowPiece fractionOf(const std::string& text) {
    const std::size_t bar = text.find('/');
    RowPiece piece;
    piece.above = partOfFraction(text.substr(0, bar));
    piece.below = partOfFraction(text.substr(bar + 1));
    return piece;
}

void takeSpaces(RowPiece& piece) {
    std::string& first = piece.words.front().text;
    const std::size_t begin = std::min(first.find_first_not_of(' '), first.size());
    piece.before = usualWidthOf({{first.substr(0, begin), RunStyle::Plain}}, 1);
    first.erase(0, begin);
    std::string& last = piece.words.back().text;
    const std::size_t end = last.find_last_not_of(' ') + 1;
    piece.after = usualWidthOf({{last.substr(end), RunStyle::Plain}}, 1);
    last.erase(end);
}

std::vector<RowPiece> piecesOf(const RichLine& row) {
    std::vector<RowPiece> pieces;
    for (const Run& run : row) {
        if (run.style == RunStyle::Fraction) {
            pieces.push_back(fractionOf(run.text));
        } else {
            if (pieces.empty() || isFraction(pieces.back())) {
                pieces.emplace_back();
            }
            pieces.back().words.push_back(run);
        }
    }
    for (RowPiece& piece : pieces) {
        if (!isFraction(piece)) {
            takeSpaces(piece);
        }
    }
    return pieces;
}

bool hasFraction(const RichLine& row) {
    return std::any_of(row.begin(), row.end(),
                       [](const Run& run) { return run.style == RunStyle::Fraction; });
}

double barOf(const RowPiece& piece, double size) {
    return std::max(widthOf(piece.above, kInFraction * size),
                    widthOf(piece.below, kInFraction * size));
}

// Words that nothing follows come as wide as their typeface makes them.
double widthOfPiece(const RowPiece& piece, double size, bool isLast) {
    return isFraction(piece) ? barOf(piece, size) + 2 * kBesideBar * size
                             : (piece.before + piece.after) * size +
                                   (isLast ? widthOf : usualWidthOf)(piece.words, size);
}

void setFraction(Sketch& sketch, const RowPiece& piece, Vec2 at, SketchInk ink, double size) {
    const double bar = barOf(piece, size);
    const Vec2 left = at + Vec2{kBesideBar * size, 0};
    const Vec2 middle = left + Vec2{bar / 2, 0};
    sketch.lines.push_back({left, left + Vec2{bar, 0}, ink, kBarWidth * size});
    for (const bool isAbove : {true, false}) {
        sketch.words.push_back({isAbove ? piece.above : piece.below,
                                middle + Vec2{0, (isAbove ? -kFromBar : kFromBar) * size},
                                SketchAnchor::Middle, ink, kInFraction * size});
    }
}

} // namespace

double rowHeightOf(const RichLine& row, double size) {
    return size * (hasFraction(row) ? kFractionRowHeight : kRowHeight);
}

double rowWidthOf(const RichLine& row, double size) {
    if (!hasFraction(row)) {
        return widthOf(row, size);
    }
    double width = 0;
    const std::vector<RowPiece> pieces = piecesOf(row);
    for (const RowPiece& piece : pieces) {
        width += widthOfPiece(piece, size, &piece == &pieces.back());
    }
    return width;
}

void setRow(Sketch& sketch, const RichLine& row, Vec2 at, SketchInk ink, double size) {
    if (!hasFraction(row)) {
        sketch.words.push_back({row, at, SketchAnchor::Start, ink, size});
        return;
    }
    const std::vector<RowPiece> pieces = piecesOf(row);
    for (const RowPiece& piece : pieces) {
        const bool isLast = &piece == &pieces.back();
        if (isFraction(piece)) {
            setFraction(sketch, piece, at, ink, size);
        } else if (!plainText(piece.words).empty()) {
            sketch.words.push_back({piece.words, at + Vec2{piece.before * size, 0},
                                    SketchAnchor::Start, ink, size, kNoThing,
                                    isLast ? 0 : usualWidthOf(piece.words, size)});
        }
        at.x += widthOfPiece(piece, size, isLast);
    }
}

} // namespace gusset
