#include "statics/analysis.hpp"

#include "core/tolerance.hpp"

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

Issue missingStiffness(MemberId member, std::string says) {
    return {IssueCode::Missing, "members[" + std::to_string(member.index) + "].section",
            std::move(says)};
}

// Whether the members' stiffnesses are known, or may be taken as equal; says which.
bool mayAssumeStiffness(const Truss& truss, Analysis& analysis) {
    std::vector<Bar>& bars = analysis.structure.bars;
    const auto first = std::find_if(bars.begin(), bars.end(), isUnknown);
    if (first == bars.end()) {
        return true;
    }
    const MemberId member{static_cast<int>(first - bars.begin())};
    if (!std::all_of(bars.begin(), bars.end(), isUnknown)) {
        analysis.faults.push_back(missingStiffness(
            member, "the forces depend on E and A of every member, and member " +
                        memberName(truss, member) +
                        " has none: give it a section with A and a material with E"));
        return false;
    }
    if (hasStrains(analysis.structure)) {
        analysis.faults.push_back(
            missingStiffness(member, "settlement, temperature and misfit cause forces that depend "
                                     "on E and A: give every member a "
                                     "section with A and a material with E"));
        return false;
    }
    for (Bar& bar : bars) {
        bar.stiffness = 1;
    }
    analysis.assumed.push_back(Assumption::EqualStiffness);
    return true;
}

void noteConditioning(const Truss& truss, Analysis& analysis) {
    const Stiffness& stiffness = analysis.stiffness;
    if (stiffness.weakest >= kWeak) {
        return;
    }
    analysis.notes.push_back({IssueCode::Suspicious,
                              "joints[" + std::to_string(stiffness.weakestJoint.index) + "]",
                              "the truss is close to a mechanism at joint " +
                                  truss.joints[stiffness.weakestJoint.at()].label +
                                  ": small changes of its shape change the results much"});
}

void prepareStiffness(const Truss& truss, Analysis& analysis) {
    Outcome<std::vector<Hold>> holds = holdsOf(truss, analysis.structure);
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
    noteConditioning(truss, analysis);
    analysis.solvable = analysis.stiffness.weakest > 0;
    analysis.displaces = analysis.solvable && known;
}

// Whether the same joints are joined and held.
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

std::optional<Response> respond(const Analysis& analysis, const std::vector<Vec2>& loads) {
    const Structure& structure = analysis.structure;
    if (analysis.status == Status::Indeterminate) {
        if (!analysis.solvable) {
            return std::nullopt;
        }
        Response response = respond(structure, analysis.pattern, analysis.stiffness, loads);
        if (!analysis.displaces) {
            response.displacements.clear();
        }
        return response;
    }
    if (analysis.equilibrium.counting.redundants > 0) {
        return std::nullopt;
    }
    std::optional<EquilibriumForces> found = balance(structure, analysis.equilibrium, loads);
    if (!found) {
        return std::nullopt;
    }
    Response response;
    response.found = std::move(*found);
    if (analysis.displaces) {
        response.displacements = displacementsOf(structure, analysis.equilibrium,
                                                 elongationsOf(structure, response.found.forces));
    }
    return response;
}

std::vector<Response> respondToUnitLoads(const Analysis& analysis,
                                         const std::vector<JointId>& joints) {
    const Structure& structure = analysis.structure;
    std::vector<Response> responses(joints.size());
    if (analysis.status == Status::Indeterminate) {
        std::vector<Vec2> loads(structure.joints.size());
        for (std::size_t i = 0; i < joints.size(); ++i) {
            loads[joints[i].at()] = {0, -1};
            responses[i] = *respond(analysis, loads);
            loads[joints[i].at()] = {};
        }
        return responses;
    }
    std::vector<EquilibriumForces> found =
        balanceUnitLoads(structure, analysis.equilibrium, joints);
    for (std::size_t i = 0; i < joints.size(); ++i) {
        responses[i].found = std::move(found[i]);
        if (analysis.displaces) {
            responses[i].displacements =
                displacementsOf(structure, analysis.equilibrium,
                                elongationsOf(structure, responses[i].found.forces));
        }
    }
    return responses;
}

} // namespace gusset
