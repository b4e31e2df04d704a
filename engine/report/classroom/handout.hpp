#pragma once
// An exercise on paper: for students the truss, the questions, blanks and room for the working; for
// the teacher the same blanks filled in, with the working in the class's notation or without. A
// code stands where a name would: that of a variant, or one that the student writes.

#include "classroom/exercise/exercise.hpp"
#include "core/outcome.hpp"
#include "report/sheet/sheet_choices.hpp"
#include "report/text/writer.hpp"

#include <string>

namespace gusset {

enum class HandoutKind { Questions, Key, Answers };

struct HandoutChoices {
    HandoutKind kind = HandoutKind::Questions;
    SheetSize size = SheetSize::A4;
    std::string link{}; // the whole address of the exercise; empty: none on the sheet
};

// One exercise, as an <article> that begins on a new page. Issues as of keyOf, also for a sheet of
// questions: one without answers is given to nobody.
[[nodiscard]] Outcome<std::string> handoutSheet(const Writer&, const Exercise&,
                                                const HandoutChoices&);
// The page around the sheets; `writer`: of the first, whose title is the document's.
[[nodiscard]] std::string handoutHtml(const Writer&, const std::string& sheets,
                                      const HandoutChoices&);

} // namespace gusset
