#include "app/fields/field_key.hpp"

#include "app/fields/columns.hpp"
#include "core/number.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace gusset {
namespace {

// Fields that are there once.
struct Single {
    std::string_view key;
    FieldId field;
};
constexpr std::array kSingles{
    Single{"title", TitleField::Header},
    Single{"page.title", TitleField::Page},
    Single{"open", LinkField::Open},
    Single{"several.move", SeveralKind::Move},
    Single{"several.copy", SeveralKind::Copy},
    Single{"several.turn", SeveralKind::Turn},
    Single{"several.repeat", SeveralKind::Repeat},
    Single{"several.warm", SeveralKind::Warm},
    Single{"starter.span", StarterSize::Span},
    Single{"starter.rise", StarterSize::Rise},
    Single{"starter.load", StarterSize::Load},
    Single{"board.member", MemberEndField::Drawing},
    Single{"board.drawn", MemberEndField::Drawn},
};

struct KindName {
    std::string_view list;
    std::string_view field;
    bool hasPart = false; // its number stands between them
};
// In the order of ListFieldKind.
constexpr std::array<KindName, 7> kKindNames{{
    {"combination", "name", false},
    {"combination", "factor", true},
    {"moving", "name", false},
    {"moving", "at", true},
    {"moving", "force", true},
    {"moving", "spread", false},
    {"moving", "length", false},
}};

constexpr std::string_view kPicked = "picked:";
constexpr std::string_view kPage = "page.";
constexpr std::string_view kDimension = "board.dimension:"; // its numbers have points
constexpr std::string_view kRemove = "remove";
constexpr std::string_view kKind = "kind";

std::string joined(std::string_view list, int row, std::string_view field) {
    return std::string(list) + "." + std::to_string(row) + "." + std::string(field);
}

struct KeyWriter {
    std::string operator()(const Cell& cell) const {
        return joined(modelTable(cell.table).one, cell.row, columnOf(cell).key);
    }
    std::string operator()(const PickedCell& field) const {
        return std::string(kPicked) + (*this)(field.cell);
    }
    std::string operator()(const PageCell& field) const {
        return std::string(kPage) + (*this)(field.cell);
    }
    std::string operator()(const PageRow& field) const {
        return std::string(kPage) + joined(modelTable(field.table).one, field.row,
                                           field.press == RowPress::Remove ? kRemove : kKind);
    }
    std::string operator()(const ListField& field) const {
        const KindName& name = kKindNames[static_cast<std::size_t>(field.kind)];
        const std::string part = name.hasPart ? std::to_string(field.part) + "." : "";
        return joined(name.list, field.row, part + std::string(name.field));
    }
    std::string operator()(const CheckField& field) const {
        const auto* number =
            std::find_if(kCheckNumbers.begin(), kCheckNumbers.end(),
                         [&](const CheckNumber& it) { return it.value == field.number; });
        return "checks." + std::string(number->key);
    }
    std::string operator()(const SearchField& field) const {
        return joined("list", static_cast<int>(field.table), "words");
    }
    std::string operator()(const LoadField& field) const {
        return "board.load." + std::to_string(field.load.index);
    }
    std::string operator()(const Measured& measured) const {
        return std::string(kDimension) + (measured.upright ? "y:" : "x:") +
               shortestNumber(measured.from) + ":" + shortestNumber(measured.to);
    }
    template <class Other>
    std::string operator()(const Other& field) const {
        const auto* single =
            std::find_if(kSingles.begin(), kSingles.end(),
                         [field](const Single& it) { return it.field == FieldId(field); });
        return std::string(single->key);
    }
};

using Parts = std::vector<std::string_view>;

Parts partsOf(std::string_view key, char sign) {
    Parts parts;
    for (std::size_t end = key.find(sign); end != std::string_view::npos; end = key.find(sign)) {
        parts.push_back(key.substr(0, end));
        key.remove_prefix(end + 1);
    }
    parts.push_back(key);
    return parts;
}

std::optional<int> wholeOf(std::string_view text) {
    int number = -1;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool good = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return good && number >= 0 ? std::optional(number) : std::nullopt;
}

std::optional<CellTable> tableOf(std::string_view one) {
    for (std::size_t i = 0; i < kCellTables; ++i) {
        if (modelTable(static_cast<CellTable>(i)).one == one) {
            return static_cast<CellTable>(i);
        }
    }
    return std::nullopt;
}

std::optional<Cell> cellIn(const Parts& parts) {
    const auto table = parts.size() == 3 ? tableOf(parts[0]) : std::nullopt;
    const auto row = table ? wholeOf(parts[1]) : std::nullopt;
    if (!row) {
        return std::nullopt;
    }
    const auto columns = modelTable(*table).columns;
    const auto found = std::find_if(columns.begin(), columns.end(), [&](const CellColumn& it) {
        return it.read != nullptr && it.key == parts[2];
    });
    return found == columns.end()
               ? std::nullopt
               : std::optional(Cell{*table, *row, static_cast<int>(found - columns.begin())});
}

std::optional<FieldId> pageFieldIn(const Parts& parts) {
    if (const auto cell = cellIn(parts)) {
        return PageCell{*cell};
    }
    const auto table = parts.size() == 3 ? tableOf(parts[0]) : std::nullopt;
    const auto row = table ? wholeOf(parts[1]) : std::nullopt;
    const bool turns = table == CellTable::Supports && parts[2] == kKind;
    if (!row || (parts[2] != kRemove && !turns)) {
        return std::nullopt;
    }
    return PageRow{*table, *row, turns ? RowPress::ChangeKind : RowPress::Remove};
}

std::optional<FieldId> listFieldIn(const Parts& parts) {
    for (std::size_t i = 0; i < kKindNames.size() && parts.size() > 2; ++i) {
        const KindName& name = kKindNames[i];
        const auto row = wholeOf(parts[1]);
        const auto part = name.hasPart ? wholeOf(parts[2]) : std::optional(0);
        if (parts.size() == (name.hasPart ? 4U : 3U) && parts.front() == name.list &&
            parts.back() == name.field && row && part) {
            return ListField{static_cast<ListFieldKind>(i), *row, *part};
        }
    }
    return std::nullopt;
}

std::optional<FieldId> measuredIn(const Parts& parts) {
    const bool three = parts.size() == 3;
    const Outcome<double> from = readNumber(three ? parts[1] : "");
    const Outcome<double> to = readNumber(three ? parts[2] : "");
    if (!from || !to || (parts[0] != "x" && parts[0] != "y")) {
        return std::nullopt;
    }
    return Measured{parts[0] == "y", from.value(), to.value()};
}

std::optional<FieldId> checkIn(std::string_view key) {
    for (const CheckNumber& number : kCheckNumbers) {
        if (number.key == key) {
            return CheckField{number.value};
        }
    }
    return std::nullopt;
}

// Of a list of so many.
std::optional<FieldId> numberedIn(const Parts& parts) {
    const auto number =
        parts.size() == 3 ? wholeOf(parts[parts[0] == "list" ? 1 : 2]) : std::nullopt;
    if (!number) {
        return std::nullopt;
    }
    if (parts[0] == "board" && parts[1] == "load") {
        return LoadField{LoadId{*number}};
    }
    const bool list = parts[0] == "list" && parts[2] == "words";
    return list && static_cast<std::size_t>(*number) < kListedTables
               ? std::optional<FieldId>(SearchField{static_cast<ListedTable>(*number)})
               : std::nullopt;
}

} // namespace

std::string keyOf(const FieldId& field) { return std::visit(KeyWriter{}, field); }

std::optional<FieldId> fieldOf(std::string_view key) {
    const auto* single = std::find_if(kSingles.begin(), kSingles.end(),
                                      [key](const Single& it) { return it.key == key; });
    if (single != kSingles.end()) {
        return single->field;
    }
    const auto behind = [key](std::string_view beginning) { return key.substr(beginning.size()); };
    if (key.starts_with(kPage)) {
        return pageFieldIn(partsOf(behind(kPage), '.'));
    }
    if (key.starts_with(kDimension)) {
        return measuredIn(partsOf(behind(kDimension), ':'));
    }
    if (key.starts_with("checks.")) {
        return checkIn(behind("checks."));
    }
    if (key.starts_with(kPicked)) {
        const auto cell = cellIn(partsOf(behind(kPicked), '.'));
        return cell ? std::optional<FieldId>(PickedCell{*cell}) : std::nullopt;
    }
    const Parts parts = partsOf(key, '.');
    if (const auto cell = cellIn(parts)) {
        return *cell;
    }
    const auto list = listFieldIn(parts);
    return list ? list : numberedIn(parts);
}

} // namespace gusset
