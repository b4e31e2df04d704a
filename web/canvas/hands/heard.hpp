#pragma once
// What is announced to a screen reader: one sentence for each event, and of several at once only
// the one that matters most. Nothing is said during a gesture; what it did is said at its end.

#include "app/derived/derived.hpp"
#include "app/state/focused_item.hpp"
#include "app/state/state.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace gusset {

struct HeardStep { // of the working
    bool onScreen = false;
    WorkingPage page = WorkingPage::Truss;
    int step = 0;

    friend bool operator==(const HeardStep&, const HeardStep&) = default;
};

struct Heard { // so far
    std::uint64_t message = 0;
    std::uint64_t step = 0;
    std::uint64_t revision = 0; // the state that the next two are of
    LoadChoice choice;
    std::string verdict;
    std::string largest; // forces
    std::string reading; // of the influence line
    Things picked;
    BoardMenu menu;
    bool drawing = false; // a chain of members
    FocusedItem item;
    HeardStep working;
};

// What there is to say in this state that has not been heard; empty if there is nothing. `item`:
// without a panel, the board has the keys. Precondition: the solution is of the state, and there is
// no gesture.
[[nodiscard]] std::string announcement(Heard&, const AppState&, const Derived&, const FocusedItem&);

} // namespace gusset
