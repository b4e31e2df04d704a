#include "app/fields/load_text.hpp"
#include "canvas/hands/strokes.hpp"
#include "canvas/scene/pick.hpp"
#include "canvas/scene/snap.hpp"
#include "canvas/scene/symbols.hpp"
#include "core/angle.hpp"
#include "phrases/tools.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

constexpr double kFirstLoad = 10;       // force units, if there are no other loads to go by
constexpr double kFirstLoadLength = 60; // px length of its arrow
constexpr double kPixelsAStep = 6;      // pointer travel between two round values
constexpr double kDegreesAStep = 5;

// The largest 1, 2 or 5 times a power of ten that is not above `value`.
double roundStep(double value) {
    const double decade = std::pow(10, std::floor(std::log10(value)));
    const double times = value / decade;
    return (times >= 5 ? 5 : times >= 2 ? 2 : 1) * decade;
}

double perPixelOf(const Truss& truss, const Camera& camera) {
    const double largest = largestLoad(truss);
    return largest > 0 ? largest / longestArrow(camera) : kFirstLoad / kFirstLoadLength;
}

// A load is added to the case that is shown, or to the usual one.
std::string caseShown(const AppState& state) {
    return isOneCase(state.choice) ? choiceName(state.choice) : "";
}

// By components along an axis, which are then exact; else by magnitude and angle, as it was drawn.
Load loadOf(JointId joint, double size, double degrees) {
    const Vec2 way = directionOf(degrees);
    Load load;
    if (way.x == 0 || way.y == 0) {
        load.what = JointForce{joint, size * way.x, size * way.y};
    } else {
        load.what = AngledForce{joint, size, degrees};
    }
    return load;
}

struct DrawnForce {
    double size = 0;
    double degrees = 0;
};

DrawnForce drawnForce(Vec2 onBoard, double perPixel, bool freely) {
    const double sizeStep = roundStep(perPixel * kPixelsAStep) * (freely ? 0.1 : 1);
    const double degreeStep = freely ? 1 : kDegreesAStep;
    const double degrees = toDegrees(std::atan2(-onBoard.y, onBoard.x));
    const Vec2 size = roundToStep({length(onBoard) * perPixel, 0}, sizeStep);
    return {std::max(size.x, sizeStep), std::round(degrees / degreeStep) * degreeStep};
}

LoadId loadOn(const Truss& truss, JointId joint) {
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        if (jointOf(truss.loads[i]) == joint) {
            return LoadId{static_cast<int>(i)};
        }
    }
    return {};
}

} // namespace

Gesture beginNewLoad(const AppState& state, JointId joint) {
    Gesture gesture;
    gesture.kind = GestureKind::DragLoad;
    gesture.joint = joint;
    gesture.perPixel = perPixelOf(state.truss, state.view.camera);
    return gesture;
}

Gesture beginLoadDrag(const AppState& state, LoadId load) {
    Gesture gesture = beginNewLoad(state, jointOf(state.truss.loads[load.at()]));
    gesture.load = load;
    for (const LoadSymbol& symbol : layOutSymbols(state.truss, state.view.camera).loads) {
        if (symbol.load == load) { // so that the far end stays under the pointer
            const double size = length(symbol.arrow.head - symbol.arrow.tail);
            const Vec2 force = forceOf(state.truss.loads[load.at()]).value_or(Vec2{});
            gesture.byTail = symbol.pushes;
            gesture.perPixel = length(force) / (size + kArrowGap);
        }
    }
    return gesture;
}

void dragLoad(const AppState& state, const PointerEvent& event, Gesture& gesture,
              Actions& actions) {
    const Vec2 joint = toPixel(state.view.camera, state.truss.joints[gesture.joint.at()].at);
    const Vec2 out = event.pixel - joint;
    const DrawnForce drawn = drawnForce(gesture.byTail ? -out : out, gesture.perPixel, event.alt);
    Load load = loadOf(gesture.joint, drawn.size, drawn.degrees);
    gesture.force = forceOf(load).value_or(Vec2{});
    if (gesture.load.valid()) {
        const Load& before = state.committed.loads[gesture.load.at()];
        load.caseId = before.caseId;
        load.unknown = before.unknown;
        actions.push_back(ShowEdit{SetLoad{gesture.load, load}});
    } else {
        load.caseId = caseShown(state);
        actions.push_back(ShowEdit{AddLoad{load}});
    }
}

void editLoadValue(const AppState& state, LoadId load, Actions& actions) {
    const Load& edited = state.truss.loads[load.at()];
    if (canTypeFigure(edited)) {
        actions.push_back(BeginField{LoadField{load}, loadFigureTyped(state.truss, edited)});
    }
}

void addMemberLoad(const AppState& state, MemberId member, Actions& actions) {
    const Member& loaded = state.truss.members[member.at()];
    const double largest = largestLoad(state.truss);
    MemberForce force;
    force.from = loaded.a;
    force.to = loaded.b;
    force.at = 0.5 * length(memberVector(state.truss, member));
    force.fy = largest > 0 ? -largest : -kFirstLoad;
    Load added;
    added.what = force;
    added.caseId = caseShown(state);
    const LoadId load{static_cast<int>(state.committed.loads.size())};
    actions.push_back(Commit{AddLoad{added}});
    actions.push_back(SetSelection{thingsOf(load)});
    actions.push_back(BeginField{LoadField{load}, loadFigureTyped(state.truss, added)});
}

std::optional<Load> turnedRound(const Load& load) {
    Load turned = load;
    if (auto* angled = std::get_if<AngledForce>(&turned.what)) {
        angled->size = -angled->size;
    } else if (auto* force = std::get_if<JointForce>(&turned.what)) {
        force->fx = -force->fx;
        force->fy = -force->fy;
    } else if (auto* onMember = std::get_if<MemberForce>(&turned.what)) {
        onMember->fx = -onMember->fx;
        onMember->fy = -onMember->fy;
    } else {
        return std::nullopt;
    }
    return turned;
}

void tapLoad(const AppState& state, const Hit& under, Actions& actions) {
    const JointId joint = hitOf<JointId>(under);
    LoadId load = joint.valid() ? loadOn(state.truss, joint) : hitOf<LoadId>(under);
    if (!joint.valid() && !load.valid()) {
        actions.push_back(Say{MessageKind::Info, sayPlain(*state.book, phrase::kDragForLoad)});
        return;
    }
    if (load.valid()) {
        actions.push_back(SetSelection{thingsOf(load)});
        editLoadValue(state, load, actions);
        return;
    }
    const double largest = largestLoad(state.truss);
    Load added = loadOf(joint, largest > 0 ? largest : kFirstLoad, -90);
    added.caseId = caseShown(state);
    load = LoadId{static_cast<int>(state.committed.loads.size())};
    actions.push_back(Commit{AddLoad{added}});
    actions.push_back(SetSelection{thingsOf(load)});
    actions.push_back(BeginField{LoadField{load}, loadFigureTyped(state.truss, added)});
}

} // namespace gusset
