#include "model/forms/form_draft.hpp"

namespace gusset {

JointId FormDraft::joint(Vec2 at) {
    truss.joints.push_back({nextLabel(truss), at, {}});
    return JointId{static_cast<int>(truss.joints.size()) - 1};
}

JointId FormDraft::joint(double across, double up) {
    return joint(Vec2{across * spec.span, up * spec.rise});
}

void FormDraft::member(JointId a, JointId b) {
    Member drawn;
    drawn.a = a;
    drawn.b = b;
    truss.members.push_back(drawn);
}

void FormDraft::chain(const std::vector<JointId>& joints) {
    for (std::size_t i = 1; i < joints.size(); ++i) {
        member(joints[i - 1], joints[i]);
    }
}

void FormDraft::support(JointId joint, SupportKind kind, double reaction) {
    Support added;
    added.joint = joint;
    added.kind = kind;
    added.reaction = reaction;
    truss.supports.push_back(added);
}

void layChords(FormDraft& draft, const ChordHeights& heights) {
    const auto stations = static_cast<std::size_t>(draft.panels) + 1;
    const auto xOf = [&](std::size_t i) {
        return static_cast<double>(i) / draft.panels * draft.spec.span;
    };
    for (std::size_t i = 0; i < stations; ++i) {
        draft.lower.push_back(draft.joint(Vec2{xOf(i), heights.lower[i]}));
    }
    std::vector<JointId> path;
    for (std::size_t i = 0; i < stations; ++i) {
        const bool meet = heights.upper[i] == heights.lower[i];
        draft.upper.push_back(meet ? JointId{} : draft.joint(Vec2{xOf(i), heights.upper[i]}));
        path.push_back(meet ? draft.lower[i] : draft.upper[i]);
    }
    draft.chain(draft.lower);
    draft.chain(path);
    draft.loaded = std::move(path);
}

void takeEnds(FormDraft& draft) {
    draft.loaded = draft.upper;
    draft.loaded.insert(draft.loaded.begin(), draft.lower.front());
    draft.loaded.push_back(draft.lower.back());
}

void layPosts(FormDraft& draft) {
    for (std::size_t i = 0; i < draft.lower.size(); ++i) {
        if (draft.upper[i].valid()) {
            draft.member(draft.lower[i], draft.upper[i]);
        }
    }
}

namespace {

bool falls(const FormDraft& draft, std::size_t panel, Fall fall) {
    if (fall == Fall::ByTurns) {
        return panel % 2 == 1;
    }
    const bool isLeft = 2 * static_cast<int>(panel) + 1 <= draft.panels;
    return isLeft == (fall == Fall::Inward);
}

} // namespace

void layDiagonals(FormDraft& draft, Fall fall) {
    for (std::size_t left = 0; left + 1 < draft.lower.size(); ++left) {
        if (!draft.upper[left].valid() || !draft.upper[left + 1].valid()) {
            continue;
        }
        if (falls(draft, left, fall)) {
            draft.member(draft.upper[left], draft.lower[left + 1]);
        } else {
            draft.member(draft.lower[left], draft.upper[left + 1]);
        }
    }
}

ChordHeights levelChords(const FormDraft& draft) {
    ChordHeights heights;
    const auto stations = static_cast<std::size_t>(draft.panels) + 1;
    heights.lower.assign(stations, 0.0);
    heights.upper.assign(stations, draft.spec.rise);
    heights.upper.front() = heights.upper.back() = sizeOf(draft.spec, FormSize::Heel);
    return heights;
}

} // namespace gusset
