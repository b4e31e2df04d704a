#pragma once
// Notes on a drawing, of each kind the first few and how many more there are. Private to
// exchange/drawings.

#include "core/outcome.hpp"

#include <vector>

namespace gusset {

class SomeOfEach {
public:
    // Notes of one sentence are of one kind.
    void add(Issue);
    // Kind by kind, in the order of their first notes.
    [[nodiscard]] Issues take();

private:
    struct Kind {
        Issues first;
        std::size_t more = 0;
    };
    std::vector<Kind> kinds_;
};

} // namespace gusset
