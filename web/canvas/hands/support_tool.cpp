#include "canvas/hands/strokes.hpp"
#include "phrases/tools.hpp"

#include <algorithm>
#include <optional>

namespace gusset {

namespace {

// A support of this kind at the tapped joint, or at the joint of the tapped support.
std::optional<Support> supportAt(const Truss& truss, JointId joint, SupportKind kind) {
    const auto found =
        std::find_if(truss.supports.begin(), truss.supports.end(), [&](const Support& support) {
            return support.joint == joint && support.kind == kind;
        });
    return found == truss.supports.end() ? std::nullopt : std::optional<Support>(*found);
}

JointId jointUnder(const AppState& state, const Hit& under) {
    const SupportId support = hitOf<SupportId>(under);
    return support.valid() ? state.truss.supports[support.at()].joint : hitOf<JointId>(under);
}

} // namespace

void tapPin(const AppState& state, const Hit& under, Actions& actions) {
    const JointId joint = jointUnder(state, under);
    if (!joint.valid()) {
        actions.push_back(Say{MessageKind::Info, sayPlain(*state.book, phrase::kTapForPin)});
    } else if (supportAt(state.truss, joint, SupportKind::Pin)) {
        actions.push_back(Commit{RemoveSupports{joint}});
    } else {
        actions.push_back(Commit{SetSupport{joint, SupportKind::Pin}});
    }
}

void tapRoller(const AppState& state, const Hit& under, Actions& actions) {
    const JointId joint = jointUnder(state, under);
    if (!joint.valid()) {
        actions.push_back(Say{MessageKind::Info, sayPlain(*state.book, phrase::kTapForRoller)});
        return;
    }
    const std::optional<Support> roller = supportAt(state.truss, joint, SupportKind::Roller);
    if (!roller) {
        actions.push_back(Commit{SetSupport{joint, SupportKind::Roller, 90}});
    } else if (roller->reaction == 90) { // from a floor to a wall
        actions.push_back(Commit{SetSupport{joint, SupportKind::Roller, 0}});
    } else {
        actions.push_back(Commit{RemoveSupports{joint}});
    }
}

} // namespace gusset
