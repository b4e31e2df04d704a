#pragma once
// Notes on a drawing, of each kind the first few and how many more there are. Private to
// exchange/drawings.

#include "core/outcome.hpp"
#include "core/phrase.hpp"

#include <vector>

namespace gusset {

class SomeOfEach {
public:
    // Notes of one sentence are of one kind.
    void add(Issue);
    // Counts one more of a kind that is listed far enough already; false if it is to be added. For
    // kinds of which there may be millions.
    template <PartName... Names>
    [[nodiscard]] bool isOneMore(const Phrase<Names...>& phrase) {
        return isOneMore(phrase.english);
    }
    // Kind by kind, in the order of their first notes.
    [[nodiscard]] Issues take();

private:
    [[nodiscard]] bool isOneMore(const char* english);

    struct Kind {
        Issues first;
        std::size_t more = 0;
    };
    std::vector<Kind> kinds_;
};

} // namespace gusset
