#pragma once
// Trusses of the usual forms to start from: span, rise, panels and a load per joint. Each is
// statically determinate on a pin and a roller.

#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <span>
#include <string>
#include <vector>

namespace gusset {

enum class SampleForm {
    KingPost,
    QueenPost,
    Pratt,
    Howe,
    Warren,
    WarrenWithPosts,
    Fink,
    KBraced,
    Scissors,
    Bowstring,
    Cantilever,
};
enum class LoadedChord { Upper, Lower };

struct SampleCase {
    std::string name; // of the load case
    double load = 0;  // as SampleSpec::load
};

struct SampleSpec {
    SampleForm form = SampleForm::Pratt;
    double span = 12; // length units, > 0; for a cantilever, its reach
    double rise = 3;  // length units, > 0
    int panels = 4;   // for the forms that have a choice
    double load = 10; // force units, down, on each inner joint of the loaded chord; 0: none
    std::vector<SampleCase> cases{}; // if there are any, they stand in place of `load`
    LoadedChord loaded = LoadedChord::Lower;
    Units units;
};

struct SampleChoice {
    SampleForm form;
    Phrase<> name;
    Phrase<> title;   // of the truss that is put on the board
    int fewestPanels; // equal to mostPanels: no choice
    int mostPanels;
    bool evenPanels;
    LoadedChord usual; // the chord that mostly carries the load
};
[[nodiscard]] std::span<const SampleChoice> sampleChoices(); // in the order of the enumeration
[[nodiscard]] const SampleChoice& choiceOf(SampleForm);

// The panel count is adjusted to the form's range. Fails on sizes that are not positive or not
// finite. The title is in the language of the book.
[[nodiscard]] Outcome<Truss> makeSample(const PhraseBook&, const SampleSpec&);

} // namespace gusset
