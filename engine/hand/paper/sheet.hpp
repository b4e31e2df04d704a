#pragma once
// The sheet of paper on which a working is being written: what is given, what has been found so far
// and the steps written. Private to hand/. All in the model's units; what is found here comes from
// the equations on the sheet and from nowhere else.

#include "hand/paper/working.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace gusset {

// Mirror images about an upright line, when structure and forces have them; else empty.
struct Mirror {
    std::vector<JointId> joints;   // of each joint its image
    std::vector<MemberId> members; // of each member its image
    double middle = 0;             // length units
    std::size_t forcesSeen = 0;    // of the sheet's order: their images are written
    std::size_t usesSeen = 0;      // of the sheet's order of used joints
};

struct Shape;        // what follows from joints and members alone: see hand/paper/shape.hpp
struct SectionLooks; // what the search for sections has looked at: see hand/stages/section_search
struct HingeLooks;   // and that for hinges: see hand/paper/hinged
struct ReadyJoints;  // joints that can be taken: see hand/stages/joints

struct Sheet {
    const Truss& truss;
    Structure structure{};
    std::vector<std::vector<MemberId>> membersOf{}; // of each joint, in their order
    std::vector<std::vector<int>> restraintsOf{};   // likewise
    double spot = 0;                // length units: places that are closer are the same
    std::shared_ptr<Shape> shape{}; // filled as it is asked for
    std::shared_ptr<SectionLooks> looks{};
    std::shared_ptr<HingeLooks> hinges{};
    std::shared_ptr<ReadyJoints> ready{};
    std::vector<Vec2> loads{};                      // on each joint, force units
    double scale = 0;                               // largest load or reaction so far, force units
    std::vector<std::optional<double>> forces{};    // of each member, once found
    std::vector<std::optional<double>> reactions{}; // of each restraint, once found
    std::vector<Symbol> order{};                    // forces and reactions, as they were found
    std::vector<std::size_t> openAt{};              // of each joint: unknowns that act on it
    std::vector<int> drawn{}; // of each member force: −1 if it is drawn pushing while unknown
    std::vector<AngleLine> angles{};
    std::vector<int> angleOfMember{};    // index in angles, −1 for level and plumb members
    std::vector<int> angleOfRestraint{}; // likewise
    // Directions in which a joint's equilibrium has been used, at most two each.
    std::vector<std::vector<Vec2>> used{};
    std::vector<JointId> usedOrder{}; // the joints of these directions, as they were used
    bool saidAway = false;            // that unknown forces are drawn away from the joint
    bool saidNegative = false;        // what a negative force means
    Mirror mirror{};
    JointId last{};                 // the joint taken last
    std::vector<JointId> lastCut{}; // the part looked at, if the last step was about a section
    std::size_t reactionsFound = 0;
    std::vector<JointId> openPins{}; // that hold both ways: see hand/stages/reactions
    std::size_t openReactions = 0;   // when the whole truss last gave none; 0 before that
    std::vector<Step> steps{};
};

// With the shape that a sheet of the same joints and members has, if it is given.
[[nodiscard]] Sheet makeSheet(const Truss&, const LoadChoice&, std::shared_ptr<Shape> = {});

[[nodiscard]] Symbol forceSymbol(MemberId);
[[nodiscard]] Symbol reactionSymbol(const Sheet&, int restraint);
[[nodiscard]] std::optional<double> valueOf(const Sheet&, const Symbol&);
// Writes a found value down: rounded if the class carries rounded values; what is zero to working
// accuracy becomes zero.
[[nodiscard]] Found record(Sheet&, const Symbol&, double value);
// How a force stands in an equation: −1 if it is drawn against its positive sense. Members pull
// when positive; with guessed senses, known ones are drawn as they act, unknown ones as is guessed.
[[nodiscard]] int drawnSense(const Sheet&, const Symbol&);
[[nodiscard]] bool guesses(const Sheet&);
[[nodiscard]] bool isNothing(const Sheet&, double force); // zero to working accuracy
[[nodiscard]] bool hasLoad(const Sheet&, JointId);
[[nodiscard]] Vec2 positionOf(const Sheet&, JointId); // length units

// From one end of a member towards the other, a unit vector.
[[nodiscard]] Vec2 awayFrom(const Sheet&, JointId, MemberId);
[[nodiscard]] JointId otherEnd(const Sheet&, JointId, MemberId);
[[nodiscard]] const std::vector<MemberId>& membersAt(const Sheet&, JointId);
[[nodiscard]] bool parallel(Vec2 unit, Vec2 otherUnit);

[[nodiscard]] Remark thatNegative(const Symbol& force); // a member is in compression
// Lights what a step found on the board and says what a negative answer means.
void noteFound(Sheet&, Step&);

// Says once, at the first step with unknown member forces, how they are drawn.
void noteAssumed(Sheet&, Step&);

void markUsed(Sheet&, JointId, Vec2 direction);
// The axes whose equation at the joint has not been used; for one used in another direction, the
// axis that differs most from it.
[[nodiscard]] std::vector<EquationKind> unusedAxes(const Sheet&, JointId);

} // namespace gusset
