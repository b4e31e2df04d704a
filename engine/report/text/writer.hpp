#pragma once
// What is needed to write: the language, and the truss, whose units and class settings apply.

#include "model/truss/truss.hpp"
#include "report/text/phrases.hpp"

namespace gusset {

struct Writer {
    const PhraseBook& book;
    const Truss& truss; // both must outlive the writer

    operator const PhraseBook&() const { return book; } // for code that needs the language only
};

} // namespace gusset
