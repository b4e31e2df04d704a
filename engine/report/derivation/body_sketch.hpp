#pragma once
// Free-body diagrams of the working: true directions, values of known forces and symbols of unknown
// ones, and at inclined forces the angle or slope triangle in the class's style. Labels never
// overlap each other or an arrow.

#include "report/derivation/body_forces.hpp"
#include "report/formula/notation.hpp"
#include "report/sketch/sketch.hpp"

#include <vector>

namespace gusset {

// A body with more joints than this is not drawn: nobody could read it.
inline constexpr std::size_t kLargestBody = 120;

// The free bodies that a step introduces; empty where it continues with an earlier one. `step`
// indexes working.steps.
[[nodiscard]] std::vector<Sketch> bodySketches(const Notation&, std::size_t step,
                                               SketchPaper = SketchPaper::Page);

// The same as large as fits the space, side by side; lever arms have dimensions where there is room
// for them. A body that does not fit at the usual size of letters comes out larger than the space.
[[nodiscard]] std::vector<Sketch> bodySketchesIn(const Notation&, std::size_t step,
                                                 const FigureSpace&);
// A body that no step introduces. Precondition: the notation is that of a blankPaper.
[[nodiscard]] Sketch bodySketch(const Notation&, const FreeBody&, SketchPaper);

// What is written beside a member of the whole truss.
struct MemberWords {
    JointId a;
    JointId b;
    RichLine words{};
    SketchInk ink = SketchInk::Plain;
    bool isCut = false; // drawn dashed: the truss is without it
};
// The whole truss with all forces on it from outside. Precondition: the working is complete.
[[nodiscard]] Sketch trussSketch(const Notation&, const std::vector<MemberWords>&,
                                 SketchPaper = SketchPaper::Page);

} // namespace gusset
