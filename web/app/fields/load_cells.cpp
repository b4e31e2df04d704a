#include "app/fields/load_cells.hpp"

#include "app/fields/case_cells.hpp"
#include "app/fields/cell_text.hpp"
#include "app/fields/typed_text.hpp"
#include "model/quantity/quantity_input.hpp"
#include "phrases/model.hpp"
#include "report/results/results_text.hpp"

#include <algorithm>

namespace gusset {
namespace {

bool ofCombinations(const ListField& field) {
    return field.kind == ListFieldKind::CombinationName || field.kind == ListFieldKind::Factor;
}

const MovingLoad& loadOf(const Truss& truss, const ListField& field) {
    return truss.moving[static_cast<std::size_t>(field.row)];
}

bool isNewAxle(const MovingLoad& load, const ListField& field) {
    return field.part == static_cast<int>(load.axles.size());
}

std::optional<double> factorOf(const Combination& combination, const std::string& caseId) {
    for (const auto& [name, factor] : combination.factors) {
        if (name == caseId) {
            return factor;
        }
    }
    return std::nullopt;
}

// Avoids −0.
double turned(double force) { return force == 0 ? 0 : -force; }

std::optional<double> axleNumber(const MovingLoad& load, const ListField& field) {
    if (isNewAxle(load, field)) {
        return std::nullopt;
    }
    const Axle& axle = load.axles[static_cast<std::size_t>(field.part)];
    return field.kind == ListFieldKind::AxleAt ? axle.at : turned(axle.force);
}

std::optional<double> numberIn(const Truss& truss, const ListField& field) {
    switch (field.kind) {
    case ListFieldKind::Factor:
        return factorOf(truss.combinations[static_cast<std::size_t>(field.row)],
                        caseNames(truss)[static_cast<std::size_t>(field.part)]);
    case ListFieldKind::AxleAt:
    case ListFieldKind::AxleForce:
        return axleNumber(loadOf(truss, field), field);
    case ListFieldKind::SpreadForce:
        return loadOf(truss, field).uniform
                   ? std::optional(turned(loadOf(truss, field).uniform->perLength))
                   : std::nullopt;
    case ListFieldKind::SpreadLength:
        return loadOf(truss, field).uniform ? loadOf(truss, field).uniform->length : std::nullopt;
    case ListFieldKind::CombinationName:
    case ListFieldKind::MovingName:
    case ListFieldKind::CaseName:
    case ListFieldKind::CaseKind:
        break;
    }
    return std::nullopt;
}

std::string nameIn(const Truss& truss, const ListField& field) {
    const auto row = static_cast<std::size_t>(field.row);
    if (ofCases(field)) {
        return caseText(truss, field);
    }
    if (field.kind == ListFieldKind::CombinationName) {
        return row < truss.combinations.size() ? truss.combinations[row].id : "";
    }
    return field.kind == ListFieldKind::MovingName ? truss.moving[row].id : "";
}

// Every case with a factor of one, to be edited.
Combination fullCombination(const Truss& truss, const std::string& name) {
    Combination combination;
    combination.id = name;
    for (const std::string& caseId : caseNames(truss)) {
        combination.factors.emplace_back(caseId, 1);
    }
    return combination;
}

Outcome<Edit> editCombination(const Truss& truss, const ListField& field, const std::string& text) {
    std::vector<Combination> all = truss.combinations;
    const auto row = static_cast<std::size_t>(field.row);
    if (field.kind == ListFieldKind::CombinationName) {
        if (row == all.size()) {
            all.push_back(fullCombination(truss, text));
        } else {
            all[row].id = text;
        }
        return Edit(SetCombinations{all});
    }
    const std::string caseId = caseNames(truss)[static_cast<std::size_t>(field.part)];
    auto& factors = all[row].factors;
    const auto isIt = [&](const auto& factor) { return factor.first == caseId; };
    if (text.empty()) {
        std::erase_if(factors, isIt);
        return Edit(SetCombinations{all});
    }
    const Outcome<double> number = readNumber(text);
    if (!number) {
        return number.issues();
    }
    const auto found = std::find_if(factors.begin(), factors.end(), isIt);
    if (found != factors.end()) {
        found->second = number.value();
    } else {
        factors.emplace_back(caseId, number.value());
    }
    return Edit(SetCombinations{all});
}

Outcome<Edit> withMoving(const Truss& truss, int row, MovingLoad load) {
    std::vector<MovingLoad> all = truss.moving;
    all[static_cast<std::size_t>(row)] = std::move(load);
    return Edit(SetMovingLoads{all});
}

// A new axle gets the force of the one before, the most common case.
Outcome<Edit> editAxle(const Truss& truss, const ListField& field, const std::string& text) {
    const bool at = field.kind == ListFieldKind::AxleAt;
    const Outcome<double> number =
        at ? readLength(text, truss.units.length) : readForce(text, truss.units.force);
    if (!number) {
        return number.issues();
    }
    MovingLoad load = loadOf(truss, field);
    if (isNewAxle(load, field)) {
        load.axles.push_back({});
        load.axles.back().force = load.axles.size() > 1 ? load.axles.end()[-2].force : 0;
    }
    Axle& axle = load.axles[static_cast<std::size_t>(field.part)];
    (at ? axle.at : axle.force) = at ? number.value() : turned(number.value());
    return withMoving(truss, field.row, load);
}

Outcome<Edit> editSpread(const Truss& truss, const ListField& field, const std::string& text) {
    MovingLoad load = loadOf(truss, field);
    const bool size = field.kind == ListFieldKind::SpreadForce;
    if (text.empty()) {
        if (size) {
            load.uniform.reset();
        } else if (load.uniform) {
            load.uniform->length.reset();
        }
        return withMoving(truss, field.row, load);
    }
    const Outcome<double> number = size ? readNumber(text) : readLength(text, truss.units.length);
    if (!number) {
        return number.issues();
    }
    if (!load.uniform) {
        load.uniform.emplace();
    }
    if (size) {
        load.uniform->perLength = turned(number.value());
    } else {
        load.uniform->length = number.value();
    }
    return withMoving(truss, field.row, load);
}

double forceToBeginWith(const Truss& truss) {
    double force = truss.moving.empty() || truss.moving.back().axles.empty()
                       ? 0
                       : truss.moving.back().axles.back().force;
    for (const Load& load : truss.loads) {
        if (force == 0) {
            force = -length(forceOf(load).value_or(Vec2{}));
        }
    }
    return force == 0 ? -10 : force;
}

std::string freeName(const Writer& writer) {
    const std::vector<MovingLoad>& loads = writer.truss.moving;
    for (int number = 1;; ++number) {
        const std::string name = sayPlain(writer, phrase::kVehicle, {{"n", number}});
        if (std::none_of(loads.begin(), loads.end(),
                         [&](const MovingLoad& load) { return load.id == name; })) {
            return name;
        }
    }
}

} // namespace

bool isNamed(const ListField& field) {
    return ofCases(field) || field.kind == ListFieldKind::CombinationName ||
           field.kind == ListFieldKind::MovingName;
}

bool canType(const Truss& truss, const ListField& field) {
    const auto within = [](int index, std::size_t count) {
        return index >= 0 && index < static_cast<int>(count);
    };
    if (ofCases(field)) {
        return within(field.row, caseNames(truss).size());
    }
    if (ofCombinations(field)) {
        const bool name = field.kind == ListFieldKind::CombinationName;
        return within(field.row, truss.combinations.size() + (name ? 1 : 0)) &&
               (name || within(field.part, caseNames(truss).size()));
    }
    if (!within(field.row, truss.moving.size())) {
        return false;
    }
    const MovingLoad& load = loadOf(truss, field);
    switch (field.kind) {
    case ListFieldKind::AxleAt:
        return within(field.part, load.axles.size() + 1);
    case ListFieldKind::AxleForce:
        return within(field.part, load.axles.size());
    case ListFieldKind::SpreadLength:
        return load.uniform.has_value();
    default:
        return true;
    }
}

std::optional<ListField> listFieldAfter(const Truss& truss, const ListField& field, FieldEnd how) {
    ListField next = field;
    const int step = how == FieldEnd::PreviousField ? -1 : 1;
    if (how == FieldEnd::Kept || how == FieldEnd::GivenUp) {
        return std::nullopt;
    }
    const bool axle = field.kind == ListFieldKind::AxleAt || field.kind == ListFieldKind::AxleForce;
    if (axle && how != FieldEnd::Below) {
        const bool at = field.kind == ListFieldKind::AxleAt;
        next.kind = at ? ListFieldKind::AxleForce : ListFieldKind::AxleAt;
        next.part += at == (step > 0) ? 0 : step;
    } else if (axle || field.kind == ListFieldKind::Factor) {
        next.part += step;
    } else if (ofCases(field) && how != FieldEnd::Below) {
        const bool name = field.kind == ListFieldKind::CaseName;
        next.kind = name ? ListFieldKind::CaseKind : ListFieldKind::CaseName;
        next.row += name == (step > 0) ? 0 : step;
    } else if (ofCases(field)) {
        next.row += step;
    } else if (field.kind == ListFieldKind::CombinationName && step > 0) {
        next.kind = ListFieldKind::Factor;
    } else if (field.kind == ListFieldKind::SpreadForce && step > 0) {
        next.kind = ListFieldKind::SpreadLength;
    } else {
        return std::nullopt;
    }
    return canType(truss, next) ? std::optional(next) : std::nullopt;
}

std::string listText(const Truss& truss, const ListField& field) {
    const std::optional<double> number = numberIn(truss, field);
    return number ? typedNumber(truss, *number) : nameIn(truss, field);
}

std::string listLook(const Truss& truss, const ListField& field) {
    const std::optional<double> number = numberIn(truss, field);
    return number ? formatNumber(*number, typedStyleOf(truss)) : nameIn(truss, field);
}

Outcome<Edit> listEdit(const Truss& truss, const ListField& field, const std::string& typed) {
    const bool name = isNamed(field);
    const std::string text = name ? trimmed(typed) : withPoints(truss, trimmed(typed));
    if (ofCases(field)) {
        return editCase(truss, field, text);
    }
    if (ofCombinations(field)) {
        return editCombination(truss, field, text);
    }
    switch (field.kind) {
    case ListFieldKind::AxleAt:
    case ListFieldKind::AxleForce:
        return editAxle(truss, field, text);
    case ListFieldKind::SpreadForce:
    case ListFieldKind::SpreadLength:
        return editSpread(truss, field, text);
    default:
        break;
    }
    MovingLoad load = loadOf(truss, field);
    load.id = text;
    return withMoving(truss, field.row, load);
}

namespace {

std::string nameOfCombinations(const Writer& writer, const ListField& field) {
    const Truss& truss = writer.truss;
    if (static_cast<std::size_t>(field.row) == truss.combinations.size()) {
        return sayPlain(writer, phrase::kNameOfNewCombination);
    }
    const std::string& combination = truss.combinations[static_cast<std::size_t>(field.row)].id;
    if (field.kind == ListFieldKind::CombinationName) {
        return sayPlain(writer, phrase::kNameOfCombination, {{"combination", combination}});
    }
    return sayPlain(writer, phrase::kFactorOfCase,
                    {{"case", caseNames(truss)[static_cast<std::size_t>(field.part)]},
                     {"combination", combination}});
}

} // namespace

std::string listName(const Writer& writer, const ListField& field) {
    if (ofCases(field)) {
        return caseFieldName(writer, field);
    }
    if (ofCombinations(field)) {
        return nameOfCombinations(writer, field);
    }
    const std::string& load = loadOf(writer.truss, field).id;
    switch (field.kind) {
    case ListFieldKind::AxleAt:
    case ListFieldKind::AxleForce:
        return sayPlain(writer,
                        field.kind == ListFieldKind::AxleAt ? phrase::kPlaceOfAxle
                                                            : phrase::kForceOfAxle,
                        {{"n", field.part + 1}, {"load", load}});
    case ListFieldKind::SpreadForce:
        return sayPlain(writer, phrase::kSpreadOfMoving, {{"load", load}});
    case ListFieldKind::SpreadLength:
        return sayPlain(writer, phrase::kSpreadLengthOfMoving, {{"load", load}});
    default:
        break;
    }
    return sayPlain(writer, phrase::kNameOfMoving, {{"load", load}});
}

Edit addMovingLoad(const Writer& writer, const std::vector<JointId>& path) {
    MovingLoad load;
    load.id = freeName(writer);
    load.path = path;
    load.axles.push_back({});
    load.axles.back().force = forceToBeginWith(writer.truss);
    std::vector<MovingLoad> all = writer.truss.moving;
    all.push_back(std::move(load));
    return SetMovingLoads{all};
}

Edit removeMovingLoad(const Truss& truss, int row) {
    std::vector<MovingLoad> all = truss.moving;
    all.erase(all.begin() + row);
    return SetMovingLoads{all};
}

Edit removeAxle(const Truss& truss, int row, int axle) {
    std::vector<MovingLoad> all = truss.moving;
    auto& axles = all[static_cast<std::size_t>(row)].axles;
    axles.erase(axles.begin() + axle);
    return SetMovingLoads{all};
}

bool canRemoveAxle(const MovingLoad& load) { return load.axles.size() > 1 || load.uniform; }

Edit removeCombination(const Truss& truss, int row) {
    std::vector<Combination> all = truss.combinations;
    all.erase(all.begin() + row);
    return SetCombinations{all};
}

} // namespace gusset
