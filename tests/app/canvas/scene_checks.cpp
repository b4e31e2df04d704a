#include "app/canvas/scene_checks.hpp"

#include "app/board.hpp"

#include <algorithm>
#include <cmath>

namespace gusset::support {

namespace {

struct Box {
    Vec2 low;
    Vec2 high;
};

Box boxOf(const LabelMark& label) {
    const Vec2 half = 0.5 * measure(label.text, label.kind);
    return {label.at - half, label.at + half};
}

bool overlap(const Box& a, const Box& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

// By intersecting the segment with the box's four sides in turn.
bool crosses(const Box& box, Vec2 a, Vec2 b) {
    double from = 0;
    double to = 1;
    const auto cut = [&](double start, double step, double low, double high) {
        if (step == 0) {
            to = start > low && start < high ? to : -1;
            return;
        }
        const double one = (low - start) / step;
        const double other = (high - start) / step;
        from = std::max(from, std::min(one, other));
        to = std::min(to, std::max(one, other));
    };
    cut(a.x, b.x - a.x, box.low.x, box.high.x);
    cut(a.y, b.y - a.y, box.low.y, box.high.y);
    return from < to;
}

bool nearer(const Box& box, Vec2 point, double radius) {
    const Vec2 nearest{std::clamp(point.x, box.low.x, box.high.x),
                       std::clamp(point.y, box.low.y, box.high.y)};
    return length(point - nearest) < radius;
}

} // namespace

std::vector<std::string> overlapsIn(const Scene& scene, const Truss& truss) {
    std::vector<std::string> found;
    for (std::size_t i = 0; i < scene.labels.size(); ++i) {
        const LabelMark& label = scene.labels[i];
        const Box box = boxOf(label);
        for (std::size_t j = i + 1; j < scene.labels.size(); ++j) {
            if (overlap(box, boxOf(scene.labels[j]))) {
                found.push_back(label.text + " and " + scene.labels[j].text);
            }
        }
        if (label.kind ==
            LabelKind::Note) { // where there is no room for it, it lies over the truss
            continue;
        }
        for (const Member& member : truss.members) {
            const Vec2 a = toPixel(scene.camera, truss.joints[member.a.at()].at);
            const Vec2 b = toPixel(scene.camera, truss.joints[member.b.at()].at);
            if (crosses(box, a, b)) {
                found.push_back(label.text + " and a member");
            }
        }
        for (const Joint& joint : truss.joints) {
            if (nearer(box, toPixel(scene.camera, joint.at), 5)) {
                found.push_back(label.text + " and joint " + joint.label);
            }
        }
    }
    return found;
}

Board boardOn(const Truss& truss, Vec2 page) {
    Board board;
    board.state = startWith(truss);
    Viewport viewport;
    viewport.size = page;
    const PageLayout layout = layoutFor(viewport, board.state.notebook);
    board.act(SetCamera{withLayout(board.state.view.camera, viewport, layout)});
    return board;
}

} // namespace gusset::support
