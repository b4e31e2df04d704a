#pragma once
// The stages of a working; each writes steps on the sheet. Private to hand/.

#include "hand/paper/body.hpp"

namespace gusset {

void writeCounting(Sheet&, const Solution&);
void writeWholeBody(Sheet&);      // all forces on the truss as a whole
void writeReactions(Sheet&);      // those that the equations of the whole truss give so far
void writeAllReactions(Sheet&);   // likewise, separating the truss at hinges where that helps
bool writeHingedReaction(Sheet&); // separates the truss at a hinge; false if that gives none
void writeGeometry(Sheet&);       // angles of the inclined members
void writeIdleMembers(Sheet&);    // zero-force members by inspection
void writeSymmetry(Sheet&);       // detects it, once all reactions are known, and says so
void writeMirrorImages(Sheet&);   // of what is known so far; nothing without symmetry
// The mirror image of each joint about a vertical axis, when the members and the loads, as they are
// given, are symmetric; reactions need not be known.
[[nodiscard]] std::optional<std::vector<JointId>> imagesAsGiven(const Sheet&);
[[nodiscard]] bool onFarSide(const Sheet&, JointId); // not in the half that is worked
bool writeNextJoint(Sheet&); // takes one joint with at most two unknowns; false if there is none
bool writeSection(Sheet&); // one equation of a cut part that frees a joint; false if there is none
bool writeLetters(Sheet&); // one force called X, or two; false if no walk gives them
bool writeSimultaneous(Sheet&); // several joints together; false if nothing is left to find
void writeClosingSums(Sheet&);  // equations not needed so far
void writeSummary(Sheet&);

} // namespace gusset
