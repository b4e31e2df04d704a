#pragma once
// What the keyboard's focus is on in the panels, for a screen reader: noted by the widgets as they
// are drawn (ui/widgets), and put into words by canvas/hands/heard.

#include <string>
#include <utility>
#include <vector>

namespace gusset {

enum class ItemState { Plain, Chosen, On, Off };

struct FocusedItem {
    std::string panel; // the id of its window; empty: nothing has the focus
    std::string name;
    ItemState state = ItemState::Plain;
    std::vector<std::pair<std::string, std::string>> cells; // of a row: heading and text

    friend bool operator==(const FocusedItem&, const FocusedItem&) = default;
};

} // namespace gusset
