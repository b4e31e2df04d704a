#pragma once
// Reads a working as it is printed, from nothing but its numbers, names and words, and objects to
// the first line that its own digits contradict: an equation that does not balance, a slope that is
// not that of the members, a force that is not the solver's, a name or a number of unknown origin.

#include "report/derivation/passage.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <vector>

namespace gusset::support {

struct PrintedReading {
    std::string objection; // with its line; or empty
    int equations = 0;     // those that were worked out
    int results = 0;       // those that were compared with the solver's
    int inSymbols = 0;     // of them, those that stood in symbols first
    int quotients = 0;     // results that were divided out first
    int slopes = 0;        // lines of slopes that were compared with the members'
};
// A whole working gives every force. A chain gives some, and takes the loads as given on the board.
enum class PrintedExtent { Whole, Chain };
// The comparison with the solver is left out when rounded values are carried: the results then
// differ by the accumulated rounding.
[[nodiscard]] PrintedReading readPrintedText(const std::string& text, const Truss&, const Solution&,
                                             PrintedExtent = PrintedExtent::Whole);
// The same for the formulas as set in HTML and in the notebook.
[[nodiscard]] PrintedReading readPrintedPassages(const std::vector<Passage>&, const Truss&,
                                                 const Solution&);

} // namespace gusset::support
