#include "ui/text_table.hpp"

#include "ui/widgets.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace gusset {
namespace {

constexpr double kBetweenColumns = 8; // CSS px, least

float widthOf(const ImFont& font, const std::string& text) { return textSize(font, text).x; }

std::string headText(const RichLine& line) {
    std::string text;
    for (const Run& run : line) {
        text += run.text;
    }
    return text;
}

struct Columns {
    const ImFont* font = nullptr;
    std::vector<float> edges; // device px from the left; one more than there are columns
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

// The largest face in which the columns have room; what is left over is shared out.
Columns columnsOf(const Ui& ui, const TextTable& table, float room) {
    Columns columns;
    std::vector<float> widths;
    float sum = 0;
    for (const ImFont* font : {ui.fonts.body, ui.fonts.small, ui.fonts.subscript}) {
        columns.font = font;
        widths = widthsIn(table, *font, ui.px(kBetweenColumns));
        sum = 0;
        for (const float width : widths) {
            sum += width;
        }
        if (sum <= room) {
            break;
        }
    }
    const float more = (room - sum) / static_cast<float>(std::max<std::size_t>(widths.size(), 1));
    columns.edges.push_back(0);
    for (const float width : widths) {
        columns.edges.push_back(columns.edges.back() + width + more);
    }
    return columns;
}

struct Place {
    const Ui& ui;
    const Columns& columns;
    ImVec2 low;
};

void putCell(const Place& place, std::size_t column, bool right, const std::string& text,
             Colour ink) {
    const ImFont& font = *place.columns.font;
    const float left = place.low.x + place.columns.edges[column];
    const float end = place.low.x + place.columns.edges[column + 1];
    const float x = right ? end - place.ui.px(2) - widthOf(font, text) : left + place.ui.px(2);
    putText(*ImGui::GetWindowDrawList(), font, {std::round(x), std::round(place.low.y)},
            packed(ink), text);
}

void ruleUnder(const Place& place, float height, Colour ink) {
    const float y = std::floor(place.low.y + height);
    ImGui::GetWindowDrawList()->AddRectFilled(
        {place.low.x, y},
        {place.low.x + place.columns.edges.back(), y + std::max(1.0f, place.ui.px(1))},
        packed(ink));
}

} // namespace

void drawTextTable(const Ui& ui, const TextTable& table) {
    const Palette& palette = *ui.palette;
    smallPrint(ui, table.caption);
    const Columns columns = columnsOf(ui, table, ImGui::GetContentRegionAvail().x);
    const float step = std::round(columns.font->FontSize + ui.px(9));
    const float lead = (step - columns.font->FontSize) / 2;
    ImVec2 low = ImGui::GetCursorScreenPos();
    const auto row = [&](const auto& cells, Colour ink, Colour rule) {
        const Place place{ui, columns, {low.x, low.y + lead}};
        for (std::size_t c = 0; c < cells.size(); ++c) {
            putCell(place, c, table.numeric[c], cells[c], ink);
        }
        ruleUnder({ui, columns, low}, step - 1, rule);
        low.y += step;
    };
    std::vector<std::string> head;
    for (const RichLine& line : table.head) {
        head.push_back(headText(line));
    }
    row(head, palette.muted, palette.edge);
    for (const std::vector<std::string>& cells : table.rows) {
        row(cells, palette.ink, palette.rule);
    }
    const float height = step * static_cast<float>(table.rows.size() + 1);
    ImGui::Dummy({columns.edges.back(), height + ui.px(8)});
}

} // namespace gusset
