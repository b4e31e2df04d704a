#include "model/edit/change_units.hpp"

#include "model/truss/fields.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class Unit>
double changed(double value, Unit from, Unit to) {
    return from == Unit::Plain || to == Unit::Plain ? value : converted(value, from, to);
}

struct UnitChange {
    Units from;
    Units to;

    [[nodiscard]] double operator()(double value, Quantity quantity) const {
        switch (quantity) {
        case Quantity::Force:
            return changed(value, from.force, to.force);
        case Quantity::Length:
            return changed(value, from.length, to.length);
        case Quantity::ForcePerLength:
            return changed(changed(value, from.force, to.force), to.length, from.length);
        case Quantity::Displacement:
            return changed(value, from.displacement, to.displacement);
        case Quantity::SectionLength:
            return changed(value, from.section, to.section);
        case Quantity::SectionArea: // twice a length
            return changed(changed(value, from.section, to.section), from.section, to.section);
        case Quantity::Stress:
            return changed(value, from.stress, to.stress);
        case Quantity::None:
            break;
        }
        return value;
    }
};

} // namespace

void convertNumbers(Truss& truss, const Units& to) {
    const UnitChange change{truss.units, to};
    const auto convert = [&](const FieldValue& field) {
        if (field.number) {
            *field.number = change(*field.number, field.quantity);
        }
    };
    const auto convertOne = [&](auto& thing) {
        eachField(kFields<std::remove_cvref_t<decltype(thing)>>, thing, convert);
    };
    const auto convertAll = [&](auto& things) {
        std::for_each(things.begin(), things.end(), convertOne);
    };
    convertAll(truss.joints);
    convertAll(truss.members);
    for (Support& support : truss.supports) {
        eachField(kRollerFields, support, convert);
        eachField(kPinSettleFields, support, convert);
    }
    for (Load& load : truss.loads) {
        std::visit(convertOne, load.what);
    }
    convertAll(truss.materials);
    convertAll(truss.sections);
    for (Section& section : truss.sections) {
        for (auto& [key, value] : section.dimensions) {
            value = change(value, Quantity::SectionLength);
        }
        if (section.holes) {
            convertOne(*section.holes);
        }
    }
    for (MovingLoad& moving : truss.moving) {
        convertAll(moving.axles);
        if (moving.uniform) {
            convertOne(*moving.uniform);
        }
    }
}

} // namespace gusset
