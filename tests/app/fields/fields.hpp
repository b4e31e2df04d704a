#pragma once
// Fields by the keys that the page's scripts use for them.

#include "app/board.hpp"
#include "app/fields/field_key.hpp"
#include "app/fields/finish_field.hpp"
#include "app/state/update.hpp"

#include <catch2/catch_test_macros.hpp>

#include <string>

namespace gusset::support {

inline FieldId fieldNamed(const std::string& key) {
    CAPTURE(key);
    const std::optional<FieldId> field = fieldOf(key);
    REQUIRE(field);
    return *field;
}

// The key of the open field; "" if none is open.
inline std::string openKey(const AppState& state) {
    return state.field.id ? keyOf(*state.field.id) : "";
}

// Types into a field and leaves it in this way; returns the state after that.
inline AppState typedIn(AppState state, const FieldId& field, const std::string& text,
                        FieldEnd how = FieldEnd::Kept) {
    Actions actions;
    REQUIRE(finishField(state, {field, text, how}, actions));
    update(state, actions);
    return state;
}
inline AppState typedIn(AppState state, const std::string& key, const std::string& text,
                        FieldEnd how = FieldEnd::Kept) {
    return typedIn(std::move(state), fieldNamed(key), text, how);
}
inline void type(Board& board, const std::string& key, const std::string& text) {
    board.state = typedIn(board.state, key, text);
}

} // namespace gusset::support
