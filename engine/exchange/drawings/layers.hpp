#pragma once
// Lines and marks by the layer that they are drawn on, and which of them are read. Private to
// exchange/drawings.

#include "exchange/drawings/lines_found.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// Names of layers differ by more than capitals.
class Layers {
public:
    void add(std::string_view layer, DrawnLine);
    void mark(std::string_view layer, Vec2);
    void hide(std::string_view layer);

    // Moves what is on the chosen layers into `found`, or what is on all that are shown; notes what
    // is left out. Returns what is wrong with the choice.
    [[nodiscard]] Issues choose(const std::vector<std::string>& layers, LinesFound& found);

private:
    struct Layer {
        std::string name;
        bool isHidden = false;
        bool isChosen = false;
        std::size_t lines = 0;
    };
    struct Line {
        DrawnLine line;
        std::size_t layer = 0;
    };
    struct Mark {
        Vec2 at;
        std::size_t layer = 0;
    };

    [[nodiscard]] std::size_t numberOf(std::string_view layer);
    void note(const Layer&, Issues&) const;

    std::vector<Layer> layers_;
    std::map<std::string, std::size_t, std::less<>> numbers_;
    std::vector<Line> lines_;
    std::vector<Mark> marks_;
};

} // namespace gusset
