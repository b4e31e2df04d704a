#include "canvas/scene/enclosing.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/scene_builders.hpp"
#include "statics/solve/largest.hpp"

#include <algorithm>

namespace gusset {

namespace {

constexpr float kHaloWidth = 14; // px around what is selected or hovered
constexpr float kLitWidth = 11;  // and around what the working mentions,
constexpr float kLitEdge = 1.5F; // with an edge

struct Halo {
    Ink ink = Ink::Halo;
    float width = kHaloWidth;
};

// Ids may be of the committed model while a gesture shows another: missing things get no halo.
void haloMember(Drawing& drawing, MemberId member, const Halo& halo) {
    if (member.at() >= drawing.state.truss.members.size()) {
        return;
    }
    const Member& marked = drawing.state.truss.members[member.at()];
    const Vec2 a = drawing.at[marked.a.at()];
    const Vec2 b = drawing.at[marked.b.at()];
    addLine(drawing, {a, b, halo.width, halo.ink, 0});
    if (halo.ink != Ink::Halo) {
        keepFrame(drawing, member, 0.5 * halo.width);
    }
}

void haloJoint(Drawing& drawing, JointId joint, const Halo& halo) {
    if (joint.at() >= drawing.at.size()) {
        return;
    }
    const auto radius = static_cast<float>(kJointRadius) + 0.5F * halo.width;
    drawing.scene.discs.push_back({drawing.at[joint.at()], radius, 0, halo.ink, halo.ink});
}

void haloThings(Drawing& drawing, const Things& things, const Halo& halo) {
    for (const MemberId member : things.members) {
        haloMember(drawing, member, halo);
    }
    for (const JointId joint : things.joints) {
        haloJoint(drawing, joint, halo);
    }
    for (const SupportSymbol& symbol : drawing.symbols.supports) {
        if (std::find(things.supports.begin(), things.supports.end(), symbol.support) !=
            things.supports.end()) {
            addLine(drawing, {symbol.joint, symbol.joint + kSupportDepth * symbol.down,
                              2 * halo.width, halo.ink, 0});
        }
    }
    for (const ChordSymbol& symbol : drawing.symbols.chords) {
        if (std::find(things.loads.begin(), things.loads.end(), symbol.load) ==
            things.loads.end()) {
            continue;
        }
        for (const Arrow& edge : symbol.edges) {
            addLine(drawing, {edge.tail, edge.head, halo.width, halo.ink, 0});
        }
    }
    for (const LoadSymbol& symbol : drawing.symbols.loads) {
        if (std::find(things.loads.begin(), things.loads.end(), symbol.load) !=
            things.loads.end()) {
            addLine(drawing, {symbol.arrow.tail, symbol.arrow.head, halo.width, halo.ink, 0});
        }
    }
}

// The effect of the influence line.
Things askedFor(const InfluenceShown& shown) {
    const Effect& effect = shown.effect;
    Things things;
    if (effect.kind == EffectKind::MemberForce) {
        things.members.push_back(effect.member);
    } else {
        things.joints.push_back(effect.joint);
    }
    return things;
}

// What the current step of the working mentions, or what the force method releases.
Things spokenOf(const Drawing& drawing) {
    const NotebookState& notebook = drawing.state.notebook;
    const std::optional<int> shown = shownStep(drawing.state, drawing.derived);
    if (!notebook.open || notebook.tab != NotebookTab::Working || !shown) {
        return {};
    }
    const std::vector<Step>& steps = drawing.derived.working.working.steps;
    if (static_cast<std::size_t>(*shown) >= steps.size()) { // a passage without a step
        return drawing.derived.working.released;
    }
    if (notebook.wholeWorking) {
        return {};
    }
    const Step& step = steps[static_cast<std::size_t>(*shown)];
    Things things;
    things.members = step.members;
    if (step.joint.valid()) {
        things.joints.push_back(step.joint);
    }
    return things;
}

LineMark previewLine(Vec2 a, Vec2 b) { return {a, b, 3, Ink::Accent, 0}; }

// Dashed lines to what was snapped to, and a ring if that is a joint or a member.
void drawSnap(Drawing& drawing, const Snap& snap, Vec2 at) {
    const Camera& camera = drawing.state.view.camera;
    for (const auto& [a, b] : snap.guides) {
        addLine(drawing, {toPixel(camera, a), toPixel(camera, b), 1.5F, Ink::Accent, 5});
    }
    if (snap.kind == SnapKind::Joint || snap.kind == SnapKind::Member) {
        drawing.scene.discs.push_back({toPixel(camera, at), 13, 2, Ink::Accent, Ink::Halo});
    }
}

void drawPreview(Drawing& drawing, Vec2 from, Vec2 to, const Snap& snap) {
    const Camera& camera = drawing.state.view.camera;
    const Vec2 start = toPixel(camera, from);
    const Vec2 end = toPixel(camera, to);
    drawSnap(drawing, snap, to);
    addLine(drawing, previewLine(start, end));
    for (const Vec2 at : {start, end}) {
        drawing.scene.discs.push_back({at, 7, 2.5F, Ink::Accent, Ink::Paper});
    }
}

void drawBox(Drawing& drawing, Vec2 corner, Vec2 opposite) {
    const Vec2 third{opposite.x, corner.y};
    const Vec2 fourth{corner.x, opposite.y};
    for (const auto& [a, b] : {std::pair{corner, third}, std::pair{third, opposite},
                               std::pair{opposite, fourth}, std::pair{fourth, corner}}) {
        addLine(drawing, {a, b, 1.5F, Ink::Accent, 4});
    }
}

// The line as drawn, and the straight one that closes it.
void drawAround(Drawing& drawing, const std::vector<Vec2>& line) {
    if (isDiagonal(line)) {
        drawBox(drawing, line.front(), line.back());
        return;
    }
    for (std::size_t i = 1; i < line.size(); ++i) {
        addLine(drawing, {line[i - 1], line[i], 1.5F, Ink::Accent, 0});
    }
    addLine(drawing, {line.back(), line.front(), 1.5F, Ink::Accent, 4});
}

bool encloses(const Gesture& gesture) {
    return gesture.kind == GestureKind::Enclose && gesture.moved && gesture.line.size() > 1;
}

} // namespace

void drawHalos(Drawing& drawing) {
    drawPath(drawing);
    if (drawing.state.view.showLargest && drawing.solved) {
        const LargestForces largest = largestForces(drawing.derived.solution);
        for (const MemberId member : {largest.tension, largest.compression}) {
            if (member.valid()) {
                haloMember(drawing, member, {Ink::Muted, kHaloWidth});
                haloMember(drawing, member, {Ink::Paper, kHaloWidth - 2 * kLitEdge});
            }
        }
    }
    haloThings(drawing, drawing.state.selection, {});
    haloThings(drawing, thingsOf(drawing.state.hover), {});
    if (drawing.state.menu.open) {
        haloThings(drawing, thingsOf(drawing.state.menu.under), {});
    }
    if (encloses(drawing.state.gesture)) {
        haloThings(drawing, thingsEnclosed(drawing.state, drawing.state.gesture.line), {});
    }
    // A pale band with an edge: on a solid one tension and compression would not be
    // distinguishable.
    const Things spoken = drawing.influence ? askedFor(*drawing.influence) : spokenOf(drawing);
    haloThings(drawing, spoken, {Ink::Accent, kLitWidth + 2 * kLitEdge});
    haloThings(drawing, spoken, {Ink::Halo, kLitWidth});
}

void drawGesture(Drawing& drawing) {
    const Gesture& gesture = drawing.state.gesture;
    const Chain& chain = drawing.state.chain;
    if (gesture.kind == GestureKind::DrawMember && gesture.moved) {
        drawPreview(drawing, gesture.from.at, gesture.to.at, gesture.snap);
    } else if (gesture.kind == GestureKind::MoveJoint && gesture.moved) {
        drawSnap(drawing, gesture.snap, gesture.to.at);
        drawing.scene.discs.push_back(
            {toPixel(drawing.state.view.camera, gesture.to.at), 7, 2.5F, Ink::Accent, Ink::Paper});
    } else if (encloses(gesture)) {
        drawAround(drawing, gesture.line);
    } else if (gesture.kind == GestureKind::Cut && gesture.moved) {
        addLine(drawing, {gesture.startPixel, gesture.lastPixel, 2.5F, Ink::Accent, 7});
    } else if (chain.active && chain.showsTo) {
        drawPreview(drawing, chain.last, chain.to, chain.snap);
    } else if (chain.active) {
        drawPreview(drawing, chain.last, chain.last, {});
    }
}

} // namespace gusset
