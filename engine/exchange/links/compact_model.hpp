#pragma once
// The compact, array-shaped form of a model that links hold (link form 1), derived from the model
// file:
//
//   [joints, members, supports, loads, rest, extras]          may end early
//
// Each of the four lists is stored as columns, one for each key in a fixed order
// (compact_columns.hpp); a column that no row uses is 0, a row without the key is null, and
// trailing 0s and nulls are left out. Numbers are a count of decimals followed by the differences
// from row to row, without a decimal point: 0, 1.25, 2.5 is [2,0,125,125]; where that is not exact,
// -1 and the numbers themselves. Joints are given by the difference of their index from that of the
// previous row (a member's b: from its a). Default labels A, B, C … are left out. `rest` is an
// object with everything else in the file, in the file's own form, units only if they are not the
// default. `extras` holds the unknown keys of the rows of each of the four lists.

#include "exchange/json/json_value.hpp"
#include "model/truss/truss.hpp"

#include <string>

namespace gusset {

inline constexpr std::size_t kMostInLink = 10'000; // of joints, members, supports and loads each

[[nodiscard]] std::string compactModel(const Truss&);

// Back to a value in the form of the model file, which still has to be read and validated.
[[nodiscard]] Outcome<JsonValue> expandModel(const JsonValue& compact);

} // namespace gusset
