#pragma once
// What the things of a model are made of: of each kind a table of its fields, in the order in which
// files have them. Reader, writer, the examination of numbers and the change of units go through
// these tables, and the test of the schema compares it with them, so that a field is described
// once. What is no plain field stands in their code: the word of a support's kind and the pin's
// settlement, the two joints of a load on a member, self-weight, a shape's dimensions, the factors
// of a combination, axles and uniform part of a moving load. Settings have such tables too:
// kCheckNumbers, and the words in exchange/files/format_words.

#include "model/truss/truss.hpp"

#include <algorithm>
#include <array>
#include <type_traits>

namespace gusset {

enum class Quantity { // what a number measures, and so which of the model's units it is in
    None,             // no unit, or always the same one: degrees, kelvins, kg/m³
    Force,
    Length,
    ForcePerLength,
    Displacement,
    SectionLength,
    SectionArea,
    Stress,
};

enum class Presence {
    Usual,   // may be left out, and is where it is 0, empty or none
    Written, // always written; the reader knows what to say when it is missing
    Needed,  // always written, and a file without it has a fault
};

enum class Limits {
    Number,   // within ±kLargestNumber
    Positive, // and greater than 0
    Size,     // kSmallestSize to kLargestSize
};

template <class Thing>
struct Component { // of a vector
    Vec2 Thing::*vector;
    double Vec2::*part;
};
template <class Thing>
Component(Vec2 Thing::*, double Vec2::*) -> Component<Thing>;

template <class Thing>
struct Field {
    std::string_view key;
    std::variant<double Thing::*, std::optional<double> Thing::*, Component<Thing>,
                 std::string Thing::*, JointId Thing::*, std::vector<JointId> Thing::*>
        place;
    Presence presence = Presence::Usual;
    Quantity quantity = Quantity::None; // this and the limits: of numbers
    Limits limits = Limits::Number;
};

template <class Thing>
inline constexpr auto kFields = nullptr; // of things without a table: nothing can go through it

template <>
inline constexpr auto kFields<Joint> = std::to_array<Field<Joint>>({
    {"id", &Joint::label, Presence::Needed},
    {"x", Component{&Joint::at, &Vec2::x}, Presence::Needed, Quantity::Length},
    {"y", Component{&Joint::at, &Vec2::y}, Presence::Needed, Quantity::Length},
});

template <>
inline constexpr auto kFields<Member> = std::to_array<Field<Member>>({
    {"a", &Member::a, Presence::Needed},
    {"b", &Member::b, Presence::Needed},
    {"section", &Member::section},
    {"dT", &Member::warming},
    {"misfit", &Member::misfit, Presence::Usual, Quantity::Displacement},
});

template <>
inline constexpr auto kFields<Support> = std::to_array<Field<Support>>({
    {"joint", &Support::joint, Presence::Needed},
});
inline constexpr auto kRollerFields = std::to_array<Field<Support>>({
    {"reaction", &Support::reaction, Presence::Written},
    {"settle", &Support::settleAlong, Presence::Usual, Quantity::Displacement},
});
inline constexpr auto kPinSettleFields = std::to_array<Field<Support>>({
    // in a pin's "settle"
    {"x", Component{&Support::settle, &Vec2::x}, Presence::Usual, Quantity::Displacement},
    {"y", Component{&Support::settle, &Vec2::y}, Presence::Usual, Quantity::Displacement},
});

template <>
inline constexpr auto kFields<Load> = std::to_array<Field<Load>>({
    // besides those of its kind
    {"case", &Load::caseId},
});
template <>
inline constexpr auto kFields<JointForce> = std::to_array<Field<JointForce>>({
    {"joint", &JointForce::joint, Presence::Needed},
    {"fx", &JointForce::fx, Presence::Usual, Quantity::Force},
    {"fy", &JointForce::fy, Presence::Usual, Quantity::Force},
});
template <>
inline constexpr auto kFields<AngledForce> = std::to_array<Field<AngledForce>>({
    {"joint", &AngledForce::joint, Presence::Needed},
    {"size", &AngledForce::size, Presence::Needed, Quantity::Force},
    {"angle", &AngledForce::angle, Presence::Needed},
});
template <>
inline constexpr auto kFields<ChordLoad> = std::to_array<Field<ChordLoad>>({
    {"chord", &ChordLoad::chord, Presence::Needed},
    {"perLength", &ChordLoad::perLength, Presence::Needed, Quantity::ForcePerLength},
});
template <>
inline constexpr auto kFields<MemberForce> = std::to_array<Field<MemberForce>>({
    {"at", &MemberForce::at, Presence::Needed, Quantity::Length},
    {"fx", &MemberForce::fx, Presence::Usual, Quantity::Force},
    {"fy", &MemberForce::fy, Presence::Usual, Quantity::Force},
});
template <>
inline constexpr auto kFields<SelfWeight> = std::array<Field<SelfWeight>, 0>{};

template <>
inline constexpr auto kFields<Material> = std::to_array<Field<Material>>({
    {"id", &Material::id, Presence::Needed},
    {"E", &Material::E, Presence::Usual, Quantity::Stress, Limits::Size},
    {"strength", &Material::strength, Presence::Usual, Quantity::Stress, Limits::Size},
    {"density", &Material::density, Presence::Usual, Quantity::None, Limits::Size},
    {"alpha", &Material::alpha},
});

template <>
inline constexpr auto kFields<Section> = std::to_array<Field<Section>>({
    {"id", &Section::id, Presence::Needed},
    {"material", &Section::material},
    {"A", &Section::area, Presence::Usual, Quantity::SectionArea, Limits::Size},
    {"r", &Section::radius, Presence::Usual, Quantity::SectionLength, Limits::Size},
    {"shape", &Section::shape},
});

template <>
inline constexpr auto kFields<Combination> = std::to_array<Field<Combination>>({
    {"id", &Combination::id, Presence::Needed},
});

template <>
inline constexpr auto kFields<MovingLoad> = std::to_array<Field<MovingLoad>>({
    {"id", &MovingLoad::id, Presence::Needed},
    {"path", &MovingLoad::path, Presence::Needed},
});
template <>
inline constexpr auto kFields<Axle> = std::to_array<Field<Axle>>({
    {"at", &Axle::at, Presence::Needed, Quantity::Length},
    {"force", &Axle::force, Presence::Needed, Quantity::Force},
});
template <>
inline constexpr auto kFields<MovingUniform> = std::to_array<Field<MovingUniform>>({
    {"perLength", &MovingUniform::perLength, Presence::Needed, Quantity::ForcePerLength},
    {"length", &MovingUniform::length, Presence::Usual, Quantity::Length, Limits::Positive},
});

template <class Thing, class Value, class Owner>
auto& valueAt(Thing& thing, Value Owner::*place) {
    return thing.*place;
}
template <class Thing, class Owner>
auto& valueAt(Thing& thing, const Component<Owner>& place) {
    return thing.*place.vector.*place.part;
}

// Calls `each` with every field of a table and what stands there, in order.
template <class Table, class Thing, class Each>
void eachField(const Table& table, Thing& thing, const Each& each) {
    for (const auto& field : table) {
        std::visit([&](const auto& place) { each(field, valueAt(thing, place)); }, field.place);
    }
}
template <class Thing, class Each>
void eachField(Thing& thing, const Each& each) {
    eachField(kFields<std::remove_const_t<Thing>>, thing, each);
}

// The numbers alone, those that are there.
template <class Table, class Thing, class Each>
void eachNumber(const Table& table, Thing& thing, const Each& each) {
    eachField(table, thing, [&](const auto& field, auto& value) {
        using Value = std::remove_cvref_t<decltype(value)>;
        if constexpr (std::is_same_v<Value, double>) {
            each(field, value);
        } else if constexpr (std::is_same_v<Value, std::optional<double>>) {
            if (value) {
                each(field, *value);
            }
        }
    });
}
template <class Thing, class Each>
void eachNumber(Thing& thing, const Each& each) {
    eachNumber(kFields<std::remove_const_t<Thing>>, thing, each);
}

// Every joint that a load is given by.
template <class AnyLoad, class Each> // a Load, const or not
void eachJoint(AnyLoad& load, const Each& each) {
    const auto look = [&](const auto&, auto& value) {
        using Value = std::remove_cvref_t<decltype(value)>;
        if constexpr (std::is_same_v<Value, JointId>) {
            each(value);
        } else if constexpr (std::is_same_v<Value, std::vector<JointId>>) {
            std::for_each(value.begin(), value.end(), each);
        }
    };
    if (auto* between = std::get_if<MemberForce>(&load.what)) {
        each(between->from);
        each(between->to);
    }
    std::visit([&](auto& what) { eachField(what, look); }, load.what);
}

} // namespace gusset
