#include "canvas/hands/arrange.hpp"

#include "canvas/scene/snap.hpp"
#include "phrases/history.hpp"
#include "phrases/results/lists.hpp"

#include <algorithm>
#include <cassert>

namespace gusset {

namespace {

// The selected joints and the ends of selected members, as flags indexed by joint.
std::vector<bool> selectedJoints(const AppState& state) {
    std::vector<bool> selected(state.truss.joints.size());
    for (const JointId joint : state.selection.joints) {
        selected[joint.at()] = true;
    }
    for (const MemberId member : state.selection.members) {
        selected[state.truss.members[member.at()].a.at()] = true;
        selected[state.truss.members[member.at()].b.at()] = true;
    }
    return selected;
}

Things wholeSelection(const AppState& state) {
    const Truss& truss = state.truss;
    const std::vector<bool> selected = selectedJoints(state);
    Things things;
    for (std::size_t i = 0; i < selected.size(); ++i) {
        if (selected[i]) {
            things.joints.push_back(JointId{static_cast<int>(i)});
        }
    }
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        if (selected[truss.members[i].a.at()] && selected[truss.members[i].b.at()]) {
            things.members.push_back(MemberId{static_cast<int>(i)});
        }
    }
    for (std::size_t i = 0; i < truss.loads.size(); ++i) {
        const std::vector<JointId> joints = jointsOf(truss.loads[i]);
        const auto isSelected = [&](JointId joint) { return selected[joint.at()]; };
        if (!joints.empty() && std::all_of(joints.begin(), joints.end(), isSelected)) {
            things.loads.push_back(LoadId{static_cast<int>(i)});
        }
    }
    return things;
}

Extent boxOf(const Truss& truss, const std::vector<JointId>& joints) {
    Extent box{truss.joints[joints.front().at()].at, truss.joints[joints.front().at()].at};
    for (const JointId joint : joints) {
        const Vec2 at = truss.joints[joint.at()].at;
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y)};
    }
    return box;
}

// Loads on the mirror line are their own images: copying would double them.
void dropLoadsOnLine(const Truss& truss, bool upright, double line, Things& things) {
    std::erase_if(things.loads, [&](LoadId load) {
        const std::vector<JointId> joints = jointsOf(truss.loads[load.at()]);
        return std::all_of(joints.begin(), joints.end(), [&](JointId joint) {
            const Vec2 at = truss.joints[joint.at()].at;
            return (upright ? at.x : at.y) == line;
        });
    });
}

// The name of the undo step.
Statement stepOf(const Things& things, Phrase<> one, CountedPhrase many) {
    const std::size_t count = things.joints.size();
    return count == 1 ? Statement(one) : statement(many, {{"n", count}});
}

} // namespace

std::optional<Edit> mirrorSelection(const AppState& state, Side side) {
    Things things = wholeSelection(state);
    if (things.joints.empty()) {
        return std::nullopt;
    }
    const Extent box = boxOf(state.truss, things.joints);
    const bool upright = side == Side::Left || side == Side::Right;
    const double line = side == Side::Left    ? box.low.x
                        : side == Side::Right ? box.high.x
                        : side == Side::Below ? box.low.y
                                              : box.high.y;
    dropLoadsOnLine(state.truss, upright, line, things);
    const Placement image = upright ? Placement{{-1, 0}, {0, 1}, {2 * line, 0}}
                                    : Placement{{1, 0}, {0, -1}, {0, 2 * line}};
    return CopyThings{
        things, {image}, stepOf(things, phrase::kStepMirrorJoint, phrase::kStepMirrorJoints)};
}

std::optional<Edit> repeatSelection(const AppState& state, Vec2 step, int times) {
    assert(times >= 1);
    const Things things = wholeSelection(state);
    if (things.joints.empty() || step == Vec2{}) {
        return std::nullopt;
    }
    CopyThings copy{
        things, {}, stepOf(things, phrase::kStepRepeatJoint, phrase::kStepRepeatJoints)};
    for (int i = 1; i <= times; ++i) {
        copy.placements.push_back({{1, 0}, {0, 1}, static_cast<double>(i) * step});
    }
    return copy;
}

Vec2 ownStep(const AppState& state) {
    const Things things = wholeSelection(state);
    if (things.joints.empty()) {
        return {};
    }
    const Extent box = boxOf(state.truss, things.joints);
    const Vec2 size = box.high - box.low;
    return size.x > 0 ? Vec2{size.x, 0} : Vec2{0, size.y};
}

std::optional<Edit> shiftSelection(const AppState& state, Vec2 by) {
    const Things things = wholeSelection(state);
    if (things.joints.empty()) {
        return std::nullopt;
    }
    return shifted(state.truss, state.view, things.joints, by);
}

std::optional<Edit> copySelection(const AppState& state, Vec2 by) {
    const Things things = wholeSelection(state);
    if (things.joints.empty() || by == Vec2{}) {
        return std::nullopt;
    }
    return CopyThings{things,
                      {{{1, 0}, {0, 1}, by}},
                      stepOf(things, phrase::kStepCopyJoint, phrase::kStepCopyJoints)};
}

std::optional<Edit> copySelectionTo(const AppState& state, Vec2 place) {
    const Things things = wholeSelection(state);
    if (things.joints.empty()) {
        return std::nullopt;
    }
    return copySelection(state, place - boxOf(state.truss, things.joints).low);
}

std::optional<Edit> turnSelection(const AppState& state, double degrees) {
    const Things things = wholeSelection(state);
    if (things.joints.empty()) {
        return std::nullopt;
    }
    const Extent box = boxOf(state.truss, things.joints);
    const Vec2 middle = 0.5 * (box.low + box.high);
    const Vec2 way = directionOf(degrees);
    MoveJoints turn{
        things.joints, {}, stepOf(things, phrase::kStepTurnJoint, phrase::kStepTurnJoints)};
    for (const JointId joint : things.joints) {
        const Vec2 from = state.truss.joints[joint.at()].at - middle;
        turn.to.push_back(middle + from.x * way + from.y * Vec2{-way.y, way.x});
    }
    return turn;
}

std::string selectionText(const AppState& state) {
    const PhraseBook& book = *state.book;
    const Things& things = state.selection;
    RichLine text;
    const auto add = [&](std::size_t count, Phrase<> one, CountedPhrase many) {
        if (count > 0) {
            const RichLine counted = countedWords(book, static_cast<int>(count), one, many);
            text = text.empty() ? counted
                                : say(book, phrase::kListMore, {{"a", text}, {"b", counted}});
        }
    };
    add(things.joints.size(), phrase::kOneJoint, phrase::kManyJoints);
    add(things.members.size(), phrase::kOneMember, phrase::kManyMembers);
    add(things.supports.size(), phrase::kOneSupport, phrase::kManySupports);
    add(things.loads.size(), phrase::kOneLoad, phrase::kManyLoads);
    return plainText(text);
}

} // namespace gusset
