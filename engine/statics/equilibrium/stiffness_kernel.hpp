#pragma once
// The arithmetic of stiffness.hpp for a scalar type: double, or Wide where double is too narrow.
// Included only by .cpp files of statics.

#include "core/index.hpp"
#include "statics/equilibrium/stiffness.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gusset::kernel {

[[nodiscard]] inline Vec2 turned(const HeldJoint& hold) { return {-hold.first.y, hold.first.x}; }

// Components along the hold's two directions, with the held ones zero.
template <class Vec>
[[nodiscard]] Vec freeIn(const HeldJoint& hold, const Vec& v) {
    return {hold.firstHeld ? 0 : dot(v, Vec(hold.first)),
            hold.secondHeld ? 0 : dot(v, Vec(turned(hold)))};
}
template <class Vec>
[[nodiscard]] Vec fromFree(const HeldJoint& hold, const Vec& free) {
    return free.x * Vec(hold.first) + free.y * Vec(turned(hold));
}

template <class Scalar>
void subtract(BlockOf<Scalar>& from, const BlockOf<Scalar>& l, const BlockOf<Scalar>& x) { // l·x
    from.a -= l.a * x.a + l.b * x.c;
    from.b -= l.a * x.b + l.b * x.d;
    from.c -= l.c * x.a + l.d * x.c;
    from.d -= l.c * x.b + l.d * x.d;
}
template <class Scalar, class Vec>
void addOuter(BlockOf<Scalar>& to, Scalar factor, const Vec& row, const Vec& column) {
    to.a += factor * row.x * column.x;
    to.b += factor * row.x * column.y;
    to.c += factor * row.y * column.x;
    to.d += factor * row.y * column.y;
}
template <class Scalar> // xᵀ·y
[[nodiscard]] BlockOf<Scalar> transposedTimes(const BlockOf<Scalar>& x, const BlockOf<Scalar>& y) {
    return {x.a * y.a + x.c * y.c, x.a * y.b + x.c * y.d, x.b * y.a + x.d * y.c,
            x.b * y.b + x.d * y.d};
}
template <class Scalar, class Vec>
[[nodiscard]] Vec times(const BlockOf<Scalar>& m, const Vec& v) {
    return {m.a * v.x + m.b * v.y, m.c * v.x + m.d * v.y};
}
template <class Scalar, class Vec>
[[nodiscard]] Vec transposedTimes(const BlockOf<Scalar>& m, const Vec& v) {
    return {m.a * v.x + m.c * v.y, m.b * v.x + m.d * v.y};
}

// A bar in the scalar's precision. All stiffnesses are scaled by one power of two, so that the
// largest is near 1 and none overflows; displacements are then those of the scaled truss.
template <class Scalar>
struct BarOf {
    VecOf<Scalar> along;
    Scalar rigidity{};
    Scalar strain{}; // scaled like displacements
};
template <class Scalar>
struct BarsOf {
    std::vector<BarOf<Scalar>> bars;
    double scale = 1; // factor that takes displacements back to the unscaled truss
};

[[nodiscard]] inline double scaleOf(const Structure& structure) {
    double largest = 0;
    for (const Bar& bar : structure.bars) {
        largest = std::max(largest, bar.stiffness / bar.length);
    }
    int exponent = 0;
    (void)std::frexp(largest, &exponent);
    return std::ldexp(1.0, -exponent);
}

template <class Scalar>
[[nodiscard]] BarsOf<Scalar> barsOf(const Structure& structure) {
    BarsOf<Scalar> result;
    result.scale = scaleOf(structure);
    result.bars.reserve(structure.bars.size());
    for (const Bar& bar : structure.bars) {
        if constexpr (std::is_same_v<Scalar, double>) {
            result.bars.push_back(
                {bar.along, bar.stiffness * result.scale / bar.length, bar.strain / result.scale});
        } else {
            const VecOf<Scalar> run = VecOf<Scalar>(structure.joints[at(bar.b)]) -
                                      VecOf<Scalar>(structure.joints[at(bar.a)]);
            const Scalar length = rootOf(dot(run, run));
            result.bars.push_back({{run.x / length, run.y / length},
                                   Scalar(bar.stiffness * result.scale) / length,
                                   Scalar(bar.strain / result.scale)});
        }
    }
    return result;
}

// Factors row by row; `work` holds the current row and is zero in between.
template <class Scalar>
class RowFactoring {
public:
    using Vec = VecOf<Scalar>;
    using Block = BlockOf<Scalar>;

    RowFactoring(const BarsOf<Scalar>& bars, const JointPattern& pattern,
                 StiffnessOf<Scalar>& result)
        : bars_(bars), pattern_(pattern), result_(result),
          next_(pattern.columnStart.begin(), pattern.columnStart.end() - 1),
          work_(pattern.order.size()) {
        result_.lowerRows.resize(pattern.rows.size());
        result_.lower.resize(pattern.rows.size());
        result_.inverse.resize(pattern.order.size());
    }

    void run() {
        for (int k = 0; k < static_cast<int>(pattern_.order.size()); ++k) {
            Block diagonal = scatter(k);
            const Scalar scale = diagonal.a + diagonal.d;
            for (int r = pattern_.rowStart[at(k)]; r < pattern_.rowStart[at(k) + 1]; ++r) {
                eliminate(k, pattern_.rows[at(r)], diagonal);
            }
            invert(k, diagonal, scale);
        }
    }

private:
    const HeldJoint& holdAt(int place) const {
        return result_.holds[at(pattern_.order[at(place)])];
    }

    // The stiffness of the bars at place k: the diagonal block, and in `work` the blocks above it.
    Block scatter(int k) {
        Block diagonal;
        for (int e = pattern_.endStart[at(k)]; e < pattern_.endStart[at(k) + 1]; ++e) {
            const BarEnd& end = pattern_.ends[at(e)];
            const BarOf<Scalar>& bar = bars_.bars[at(end.bar)];
            const Vec here = freeIn(holdAt(k), bar.along);
            addOuter(diagonal, bar.rigidity, here, here);
            if (end.other < k) {
                addOuter(work_[at(end.other)], -bar.rigidity, freeIn(holdAt(end.other), bar.along),
                         here);
            }
        }
        return diagonal;
    }

    void eliminate(int k, int i, Block& diagonal) {
        const Block x = work_[at(i)];
        work_[at(i)] = {};
        int& end = next_[at(i)];
        for (int p = pattern_.columnStart[at(i)]; p < end; ++p) {
            subtract(work_[at(result_.lowerRows[at(p)])], result_.lower[at(p)], x);
        }
        const Block l = transposedTimes(x, result_.inverse[at(i)]);
        subtract(diagonal, l, x);
        result_.lowerRows[at(end)] = k;
        result_.lower[at(end)] = l;
        ++end;
    }

    // Held directions carry nothing; they get a diagonal entry so that the block can be inverted.
    void invert(int k, Block diagonal, Scalar scale) {
        const HeldJoint& hold = holdAt(k);
        const double size = narrow(scale);
        const Scalar own = size > 0 ? scale : Scalar(1);
        if (hold.firstHeld) {
            diagonal.a = own;
        }
        if (hold.secondHeld) {
            diagonal.d = own;
        }
        const Scalar determinant = diagonal.a * diagonal.d - diagonal.b * diagonal.c;
        const double larger = std::max(narrow(diagonal.a), narrow(diagonal.d));
        const double pivot =
            size > 0 && larger > 0 ? std::min(larger, narrow(determinant) / larger) / size : 0;
        const bool free = !hold.firstHeld || !hold.secondHeld;
        if (free && !(pivot >= result_.weakest)) {
            result_.weakest = pivot;
        }
        const Scalar factor = narrow(determinant) != 0 ? Scalar(1) / determinant : Scalar(0);
        result_.inverse[at(k)] = {factor * diagonal.d, -(factor * diagonal.b),
                                  -(factor * diagonal.c), factor * diagonal.a};
    }

    const BarsOf<Scalar>& bars_;
    const JointPattern& pattern_;
    StiffnessOf<Scalar>& result_;
    std::vector<int> next_;   // next free entry of each column
    std::vector<Block> work_; // by place
};

template <class Scalar>
[[nodiscard]] StiffnessOf<Scalar> factored(const Structure& structure, const JointPattern& pattern,
                                           std::vector<HeldJoint> holds) {
    assert(fits(pattern, structure.joints.size(), structure.bars));
    StiffnessOf<Scalar> result;
    result.holds = std::move(holds);
    const BarsOf<Scalar> bars = barsOf<Scalar>(structure);
    result.scale = bars.scale;
    RowFactoring<Scalar>(bars, pattern, result).run();
    return result;
}

// Solves K·u = right in place, like solveDisplacements, for the scaled truss.
template <class Scalar>
void solveInPlace(const JointPattern& pattern, const StiffnessOf<Scalar>& stiffness,
                  std::vector<VecOf<Scalar>>& right) {
    using Vec = VecOf<Scalar>;
    const std::size_t count = pattern.order.size();
    std::vector<Vec> x(count);
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t joint = at(pattern.order[k]);
        x[k] = freeIn(stiffness.holds[joint], right[joint]);
    }
    for (std::size_t k = 0; k < count; ++k) {
        for (int p = pattern.columnStart[k]; p < pattern.columnStart[k + 1]; ++p) {
            Vec& below = x[at(stiffness.lowerRows[at(p)])];
            below = below - times(stiffness.lower[at(p)], x[k]);
        }
    }
    for (std::size_t k = count; k-- > 0;) {
        x[k] = times(stiffness.inverse[k], x[k]);
        for (int p = pattern.columnStart[k]; p < pattern.columnStart[k + 1]; ++p) {
            x[k] =
                x[k] - transposedTimes(stiffness.lower[at(p)], x[at(stiffness.lowerRows[at(p)])]);
        }
        const std::size_t joint = at(pattern.order[k]);
        right[joint] = fromFree(stiffness.holds[joint], x[k]);
    }
}

} // namespace gusset::kernel
