#pragma once
// Names with invisible characters, which files and links of earlier versions may contain.

#include "exchange/files/object_reader.hpp"
#include "model/truss/truss.hpp"

namespace gusset {

// Removes invisible characters from names and renames what is then blank, with a note for each;
// references are updated. If the remaining name looks like another in its list, that is an error,
// as there is no telling which of the two is meant.
void cleanNames(Truss&, IssueList&);

} // namespace gusset
