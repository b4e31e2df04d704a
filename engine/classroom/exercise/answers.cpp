#include "classroom/exercise/answers.hpp"

namespace gusset {

bool isBlank(const WrittenForce& given) { return !given.size && !given.sign; }

bool isContradictory(const WrittenForce& given) {
    return given.sign == 0 && given.size.value_or(0) != 0;
}

std::optional<double> valueOf(const WrittenForce& given) {
    if (isContradictory(given)) {
        return std::nullopt;
    }
    if (given.sign == 0 || given.size == 0.0) {
        return 0.0;
    }
    return given.size && given.sign ? std::optional(*given.size * *given.sign) : std::nullopt;
}

std::vector<MemberId> allMembers(const Truss& truss) {
    std::vector<MemberId> members;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        members.push_back({static_cast<int>(i)});
    }
    return members;
}

Answers blankAnswers(const Truss& truss, const Exercise& exercise) {
    Answers answers;
    answers.variant = exercise.variant;
    for (const Support& support : truss.supports) {
        answers.reactions.resize(answers.reactions.size() +
                                 (support.kind == SupportKind::Pin ? 2 : 1));
    }
    answers.forces.resize(truss.members.size());
    answers.zeros.resize(truss.members.size());
    answers.values.resize(exercise.questions.size());
    return answers;
}

} // namespace gusset
