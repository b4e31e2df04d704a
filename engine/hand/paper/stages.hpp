#pragma once
// The stages of a working, each of which writes steps on the sheet. Private to hand/.

#include "hand/paper/body.hpp"

namespace gusset {

void writeCounting(Sheet&, const Solution&);
void writeWholeBody(Sheet&);      // what acts on the truss as a whole
void writeReactions(Sheet&);      // those that the equations of the whole give by now
void writeAllReactions(Sheet&);   // likewise, taking the truss apart at hinges where that helps
bool writeHingedReaction(Sheet&); // takes the truss apart at a hinge; false if that gives none
void writeGeometry(Sheet&);       // angles of the inclined members
void writeIdleMembers(Sheet&);    // zero-force members by inspection
void writeSymmetry(Sheet&);       // finds it, once all reactions are known, and says so
void writeMirrorImages(Sheet&);   // of what is known by now; nothing without symmetry
[[nodiscard]] bool onFarSide(const Sheet&, JointId); // of the half that is worked
bool writeNextJoint(Sheet&); // takes one joint with at most two unknowns; false if there is none
bool writeSection(Sheet&); // one equation of a cut part that frees a joint; false if there is none
bool writeSimultaneous(Sheet&); // several joints together; false if nothing is left to find
void writeCheck(Sheet&);        // equations not needed so far
void writeSummary(Sheet&);

} // namespace gusset
