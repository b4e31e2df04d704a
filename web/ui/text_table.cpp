#include "ui/text_table.hpp"

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

float widthOf(const ImFont& font, const std::string& text) { return textSize(font, text).x; }

std::string headText(const RichLine& line) {
    std::string text;
    for (const Run& run : line) {
        text += run.text;
    }
    return text;
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
        float widest = widthOf(font, headText(table.head[c]));
        for (const std::vector<std::string>& row : table.rows) {
            widest = std::max(widest, widthOf(font, row[c]));
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

// At the cursor, which it advances.
template <class CellText>
void drawRow(const RowLook& look, const RowInk& ink, const std::vector<bool>& right,
             const CellText& cellText) {
    const Ui& ui = look.ui;
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const ImVec2 low = ImGui::GetCursorScreenPos();
    for (std::size_t i = 0; i < right.size(); ++i) {
        putFitted(list, ui, cellText(i),
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
            [&](std::size_t i) { return headText(table.head[block[i]]); });
    for (const std::vector<std::string>& cells : table.rows) {
        drawRow(look, {palette.ink, palette.rule}, right,
                [&](std::size_t i) -> const std::string& { return cells[block[i]]; });
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
