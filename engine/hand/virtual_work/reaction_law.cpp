#include "hand/virtual_work/reaction_law.hpp"

#include "core/tolerance.hpp"
#include "phrases/working/remarks.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

// The step that gives the reaction where it is largest: a load above a support has no arm, and its
// equation may be a shorter one.
const Step* stepOfLargest(const InfluenceByHand& line) {
    const auto largest = std::max_element(
        line.ordinates.begin(), line.ordinates.end(),
        [](const auto& a, const auto& b) { return std::fabs(a.value) < std::fabs(b.value); });
    const Step& step = largest->chain.steps.back();
    const bool gives = step.found.size() == 1 && step.found.front().symbol == line.symbol &&
                       step.kind == StepKind::ReactionMoment;
    return gives && largest->value != 0 ? &step : nullptr;
}

bool holds(const ReactionLaw& law, const InfluenceByHand& line) {
    double largest = 0;
    for (const InfluenceOrdinate& ordinate : line.ordinates) {
        largest = std::max(largest, std::fabs(ordinate.value));
    }
    return std::all_of(line.ordinates.begin(), line.ordinates.end(), [&](const auto& ordinate) {
        return std::fabs(valueAt(law, ordinate.place) - ordinate.value) <= kZeroForce * largest;
    });
}

} // namespace

double valueAt(const ReactionLaw& law, double x) { return law.way * (x - law.centre) / law.arm; }

std::optional<ReactionLaw> reactionLaw(const Truss& truss, const InfluenceByHand& line) {
    const Step* step = line.way == InfluenceWay::Reaction ? stepOfLargest(line) : nullptr;
    if (!step) {
        return std::nullopt;
    }
    const auto at = [&](JointId joint) { return truss.joints[joint.at()].at; };
    const Working& working = line.ordinates.front().chain;
    const Restraint& held = working.structure.restraints[line.symbol.restraint.at()];
    ReactionLaw law;
    law.step = *step;
    law.step.equations.front().terms.clear();
    std::erase_if(law.step.remarks,
                  [](const Remark& remark) { return says(remark, phrase::kActsOtherWay); });
    const Vec2 centre = step->equations.front().point;
    const double start = at(line.path.front()).x;
    law.way = at(line.path.back()).x < start ? -1 : 1;
    law.length = line.ordinates.back().place;
    law.centre = law.way * (centre.x - start);
    law.arm = cross(at(held.joint) - centre, held.along);
    return std::fabs(law.arm) > 0 && law.length > 0 && holds(law, line) ? std::optional(law)
                                                                        : std::nullopt;
}

} // namespace gusset
