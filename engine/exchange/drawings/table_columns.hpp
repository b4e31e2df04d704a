#pragma once
// Which columns of a table hold joints and members. Private to exchange/drawings.

#include "core/csv.hpp"

#include <string>

namespace gusset {

enum class TableKind { Neither, Joints, Members };

struct TableColumns {
    TableKind kind = TableKind::Neither;
    int label = -1; // columns, −1: none
    int x = -1;
    int y = -1;
    int a = -1;
    int b = -1;
    int both = -1;       // a member in one cell
    std::string unitOfX; // as headed: "mm"; empty: none
    std::string unitOfY;
};

// Of a row of headings; Neither if it is none.
[[nodiscard]] TableColumns columnsOf(const CsvRow&);

} // namespace gusset
