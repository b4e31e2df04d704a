#include "canvas/scene/lesson.hpp"

#include "canvas/scene/scene_builders.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

namespace gusset {
namespace {

constexpr double kFirstLength = 180; // px, about, of the ghost of the first member
constexpr double kRing = 15;         // px, around a joint to be tapped
constexpr double kLoadReach = 64;    // px
constexpr float kDash = 6;

using Line = std::pair<Vec2, Vec2>; // length units

bool joined(const Truss& truss, JointId one, JointId other) {
    return std::any_of(truss.members.begin(), truss.members.end(), [&](const Member& member) {
        return (member.a == one && member.b == other) || (member.a == other && member.b == one);
    });
}

// The far ends of two members that meet at a joint.
struct Corner {
    JointId one;
    JointId other;
};
std::optional<Corner> cornerOf(const Member& member, const Member& next) {
    for (const auto& [at, far] : {std::pair{member.a, member.b}, std::pair{member.b, member.a}}) {
        if (next.a == at || next.b == at) {
            return Corner{far, next.a == at ? next.b : next.a};
        }
    }
    return std::nullopt;
}

struct Triangles {
    bool closed = false;          // there is one
    std::optional<Corner> open{}; // else a corner that one more member makes one
};
Triangles trianglesOf(const Truss& truss) {
    Triangles found;
    for (std::size_t i = 0; i < truss.members.size() && !found.closed; ++i) {
        for (std::size_t j = i + 1; j < truss.members.size() && !found.closed; ++j) {
            const std::optional<Corner> corner = cornerOf(truss.members[i], truss.members[j]);
            found.closed = corner && joined(truss, corner->one, corner->other);
            found.open = corner && !found.open ? corner : found.open;
        }
    }
    return found;
}

bool hasPin(const Truss& truss) {
    return std::any_of(truss.supports.begin(), truss.supports.end(),
                       [](const Support& support) { return support.kind == SupportKind::Pin; });
}

bool isHeld(const Truss& truss, JointId joint) {
    return std::any_of(truss.supports.begin(), truss.supports.end(),
                       [joint](const Support& support) { return support.joint == joint; });
}

// The joint without a support that comes first.
template <class Before>
std::optional<Vec2> firstFree(const Truss& truss, const Before& before) {
    std::optional<Vec2> first;
    for (int i = 0; i < static_cast<int>(truss.joints.size()); ++i) {
        const Vec2 at = truss.joints[static_cast<std::size_t>(i)].at;
        if (!isHeld(truss, JointId{i}) && (!first || before(at, *first))) {
            first = at;
        }
    }
    return first;
}

std::optional<Vec2> jointFor(const Truss& truss, Lesson lesson) {
    switch (lesson) {
    case Lesson::Pin:
        return firstFree(truss, [](Vec2 a, Vec2 b) {
            return std::pair{a.y, a.x} < std::pair{b.y, b.x};
        });
    case Lesson::Roller:
        return firstFree(truss, [](Vec2 a, Vec2 b) {
            return std::pair{a.y, -a.x} < std::pair{b.y, -b.x};
        });
    default:
        return firstFree(truss, [](Vec2 a, Vec2 b) {
            return std::pair{-a.y, a.x} < std::pair{-b.y, b.x};
        });
    }
}

// On the grid, level, in the middle of the free board.
Line firstMember(const AppState& state, const Rect& free) {
    const Camera& camera = state.view.camera;
    const double grid = state.view.gridStep;
    const auto onGrid = [grid](double value) { return grid * std::round(value / grid); };
    const Vec2 middle = toWorld(camera, free.at + 0.5 * free.size);
    const Vec2 centre{onGrid(middle.x), onGrid(middle.y)};
    const double half = grid * std::max(1.0, std::round(0.5 * kFirstLength / camera.scale / grid));
    return {centre - Vec2{half, 0}, centre + Vec2{half, 0}};
}

Line thirdSide(const Truss& truss) {
    const auto at = [&truss](JointId joint) { return truss.joints[joint.at()].at; };
    if (const std::optional<Corner> open = trianglesOf(truss).open) {
        return {at(open->one), at(open->other)};
    }
    const Vec2 a = at(truss.members.front().a);
    const Vec2 b = at(truss.members.front().b);
    const Vec2 along = b - a;
    const Vec2 across = along.x < 0 ? Vec2{along.y, -along.x} : Vec2{-along.y, along.x};
    return {b, a + 0.5 * along + 0.75 * across};
}

void ghostLine(Drawing& drawing, Vec2 from, Vec2 to) {
    addLine(drawing, {from, to, 3, Ink::Accent, kDash});
    drawing.scene.discs.push_back({from, 7, 2, Ink::Accent, Ink::Paper});
    drawing.scene.discs.push_back({to, 11, 2, Ink::Accent, Ink::Paper});
    drawing.scene.discs.push_back({to, 5, 0, Ink::Accent, Ink::Accent}); // where the finger lifts
}

void ghostRing(Drawing& drawing, Vec2 at) {
    constexpr int kParts = 24;
    const auto on = [at](int part) {
        const double turn = 2 * std::numbers::pi * part / kParts;
        return at + kRing * Vec2{std::cos(turn), std::sin(turn)};
    };
    for (int part = 0; part < kParts; part += 2) {
        addLine(drawing, {on(part), on(part + 1), 3, Ink::Accent, 0});
    }
    drawing.obstacles.addDisc(at, kRing + 3); // labels stay outside
}

} // namespace

Lesson lessonOf(const AppState& state, const Derived& derived) {
    const Truss& truss = state.truss;
    if (truss.members.empty()) {
        return Lesson::FirstMember;
    }
    if (!trianglesOf(truss).closed) {
        return Lesson::Triangle;
    }
    if (!hasPin(truss)) {
        return Lesson::Pin;
    }
    if (truss.supports.size() < 2) {
        return Lesson::Roller;
    }
    if (truss.loads.empty()) {
        return Lesson::Load;
    }
    if (derived.revision != state.revision || !derived.solution.solved) {
        return Lesson::Waits;
    }
    const bool looks =
        !state.selection.members.empty() || state.notebook.tab == NotebookTab::Working;
    return looks ? Lesson::Done : Lesson::Forces;
}

bool offersStep(const AppState& state, const Derived& derived) {
    if (!state.view.teaches) {
        return false;
    }
    const Lesson lesson = lessonOf(state, derived);
    return lesson != Lesson::Waits && lesson != Lesson::Done;
}

Tool toolFor(Lesson lesson) {
    switch (lesson) {
    case Lesson::FirstMember:
    case Lesson::Triangle:
        return Tool::Member;
    case Lesson::Pin:
        return Tool::Pin;
    case Lesson::Roller:
        return Tool::Roller;
    case Lesson::Load:
        return Tool::Load;
    default:
        return Tool::Select;
    }
}

void drawLesson(Drawing& drawing) {
    const AppState& state = drawing.state;
    const Camera& camera = state.view.camera;
    const Lesson lesson = lessonOf(state, drawing.derived);
    if (lesson == Lesson::FirstMember || lesson == Lesson::Triangle) {
        const Line line = lesson == Lesson::FirstMember
                              ? firstMember(state, drawing.obstacles.free())
                              : thirdSide(state.truss);
        ghostLine(drawing, toPixel(camera, line.first), toPixel(camera, line.second));
    } else if (lesson == Lesson::Forces) {
        const Member& member = state.truss.members.front();
        ghostRing(drawing, 0.5 * (drawing.at[member.a.at()] + drawing.at[member.b.at()]));
    } else if (toolFor(lesson) != Tool::Select) {
        const std::optional<Vec2> joint = jointFor(state.truss, lesson);
        if (!joint) {
            return;
        }
        const Vec2 at = toPixel(camera, *joint);
        ghostRing(drawing, at);
        if (lesson == Lesson::Load) {
            addArrow(drawing, {at - Vec2{0, kLoadReach}, at - Vec2{0, kRing}}, Ink::Accent, 3);
        }
    }
}

} // namespace gusset
