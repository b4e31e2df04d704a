#include "course/course.hpp"

#include "course/collecting.hpp"
#include "course/papers.hpp"
#include "course/setting.hpp"
#include "course/varying.hpp"
#include "desk/given.hpp"
#include "exchange/json/json_value.hpp"
#include "phrases/faults/exercises.hpp"
#include "report/results/solution_text.hpp"

#include <algorithm>
#include <array>

namespace gusset {

namespace {

struct Reply {
    std::string_view word; // under "do"
    Issues (*reply)(const CourseWish&, JsonText&);
};
constexpr std::array kReplies{
    Reply{"open", openForSetting}, Reply{"set", setExercise},    Reply{"form", makeFormFromNothing},
    Reply{"variants", makeSeries}, Reply{"handout", makeSheets}, Reply{"export", exportQuestions},
    Reply{"mark", markHandedIn},
};

// With its place, as a page of many fields must say which one it means.
std::string placedRefusal(const PhraseBook& book, const Issues& issues) {
    std::vector<std::string> faults;
    for (const Issue& issue : issues) {
        faults.push_back(faultLine(book, issue));
    }
    return refusal(faults);
}

} // namespace

std::string courseReply(const PhraseBook& book, std::string_view json, const CourseTold& told) {
    const Outcome<JsonValue> request = parseJson(json);
    if (!request) {
        return placedRefusal(book, request.issues());
    }
    const std::string word = textUnder(request.value(), "do");
    const auto reply = std::find_if(kReplies.begin(), kReplies.end(),
                                    [&](const Reply& one) { return one.word == word; });
    if (reply == kReplies.end()) {
        return placedRefusal(book, {{IssueCode::UnknownName, "do", phrase::kUnknownRequest}});
    }
    JsonText out(Layout::Compact);
    out.beginObject();
    const Issues faults = reply->reply({book, request.value(), told}, out);
    if (!faults.empty()) {
        return placedRefusal(book, faults);
    }
    out.endObject();
    return out.take();
}

} // namespace gusset
