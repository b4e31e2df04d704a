#pragma once
// The fields of the things in a model: one table for each kind, in the order used in files. Reader,
// writer, validation of numbers and conversion of units go through these tables, and the schema
// test compares the schema with them, so that a field is described only once. Their code handles
// whatever is not a plain field: the word for a support's kind and the pin's settlement, the two
// joints of a load on a member, self-weight, a shape's dimensions, length factors of a member and
// holes of a section, the factors of a combination, axles and uniform part of a moving load.
// Settings have such tables too: kCheckNumbers, and the words in exchange/files/format_words.

#include "model/truss/truss.hpp"

#include <array>
#include <functional>
#include <string_view>
#include <type_traits>

namespace gusset {

enum class Quantity { // what a number measures, and so which of the model's units it has
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
    Usual,   // optional; left out when it is 0, empty or none
    Written, // always written; the reader handles a missing one
    Needed,  // always written; a file without it has an error
};

enum class Limits {
    Number,   // within ±kLargestNumber
    Positive, // and greater than 0
    Size,     // kSmallestSize to kLargestSize
};

// Where a thing stores a field: one of these. A variant would be much larger.
template <class Thing>
struct ValuePlace {
    double Thing::*number = nullptr;
    std::optional<double> Thing::*optional = nullptr;
    Vec2 Thing::*vector = nullptr; // and which of its components
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
inline constexpr auto kFields = nullptr; // for things without a table: any use fails to compile

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
inline constexpr auto kFields<LengthFactors> = std::to_array<Field<LengthFactors>>({
    {"in", &LengthFactors::in, Presence::Usual, Quantity::None, Limits::Size},
    {"out", &LengthFactors::out, Presence::Usual, Quantity::None, Limits::Size},
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
    // in addition to those of its kind
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
    {"ultimate", &Material::ultimate, Presence::Usual, Quantity::Stress, Limits::Size},
    {"tension", &Material::tension, Presence::Usual, Quantity::Stress, Limits::Size},
    {"compression", &Material::compression, Presence::Usual, Quantity::Stress, Limits::Size},
    {"E05", &Material::E05, Presence::Usual, Quantity::Stress, Limits::Size},
});

template <>
inline constexpr auto kFields<Section> = std::to_array<Field<Section>>({
    {"id", &Section::id, Presence::Needed},
    {"material", &Section::material},
    {"A", &Section::area, Presence::Usual, Quantity::SectionArea, Limits::Size},
    {"r", &Section::radius, Presence::Usual, Quantity::SectionLength, Limits::Size},
    {"shape", &Section::shape},
    {"inPlane", &Section::inPlane},
    {"lag", &Section::lag, Presence::Usual, Quantity::None, Limits::Size},
    {"packing", &Section::packing, Presence::Usual, Quantity::SectionLength, Limits::Size},
});
template <>
inline constexpr auto kFields<Holes> = std::to_array<Field<Holes>>({
    {"count", &Holes::count, Presence::Needed, Quantity::None, Limits::Positive},
    {"diameter", &Holes::diameter, Presence::Needed, Quantity::SectionLength, Limits::Size},
});

template <>
inline constexpr auto kFields<LoadCase> = std::to_array<Field<LoadCase>>({
    {"id", &LoadCase::id, Presence::Needed},
    {"kind", &LoadCase::kind},
});

template <>
inline constexpr auto kFields<Combination> = std::to_array<Field<Combination>>({
    {"id", &Combination::id, Presence::Needed},
    {"by", &Combination::by},
    {"limit", &Combination::limit},
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

// A field of one thing: what its table says, and a pointer to its value (one of these). Code that
// goes through the fields gets these, the same for all kinds of things.
struct FieldValue {
    std::string_view key;
    Presence presence;
    Quantity quantity;
    Limits limits;
    double* number = nullptr; // also for an optional one that has a value
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

// Passes every field of a table, in order.
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
// For a constant thing: `take` only reads.
template <class Table, class Thing>
void eachField(const Table& table, const Thing& thing, FieldTaker take) {
    eachField(table, const_cast<Thing&>(thing), take);
}

// Passes every joint that a load refers to.
void eachJoint(Load&, const std::function<void(JointId&)>& take);

} // namespace gusset
