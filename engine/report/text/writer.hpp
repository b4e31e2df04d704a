#pragma once
// Who writes: in which language, and of which truss, whose units and class settings say how.

#include "model/truss/truss.hpp"
#include "report/text/phrases.hpp"

namespace gusset {

struct Writer {
    const PhraseBook& book;
    const Truss& truss; // both outlive what is written

    operator const PhraseBook&() const { return book; } // for what needs the language alone
};

} // namespace gusset
