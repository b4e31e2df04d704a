#include "model/forms/form_draft.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// The rafters and what is below them, at a share of the span.
double pitchedHeight(const FormSpec& spec, double share) {
    const double heel = sizeOf(spec, FormSize::Heel);
    return heel + (spec.rise - heel) * (1 - std::abs(2 * share - 1));
}
double tieHeight(const FormSpec& spec, double share) {
    return sizeOf(spec, FormSize::Tie) * (1 - std::abs(2 * share - 1));
}

ChordHeights pitchedChords(const FormDraft& draft) {
    ChordHeights heights;
    for (int i = 0; i <= draft.panels; ++i) {
        const double share = static_cast<double>(i) / draft.panels;
        heights.lower.push_back(tieHeight(draft.spec, share));
        heights.upper.push_back(pitchedHeight(draft.spec, share));
    }
    return heights;
}

ChordHeights leaningChords(const FormDraft& draft) {
    const double heel = sizeOf(draft.spec, FormSize::Heel);
    ChordHeights heights;
    for (int i = 0; i <= draft.panels; ++i) {
        const double share = static_cast<double>(i) / draft.panels;
        heights.lower.push_back(0);
        heights.upper.push_back(heel + (draft.spec.rise - heel) * share);
    }
    return heights;
}

// A rafter goes on beyond its support, braced to the chord below. `out`: on plan, to the left
// negative.
JointId overhangAt(FormDraft& draft, std::size_t end, std::size_t before, double out) {
    const Vec2 from = draft.truss.joints[static_cast<std::size_t>(draft.upper[before].index)].at;
    const Vec2 at = draft.truss.joints[static_cast<std::size_t>(draft.upper[end].index)].at;
    const double slope = (at.y - from.y) / (at.x - from.x);
    const JointId tail = draft.joint(at + Vec2{out, slope * out});
    draft.member(tail, draft.upper[end]);
    draft.member(tail, draft.lower[end]);
    return tail;
}

void layOverhangs(FormDraft& draft) {
    const double out = sizeOf(draft.spec, FormSize::Overhang);
    if (out > 0) {
        const std::size_t last = draft.upper.size() - 1;
        draft.loaded.insert(draft.loaded.begin(), overhangAt(draft, 0, 1, -out));
        draft.loaded.push_back(overhangAt(draft, last, last - 1, out));
    }
}

void layRoof(FormDraft& draft, const ChordHeights& heights, Fall fall) {
    layChords(draft, heights);
    layPosts(draft);
    layDiagonals(draft, fall);
    layOverhangs(draft);
}

// From one end of the tie over the upper joints to the other.
void layRafters(FormDraft& draft) {
    takeEnds(draft);
    draft.chain(draft.loaded);
}

// Rafters with joints at equal distances and a tie with one joint less between its ends: webs go to
// and fro. Four panels: W; six: double W.
void wRoof(FormDraft& draft) {
    const FormSpec& spec = draft.spec;
    const int upper = draft.panels;
    const int lower = draft.panels - 1;
    for (int i = 0; i <= lower; ++i) {
        const double share = static_cast<double>(i) / lower;
        draft.lower.push_back(draft.joint(Vec2{share * spec.span, tieHeight(spec, share)}));
    }
    for (int i = 1; i < upper; ++i) {
        const double share = static_cast<double>(i) / upper;
        draft.upper.push_back(draft.joint(Vec2{share * spec.span, pitchedHeight(spec, share)}));
    }
    std::vector<JointId> webs;
    for (std::size_t i = 0; i < draft.upper.size(); ++i) {
        webs.push_back(draft.upper[i]);
        if (i + 1 < draft.upper.size()) {
            webs.push_back(draft.lower[i + 1]);
        }
    }
    draft.chain(draft.lower);
    layRafters(draft);
    draft.chain(webs);
}

// One half: a trussed rafter of four panels, whose struts are upright to it. `side`: 1 for the left
// half, −1 for the right one, which is its mirror image.
JointId trussedRafter(FormDraft& draft, JointId foot, JointId apex, double side) {
    const FormSpec& spec = draft.spec;
    const Vec2 rafter{side * spec.span / 2, spec.rise};
    const Vec2 from{side > 0 ? 0.0 : spec.span, 0};
    const auto onRafter = [&](double share) { return from + share * rafter; };
    // The middle strut meets the tie where the rafter's two halves are seen as one length.
    const double reach = (spec.span / 2 + spec.rise * spec.rise / (spec.span / 2)) / 2;
    const Vec2 low = from + Vec2{side * reach, 0};
    const JointId first = draft.joint(onRafter(0.25));
    const JointId middle = draft.joint(onRafter(0.5));
    const JointId last = draft.joint(onRafter(0.75));
    const JointId near = draft.joint(from + 0.5 * (low - from));
    const JointId main = draft.joint(low);
    const JointId half = draft.joint(low + 0.5 * (from + rafter - low));
    draft.chain({foot, first, middle, last, apex});
    draft.chain({foot, near, main, half, apex});
    draft.chain({first, near, middle, main});
    draft.chain({middle, half, last});
    if (side > 0) {
        draft.loaded = {foot, first, middle, last, apex};
    } else {
        draft.loaded.insert(draft.loaded.end(), {last, middle, first, foot});
    }
    return main;
}

void compoundFink(FormDraft& draft) {
    const JointId left = draft.joint(0, 0);
    const JointId right = draft.joint(1, 0);
    const JointId apex = draft.joint(0.5, 1);
    const JointId mainLeft = trussedRafter(draft, left, apex, 1);
    const JointId mainRight = trussedRafter(draft, right, apex, -1);
    draft.member(mainLeft, mainRight);
    // The joints at a quarter of the rafters' ties were made just before the main ones.
    const JointId nearLeft{mainLeft.index - 1};
    const JointId nearRight{mainRight.index - 1};
    draft.lower = {left, nearLeft, mainLeft, mainRight, nearRight, right};
    draft.upper = {draft.loaded.begin() + 1, draft.loaded.end() - 1};
}

// Rafters of two panels each, with a web from the middle of the ties, so high, to each joint of
// theirs. King post: the ties are level. Scissors: they rise to the middles of the opposite
// rafters, and cross at a third of the rise.
void fanRoof(FormDraft& draft, double middle) {
    draft.lower = {draft.joint(0, 0), draft.joint(0.5, middle), draft.joint(1, 0)};
    draft.upper = {draft.joint(0.25, 0.5), draft.joint(0.5, 1), draft.joint(0.75, 0.5)};
    draft.chain(draft.lower);
    layRafters(draft);
    for (const JointId top : draft.upper) {
        draft.member(draft.lower[1], top);
    }
}

// A tie in thirds, and webs from its joints to the apex and to a joint of each rafter. Fink: in the
// middle of the rafter. Queen post: over the joint of the tie.
void thirdsRoof(FormDraft& draft, Vec2 left, Vec2 right) {
    draft.lower = {draft.joint(0, 0), draft.joint(1.0 / 3, 0), draft.joint(2.0 / 3, 0),
                   draft.joint(1, 0)};
    draft.upper = {draft.joint(left.x, left.y), draft.joint(0.5, 1), draft.joint(right.x, right.y)};
    draft.chain(draft.lower);
    layRafters(draft);
    draft.chain({draft.upper[0], draft.lower[1], draft.upper[1], draft.lower[2], draft.upper[2]});
}

} // namespace

void drawRoof(FormDraft& draft) {
    switch (draft.spec.kind) {
    case FormKind::KingPost:
        return fanRoof(draft, 0);
    case FormKind::Fink:
        return thirdsRoof(draft, {0.25, 0.5}, {0.75, 0.5});
    case FormKind::Scissors:
        return fanRoof(draft, 1.0 / 3);
    case FormKind::PrattRoof:
        return layRoof(draft, pitchedChords(draft), Fall::Outward);
    case FormKind::HoweRoof:
        return layRoof(draft, pitchedChords(draft), Fall::Inward);
    case FormKind::WRoof:
        return wRoof(draft);
    case FormKind::CompoundFink:
        return compoundFink(draft);
    case FormKind::QueenPostRoof:
        return thirdsRoof(draft, {1.0 / 3, 2.0 / 3}, {2.0 / 3, 2.0 / 3});
    default:
        return layRoof(draft, leaningChords(draft), Fall::Inward);
    }
}

} // namespace gusset
