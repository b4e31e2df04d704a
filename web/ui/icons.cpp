#include "ui/icons.hpp"

#include <initializer_list>
#include <numbers>

namespace gusset {
namespace {

// Draws in the icon's own square: (0, 0) top left, (24, 24) bottom right.
class Pen {
public:
    Pen(ImDrawList& list, ImVec2 centre, float side, ImU32 ink)
        : list_(list), corner_{centre.x - side / 2, centre.y - side / 2}, unit_(side / 24),
          ink_(ink) {}

    void line(ImVec2 a, ImVec2 b) { list_.AddLine(at(a), at(b), ink_, width()); }
    void path(std::initializer_list<ImVec2> points, bool closed = false) {
        trace(points);
        list_.PathStroke(ink_, closed ? ImDrawFlags_Closed : ImDrawFlags_None, width());
    }
    void area(std::initializer_list<ImVec2> points) {
        trace(points);
        list_.PathFillConvex(ink_);
    }
    void ring(ImVec2 centre, float radius) {
        list_.AddCircle(at(centre), radius * unit_, ink_, 0, width());
    }
    void disc(ImVec2 centre, float radius) {
        list_.AddCircleFilled(at(centre), radius * unit_, ink_);
    }
    // Angles in turns, clockwise on the screen from the right.
    void arc(ImVec2 centre, float radius, float from, float to) {
        constexpr float kTurn = 2 * std::numbers::pi_v<float>;
        list_.PathArcTo(at(centre), radius * unit_, from * kTurn, to * kTurn);
        list_.PathStroke(ink_, ImDrawFlags_None, width());
    }

private:
    [[nodiscard]] ImVec2 at(ImVec2 p) const {
        return {corner_.x + p.x * unit_, corner_.y + p.y * unit_};
    }
    [[nodiscard]] float width() const { return 1.7f * unit_; }
    void trace(std::initializer_list<ImVec2> points) {
        for (const ImVec2 point : points) {
            list_.PathLineTo(at(point));
        }
    }

    ImDrawList& list_;
    ImVec2 corner_;
    float unit_;
    ImU32 ink_;
};

void drawGround(Pen& pen, float y) {
    pen.line({4, y}, {20, y});
    for (float x = 6; x < 21; x += 4.5f) {
        pen.line({x, y}, {x - 2.5f, y + 3});
    }
}

void drawTool(Pen& pen, Icon icon) {
    switch (icon) {
    case Icon::Select:
        pen.path({{6, 3.5f},
                  {6, 18.5f},
                  {10, 14.7f},
                  {12.8f, 20.5f},
                  {15.4f, 19.2f},
                  {12.7f, 13.6f},
                  {18, 13.2f}},
                 true);
        break;
    case Icon::Member:
        pen.line({7.2f, 16.8f}, {16.8f, 7.2f});
        pen.ring({5.2f, 18.8f}, 2.7f);
        pen.ring({18.8f, 5.2f}, 2.7f);
        break;
    case Icon::Pin:
        pen.ring({12, 5}, 2.3f);
        pen.path({{12, 7.3f}, {5.5f, 17.5f}, {18.5f, 17.5f}}, true);
        drawGround(pen, 17.5f);
        break;
    case Icon::Roller:
        pen.ring({12, 4.6f}, 2.3f);
        pen.path({{12, 6.9f}, {6, 14.5f}, {18, 14.5f}}, true);
        pen.ring({8.6f, 17.4f}, 1.9f);
        pen.ring({15.4f, 17.4f}, 1.9f);
        pen.line({4, 20.6f}, {20, 20.6f});
        break;
    case Icon::Load:
        pen.line({12, 2.5f}, {12, 15});
        pen.area({{7.8f, 13}, {16.2f, 13}, {12, 20.2f}});
        pen.line({6, 21.8f}, {18, 21.8f});
        break;
    case Icon::Erase:
        pen.path({{9, 19.5f}, {4, 14.5f}, {14, 4.5f}, {20.5f, 11}, {12, 19.5f}}, true);
        pen.line({9, 9.5f}, {15.5f, 16});
        pen.line({8, 21.5f}, {20, 21.5f});
        break;
    default:
        break;
    }
}

void drawTurnBack(Pen& pen, bool mirrored) {
    const auto x = [mirrored](float left) { return mirrored ? 24 - left : left; };
    pen.path({{x(8.5f), 4.5f}, {x(4.5f), 8.5f}, {x(8.5f), 12.5f}});
    pen.line({x(4.5f), 8.5f}, {x(14), 8.5f});
    if (mirrored) {
        pen.arc({10, 13.5f}, 5, -0.25f, -0.75f);
        pen.line({10, 18.5f}, {15, 18.5f});
    } else {
        pen.arc({14, 13.5f}, 5, -0.25f, 0.25f);
        pen.line({14, 18.5f}, {9, 18.5f});
    }
}

void drawCommand(Pen& pen, Icon icon) {
    switch (icon) {
    case Icon::Undo:
        drawTurnBack(pen, false);
        break;
    case Icon::Redo:
        drawTurnBack(pen, true);
        break;
    case Icon::Fit:
        pen.path({{4, 9}, {4, 4}, {9, 4}});
        pen.path({{15, 4}, {20, 4}, {20, 9}});
        pen.path({{20, 15}, {20, 20}, {15, 20}});
        pen.path({{9, 20}, {4, 20}, {4, 15}});
        pen.path({{7.5f, 15.5f}, {12, 8.5f}, {16.5f, 15.5f}}, true);
        break;
    case Icon::Share:
        pen.arc({8.3f, 15.7f}, 4.3f, 0.02f, 0.73f);
        pen.arc({15.7f, 8.3f}, 4.3f, -0.48f, 0.23f);
        pen.line({9, 15}, {15, 9});
        break;
    case Icon::Notebook:
        pen.path({{6.5f, 3.5f}, {19, 3.5f}, {19, 20.5f}, {6.5f, 20.5f}}, true);
        for (float y = 7; y < 18; y += 5) {
            pen.line({4.5f, y}, {8.5f, y});
        }
        pen.line({11.5f, 8.5f}, {16, 8.5f});
        pen.line({11.5f, 12}, {16, 12});
        break;
    case Icon::View:
        pen.path({{12, 4}, {21, 8.5f}, {12, 13}, {3, 8.5f}}, true);
        pen.path({{3, 12.3f}, {12, 16.8f}, {21, 12.3f}});
        pen.path({{3, 16.1f}, {12, 20.6f}, {21, 16.1f}});
        break;
    case Icon::Mark: // as site/icons/gusset.svg
        pen.line({3, 17.5f}, {21, 17.5f});
        pen.line({12, 17.5f}, {5, 5});
        pen.line({12, 17.5f}, {19, 5});
        pen.area({{4.5f, 20.8f},
                  {4.5f, 16},
                  {8.6f, 10.8f},
                  {15.4f, 10.8f},
                  {19.5f, 16},
                  {19.5f, 20.8f}});
        break;
    case Icon::Pencil:
        pen.path({{4, 20}, {5.5f, 14}, {16.5f, 3}, {21, 7.5f}, {10, 18.5f}}, true);
        pen.line({13.5f, 6}, {18, 10.5f});
        break;
    case Icon::Trash:
        pen.line({4.5f, 7}, {19.5f, 7});
        pen.path({{9.5f, 6.5f}, {9.5f, 4}, {14.5f, 4}, {14.5f, 6.5f}});
        pen.path({{6.5f, 7.5f}, {7.3f, 20}, {16.7f, 20}, {17.5f, 7.5f}});
        pen.line({10.3f, 11}, {10.3f, 16.5f});
        pen.line({13.7f, 11}, {13.7f, 16.5f});
        break;
    default:
        break;
    }
}

void drawSign(Pen& pen, Icon icon) {
    switch (icon) {
    case Icon::Plus:
        pen.line({12, 5}, {12, 19});
        pen.line({5, 12}, {19, 12});
        break;
    case Icon::Next:
        pen.path({{9.5f, 5.5f}, {16, 12}, {9.5f, 18.5f}});
        break;
    case Icon::Previous:
        pen.path({{14.5f, 5.5f}, {8, 12}, {14.5f, 18.5f}});
        break;
    case Icon::Up:
        pen.path({{5.5f, 15}, {12, 8.5f}, {18.5f, 15}});
        break;
    case Icon::Down:
        pen.path({{5.5f, 9}, {12, 15.5f}, {18.5f, 9}});
        break;
    case Icon::Close:
        pen.line({6.5f, 6.5f}, {17.5f, 17.5f});
        pen.line({17.5f, 6.5f}, {6.5f, 17.5f});
        break;
    case Icon::Check:
        pen.path({{5, 12.5f}, {10, 17.5f}, {19, 7}});
        break;
    case Icon::Info:
        pen.ring({12, 12}, 8.5f);
        pen.disc({12, 8}, 1.2f);
        pen.line({12, 11}, {12, 16.5f});
        break;
    case Icon::Problem:
        pen.path({{12, 3.5f}, {21.5f, 20}, {2.5f, 20}}, true);
        pen.line({12, 9.5f}, {12, 14.5f});
        pen.disc({12, 17.2f}, 1.1f);
        break;
    default:
        break;
    }
}

} // namespace

void drawIcon(ImDrawList& list, Icon icon, ImVec2 centre, float side, ImU32 ink) {
    Pen pen(list, centre, side, ink);
    if (icon <= Icon::Erase) {
        drawTool(pen, icon);
    } else if (icon <= Icon::View || (icon >= Icon::Mark && icon <= Icon::Trash)) {
        drawCommand(pen, icon);
    } else {
        drawSign(pen, icon);
    }
}

} // namespace gusset
