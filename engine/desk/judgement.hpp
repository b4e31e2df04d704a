#pragma once
// What is said of a student's answers: while practising, and when they are marked. Private to desk.

#include "classroom/marking/marking.hpp"
#include "desk/request.hpp"
#include "report/text/writer.hpp"

#include <string>
#include <vector>

namespace gusset {

[[nodiscard]] constexpr bool isRight(Verdict verdict) {
    return verdict == Verdict::Right || verdict == Verdict::Unsupported;
}
// Of one answer, without giving it away; empty if it is blank.
[[nodiscard]] std::string checkText(const Writer&, const MarkedForce&, const WrittenForce&,
                                    const Answers&);

// A question that is answered as a whole: by naming members, by a count, by one value.
struct CheckedQuestion {
    std::size_t question = 0; // of the exercise
    bool isRight = false;
    std::string says;
};
// Of those that are answered, in order.
[[nodiscard]] std::vector<CheckedQuestion> checkedQuestions(const Writer&, const DeskRequest&,
                                                            const AnswerKey&, const Marking&);

} // namespace gusset
