#include "model/catalogue/samples.hpp"

#include "model/truss/limits.hpp"
#include "phrases/faults/refusals.hpp"
#include "phrases/model/catalogue.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace gusset {

namespace {

constexpr int kMostPanels = 24;

using enum SampleForm;
using enum LoadedChord;
constexpr std::array<SampleChoice, 11> kChoices{{
    {KingPost, phrase::kFormKingPost, phrase::kTitleKingPost, 2, 2, true, Upper},
    {QueenPost, phrase::kFormQueenPost, phrase::kTitleQueenPost, 3, 3, false, Lower},
    {Pratt, phrase::kFormPratt, phrase::kTitlePratt, 3, kMostPanels, false, Lower},
    {Howe, phrase::kFormHowe, phrase::kTitleHowe, 3, kMostPanels, false, Lower},
    {Warren, phrase::kFormWarren, phrase::kTitleWarren, 2, kMostPanels, false, Lower},
    {WarrenWithPosts, phrase::kFormWarrenWithPosts, phrase::kTitleWarrenWithPosts, 4, kMostPanels,
     true, Lower},
    {Fink, phrase::kFormFink, phrase::kTitleFink, 3, 3, false, Upper},
    {KBraced, phrase::kFormKBraced, phrase::kTitleKBraced, 4, kMostPanels, true, Lower},
    {Scissors, phrase::kFormScissors, phrase::kTitleScissors, 2, 2, true, Upper},
    {Bowstring, phrase::kFormBowstring, phrase::kTitleBowstring, 3, kMostPanels, false, Lower},
    {Cantilever, phrase::kFormCantilever, phrase::kTitleCantilever, 1, kMostPanels, false, Upper},
}};

// The truss under construction: rows of joints by their place along the span.
struct Draft {
    const SampleSpec& spec;
    int panels = 0;
    Truss truss;
    std::vector<JointId> lower;
    std::vector<JointId> upper;

    // Both as fractions, of span and rise.
    JointId joint(double across, double up) {
        truss.joints.push_back({nextLabel(truss), {across * spec.span, up * spec.rise}, {}});
        return JointId{static_cast<int>(truss.joints.size()) - 1};
    }
    void member(JointId a, JointId b) {
        Member drawn;
        drawn.a = a;
        drawn.b = b;
        truss.members.push_back(drawn);
    }
    void chain(const std::vector<JointId>& joints) {
        for (std::size_t i = 1; i < joints.size(); ++i) {
            member(joints[i - 1], joints[i]);
        }
    }
    void support(JointId joint, SupportKind kind, double reaction = 90) {
        Support added;
        added.joint = joint;
        added.kind = kind;
        added.reaction = reaction;
        truss.supports.push_back(added);
    }
};

// Lower joints 0 … n, upper joints over 1 … n − 1 at the height that `heightAt` gives for a
// fraction of the span; chords and inclined end members. `upper` gets unused ends, so that both
// rows have the same indices.
template <class Height>
void layChords(Draft& draft, const Height& heightAt) {
    const int n = draft.panels;
    for (int i = 0; i <= n; ++i) {
        draft.lower.push_back(draft.joint(static_cast<double>(i) / n, 0));
    }
    draft.upper.push_back({});
    for (int i = 1; i < n; ++i) {
        const double share = static_cast<double>(i) / n;
        draft.upper.push_back(draft.joint(share, heightAt(share)));
    }
    draft.chain(draft.lower);
    draft.member(draft.lower.front(), draft.upper[1]);
    draft.chain({draft.upper.begin() + 1, draft.upper.end()});
    draft.member(draft.upper.back(), draft.lower.back());
}

void posts(Draft& draft) {
    for (int i = 1; i < draft.panels; ++i) {
        draft.member(draft.lower[static_cast<std::size_t>(i)],
                     draft.upper[static_cast<std::size_t>(i)]);
    }
}

// One diagonal in each inner panel; `falls` says whether it falls from left to right there.
template <class Falls>
void diagonals(Draft& draft, const Falls& falls) {
    for (int k = 1; k < draft.panels - 1; ++k) {
        const auto left = static_cast<std::size_t>(k);
        if (falls(k)) {
            draft.member(draft.upper[left], draft.lower[left + 1]);
        } else {
            draft.member(draft.lower[left], draft.upper[left + 1]);
        }
    }
}

constexpr auto kLevel = [](double) { return 1.0; };

// Falling towards the middle, as in a Pratt truss; the middle panel of an odd count follows the
// left half.
bool isLeftOfMiddle(const Draft& draft, int panel) { return 2 * panel + 1 <= draft.panels; }

void pratt(Draft& draft) {
    layChords(draft, kLevel);
    posts(draft);
    diagonals(draft, [&](int panel) { return isLeftOfMiddle(draft, panel); });
}

void howe(Draft& draft) {
    layChords(draft, kLevel);
    posts(draft);
    diagonals(draft, [&](int panel) { return !isLeftOfMiddle(draft, panel); });
}

void bowstring(Draft& draft) {
    layChords(draft, [](double share) { return 4 * share * (1 - share); });
    posts(draft);
    diagonals(draft, [&](int panel) { return isLeftOfMiddle(draft, panel); });
}

void warrenWithPosts(Draft& draft) {
    layChords(draft, kLevel);
    posts(draft);
    diagonals(draft, [](int panel) { return panel % 2 == 1; });
}

void warren(Draft& draft) {
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
}

// Every post but the middle one has a joint at half its height, with two braces from there to the
// chords at the next post towards the middle.
void kBraced(Draft& draft) {
    layChords(draft, kLevel);
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

void kingPost(Draft& draft) {
    draft.lower = {draft.joint(0, 0), draft.joint(0.5, 0), draft.joint(1, 0)};
    draft.upper = {draft.joint(0.25, 0.5), draft.joint(0.5, 1), draft.joint(0.75, 0.5)};
    draft.chain(draft.lower);
    draft.chain({draft.lower[0], draft.upper[0], draft.upper[1], draft.upper[2], draft.lower[2]});
    for (const JointId top : draft.upper) {
        draft.member(draft.lower[1], top);
    }
}

// Two posts, with a brace between them, as the middle panel would sway without one.
void queenPost(Draft& draft) {
    layChords(draft, kLevel);
    posts(draft);
    draft.member(draft.lower[1], draft.upper[2]);
}

void fink(Draft& draft) {
    draft.lower = {draft.joint(0, 0), draft.joint(1.0 / 3, 0), draft.joint(2.0 / 3, 0),
                   draft.joint(1, 0)};
    draft.upper = {draft.joint(0.25, 0.5), draft.joint(0.5, 1), draft.joint(0.75, 0.5)};
    draft.chain(draft.lower);
    draft.chain({draft.lower[0], draft.upper[0], draft.upper[1], draft.upper[2], draft.lower[3]});
    draft.chain({draft.upper[0], draft.lower[1], draft.upper[1], draft.lower[2], draft.upper[2]});
}

// The lower chords rise to the middles of the opposite rafters and cross at a third of the rise.
void scissors(Draft& draft) {
    draft.lower = {draft.joint(0, 0), draft.joint(0.5, 1.0 / 3), draft.joint(1, 0)};
    draft.upper = {draft.joint(0.25, 0.5), draft.joint(0.5, 1), draft.joint(0.75, 0.5)};
    draft.chain(draft.lower);
    draft.chain({draft.lower[0], draft.upper[0], draft.upper[1], draft.upper[2], draft.lower[2]});
    for (const JointId top : draft.upper) {
        draft.member(draft.lower[1], top);
    }
}

void cantilever(Draft& draft) {
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

void draw(Draft& draft) {
    switch (draft.spec.form) {
    case KingPost:
        return kingPost(draft);
    case QueenPost:
        return queenPost(draft);
    case Pratt:
        return pratt(draft);
    case Howe:
        return howe(draft);
    case Warren:
        return warren(draft);
    case WarrenWithPosts:
        return warrenWithPosts(draft);
    case Fink:
        return fink(draft);
    case KBraced:
        return kBraced(draft);
    case Scissors:
        return scissors(draft);
    case Bowstring:
        return bowstring(draft);
    case Cantilever:
        return cantilever(draft);
    }
}

bool isSupported(const Truss& truss, JointId joint) {
    return std::any_of(truss.supports.begin(), truss.supports.end(),
                       [&](const Support& support) { return support.joint == joint; });
}

std::vector<SampleCase> casesOf(const SampleSpec& spec) {
    return spec.cases.empty() ? std::vector<SampleCase>{{"", spec.load}} : spec.cases;
}

void supportAndLoad(Draft& draft) {
    if (draft.truss.supports.empty()) {
        draft.support(draft.lower.front(), SupportKind::Pin);
        draft.support(draft.lower.back(), SupportKind::Roller);
    }
    const auto& chord = draft.spec.loaded == Upper ? draft.upper : draft.lower;
    for (const SampleCase& of : casesOf(draft.spec)) {
        for (const JointId joint : chord) {
            if (joint.valid() && !isSupported(draft.truss, joint) && of.load != 0) {
                Load load;
                load.what = JointForce{joint, 0, -of.load};
                load.caseId = of.name;
                draft.truss.loads.push_back(load);
            }
        }
    }
}

int panelsOf(const SampleSpec& spec) {
    const SampleChoice& choice = choiceOf(spec.form);
    const int panels = std::clamp(spec.panels, choice.fewestPanels, choice.mostPanels);
    return choice.evenPanels ? panels - panels % 2 : panels;
}

bool isSize(double value) { return value > 0 && value <= kLargestNumber; }

} // namespace

std::span<const SampleChoice> sampleChoices() { return kChoices; }

const SampleChoice& choiceOf(SampleForm form) { return kChoices[static_cast<std::size_t>(form)]; }

Outcome<Truss> makeSample(const PhraseBook& book, const SampleSpec& spec) {
    if (!isSize(spec.span) || !isSize(spec.rise)) {
        return Issue{IssueCode::OutOfRange, isSize(spec.span) ? "rise" : "span",
                     phrase::kFormNeedsSizes};
    }
    const std::vector<SampleCase> cases = casesOf(spec);
    if (!std::all_of(cases.begin(), cases.end(),
                     [](const SampleCase& of) { return std::abs(of.load) <= kLargestNumber; })) {
        return Issue{IssueCode::NotFinite, "load", phrase::kFormLoadTooLarge};
    }
    Draft draft{.spec = spec, .panels = panelsOf(spec), .truss = {}, .lower = {}, .upper = {}};
    draw(draft);
    supportAndLoad(draft);
    draft.truss.units = spec.units;
    draft.truss.title = sentenceIn(book, choiceOf(spec.form).title.english);
    return std::move(draft.truss);
}

} // namespace gusset
