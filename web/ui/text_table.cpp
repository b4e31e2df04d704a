#include "ui/text_table.hpp"

#include "report/sketch/sketch.hpp"
#include "ui/fit.hpp"
#include "ui/fitted.hpp"
#include "ui/widgets.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gusset {
namespace {

constexpr double kBetweenColumns = 8; // CSS px, at least

std::string textOfCell(const RichLine& line) {
    std::string text;
    for (const Run& run : line) {
        text += run.text;
    }
    return text;
}

bool hasSubscript(const RichLine& line) {
    return std::any_of(line.begin(), line.end(),
                       [](const Run& run) { return run.style == RunStyle::Subscript; });
}

TextFit fitOf(const ImFont& font, const Run& run) {
    const bool sub = run.style == RunStyle::Subscript;
    return {.size = font.FontSize * (sub ? static_cast<float>(kSubscriptSize) : 1.0f)};
}

float widthOf(const ImFont& font, const RichLine& line) {
    if (!hasSubscript(line)) {
        return textSize(font, textOfCell(line)).x;
    }
    float width = 0;
    for (const Run& run : line) {
        width += textSize(font, run.text, fitOf(font, run)).x;
    }
    return width;
}

// Run after run, subscripts smaller and lower. Precondition: there is room for all of it.
void putRuns(ImDrawList& list, const RichLine& line, const FittedLook& look) {
    const ImFont& font = *look.font;
    float x = look.align == Align::Right ? look.high.x - widthOf(font, line) : look.low.x;
    const float y = std::round((look.low.y + look.high.y - font.FontSize) / 2);
    for (const Run& run : line) {
        const TextFit fit = fitOf(font, run);
        const float drop =
            run.style == RunStyle::Subscript
                ? font.FontSize - fit.size + static_cast<float>(kSubscriptDrop) * fit.size
                : 0;
        putText(list, font, {std::round(x), y + drop}, look.ink, run.text, fit);
        x += textSize(font, run.text, fit).x;
    }
}

using Block = std::vector<std::size_t>; // indices of its columns

struct Columns {
    const ImFont* font = nullptr;
    std::vector<float> widths; // device px, each including the gap to the next column
    std::vector<Block> blocks;
};

std::vector<float> widthsIn(const TextTable& table, const ImFont& font, float between) {
    std::vector<float> widths;
    for (std::size_t c = 0; c < table.head.size(); ++c) {
        float widest = widthOf(font, table.head[c]);
        for (const std::vector<Words>& row : table.rows) {
            widest = std::max(widest, widthOf(font, row[c].line));
        }
        widths.push_back(widest + between);
    }
    return widths;
}

// The largest face in which the columns fit, or need the fewest blocks.
Columns columnsOf(const Ui& ui, const TextTable& table, float room) {
    Columns best;
    for (const ImFont* font : {ui.fonts.body, ui.fonts.small, ui.fonts.subscript}) {
        Columns columns{font, widthsIn(table, *font, ui.px(kBetweenColumns)), {}};
        columns.blocks = columnBlocks(columns.widths, room);
        if (best.blocks.empty() || columns.blocks.size() < best.blocks.size()) {
            best = std::move(columns);
        }
    }
    return best;
}

// Left edges of the columns, and the last right edge: space left over is shared out, and so is any
// shortfall.
std::vector<float> edgesOf(const Columns& columns, const Block& block, float room) {
    float sum = 0;
    for (const std::size_t c : block) {
        sum += columns.widths[c];
    }
    const float more = std::max(room - sum, 0.0f) / static_cast<float>(block.size());
    const float scale = std::min(room / sum, 1.0f);
    std::vector<float> edges{0};
    for (const std::size_t c : block) {
        edges.push_back(edges.back() + columns.widths[c] * scale + more);
    }
    return edges;
}

struct RowLook {
    const Ui& ui;
    const ImFont& font;
    const std::vector<float>& edges;
    float height = 0; // of a row, device px
};

struct RowInk {
    Colour text;
    Colour rule;
};

void putCell(ImDrawList& list, const Ui& ui, const RichLine& line, const FittedLook& look) {
    if (hasSubscript(line) && widthOf(*look.font, line) <= look.high.x - look.low.x) {
        putRuns(list, line, look);
    } else {
        putFitted(list, ui, textOfCell(line), look);
    }
}

// At the cursor, which it advances.
template <class CellLine>
void drawRow(const RowLook& look, const RowInk& ink, const std::vector<bool>& right,
             const CellLine& cellLine) {
    const Ui& ui = look.ui;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImVec2 low = ImGui::GetCursorScreenPos();
    for (std::size_t i = 0; i < right.size(); ++i) {
        putCell(list, ui, cellLine(i),
                {.low = {low.x + look.edges[i] + ui.px(2), low.y},
                 .high = {low.x + look.edges[i + 1] - ui.px(2), low.y + look.height},
                 .align = right[i] ? Align::Right : Align::Left,
                 .isNumber = right[i],
                 .font = &look.font,
                 .ink = packed(ink.text)});
    }
    const float y = std::floor(low.y + look.height - 1);
    list.AddRectFilled({low.x, y}, {low.x + look.edges.back(), y + std::max(1.0f, ui.px(1))},
                       packed(ink.rule));
    ImGui::SetCursorScreenPos({low.x, low.y + look.height});
}

void drawBlock(const Ui& ui, const TextTable& table, const Columns& columns, const Block& block) {
    const Palette& palette = *ui.palette;
    const ImVec2 low = ImGui::GetCursorScreenPos();
    const std::vector<float> edges = edgesOf(columns, block, ImGui::GetContentRegionAvail().x);
    const RowLook look{ui, *columns.font, edges, std::round(columns.font->FontSize + ui.px(9))};
    std::vector<bool> right;
    for (const std::size_t c : block) {
        right.push_back(table.numeric[c]);
    }
    drawRow(look, {palette.muted, palette.edge}, right,
            [&](std::size_t i) -> const RichLine& { return table.head[block[i]]; });
    for (const std::vector<Words>& cells : table.rows) {
        drawRow(look, {palette.ink, palette.rule}, right,
                [&](std::size_t i) -> const RichLine& { return cells[block[i]].line; });
    }
    const float height = look.height * static_cast<float>(table.rows.size() + 1);
    ImGui::SetCursorScreenPos(low);
    ImGui::Dummy({edges.back(), height + ui.px(8)});
}

} // namespace

void drawTextTable(const Ui& ui, const TextTable& table) {
    smallPrint(ui, table.caption);
    const Columns columns = columnsOf(ui, table, ImGui::GetContentRegionAvail().x);
    for (const Block& block : columns.blocks) {
        drawBlock(ui, table, columns, block);
    }
}

} // namespace gusset
