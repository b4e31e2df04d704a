#include "workshop/differences.hpp"

#include "core/number.hpp"
#include "model/catalogue/section_properties.hpp"
#include "phrases/design/compared.hpp"
#include "workshop/load_differences.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace gusset {

namespace {

constexpr double kRounding = 1e-9; // of a value: conversion of units leaves it

class Comparing {
public:
    Comparing(const Writer& writer, const Truss& second, const Matched& matched)
        : writer_(writer), first_(writer.truss), second_(second), matched_(matched) {}

    std::vector<std::string> lines() {
        compareJoints();
        compareMembers();
        compareSections();
        compareSupports();
        for (std::string& line : loadDifferences(writer_, second_, matched_)) {
            lines_.push_back(std::move(line));
        }
        tellIf(first_.combinations != second_.combinations, phrase::kCombinationsOther);
        tellIf(first_.moving != second_.moving && !sameMoving(), phrase::kMovingOther);
        tellIf(!sameChecks(), phrase::kChecksOther);
        return std::move(lines_);
    }

private:
    template <PartName... Names>
    void tell(Phrase<Names...> says, const PartsOf<Words, Names...>& parts) {
        lines_.push_back(sayPlain(writer_, says, parts));
    }
    void tellIf(bool differs, Phrase<> says) {
        if (differs) {
            lines_.push_back(sayPlain(writer_, says));
        }
    }

    std::string number(double value) const {
        return formatMeasured(value, first_.classSettings.decimalSign);
    }

    void compareJoints() {
        const double near = nearnessOf(first_, second_);
        std::vector<std::string> alone;
        for (std::size_t i = 0; i < matched_.joints.size(); ++i) {
            const Joint& one = first_.joints[i];
            if (!matched_.joints[i].valid()) {
                alone.push_back(one.label);
                continue;
            }
            const Joint& other = second_.joints[matched_.joints[i].at()];
            if (one.label != other.label) {
                tell(phrase::kJointCalled, {{"first", one.label}, {"second", other.label}});
            }
            if (length(one.at - other.at) > near) {
                tell(phrase::kJointMoved, {{"joint", one.label},
                                           {"x", number(one.at.x)},
                                           {"y", number(one.at.y)},
                                           {"otherX", number(other.at.x)},
                                           {"otherY", number(other.at.y)}});
            }
        }
        if (!alone.empty()) {
            tell(phrase::kJointsOfFirst, {{"names", listed(writer_, alone)}});
        }
        std::vector<std::string> added;
        const std::vector<JointId>& back = matched_.back;
        for (std::size_t i = 0; i < back.size(); ++i) {
            if (!back[i].valid()) {
                added.push_back(second_.joints[i].label);
            }
        }
        if (!added.empty()) {
            tell(phrase::kJointsOfSecond, {{"names", listed(writer_, added)}});
        }
    }

    void compareMembers() {
        std::vector<std::string> alone;
        std::vector<std::string> other;
        std::vector<bool> isMet(second_.members.size());
        for (std::size_t i = 0; i < matched_.members.size(); ++i) {
            const std::string name = memberName(first_, {static_cast<int>(i)});
            if (!matched_.members[i].valid()) {
                alone.push_back(name);
                continue;
            }
            isMet[matched_.members[i].at()] = true;
            const Member& a = first_.members[i];
            const Member& b = second_.members[matched_.members[i].at()];
            if (a.warming != b.warming || a.misfit != b.misfit || a.factors != b.factors) {
                other.push_back(name);
            }
        }
        if (!alone.empty()) {
            tell(phrase::kMembersOfFirst, {{"names", listed(writer_, alone)}});
        }
        std::vector<std::string> added;
        for (std::size_t i = 0; i < isMet.size(); ++i) {
            if (!isMet[i]) {
                added.push_back(memberName(second_, {static_cast<int>(i)}));
            }
        }
        if (!added.empty()) {
            tell(phrase::kMembersOfSecond, {{"names", listed(writer_, added)}});
        }
        if (!other.empty()) {
            tell(phrase::kMembersMadeOther, {{"names", listed(writer_, other)}});
        }
    }

    std::string sectionName(const std::string& id) const {
        return id.empty() ? sayPlain(writer_, phrase::kNoSection) : id;
    }

    void compareSections() {
        std::map<std::pair<std::string, std::string>, std::vector<std::string>> changed;
        std::set<std::string> shared;
        for (std::size_t i = 0; i < matched_.members.size(); ++i) {
            if (!matched_.members[i].valid()) {
                continue;
            }
            const std::string& was = first_.members[i].section;
            const std::string& is = second_.members[matched_.members[i].at()].section;
            if (was != is) {
                changed[{was, is}].push_back(memberName(first_, {static_cast<int>(i)}));
            } else if (!was.empty()) {
                shared.insert(was);
            }
        }
        for (const auto& [sections, names] : changed) {
            tell(phrase::kSectionsOther, {{"from", sectionName(sections.first)},
                                          {"to", sectionName(sections.second)},
                                          {"names", listed(writer_, names)}});
        }
        std::set<std::string> materials;
        for (const std::string& id : shared) {
            const Section* a = found(first_.sections, id);
            const Section* b = found(second_.sections, id);
            if (!a || !b) {
                continue;
            }
            if (!sameSection(*a, *b)) {
                tell(phrase::kSectionChanged, {{"section", id}});
            } else if (!a->material.empty()) {
                materials.insert(a->material);
            }
        }
        for (const std::string& id : materials) {
            const Material* a = found(first_.materials, id);
            const Material* b = found(second_.materials, id);
            if (a && b && !sameMaterial(*a, *b)) {
                tell(phrase::kMaterialChanged, {{"material", id}});
            }
        }
    }

    template <class Thing>
    static const Thing* found(const std::vector<Thing>& things, const std::string& id) {
        const auto it = std::find_if(things.begin(), things.end(),
                                     [&](const Thing& thing) { return thing.id == id; });
        return it == things.end() ? nullptr : &*it;
    }
    static bool alike(const std::optional<double>& a, const std::optional<double>& b) {
        return a.has_value() == b.has_value() &&
               (!a || std::abs(*a - *b) <= kRounding * std::abs(*a));
    }
    static bool sameSection(const Section& a, const Section& b) {
        return a.material == b.material && a.shape == b.shape &&
               alike(propertiesOf(a).area, propertiesOf(b).area) &&
               alike(propertiesOf(a).radius, propertiesOf(b).radius) && alike(a.area, b.area) &&
               alike(a.radius, b.radius) && a.inPlane == b.inPlane && a.holes == b.holes;
    }
    static bool sameMaterial(const Material& a, const Material& b) {
        return alike(a.E, b.E) && alike(a.strength, b.strength) && alike(a.density, b.density) &&
               alike(a.alpha, b.alpha) && alike(a.ultimate, b.ultimate) &&
               alike(a.tension, b.tension) && alike(a.compression, b.compression) &&
               alike(a.E05, b.E05);
    }

    // Kind and direction of the supports of a joint, in order.
    static std::multiset<std::tuple<int, double, double, double, double>>
    supportsAt(const Truss& truss, JointId joint) {
        std::multiset<std::tuple<int, double, double, double, double>> all;
        for (const Support& each : truss.supports) {
            if (each.joint == joint) {
                const bool isPin = each.kind == SupportKind::Pin;
                all.insert({static_cast<int>(each.kind), isPin ? 0 : each.reaction, each.settle.x,
                            each.settle.y, each.settleAlong});
            }
        }
        return all;
    }

    void compareSupports() {
        std::vector<std::string> names;
        const std::vector<JointId>& back = matched_.back;
        for (std::size_t i = 0; i < matched_.joints.size(); ++i) {
            const JointId one{static_cast<int>(i)};
            if (matched_.joints[i].valid()
                    ? supportsAt(first_, one) != supportsAt(second_, matched_.joints[i])
                    : !supportsAt(first_, one).empty()) {
                names.push_back(first_.joints[i].label);
            }
        }
        for (std::size_t i = 0; i < back.size(); ++i) {
            if (!back[i].valid() && !supportsAt(second_, {static_cast<int>(i)}).empty()) {
                names.push_back(second_.joints[i].label);
            }
        }
        if (!names.empty()) {
            tell(phrase::kSupportsOther, {{"names", listed(writer_, names)}});
        }
    }

    // By names and numbers, as joints may stand in another order.
    bool sameMoving() const {
        return first_.moving.size() == second_.moving.size() &&
               std::equal(first_.moving.begin(), first_.moving.end(), second_.moving.begin(),
                          [&](const MovingLoad& a, const MovingLoad& b) {
                              return a.id == b.id && a.axles == b.axles && a.uniform == b.uniform &&
                                     a.path.size() == b.path.size() &&
                                     std::equal(a.path.begin(), a.path.end(), b.path.begin(),
                                                [&](JointId one, JointId other) {
                                                    return matched_.joints[one.at()] == other;
                                                });
                          });
    }

    bool sameChecks() const {
        CheckSettings a = first_.checks;
        CheckSettings b = second_.checks;
        std::set<int> heldFirst;
        std::set<int> heldSecond;
        for (const JointId joint : a.held.value_or(std::vector<JointId>{})) {
            heldFirst.insert(matched_.joints[joint.at()].index);
        }
        for (const JointId joint : b.held.value_or(std::vector<JointId>{})) {
            heldSecond.insert(joint.index);
        }
        const bool sameHeld = a.held.has_value() == b.held.has_value() && heldFirst == heldSecond;
        a.held = b.held = std::nullopt;
        a.unknown = b.unknown = {};
        return sameHeld && a == b;
    }

    const Writer& writer_;
    const Truss& first_;
    const Truss& second_;
    const Matched& matched_;
    std::vector<std::string> lines_{};
};

} // namespace

std::vector<std::string> differences(const Writer& writer, const Truss& second,
                                     const Matched& matched) {
    return Comparing(writer, second, matched).lines();
}

} // namespace gusset
