#include "exchange/drawings/passed_over.hpp"

#include "exchange/drawings/some_of_each.hpp"
#include "phrases/faults/drawings.hpp"
#include "phrases/faults/reading.hpp"

namespace gusset {

namespace {

auto sentenceOf(WhyPassed why) {
    switch (why) {
    case WhyPassed::Curve:
        return phrase::kCurvesPassed;
    case WhyPassed::Text:
        return phrase::kTextPassed;
    case WhyPassed::Space:
        return phrase::kSpacePassed;
    case WhyPassed::Paper:
        return phrase::kPaperPassed;
    case WhyPassed::InBlock:
        return phrase::kBlocksPassed;
    case WhyPassed::Hidden:
        return phrase::kHiddenPassed;
    case WhyPassed::Copy:
        return phrase::kCopiesPassed;
    case WhyPassed::Other:
        break;
    }
    return phrase::kOthersPassed;
}

} // namespace

Issues PassedOver::notes() const {
    SomeOfEach notes;
    for (const auto& [kind, count] : counts_) {
        notes.add({IssueCode::NotComputed,
                   kind.first.empty() ? Statement(phrase::kPlaceFile) : Statement(kind.first),
                   statement(sentenceOf(kind.second), {{"n", count}})});
    }
    return notes.take();
}

} // namespace gusset
