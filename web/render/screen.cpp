#include "render/screen.hpp"

#include <imgui.h>

#include <cstdint>

namespace gusset {

void Screen::add(std::span<const std::byte> bytes) {
    next_.insert(next_.end(), bytes.begin(), bytes.end());
}

void Screen::add(const ImDrawData& data) {
    for (const ImDrawList* list : data.CmdLists) {
        for (const ImDrawCmd& command : list->CmdBuffer) {
            for (const float edge :
                 {command.ClipRect.x, command.ClipRect.y, command.ClipRect.z, command.ClipRect.w}) {
                add(double{edge});
            }
            const std::uintptr_t texture = reinterpret_cast<std::uintptr_t>(command.TextureId);
            add(static_cast<double>(texture));
            add(static_cast<double>(command.ElemCount));
        }
        add(std::as_bytes(std::span(list->VtxBuffer.Data, list->VtxBuffer.size())));
        add(std::as_bytes(std::span(list->IdxBuffer.Data, list->IdxBuffer.size())));
    }
}

bool Screen::changes() {
    const bool same = isKnown_ && next_ == shown_;
    std::swap(shown_, next_);
    next_.clear();
    isKnown_ = true;
    return !same;
}

} // namespace gusset
