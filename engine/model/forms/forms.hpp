#pragma once
// Trusses of the usual forms to start from: a few sizes, panels and a load per joint. Each is
// statically determinate on its supports.

#include "core/outcome.hpp"
#include "core/phrase.hpp"
#include "model/truss/truss.hpp"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace gusset {

enum class FormKind {
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
    PrattRoof,
    HoweRoof,
    WRoof,
    CompoundFink,
    QueenPostRoof,
    MonoPitch,
    PolygonalChord,
    Gantry,
    Tower,
};
enum class LoadedChord { Upper, Lower };

// Sizes beyond span and rise, length units. Each may be left out: the form's usual size is taken.
enum class FormSize {
    Heel,     // height over a support, of the chords' distance there; 0: they meet
    Tie,      // how far the lower chord of a roof is raised in the middle
    Overhang, // of the rafters beyond the supports, on plan
    Depth,    // of the girder of a gantry
    TopWidth, // of a tower
};
inline constexpr std::size_t kFormSizes = 5;

struct FormCase {
    std::string name; // of the load case
    double load = 0;  // as FormSpec::load
};

struct FormSpec {
    FormKind kind = FormKind::Pratt;
    double span = 12; // length units, > 0; of a cantilever its reach, of a tower its width below
    double rise = 3;  // length units, > 0; of a gantry its clear height, of a tower its height
    int panels = 4;   // for the forms that have a choice
    std::array<std::optional<double>, kFormSizes> sizes{}; // by FormSize, >= 0
    double load = 10; // force units, down, on each joint of the loaded chord that is not held
    std::vector<FormCase> cases{}; // if there are any, they stand in place of `load`
    LoadedChord loaded = LoadedChord::Lower;
    Units units{};
};

struct FormChoice {
    FormKind kind;
    Phrase<> name;
    Phrase<> title;   // of the truss that is put on the board
    int fewestPanels; // equal to mostPanels: no choice
    int mostPanels;
    bool evenPanels;
    LoadedChord usual;                    // the chord that mostly carries the load
    std::array<bool, kFormSizes> takes{}; // which sizes
};
[[nodiscard]] std::span<const FormChoice> formChoices(); // in the order of the enumeration
[[nodiscard]] const FormChoice& choiceOf(FormKind);

// A size as typed, or the form's usual one.
[[nodiscard]] double sizeOf(const FormSpec&, FormSize);
// The rise of a roof whose rafters have this pitch, degrees, below 90; nothing for other forms.
[[nodiscard]] std::optional<double> riseOfPitch(const FormSpec&, double pitch);

// A form without loads, with its chords from left to right (of a tower from the ground up): the
// joints of the upper chord, or of the rafters with their overhangs, and those of the lower.
struct FormLaid {
    Truss truss;
    std::vector<JointId> upper;
    std::vector<JointId> lower;
};
// Fails on a number of panels that the form can't have, unless it has no choice of them, and on
// sizes that are no size or make no truss. The title is in the language of the book.
[[nodiscard]] Outcome<FormLaid> layForm(const PhraseBook&, const FormSpec&);
// The same with its loads.
[[nodiscard]] Outcome<Truss> makeForm(const PhraseBook&, const FormSpec&);

} // namespace gusset
