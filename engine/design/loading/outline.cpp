#include "design/loading/outline.hpp"

#include "model/truss/limits.hpp"
#include "phrases/design/loading.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

bool isNumber(double value) { return std::abs(value) <= kLargestNumber; }

std::optional<Issue> faultOf(const Outline& outline) {
    if (!(outline.spacing > 0 && isNumber(outline.spacing))) {
        return Issue{IssueCode::OutOfRange, "spacing", phrase::kSpacingMustBePositive};
    }
    for (const OutlineLoad& of : outline.loads) {
        if (!isNumber(of.load.left) || !isNumber(of.load.right)) {
            return Issue{IssueCode::NotFinite, "loads", phrase::kRoofLoadTooLarge};
        }
        const bool lifts = of.load.left < 0 || of.load.right < 0;
        const std::optional<CaseKind> action = actionNamed(of.kind);
        if (lifts && action && *action != CaseKind::Wind) {
            return Issue{IssueCode::OutOfRange, "loads",
                         statement(phrase::kOnlyWindLifts, {{"case", of.load.caseId}})};
        }
    }
    return std::nullopt;
}

void addShares(Truss& truss, const std::vector<ChordShare>& shares, const std::string& caseId) {
    for (const ChordShare& share : shares) {
        if (share.force != Vec2{}) {
            Load load;
            load.what = JointForce{share.joint, share.force.x, share.force.y};
            load.caseId = caseId;
            truss.loads.push_back(std::move(load));
        }
    }
}

void addCase(Truss& truss, const std::string& id, const std::string& kind) {
    const bool isThere = std::any_of(truss.cases.begin(), truss.cases.end(),
                                     [&](const LoadCase& it) { return it.id == id; });
    if (!kind.empty() && !id.empty() && !isThere) {
        truss.cases.push_back({id, kind, {}});
    }
}

std::vector<ChordShare> sharesOn(const FormLaid& laid, const Outline& outline,
                                 const OutlineLoad& of) {
    return sharesOf(laid.truss, of.on == LoadedChord::Upper ? laid.upper : laid.lower,
                    outline.spacing, of.load);
}

void loadBy(FormLaid& laid, const Outline& outline) {
    for (const OutlineLoad& of : outline.loads) {
        addShares(laid.truss, sharesOn(laid, outline, of), of.load.caseId);
        addCase(laid.truss, of.load.caseId, of.kind);
    }
    if (!outline.selfWeight.empty()) {
        laid.truss.loads.push_back({SelfWeight{}, outline.selfWeight, {}});
        addCase(laid.truss, outline.selfWeight, "permanent");
    }
}

} // namespace

Outcome<Truss> trussOf(const PhraseBook& book, const Outline& outline) {
    if (const std::optional<Issue> fault = faultOf(outline)) {
        return *fault;
    }
    Outcome<FormLaid> made = layForm(book, outline.form);
    if (!made) {
        return made.issues();
    }
    FormLaid laid = std::move(made).value();
    loadBy(laid, outline);
    if (outline.rule && !laid.truss.cases.empty()) {
        Outcome<CombinationsMade> combined = combinationsOf(book, laid.truss, *outline.rule);
        if (!combined) {
            return combined.issues();
        }
        laid.truss.combinations = std::move(combined).value().combinations;
    }
    return std::move(laid.truss);
}

std::vector<std::vector<ChordShare>> sharesOf(const PhraseBook& book, const Outline& outline) {
    const Outcome<FormLaid> laid = layForm(book, outline.form);
    std::vector<std::vector<ChordShare>> all;
    for (const OutlineLoad& of : outline.loads) {
        all.push_back(sharesOn(laid.value(), outline, of));
    }
    return all;
}

bool isUntouched(const PhraseBook& book, const Truss& truss, const Outline& outline) {
    const Outcome<FormLaid> laid = layForm(book, outline.form);
    if (!laid) {
        return false;
    }
    const Truss& made = laid.value().truss;
    const auto sameEnds = [](const Member& a, const Member& b) { return a.a == b.a && a.b == b.b; };
    return truss.units == made.units && truss.joints == made.joints &&
           truss.supports == made.supports &&
           std::equal(truss.members.begin(), truss.members.end(), made.members.begin(),
                      made.members.end(), sameEnds);
}

bool carriesLoadsOf(const PhraseBook& book, const Truss& truss, const Outline& outline) {
    if (!isUntouched(book, truss, outline)) {
        return false;
    }
    const Outcome<Truss> made = trussOf(book, outline);
    return made &&
           std::all_of(made.value().loads.begin(), made.value().loads.end(), [&](const Load& load) {
               return std::find(truss.loads.begin(), truss.loads.end(), load) != truss.loads.end();
           });
}

} // namespace gusset
