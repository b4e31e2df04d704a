#include "ui/sketch_view.hpp"

#include "ui/widgets.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {
namespace {

struct SketchPen {
    const Ui& ui;
    ImDrawList& list;
    ImVec2 origin;   // device px
    float scale = 1; // device px per px of the sketch

    [[nodiscard]] ImVec2 at(Vec2 point) const {
        return {origin.x + scale * static_cast<float>(point.x),
                origin.y + scale * static_cast<float>(point.y)};
    }
    [[nodiscard]] float px(double length) const { return scale * static_cast<float>(length); }
};

Ink inkOf(SketchInk ink) {
    switch (ink) {
    case SketchInk::Plain:
        return Ink::Plain;
    case SketchInk::Muted:
        return Ink::Muted;
    case SketchInk::Accent:
        return Ink::Accent;
    case SketchInk::Tension:
        return Ink::Tension;
    case SketchInk::Compression:
        return Ink::Compression;
    case SketchInk::Zero:
        return Ink::Zero;
    case SketchInk::Load:
        return Ink::Load;
    case SketchInk::Reaction:
        return Ink::Reaction;
    }
    return Ink::Plain;
}

ImU32 lineInk(const SketchPen& pen, SketchInk ink) {
    return packed(lineColour(*pen.ui.palette, inkOf(ink)));
}

void drawArea(const SketchPen& pen, const SketchArea& area) {
    Colour wash = lineColour(*pen.ui.palette, inkOf(area.ink));
    wash.alpha = static_cast<std::uint8_t>(std::lround(255 * kSketchWash));
    for (const Vec2 corner : area.corners) {
        pen.list.PathLineTo(pen.at(corner));
    }
    // ImGui fills convex areas of either orientation, but smooths the edges of only one.
    const ImDrawListFlags flags = pen.list.Flags;
    pen.list.Flags &= ~ImDrawListFlags_AntiAliasedFill;
    pen.list.PathFillConvex(packed(wash));
    pen.list.Flags = flags;
}

void drawLine(const SketchPen& pen, const SketchLine& line) {
    constexpr double kDash = 5; // px on and off
    const ImU32 ink = lineInk(pen, line.ink);
    if (!line.dashed) {
        pen.list.AddLine(pen.at(line.a), pen.at(line.b), ink, pen.px(line.width));
        return;
    }
    const double whole = length(line.b - line.a);
    for (double from = 0; from < whole; from += 2 * kDash) {
        const double to = std::min(from + kDash, whole);
        pen.list.AddLine(pen.at(line.a + (from / whole) * (line.b - line.a)),
                         pen.at(line.a + (to / whole) * (line.b - line.a)), ink,
                         pen.px(line.width));
    }
}

void drawArrow(const SketchPen& pen, const SketchArrow& arrow) {
    const ImU32 ink = lineInk(pen, arrow.ink);
    const std::array<Vec2, 3> head = headOf(arrow);
    pen.list.AddLine(pen.at(arrow.tail), pen.at(shaftEnd(arrow)), ink, pen.px(arrow.width));
    pen.list.AddTriangleFilled(pen.at(head[0]), pen.at(head[1]), pen.at(head[2]), ink);
}

// Clockwise on the screen, with y down: the angle increases.
void drawArc(const SketchPen& pen, const SketchArc& arc) {
    constexpr float kTurn = 6.2831853f;
    const auto angleOf = [](Vec2 way) { return static_cast<float>(std::atan2(way.y, way.x)); };
    const float from = angleOf(arc.from);
    float to = angleOf(arc.to);
    if (to < from) {
        to += kTurn;
    }
    pen.list.PathArcTo(pen.at(arc.centre), pen.px(arc.radius), from, to);
    pen.list.PathStroke(lineInk(pen, arc.ink), 0, pen.px(1));
}

void drawDisc(const SketchPen& pen, const SketchDisc& disc) {
    const ImU32 ink = lineInk(pen, disc.ink);
    if (disc.filled) {
        pen.list.AddCircleFilled(pen.at(disc.at), pen.px(disc.radius), ink);
        return;
    }
    pen.list.AddCircleFilled(pen.at(disc.at), pen.px(disc.radius),
                             packed(pen.ui.palette->notebook));
    pen.list.AddCircle(pen.at(disc.at), pen.px(disc.radius), ink, 0, pen.px(1.5));
}

struct SketchFace {
    const ImFont* font = nullptr;
    float size = 0; // device px
};

// The face rasterised nearest to this size (device px): within a tenth it is used as it is, and
// sharp; else it is scaled.
SketchFace faceFor(const Fonts& fonts, RunStyle style, float size) {
    const std::array<const ImFont*, 4> plain{fonts.subscript, fonts.small, fonts.body,
                                             fonts.heading};
    const std::array<const ImFont*, 2> strong{fonts.joint, fonts.strong};
    const auto nearest = [size](const auto& faces) {
        return *std::min_element(faces.begin(), faces.end(), [&](const ImFont* a, const ImFont* b) {
            return std::fabs(a->FontSize - size) < std::fabs(b->FontSize - size);
        });
    };
    const ImFont* font = style == RunStyle::Strong     ? nearest(strong)
                         : style == RunStyle::Variable ? fonts.variable
                                                       : nearest(plain);
    return {font, std::fabs(font->FontSize - size) <= 0.1f * size ? font->FontSize : size};
}

void drawWords(const SketchPen& pen, const SketchWords& words) {
    const float size = pen.px(words.size);
    const auto faceOf = [&](RunStyle style) {
        const bool low = style == RunStyle::Subscript;
        return faceFor(pen.ui.fonts, style, low ? size * float(kSubscriptSize) : size);
    };
    const auto widthIn = [](const SketchFace& face, const std::string& text) {
        return textSize(*face.font, text, {.size = face.size}).x;
    };
    float width = 0;
    for (const Run& run : words.words) {
        width += widthIn(faceOf(run.style), run.text);
    }
    const float before = words.anchor == SketchAnchor::Start    ? 0
                         : words.anchor == SketchAnchor::Middle ? width / 2
                                                                : width;
    ImVec2 at = pen.at(words.at);
    at.x -= before;
    const ImU32 ink = packed(textColour(*pen.ui.palette, inkOf(words.ink)));
    for (const Run& run : words.words) {
        const SketchFace face = faceOf(run.style);
        const float drop = run.style == RunStyle::Subscript ? size * float(kSubscriptDrop) : 0;
        putText(pen.list, *face.font, {std::round(at.x), std::round(at.y - face.size / 2 + drop)},
                ink, run.text, {.size = face.size});
        at.x += widthIn(face, run.text);
    }
}

void drawAll(const SketchPen& pen, const Sketch& sketch) {
    for (const SketchArea& area : sketch.areas) {
        drawArea(pen, area);
    }
    for (const SketchLine& line : sketch.lines) {
        drawLine(pen, line);
    }
    for (const SketchArc& arc : sketch.arcs) {
        drawArc(pen, arc);
    }
    for (const SketchArrow& arrow : sketch.arrows) {
        drawArrow(pen, arrow);
    }
    for (const SketchDisc& disc : sketch.discs) {
        drawDisc(pen, disc);
    }
    for (const SketchWords& words : sketch.words) {
        drawWords(pen, words);
    }
}

float scaleOf(const Ui& ui, const Sketch& sketch, const SketchLook& look, float room) {
    const double low =
        look.tallest > 0 ? look.tallest / std::max(sketch.height, 1.0) : look.largest;
    const auto width = static_cast<float>(std::max(sketch.width, 1.0));
    return std::min(room / width, ui.px(std::min(look.largest, low)));
}

} // namespace

float sketchHeight(const Ui& ui, const Sketch& sketch, const SketchLook& look, float room) {
    return scaleOf(ui, sketch, look, room) * static_cast<float>(sketch.height);
}

std::optional<Vec2> drawSketch(const Ui& ui, const char* id, const Sketch& sketch,
                               const SketchLook& look) {
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    const SketchPen pen{ui, *ImGui::GetWindowDrawList(), origin,
                        scaleOf(ui, sketch, look, ImGui::GetContentRegionAvail().x)};
    const ImVec2 size{pen.px(sketch.width), std::max(pen.px(sketch.height), 1.0f)};
    if (look.readable) {
        ImGui::InvisibleButton(id, size);
        if (ImGui::IsItemActivated()) {
            keepFinger();
        }
    } else {
        ImGui::Dummy(size);
    }
    drawAll(pen, sketch);
    if (!look.readable) {
        return std::nullopt;
    }
    drawFocus(ui, sketch.says);
    if (ImGui::IsItemHovered()) {
        ImGui::SetMouseCursor(ImGuiMouseCursor_ResizeEW);
    }
    const ImVec2 pointer = ImGui::GetIO().MousePos;
    if (!ImGui::IsItemActive() || !ImGui::IsMousePosValid(&pointer)) {
        return std::nullopt;
    }
    return Vec2{(pointer.x - origin.x) / pen.scale, (pointer.y - origin.y) / pen.scale};
}

} // namespace gusset
