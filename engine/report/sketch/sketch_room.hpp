#pragma once
// Where words may stand in a sketch: clear of what is drawn and of each other. Whoever draws notes
// what it takes; words then look for the nearest free place.

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
[[nodiscard]] bool crosses(const SketchBox&, const SketchStroke&); // touches the inside

// What is taken, found by the squares of a grid in which it lies, so that a look at one place does
// not look at all of a large drawing (J. L. Bentley, J. H. Friedman, Data structures for range
// searching, ACM Computing Surveys 11 (1979)).
class SketchRoom {
public:
    SketchBox paper{{-HUGE_VAL, -HUGE_VAL}, {HUGE_VAL, HUGE_VAL}}; // words stay on it

    void take(const SketchBox&); // words and discs
    void take(const SketchStroke&);
    [[nodiscard]] bool isFree(const SketchBox&) const;
    // Of words and discs; a leader may cross lines.
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
    // Nothing for what is not finite, or too large for the grid.
    [[nodiscard]] static std::optional<Block> blockOf(const SketchBox&);
    // The squares of the block in one column through which a stroke leads, and a little more.
    [[nodiscard]] static Block along(const SketchStroke&, const Block&, int column);
    [[nodiscard]] const Square* find(Place) const;
    Square& at(Place);
    // Whether `in` is true of any square of a block.
    template <class In>
    [[nodiscard]] bool anyOf(const Block&, In in) const;

    std::vector<Square> squares_; // with something in them
    std::vector<Place> places_;   // of these
    IndexTable index_;            // of these places
    Square large_;                // what the grid does not hold
    Square all_;                  // for a look that is itself too large
};

// Of all that the sketch holds so far, but its areas: words may stand on a wash.
[[nodiscard]] SketchRoom roomOf(const Sketch&);

// Adds the words at the first of these places that is free, and takes it; false when none is.
bool placeWords(Sketch&, SketchRoom&, SketchWords, const std::vector<Vec2>& places);
// Adds the words as near to `to` as there is room, in direction `towards` (a unit vector) if it can
// be; far off a thin line leads there. False, and no words, when there is no room. `gap`: px
// between `to` and the nearest edge of the words.
bool placeNear(Sketch&, SketchRoom&, SketchWords, Vec2 towards, double gap);

} // namespace gusset
