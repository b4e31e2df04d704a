#pragma once
// The roof of small_truss on a board: the start of most tests of tools.

#include "app/board.hpp"

namespace gusset::support {

[[nodiscard]] inline Board roofBoard(PointerKind kind = PointerKind::Mouse) {
    Board board;
    board.state = startWith(roof());
    board.kind = kind;
    return board;
}

} // namespace gusset::support
