#pragma once
// Names as files and links of earlier versions may have them, with characters that can't be seen.

#include "exchange/files/object_reader.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

// Takes what can't be seen out of names, and names anew what then shows nothing, with a note for
// each; what refers to them follows. Where the name that is left looks like another of its list
// that is an error, as there is no telling which of the two is meant.
void cleanNames(Truss&, IssueList&);

} // namespace gusset
