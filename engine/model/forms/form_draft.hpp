#pragma once
// A form under construction, and how each kind is drawn.

#include "model/forms/forms.hpp"

#include <vector>

namespace gusset {

// Rows of joints by their station along the span; a station at which the chords meet has no upper
// joint.
struct FormDraft {
    const FormSpec& spec;
    int panels = 0;
    Truss truss{};
    std::vector<JointId> lower{};
    std::vector<JointId> upper{};
    std::vector<JointId> loaded{}; // what is above from one end to the other; none: `upper`

    JointId joint(Vec2 at);
    JointId joint(double across, double up); // as shares of span and rise
    void member(JointId, JointId);
    void chain(const std::vector<JointId>&);
    void support(JointId, SupportKind, double reaction = 90);
};

// How high the chords are at a station, length units.
struct ChordHeights {
    std::vector<double> lower;
    std::vector<double> upper;
};
// Both chords over common stations, with the ends that close them.
void layChords(FormDraft&, const ChordHeights&);
// What is above goes from one end of the lower chord over the upper joints to the other.
void takeEnds(FormDraft&);
// A post at each station that has two joints.
void layPosts(FormDraft&);

enum class Fall { Inward, Outward, ByTurns };
// One diagonal in each panel of four joints. Inward: falling towards the middle, as in a Pratt
// truss; the middle panel of an odd count follows the left half.
void layDiagonals(FormDraft&, Fall);
// The upper chord at the height of the rise throughout, but for its ends, at that of the heel.
[[nodiscard]] ChordHeights levelChords(const FormDraft&);

void drawGirder(FormDraft&); // forms with level or curved chords
void drawRoof(FormDraft&);   // pitched forms
void drawUpright(FormDraft&);

} // namespace gusset
