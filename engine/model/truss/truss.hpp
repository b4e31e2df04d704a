#pragma once
// The truss as its author wrote it: plain data in the author's own units, which `units` names. It
// holds everything in a file or a link without loss, including what is not computed yet; the
// conversion to SI is a single step, in statics/equilibrium/structure. x is to the right, y up,
// angles in degrees anticlockwise from +x.

#include "core/ids.hpp"
#include "core/vec2.hpp"
#include "model/truss/check_settings.hpp"
#include "model/truss/class_settings.hpp"
#include "model/truss/units.hpp"

#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace gusset {

// Members of JSON objects that this version does not know, as the text of one JSON object, or
// empty.
using UnknownKeys = std::string;

struct Joint {
    std::string label; // unique, 1 to 40 characters
    Vec2 at;           // length units
    UnknownKeys unknown;

    friend bool operator==(const Joint&, const Joint&) = default;
};

// What the length between the joints is multiplied by to give a buckling length.
struct LengthFactors {
    std::optional<double> in{};  // in the plane of the truss; none: that of the checks
    std::optional<double> out{}; // out of it; likewise
    UnknownKeys unknown{};

    friend bool operator==(const LengthFactors&, const LengthFactors&) = default;
};

struct Member {
    JointId a;
    JointId b;
    std::string section;     // id of a Section, or empty
    double warming = 0;      // K, the file's dT
    double misfit = 0;       // displacement units, positive: made too long
    LengthFactors factors{}; // the file's K
    UnknownKeys unknown{};

    friend bool operator==(const Member&, const Member&) = default;
};

enum class SupportKind { Pin, Roller };

struct Support {
    JointId joint;
    SupportKind kind = SupportKind::Pin;
    double reaction = 90;      // roller: degrees, the line of its reaction; 90 on a level floor
    Vec2 settle;               // pin: the support's own movement, displacement units
    double settleAlong = 0;    // roller: the same, along the reaction's direction
    UnknownKeys unknownSettle; // of a pin's "settle"
    UnknownKeys unknown;

    friend bool operator==(const Support&, const Support&) = default;
};

struct JointForce { // by components
    JointId joint;
    double fx = 0; // force units, positive along +x
    double fy = 0; // positive up
    friend bool operator==(const JointForce&, const JointForce&) = default;
};

struct AngledForce { // by size and angle
    JointId joint;
    double size = 0;  // force units
    double angle = 0; // degrees
    friend bool operator==(const AngledForce&, const AngledForce&) = default;
};

struct ChordLoad {              // distributed to the joints of a chord by tributary lengths
    std::vector<JointId> chord; // at least two, in order
    double perLength = 0;       // force units per length unit of horizontal projection, positive up
    friend bool operator==(const ChordLoad&, const ChordLoad&) = default;
};

// On a member between its joints: distributed to the two as by a simple beam, so that the nearer
// one takes more.
struct MemberForce {
    JointId from; // the two joints of the member, in either order
    JointId to;
    double at = 0; // length units from `from`, along the member
    double fx = 0; // force units, positive along +x
    double fy = 0; // positive up
    friend bool operator==(const MemberForce&, const MemberForce&) = default;
};

struct SelfWeight { // of all members, from area and density
    friend bool operator==(const SelfWeight&, const SelfWeight&) = default;
};

struct Load {
    std::variant<JointForce, AngledForce, ChordLoad, SelfWeight, MemberForce> what;
    std::string caseId; // empty: the case "loads"
    UnknownKeys unknown;

    friend bool operator==(const Load&, const Load&) = default;
};

inline constexpr const char* kDefaultCase = "loads";
// What the case of a load is called, by its caseId; and the caseId of the loads of a case.
[[nodiscard]] constexpr std::string_view caseNameOf(std::string_view caseId) {
    return caseId.empty() ? std::string_view(kDefaultCase) : caseId;
}
[[nodiscard]] constexpr std::string_view caseIdOf(std::string_view name) {
    return name == kDefaultCase ? std::string_view() : name;
}

struct Material {
    std::string id;
    std::optional<double> E;          // stress units
    std::optional<double> strength;   // stress units
    std::optional<double> density;    // kg/m³
    std::optional<double> alpha;      // per K
    std::optional<double> ultimate{}; // tensile strength of steel, f_u, stress units
    // Of timber, along the grain, stress units: characteristic strengths in tension and compression
    // f_t,0,k and f_c,0,k, and the 5th percentile of the modulus, E_0,05.
    std::optional<double> tension{};
    std::optional<double> compression{};
    std::optional<double> E05{};
    UnknownKeys unknown{};

    friend bool operator==(const Material&, const Material&) = default;
};

// Holes of fasteners across a section, in the line that takes most away.
struct Holes {
    double count = 1;    // a whole number
    double diameter = 0; // as it is deducted, section units
    UnknownKeys unknown{};

    friend bool operator==(const Holes&, const Holes&) = default;
};

struct Section {
    std::string id;
    std::string material;         // id of a Material, or empty
    std::optional<double> area;   // section units², the file's A
    std::optional<double> radius; // section units, radius of gyration about the weak axis, r
    std::string shape;            // empty, or a shape of model/catalogue/section_shapes
    std::vector<std::pair<std::string, double>> dimensions; // of the shape, section units
    std::string inPlane{}; // which axis bends in the plane of the truss: "strong" or "weak"; empty:
                           // the weak one is taken for both directions
    std::optional<Holes> holes{};
    std::optional<double> lag{};     // AISC 360-16, D3: shear lag factor U, none: 1
    std::optional<double> packing{}; // of a double angle: distance between packing plates
                                     // or connectors, section units
    UnknownKeys unknown{};

    friend bool operator==(const Section&, const Section&) = default;
};

// What a load case stands for, where its author says so; a case without it needs no entry.
struct LoadCase {
    std::string id;
    std::string kind; // a word of design/loading/actions: "snow"
    UnknownKeys unknown;

    friend bool operator==(const LoadCase&, const LoadCase&) = default;
};

struct Combination {
    std::string id;
    std::vector<std::pair<std::string, double>> factors; // case → factor
    UnknownKeys unknown;
    std::string by{};    // the rule that it follows: "EN 1990, 6.10", or empty
    std::string limit{}; // what it is for: "service"; empty: strength

    friend bool operator==(const Combination&, const Combination&) = default;
};

struct Axle {
    double at = 0;    // length units behind the first axle
    double force = 0; // force units, positive up
    UnknownKeys unknown;
    friend bool operator==(const Axle&, const Axle&) = default;
};

struct MovingUniform {
    double perLength = 0;         // force units per length unit of path, positive up
    std::optional<double> length; // length units; none: the most unfavourable length
    UnknownKeys unknown;
    friend bool operator==(const MovingUniform&, const MovingUniform&) = default;
};

struct MovingLoad {
    std::string id;
    std::vector<JointId> path;
    std::vector<Axle> axles;
    std::optional<MovingUniform> uniform; // in addition to the axles, or instead
    UnknownKeys unknown;

    friend bool operator==(const MovingLoad&, const MovingLoad&) = default;
};

struct Truss {
    // Special members are defined in truss.cpp: inline, they would be most of each object file.
    Truss();
    Truss(const Truss&);
    Truss(Truss&&) noexcept;
    Truss& operator=(const Truss&);
    Truss& operator=(Truss&&) noexcept;
    ~Truss();

    std::string title;
    Units units;
    std::vector<Joint> joints;
    std::vector<Member> members;
    std::vector<Support> supports;
    std::vector<Load> loads;
    std::vector<Material> materials;
    std::vector<Section> sections;
    std::vector<LoadCase> cases;
    std::vector<Combination> combinations;
    std::vector<MovingLoad> moving;
    CheckSettings checks;
    ClassSettings classSettings;
    std::string exercise; // JSON text, kept unchanged, or empty
    std::string lesson;   // likewise
    std::string form;     // likewise: the outline that it was made from
    UnknownKeys unknown;

    friend bool operator==(const Truss&, const Truss&);
};

[[nodiscard]] JointId findJoint(const Truss&, const std::string& label);
// The member between two joints, in either order, or none.
[[nodiscard]] MemberId findMember(const Truss&, JointId a, JointId b);
// By the labels of its ends: "AB", or "A1–B" when a label is longer.
[[nodiscard]] std::string memberName(const Truss&, MemberId);
[[nodiscard]] std::string memberName(const std::string& a, const std::string& b);
[[nodiscard]] Vec2 memberVector(const Truss&, MemberId); // from a to b, length units
// A, B, …, Z, A1, B1, …: the label of the joint with this number (from 0) unless its author chose
// one.
[[nodiscard]] std::string defaultLabel(int number);
// The first default label that no joint has.
[[nodiscard]] std::string nextLabel(const Truss&);
// Corners of the box around all joints; both at the origin for an empty truss.
struct Extent {
    Vec2 low;
    Vec2 high;
};
[[nodiscard]] Extent extent(const Truss&);
// The components of the force of a joint load, force units; nothing for loads on more than one
// joint.
[[nodiscard]] std::optional<Vec2> forceOf(const Load&);
[[nodiscard]] JointId jointOf(const Load&); // none for loads on more than one joint
// All joints that it refers to: one, a chord, a member's two; none for self-weight.
[[nodiscard]] std::vector<JointId> jointsOf(const Load&);
// Sine and cosine of an angle in degrees, exact at multiples of 30, 45 and 90.
[[nodiscard]] Vec2 directionOf(double degrees);

} // namespace gusset
