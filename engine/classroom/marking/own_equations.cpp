#include "classroom/marking/own_equations.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {

namespace {

class SumWriter {
public:
    SumWriter(const SheetBasis& basis, const PartOfTruss& part,
              const std::vector<std::optional<double>>& values, const Rounding& rounding)
        : basis_(basis), part_(part), values_(values), rounding_(rounding) {}

    // None if a value is missing, if it holds none of the answers, or if it is satisfied.
    std::optional<OwnEquation> write(const Sum& sum, const std::vector<int>& answers) const {
        OwnEquation equation;
        equation.kind = sum.takesMoments   ? EquationKind::SumMoments
                        : sum.along.x != 0 ? EquationKind::SumX
                                           : EquationKind::SumY;
        equation.about = sum.takesMoments ? jointAt(sum.centre) : JointId{};
        const double unit = sum.takesMoments ? basis_.metre : 1;
        double error = 0;
        double left = 0;
        for (const ActingForce& force : part_.forces) {
            const double size = length(force.along);
            const double factor = shareIn(sum, force) / size / unit;
            if (std::abs(factor) < kNoShare) {
                continue;
            }
            if (force.of != kGivenLoad && !valueOf(force.of)) {
                return std::nullopt;
            }
            const bool isLoad = force.of == kGivenLoad;
            const double value = isLoad ? size : *valueOf(force.of);
            equation.terms.push_back(
                {isLoad ? std::nullopt : std::optional(unknownNumbered(basis_.structure, force.of)),
                 jointAt(force.at), (1 / size) * force.along, value, factor});
            left += value * factor;
            error = ofBoth(error, isLoad ? 0 : factor * roundingError(rounding_, value));
        }
        equation.left = left;
        const std::optional<int> answer = heldAnswer(sum, answers);
        if (!answer || std::abs(left) <= kRoundings * error) {
            return std::nullopt;
        }
        equation.of = unknownNumbered(basis_.structure, *answer);
        equation.written = *valueOf(*answer);
        equation.gives = equation.written - left * unit / shareIn(sum, forceOf(*answer));
        return equation;
    }

private:
    const std::optional<double>& valueOf(int unknown) const {
        return values_[static_cast<std::size_t>(unknown)];
    }
    const ActingForce& forceOf(int unknown) const {
        return *std::find_if(part_.forces.begin(), part_.forces.end(),
                             [&](const ActingForce& force) { return force.of == unknown; });
    }
    JointId jointAt(Vec2 place) const {
        const auto& joints = basis_.structure.joints;
        return {static_cast<int>(std::find(joints.begin(), joints.end(), place) - joints.begin())};
    }
    std::optional<int> heldAnswer(const Sum& sum, const std::vector<int>& answers) const {
        const auto held = std::find_if(answers.begin(), answers.end(), [&](int answer) {
            return valueOf(answer) && std::abs(shareIn(sum, forceOf(answer))) >
                                          kNoShare * (sum.takesMoments ? basis_.metre : 1);
        });
        return held == answers.end() ? std::nullopt : std::optional(*held);
    }

    const SheetBasis& basis_;
    const PartOfTruss& part_;
    const std::vector<std::optional<double>>& values_;
    const Rounding& rounding_;
};

} // namespace

std::vector<OwnEquation> brokenSums(const SheetBasis& basis, const PartOfTruss& part,
                                    const std::vector<std::optional<double>>& values,
                                    const std::vector<int>& answers, const Rounding& rounding) {
    std::vector<OwnEquation> broken;
    const SumWriter writer(basis, part, values, rounding);
    for (const Sum& sum : plainSums(basis.structure, part)) {
        if (std::optional<OwnEquation> equation = writer.write(sum, answers)) {
            broken.push_back(std::move(*equation));
        }
    }
    return broken;
}

} // namespace gusset
