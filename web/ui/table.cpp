#include "ui/table.hpp"

#include "phrases/table_view.hpp"
#include "report/text/phrases.hpp"
#include "ui/widgets.hpp"

#include <cmath>
#include <string>

namespace gusset {

namespace {

// CSS px, between an edge of a cell and its contents.
constexpr double kOuterPad = 8;
constexpr double kInnerPad = 4;
constexpr double kOrderMark = 12; // the arrow beside a heading

} // namespace

Table::Table(const Ui& ui, const char* id, std::span<const Column> columns)
    : ui_(ui), columns_(columns), height_(std::round(ui.rowHeight())) {
    ImGui::PushID(id);
    ImGui::PushStyleVar(ImGuiStyleVar_ItemSpacing, {0, 0});
    std::vector<ColumnWish> wishes;
    for (const Column& column : columns) {
        wishes.push_back(wishOf(column));
    }
    float edge = 0;
    edges_.push_back(edge);
    for (const double width : columnWidths(wishes, ImGui::GetContentRegionAvail().x)) {
        edge += static_cast<float>(width);
        edges_.push_back(edge);
    }
}

Table::~Table() {
    ImGui::PopStyleVar();
    ImGui::PopID();
}

ColumnWish Table::wishOf(const Column& column) const {
    ColumnWish wish{.least = ui_.px(column.least),
                    .share = column.share,
                    .isNumber = column.align == Align::Right};
    if (!column.longest.empty()) {
        const ImFont& font = column.font ? *column.font : *ui_.fonts.body;
        const float heading = textSize(*ui_.fonts.small, column.heading.words).x +
                              (column.orders ? ui_.px(kOrderMark) : 0);
        wish.need =
            std::fmax(textSize(font, column.longest).x, heading) + ui_.px(kOuterPad + kInnerPad);
    }
    return wish;
}

void Table::beginHeader(float height) {
    low_ = ImGui::GetCursorScreenPos();
    now_ = std::round(height);
}

void Table::endHeader() {
    ImGui::SetCursorScreenPos(low_);
    ImGui::Dummy({edges_.back(), now_});
    const float y = low_.y + now_;
    ImGui::GetWindowDrawList()->AddRectFilled({low_.x, y - ui_.px(1)}, {low_.x + edges_.back(), y},
                                              packed(ui_.palette->edge));
}

void Table::header() {
    beginHeader(ui_.fonts.small->FontSize * 1.7f);
    for (int i = 0; i < static_cast<int>(columns_.size()); ++i) {
        putHeading(i, ui_.palette->muted);
    }
    endHeader();
}

// Whether every heading sorts, and has room for the mark that says so.
bool Table::allHaveMarks() const {
    bool all = true;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const Column& column = columns_[i];
        const float room = edges_[i + 1] - edges_[i];
        const float width = textSize(*ui_.fonts.small, column.heading.words).x;
        all = all && (column.heading.words.empty() ||
                      (column.orders && width + ui_.px(kOuterPad + kOrderMark) < room));
    }
    return all;
}

// Beside the heading, where it covers no words: before numbers, after words.
void Table::orderMark(int column, const OrderLook& look, float width) {
    const Column& of = columns_[static_cast<std::size_t>(column)];
    const Box box = cell(column);
    const float half = ui_.px(4);
    const float away = ui_.px(kOuterPad) + width + ui_.px(4) + half;
    const ImVec2 at{of.align == Align::Right ? box.high.x - away : box.low.x + away,
                    (box.low.y + box.high.y) / 2};
    ImDrawList& list = *ImGui::GetWindowDrawList();
    const float point = look.falling ? half : -half;
    if (look.orders == of.orders) {
        list.AddTriangleFilled({at.x - half, at.y - point}, {at.x + half, at.y - point},
                               {at.x, at.y + point}, packed(ui_.palette->accent));
    } else if (look.showsAll) {
        list.AddTriangleFilled({at.x - half / 2, at.y - half / 2},
                               {at.x + half / 2, at.y - half / 2}, {at.x, at.y + half / 2},
                               packed(ui_.palette->edge));
    }
}

const Column* Table::orderingHeader(const PhraseBook& book, OrderLook look) {
    const Column* pressed = nullptr;
    look.showsAll = allHaveMarks();
    beginHeader(
        std::fmax(ui_.fonts.small->FontSize * 1.7f, ui_.px(ui_.coarse ? kTouchTarget : 28)));
    for (int i = 0; i < static_cast<int>(columns_.size()); ++i) {
        const Column& column = columns_[static_cast<std::size_t>(i)];
        if (!column.orders) {
            putHeading(i, ui_.palette->muted);
            continue;
        }
        const Box box = cell(i);
        ImGui::SetCursorScreenPos(box.low);
        const std::string name =
            sayPlain(book, phrase::kOrderBy, {{"column", column.heading.words}}) + "##" +
            std::to_string(i);
        if (ImGui::InvisibleButton(name.c_str(), {box.high.x - box.low.x, now_})) {
            pressed = &column;
        }
        const bool lit = ImGui::IsItemHovered();
        if (lit) {
            ImGui::SetMouseCursor(ImGuiMouseCursor_Hand);
        }
        const float width = putHeading(i, lit || column.orders == look.orders ? ui_.palette->ink
                                                                              : ui_.palette->muted);
        orderMark(i, look, width);
        drawFocus(ui_, visiblePart(name.c_str()));
    }
    endHeader();
    return pressed;
}

Table::RowState Table::row(const RowLook& look) {
    low_ = ImGui::GetCursorScreenPos();
    now_ = height_;
    const ImVec2 high{low_.x + edges_.back(), low_.y + now_};
    RowState state;
    ImGui::PushID(look.id);
    const ImVec2 size{edges_.back(), now_};
    if (look.pressable) {
        state.pressed = ImGui::InvisibleButton("row", size);
        state.hovered = ImGui::IsItemHovered();
    } else {
        ImGui::Dummy(size);
        state.hovered = ImGui::IsMouseHoveringRect(low_, high) && ImGui::IsWindowHovered();
    }
    ImGui::PopID();
    ImDrawList& list = *ImGui::GetWindowDrawList();
    if (look.selected) {
        list.AddRectFilled(low_, high, packed(ui_.palette->accentWash));
        list.AddRectFilled(low_, {low_.x + ui_.px(3), high.y}, packed(ui_.palette->accent));
    } else if (look.lit || (state.hovered && look.pressable)) {
        list.AddRectFilled(low_, high, packed(ui_.palette->wash));
    }
    const float hair = std::fmax(1.0f, std::floor(ui_.px(1)));
    list.AddRectFilled({low_.x, high.y - hair}, high, packed(ui_.palette->rule));
    rowHasFocus_ = look.pressable && showsFocus();
    if (look.pressable) {
        drawFocus(ui_, {}); // that it is picked is said of its thing
    }
    return state;
}

Table::Box Table::cell(int column) const {
    const auto i = static_cast<std::size_t>(column);
    return {{low_.x + edges_[i], low_.y}, {low_.x + edges_[i + 1], low_.y + now_}};
}

float Table::roomIn(int column) const {
    const Box box = cell(column);
    return box.high.x - box.low.x - ui_.px(kOuterPad + kInnerPad);
}

bool Table::fits(int column, std::string_view words) const {
    return fitsWhole(ui_, *ui_.fonts.body, words, roomIn(column));
}

void Table::text(int column, std::string_view words, const TextLook& look) {
    if (rowHasFocus_ && ui_.focused != nullptr) { // a cell is heard with its heading
        const Heading& heading = columns_[static_cast<std::size_t>(column)].heading;
        ui_.focused->cells.emplace_back(heading.name.empty() ? heading.words : heading.name, words);
    }
    put(column, words,
        {.font = look.font ? look.font : ui_.fonts.body,
         .ink = look.ink,
         .isNumber = columns_[static_cast<std::size_t>(column)].align == Align::Right,
         .decimals = columns_[static_cast<std::size_t>(column)].decimals});
}

float Table::putHeading(int column, Colour ink) {
    const Column& of = columns_[static_cast<std::size_t>(column)];
    return put(column, of.heading.words, {.font = ui_.fonts.small, .ink = ink, .isHeading = true});
}

float Table::put(int column, std::string_view words, const PutLook& look) {
    const Box box = cell(column);
    const Align align = columns_[static_cast<std::size_t>(column)].align;
    const bool right = align == Align::Right;
    const float outer = ui_.px(kOuterPad);
    const float inner = look.isHeading ? 0 : ui_.px(kInnerPad);
    return putFitted(*ImGui::GetWindowDrawList(), ui_, words,
                     {.low = {box.low.x + (right ? inner : outer), box.low.y},
                      .high = {box.high.x - (right ? outer : inner), box.high.y},
                      .align = align,
                      .isNumber = look.isNumber,
                      .decimals = look.decimals,
                      .font = look.font,
                      .ink = packed(look.ink)});
}

} // namespace gusset
