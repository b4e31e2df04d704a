#pragma once
// What the classroom's pages ask the program: one request in, one answer out, both JSON, so that
// the pages hold no rule of mechanics and tests need no browser. Every request names what it wants
// ("do") and brings the model as text, a file or a link:
//
// - open: what a page needs to ask the question: the figure, tables of what is given, names of what
//   is to be answered, and nothing of the answers
// - set { exercise }: the model with this question, as text and as a link
// - typed { typed }: the size and the sign of an answer as it was typed
// - answers { answers }: the same as they are to be handed in, checked for form, and as a link
// - stand { answers, joint }: whether a body gives anything with what was found; no joint: the
// whole
//   truss
// - hint { answers, level }: the next step from there: its body, its equation, its terms
// - check { answers }: what is to be said of each answer while practising, if the exercise allows
// it
// - mark { answers, as a link or text }: marks, feedback, slips (desk/marked_slips), the rule
// - body { joint }: the forces that act on a body, as they are drawn; no joint: the whole truss
// - equation { joint, sum, about, terms }: what is to be said of each term of an equation that the
//   student builds; the sum is "x", "y" or "moments", a term { sign, by, arm }
//
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"

#include <string>
#include <string_view>

namespace gusset {

[[nodiscard]] std::string deskReply(const PhraseBook&, std::string_view request);

} // namespace gusset
