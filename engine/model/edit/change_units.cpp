#include "model/edit/change_units.hpp"

#include <algorithm>

namespace gusset {

namespace {

template <class Unit>
struct Conversion {
    Unit from;
    Unit to;

    void operator()(double& value) const {
        if (from != Unit::Plain && to != Unit::Plain) {
            value = converted(value, from, to);
        }
    }
    void operator()(Vec2& value) const {
        (*this)(value.x);
        (*this)(value.y);
    }
    void operator()(std::optional<double>& value) const {
        if (value) {
            (*this)(*value);
        }
    }
};

struct Conversions {
    Conversion<ForceUnit> force;
    Conversion<LengthUnit> length;
    Conversion<LengthUnit> section;
    Conversion<StressUnit> stress;
    Conversion<LengthUnit> displacement;
};

void convertPerLength(double& value, const Conversions& convert) {
    convert.force(value);
    const Conversion<LengthUnit> perLength{convert.length.to, convert.length.from};
    perLength(value);
}

void convertMoving(MovingLoad& moving, const Conversions& convert) {
    for (Axle& axle : moving.axles) {
        convert.length(axle.at);
        convert.force(axle.force);
    }
    if (moving.uniform) {
        convertPerLength(moving.uniform->perLength, convert);
        convert.length(moving.uniform->length);
    }
}

void convertLoad(Load& load, const Conversions& convert) {
    if (auto* force = std::get_if<JointForce>(&load.what)) {
        convert.force(force->fx);
        convert.force(force->fy);
    } else if (auto* angled = std::get_if<AngledForce>(&load.what)) {
        convert.force(angled->size);
    } else if (auto* between = std::get_if<MemberForce>(&load.what)) {
        convert.length(between->at);
        convert.force(between->fx);
        convert.force(between->fy);
    } else if (auto* chord = std::get_if<ChordLoad>(&load.what)) {
        convertPerLength(chord->perLength, convert);
    }
}

void convertProperties(Truss& truss, const Conversions& convert) {
    for (Material& material : truss.materials) {
        convert.stress(material.E);
        convert.stress(material.strength);
    }
    for (Section& section : truss.sections) {
        convert.section(section.area); // twice: an area
        convert.section(section.area);
        convert.section(section.radius);
        for (auto& [key, value] : section.dimensions) {
            convert.section(value);
        }
    }
}

} // namespace

void convertNumbers(Truss& truss, const Units& to) {
    const Units& from = truss.units;
    const Conversions convert{{from.force, to.force},
                              {from.length, to.length},
                              {from.section, to.section},
                              {from.stress, to.stress},
                              {from.displacement, to.displacement}};
    for (Joint& joint : truss.joints) {
        convert.length(joint.at);
    }
    for (Member& member : truss.members) {
        convert.displacement(member.misfit);
    }
    for (Support& support : truss.supports) {
        convert.displacement(support.settle);
        convert.displacement(support.settleAlong);
    }
    for (Load& load : truss.loads) {
        convertLoad(load, convert);
    }
    for (MovingLoad& moving : truss.moving) {
        convertMoving(moving, convert);
    }
    convertProperties(truss, convert);
}

} // namespace gusset
