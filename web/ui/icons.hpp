#pragma once
// Icons of tools and commands, drawn with one line width on a square of 24 by 24.

#include <imgui.h>

namespace gusset {

enum class Icon {
    None,
    Select,
    Member,
    Pin,
    Roller,
    Load,
    Erase,
    Undo,
    Redo,
    Fit,
    Share,
    Notebook,
    View,
    Plus,
    Mark, // of Gusset
    Pencil,
    Trash,
    Next,
    Previous,
    Up,
    Down,
    Close,
    Check,
    Info,
    Problem,
};

// Centred; `side` is the side of the square in device pixels.
void drawIcon(ImDrawList&, Icon, ImVec2 centre, float side, ImU32 ink);

} // namespace gusset
