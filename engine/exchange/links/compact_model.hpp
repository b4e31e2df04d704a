#pragma once
// The compact, array-shaped form of a model that links hold (link form 1), derived from the model
// file:
//
//   [joints, members, supports, loads, rest, extras]          ends where nothing more comes
//
// Each of the four lists stands as columns, one for each key in a fixed order
// (compact_columns.hpp); a column that no row has is 0, a row without the key is null, and what
// would only be 0 or null at the end is left out. Numbers are a count of decimals and then the
// differences from row to row, without a decimal point: 0, 1.25, 2.5 is [2,0,125,125]; where that
// is not exact, -1 and the numbers. Joints are referred to by the difference of their index to that
// of the row before (a member's b: to its a). Labels that are A, B, C … are left out. `rest` is an
// object with what else the file has, in the file's own form, units only when they are not the
// default. `extras` has for each of the four lists the unknown keys of its rows.

#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

inline constexpr std::size_t kMostInLink = 10'000; // joints, members, supports, loads: each

[[nodiscard]] std::string compactModel(const Truss&);

// Back to a value in the form of the model file, which is yet to be read and validated.
[[nodiscard]] Outcome<JsonValue> expandModel(const JsonValue& compact);

} // namespace gusset
