#include "app/fields/property_cells.hpp"

#include "core/number.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/quantity/quantity_input.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

namespace gusset {
namespace {

constexpr std::string_view kTimes = "×";
constexpr double kMillion = 1e6;

Issue unreadable(std::string says) { return {IssueCode::Syntax, "", std::move(says)}; }

// Words and numbers between blanks, × and the letter x between figures; a comma behind one goes.
std::vector<std::string> piecesOf(std::string text) {
    for (std::size_t at = text.find(kTimes); at != std::string::npos; at = text.find(kTimes)) {
        text.replace(at, kTimes.size(), " ");
    }
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        const auto isFigure = [&](char c) { return c == ' ' || (c >= '0' && c <= '9'); };
        const bool cross = text[i] == 'x' || text[i] == 'X' || text[i] == '*' || text[i] == ';';
        if (cross && isFigure(text[i - 1]) && isFigure(text[i + 1])) {
            text[i] = ' ';
        }
    }
    std::vector<std::string> pieces(1);
    for (const char c : text) {
        if (c == ' ' || c == '\t' || c == '=') {
            pieces.emplace_back();
        } else {
            pieces.back() += c;
        }
    }
    for (std::string& piece : pieces) {
        if (!piece.empty() && piece.back() == ',') {
            piece.pop_back();
        }
    }
    std::erase(pieces, std::string());
    return pieces;
}

std::string asLabel(const std::string& text) {
    const std::size_t from = text.find_first_not_of(' ');
    return from == std::string::npos ? ""
                                     : text.substr(from, text.find_last_not_of(' ') - from + 1);
}

std::string shapeNames() {
    std::string names;
    for (const SectionShape& shape : sectionShapes()) {
        names += (names.empty() ? "" : ", ") + std::string(shape.name);
    }
    return names;
}

Outcome<Section> withShape(Section section, const SectionShape& shape,
                           const std::vector<std::string>& pieces) {
    if (pieces.size() != shape.dimensions.size() + 1) {
        std::string order;
        for (const std::string_view key : shape.dimensions) {
            order += (order.empty() ? "" : " × ") + std::string(key);
        }
        return unreadable("A " + std::string(shape.says) + " is written " +
                          std::string(shape.name) + " " + order + ".");
    }
    section.shape = shape.name;
    section.dimensions.clear();
    for (std::size_t i = 0; i < shape.dimensions.size(); ++i) {
        const Outcome<double> number = readNumber(pieces[i + 1]);
        if (!number) {
            return number.issues();
        }
        section.dimensions.emplace_back(shape.dimensions[i], number.value());
    }
    section.area.reset(); // they follow from the shape now
    section.radius.reset();
    return section;
}

Outcome<Section> withValues(Section section, const std::vector<std::string>& pieces) {
    section.shape.clear();
    section.dimensions.clear();
    section.area.reset();
    section.radius.reset();
    for (std::size_t i = 0; i + 1 < pieces.size(); i += 2) {
        const bool area = pieces[i] == "A" || pieces[i] == "a";
        const Outcome<double> number = readNumber(pieces[i + 1]);
        if (!number || (!area && pieces[i] != "r")) {
            return unreadable("Write A and its value, r and its value, or a shape and its "
                              "dimensions: A 1200, r 25. Shapes: " +
                              shapeNames() + ".");
        }
        (area ? section.area : section.radius) = number.value();
    }
    return section;
}

Outcome<Section> madeOf(Section section, const std::string& text) {
    const std::vector<std::string> pieces = piecesOf(text);
    if (pieces.size() == 1) {
        const Outcome<double> area = readNumber(pieces.front());
        if (area) {
            return withValues(std::move(section), {"A", pieces.front()});
        }
    }
    if (const SectionShape* shape = pieces.empty() ? nullptr : findSectionShape(pieces.front())) {
        return withShape(std::move(section), *shape, pieces);
    }
    if (pieces.empty() || pieces.size() % 2 != 0) {
        return unreadable("“" + text +
                          "” is no section: write A 1200, r 25, or a shape and its "
                          "dimensions. Shapes: " +
                          shapeNames() + ".");
    }
    return withValues(std::move(section), pieces);
}

// Nothing for an empty text.
Outcome<std::optional<double>> readOptional(const Truss& truss, int column,
                                            const std::string& text) {
    if (asLabel(text).empty()) {
        return std::optional<double>();
    }
    const bool stress = column == column::kMaterialE || column == column::kMaterialStrength;
    const Outcome<double> number = stress ? readStress(text, truss.units.stress) : readNumber(text);
    if (!number) {
        return number.issues();
    }
    return std::optional(number.value());
}

std::optional<double>& valueIn(Material& material, int column) {
    switch (column) {
    case column::kMaterialE:
        return material.E;
    case column::kMaterialStrength:
        return material.strength;
    case column::kMaterialDensity:
        return material.density;
    default:
        return material.alpha;
    }
}

} // namespace

std::string makeText(const Section& section) {
    if (!section.shape.empty()) {
        std::string text = section.shape;
        bool first = true;
        for (const std::string_view key : findSectionShape(section.shape)->dimensions) {
            const std::optional<double> value = dimensionOf(section, key);
            text += (first ? " " : "×") + (value ? shortestNumber(*value) : "?");
            first = false;
        }
        return text;
    }
    std::string text = section.area ? "A " + shortestNumber(*section.area) : "";
    if (section.radius) {
        text += (text.empty() ? "r " : ", r ") + shortestNumber(*section.radius);
    }
    return text;
}

std::string settleText(const Support& support) {
    if (support.kind == SupportKind::Roller) {
        return support.settleAlong == 0 ? "" : shortestNumber(support.settleAlong);
    }
    return support.settle == Vec2{}
               ? ""
               : shortestNumber(support.settle.x) + ", " + shortestNumber(support.settle.y);
}

std::optional<double> memberNumber(const Member& member, int column) {
    const double value = column == column::kMemberWarming ? member.warming : member.misfit;
    return value == 0 ? std::nullopt : std::optional(value);
}

std::optional<double> materialNumber(const Material& material, int column) {
    Material copy = material;
    const std::optional<double> value = valueIn(copy, column);
    return value && column == column::kMaterialAlpha ? std::optional(*value * kMillion) : value;
}

Outcome<Edit> readMemberProperty(const Truss& truss, const Cell& cell, const std::string& text) {
    Member member = truss.members[static_cast<std::size_t>(cell.row)];
    if (cell.column == column::kMemberSection) {
        member.section = asLabel(text);
        return Edit(SetMember{MemberId{cell.row}, member});
    }
    double value = 0;
    if (!asLabel(text).empty()) {
        const bool warming = cell.column == column::kMemberWarming;
        const Outcome<double> number =
            warming ? readNumber(text) : readLength(text, truss.units.displacement);
        if (!number) {
            return number.issues();
        }
        value = number.value();
    }
    (cell.column == column::kMemberWarming ? member.warming : member.misfit) = value;
    return Edit(SetMember{MemberId{cell.row}, member});
}

Outcome<Edit> readSettlement(const Truss& truss, const Cell& cell, const std::string& text) {
    Support support = truss.supports[static_cast<std::size_t>(cell.row)];
    support.settle = {};
    support.settleAlong = 0;
    if (!asLabel(text).empty()) {
        if (support.kind == SupportKind::Roller) {
            const Outcome<double> along = readLength(text, truss.units.displacement);
            if (!along) {
                return along.issues();
            }
            support.settleAlong = along.value();
        } else {
            // Two numbers as those of a force: the same signs part them.
            const Outcome<TypedVector> both = readForceVector(text, ForceUnit::Plain);
            if (!both || both.value().angled) {
                return unreadable("Write how far the pin moves to the right and up: 0, −5.");
            }
            support.settle = {both.value().first, both.value().second};
        }
    }
    return Edit(ChangeSupport{SupportId{cell.row}, support});
}

Outcome<Edit> readMaterialCell(const Truss& truss, const Cell& cell, const std::string& text) {
    Material material;
    if (cell.row < rowsOf(truss, CellTable::Materials)) {
        material = truss.materials[static_cast<std::size_t>(cell.row)];
    }
    if (cell.column == column::kMaterialId) {
        material.id = asLabel(text);
        return Edit(SetMaterial{cell.row, material});
    }
    const Outcome<std::optional<double>> value = readOptional(truss, cell.column, text);
    if (!value) {
        return value.issues();
    }
    const bool millionths = value.value() && cell.column == column::kMaterialAlpha;
    valueIn(material, cell.column) =
        millionths ? std::optional(*value.value() / kMillion) : value.value();
    return Edit(SetMaterial{cell.row, material});
}

Outcome<Edit> readSectionCell(const Truss& truss, const Cell& cell, const std::string& text) {
    Section section;
    if (cell.row < rowsOf(truss, CellTable::Sections)) {
        section = truss.sections[static_cast<std::size_t>(cell.row)];
    }
    if (cell.column == column::kSectionId) {
        section.id = asLabel(text);
        return Edit(SetSection{cell.row, section});
    }
    if (cell.column == column::kSectionMaterial) {
        section.material = asLabel(text);
        return Edit(SetSection{cell.row, section});
    }
    Outcome<Section> made = madeOf(section, text);
    if (!made) {
        return made.issues();
    }
    return Edit(SetSection{cell.row, std::move(made).value()});
}

} // namespace gusset
