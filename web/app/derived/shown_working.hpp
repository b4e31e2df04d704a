#pragma once
// What the notebook's working shows (the whole truss, the shortest way to one force, a displacement
// or the force polygon) as passages, with the steps they come from where there are any.

#include "app/derived/slices.hpp"
#include "app/state/state.hpp"
#include "hand/paper/working.hpp"
#include "report/derivation/force_polygon_sketch.hpp"
#include "report/derivation/passage.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace gusset {

struct ShownWorking {
    std::uint64_t serial = 0;   // distinguishes it from every one shown before
    std::uint64_t revision = 0; // of the state it belongs to; 0: none
    LoadChoice choice;
    WorkingPage page = WorkingPage::Truss;
    bool bySection = false;
    bool horizontal = false;
    int releasedState = 0;
    Things about; // what was selected, where that matters

    Working working;               // its steps are in the order of the passages; a table has none
    std::vector<Passage> passages; // none if `asks` says what to do first
    std::string asks;
    Things released;    // by the force method, while its results are shown
    int redundants = 0; // of the force method, if it is complete

    ForcePolygon polygon; // for its page; refused if it has no lines
    Sketch spaces;        // the truss with its spaces lettered
    PolygonDrawing drawing;
    std::string drawingSays; // how the newest line comes to be drawn; empty if all are
    std::size_t drawn = 0;   // number of lines in the drawing
    std::optional<std::size_t> lit{};
};

// The number of lines of a polygon; of passages for anything else.
[[nodiscard]] int stepsOf(const ShownWorking&);

[[nodiscard]] bool isShown(const AppState&, const ShownWorking&);
// Makes all of it except the drawing of the polygon. Precondition: the solution is of the state.
[[nodiscard]] Job workingJob(const AppState&, const Solution&,
                             const std::shared_ptr<ShownWorking>&);
// Draws the polygon as far as the current step, with the line of the selected member highlighted,
// or the newest one.
void drawPolygon(const AppState&, ShownWorking&);

} // namespace gusset
