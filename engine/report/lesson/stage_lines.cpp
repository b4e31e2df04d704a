#include "report/lesson/stage_lines.hpp"

#include "report/lesson/stage_row.hpp"
#include "report/text/formula.hpp"

#include <algorithm>
#include <string_view>
#include <utility>

namespace gusset {
namespace {

constexpr double kTableRowHeight = 1.5; // font sizes
constexpr double kBetweenLines = 0.35;

struct PlacedRow { // of a line
    RichLine words{};
    double indent = 0; // px
};

// Words with the spaces behind them, so that a line can be broken between any two.
std::vector<RichLine> wordsOf(const RichLine& line) {
    std::vector<RichLine> words(1);
    for (const Run& run : line) {
        std::string_view rest = run.text;
        while (!rest.empty()) {
            const std::size_t space = rest.find(' ');
            const std::size_t end = space == rest.npos ? rest.size() : space + 1;
            words.back().push_back({std::string(rest.substr(0, end)), run.style});
            if (space != rest.npos) {
                words.emplace_back();
            }
            rest.remove_prefix(end);
        }
    }
    if (words.back().empty()) {
        words.pop_back();
    }
    return words;
}

void addRuns(RichLine& line, const RichLine& more) {
    line.insert(line.end(), more.begin(), more.end());
}

// Pieces into as few rows as hold them; the second row begins at `hang`.
std::vector<PlacedRow> filled(const std::vector<RichLine>& pieces, double size, double width,
                              double hang) {
    std::vector<PlacedRow> rows(1);
    double used = 0;
    for (const RichLine& piece : pieces) {
        const double wide = rowWidthOf(piece, size);
        if (!rows.back().words.empty() && rows.back().indent + used + wide > width) {
            rows.push_back({{}, hang});
            used = 0;
        }
        addRuns(rows.back().words, piece);
        used += wide;
    }
    return rows;
}

// A row is set as one formula, so that its signs have the spaces of operators.
std::vector<PlacedRow> formulaRows(const Formula& formula, double size, double width) {
    const BrokenFormula broken = brokenAtOperators(formula);
    const double hang = std::min(rowWidthOf(runsOf(broken.lead), size), width / 3);
    std::vector<PlacedRow> rows;
    Formula row = broken.lead;
    double indent = 0;
    for (const Formula& piece : broken.rest) {
        Formula longer = row;
        append(longer, piece);
        if (!row.empty() && indent + rowWidthOf(runsOf(longer), size) > width) {
            rows.push_back({runsOf(row), indent});
            indent = hang;
            longer = piece;
        }
        row = std::move(longer);
    }
    rows.push_back({runsOf(row), indent});
    return rows;
}

SketchInk inkOf(const WorkingLine& line) {
    return line.role == LineRole::Result    ? SketchInk::Accent
           : line.role == LineRole::Caution ? SketchInk::Compression
                                            : SketchInk::Plain;
}

// A line broken into rows, at a font size of `size` px.
std::vector<PlacedRow> rowsOf(const WorkingLine& line, double size, double width) {
    return line.formula.empty() ? filled(wordsOf(line.runs), size, width, 0)
                                : formulaRows(line.formula, size, width);
}

} // namespace

double placeLines(Sketch& sketch, const std::vector<WorkingLine>& lines, Vec2 corner, double width,
                  double size) {
    double y = 0;
    for (const WorkingLine& line : lines) {
        for (const PlacedRow& row : rowsOf(line, size, width)) {
            const double high = rowHeightOf(row.words, size);
            setRow(sketch, row.words, corner + Vec2{row.indent, y + high / 2}, inkOf(line), size);
            y += high;
        }
        y += kBetweenLines * size;
    }
    return y;
}

double heightOf(const std::vector<WorkingLine>& lines, double width, double size) {
    Sketch unused;
    return placeLines(unused, lines, {}, width, size);
}

double widestRow(const std::vector<WorkingLine>& lines, double width, double size) {
    double widest = 0;
    for (const WorkingLine& line : lines) {
        for (const PlacedRow& row : rowsOf(line, size, width)) {
            widest = std::max(widest, row.indent + rowWidthOf(row.words, size));
        }
    }
    return widest;
}

Sketch tableSketch(const TextTable& table, double size, std::size_t firstRow, std::size_t rows) {
    constexpr double kGap = 1.2; // font sizes between columns
    std::vector<double> widths;
    for (const RichLine& head : table.head) {
        widths.push_back(widthOf(head, size));
    }
    for (const auto& row : table.rows) {
        for (std::size_t i = 0; i < row.size() && i < widths.size(); ++i) {
            widths[i] = std::max(widths[i], widthOf(row[i].line, size));
        }
    }
    Sketch sketch;
    const auto put = [&](const RichLine& words, double x, double y, std::size_t column,
                         SketchInk ink) {
        const bool right = column < table.numeric.size() && table.numeric[column];
        sketch.words.push_back({words,
                                {x + (right ? widths[column] : 0), y},
                                right ? SketchAnchor::End : SketchAnchor::Start,
                                ink,
                                size});
    };
    const std::size_t last = std::min(table.rows.size(), firstRow + rows);
    double x = 0;
    for (std::size_t column = 0; column < widths.size(); ++column) {
        double y = kTableRowHeight * size / 2;
        put(table.head[column], x, y, column, SketchInk::Muted);
        for (std::size_t i = firstRow; i < last; ++i) {
            y += kTableRowHeight * size;
            if (column < table.rows[i].size()) {
                put(table.rows[i][column].line, x, y, column, SketchInk::Plain);
            }
        }
        x += widths[column] + kGap * size;
    }
    sketch.width = std::max(0.0, x - kGap * size);
    sketch.height = kTableRowHeight * size * static_cast<double>(last - firstRow + 1);
    return sketch;
}

} // namespace gusset
