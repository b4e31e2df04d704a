#include "model/forms/form_draft.hpp"

namespace gusset {
namespace {

// A girder on two posts, each with a knee to the girder's next joint.
void gantry(FormDraft& draft) {
    const double depth = sizeOf(draft.spec, FormSize::Depth);
    const auto stations = static_cast<std::size_t>(draft.panels) + 1;
    const double low = draft.spec.rise;
    layChords(draft,
              {std::vector<double>(stations, low), std::vector<double>(stations, low + depth)});
    layPosts(draft);
    layDiagonals(draft, Fall::Inward);
    const JointId left = draft.joint(Vec2{0, 0});
    const JointId right = draft.joint(Vec2{draft.spec.span, 0});
    draft.member(left, draft.lower.front());
    draft.member(left, draft.lower[1]);
    draft.member(right, draft.lower.back());
    draft.member(right, draft.lower[stations - 2]);
    draft.support(left, SupportKind::Pin);
    draft.support(right, SupportKind::Roller);
}

// Two legs that lean towards each other, laced with one diagonal in each panel.
void tower(FormDraft& draft) {
    const double below = draft.spec.span;
    const double above = sizeOf(draft.spec, FormSize::TopWidth);
    for (int i = 0; i <= draft.panels; ++i) {
        const double share = static_cast<double>(i) / draft.panels;
        const double half = (below + (above - below) * share) / 2;
        const double y = draft.spec.rise * share;
        draft.lower.push_back(draft.joint(Vec2{below / 2 - half, y}));
        draft.upper.push_back(draft.joint(Vec2{below / 2 + half, y}));
    }
    draft.chain(draft.lower);
    draft.chain(draft.upper);
    for (std::size_t i = 1; i < draft.lower.size(); ++i) {
        draft.member(draft.lower[i], draft.upper[i]);
        const bool leansRight = i % 2 == 1;
        draft.member(leansRight ? draft.lower[i - 1] : draft.upper[i - 1],
                     leansRight ? draft.upper[i] : draft.lower[i]);
    }
    draft.support(draft.lower.front(), SupportKind::Pin);
    draft.support(draft.upper.front(), SupportKind::Pin);
}

} // namespace

void drawUpright(FormDraft& draft) {
    return draft.spec.kind == FormKind::Tower ? tower(draft) : gantry(draft);
}

} // namespace gusset
