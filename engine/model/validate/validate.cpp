#include "model/validate/validate.hpp"

#include "core/number.hpp"
#include "core/tolerance.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "model/truss/fields.hpp"
#include "model/truss/member_index.hpp"
#include "model/validate/characters.hpp"
#include "model/validate/findings.hpp"
#include "model/validate/name_table.hpp"
#include "model/validate/path_faults.hpp"
#include "phrases/faults/faults.hpp"

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
        examineTitle();
        examineJoints();
        examineMaterials();
        examineSections();
        examineMembers();
        examineSupports();
        examineLoads();
        examineCases();
        examineCombinations();
        examineMoving();
        examineClass();
        examineHeld();
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

    void examineNumber(double value, const Place& at) {
        if (!(std::abs(value) <= kLargestNumber)) {
            error(IssueCode::NotFinite, at, phrase::kNumberTooLarge);
        }
    }

    void examineLimits(double value, Limits limits, const Place& at) {
        if (limits == Limits::Size) {
            if (const auto fault = faultOfSize(value)) {
                error(IssueCode::OutOfRange, at, *fault);
            }
            return;
        }
        examineNumber(value, at);
        if (limits == Limits::Positive && value <= 0) {
            error(IssueCode::OutOfRange, at, phrase::kMustBePositive);
        }
    }

    void examineField(const FieldValue& field, const Place& at) {
        if (field.number) {
            examineLimits(*field.number, field.limits, at.key(field.key));
        }
    }
    template <class Table, class Thing>
    void examineNumbers(const Table& table, const Thing& thing, const Place& at) {
        eachField(table, thing, [&](const FieldValue& field) { examineField(field, at); });
    }
    template <class Thing>
    void examineNumbers(const Thing& thing, const Place& at) {
        examineNumbers(kFields<Thing>, thing, at);
    }

    // The same case may be named again, but only in the same characters.
    void examineCase(const std::string& name, const Place& at) {
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
    void examineName(const std::string& name, const Place& at, NameTable& taken) {
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

    bool examineJoint(JointId joint, const Place& at) {
        if (!joint.valid() || joint.at() >= truss_.joints.size()) {
            error(IssueCode::UnknownName, at, phrase::kNoSuchJoint);
            return false;
        }
        return true;
    }

    void examineTitle() {
        if (const auto fault = faultOfName(truss_.title, kLongestTitle);
            fault && !truss_.title.empty()) {
            error(IssueCode::OutOfRange, {nullptr, "title"},
                  statement(phrase::kThisTitle, {{"fault", *fault}}));
        }
    }

    void examineJoints() {
        NameTable labels(known_ ? 0 : truss_.joints.size());
        for (std::size_t i = 0; i < truss_.joints.size(); ++i) {
            const Joint& joint = truss_.joints[i];
            const Place at = Place{nullptr, "joints"}.item(i);
            examineName(joint.label, at.key("id"), labels);
            examineNumbers(joint, at);
        }
    }

    void examineMembers() {
        for (std::size_t i = 0; i < truss_.members.size(); ++i) {
            const Member& member = truss_.members[i];
            const Place at = Place{nullptr, "members"}.item(i);
            examineNumbers(member, at);
            examineFactors(member.factors, at.key("K"));
            if (!known_ && !member.section.empty() && !sections_.contains(member.section)) {
                error(IssueCode::UnknownName, at.key("section"),
                      statement(phrase::kNoSuchSection, {{"section", member.section}}));
            }
            if (examineJoint(member.a, at.key("a")) && examineJoint(member.b, at.key("b"))) {
                examineEnds(i, at);
            }
        }
    }

    void examineFactors(const LengthFactors& factors, const Place& at) {
        const CheckNumber& range = kCheckNumbers.front(); // of K for all members
        eachField(kFields<LengthFactors>, factors, [&](const FieldValue& field) {
            if (field.number && !(*field.number >= range.least && *field.number <= range.most)) {
                error(IssueCode::OutOfRange, at.key(field.key),
                      statement(phrase::kCheckNumberRange, {{"what", phrase::kFactorBucklingLength},
                                                            {"least", shortestNumber(range.least)},
                                                            {"most", shortestNumber(range.most)}}));
            }
        });
    }

    void examineHeld() {
        if (!truss_.checks.held) {
            return;
        }
        const Place at = Place{nullptr, "checks"};
        const Place held = at.key("held");
        std::unordered_set<int> seen;
        for (std::size_t i = 0; i < truss_.checks.held->size(); ++i) {
            const JointId joint = (*truss_.checks.held)[i];
            if (examineJoint(joint, held.item(i)) && !seen.insert(joint.index).second) {
                error(
                    IssueCode::Duplicate, held.item(i),
                    statement(phrase::kListedTwice, {{"joint", truss_.joints[joint.at()].label}}));
            }
        }
    }

    void examineEnds(std::size_t i, const Place& at) {
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

    void examineSupports() {
        for (std::size_t i = 0; i < truss_.supports.size(); ++i) {
            const Support& support = truss_.supports[i];
            const Place at = Place{nullptr, "supports"}.item(i);
            examineJoint(support.joint, at.key("joint"));
            examineNumbers(kRollerFields, support, at);
            const Place settle = at.key("settle");
            examineNumbers(kPinSettleFields, support, settle);
        }
    }

    void examineLoads() {
        for (std::size_t i = 0; i < truss_.loads.size(); ++i) {
            const Place at = Place{nullptr, "loads"}.item(i);
            examineCase(truss_.loads[i].caseId, at.key("case"));
            std::visit([&](const auto& load) { examineLoad(load, at); }, truss_.loads[i].what);
        }
    }

    template <class Force>
    void examineLoad(const Force& load, const Place& at) { // on one joint
        examineJoint(load.joint, at.key("joint"));
        examineNumbers(load, at);
    }
    void examineLoad(const ChordLoad& load, const Place& at) {
        examinePath(load.chord, at.key("chord"));
        examineNumbers(load, at);
    }
    void examineLoad(const MemberForce& load, const Place& at) {
        examineNumbers(load, at);
        const Place ends = at.key("member");
        if (!examineJoint(load.from, ends.item(0)) || !examineJoint(load.to, ends.item(1))) {
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
    void examineLoad(const SelfWeight&, const Place&) {}

    void examinePath(const std::vector<JointId>& path, const Place& at) {
        if (path.size() < 2) {
            error(IssueCode::Missing, at, phrase::kPathNeedsTwo);
        }
        std::unordered_set<int> seen;
        for (std::size_t i = 0; i < path.size(); ++i) {
            const Place place = at.item(i);
            if (examineJoint(path[i], place) && !seen.insert(path[i].index).second) {
                error(IssueCode::Duplicate, place,
                      statement(phrase::kTwiceInPath,
                                {{"joint", truss_.joints[path[i].at()].label}}));
            }
        }
    }

    void examineMaterials() {
        for (std::size_t i = 0; i < truss_.materials.size(); ++i) {
            const Material& material = truss_.materials[i];
            const Place at = Place{nullptr, "materials"}.item(i);
            examineName(material.id, at.key("id"), materials_);
            examineNumbers(material, at);
        }
    }

    void examineSections() {
        for (std::size_t i = 0; i < truss_.sections.size(); ++i) {
            const Section& section = truss_.sections[i];
            const Place at = Place{nullptr, "sections"}.item(i);
            examineName(section.id, at.key("id"), sections_);
            if (!known_ && !section.material.empty() && !materials_.contains(section.material)) {
                error(IssueCode::UnknownName, at.key("material"),
                      statement(phrase::kNoSuchMaterial, {{"material", section.material}}));
            }
            examineNumbers(section, at);
            examineShape(section, at);
            examineUse(section, at);
        }
    }

    // What a section says for its checks.
    void examineUse(const Section& section, const Place& at) {
        constexpr double kMostHoles = 100;
        if (!section.inPlane.empty() && section.inPlane != "strong" && section.inPlane != "weak") {
            error(IssueCode::OutOfRange, at.key("inPlane"),
                  statement(phrase::kInPlaneIsOne,
                            {{"key", "inPlane"}, {"a", "strong"}, {"b", "weak"}}));
        }
        if (section.lag && *section.lag > 1) {
            error(IssueCode::OutOfRange, at.key("lag"), phrase::kLagBeyondOne);
        }
        if (!section.holes) {
            return;
        }
        const Place holes = at.key("holes");
        examineNumbers(*section.holes, holes);
        const double count = section.holes->count;
        if (!(count >= 1 && count <= kMostHoles && count == std::floor(count))) {
            error(IssueCode::OutOfRange, holes.key("count"),
                  statement(phrase::kHolesNotWhole, {{"most", shortestNumber(kMostHoles)}}));
        }
    }

    void examineShape(const Section& section, const Place& at) {
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
            examineNumber(value, at.key(key));
        }
        if (const auto fault = faultOfDimensions(section)) {
            error(IssueCode::OutOfRange, at, *fault);
        }
    }

    void examineCases() {
        NameTable ids;
        for (std::size_t i = 0; i < truss_.cases.size(); ++i) {
            examineName(truss_.cases[i].id, Place{nullptr, "cases"}.item(i).key("id"), ids);
        }
    }

    void examineCombinations() {
        NameTable ids;
        for (std::size_t i = 0; i < truss_.combinations.size(); ++i) {
            const Combination& combination = truss_.combinations[i];
            const Place at = Place{nullptr, "combinations"}.item(i);
            examineName(combination.id, at.key("id"), ids);
            const Place factors = at.key("factors");
            for (const auto& [caseId, factor] : combination.factors) {
                examineCase(caseId, factors.key(caseId));
                examineNumber(factor, factors.key(caseId));
            }
        }
    }

    void examineMoving() {
        NameTable ids;
        for (std::size_t i = 0; i < truss_.moving.size(); ++i) {
            const MovingLoad& moving = truss_.moving[i];
            const Place at = Place{nullptr, "moving"}.item(i);
            examineName(moving.id, at.key("id"), ids);
            examinePath(moving.path, at.key("path"));
            examineAxles(moving.axles, at.key("axles"));
            if (moving.uniform) {
                examineNumbers(*moving.uniform, at.key("uniform"));
            } else if (moving.axles.empty()) {
                error(IssueCode::Missing, at, phrase::kMovesNothing);
            }
        }
    }

    void examineAxles(const std::vector<Axle>& axles, const Place& at) {
        std::unordered_set<double> places;
        for (std::size_t i = 0; i < axles.size(); ++i) {
            const Place place = at.item(i);
            examineNumbers(axles[i], place);
            if (!places.insert(axles[i].at).second) {
                error(IssueCode::Duplicate, place.key("at"), phrase::kAxlesMeet);
            }
        }
    }

    void examineClass() {
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
