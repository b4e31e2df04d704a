#include "statics/solve/analysis.hpp"

#include "core/tolerance.hpp"
#include "phrases/results/unsolved.hpp"
#include "statics/equilibrium/judge.hpp"

#include <algorithm>

namespace gusset {

Analysis::Analysis() = default;
Analysis::Analysis(const Analysis&) = default;
Analysis::Analysis(Analysis&&) noexcept = default;
Analysis& Analysis::operator=(const Analysis&) = default;
Analysis& Analysis::operator=(Analysis&&) noexcept = default;
Analysis::~Analysis() = default;

namespace {

Status statusOf(const Counting& counting) {
    if (counting.mechanisms > 0) {
        return Status::Mechanism;
    }
    return counting.redundants > 0 ? Status::Indeterminate : Status::Determinate;
}

bool isUnknown(const Bar& bar) { return bar.stiffness <= 0; }

Issue missingStiffness(MemberId member, Statement says) {
    return {IssueCode::Missing, "members[" + std::to_string(member.index) + "].section",
            std::move(says)};
}

// Whether the members' stiffnesses are known or can be taken as equal; records which.
bool mayAssumeStiffness(const Truss& truss, Analysis& analysis) {
    std::vector<Bar>& bars = analysis.structure.bars;
    const auto first = std::find_if(bars.begin(), bars.end(), isUnknown);
    if (first == bars.end()) {
        return true;
    }
    const MemberId member{static_cast<int>(first - bars.begin())};
    if (!std::all_of(bars.begin(), bars.end(), isUnknown)) {
        analysis.faults.push_back(
            missingStiffness(member, statement(phrase::kForcesNeedStiffness,
                                               {{"member", memberName(truss, member)}})));
        return false;
    }
    if (hasStrains(analysis.structure)) {
        analysis.faults.push_back(missingStiffness(member, phrase::kStrainsNeedStiffness));
        return false;
    }
    for (Bar& bar : bars) {
        bar.stiffness = 1;
    }
    analysis.assumed.push_back(Assumption::EqualStiffness);
    return true;
}

void prepareStiffness(const Truss& truss, Analysis& analysis) {
    Outcome<std::vector<HeldJoint>> holds = heldJointsOf(truss, analysis.structure);
    if (!holds) {
        analysis.faults = holds.issues();
        return;
    }
    const bool known =
        std::none_of(analysis.structure.bars.begin(), analysis.structure.bars.end(), isUnknown);
    if (!mayAssumeStiffness(truss, analysis)) {
        return;
    }
    if (analysis.pattern.order.empty()) {
        analysis.pattern =
            analysePattern(analysis.structure.joints.size(), analysis.structure.bars);
    }
    analysis.stiffness =
        factorStiffness(analysis.structure, analysis.pattern, std::move(holds).value());
    analysis.solvable = true;
    analysis.displaces = analysis.solvable && known;
}

// Whether the same joints are connected and supported.
bool sameForm(const Structure& one, const Structure& other) {
    const auto joined = [](const Bar& a, const Bar& b) { return a.a == b.a && a.b == b.b; };
    const auto held = [](const Restraint& a, const Restraint& b) { return a.joint == b.joint; };
    return one.joints.size() == other.joints.size() &&
           std::equal(one.bars.begin(), one.bars.end(), other.bars.begin(), other.bars.end(),
                      joined) &&
           std::equal(one.restraints.begin(), one.restraints.end(), other.restraints.begin(),
                      other.restraints.end(), held);
}

} // namespace

Analysis analyse(const Truss& truss, Structure structure) {
    Analysis analysis;
    analyseAgain(truss, std::move(structure), analysis);
    return analysis;
}

void analyseAgain(const Truss& truss, Structure structure, Analysis& analysis) {
    Analysis fresh;
    if (sameForm(analysis.structure, structure)) {
        fresh.equilibrium = std::move(analysis.equilibrium);
        fresh.plan = std::move(analysis.plan);
        fresh.pattern = std::move(analysis.pattern);
        factorAgain(structure, fresh.plan, fresh.equilibrium);
    } else {
        fresh.equilibrium = factorEquilibrium(structure);
    }
    analysis = std::move(fresh);
    analysis.structure = std::move(structure);
    analysis.status = statusOf(analysis.equilibrium.counting);
    if (analysis.status == Status::Indeterminate) {
        prepareStiffness(truss, analysis);
    } else if (analysis.status == Status::Determinate) {
        analysis.solvable = true;
        analysis.displaces =
            std::none_of(analysis.structure.bars.begin(), analysis.structure.bars.end(), isUnknown);
    }
}

namespace {

// Settlements, temperature and misfit that the truss can follow freely cause no forces: the
// computed ones are rounding error.
void dropForces(Response& response) {
    EquilibriumForces& found = response.found;
    std::fill(found.forces.begin(), found.forces.end(), 0.0);
    std::fill(found.reactions.begin(), found.reactions.end(), 0.0);
    found.largest = found.residual = 0;
    response.trust.error = response.trust.condition = 0;
}

double unlessRounding(double move, double still, double bound) {
    return std::abs(move - still) <= bound ? still : move;
}

// Whether no bar changes length, as far as the forces are known.
bool isUnstrained(const Structure& structure, const Response& response) {
    const double zero = std::max(kZeroForce, response.trust.error) * response.found.largest;
    const auto isStretched = [](const Bar& bar) { return bar.strain != 0; };
    return std::all_of(response.found.forces.begin(), response.found.forces.end(),
                       [&](double force) { return std::abs(force) <= zero; }) &&
           std::none_of(structure.bars.begin(), structure.bars.end(), isStretched);
}

// Displacements that are only rounding error are set to `still` if no bar changes length; otherwise
// those with fewer than three figures left are not given. `still`: the displacements from the
// supports alone.
void judgeMoves(const Structure& structure, const std::vector<Vec2>& still, Response& response) {
    double& error = response.trust.displacementError;
    if (isRounding(error) && isUnstrained(structure, response)) {
        response.displacements = still;
        error = 0;
        return;
    }
    if (!(error <= kUsable)) {
        response.displacements.clear();
        return;
    }
    const double bound = error * largestComponent(response.displacements);
    for (std::size_t i = 0; i < still.size(); ++i) {
        Vec2& move = response.displacements[i];
        move = {unlessRounding(move.x, still[i].x, bound),
                unlessRounding(move.y, still[i].y, bound)};
    }
}

std::vector<Vec2> settledOf(const std::vector<HeldJoint>& holds) {
    std::vector<Vec2> settled;
    settled.reserve(holds.size());
    for (const HeldJoint& hold : holds) {
        settled.push_back(hold.settled);
    }
    return settled;
}

} // namespace

Judge Responder::judged() const { return analysis_.displaces ? Judge::All : Judge::Forces; }

bool Responder::doublesMayDo() const { return !wide_ && analysis_.stiffness.weakest > kShakyPivot; }

const WideStiffness* Responder::wide() {
    if (!wide_) {
        wide_ = factorWide(analysis_.structure, analysis_.pattern, analysis_.stiffness.holds);
    }
    return wide_->weakest > kShakyWidePivot ? &*wide_ : nullptr;
}

// In doubles, where they are accurate enough: wider arithmetic can't remove the error from the
// rounding of coordinates and loads.
std::optional<Response> Responder::byDoubles(const std::vector<Vec2>& loads) const {
    if (!doublesMayDo()) {
        return std::nullopt;
    }
    Response response = gusset::respond(analysis_.structure, analysis_.pattern, analysis_.stiffness,
                                        loads, judged());
    return isTrusted(response.trust, response.found.residual) ? std::optional(std::move(response))
                                                              : std::nullopt;
}

std::optional<Response> Responder::byWide(const std::vector<Vec2>& loads) {
    const WideStiffness* const stiffness = wide();
    if (!stiffness) {
        return std::nullopt;
    }
    return gusset::respond(analysis_.structure, analysis_.pattern, *stiffness, loads, judged());
}

std::optional<Response> Responder::byStiffness(const std::vector<Vec2>& loads) {
    std::optional<Response> response = byDoubles(loads);
    if (!response) {
        response = byWide(loads);
    }
    if (!response) {
        return std::nullopt;
    }
    if (!hasLoad(loads) && isRounding(response->trust.error)) {
        dropForces(*response);
    }
    if (!isUsable(response->trust, response->found.residual)) {
        return std::nullopt;
    }
    judgeMoves(analysis_.structure, settledOf(analysis_.stiffness.holds), *response);
    return response;
}

void Responder::judgeDisplacementsOf(const std::vector<double>& changes,
                                     const EquilibriumForces& found,
                                     const std::vector<Vec2>& displacements, Trust& trust) const {
    const Equilibrium& equilibrium = analysis_.equilibrium;
    const auto judged = [&] {
        return judgeDisplacements(analysis_.structure, equilibrium, found, trust.error,
                                  displacements);
    };
    trust.displacementError = judged();
    // In bars much softer than others, a small force error becomes a large displacement error.
    if (!(trust.displacementError <= kTrusted) && found.largest > 0) {
        trust.error = sharpErrorOf(equilibrium, changes, found);
        trust.condition = trust.error / kHalfPlace;
        trust.displacementError = judged();
    }
}

std::optional<Response> Responder::byEquilibrium(const std::vector<Vec2>& loads) const {
    const Structure& structure = analysis_.structure;
    const Equilibrium& equilibrium = analysis_.equilibrium;
    std::optional<EquilibriumForces> found = balance(structure, equilibrium, loads);
    if (!found) {
        return std::nullopt;
    }
    Response response;
    response.found = std::move(*found);
    const std::vector<double> changes = changesOf(structure, loads, response.found);
    response.trust = judgeForces(structure, equilibrium, changes, response.found);
    if (!isUsable(response.trust, response.found.residual)) {
        return std::nullopt;
    }
    if (analysis_.displaces) {
        response.displacements = displacementsOf(structure, equilibrium,
                                                 elongationsOf(structure, response.found.forces));
        judgeDisplacementsOf(changes, response.found, response.displacements, response.trust);
        judgeMoves(structure, std::vector<Vec2>(structure.joints.size()), response);
    }
    return response;
}

std::optional<Response> Responder::respond(const std::vector<Vec2>& loads) {
    if (analysis_.status != Status::Indeterminate) {
        const bool isRedundant = analysis_.equilibrium.counting.redundants > 0;
        return isRedundant ? std::nullopt : byEquilibrium(loads);
    }
    std::optional<Response> response = analysis_.solvable ? byStiffness(loads) : std::nullopt;
    if (response && !analysis_.displaces) {
        response->displacements.clear();
    }
    return response;
}

std::optional<Response> respond(const Analysis& analysis, const std::vector<Vec2>& loads) {
    return Responder(analysis).respond(loads);
}

} // namespace gusset
