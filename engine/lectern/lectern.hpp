#pragma once
// What the lesson's page asks the program: one request in, one answer out, both JSON, as at the
// desk (desk/desk.hpp). The lectern keeps the model that was opened last and its derivations, so
// that a step is drawn without deriving everything anew.
//
// - open { model }: the title, the plan, and each derivation of it: its steps with their subjects
//   and what is said with each stroke
// - stage { item, step, stroke, width, height, phase, along, hides }: a drawing as large as the
// screen
// - plan { plan }: the model with this plan, as text and as a link
// - move { joint, x, y }: the model with a joint elsewhere (length units), as text
// - answer { item, member, typed }: whether this is the force of a member, as typed
// - slides { shape, byStep, words, hides }: a document of them
// - captions { shown: [ { says, title, about, from, to } ] }: captions, chapters, a transcript and
//   a list of chapters, for the strokes as they were shown, in s; a chapter begins with another
//   "about". The words are those that were shown, which the model may no longer have. Nothing
//   shown: at reading pace
// - pace { says }: the seconds that it takes to say it
// - picture { index, shape, byStep, hides }: one of them as SVG, its number as a name, and of how
//   many
// - animation { item, step, stroke, shape, hides, loops }: a drawing that moves, of that step
// - zip { files: [ { name, text or base64 (RFC 4648, section 5) } ] }: one file of them, in base64
// - speak { language }: nothing; from now on the lectern speaks it (exchange/json/language_file)
//
// What is wrong stands in "faults", a list of sentences, and nothing else is then answered.

#include "core/phrase.hpp"

#include <memory>
#include <string>
#include <string_view>

namespace gusset {

class Lectern {
public:
    explicit Lectern(const PhraseBook&);
    ~Lectern();
    Lectern(const Lectern&) = delete;
    Lectern& operator=(const Lectern&) = delete;

    [[nodiscard]] std::string reply(std::string_view request);

private:
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace gusset
