#pragma once
// A table as on ruled paper: a heading line, hairlines, right-aligned numbers in tabular figures.

#include "core/phrase.hpp"
#include "ui/fit.hpp"
#include "ui/fitted.hpp"
#include "ui/theme.hpp"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace gusset {

struct Heading {
    std::string_view words;
    std::string_view name{}; // the words without their unit, if they have one
};
struct Column {
    Heading heading;
    double least = 60;           // CSS px
    double share = 1;            // of the space left over
    Align align = Align::Left;   // numbers are right-aligned
    std::optional<int> orders{}; // what its heading sorts the rows by when pressed
    bool fallsFirst = false;     // descending first
    std::string_view longest{}; // its longest text, if known beforehand: it gets room for this from
                                // columns that have room to spare
    const ImFont* font = nullptr; // null: the text face
    int decimals = 0; // the most that a number in it has: their decimal signs are below each other
};

// Exists while the table is drawn.
class Table {
public:
    Table(const Ui&, const char* id, std::span<const Column>);
    ~Table();
    Table(const Table&) = delete;
    Table& operator=(const Table&) = delete;

    void header();
    // The heading of a sortable column can be pressed; returns the one that was, or none. The one
    // that the rows are sorted by has an arrow.
    struct OrderLook {
        std::optional<int> orders{}; // Column::orders; none: as drawn
        bool falling = false;
        bool showsAll = false; // every heading has a mark: the header decides
    };
    [[nodiscard]] const Column* orderingHeader(const PhraseBook&, OrderLook);

    struct RowLook {
        int id = 0;
        bool selected = false;
        bool lit = false;       // the pointer is on its thing on the board
        bool pressable = false; // as a whole; rows of fields are not
    };
    struct RowState {
        bool pressed = false;
        bool hovered = false;
    };
    RowState row(const RowLook&);

    // Of the current row.
    struct Box {
        ImVec2 low;
        ImVec2 high;
    };
    [[nodiscard]] Box cell(int column) const;
    [[nodiscard]] int decimals(int column) const {
        return columns_[static_cast<std::size_t>(column)].decimals;
    }
    // Whether the text fits without being truncated.
    [[nodiscard]] bool fits(int column, std::string_view) const;
    struct TextLook {
        Colour ink;
        const ImFont* font = nullptr; // null: the text face
    };
    void text(int column, std::string_view, const TextLook&);

    // For clipping long tables: the height of one row with its rule, device px.
    [[nodiscard]] float rowStep() const { return height_; }

private:
    struct PutLook {
        const ImFont* font = nullptr;
        Colour ink;
        bool isNumber = false;
        bool isHeading = false; // may extend into the next column
        int decimals = 0;
    };
    float put(int column, std::string_view, const PutLook&); // returns its width
    float putHeading(int column, Colour);
    [[nodiscard]] float roomIn(int column) const;
    [[nodiscard]] ColumnWish wishOf(const Column&) const;
    void beginHeader(float height);
    void endHeader();
    [[nodiscard]] bool allHaveMarks() const;
    void orderMark(int column, const OrderLook&, float width);

    const Ui& ui_;
    std::span<const Column> columns_;
    std::vector<float> edges_; // left edges and the last right edge, device px from the left
    ImVec2 low_;
    float height_ = 0;
    float now_ = 0; // height of the current row
    bool rowHasFocus_ = false;
};

// Draws those of this many rows that are on the screen, each by its index.
template <class Draw>
void drawRows(const Table& table, std::size_t count, Draw draw) {
    ImGuiListClipper clipper;
    clipper.Begin(static_cast<int>(count), table.rowStep());
    while (clipper.Step()) {
        for (int i = clipper.DisplayStart; i < clipper.DisplayEnd; ++i) {
            draw(static_cast<std::size_t>(i));
        }
    }
}

} // namespace gusset
