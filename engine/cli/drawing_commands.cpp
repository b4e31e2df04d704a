#include "cli/drawing_commands.hpp"

#include "exchange/drawings/drawing_file.hpp"
#include "exchange/drawings/dxf_writer.hpp"
#include "exchange/drawings/truss_table.hpp"
#include "exchange/files/model_file.hpp"
#include "model/quantity/quantity_input.hpp"

#include <optional>
#include <string_view>

namespace gusset::cli {

namespace {

Outcome<std::optional<LengthUnit>> unitAsked(const Arguments& arguments) {
    const std::string name = arguments.valueOf("--unit");
    const std::optional<LengthUnit> unit = name.empty() ? std::nullopt : lengthUnitNamed(name);
    if (!name.empty() && !unit) {
        return Issue{IssueCode::UnknownName, "--unit",
                     "\"" + name + "\" is no unit of length: use one of " +
                         unitList(LengthUnit::m)};
    }
    return unit;
}

Outcome<std::optional<double>> numberAsked(const Arguments& arguments, std::string_view option,
                                           bool mayBeZero) {
    if (!arguments.has(option)) {
        return std::optional<double>();
    }
    const Outcome<double> number = readNumber(arguments.valueOf(option));
    if (!number) {
        return Issue{number.issues().front().code, std::string(option),
                     number.issues().front().says};
    }
    if (number.value() < 0 || (number.value() == 0 && !mayBeZero) ||
        number.value() > kLargestDrawn) {
        return Issue{IssueCode::OutOfRange, std::string(option),
                     mayBeZero ? "takes a length that is not negative"
                               : "takes a length greater than zero"};
    }
    return std::optional(number.value());
}

Outcome<DrawingWishes> drawingWishes(const Arguments& arguments) {
    const auto unit = unitAsked(arguments);
    if (!unit) {
        return unit.issues();
    }
    const auto tolerance = numberAsked(arguments, "--tolerance", true);
    if (!tolerance) {
        return tolerance.issues();
    }
    const auto width = numberAsked(arguments, "--width", false);
    if (!width) {
        return width.issues();
    }
    DrawingWishes wishes{unit.value(), tolerance.value(), width.value(), {}};
    std::string names = arguments.valueOf("--layers");
    while (!names.empty()) {
        const std::size_t comma = names.find(',');
        wishes.layers.push_back(names.substr(0, comma));
        names = comma == names.npos ? "" : names.substr(comma + 1);
    }
    return wishes;
}

} // namespace

Answer answerTrace(const Arguments& arguments, const std::string& text) {
    const Outcome<DrawingWishes> wishes = drawingWishes(arguments);
    if (!wishes) {
        return {Exit::WrongUse, {}, wishes.issues()};
    }
    const Outcome<Traced> traced = readDrawing(text, wishes.value());
    if (!traced) {
        return {Exit::BadInput, {}, traced.issues()};
    }
    return {Exit::Answered, writeModel(traced.value().truss), traced.value().notes};
}

Answer answerLines(const PhraseBook& book, const Arguments& arguments, const Reading& reading) {
    const auto unit = unitAsked(arguments);
    if (!unit) {
        return {Exit::WrongUse, {}, unit.issues()};
    }
    if (arguments.has("--csv")) {
        return unit.value() ? Answer{Exit::WrongUse,
                                     {},
                                     {{IssueCode::OutOfRange, "--unit",
                                       "goes with --dxf: a table is in the unit of the model"}}}
                            : Answer{Exit::Answered, trussTable(reading.truss), {}};
    }
    return {Exit::Answered,
            writeDxf(book, reading.truss, unit.value().value_or(reading.truss.units.length)),
            {}};
}

} // namespace gusset::cli
