#pragma once
// What the things of a model are made of: of each kind a table of its fields, in the order in which
// files have them. Reader, writer, the examination of numbers and the change of units go through
// these tables, and the test of the schema compares it with them, so that a field is described
// once. What is no plain field stands in their code: the word of a support's kind and the pin's
// settlement, the two joints of a load on a member, self-weight, a shape's dimensions, the factors
// of a combination, axles and uniform part of a moving load. Settings have such tables too:
// kCheckNumbers, and the words in exchange/files/format_words.

#include "model/truss/truss.hpp"

#include <array>
#include <functional>
#include <string_view>
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

// Where a field stands in a thing: one of these. As a variant they would weigh much more.
template <class Thing>
struct ValuePlace {
    double Thing::*number = nullptr;
    std::optional<double> Thing::*optional = nullptr;
    Vec2 Thing::*vector = nullptr; // and which component of it
    double Vec2::*component = nullptr;
    std::string Thing::*text = nullptr;
    JointId Thing::*joint = nullptr;
    std::vector<JointId> Thing::*path = nullptr;

    constexpr ValuePlace(double Thing::*it) : number(it) {}
    constexpr ValuePlace(std::optional<double> Thing::*it) : optional(it) {}
    constexpr ValuePlace(Vec2 Thing::*it, double Vec2::*of) : vector(it), component(of) {}
    constexpr ValuePlace(std::string Thing::*it) : text(it) {}
    constexpr ValuePlace(JointId Thing::*it) : joint(it) {}
    constexpr ValuePlace(std::vector<JointId> Thing::*it) : path(it) {}
};

template <class Thing>
struct Field {
    std::string_view key;
    ValuePlace<Thing> place;
    Presence presence = Presence::Usual;
    Quantity quantity = Quantity::None; // this and the limits: of numbers
    Limits limits = Limits::Number;
};

template <class Thing>
inline constexpr auto kFields = nullptr; // of things without a table: nothing can go through it

template <>
inline constexpr auto kFields<Joint> = std::to_array<Field<Joint>>({
    {"id", &Joint::label, Presence::Needed},
    {"x", {&Joint::at, &Vec2::x}, Presence::Needed, Quantity::Length},
    {"y", {&Joint::at, &Vec2::y}, Presence::Needed, Quantity::Length},
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
    {"x", {&Support::settle, &Vec2::x}, Presence::Usual, Quantity::Displacement},
    {"y", {&Support::settle, &Vec2::y}, Presence::Usual, Quantity::Displacement},
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

// A field of one thing: what its table says, and where its value stands: one of the pointers. Those
// who go through the fields are given these, the same for all kinds of things.
struct FieldValue {
    std::string_view key;
    Presence presence;
    Quantity quantity;
    Limits limits;
    double* number = nullptr; // also of an optional one that is there
    std::optional<double>* optional = nullptr;
    std::string* text = nullptr;
    JointId* joint = nullptr;
    std::vector<JointId>* path = nullptr;
};

// Refers to a function that takes fields; it must outlive the call.
class FieldTaker {
public:
    template <class Take>
    requires(!std::is_same_v<Take, FieldTaker>) FieldTaker(const Take& take)
        : take_(&take), call_([](const void* it, const FieldValue& field) {
              (*static_cast<const Take*>(it))(field);
          }) {}
    void operator()(const FieldValue& field) const { call_(take_, field); }

private:
    const void* take_;
    void (*call_)(const void*, const FieldValue&);
};

// Hands over every field of a table, in order.
template <class Table, class Thing>
void eachField(const Table& table, Thing& thing, FieldTaker take) {
    for (const auto& [key, at, presence, quantity, limits] : table) {
        FieldValue value{key, presence, quantity, limits};
        if (at.number) {
            value.number = &(thing.*at.number);
        } else if (at.vector) {
            value.number = &(thing.*at.vector.*at.component);
        } else if (at.optional) {
            value.optional = &(thing.*at.optional);
            value.number = *value.optional ? &**value.optional : nullptr;
        } else if (at.text) {
            value.text = &(thing.*at.text);
        } else if (at.joint) {
            value.joint = &(thing.*at.joint);
        } else {
            value.path = &(thing.*at.path);
        }
        take(value);
    }
}
// Of a thing that stays as it is: `take` only reads.
template <class Table, class Thing>
void eachField(const Table& table, const Thing& thing, FieldTaker take) {
    eachField(table, const_cast<Thing&>(thing), take);
}

// Every joint that a load is given by.
void eachJoint(Load&, const std::function<void(JointId&)>& take);

} // namespace gusset
