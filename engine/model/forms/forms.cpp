#include "model/forms/forms.hpp"

#include "model/forms/form_draft.hpp"
#include "model/truss/limits.hpp"
#include "phrases/faults/refusals.hpp"
#include "phrases/model/catalogue.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gusset {

namespace {

constexpr int kMostPanels = 24;

using enum FormKind;
using enum LoadedChord;
using Takes = std::array<bool, kFormSizes>;
constexpr Takes kNothingMore{};
constexpr Takes kHeel{true, false, false, false, false};
constexpr Takes kRoof{true, true, true, false, false};
constexpr Takes kTieAlone{false, true, false, false, false};
constexpr Takes kLeaning{true, false, true, false, false};
constexpr Takes kGirder{false, false, false, true, false};
constexpr Takes kTop{false, false, false, false, true};
constexpr std::array<FormChoice, 20> kChoices{{
    {KingPost, phrase::kFormKingPost, phrase::kTitleKingPost, 2, 2, true, Upper, kNothingMore},
    {QueenPost, phrase::kFormQueenPost, phrase::kTitleQueenPost, 3, 3, false, Lower, kNothingMore},
    {Pratt, phrase::kFormPratt, phrase::kTitlePratt, 3, kMostPanels, false, Lower, kHeel},
    {Howe, phrase::kFormHowe, phrase::kTitleHowe, 3, kMostPanels, false, Lower, kHeel},
    {Warren, phrase::kFormWarren, phrase::kTitleWarren, 2, kMostPanels, false, Lower, kNothingMore},
    {WarrenWithPosts, phrase::kFormWarrenWithPosts, phrase::kTitleWarrenWithPosts, 4, kMostPanels,
     true, Lower, kHeel},
    {Fink, phrase::kFormFink, phrase::kTitleFink, 3, 3, false, Upper, kNothingMore},
    {KBraced, phrase::kFormKBraced, phrase::kTitleKBraced, 4, kMostPanels, true, Lower,
     kNothingMore},
    {Scissors, phrase::kFormScissors, phrase::kTitleScissors, 2, 2, true, Upper, kNothingMore},
    {Bowstring, phrase::kFormBowstring, phrase::kTitleBowstring, 3, kMostPanels, false, Lower,
     kHeel},
    {Cantilever, phrase::kFormCantilever, phrase::kTitleCantilever, 1, kMostPanels, false, Upper,
     kNothingMore},
    {PrattRoof, phrase::kFormPrattRoof, phrase::kTitlePrattRoof, 4, kMostPanels, true, Upper,
     kRoof},
    {HoweRoof, phrase::kFormHoweRoof, phrase::kTitleHoweRoof, 4, kMostPanels, true, Upper, kRoof},
    {WRoof, phrase::kFormWRoof, phrase::kTitleWRoof, 4, 12, true, Upper, kTieAlone},
    {CompoundFink, phrase::kFormCompoundFink, phrase::kTitleCompoundFink, 8, 8, true, Upper,
     kNothingMore},
    {QueenPostRoof, phrase::kFormQueenPostRoof, phrase::kTitleQueenPostRoof, 4, 4, true, Upper,
     kNothingMore},
    {MonoPitch, phrase::kFormMonoPitch, phrase::kTitleMonoPitch, 2, kMostPanels, false, Upper,
     kLeaning},
    {PolygonalChord, phrase::kFormPolygonalChord, phrase::kTitlePolygonalChord, 3, kMostPanels,
     false, Lower, kHeel},
    {Gantry, phrase::kFormGantry, phrase::kTitleGantry, 3, kMostPanels, false, Lower, kGirder},
    {Tower, phrase::kFormTower, phrase::kTitleTower, 1, kMostPanels, false, Lower, kTop},
}};

void draw(FormDraft& draft) {
    switch (draft.spec.kind) {
    case QueenPost:
    case Pratt:
    case Howe:
    case Warren:
    case WarrenWithPosts:
    case KBraced:
    case Bowstring:
    case Cantilever:
    case PolygonalChord:
        return drawGirder(draft);
    case Gantry:
    case Tower:
        return drawUpright(draft);
    default:
        return drawRoof(draft);
    }
}

bool isPitched(FormKind kind) {
    return kind == KingPost || kind == Fink || kind == Scissors || kind == PrattRoof ||
           kind == HoweRoof || kind == WRoof || kind == CompoundFink || kind == QueenPostRoof;
}

bool hasChoiceOfPanels(const FormChoice& choice) { return choice.fewestPanels < choice.mostPanels; }

int panelsOf(const FormSpec& spec) {
    const FormChoice& choice = choiceOf(spec.kind);
    return hasChoiceOfPanels(choice) ? spec.panels : choice.fewestPanels;
}

std::optional<Issue> faultOfPanels(const FormSpec& spec) {
    const FormChoice& choice = choiceOf(spec.kind);
    const int panels = panelsOf(spec);
    const bool isOdd = choice.evenPanels && panels % 2 != 0;
    if (panels >= choice.fewestPanels && panels <= choice.mostPanels &&
        !(isOdd && hasChoiceOfPanels(choice))) {
        return std::nullopt;
    }
    return Issue{
        IssueCode::OutOfRange, "panels",
        statement(
            choice.evenPanels ? phrase::kFormPanelsEven : phrase::kFormPanels,
            {{"fewest", choice.fewestPanels}, {"most", choice.mostPanels}, {"panels", panels}})};
}

bool isSupported(const Truss& truss, JointId joint) {
    return std::any_of(truss.supports.begin(), truss.supports.end(),
                       [&](const Support& support) { return support.joint == joint; });
}

std::vector<FormCase> casesOf(const FormSpec& spec) {
    return spec.cases.empty() ? std::vector<FormCase>{{"", spec.load}} : spec.cases;
}

void load(const FormSpec& spec, FormLaid& laid) {
    for (const FormCase& of : casesOf(spec)) {
        for (const JointId joint : spec.loaded == Upper ? laid.upper : laid.lower) {
            if (!isSupported(laid.truss, joint) && of.load != 0) {
                Load load;
                load.what = JointForce{joint, 0, -of.load};
                load.caseId = of.name;
                laid.truss.loads.push_back(load);
            }
        }
    }
}

bool isSize(double value) { return value > 0 && value <= kLargestNumber; }

std::optional<Issue> faultOfSizes(const FormSpec& spec) {
    if (!isSize(spec.span) || !isSize(spec.rise)) {
        return Issue{IssueCode::OutOfRange, isSize(spec.span) ? "rise" : "span",
                     phrase::kFormNeedsSizes};
    }
    for (std::size_t i = 0; i < kFormSizes; ++i) {
        const double size = sizeOf(spec, FormSize(i));
        if (!(size >= 0 && size <= kLargestNumber)) {
            return Issue{IssueCode::OutOfRange, "", phrase::kFormSizeNegative};
        }
    }
    return std::nullopt;
}

// Sizes that are sizes, but make no truss of this form.
std::optional<Issue> faultOfShape(const FormSpec& spec) {
    const auto refused = [](const Phrase<>& why) { return Issue{IssueCode::OutOfRange, "", why}; };
    const double heel = sizeOf(spec, FormSize::Heel);
    const bool isRoof = isPitched(spec.kind) || spec.kind == MonoPitch;
    if (isRoof ? heel >= spec.rise : heel > spec.rise) {
        return refused(phrase::kFormHeelTooHigh);
    }
    if (sizeOf(spec, FormSize::Tie) >= spec.rise) {
        return refused(phrase::kFormTieTooHigh);
    }
    if (sizeOf(spec, FormSize::Overhang) > 0 && heel == 0) {
        return refused(phrase::kFormOverhangNeedsHeel);
    }
    if (spec.kind == CompoundFink && 2 * spec.rise >= spec.span) {
        return refused(phrase::kFormTooSteep);
    }
    if ((spec.kind == Gantry && !isSize(sizeOf(spec, FormSize::Depth))) ||
        (spec.kind == Tower && !isSize(sizeOf(spec, FormSize::TopWidth)))) {
        return refused(phrase::kFormSizeZero);
    }
    return std::nullopt;
}

std::vector<JointId> validOnes(const std::vector<JointId>& joints) {
    std::vector<JointId> kept;
    std::copy_if(joints.begin(), joints.end(), std::back_inserter(kept),
                 [](JointId joint) { return joint.valid(); });
    return kept;
}

} // namespace

std::span<const FormChoice> formChoices() { return kChoices; }

const FormChoice& choiceOf(FormKind kind) { return kChoices[static_cast<std::size_t>(kind)]; }

double sizeOf(const FormSpec& spec, FormSize size) {
    const auto index = static_cast<std::size_t>(size);
    if (!choiceOf(spec.kind).takes[index]) {
        return 0;
    }
    const double usual = size == FormSize::Depth      ? spec.span / 10
                         : size == FormSize::TopWidth ? spec.span / 2
                                                      : 0;
    return spec.sizes[index].value_or(usual);
}

std::optional<double> riseOfPitch(const FormSpec& spec, double pitch) {
    const double run = spec.kind == MonoPitch ? spec.span : spec.span / 2;
    if (!(pitch > 0 && pitch < 90) || !(isPitched(spec.kind) || spec.kind == MonoPitch)) {
        return std::nullopt;
    }
    return sizeOf(spec, FormSize::Heel) + run * std::tan(pitch * std::numbers::pi / 180);
}

Outcome<FormLaid> layForm(const PhraseBook& book, const FormSpec& spec) {
    std::optional<Issue> fault = faultOfSizes(spec);
    fault = fault ? fault : faultOfPanels(spec);
    fault = fault ? fault : faultOfShape(spec);
    if (fault) {
        return *fault;
    }
    FormDraft draft{.spec = spec, .panels = panelsOf(spec)};
    draw(draft);
    if (draft.truss.supports.empty()) {
        draft.support(draft.lower.front(), SupportKind::Pin);
        draft.support(draft.lower.back(), SupportKind::Roller);
    }
    draft.truss.units = spec.units;
    draft.truss.title = sentenceIn(book, choiceOf(spec.kind).title.english);
    return FormLaid{std::move(draft.truss),
                    draft.loaded.empty() ? validOnes(draft.upper) : draft.loaded, draft.lower};
}

Outcome<Truss> makeForm(const PhraseBook& book, const FormSpec& spec) {
    const std::vector<FormCase> cases = casesOf(spec);
    if (!std::all_of(cases.begin(), cases.end(),
                     [](const FormCase& of) { return std::abs(of.load) <= kLargestNumber; })) {
        return Issue{IssueCode::NotFinite, "load", phrase::kFormLoadTooLarge};
    }
    Outcome<FormLaid> laid = layForm(book, spec);
    if (!laid) {
        return laid.issues();
    }
    FormLaid form = std::move(laid).value();
    load(spec, form);
    return std::move(form.truss);
}

} // namespace gusset
