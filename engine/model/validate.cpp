#include "model/validate.hpp"

#include "core/tolerance.hpp"
#include "model/findings.hpp"
#include "model/section_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <unordered_map>
#include <unordered_set>

namespace gusset {

namespace {

std::string quoted(const std::string& name) { return "\"" + name + "\""; }

// Joints by the pair of their indices, either way round.
std::uint64_t keyOfPair(JointId a, JointId b) {
    const auto low = static_cast<std::uint64_t>(std::min(a, b).index);
    const auto high = static_cast<std::uint64_t>(std::max(a, b).index);
    return (high << 32) | low;
}

class Examiner {
public:
    explicit Examiner(const Truss& truss) : truss_(truss) {
        const Extent box = extent(truss);
        shortest_ = kSameSpot * std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    }

    void examineAll() {
        checkTitle();
        checkJoints();
        checkMaterials();
        checkSections();
        checkMembers();
        checkSupports();
        checkLoads();
        checkCombinations();
        checkMoving();
        checkClass();
    }

    [[nodiscard]] Issues take() { return std::move(errors_); }

private:
    void error(IssueCode code, std::string at, std::string says) {
        if (errors_.size() < kMostIssues) {
            errors_.push_back({code, std::move(at), std::move(says)});
        }
    }

    void checkNumber(double value, const std::string& at) {
        if (!(std::abs(value) <= kLargestNumber)) {
            error(IssueCode::NotFinite, at,
                  "the number is too large to compute with: keep it within ±1e100");
        }
    }

    void checkPositive(std::optional<double> value, const std::string& at) {
        if (!value) {
            return;
        }
        checkNumber(*value, at);
        if (*value <= 0) {
            error(IssueCode::OutOfRange, at, "must be greater than 0");
        }
    }

    void checkText(const std::string& text, const std::string& at) {
        if (const auto fault = faultOfName(text, kLongestLabel); fault && !text.empty()) {
            error(IssueCode::OutOfRange, at, "this name " + *fault);
        }
    }

    // A name that other things refer to: there, sound, and the only one of its list.
    void checkName(const std::string& name, const std::string& at,
                   std::unordered_set<std::string>& taken) {
        if (const auto fault = faultOfName(name, kLongestLabel)) {
            error(name.empty() ? IssueCode::Missing : IssueCode::OutOfRange, at,
                  "this name " + *fault);
        } else if (!taken.insert(name).second) {
            error(IssueCode::Duplicate, at,
                  quoted(name) + " is there already: give each a name of its own");
        }
    }

    bool checkJoint(JointId joint, const std::string& at) {
        if (!joint.valid() || joint.at() >= truss_.joints.size()) {
            error(IssueCode::UnknownName, at, "there is no such joint");
            return false;
        }
        return true;
    }

    void checkTitle() {
        if (const auto fault = faultOfName(truss_.title, kLongestTitle);
            fault && !truss_.title.empty()) {
            error(IssueCode::OutOfRange, "title", "the title " + *fault);
        }
    }

    void checkJoints() {
        std::unordered_set<std::string> labels;
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            const Joint& joint = truss_.joints[i];
            const std::string at = placeOf("joints", i);
            checkName(joint.label, at + ".id", labels);
            checkNumber(joint.at.x, at + ".x");
            checkNumber(joint.at.y, at + ".y");
        }
    }

    void checkMembers() {
        std::unordered_map<std::uint64_t, std::size_t> pairs;
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            const Member& member = truss_.members[i];
            const std::string at = placeOf("members", i);
            checkNumber(member.warming, at + ".dT");
            checkNumber(member.misfit, at + ".misfit");
            if (!member.section.empty() && !sections_.contains(member.section)) {
                error(IssueCode::UnknownName, at + ".section",
                      "no section " + quoted(member.section) + ": add it under \"sections\"");
            }
            if (checkJoint(member.a, at + ".a") && checkJoint(member.b, at + ".b")) {
                checkEnds(i, pairs);
            }
        }
    }

    void checkEnds(std::size_t i, std::unordered_map<std::uint64_t, std::size_t>& pairs) {
        const Member& member = truss_.members[i];
        const std::string at = placeOf("members", i);
        const MemberId id{static_cast<int>(i)};
        if (member.a == member.b) {
            error(IssueCode::ZeroLength, at,
                  "begins and ends at joint " + quoted(truss_.joints[member.a.at()].label) +
                      ": join two different joints");
            return;
        }
        if (!(length(memberVector(truss_, id)) > shortest_)) {
            error(IssueCode::ZeroLength, at,
                  "member " + memberName(truss_, id) +
                      " has no length: move one of its joints apart from the other");
        }
        const auto [other, isNew] = pairs.emplace(keyOfPair(member.a, member.b), i);
        if (!isNew) {
            error(IssueCode::Duplicate, at,
                  "member " + memberName(truss_, id) + " is there already as " +
                      placeOf("members", other->second) + ": remove one of the two");
        }
    }

    void checkSupports() {
        for (std::size_t i = 0; i < truss_.supports.size(); ++i) {
            const Support& support = truss_.supports[i];
            const std::string at = placeOf("supports", i);
            checkJoint(support.joint, at + ".joint");
            checkNumber(support.reaction, at + ".reaction");
            checkNumber(support.settleAlong, at + ".settle");
            checkNumber(support.settle.x, at + ".settle.x");
            checkNumber(support.settle.y, at + ".settle.y");
        }
    }

    void checkLoads() {
        for (std::size_t i = 0; i < truss_.loads.size(); ++i) {
            const std::string at = placeOf("loads", i);
            checkText(truss_.loads[i].caseId, at + ".case");
            std::visit([&](const auto& load) { checkLoad(load, at); }, truss_.loads[i].what);
        }
    }

    void checkLoad(const JointForce& load, const std::string& at) {
        checkJoint(load.joint, at + ".joint");
        checkNumber(load.fx, at + ".fx");
        checkNumber(load.fy, at + ".fy");
    }
    void checkLoad(const AngledForce& load, const std::string& at) {
        checkJoint(load.joint, at + ".joint");
        checkNumber(load.size, at + ".size");
        checkNumber(load.angle, at + ".angle");
    }
    void checkLoad(const ChordLoad& load, const std::string& at) {
        checkPath(load.chord, at + ".chord");
        checkNumber(load.perLength, at + ".perLength");
    }
    void checkLoad(const SelfWeight&, const std::string&) {}

    void checkPath(const std::vector<JointId>& path, const std::string& at) {
        if (path.size() < 2) {
            error(IssueCode::Missing, at, "needs at least two joints");
        }
        std::unordered_set<int> seen;
        for (std::size_t i = 0; i < path.size(); ++i) {
            const std::string place = placeOf(at, i);
            if (checkJoint(path[i], place) && !seen.insert(path[i].index).second) {
                error(IssueCode::Duplicate, place,
                      "joint " + quoted(truss_.joints[path[i].at()].label) +
                          " stands twice in one path: name each joint once");
            }
        }
    }

    void checkMaterials() {
        for (std::size_t i = 0; i < truss_.materials.size(); ++i) {
            const Material& material = truss_.materials[i];
            const std::string at = placeOf("materials", i);
            checkName(material.id, at + ".id", materials_);
            checkPositive(material.E, at + ".E");
            checkPositive(material.strength, at + ".strength");
            checkPositive(material.density, at + ".density");
            checkNumber(material.alpha.value_or(0), at + ".alpha");
        }
    }

    void checkSections() {
        for (std::size_t i = 0; i < truss_.sections.size(); ++i) {
            const Section& section = truss_.sections[i];
            const std::string at = placeOf("sections", i);
            checkName(section.id, at + ".id", sections_);
            if (!section.material.empty() && !materials_.contains(section.material)) {
                error(IssueCode::UnknownName, at + ".material",
                      "no material " + quoted(section.material) + ": add it under \"materials\"");
            }
            checkPositive(section.area, at + ".A");
            checkPositive(section.radius, at + ".r");
            checkShape(section, at);
        }
    }

    void checkShape(const Section& section, const std::string& at) {
        if (section.shape.empty()) {
            return;
        }
        if (!findSectionShape(section.shape)) {
            std::string known;
            for (const SectionShape& shape : sectionShapes()) {
                known += (known.empty() ? "" : ", ") + std::string(shape.name);
            }
            error(IssueCode::OutOfRange, at + ".shape",
                  "no shape " + quoted(section.shape) + ": there are " + known);
            return;
        }
        for (const auto& [key, value] : section.dimensions) {
            checkNumber(value, at + "." + key);
        }
        if (const auto fault = faultOfDimensions(section)) {
            error(IssueCode::OutOfRange, at, *fault);
        }
    }

    void checkCombinations() {
        std::unordered_set<std::string> ids;
        for (std::size_t i = 0; i < truss_.combinations.size(); ++i) {
            const Combination& combination = truss_.combinations[i];
            const std::string at = placeOf("combinations", i);
            checkName(combination.id, at + ".id", ids);
            for (const auto& [caseId, factor] : combination.factors) {
                checkText(caseId, at + ".factors");
                checkNumber(factor, at + ".factors." + caseId);
            }
        }
    }

    void checkMoving() {
        std::unordered_set<std::string> ids;
        for (std::size_t i = 0; i < truss_.moving.size(); ++i) {
            const MovingLoad& moving = truss_.moving[i];
            const std::string at = placeOf("moving", i);
            checkName(moving.id, at + ".id", ids);
            checkPath(moving.path, at + ".path");
            for (std::size_t k = 0; k < moving.axles.size(); ++k) {
                const std::string axle = placeOf(at + ".axles", k);
                checkNumber(moving.axles[k].at, axle + ".at");
                checkNumber(moving.axles[k].force, axle + ".force");
            }
        }
    }

    void checkClass() {
        const int digits = truss_.classSettings.digits;
        if (digits < 0 || digits > kMostDigits) {
            error(IssueCode::OutOfRange, "class.numbers.digits",
                  "must be from 0 to " + std::to_string(kMostDigits));
        }
    }

    const Truss& truss_;
    double shortest_ = 0;
    std::unordered_set<std::string> materials_;
    std::unordered_set<std::string> sections_;
    Issues errors_;
};

} // namespace

Issues errorsOf(const Truss& truss) {
    Examiner examiner(truss);
    examiner.examineAll();
    return examiner.take();
}

Findings validate(const Truss& truss) {
    Findings findings;
    findings.errors = errorsOf(truss);
    if (findings.errors.empty()) {
        findings.notes = suspicious(truss);
        for (Issue& note : leftOut(truss)) {
            findings.notes.push_back(std::move(note));
        }
    }
    return findings;
}

} // namespace gusset
