#pragma once
// Where words may go in a sketch: clear of what is drawn and of each other. Drawing code records
// the room it takes; words are then put at the nearest free place.

#include "core/index_table.hpp"
#include "report/sketch/sketch.hpp"

#include <cmath>
#include <optional>
#include <vector>

namespace gusset {

struct SketchStroke {
    Vec2 a;
    Vec2 b;
};
[[nodiscard]] bool crosses(const SketchBox&, const SketchStroke&); // not if it only touches

// What is taken, looked up by the squares of a grid in which it lies, so that testing one place
// does not scan all of a large drawing (J. L. Bentley, J. H. Friedman, Data structures for range
// searching, ACM Computing Surveys 11 (1979)).
class SketchRoom {
public:
    SketchBox paper{{-HUGE_VAL, -HUGE_VAL}, {HUGE_VAL, HUGE_VAL}}; // words stay within it

    void take(const SketchBox&); // words and discs
    void take(const SketchStroke&);
    [[nodiscard]] bool isFree(const SketchBox&) const;
    // Clear of words and discs; a leader may cross lines.
    [[nodiscard]] bool isClear(const SketchStroke& leader) const;

private:
    struct Square {
        std::vector<SketchBox> boxes;
        std::vector<SketchStroke> strokes;
    };
    struct Place { // of a square
        int column = 0;
        int row = 0;
        friend bool operator==(const Place&, const Place&) = default;
    };
    struct Block { // of squares
        Place low;
        Place high;
    };
    // Nothing if the box is not finite, or too large for the grid.
    [[nodiscard]] static std::optional<Block> blockOf(const SketchBox&);
    // The squares that a stroke passes through in one column of the block, with a small margin.
    [[nodiscard]] static Block along(const SketchStroke&, const Block&, int column);
    [[nodiscard]] const Square* find(Place) const;
    Square& at(Place);
    // Whether `in` is true for any square of a block.
    template <class In>
    [[nodiscard]] bool anyOf(const Block&, In in) const;

    std::vector<Square> squares_; // with something in them
    std::vector<Place> places_;   // of these
    IndexTable index_;            // of these places
    Square large_;                // what does not fit the grid
    Square all_;                  // everything, for queries that do not fit the grid
};

// The room taken by everything in the sketch so far except areas: words may lie on a wash.
[[nodiscard]] SketchRoom roomOf(const Sketch&);

// Adds the words at the first of these places that is free, and takes it; false when none is.
bool placeWords(Sketch&, SketchRoom&, SketchWords, const std::vector<Vec2>& places);
// Adds the words as near to their position as there is room, in direction `towards` (a unit vector)
// if possible; words that end up far away get a thin leader. Returns false and adds nothing when
// there is no room. `gap`: px between the position and the nearest edge of the words.
bool placeNear(Sketch&, SketchRoom&, SketchWords, Vec2 towards, double gap);

} // namespace gusset
