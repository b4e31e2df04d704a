#include "model/forms/form_draft.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

void layPanels(FormDraft& draft, const ChordHeights& heights, Fall fall) {
    layChords(draft, heights);
    layPosts(draft);
    layDiagonals(draft, fall);
}

// A parabola from the heel over one support to that over the other.
ChordHeights curvedChord(const FormDraft& draft) {
    ChordHeights heights = levelChords(draft);
    const double heel = heights.upper.front();
    for (int i = 1; i < draft.panels; ++i) {
        const double share = static_cast<double>(i) / draft.panels;
        heights.upper[static_cast<std::size_t>(i)] =
            heel + 4 * share * (1 - share) * (draft.spec.rise - heel);
    }
    return heights;
}

// Rising over about the first quarter of the panels, then level, then falling.
ChordHeights polygonalChord(const FormDraft& draft) {
    ChordHeights heights = levelChords(draft);
    const double heel = heights.upper.front();
    const int rising = (draft.panels + 3) / 4;
    for (int i = 1; i < draft.panels; ++i) {
        const int fromEnd = std::min(i, draft.panels - i);
        const double share = std::min(1.0, static_cast<double>(fromEnd) / rising);
        heights.upper[static_cast<std::size_t>(i)] = heel + (draft.spec.rise - heel) * share;
    }
    return heights;
}

void warren(FormDraft& draft) {
    const int n = draft.panels;
    for (int i = 0; i <= n; ++i) {
        draft.lower.push_back(draft.joint(static_cast<double>(i) / n, 0));
    }
    for (int i = 0; i < n; ++i) {
        draft.upper.push_back(draft.joint((i + 0.5) / n, 1));
    }
    draft.chain(draft.lower);
    draft.chain(draft.upper);
    for (std::size_t i = 0; i < draft.upper.size(); ++i) {
        draft.member(draft.lower[i], draft.upper[i]);
        draft.member(draft.upper[i], draft.lower[i + 1]);
    }
    takeEnds(draft);
}

// Every post but the middle one has a joint at half its height, with two braces from there to the
// chords at the next post towards the middle.
void kBraced(FormDraft& draft) {
    layChords(draft, levelChords(draft));
    const auto middle = static_cast<std::size_t>(draft.panels / 2);
    for (std::size_t i = 1; i + 1 < draft.lower.size(); ++i) {
        if (i == middle) {
            draft.member(draft.lower[i], draft.upper[i]);
            continue;
        }
        const JointId half = draft.joint(static_cast<double>(i) / draft.panels, 0.5);
        const std::size_t inward = i < middle ? i + 1 : i - 1;
        draft.member(draft.lower[i], half);
        draft.member(half, draft.upper[i]);
        draft.member(half, draft.lower[inward]);
        draft.member(half, draft.upper[inward]);
    }
}

// Two posts, with a brace between them, as the middle panel would sway without one.
void queenPost(FormDraft& draft) {
    layChords(draft, levelChords(draft));
    layPosts(draft);
    draft.member(draft.lower[1], draft.upper[2]);
}

void cantilever(FormDraft& draft) {
    const int n = draft.panels;
    for (int i = 0; i <= n; ++i) {
        const double share = static_cast<double>(i) / n;
        draft.lower.push_back(draft.joint(share, 0));
        draft.upper.push_back(draft.joint(share, 1));
    }
    draft.chain(draft.lower);
    draft.chain(draft.upper);
    for (std::size_t i = 0; i < draft.lower.size(); ++i) {
        draft.member(draft.lower[i], draft.upper[i]);
        if (i > 0) {
            draft.member(draft.upper[i - 1], draft.lower[i]);
        }
    }
    draft.support(draft.upper.front(), SupportKind::Pin);
    draft.support(draft.lower.front(), SupportKind::Roller, 0);
}

} // namespace

void drawGirder(FormDraft& draft) {
    switch (draft.spec.kind) {
    case FormKind::QueenPost:
        return queenPost(draft);
    case FormKind::Pratt:
        return layPanels(draft, levelChords(draft), Fall::Inward);
    case FormKind::Howe:
        return layPanels(draft, levelChords(draft), Fall::Outward);
    case FormKind::Warren:
        return warren(draft);
    case FormKind::WarrenWithPosts:
        return layPanels(draft, levelChords(draft), Fall::ByTurns);
    case FormKind::KBraced:
        return kBraced(draft);
    case FormKind::Bowstring:
        return layPanels(draft, curvedChord(draft), Fall::Inward);
    case FormKind::PolygonalChord:
        return layPanels(draft, polygonalChord(draft), Fall::Inward);
    default:
        return cantilever(draft);
    }
}

} // namespace gusset
