#pragma once
// The key "lesson" of a model file, which Truss::lesson holds as text:
//
// { "shows": [ { "of": "forces", "without": ["count"], "joined": ["joint-sum A x"],
//                "order": ["B", "A"],
//                "pauses": [ { "before": "joint A", "says": "Which way does AB pull?" },
//                            { "before": "joint-sum C x", "asks": ["C","D"] } ] },
//              { "of": "member", "member": ["A","B"] },
//              { "of": "section", "members": [["A","B"],["C","D"]] },
//              { "of": "displacement", "joint": "C", "axis": "y" },
//              { "of": "influence", "path": ["A","B","C"], "member": ["B","D"] },
//              { "of": "force-method" }, { "of": "polygon" } ],
//   "values": "hidden" }
//
// An item that needs no more than its name may be a word alone. Steps are named by their subjects
// (report/lesson). A step that is "joined" goes on with the step before it. "order" names joints
// that are taken before all others, of "forces" and "member" alone. A pause without "before" comes
// after the last step. "values" tells whether the drawing of the truss shows what was found:
// "shown" unless said.

#include "classroom/lesson/plan.hpp"
#include "core/outcome.hpp"

#include <string>

namespace gusset {

// Places of issues begin with "lesson". A truss without the key has the plan of all its forces.
[[nodiscard]] Outcome<LessonPlan> readLesson(const Truss&);

// The JSON text for Truss::lesson.
[[nodiscard]] std::string lessonText(const Truss&, const LessonPlan&);

} // namespace gusset
