#include "app/fields/cell_text.hpp"

#include "core/number.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/messages.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace gusset {
namespace {

using Pair = std::pair<JointId, JointId>;

// Splits at the first separator with a known label on either side.
std::optional<Pair> splitAtSign(const Truss& truss, const std::string& text) {
    for (const std::string_view sign : {"–", "−", "-", ",", ";", " ", "\t"}) {
        for (std::size_t at = text.find(sign); at != std::string::npos;
             at = text.find(sign, at + sign.size())) {
            const JointId a = findJoint(truss, trimmed(text.substr(0, at)));
            const JointId b = findJoint(truss, trimmed(text.substr(at + sign.size())));
            if (a.valid() && b.valid()) {
                return Pair{a, b};
            }
        }
    }
    return std::nullopt;
}

std::vector<Pair> splitAnywhere(const Truss& truss, const std::string& text) {
    std::vector<Pair> pairs;
    for (std::size_t at = 1; at < text.size(); ++at) {
        const JointId a = findJoint(truss, text.substr(0, at));
        const JointId b = findJoint(truss, text.substr(at));
        if (a.valid() && b.valid()) {
            pairs.emplace_back(a, b);
        }
    }
    return pairs;
}

constexpr std::string_view kTimes = "×";

// The words and numbers between blanks, at × and at the letter x between digits; a comma after one
// is dropped.
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
        return unreadable(
            statement(phrase::kShapeIsWritten,
                      {{"shape", shape.says}, {"name", shape.name}, {"dimensions", order}}));
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
    section.area.reset(); // these now follow from the shape
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
            return unreadable(statement(phrase::kWriteSection, {{"shapes", shapeNames()}}));
        }
        (area ? section.area : section.radius) = number.value();
    }
    return section;
}

} // namespace

Issue unreadable(Statement says) { return {IssueCode::Syntax, {}, std::move(says)}; }

std::string jointLabel(const Truss& truss, JointId joint) {
    return joint.valid() ? truss.joints[joint.at()].label : "";
}

Outcome<JointId> readJoint(const Truss& truss, const std::string& text) {
    const std::string label = trimmed(text);
    const JointId joint = findJoint(truss, label);
    if (!joint.valid()) {
        return Issue{
            IssueCode::UnknownName, {}, statement(phrase::kNoJointOfThatName, {{"joint", label}})};
    }
    return joint;
}

std::string trimmed(const std::string& text) {
    const char* blanks = " \t\r\n";
    const std::size_t from = text.find_first_not_of(blanks);
    if (from == std::string::npos) {
        return "";
    }
    return text.substr(from, text.find_last_not_of(blanks) - from + 1);
}

Outcome<Pair> readEnds(const Truss& truss, const std::string& typed) {
    const std::string text = trimmed(typed);
    if (const std::optional<Pair> pair = splitAtSign(truss, text)) {
        return *pair;
    }
    const std::vector<Pair> pairs = splitAnywhere(truss, text);
    if (pairs.size() == 1) {
        return pairs.front();
    }
    return Issue{IssueCode::UnknownName, {}, statement(phrase::kNotTwoJoints, {{"text", text}})};
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
        return unreadable(
            statement(phrase::kIsNoSection, {{"text", text}, {"shapes", shapeNames()}}));
    }
    return withValues(std::move(section), pieces);
}

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

Outcome<Support> settled(const Truss& truss, Support support, const std::string& text) {
    support.settle = {};
    support.settleAlong = 0;
    if (trimmed(text).empty()) {
        return support;
    }
    if (support.kind == SupportKind::Roller) {
        const Outcome<double> along = readLength(text, truss.units.displacement);
        if (!along) {
            return along.issues();
        }
        support.settleAlong = along.value();
        return support;
    }
    // Two numbers as for a force, with the same separators.
    const Outcome<TypedVector> both = readForceVector(text, ForceUnit::Plain);
    if (!both || both.value().angled) {
        return unreadable(phrase::kWriteSettlement);
    }
    support.settle = {both.value().first, both.value().second};
    return support;
}

} // namespace gusset
