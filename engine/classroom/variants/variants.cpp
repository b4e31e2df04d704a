#include "classroom/variants/variants.hpp"

#include "classroom/variants/friendly.hpp"
#include "classroom/variants/other_loads.hpp"
#include "classroom/variants/other_shape.hpp"
#include "model/validate/validate.hpp"
#include "phrases/faults/variants.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace gusset {

namespace {

constexpr int kThrows = 15000;  // of lengths, for one variant: most are dropped at a glance
constexpr int kSolutions = 150; // of them that are solved

// What does not change from one variant to the next.
struct Source {
    const Truss& truss; // outlives it, as do the wishes
    const VariantWishes& wishes;
    Gaps gaps;
    std::vector<bool> needed;     // members whose length must be rational
    std::optional<StepsOf> steps; // to be like; none: those of the first variant
    int loads = 0;
};

std::string answersOf(const ExactSolution& exact) {
    std::string text;
    for (const std::vector<Surd>* list : {&exact.forces, &exact.reactions}) {
        for (const Surd& answer : *list) {
            text += textOf(answer) + ";";
        }
    }
    return text;
}

bool isNeeded(const VariantWishes& wishes, const ExactSolution& exact, std::size_t member) {
    const MemberId id{static_cast<int>(member)};
    const std::vector<MemberId>& asked = wishes.asked;
    const bool isAsked = asked.empty() || std::find(asked.begin(), asked.end(), id) != asked.end();
    const bool mayTurnZero =
        wishes.vary.places || wishes.vary.directions || exact.forces[member].numerator != "0";
    return isAsked && mayTurnZero;
}

// Whether a load can be thrown so that the supports do not share it equally.
bool canBeUneven(const VariantWishes& wishes, int loads) {
    return wishes.vary.places || (wishes.vary.loads && loads > 1);
}

Source sourceOf(const Truss& truss, const VariantWishes& wishes, const ExactSolution& exact) {
    Source source{truss, wishes, gapsOf(truss), {}, std::nullopt, 0};
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        source.needed.push_back(isNeeded(wishes, exact, i));
    }
    for (const Load& load : truss.loads) {
        source.loads += caseFactor(truss, wishes.loads, load) != 0 ? 1 : 0;
    }
    // Symmetry halves a working, and no variant has it then.
    if (!canBeUneven(wishes, source.loads) || !sharesEqually(truss, exact)) {
        source.steps = stepsOf(truss, wishes.loads, exact);
    }
    return source;
}

struct Thrown {
    Truss truss;
    ExactSolution exact;
};

// One throw of everything that may vary; none if its answers are not friendly.
std::optional<Thrown> throwLoads(const Source& source, Truss truss, Dice& dice) {
    const VariantWishes& wishes = source.wishes;
    keepShares(source.truss, truss);
    if (wishes.vary.supports) {
        throwSupports(truss, dice);
    }
    if (wishes.vary.places) {
        throwPlaces(truss, dice);
    }
    if (wishes.vary.directions) {
        throwDirections(truss, dice);
    }
    if (wishes.vary.loads) {
        throwRatios(truss, dice);
        const ExactSolution exact = solveExactly(truss, wishes.loads);
        const auto multiple =
            exact.solved ? friendlyMultiple(exact, wishes.asked, wishes.decimals) : std::nullopt;
        if (!multiple || !throwSize(source.truss, truss, *multiple, dice) ||
            (wishes.loadStep != 0 && !areLoadsInSteps(truss, wishes.loadStep))) {
            return std::nullopt;
        }
    }
    ExactSolution exact = solveExactly(truss, wishes.loads);
    if (!areFriendly(exact, wishes.asked, wishes.decimals) ||
        (canBeUneven(wishes, source.loads) && sharesEqually(truss, exact))) {
        return std::nullopt;
    }
    return Thrown{std::move(truss), std::move(exact)};
}

bool isLike(const Source& source, const StepsOf& steps) {
    const std::optional<int>& zeros = source.wishes.zeros;
    return (!zeros || *zeros == steps.zeros) && (!source.steps || areAlike(*source.steps, steps));
}

std::optional<Variant> nextVariant(const Source& source, int number,
                                   std::vector<std::string>& taken, Dice dice) {
    int solved = 0;
    for (int i = 0; i < kThrows && solved < kSolutions; ++i) {
        std::optional<Truss> shape =
            otherShape(source.truss, source.gaps, source.wishes, source.needed, dice);
        if (!shape) {
            continue;
        }
        ++solved;
        std::optional<Thrown> thrown = throwLoads(source, std::move(*shape), dice);
        if (!thrown) {
            continue;
        }
        std::string answers = answersOf(thrown->exact);
        const StepsOf steps = stepsOf(thrown->truss, source.wishes.loads, thrown->exact);
        const bool isNew = std::find(taken.begin(), taken.end(), answers) == taken.end();
        if (!isNew || !isLike(source, steps) || !validate(thrown->truss).errors.empty()) {
            continue;
        }
        taken.push_back(std::move(answers));
        return Variant{std::move(thrown->truss), number, steps};
    }
    return std::nullopt;
}

// Whether there is a variant at all.
bool hasVariant(const Source& source, const ExactSolution& own, std::uint64_t seed) {
    std::vector<std::string> taken{answersOf(own)};
    return nextVariant(source, 1, taken, Dice(Dice(seed).bits())).has_value();
}

struct Cure {
    VariantWishes wishes;
    Phrase<> says;
};
std::array<Cure, 5> curesOf(const VariantWishes& wishes) {
    VariantWishes decimals = wishes;
    decimals.decimals = 1;
    VariantWishes lengths = wishes;
    lengths.vary.lengths = true;
    lengths.vary.rise = true;
    VariantWishes loads = wishes;
    loads.vary.loads = true;
    VariantWishes steps = wishes;
    steps.lengthStep = 0;
    steps.loadStep = 0;
    VariantWishes all = lengths;
    all.vary.loads = true;
    all.decimals = 1;
    all.lengthStep = 0;
    all.loadStep = 0;
    return {{{steps, phrase::kBlamesSteps},
             {decimals, phrase::kBlamesDecimals},
             {lengths, phrase::kBlamesLengths},
             {loads, phrase::kBlamesLoads},
             {all, phrase::kBlamesAll}}};
}

std::optional<Issue> slopedRoller(const Truss& truss, const ExactSolution& exact) {
    std::size_t restraint = 0;
    for (const Support& support : truss.supports) {
        const bool isRoller = support.kind == SupportKind::Roller;
        if (isRoller && exact.reactions[restraint].radicand != "1") {
            return Issue{IssueCode::OutOfRange, "supports",
                         statement(phrase::kBlamesRoller,
                                   {{"joint", truss.joints[support.joint.at()].label}})};
        }
        restraint += isRoller ? 1 : 2;
    }
    return std::nullopt;
}

// The first wish whose giving up is enough.
Issue blame(const Truss& truss, const VariantWishes& wishes, const ExactSolution& exact,
            std::uint64_t seed) {
    for (const Cure& cure : curesOf(wishes)) {
        if (cure.wishes != wishes && hasVariant(sourceOf(truss, cure.wishes, exact), exact, seed)) {
            return {IssueCode::OutOfRange, "variants", cure.says};
        }
    }
    return {IssueCode::OutOfRange, "variants", phrase::kBlamesForm};
}

Issue tooFew(std::size_t found) {
    return {IssueCode::OutOfRange, "count",
            found == 1 ? Statement(phrase::kTooFewOfOne)
                       : statement(phrase::kTooFewVariants, {{"found", found}})};
}

std::optional<Issue> faultOf(const VariantWishes& wishes, int count) {
    if (count < 1 || count > kMostVariants) {
        return Issue{IssueCode::OutOfRange, "count",
                     statement(phrase::kVariantCount, {{"most", kMostVariants}})};
    }
    if (wishes.decimals != 0 && wishes.decimals != 1) {
        return Issue{IssueCode::OutOfRange, "decimals", phrase::kVariantDecimals};
    }
    if (!(wishes.lengthStep >= 0 && wishes.loadStep >= 0)) {
        return Issue{IssueCode::OutOfRange, "steps", phrase::kStepNotNegative};
    }
    const Vary none{false, false, false, false, false, false};
    if (wishes.vary == none) {
        return Issue{IssueCode::Missing, "vary", phrase::kNothingVaries};
    }
    return std::nullopt;
}

std::optional<Issue> faultOf(const ExactSolution& exact) {
    using enum InexactReason;
    const InexactReason reason = exact.whyNot.reason;
    if (reason == Redundant || reason == SetInMotion ||
        (exact.read && exact.counting.mechanisms > 0)) {
        return Issue{IssueCode::Unstable, "truss", phrase::kNotDeterminate};
    }
    if (reason != None) {
        return Issue{IssueCode::OutOfRange, "truss", phrase::kNotExact};
    }
    const auto isZero = [](const Surd& force) { return force.numerator == "0"; };
    if (std::all_of(exact.forces.begin(), exact.forces.end(), isZero)) {
        return Issue{IssueCode::Missing, "loads", phrase::kNoLoadToVary};
    }
    return std::nullopt;
}

} // namespace

struct VariantSearch::State {
    Truss truss;
    VariantWishes wishes;
    int count = 0;
    std::uint64_t seed = 0;
    Dice seeds{seed};
    ExactSolution exact = solveExactly(truss, wishes.loads);
    Issues issues{}; // why there are none
    std::optional<Source> source{};
    std::vector<std::string> taken{};
    std::vector<Variant> variants{};
};

VariantSearch::VariantSearch(const Truss& truss, const VariantWishes& wishes, int count,
                             std::uint64_t seed)
    : state_(new State{truss, wishes, count, seed}) {
    const ExactSolution& exact = state_->exact;
    std::optional<Issue> fault = faultOf(wishes, count);
    fault = fault ? fault : faultOf(exact);
    fault = fault ? fault : slopedRoller(state_->truss, exact);
    if (fault) {
        state_->issues = {*fault};
        return;
    }
    state_->source.emplace(sourceOf(state_->truss, state_->wishes, exact));
    state_->taken = {answersOf(exact)};
}

VariantSearch::~VariantSearch() = default;

bool VariantSearch::advance() {
    State& at = *state_;
    if (!at.issues.empty()) {
        return true;
    }
    const int number = static_cast<int>(at.variants.size()) + 1;
    std::optional<Variant> variant =
        nextVariant(*at.source, number, at.taken, Dice(at.seeds.bits()));
    if (variant) {
        at.source->steps = at.source->steps ? at.source->steps : variant->steps;
        at.variants.push_back(std::move(*variant));
        return number == at.count;
    }
    at.issues = {at.variants.empty() ? blame(at.truss, at.wishes, at.exact, at.seed)
                                     : tooFew(at.variants.size())};
    return true;
}

Progress VariantSearch::progress() const {
    return {state_->variants.size(), static_cast<std::size_t>(std::max(0, state_->count))};
}

Outcome<std::vector<Variant>> VariantSearch::result() {
    if (!state_->issues.empty()) {
        return state_->issues;
    }
    return std::move(state_->variants);
}

Outcome<std::vector<Variant>> makeVariants(const Truss& truss, const VariantWishes& wishes,
                                           int count, std::uint64_t seed) {
    VariantSearch search(truss, wishes, count, seed);
    return runToEnd(search).result();
}

} // namespace gusset
