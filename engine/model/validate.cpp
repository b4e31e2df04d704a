#include "model/validate.hpp"

#include "core/tolerance.hpp"
#include "model/findings.hpp"
#include "model/member_index.hpp"
#include "model/path_faults.hpp"
#include "model/section_shapes.hpp"

#include <algorithm>
#include <cmath>
#include <unordered_set>

namespace gusset {

namespace {

std::string quoted(const std::string& name) { return "\"" + name + "\""; }

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
                checkEnds(i);
            }
        }
    }

    void checkEnds(std::size_t i) {
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
        if (!index_.add(member, id)) {
            error(IssueCode::Duplicate, at,
                  "member " + memberName(truss_, id) + " is there already as " +
                      placeOf("members", index_.find(member.a, member.b).at()) +
                      ": remove one of the two");
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
    void checkLoad(const MemberForce& load, const std::string& at) {
        checkNumber(load.at, at + ".at");
        checkNumber(load.fx, at + ".fx");
        checkNumber(load.fy, at + ".fy");
        if (!checkJoint(load.from, at + ".member[0]") || !checkJoint(load.to, at + ".member[1]")) {
            return;
        }
        const MemberId member = index_.find(load.from, load.to);
        if (!member.valid()) {
            error(IssueCode::UnknownName, at + ".member",
                  "no member joins " + quoted(truss_.joints[load.from.at()].label) + " and " +
                      quoted(truss_.joints[load.to.at()].label) + ": name one that is there");
        } else if (load.at < 0 || load.at > length(memberVector(truss_, member)) + shortest_) {
            error(IssueCode::OutOfRange, at + ".at",
                  "lies beyond the end of member " + memberName(truss_, member) +
                      ": it counts from joint " + quoted(truss_.joints[load.from.at()].label));
        }
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
            checkAxles(moving.axles, at + ".axles");
            if (moving.uniform) {
                checkNumber(moving.uniform->perLength, at + ".uniform.perLength");
                checkPositive(moving.uniform->length, at + ".uniform.length");
            } else if (moving.axles.empty()) {
                error(IssueCode::Missing, at, "has no load: give it \"axles\" or \"uniform\"");
            }
        }
    }

    void checkAxles(const std::vector<Axle>& axles, const std::string& at) {
        std::unordered_set<double> places;
        for (std::size_t i = 0; i < axles.size(); ++i) {
            const std::string place = placeOf(at, i);
            checkNumber(axles[i].at, place + ".at");
            checkNumber(axles[i].force, place + ".force");
            if (!places.insert(axles[i].at).second) {
                error(IssueCode::Duplicate, place + ".at",
                      "another axle stands at the same place: make them one with both forces");
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
    MemberIndex index_;
    std::unordered_set<std::string> materials_;
    std::unordered_set<std::string> sections_;
    Issues errors_;
};

} // namespace

namespace {

// Not errors: a member may be redrawn under a path that is to stay.
void addPathNotes(const Truss& truss, Issues& notes) {
    if (truss.moving.empty()) {
        return;
    }
    const MemberIndex members(truss);
    for (std::size_t i = 0; i < truss.moving.size() && notes.size() < kMostIssues; ++i) {
        const std::string at = placeOf("moving", i) + ".path";
        if (const auto fault = faultOfPath(truss, members, truss.moving[i].path, at)) {
            notes.push_back(*fault);
        }
    }
}

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
        addPathNotes(truss, findings.notes);
        for (Issue& note : leftOut(truss)) {
            findings.notes.push_back(std::move(note));
        }
    }
    return findings;
}

} // namespace gusset
