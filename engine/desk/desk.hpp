#pragma once
// What the classroom's pages ask the program: one request in, one answer out, both JSON, so that
// the pages hold no rule of mechanics and tests need no browser. Every request names what it wants
// ("do") and brings the model as text, a file or a link:
//
// - open: what a page needs to ask the question: the figure, tables of what is given, names of what
//   is to be answered, and nothing of the answers; of a model without a question,
//   "asksNothing" and what is given
// - typed { typed, what }: the size and the sign of an answer as it was typed: a force, or with
//   "what" a displacement or an influence; of a determinacy its count
// - answers { answers }: the same as they are to be handed in, checked for form, and as a link
// - cut { cut }: whether these members part the truss in two, and the parts, each by a joint of it
// - stand { answers, body }: whether a body gives anything with what was found
// - hint { answers, body, level }: the next step from there: its body, its equation, its terms
// - check { answers }: what is to be said of each answer while practising, if the exercise allows
//   it: "rows" of forces, and "questions", by their places, that are answered as a whole
// - body { answers, body, narrow }: the free body as a drawing, its marks pointing to the forces
//   that act on it, and these in words
// - equation { answers, body, sum, about, terms, judge }: an equation that the student builds, as
// it
//   is written, as it is kept, and if the exercise allows, what is to be said of each term; the sum
//   is "x", "y" or "moments", a term { sign, by, arm }, one for each force of the body
// - equations { answers }: those that are kept with the answers, as they are written
//
// A body is a "joint"; or the "part" that holds a joint, beside a "cut" through these members; or,
// with neither, the whole truss.
//
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string deskReply(const PhraseBook&, std::string_view request);

} // namespace gusset
