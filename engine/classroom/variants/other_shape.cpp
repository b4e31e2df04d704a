#include "classroom/variants/other_shape.hpp"

#include "classroom/variants/friendly.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <span>

namespace gusset {

namespace {

// Lengths that people give on a drawing, rich in the sides of right triangles with whole sides.
constexpr std::array kLengths{100, 120, 125, 140, 150, 160, 175, 180, 200, 210, 225, 240, 250,
                              280, 300, 320, 350, 360, 375, 400, 420, 450, 480, 500, 525, 560,
                              600, 630, 640, 700, 720, 750, 800, 840, 875, 900, 960};
constexpr double kShortest = 0.55; // times the author's length
constexpr double kLongest = 1.9;
constexpr double kLargestGrid = 1e6; // units of the grid: their squares are exact in a double

double powerOfTen(double size) { return std::pow(10.0, std::floor(std::log10(size) + 1e-9)); }

AxisGaps gapsAlong(const Truss& truss, double Vec2::*axis) {
    AxisGaps found;
    for (const Joint& joint : truss.joints) {
        found.places.push_back(joint.at.*axis);
    }
    std::sort(found.places.begin(), found.places.end());
    found.places.erase(std::unique(found.places.begin(), found.places.end()), found.places.end());
    for (const Joint& joint : truss.joints) {
        const auto at = std::lower_bound(found.places.begin(), found.places.end(), joint.at.*axis);
        found.place.push_back(static_cast<int>(at - found.places.begin()));
    }
    for (std::size_t i = 0; i + 1 < found.places.size(); ++i) {
        const double gap = found.places[i + 1] - found.places[i];
        const auto same = std::find_if(found.gaps.begin(), found.gaps.end(), [&](double other) {
            return std::fabs(other - gap) < 1e-9 * (other + gap);
        });
        found.kind.push_back(static_cast<int>(same - found.gaps.begin()));
        if (same == found.gaps.end()) {
            found.gaps.push_back(gap);
        }
    }
    return found;
}

double otherLength(double length, Dice& dice) {
    const double ten = powerOfTen(length) / 100;
    std::vector<double> fitting;
    for (const double scale : {ten / 10, ten, ten * 10}) {
        for (const int candidate : kLengths) {
            const double value = candidate * scale;
            if (value >= kShortest * length && value <= kLongest * length) {
                fitting.push_back(value);
            }
        }
    }
    return dice.pick(std::span<const double>(fitting));
}

// The sum of two other kinds that a kind of gap is, if it is one: a rafter that is straight over
// both stays so.
struct Sum {
    std::size_t a = 0;
    std::size_t b = 0;
};
std::optional<Sum> sumOf(const std::vector<double>& gaps, std::size_t kind) {
    for (std::size_t a = 0; a < gaps.size(); ++a) {
        for (std::size_t b = a; b < gaps.size(); ++b) {
            if (std::fabs(gaps[a] + gaps[b] - gaps[kind]) < 1e-9 * gaps[kind]) {
                return Sum{a, b};
            }
        }
    }
    return std::nullopt;
}

// New lengths of the kinds of gaps, each for itself but for sums.
std::vector<double> otherLengths(const AxisGaps& axis, Dice& dice) {
    std::vector<std::size_t> order(axis.gaps.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [&](std::size_t a, std::size_t b) { return axis.gaps[a] < axis.gaps[b]; });
    std::vector<double> lengths(axis.gaps.size());
    for (const std::size_t kind : order) { // the parts of a sum are shorter: they come first
        const std::optional<Sum> sum = sumOf(axis.gaps, kind);
        lengths[kind] =
            sum ? lengths[sum->a] + lengths[sum->b] : otherLength(axis.gaps[kind], dice);
    }
    return lengths;
}

std::vector<double> scaled(std::vector<double> lengths, double factor) {
    for (double& length : lengths) {
        length *= factor;
    }
    return lengths;
}

double otherFactor(const AxisGaps& axis, Dice& dice) {
    return axis.gaps.empty() ? 1 : otherLength(axis.gaps[0], dice) / axis.gaps[0];
}

struct Lengths {
    std::vector<double> x;
    std::vector<double> y;
};

// A roof with two struts and two ties on each side, as a W: its middle posts lean from the joints
// of the bottom chord, at `inner` from each end, to the middles of the rafters and to the ridge.
// With slopes r and 2r not all of its webs are rational, and few proportions are friendly; in these
// all are: webs 7.5 and 12.5, 12.5 and 17, 13 and 36.5.
struct FriendlyRoof {
    double halfSpan;
    double rise;
    double inner;
};
constexpr std::array kFriendlyRoofs{FriendlyRoof{16, 12, 12.5}, FriendlyRoof{36, 15, 28},
                                    FriendlyRoof{45, 24, 17.5}};

// Places along x: end, middle of the rafter, bottom joint, ridge, and the same mirrored; along y:
// eaves, middle, ridge.
bool isRoofOfW(const Truss& truss, const Gaps& gaps) {
    const std::vector<int>& x = gaps.x.kind;
    return truss.joints.size() == 7 && x.size() == 6 && x[0] == x[5] && x[1] == x[4] &&
           x[2] == x[3] && gaps.x.gaps.size() == 3 && gaps.y.kind == std::vector<int>{0, 0} &&
           std::fabs(gaps.x.gaps[static_cast<std::size_t>(x[0])] -
                     gaps.x.gaps[static_cast<std::size_t>(x[1])] -
                     gaps.x.gaps[static_cast<std::size_t>(x[2])]) <
               1e-9 * gaps.x.gaps[static_cast<std::size_t>(x[0])];
}

Lengths roofOfW(const Gaps& gaps, Dice& dice) {
    const FriendlyRoof& roof = dice.pick(std::span(kFriendlyRoofs));
    const std::vector<int>& kinds = gaps.x.kind;
    const auto gapAt = [&](std::size_t place) { return static_cast<std::size_t>(kinds[place]); };
    const double half = roof.halfSpan / 2;
    const double scale = otherLength(gaps.x.gaps[gapAt(0)], dice) / half;
    std::vector<double> x(3);
    x[gapAt(0)] = scale * half;
    x[gapAt(1)] = scale * (roof.inner - half); // negative where the joint is nearer to the end
    x[gapAt(2)] = scale * (roof.halfSpan - roof.inner);
    return {x, {scale * roof.rise / 2}};
}

// Every kind of gap gets a length of its own; or each axis has a factor, which keeps chords
// straight; or both have the same, which keeps the slopes.
Lengths throwLengths(const Gaps& gaps, const Vary& vary, Dice& dice) {
    const std::size_t way = dice.below(vary.lengths && vary.rise ? 3 : 2);
    if (way == 0) {
        return {vary.lengths ? otherLengths(gaps.x, dice) : gaps.x.gaps,
                vary.rise ? otherLengths(gaps.y, dice) : gaps.y.gaps};
    }
    const double x = vary.lengths ? otherFactor(gaps.x, dice) : 1;
    const double y = way == 2 ? x : vary.rise ? otherFactor(gaps.y, dice) : 1;
    return {scaled(gaps.x.gaps, x), scaled(gaps.y.gaps, y)};
}

// In units of the grid.
std::vector<double> placesOf(const AxisGaps& axis, const std::vector<double>& lengths) {
    std::vector<double> places{axis.places.front() / axis.grid};
    for (const int kind : axis.kind) {
        places.push_back(places.back() + lengths[static_cast<std::size_t>(kind)] / axis.grid);
    }
    return places;
}

// False if a place is not on the grid.
bool settleOnGrid(std::vector<double>& places) {
    for (double& place : places) {
        const double whole = std::round(place);
        if (std::fabs(place - whole) > 1e-6 || std::fabs(whole) > kLargestGrid) {
            return false;
        }
        place = whole;
    }
    return true;
}

// Whether the distances between places, in units of the grid, are multiples of the step.
bool areInSteps(const std::vector<double>& places, double grid, double step) {
    return step == 0 || std::all_of(places.begin(), places.end(), [&](double place) {
               return isMultiple((place - places.front()) * grid, step);
           });
}

bool isWholeRoot(double square) {
    const double root = std::round(std::sqrt(square));
    return root * root == square;
}

// Multiplied by a grid below 1, decimals would not come out as people write them.
double onGrid(double units, double grid) {
    return grid < 1 ? units / std::round(1 / grid) : units * grid;
}

} // namespace

Gaps gapsOf(const Truss& truss) {
    Gaps gaps{gapsAlong(truss, &Vec2::x), gapsAlong(truss, &Vec2::y)};
    const Extent box = extent(truss);
    const double size = std::max(box.high.x - box.low.x, box.high.y - box.low.y);
    gaps.x.grid = powerOfTen(size) / 1000;
    gaps.y.grid = gaps.x.grid;
    return gaps;
}

std::optional<Truss> otherShape(const Truss& truss, const Gaps& gaps, const VariantWishes& wishes,
                                const std::vector<bool>& needed, Dice& dice) {
    const Vary& vary = wishes.vary;
    if (!vary.lengths && !vary.rise) {
        return truss;
    }
    const bool mayBeRoof = vary.lengths && vary.rise && isRoofOfW(truss, gaps);
    const Lengths lengths =
        mayBeRoof && dice.below(2) == 0 ? roofOfW(gaps, dice) : throwLengths(gaps, vary, dice);
    std::vector<double> xs = placesOf(gaps.x, lengths.x);
    std::vector<double> ys = placesOf(gaps.y, lengths.y);
    if (!settleOnGrid(xs) || !settleOnGrid(ys)) {
        return std::nullopt;
    }
    const bool isInSteps = areInSteps(xs, gaps.x.grid, vary.lengths ? wishes.lengthStep : 0) &&
                           areInSteps(ys, gaps.y.grid, vary.rise ? wishes.lengthStep : 0);
    if (!isInSteps) {
        return std::nullopt;
    }
    const auto placeOf = [&](JointId joint) {
        return Vec2{xs[static_cast<std::size_t>(gaps.x.place[joint.at()])],
                    ys[static_cast<std::size_t>(gaps.y.place[joint.at()])]};
    };
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 d = placeOf(truss.members[i].b) - placeOf(truss.members[i].a);
        const bool hidesSlips = std::fabs(d.x) == std::fabs(d.y);
        if (hidesSlips || (needed[i] && !isWholeRoot(d.x * d.x + d.y * d.y))) {
            return std::nullopt;
        }
    }
    Truss other = truss;
    for (std::size_t i = 0; i < other.joints.size(); ++i) {
        const Vec2 at = placeOf(JointId{static_cast<int>(i)});
        other.joints[i].at = {onGrid(at.x, gaps.x.grid), onGrid(at.y, gaps.y.grid)};
    }
    return other;
}

} // namespace gusset
