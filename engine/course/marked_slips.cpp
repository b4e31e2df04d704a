#include "course/marked_slips.hpp"

#include "classroom/exercise/answer_names.hpp"
#include "report/classroom/marking_text.hpp"
#include "report/classroom/own_equation.hpp"
#include "report/text/math_ml.hpp"

namespace gusset {

namespace {

class SlipWriter {
public:
    SlipWriter(JsonText& out, const Writer& writer)
        : out_(out), writer_(writer), reactions_(reactionNames(writer.truss)),
          members_(answerNames(writer.truss)) {
        nothing_.structure = structureOf(writer.truss);
    }

    void write(const Slip& slip) {
        out_.text("kind", slipName(writer_, slip.kind));
        std::vector<std::string> joints;
        for (const JointId joint : slip.body) {
            joints.push_back(labelOf(joint));
        }
        out_.texts("body", joints);
        std::vector<std::string> answers;
        for (const MemberOrRestraint& answer : slip.answers) {
            answers.push_back(nameOf(answer));
        }
        out_.texts("answers", answers);
        out_.objects("equations", slip.equations,
                     [&](const OwnEquation& equation) { write(equation); });
    }

private:
    const std::string& labelOf(JointId joint) const {
        return writer_.truss.joints[joint.at()].label;
    }
    const std::string& nameOf(const MemberOrRestraint& of) const {
        const auto* member = std::get_if<MemberId>(&of);
        return member ? members_[member->at()] : reactions_[std::get<RestraintId>(of).at()];
    }

    void write(const OwnEquation& equation) {
        const Notation notation = notationOf(writer_, nothing_);
        out_.text("says", mathMl(ownEquationFormula(notation, equation)));
        out_.text("sum", equation.kind == EquationKind::SumX   ? "x"
                         : equation.kind == EquationKind::SumY ? "y"
                                                               : "moments");
        if (equation.about.valid()) {
            out_.text("about", labelOf(equation.about));
        }
        out_.text("of", nameOf(equation.of));
        out_.result("written", equation.written);
        out_.result("gives", equation.gives);
        out_.result("left", equation.left);
        out_.objects("terms", equation.terms, [&](const OwnTerm& term) {
            if (term.of) {
                out_.text("of", nameOf(*term.of));
            }
            out_.text("at", labelOf(term.at));
            out_.result("x", term.along.x);
            out_.result("y", term.along.y);
            out_.result("value", term.value);
            out_.result("factor", term.factor);
        });
    }

    JsonText& out_;
    const Writer& writer_;
    std::vector<std::string> reactions_;
    std::vector<std::string> members_;
    Working nothing_; // worked out: only its names are used
};

} // namespace

void writeSlips(JsonText& out, const Writer& writer, const Marking& marking) {
    SlipWriter slips(out, writer);
    out.objects("slips", marking.slips, [&](const Slip& slip) { slips.write(slip); });
    if (marking.isOfFewSlips) {
        out.yes("fewSlips");
    }
}

} // namespace gusset
