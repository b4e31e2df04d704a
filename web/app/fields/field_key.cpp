#include "app/fields/field_key.hpp"

#include "app/fields/columns.hpp"
#include "core/number.hpp"
#include "model/quantity/quantity_input.hpp"

#include <array>
#include <charconv>
#include <utility>
#include <vector>

namespace gusset {
namespace {

// Each '#' in a key stands for a number of its field: first its row, then its part.
struct Key {
    std::string pattern;
    FieldId field; // with zeros for these numbers
};

void addCells(std::vector<Key>& keys, CellTable table) {
    const std::string row = std::string(modelTable(table).key) + ".#.";
    for (int column = 0; column < static_cast<int>(modelTable(table).columns.size()); ++column) {
        const Cell cell{table, 0, column};
        if (columnOf(cell).read == nullptr) {
            continue;
        }
        const std::string pattern = row + std::string(columnOf(cell).key);
        keys.push_back({pattern, cell});
        keys.push_back({"picked:" + pattern, PickedCell{cell}});
        const bool pressed = table == CellTable::Supports && column == gusset::column::kSupportKind;
        if (!pressed) { // in the page's tables the kind is a button, a PageRow
            keys.push_back({"page." + pattern, PageCell{cell}});
        }
    }
    keys.push_back({"page." + row + "remove", PageRow{table, 0, RowPress::Remove}});
}

struct Known {
    std::string_view pattern;
    FieldId field;
};
constexpr std::array kKnown{
    Known{"title", TitleField::Header},
    Known{"page.title", TitleField::Page},
    Known{"page.support.#.kind", PageRow{CellTable::Supports, 0, RowPress::ChangeKind}},
    Known{"page.undo", PageControl{PagePress::Undo}},
    Known{"page.redo", PageControl{PagePress::Redo}},
    Known{"page.show.#", PageControl{PagePress::ShowPart}},
    Known{"page.combination.#.remove", PageControl{PagePress::RemoveCombination}},
    Known{"page.case.#.copy", PageControl{PagePress::CopyCase}},
    Known{"page.case.#.remove", PageControl{PagePress::RemoveCase}},
    Known{"page.moving.#.remove", PageControl{PagePress::RemoveMoving}},
    Known{"page.moving.#.#.remove", PageControl{PagePress::RemoveAxle}},
    Known{"page.moving.add", PageControl{PagePress::AddMoving}},
    Known{"page.path", PageControl{PagePress::ChoosePath}},
    Known{"page.ask.#", PageAnswer{}},
    Known{"page.cut", PageList::Cut},
    Known{"page.joints", PageList::Path},
    Known{"case.#.name", ListField{ListFieldKind::CaseName}},
    Known{"case.#.kind", ListField{ListFieldKind::CaseKind}},
    Known{"combination.#.name", ListField{ListFieldKind::CombinationName}},
    Known{"combination.#.#.factor", ListField{ListFieldKind::Factor}},
    Known{"moving.#.name", ListField{ListFieldKind::MovingName}},
    Known{"moving.#.#.at", ListField{ListFieldKind::AxleAt}},
    Known{"moving.#.#.force", ListField{ListFieldKind::AxleForce}},
    Known{"moving.#.spread", ListField{ListFieldKind::SpreadForce}},
    Known{"moving.#.length", ListField{ListFieldKind::SpreadLength}},
    Known{"several.move", SeveralKind::Move},
    Known{"several.copy", SeveralKind::Copy},
    Known{"several.turn", SeveralKind::Turn},
    Known{"several.repeat", SeveralKind::Repeat},
    Known{"several.warm", SeveralKind::Warm},
    Known{"picked.K.in", FactorField::In},
    Known{"picked.K.out", FactorField::Out},
    Known{"board.load.#", LoadField{LoadId{0}}},
    Known{"board.member", MemberEndField::Drawing},
    Known{"board.drawn", MemberEndField::Drawn},
};

std::vector<Key> makeKeys() {
    std::vector<Key> keys;
    for (const Known& known : kKnown) {
        keys.push_back({std::string(known.pattern), known.field});
    }
    for (std::size_t table = 0; table < kCellTables; ++table) {
        addCells(keys, static_cast<CellTable>(table));
    }
    for (const CheckNumber& number : kCheckNumbers) {
        keys.push_back({"checks." + std::string(number.key), CheckField{number.value}});
    }
    for (std::size_t table = 0; table < kSortedTables; ++table) {
        keys.push_back({"list." + std::to_string(table) + ".words",
                        SearchField{static_cast<SortedTable>(table)}});
    }
    return keys;
}

const std::vector<Key>& allKeys() {
    static const std::vector<Key> keys = makeKeys();
    return keys;
}

std::array<int*, 2> numbersIn(FieldId& field) {
    return std::visit(
        [](auto& it) -> std::array<int*, 2> {
            if constexpr (requires { it.part; }) {
                return {&it.row, &it.part};
            } else if constexpr (requires { it.row; }) {
                return {&it.row};
            } else if constexpr (requires { it.cell; }) {
                return {&it.cell.row};
            } else if constexpr (requires { it.load; }) {
                return {&it.load.index};
            } else {
                return {};
            }
        },
        field);
}

// Takes a number from the front; takes nothing and returns none if there is no plain number.
std::optional<int> takeWhole(std::string_view& text) {
    int number = -1;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
    if (read.ec != std::errc{} || number < 0) {
        return std::nullopt;
    }
    text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
    return number;
}

std::optional<FieldId> readAs(const Key& key, std::string_view text) {
    FieldId field = key.field;
    const std::array<int*, 2> numbers = numbersIn(field);
    std::size_t count = 0;
    for (const char c : key.pattern) {
        if (c != '#') {
            if (!text.starts_with(c)) {
                return std::nullopt;
            }
            text.remove_prefix(1);
        } else if (const std::optional<int> number = takeWhole(text)) {
            *numbers[count++] = *number;
        } else {
            return std::nullopt;
        }
    }
    return text.empty() ? std::optional(field) : std::nullopt;
}

// The numbers of a dimension have decimal points: "board.dimension:x:1.5:4".
constexpr std::string_view kDimension = "board.dimension:";

std::string keyOf(const Measured& measured) {
    return std::string(kDimension) + (measured.upright ? "y:" : "x:") +
           shortestNumber(measured.from) + ":" + shortestNumber(measured.to);
}

std::optional<FieldId> readMeasured(std::string_view text) {
    const bool upright = text.starts_with("y:");
    const std::size_t colon = text.find(':', 2);
    if ((!upright && !text.starts_with("x:")) || colon == std::string_view::npos) {
        return std::nullopt;
    }
    const Outcome<double> from = readNumber(text.substr(2, colon - 2));
    const Outcome<double> to = readNumber(text.substr(colon + 1));
    return from && to ? std::optional<FieldId>(Measured{upright, from.value(), to.value()})
                      : std::nullopt;
}

} // namespace

std::string keyOf(const FieldId& field) {
    if (const auto* measured = std::get_if<Measured>(&field)) {
        return keyOf(*measured);
    }
    FieldId zeroed = field;
    std::array<int, 2> numbers{};
    std::size_t count = 0;
    for (int* number : numbersIn(zeroed)) {
        numbers[count++] = number ? std::exchange(*number, 0) : 0;
    }
    count = 0;
    std::string text;
    for (const Key& key : allKeys()) {
        if (key.field == zeroed) {
            for (const char c : key.pattern) {
                text += c == '#' ? std::to_string(numbers[count++]) : std::string(1, c);
            }
            break;
        }
    }
    return text;
}

std::optional<FieldId> fieldOf(std::string_view text) {
    if (text.starts_with(kDimension)) {
        return readMeasured(text.substr(kDimension.size()));
    }
    for (const Key& key : allKeys()) {
        if (const std::optional<FieldId> field = readAs(key, text)) {
            return field;
        }
    }
    return std::nullopt;
}

} // namespace gusset
