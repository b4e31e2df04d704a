#pragma once
// The sheet of paper on which a working is being written: the given data, what has been found so
// far and the steps written. Private to hand/. All in the model's units; everything found here
// comes only from the equations on the sheet.

#include "hand/paper/working.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

// Mirror images about a vertical axis, when structure and forces are symmetric; else empty.
struct Mirror {
    std::vector<JointId> joints;   // the image of each joint
    std::vector<MemberId> members; // the image of each member
    double middle = 0;             // length units
    std::size_t forcesSeen = 0;    // in the sheet's order: images are written for these
    std::size_t usesSeen = 0;      // in the sheet's order of used joints
};

struct Shape;        // what follows from joints and members alone: see hand/paper/shape.hpp
struct SectionLooks; // what the search for sections has examined: see hand/stages/section_search
struct HingeLooks;   // the same for hinges: see hand/paper/hinged
struct ReadyJoints;  // joints that can be taken: see hand/stages/joints

struct Sheet {
    const Truss& truss;
    LoadChoice choice{};
    Structure structure{};
    std::vector<std::vector<MemberId>> membersOf{};       // of each joint, in member order
    std::vector<std::vector<RestraintId>> restraintsOf{}; // likewise
    double spot = 0;                // length units: points closer than this coincide
    std::shared_ptr<Shape> shape{}; // filled on demand
    std::shared_ptr<SectionLooks> looks{};
    std::shared_ptr<HingeLooks> hinges{};
    std::shared_ptr<ReadyJoints> ready{};
    std::vector<Vec2> loads{};                      // on each joint, force units
    double scale = 0;                               // largest load or reaction so far, force units
    std::vector<std::optional<double>> forces{};    // of each member, once found
    std::vector<std::optional<double>> reactions{}; // of each restraint, once found
    std::vector<bool> roundedForces{};              // by the class's rounding, when found
    std::vector<bool> roundedReactions{};
    std::vector<Symbol> order{};       // forces and reactions, in the order found
    std::vector<std::size_t> openAt{}; // for each joint, the number of unknowns that act on it
    std::vector<int> drawn{}; // of each member force: −1 if drawn in compression while unknown
    std::vector<AngleLine> angles{};
    std::vector<int> angleOfMember{}; // index in angles, −1 for horizontal and vertical members
    std::vector<int> angleOfRestraint{}; // likewise
    // Directions in which a joint's equilibrium has been used, at most two each.
    std::vector<std::vector<Vec2>> used{};
    std::vector<JointId> usedOrder{}; // the joints of these directions, in the order of use
    bool saidAway = false; // whether it has said that unknown forces are drawn away from the joint
    bool saidNegative = false; // and what a negative force means
    Mirror mirror{};
    JointId last{};                // the joint taken last
    std::vector<JointId> wanted{}; // joints to be taken before any other, the next one at the back
    std::optional<OutOfTurn> outOfTurn{}; // the first of them that was not ready
    std::vector<JointId> lastCut{};       // the part considered, if the last step was a section
    std::size_t reactionsFound = 0;
    std::vector<JointId> openPins{}; // held in both directions: see hand/stages/reactions
    std::size_t openReactions = 0;   // the number when the whole truss last gave none; 0 before
    std::vector<Step> steps{};
};

// Uses the given shape, which must come from a sheet with the same joints and members.
[[nodiscard]] Sheet makeSheet(const Truss&, const LoadChoice&, std::shared_ptr<Shape> = {});

[[nodiscard]] Symbol forceSymbol(MemberId);
[[nodiscard]] Symbol reactionSymbol(const Sheet&, RestraintId restraint);
[[nodiscard]] std::optional<double> valueOf(const Sheet&, const Symbol&);
// Records a found value: rounded if the class carries rounded values, and zero if it is zero to
// working accuracy.
[[nodiscard]] Found record(Sheet&, const Symbol&, double value);
// The same for a value that equals one found before.
[[nodiscard]] Found recordSame(Sheet&, const Symbol&, const Symbol& before);
// The sign of a force in an equation: −1 if it is drawn against its positive sense. Members pull
// when positive; with guessed senses, known forces are drawn as they act and unknown ones as
// guessed.
[[nodiscard]] int drawnSense(const Sheet&, const Symbol&);
[[nodiscard]] bool guesses(const Sheet&);
[[nodiscard]] bool isNothing(const Sheet&, double force); // zero to working accuracy
[[nodiscard]] bool hasLoad(const Sheet&, JointId);
[[nodiscard]] Vec2 positionOf(const Sheet&, JointId); // length units

// Unit vector from one end of a member towards the other.
[[nodiscard]] Vec2 awayFrom(const Sheet&, JointId, MemberId);
[[nodiscard]] JointId otherEnd(const Sheet&, JointId, MemberId);
[[nodiscard]] const std::vector<MemberId>& membersAt(const Sheet&, JointId);
[[nodiscard]] bool parallel(Vec2 unit, Vec2 otherUnit);

[[nodiscard]] Remark thatNegative(const Symbol& force); // the member is in compression
// Highlights what a step found on the board, and says what a negative answer means.
void noteFound(Sheet&, Step&);

// Says how unknown member forces are drawn, once, at the first step with any.
void noteAssumed(Sheet&, Step&);

void markUsed(Sheet&, JointId, Vec2 direction);
// The axes whose equation at the joint has not been used; if an equation in another direction was
// used, the axis that differs most from it.
[[nodiscard]] std::vector<EquationKind> unusedAxes(const Sheet&, JointId);

} // namespace gusset
