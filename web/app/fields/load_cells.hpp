#pragma once
// Combinations of load cases, and loads that move, as fields that can be typed into: what a field
// holds, and what edit a typed text asks for. Their keys are "combination.0.name",
// "combination.0.factor.1" (of the second case), "moving.0.axle.2.force".

#include "app/fields/field.hpp"
#include "app/state/action.hpp"
#include "core/outcome.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

enum class ListFieldKind {
    CombinationName,
    Factor, // of a case in a combination; empty: the case has no part in it
    MovingName,
    AxleAt,       // length units behind the first axle
    AxleForce,    // force units, positive down, as axle loads are given
    SpreadForce,  // of a spread load, per unit of length, positive down; empty: none
    SpreadLength, // length units; empty: as long as is worst
};

struct ListField {
    ListFieldKind kind = ListFieldKind::CombinationName;
    int row = 0;  // of the combination or the moving load; one past the end of combinations: new
    int part = 0; // of the case (see caseNames) or the axle; one past the end of axles: new

    friend bool operator==(const ListField&, const ListField&) = default;
};

[[nodiscard]] std::string keyOf(const ListField&);
[[nodiscard]] std::optional<ListField> listFieldOf(const std::string& key);
[[nodiscard]] bool canType(const Truss&, const ListField&);
// What stands in the field when typing begins, and the same to look at.
[[nodiscard]] std::string listText(const Truss&, const ListField&);
[[nodiscard]] std::string listLook(const Truss&, const ListField&);
// Fails with a sentence when the text can't be read. Precondition: canType.
[[nodiscard]] Outcome<Edit> listEdit(const Truss&, const ListField&, const std::string& text);

// The text of such a field came back: as finishCell.
bool finishListField(const AppState&, const FieldDone&, Actions&);

// A moving load of one axle on a path, with a name that is free and a force like those that the
// model has.
[[nodiscard]] Edit addMovingLoad(const Truss&, const std::vector<JointId>& path);
[[nodiscard]] Edit removeMovingLoad(const Truss&, int row);
// Precondition: the load has another axle, or a spread load.
[[nodiscard]] Edit removeAxle(const Truss&, int row, int axle);
[[nodiscard]] bool canRemoveAxle(const MovingLoad&);
[[nodiscard]] Edit removeCombination(const Truss&, int row);

} // namespace gusset
