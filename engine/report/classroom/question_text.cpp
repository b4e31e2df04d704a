#include "report/classroom/question_text.hpp"

#include "phrases/classroom/practice.hpp"

namespace gusset {

namespace {

struct QuestionWords {
    const Writer& writer;

    std::string labelAt(JointId id) const { return writer.truss.joints[id.at()].label; }

    std::string operator()(const AskReactions&) const {
        return sayPlain(writer, phrase::kAskReactions);
    }
    std::string operator()(const AskForces&) const { return sayPlain(writer, phrase::kAskForces); }
    std::string operator()(const AskZeroMembers&) const {
        return sayPlain(writer, phrase::kAskZeroMembers);
    }
    std::string operator()(const AskDeterminacy&) const {
        return sayPlain(writer, phrase::kAskDeterminacy);
    }
    std::string operator()(const AskDisplacement& asked) const {
        return sayPlain(
            writer, asked.axis == Axis::X ? phrase::kAskDisplacementX : phrase::kAskDisplacementY,
            {{"joint", labelAt(asked.joint)}});
    }
    std::string operator()(const AskInfluence& asked) const {
        std::string path;
        for (const JointId joint : asked.path) {
            path += (path.empty() ? "" : "–") + labelAt(joint);
        }
        return sayPlain(writer, phrase::kAskInfluence,
                        {{"joint", labelAt(asked.at)},
                         {"member", memberName(writer.truss, asked.of)},
                         {"path", path}});
    }
    std::string operator()(const AskSteps&) const { return sayPlain(writer, phrase::kAskSteps); }
};

} // namespace

std::string questionText(const Writer& writer, const Question& question) {
    return std::visit(QuestionWords{writer}, question.what);
}

} // namespace gusset
