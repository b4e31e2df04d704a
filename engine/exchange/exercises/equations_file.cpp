#include "exchange/exercises/equations_file.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "classroom/practice/chosen_body.hpp"
#include "phrases/faults/exercises.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr const char* kEquations = "equations";
constexpr std::size_t kMostEquations = 500;
constexpr WordList kSums{"x", "y", "moments", "", ""};
constexpr WordList kAxes{"x", "y", "", "", ""};
constexpr WordList kTermSigns{"-", "+", "", "", ""};
constexpr WordList kMultipliers{"whole", "sine", "cosine", "arm", ""};

class EquationReader {
public:
    EquationReader(const Truss& truss, IssueList& issues)
        : truss_(truss), structure_(structureOf(truss)), reactions_(reactionNames(truss)),
          members_(answerNames(truss)), issues_(issues) {}

    WrittenEquation read(ObjectReader& object) {
        WrittenEquation equation;
        equation.body.joint = joint(object, "joint");
        for (const JsonValue& name : object.list("cut")) {
            const auto found = std::find(members_.begin(), members_.end(), name.text);
            if (found == members_.end()) {
                noSuch(object.placeOf("cut"), name.text);
            } else {
                equation.body.cut.push_back({static_cast<int>(found - members_.begin())});
            }
        }
        equation.body.part = joint(object, "part");
        equation.sum = static_cast<SumKind>(object.word("sum", kSums, 0));
        equation.about = joint(object, "about");
        if (equation.sum == SumKind::Moments && !equation.about.valid()) {
            issues_.error(IssueCode::Missing, object.placeOf("about"), phrase::kMomentsNeedCentre);
        }
        if (!jointsOf(structure_, equation.body)) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("cut"), phrase::kCutPartsNothing);
        }
        const std::vector<JsonValue>& terms = object.list("terms");
        for (std::size_t i = 0; i < terms.size() && !issues_.isFull(); ++i) {
            ObjectReader term(terms[i], object.placeOf("terms") + "[" + std::to_string(i) + "]",
                              issues_);
            equation.terms.push_back(readTerm(term));
        }
        return equation;
    }

private:
    void noSuch(const std::string& place, const std::string& name) {
        issues_.error(IssueCode::UnknownName, place,
                      statement(phrase::kNoSuchAnswer, {{"name", name}}));
    }

    JointId joint(ObjectReader& object, std::string_view key) {
        std::string label;
        object.read(key, false, label);
        const JointId found = label.empty() ? JointId{} : findJoint(truss_, label);
        if (!label.empty() && !found.valid()) {
            noSuch(object.placeOf(key), label);
        }
        return found;
    }

    std::optional<MemberOrRestraint> force(ObjectReader& object) {
        std::string name;
        object.read("of", false, name);
        if (name.empty()) {
            return std::nullopt;
        }
        const auto member = std::find(members_.begin(), members_.end(), name);
        if (member != members_.end()) {
            return MemberId{static_cast<int>(member - members_.begin())};
        }
        const auto reaction = std::find(reactions_.begin(), reactions_.end(), name);
        if (reaction != reactions_.end()) {
            return RestraintId{static_cast<int>(reaction - reactions_.begin())};
        }
        noSuch(object.placeOf("of"), name);
        return std::nullopt;
    }

    WrittenTerm readTerm(ObjectReader& object) {
        WrittenTerm term;
        term.of = force(object);
        term.at = joint(object, "load");
        term.along = static_cast<SumKind>(object.word("along", kAxes, 0));
        term.term.sign = object.word("sign", kTermSigns, 1) == 0 ? -1 : 1;
        term.term.by = static_cast<Multiplier>(object.word("by", kMultipliers, 0));
        object.read("arm", false, term.term.arm);
        if (term.term.arm < 0) {
            issues_.error(IssueCode::OutOfRange, object.placeOf("arm"), phrase::kSizeNotNegative);
        }
        return term;
    }

    const Truss& truss_;
    Structure structure_;
    std::vector<std::string> reactions_;
    std::vector<std::string> members_;
    IssueList& issues_;
};

class EquationWriter {
public:
    EquationWriter(const Truss& truss, JsonText& out)
        : truss_(truss), reactions_(reactionNames(truss)), members_(answerNames(truss)), out_(out) {
    }

    void write(const WrittenEquation& equation) {
        joint("joint", equation.body.joint);
        std::vector<std::string> cut;
        for (const MemberId member : equation.body.cut) {
            cut.push_back(members_[member.at()]);
        }
        if (!cut.empty()) {
            out_.texts("cut", cut);
            joint("part", equation.body.part);
        }
        out_.text("sum", wordOf(kSums, equation.sum));
        joint("about", equation.about);
        out_.objects("terms", equation.terms, [&](const WrittenTerm& term) { write(term); });
    }

private:
    void joint(std::string_view key, JointId joint) {
        if (joint.valid()) {
            out_.text(key, truss_.joints[joint.at()].label);
        }
    }

    void write(const WrittenTerm& written) {
        if (written.of) {
            const auto* member = std::get_if<MemberId>(&*written.of);
            out_.text("of", member ? members_[member->at()]
                                   : reactions_[std::get<RestraintId>(*written.of).at()]);
        } else {
            joint("load", written.at);
            out_.text("along", wordOf(kAxes, written.along));
        }
        out_.text("sign", written.term.sign < 0 ? kTermSigns[0] : kTermSigns[1]);
        if (written.term.by != Multiplier::Whole) {
            out_.text("by", wordOf(kMultipliers, written.term.by));
        }
        if (written.term.by == Multiplier::Arm) {
            out_.number("arm", written.term.arm);
        }
    }

    const Truss& truss_;
    std::vector<std::string> reactions_;
    std::vector<std::string> members_;
    JsonText& out_;
};

} // namespace

std::vector<WrittenEquation> readEquations(const Truss& truss, ObjectReader& answers) {
    const std::vector<JsonValue>& items = answers.list(kEquations);
    std::vector<WrittenEquation> equations;
    EquationReader reader(truss, answers.issues());
    for (std::size_t i = 0; i < items.size() && i < kMostEquations; ++i) {
        ObjectReader item(items[i], std::string(kEquations) + "[" + std::to_string(i) + "]",
                          answers.issues());
        equations.push_back(reader.read(item));
    }
    return equations;
}

void writeEquations(const Truss& truss, const std::vector<WrittenEquation>& equations,
                    JsonText& out) {
    if (equations.empty()) {
        return;
    }
    EquationWriter writer(truss, out);
    out.objects(kEquations, equations,
                [&](const WrittenEquation& equation) { writer.write(equation); });
}

} // namespace gusset
