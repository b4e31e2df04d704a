#pragma once
// A derivation as it is shown to a room: steps, each in strokes, one key press each. An equation
// and its answer are strokes of their own, so that a room can guess.

#include "classroom/lesson/plan.hpp"
#include "hand/paper/working.hpp"
#include "hand/polygon/force_polygon.hpp"
#include "hand/virtual_work/force_method.hpp"
#include "hand/virtual_work/influence_by_hand.hpp"
#include "hand/virtual_work/unit_load.hpp"
#include "report/derivation/body_sketch.hpp"
#include "report/derivation/passage.hpp"
#include "report/text/writer.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct TableShown {        // instead of everything else
    std::size_t table = 0; // of LessonStep::tables
    std::size_t first = 0; // of its rows
    std::size_t rows = 0;
};

struct Stroke {
    std::size_t lines = 0;     // of LessonStep::lines, shown with it
    std::vector<Found> told{}; // results of the step that the truss shows with it
    std::optional<TableShown> table{};
    std::optional<std::size_t> drawn{};  // of a force polygon: how many of its lines
    std::optional<std::size_t> traced{}; // of an influence line: how many of its ordinates
    std::string spoken{};                // as one would say it; holds the numbers that it adds
    std::optional<std::size_t> of{};     // the step of the working that it shows
};

// The truss as it is in one part of a derivation: under what is given, or a load or redundant of 1.
struct StateShown {
    std::shared_ptr<const Truss> truss;
    std::shared_ptr<const Working> working;
    RichLine name{};                    // "N_0"; may be empty
    std::vector<MemberWords> members{}; // what stands beside them
};

// Where a step begins that goes on with the one before it.
struct JoinedPart {
    std::string subject;
    RichLine title{};
    std::size_t stroke = 0;
    std::optional<std::size_t> step{}; // of the working
};

struct LessonStep {
    std::string subject; // "joint C sum-y": stays the same while the truss is changed
    RichLine title{};
    std::optional<std::size_t> step{}; // of the working, if it is one of that
    std::optional<std::size_t> body{}; // the step of the working that introduces its free bodies
    bool bodyIsWhole = false;          // it shows the truss itself
    bool moves = false;                // it shows the truss as it moves
    std::vector<Sketch> drawings{};    // of a derivation that brings its own
    std::vector<StateShown>
        states{};       // of the truss, beside each other, instead of all other drawings
    JointId unitLoad{}; // on the truss, while an ordinate is found
    std::vector<TextTable> tables{};
    std::vector<WorkingLine> lines{};
    std::vector<Stroke> strokes{};    // at least one
    std::vector<JoinedPart> joined{}; // in the order of their strokes
};
// That of the part to which a stroke belongs.
[[nodiscard]] const RichLine& titleAt(const LessonStep&, std::size_t stroke);
// Those that it shows, in their order; none of a derivation that is not by equilibrium.
[[nodiscard]] std::vector<std::size_t> workingStepsOf(const LessonStep&);

struct LessonShown {
    Truss truss;
    Working working{};                               // of the truss that is shown
    std::vector<MemberId> asked{};                   // what it is about, if not about all
    std::shared_ptr<const ForcePolygon> polygon{};   // that strokes draw
    std::shared_ptr<const InfluenceByHand> traced{}; // likewise
    std::vector<LessonStep> steps{};
    std::vector<LessonPause> pauses{}; // that its author put between them
};

// By equilibrium, step by step.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working,
                                   std::vector<MemberId> asked);
// By the force method; the first working is that of the truss as given.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working, const ForceMethod&);
// The displacement of a joint by a unit load.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working, const UnitLoadTable&);
// Any other derivation, whose passages bring their drawings; the working is that of its figure.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working,
                                   const std::vector<Passage>&);
// A force polygon that grows line by line. Precondition: it is not refused.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working, const ForcePolygon&);
// An influence line: its derivation, then the load that moves while the line is traced.
[[nodiscard]] LessonShown lessonOf(const PhraseBook&, const Truss&, Working,
                                   const InfluenceByHand&);

} // namespace gusset
