#include "statics/moving/moving.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {

namespace {

// The line's ordinates are for a unit load down, while forces are positive up.
double effectOf(const InfluenceLine& line, const std::vector<Wheel>& wheels, double first,
                bool reversed) {
    double sum = 0;
    for (const Wheel& wheel : wheels) {
        sum -= wheel.force * ordinateAt(line, first + (reversed ? wheel.behind : -wheel.behind));
    }
    return sum;
}

void consider(const TrainPlace& place, TrainExtremes& extremes) {
    if (place.value > extremes.largest.value) {
        extremes.largest = place;
    }
    if (place.value < extremes.smallest.value) {
        extremes.smallest = place;
    }
}

// ∫ of a line from its start, with the value at each joint stored: the many positions of a load
// then don't need a pass along the line each.
class Integral {
public:
    explicit Integral(const InfluenceLine& line) : line_(line), atJoint_(line.at.size()) {
        for (std::size_t i = 0; i + 1 < line.at.size(); ++i) {
            atJoint_[i + 1] = atJoint_[i] + pieceTo(i, line.at[i + 1]);
        }
    }

    [[nodiscard]] double to(double at) const { // a point on the line
        const auto next = std::lower_bound(line_.at.begin(), line_.at.end(), at);
        if (next == line_.at.begin()) {
            return 0;
        }
        const auto piece =
            std::min(static_cast<std::size_t>(next - line_.at.begin()), line_.at.size() - 1) - 1;
        return atJoint_[piece] + pieceTo(piece, std::min(at, line_.at[piece + 1]));
    }

private:
    [[nodiscard]] double pieceTo(std::size_t i, double end) const {
        return (end - line_.at[i]) * (line_.ordinates[i] + ordinateAt(line_, end)) / 2;
    }

    const InfluenceLine& line_;
    std::vector<double> atJoint_;
};

void consider(const UniformPlace& place, UniformExtremes& extremes) {
    if (place.value > extremes.largest.value) {
        extremes.largest = place;
    }
    if (place.value < extremes.smallest.value) {
        extremes.smallest = place;
    }
}

} // namespace

std::vector<Wheel> wheelsOf(const Truss& truss, const MovingLoad& load) {
    std::vector<Wheel> wheels;
    for (const Axle& axle : load.axles) {
        wheels.push_back(
            {axle.at * toMetre(truss.units.length), axle.force * toNewton(truss.units.force)});
    }
    return wheels;
}

TrainExtremes extremesOf(const InfluenceLine& line, const std::vector<Wheel>& wheels) {
    TrainExtremes extremes;
    for (std::size_t axle = 0; axle < wheels.size(); ++axle) {
        for (std::size_t joint = 0; joint < line.at.size(); ++joint) {
            for (const bool reversed : {false, true}) {
                TrainPlace place;
                place.first =
                    line.at[joint] + (reversed ? -wheels[axle].behind : wheels[axle].behind);
                place.reversed = reversed;
                place.axle = axle;
                place.joint = joint;
                place.value = effectOf(line, wheels, place.first, reversed);
                consider(place, extremes);
            }
        }
    }
    return extremes;
}

UniformExtremes extremesOfUniform(const InfluenceLine& line, double perLength, double length) {
    // Positions of the load's start at which the formula of the effect changes.
    std::vector<double> starts;
    for (double joint : line.at) {
        starts.push_back(joint);
        starts.push_back(joint - length);
    }
    std::sort(starts.begin(), starts.end());
    UniformExtremes extremes;
    const Integral integral(line);
    const auto look = [&](double from) {
        const double start = std::clamp(from, 0.0, line.at.back());
        const double end = std::clamp(from + length, 0.0, line.at.back());
        consider({perLength * (integral.to(end) - integral.to(start)), from, from + length},
                 extremes);
    };
    const auto slope = [&](double from) {
        return ordinateAt(line, from + length) - ordinateAt(line, from);
    };
    for (std::size_t i = 0; i < starts.size(); ++i) {
        look(starts[i]);
        if (i + 1 == starts.size() || starts[i + 1] <= starts[i]) {
            continue;
        }
        // In between, the slope is linear: where it is zero, both ends are at equal ordinates.
        // Evaluated slightly inside, since the line jumps to zero at its ends.
        const double width = starts[i + 1] - starts[i];
        const double inset = kSameSpot * width;
        const double left = slope(starts[i] + inset);
        const double right = slope(starts[i + 1] - inset);
        if ((left < 0) == (right < 0) || left == right) {
            continue;
        }
        look(starts[i] + inset + (width - 2 * inset) * left / (left - right));
    }
    return extremes;
}

UniformExtremes extremesOf(const Truss& truss, const InfluenceLine& line,
                           const MovingUniform& load) {
    const double metre = toMetre(truss.units.length);
    const double down = -load.perLength * toNewton(truss.units.force) / metre;
    UniformExtremes extremes;
    if (load.length) {
        extremes = extremesOfUniform(line, std::abs(down), *load.length * metre);
    } else {
        const Areas areas = areasOf(line);
        extremes.largest.value = std::abs(down) * areas.positive;
        extremes.smallest.value = std::abs(down) * areas.negative;
    }
    if (down < 0) { // an upward load
        std::swap(extremes.largest, extremes.smallest);
        extremes.largest.value = -extremes.largest.value;
        extremes.smallest.value = -extremes.smallest.value;
    }
    return extremes;
}

std::vector<TrainExtremes> movingEnvelope(const PathAnalysis& analysis,
                                          const std::vector<Wheel>& wheels) {
    std::vector<TrainExtremes> envelope;
    for (std::size_t i = 0; i < analysis.structure.bars.size(); ++i) {
        Effect effect;
        effect.member = MemberId{static_cast<int>(i)};
        envelope.push_back(extremesOf(influenceLine(analysis, effect), wheels));
    }
    return envelope;
}

} // namespace gusset
