#pragma once
// What the notebook's working shows: the whole truss, the shortest way to one force, a
// displacement, the force polygon; as passages, with the steps behind them where there are some.

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
    std::uint64_t serial = 0;   // tells it from all that were shown before
    std::uint64_t revision = 0; // of the state that it belongs to; 0: of none
    LoadChoice choice;
    WorkingPage page = WorkingPage::Truss;
    bool bySection = false;
    bool horizontal = false;
    Things about; // what was selected, where that matters

    Working working;               // its steps are the passages' in order; none behind a table
    std::vector<Passage> passages; // none where `asks` says what to do first
    std::string asks;

    ForcePolygon polygon; // of its page; refused where it has no lines
    Sketch spaces;        // the truss with its spaces lettered
    PolygonDrawing drawing;
    int drawn = -1; // lines of the drawing
    int lit = -1;
};

// Of the polygon its lines, of all else its passages.
[[nodiscard]] int stepsOf(const ShownWorking&);

[[nodiscard]] bool isShown(const AppState&, const ShownWorking&);
// Makes it, all but the drawing of the polygon. Precondition: the solution is the state's.
[[nodiscard]] Job workingJob(const AppState&, const Solution&,
                             const std::shared_ptr<ShownWorking>&);
// As far as the step that is looked at, with the line of the picked member standing out.
void drawPolygon(const AppState&, ShownWorking&);

} // namespace gusset
