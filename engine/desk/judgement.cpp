#include "desk/judgement.hpp"

#include "classroom/practice/standing.hpp"
#include "phrases/classroom/practice.hpp"

#include <algorithm>

namespace gusset {

namespace {

// A body that could have been used: all its other forces are written.
bool isUsable(const Writer& writer, const MarkedForce& marked, const Answers& answers) {
    const Standing standing =
        standingOfPart(structureOf(writer.truss), foundIn(answers), marked.body);
    return !marked.body.empty() && standing.unknowns.empty();
}

std::string slipText(const Writer& writer, const MarkedForce& marked, const Answers& answers) {
    if (!isUsable(writer, marked, answers)) {
        return sayPlain(writer, phrase::kCheckNotRight);
    }
    const std::size_t joints = marked.body.size();
    if (joints == 1) {
        const std::string where =
            sayPlain(writer, phrase::kTheJoint,
                     {{"joint", writer.truss.joints[marked.body.front().at()].label}});
        return sayPlain(writer, phrase::kCheckSlipAt, {{"where", where}});
    }
    if (joints == writer.truss.joints.size()) {
        return sayPlain(writer, phrase::kCheckSlipAt,
                        {{"where", sayPlain(writer, phrase::kTheWholeTruss)}});
    }
    return sayPlain(writer, phrase::kCheckSlip);
}

} // namespace

std::string checkText(const Writer& writer, const MarkedForce& marked, const WrittenForce& written,
                      const Answers& answers) {
    switch (marked.verdict) {
    case Verdict::Right:
        return sayPlain(writer, phrase::kCheckRight);
    case Verdict::Unsupported:
        return sayPlain(writer, phrase::kCheckUnsupported);
    case Verdict::Carried:
        return sayPlain(writer, phrase::kCheckCarried);
    case Verdict::Slip:
        return slipText(writer, marked, answers);
    case Verdict::Blank:
        break;
    }
    return isBlank(written) ? std::string() : sayPlain(writer, phrase::kCheckHalf);
}

std::vector<CheckedQuestion> checkedQuestions(const Writer& writer, const DeskRequest& request,
                                              const AnswerKey& key, const Marking& marking) {
    const Answers& answers = request.answers;
    std::vector<CheckedQuestion> checked;
    for (std::size_t i = 0; i < request.exercise->questions.size(); ++i) {
        const auto& what = request.exercise->questions[i].what;
        bool isWritten = answers.values[i].has_value();
        bool isRight = marking.questions[i].marks == marking.questions[i].outOf;
        if (std::holds_alternative<AskDeterminacy>(what)) {
            isWritten = answers.degree.has_value();
            isRight = answers.degree == key.degree;
        } else if (std::holds_alternative<AskZeroMembers>(what)) {
            isWritten = std::any_of(answers.zeros.begin(), answers.zeros.end(),
                                    [](const std::optional<bool>& zero) { return zero == true; });
            isRight = std::equal(answers.zeros.begin(), answers.zeros.end(), key.forces.begin(),
                                 key.forces.end(), [](const std::optional<bool>& zero, double f) {
                                     return (zero == true) == (f == 0);
                                 });
        }
        if (isWritten) {
            checked.push_back(
                {i, isRight,
                 sayPlain(writer, isRight ? phrase::kCheckRight : phrase::kCheckNotRight)});
        }
    }
    return checked;
}

} // namespace gusset
