#pragma once
// What the instructor's page asks the program: one request in, one answer out, both JSON, as the
// desk does for students. Every request names what it wants ("do"); a model is the text of a file,
// or a link.
//
// - open { model }: what is needed to set a question: the figure, whose first lines are the members
//   in the order of the list, names, loads to choose from, paths, and the question there is
// - set { model, exercise, or none for the model's own as it is }: the model with this question, as
//   text and as a link, its mark, and its figure
// - form { joints, zeros, held: "ends" or "wall", seed }: a truss from nothing, as text
// - variants { model, vary: [words], decimals, steps (lengthStep, loadStep; 0: any), count or
//   students, seed, address of the page of
//   exercises }: each variant with its link, code, picture and steps, and key.csv and links.csv.
//   Their progress is told while they are searched for, and that of sheets
// - handout { models, kind: "questions", "key" or "answers", paper, address or "" }: the sheets as
//   a page of HTML
// - export { models, format as on the command line, pictures: [base64url of PNG] }: a file's name,
//   its type, and its bytes in base64
// - mark { models, sheets: [{ name, text }] }: for each sheet the position of its model, marks,
//   slips (course/marked_slips) and feedback; notes on what can't be read, the rule, and all of it
//   as CSV; a sheet is a link, a file, lines of links, or a table
//
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"
#include "core/progress.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace gusset {

using CourseTold = std::function<void(const Progress&)>; // in variants, or in sheets

[[nodiscard]] std::string courseReply(const PhraseBook&, std::string_view request,
                                      const CourseTold& = {});

} // namespace gusset
