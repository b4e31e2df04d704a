#include "model/validate/validate.hpp"

#include "core/tolerance.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/truss/fields.hpp"
#include "model/truss/member_index.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/name_table.hpp"
#include "model/validate/path_faults.hpp"
#include "phrases/faults.hpp"

#include <algorithm>
#include <cmath>
#include <unordered_set>
#include <utility>

namespace gusset {

namespace {

class Examiner {
public:
    Examiner(const Truss& truss, Names names)
        : truss_(truss), known_(names == Names::Sound), index_(indexOfMembers(truss)) {
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
        for (const Issue& fault : faultsOf(truss_.checks)) {
            if (errors_.size() < kMostIssues) {
                errors_.push_back(fault);
            }
        }
    }

    [[nodiscard]] Issues take() { return std::move(errors_); }

private:
    void error(IssueCode code, const Place& at, Statement says) {
        if (errors_.size() < kMostIssues) {
            errors_.push_back({code, spelled(at.text()), spelledOut(std::move(says))});
        }
    }

    void checkNumber(double value, const Place& at) {
        if (!(std::abs(value) <= kLargestNumber)) {
            error(IssueCode::NotFinite, at, phrase::kNumberTooLarge);
        }
    }

    void checkLimits(double value, Limits limits, const Place& at) {
        if (limits == Limits::Size) {
            if (const auto fault = faultOfSize(value)) {
                error(IssueCode::OutOfRange, at, *fault);
            }
            return;
        }
        checkNumber(value, at);
        if (limits == Limits::Positive && value <= 0) {
            error(IssueCode::OutOfRange, at, phrase::kMustBePositive);
        }
    }

    void checkField(const FieldValue& field, const Place& at) {
        if (field.number) {
            checkLimits(*field.number, field.limits, at.key(field.key));
        }
    }
    template <class Table, class Thing>
    void checkNumbers(const Table& table, const Thing& thing, const Place& at) {
        eachField(table, thing, [&](const FieldValue& field) { checkField(field, at); });
    }
    template <class Thing>
    void checkNumbers(const Thing& thing, const Place& at) {
        checkNumbers(kFields<Thing>, thing, at);
    }

    // The same case may be named again, but only in the same characters.
    void checkCase(const std::string& name, const Place& at) {
        if (known_) {
            return;
        }
        if (name.empty()) {
            cases_.add(kDefaultCase);
        } else if (const auto fault = faultOfName(name, kLongestLabel)) {
            error(IssueCode::OutOfRange, at, statement(phrase::kThisName, {{"fault", *fault}}));
        } else if (const auto other = cases_.add(name); other && *other != name) {
            lookAlike(name, *other, at);
        }
    }

    void lookAlike(std::string_view name, std::string_view other, const Place& at) {
        error(IssueCode::Duplicate, at,
              statement(phrase::kNameLooksSame, {{"name", name}, {"other", other}}));
    }

    // A name that other things refer to: present, valid and unique in its list.
    void checkName(const std::string& name, const Place& at, NameTable& taken) {
        if (known_) {
            return;
        }
        if (const auto fault = faultOfName(name, kLongestLabel)) {
            error(name.empty() ? IssueCode::Missing : IssueCode::OutOfRange, at,
                  statement(phrase::kThisName, {{"fault", *fault}}));
        } else if (const auto other = taken.add(name); other && *other != name) {
            lookAlike(name, *other, at);
        } else if (other) {
            error(IssueCode::Duplicate, at, statement(phrase::kNameTaken, {{"name", name}}));
        }
    }

    bool checkJoint(JointId joint, const Place& at) {
        if (!joint.valid() || joint.at() >= truss_.joints.size()) {
            error(IssueCode::UnknownName, at, phrase::kNoSuchJoint);
            return false;
        }
        return true;
    }

    void checkTitle() {
        if (const auto fault = faultOfName(truss_.title, kLongestTitle);
            fault && !truss_.title.empty()) {
            error(IssueCode::OutOfRange, {nullptr, "title"},
                  statement(phrase::kThisTitle, {{"fault", *fault}}));
        }
    }

    void checkJoints() {
        NameTable labels(known_ ? 0 : truss_.joints.size());
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            const Joint& joint = truss_.joints[i];
            const Place at = Place{nullptr, "joints"}.item(i);
            checkName(joint.label, at.key("id"), labels);
            checkNumbers(joint, at);
        }
    }

    void checkMembers() {
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            const Member& member = truss_.members[i];
            const Place at = Place{nullptr, "members"}.item(i);
            checkNumbers(member, at);
            if (!known_ && !member.section.empty() && !sections_.contains(member.section)) {
                error(IssueCode::UnknownName, at.key("section"),
                      statement(phrase::kNoSuchSection, {{"section", member.section}}));
            }
            if (checkJoint(member.a, at.key("a")) && checkJoint(member.b, at.key("b"))) {
                checkEnds(i, at);
            }
        }
    }

    void checkEnds(std::size_t i, const Place& at) {
        const Member& member = truss_.members[i];
        const MemberId id{static_cast<int>(i)};
        if (member.a == member.b) {
            error(
                IssueCode::ZeroLength, at,
                statement(phrase::kOneJointTwice, {{"joint", truss_.joints[member.a.at()].label}}));
            return;
        }
        if (!(length(memberVector(truss_, id)) > shortest_)) {
            error(IssueCode::ZeroLength, at,
                  statement(phrase::kNoLength, {{"member", memberName(truss_, id)}}));
        }
        if (!known_ && !index_.add(member, id)) {
            error(IssueCode::Duplicate, at,
                  statement(phrase::kMemberTwice,
                            {{"member", memberName(truss_, id)},
                             {"place", placeOf("members", index_.find(member.a, member.b).at())}}));
        }
    }

    void checkSupports() {
        for (std::size_t i = 0; i < truss_.supports.size(); ++i) {
            const Support& support = truss_.supports[i];
            const Place at = Place{nullptr, "supports"}.item(i);
            checkJoint(support.joint, at.key("joint"));
            checkNumbers(kRollerFields, support, at);
            const Place settle = at.key("settle");
            checkNumbers(kPinSettleFields, support, settle);
        }
    }

    void checkLoads() {
        for (std::size_t i = 0; i < truss_.loads.size(); ++i) {
            const Place at = Place{nullptr, "loads"}.item(i);
            checkCase(truss_.loads[i].caseId, at.key("case"));
            std::visit([&](const auto& load) { checkLoad(load, at); }, truss_.loads[i].what);
        }
    }

    template <class Force>
    void checkLoad(const Force& load, const Place& at) { // on one joint
        checkJoint(load.joint, at.key("joint"));
        checkNumbers(load, at);
    }
    void checkLoad(const ChordLoad& load, const Place& at) {
        checkPath(load.chord, at.key("chord"));
        checkNumbers(load, at);
    }
    void checkLoad(const MemberForce& load, const Place& at) {
        checkNumbers(load, at);
        const Place ends = at.key("member");
        if (!checkJoint(load.from, ends.item(0)) || !checkJoint(load.to, ends.item(1))) {
            return;
        }
        const MemberId member = index_.find(load.from, load.to);
        if (!member.valid()) {
            error(IssueCode::UnknownName, at.key("member"),
                  statement(phrase::kNoMemberJoins, {{"a", truss_.joints[load.from.at()].label},
                                                     {"b", truss_.joints[load.to.at()].label}}));
        } else if (load.at < 0 || load.at > length(memberVector(truss_, member)) + shortest_) {
            error(IssueCode::OutOfRange, at.key("at"),
                  statement(phrase::kBeyondEnd, {{"member", memberName(truss_, member)},
                                                 {"joint", truss_.joints[load.from.at()].label}}));
        }
    }
    void checkLoad(const SelfWeight&, const Place&) {}

    void checkPath(const std::vector<JointId>& path, const Place& at) {
        if (path.size() < 2) {
            error(IssueCode::Missing, at, phrase::kPathNeedsTwo);
        }
        std::unordered_set<int> seen;
        for (std::size_t i = 0; i < path.size(); ++i) {
            const Place place = at.item(i);
            if (checkJoint(path[i], place) && !seen.insert(path[i].index).second) {
                error(IssueCode::Duplicate, place,
                      statement(phrase::kTwiceInPath,
                                {{"joint", truss_.joints[path[i].at()].label}}));
            }
        }
    }

    void checkMaterials() {
        for (std::size_t i = 0; i < truss_.materials.size(); ++i) {
            const Material& material = truss_.materials[i];
            const Place at = Place{nullptr, "materials"}.item(i);
            checkName(material.id, at.key("id"), materials_);
            checkNumbers(material, at);
        }
    }

    void checkSections() {
        for (std::size_t i = 0; i < truss_.sections.size(); ++i) {
            const Section& section = truss_.sections[i];
            const Place at = Place{nullptr, "sections"}.item(i);
            checkName(section.id, at.key("id"), sections_);
            if (!known_ && !section.material.empty() && !materials_.contains(section.material)) {
                error(IssueCode::UnknownName, at.key("material"),
                      statement(phrase::kNoSuchMaterial, {{"material", section.material}}));
            }
            checkNumbers(section, at);
            checkShape(section, at);
        }
    }

    void checkShape(const Section& section, const Place& at) {
        if (section.shape.empty()) {
            return;
        }
        if (!findSectionShape(section.shape)) {
            std::string known;
            for (const SectionShape& shape : sectionShapes()) {
                known += (known.empty() ? "" : ", ") + std::string(shape.name);
            }
            error(IssueCode::OutOfRange, at.key("shape"),
                  statement(phrase::kNoSuchShape, {{"shape", section.shape}, {"shapes", known}}));
            return;
        }
        for (const auto& [key, value] : section.dimensions) {
            checkNumber(value, at.key(key));
        }
        if (const auto fault = faultOfDimensions(section)) {
            error(IssueCode::OutOfRange, at, *fault);
        }
    }

    void checkCombinations() {
        NameTable ids;
        for (std::size_t i = 0; i < truss_.combinations.size(); ++i) {
            const Combination& combination = truss_.combinations[i];
            const Place at = Place{nullptr, "combinations"}.item(i);
            checkName(combination.id, at.key("id"), ids);
            const Place factors = at.key("factors");
            for (const auto& [caseId, factor] : combination.factors) {
                checkCase(caseId, factors.key(caseId));
                checkNumber(factor, factors.key(caseId));
            }
        }
    }

    void checkMoving() {
        NameTable ids;
        for (std::size_t i = 0; i < truss_.moving.size(); ++i) {
            const MovingLoad& moving = truss_.moving[i];
            const Place at = Place{nullptr, "moving"}.item(i);
            checkName(moving.id, at.key("id"), ids);
            checkPath(moving.path, at.key("path"));
            checkAxles(moving.axles, at.key("axles"));
            if (moving.uniform) {
                checkNumbers(*moving.uniform, at.key("uniform"));
            } else if (moving.axles.empty()) {
                error(IssueCode::Missing, at, phrase::kMovesNothing);
            }
        }
    }

    void checkAxles(const std::vector<Axle>& axles, const Place& at) {
        std::unordered_set<double> places;
        for (std::size_t i = 0; i < axles.size(); ++i) {
            const Place place = at.item(i);
            checkNumbers(axles[i], place);
            if (!places.insert(axles[i].at).second) {
                error(IssueCode::Duplicate, place.key("at"), phrase::kAxlesMeet);
            }
        }
    }

    void checkClass() {
        const int digits = truss_.classSettings.digits;
        if (digits < 0 || digits > kMostDigits) {
            error(IssueCode::OutOfRange, {nullptr, "class.numbers.digits"},
                  statement(phrase::kMustBeUpTo, {{"most", kMostDigits}}));
        }
    }

    // Filled as the members are checked; built at once when they are known to be valid.
    [[nodiscard]] MemberIndex indexOfMembers(const Truss& truss) const {
        const auto isBetween = [](const Load& load) {
            return std::holds_alternative<MemberForce>(load.what);
        };
        if (!known_) {
            return MemberIndex(truss.members.size());
        }
        const bool used = std::any_of(truss.loads.begin(), truss.loads.end(), isBetween);
        return used ? MemberIndex(truss) : MemberIndex();
    }

    const Truss& truss_;
    const bool known_; // names and references to them
    double shortest_ = 0;
    MemberIndex index_;
    NameTable materials_;
    NameTable sections_;
    NameTable cases_;
    Issues errors_;
};

} // namespace

Issues errorsOf(const Truss& truss, Names names) {
    Examiner examiner(truss, names);
    examiner.examineAll();
    return examiner.take();
}

Findings validate(const Truss& truss) {
    Findings findings;
    findings.errors = errorsOf(truss);
    if (findings.errors.empty()) {
        findings.notes = notesOf(truss, suspicious(truss));
    }
    return findings;
}

Issues notesOf(const Truss& truss, Issues suspicions) {
    for (Issues more : {pathNotes(truss), leftOut(truss)}) {
        suspicions.insert(suspicions.end(), more.begin(), more.end());
    }
    return suspicions;
}

} // namespace gusset
