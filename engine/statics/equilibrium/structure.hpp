#pragma once
// A truss prepared for computing: SI, indices, one scalar restraint per row. The only place where a
// model's units are converted to SI.

#include "core/ids.hpp"
#include "core/vec2.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace gusset {

struct Bar {
    int a = 0; // index of a joint
    int b = 0;
    double length = 0; // m
    Vec2 along;        // unit vector from a to b
    // From section and material, 0 where the model does not give them:
    double area = 0;      // m²
    double stiffness = 0; // N, EA
    double weight = 0;    // N
    double strain = 0;    // m, free elongation from temperature and misfit
};

// One scalar reaction. A pin gives two (along +x, then +y), a roller one along the direction of its
// reaction.
struct Restraint {
    SupportId support;
    JointId joint;
    Vec2 along;        // unit vector; a positive reaction pushes the truss this way
    double settle = 0; // m, along `along`
};

struct Structure {
    std::vector<Vec2> joints; // m
    std::vector<Bar> bars;    // in the order of Truss::members
    std::vector<Restraint> restraints;
    double extent = 0; // m, the larger side of the box around the joints
};

[[nodiscard]] Structure structureOf(const Truss&); // precondition: validate found no error

[[nodiscard]] bool hasStrains(const Structure&); // settlement, temperature or misfit anywhere
[[nodiscard]] Structure withoutStrains(Structure);

// Which loads act.
struct EveryLoad { // all cases, each with factor 1
    bool operator==(const EveryLoad&) const = default;
};
struct OneCase {
    std::string id; // never empty

    bool operator==(const OneCase&) const = default;
};
struct OneCombination {
    std::string id; // never empty

    bool operator==(const OneCombination&) const = default;
};
using LoadChoice = std::variant<EveryLoad, OneCase, OneCombination>;
[[nodiscard]] bool isOneCase(const LoadChoice&);
[[nodiscard]] bool isCombination(const LoadChoice&);
[[nodiscard]] std::string choiceName(const LoadChoice&); // empty for every load
// The first of that name; null if the choice is none, or the truss has none of that name.
[[nodiscard]] const Combination* combinationOf(const Truss&, const LoadChoice&);
[[nodiscard]] bool isThere(const Truss&, const LoadChoice&);    // whether the truss has it
[[nodiscard]] std::vector<std::string> caseNames(const Truss&); // in order of first mention
[[nodiscard]] double caseFactor(const Truss&, const LoadChoice&, const Load&);

// The factor of each load under any choice, with names looked up once: for many choices in turn,
// each of which costs as much as it has loads and factors. The truss must outlive it.
class LoadFactors {
public:
    explicit LoadFactors(const Truss&);
    [[nodiscard]] std::vector<double> under(const LoadChoice&) const;

private:
    const Truss& truss_;
    std::unordered_map<std::string_view, std::size_t> cases_;
    std::unordered_map<std::string_view, std::size_t> combinations_;
    std::vector<std::size_t> caseOf_; // of each load
};

[[nodiscard]] bool hasLoad(const std::vector<Vec2>& loads);      // at any joint
[[nodiscard]] double largestComponent(const std::vector<Vec2>&); // absolute value

// Force on each joint, N. A load along a chord, self-weight and a load on a member are distributed
// to the joints as by simple beams between them.
[[nodiscard]] std::vector<Vec2> jointLoads(const Truss&, const LoadChoice&);
[[nodiscard]] std::vector<Vec2> jointLoads(const Truss&, const Structure&, const LoadChoice&);
[[nodiscard]] std::vector<Vec2> jointLoads(const Truss&, const Structure&,
                                           const std::vector<double>& factors);
// N·m, one per member: the largest moment from such loads on the member between its joints, as a
// simple beam, positive sagging. Empty when there are no such loads.
[[nodiscard]] std::vector<double> bendingMoments(const Truss&, const Structure&, const LoadChoice&);
[[nodiscard]] std::vector<double> bendingMoments(const Truss&, const Structure&,
                                                 const std::vector<double>& factors);

// The count of unknowns and equations, and what follows for equilibrium.
struct Counting {
    int joints = 0;
    int members = 0;
    int reactions = 0;
    int rank = 0;       // of the equilibrium matrix, 2j rows by m + r columns
    int mechanisms = 0; // 2j − rank
    int redundants = 0; // m + r − rank
    int internal = 0;   // of these, those among the members alone: m less the rank of their columns
    int external = 0;   // the rest, due to the supports
};

} // namespace gusset
