#include "statics/stiffness.hpp"

#include "core/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gusset {

namespace {

constexpr int kRefinements = 3; // at most; each wins back the digits that the last solve lost

std::size_t at(int index) { return static_cast<std::size_t>(index); }

Vec2 turned(const Hold& hold) { return {-hold.first.y, hold.first.x}; }

// Components along the hold's two directions, without those that are held.
Vec2 freeIn(const Hold& hold, Vec2 v) {
    return {hold.firstHeld ? 0 : dot(v, hold.first), hold.secondHeld ? 0 : dot(v, turned(hold))};
}
Vec2 fromFree(const Hold& hold, Vec2 free) { return free.x * hold.first + free.y * turned(hold); }

void subtract(Block& from, const Block& l, const Block& x) { // from −= l·x
    from.a -= l.a * x.a + l.b * x.c;
    from.b -= l.a * x.b + l.b * x.d;
    from.c -= l.c * x.a + l.d * x.c;
    from.d -= l.c * x.b + l.d * x.d;
}
void addOuter(Block& to, double factor, Vec2 row, Vec2 column) {
    to.a += factor * row.x * column.x;
    to.b += factor * row.x * column.y;
    to.c += factor * row.y * column.x;
    to.d += factor * row.y * column.y;
}
Block transposedTimes(const Block& x, const Block& y) { // xᵀ·y
    return {x.a * y.a + x.c * y.c, x.a * y.b + x.c * y.d, x.b * y.a + x.d * y.c,
            x.b * y.b + x.d * y.d};
}
Vec2 times(const Block& m, Vec2 v) { return {m.a * v.x + m.b * v.y, m.c * v.x + m.d * v.y}; }
Vec2 transposedTimes(const Block& m, Vec2 v) {
    return {m.a * v.x + m.c * v.y, m.b * v.x + m.d * v.y};
}

double rigidity(const Bar& bar) { return bar.stiffness / bar.length; }

// Factors row after row; `work` holds the row in the making and is zero in between.
class RowFactoring {
public:
    RowFactoring(const Structure& structure, const JointPattern& pattern, Stiffness& result)
        : structure_(structure), pattern_(pattern), result_(result),
          next_(pattern.columnStart.begin(), pattern.columnStart.end() - 1),
          work_(pattern.order.size()) {
        result_.lowerRows.resize(pattern.rows.size());
        result_.lower.resize(pattern.rows.size());
        result_.inverse.resize(pattern.order.size());
    }

    void run() {
        for (int k = 0; k < static_cast<int>(pattern_.order.size()); ++k) {
            Block diagonal = scatter(k);
            const double scale = diagonal.a + diagonal.d;
            for (int r = pattern_.rowStart[at(k)]; r < pattern_.rowStart[at(k) + 1]; ++r) {
                eliminate(k, pattern_.rows[at(r)], diagonal);
            }
            invert(k, diagonal, scale);
        }
    }

private:
    const Hold& holdAt(int place) const { return result_.holds[at(pattern_.order[at(place)])]; }

    // The stiffness of the bars of place k: on the diagonal, and above it in `work`.
    Block scatter(int k) {
        Block diagonal;
        for (int e = pattern_.endStart[at(k)]; e < pattern_.endStart[at(k) + 1]; ++e) {
            const BarEnd& end = pattern_.ends[at(e)];
            const Bar& bar = structure_.bars[at(end.bar)];
            const Vec2 here = freeIn(holdAt(k), bar.along);
            addOuter(diagonal, rigidity(bar), here, here);
            if (end.other < k) {
                addOuter(work_[at(end.other)], -rigidity(bar), freeIn(holdAt(end.other), bar.along),
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

    // Held directions carry nothing and get a 1 of their own.
    void invert(int k, Block diagonal, double scale) {
        const Hold& hold = holdAt(k);
        if (hold.firstHeld) {
            diagonal.a = scale > 0 ? scale : 1;
        }
        if (hold.secondHeld) {
            diagonal.d = scale > 0 ? scale : 1;
        }
        const double determinant = diagonal.a * diagonal.d - diagonal.b * diagonal.c;
        const double larger = std::max(diagonal.a, diagonal.d);
        const double pivot =
            scale > 0 && larger > 0 ? std::min(larger, determinant / larger) / scale : 0;
        const bool free = !hold.firstHeld || !hold.secondHeld;
        if (free && pivot < result_.weakest) {
            result_.weakest = pivot;
            result_.weakestJoint = JointId{pattern_.order[at(k)]};
        }
        const double factor = determinant != 0 ? 1 / determinant : 0;
        result_.inverse[at(k)] = {factor * diagonal.d, -factor * diagonal.b, -factor * diagonal.c,
                                  factor * diagonal.a};
    }

    const Structure& structure_;
    const JointPattern& pattern_;
    Stiffness& result_;
    std::vector<int> next_;   // free entry of each column
    std::vector<Block> work_; // by place
};

// Force in each bar when all free displacements are zero.
std::vector<double> initialForces(const Structure& structure, const Stiffness& stiffness) {
    std::vector<double> forces;
    forces.reserve(structure.bars.size());
    for (const Bar& bar : structure.bars) {
        const Vec2 move = stiffness.holds[at(bar.b)].settled - stiffness.holds[at(bar.a)].settled;
        forces.push_back(rigidity(bar) * (dot(move, bar.along) - bar.strain));
    }
    return forces;
}

void addDisplacements(const Structure& structure, const std::vector<Vec2>& moves,
                      Response& response) {
    for (std::size_t i = 0; i < moves.size(); ++i) {
        response.displacements[i] = response.displacements[i] + moves[i];
    }
    for (std::size_t i = 0; i < structure.bars.size(); ++i) {
        const Bar& bar = structure.bars[i];
        response.found.forces[i] +=
            rigidity(bar) * dot(moves[at(bar.b)] - moves[at(bar.a)], bar.along);
    }
}

// Largest lack in a direction that is free to move.
double largestFree(const Stiffness& stiffness, const std::vector<Vec2>& lack) {
    double largest = 0;
    for (std::size_t i = 0; i < lack.size(); ++i) {
        const Vec2 free = freeIn(stiffness.holds[i], lack[i]);
        largest = std::max({largest, std::abs(free.x), std::abs(free.y)});
    }
    return largest;
}

// What the supports must exert, shared among those of one joint so that the sum of their squares is
// least: supports are rigid, and nothing else tells how several at one joint share.
void addReactions(const Structure& structure, const std::vector<Vec2>& lack,
                  EquilibriumForces& found) {
    std::vector<Block> gram(structure.joints.size()); // Σ d·dᵀ
    for (const Restraint& restraint : structure.restraints) {
        addOuter(gram[restraint.joint.at()], 1, restraint.along, restraint.along);
    }
    for (std::size_t i = 0; i < structure.restraints.size(); ++i) {
        const Restraint& restraint = structure.restraints[i];
        const Block& g = gram[restraint.joint.at()];
        const Vec2 needed = -lack[restraint.joint.at()];
        const double determinant = g.a * g.d - g.b * g.c;
        const double trace = g.a + g.d; // the number of restraints
        if (determinant <= kParallel * trace * trace) {
            found.reactions[i] = dot(needed, restraint.along) / trace;
            continue;
        }
        const Vec2 share = {(g.d * needed.x - g.b * needed.y) / determinant,
                            (g.a * needed.y - g.c * needed.x) / determinant};
        found.reactions[i] = dot(share, restraint.along);
    }
}

} // namespace

Stiffness factorStiffness(const Structure& structure, const JointPattern& pattern,
                          std::vector<Hold> holds) {
    assert(fits(pattern, structure.joints.size(), structure.bars));
    Stiffness result;
    result.holds = std::move(holds);
    RowFactoring(structure, pattern, result).run();
    return result;
}

void solveDisplacements(const JointPattern& pattern, const Stiffness& stiffness,
                        std::vector<Vec2>& right) {
    const std::size_t count = pattern.order.size();
    std::vector<Vec2> x(count);
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t joint = at(pattern.order[k]);
        x[k] = freeIn(stiffness.holds[joint], right[joint]);
    }
    for (std::size_t k = 0; k < count; ++k) {
        for (int p = pattern.columnStart[k]; p < pattern.columnStart[k + 1]; ++p) {
            Vec2& below = x[at(stiffness.lowerRows[at(p)])];
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

Response respond(const Structure& structure, const JointPattern& pattern,
                 const Stiffness& stiffness, const std::vector<Vec2>& loads) {
    Response response;
    EquilibriumForces& found = response.found;
    response.displacements.resize(structure.joints.size());
    found.reactions.resize(structure.restraints.size());
    found.forces = initialForces(structure, stiffness);
    std::vector<Vec2> lack = lackOfEquilibrium(structure, loads, found);
    for (int i = 0; i <= kRefinements; ++i) {
        std::vector<Vec2> moves = lack;
        solveDisplacements(pattern, stiffness, moves);
        addDisplacements(structure, moves, response);
        lack = lackOfEquilibrium(structure, loads, found);
        found.largest = largestOf(loads, found);
        if (largestFree(stiffness, lack) <= kCancelled * found.largest) {
            break;
        }
    }
    addReactions(structure, lack, found);
    found.largest = largestOf(loads, found);
    found.residual = residualOf(structure, loads, found);
    for (std::size_t i = 0; i < structure.joints.size(); ++i) {
        response.displacements[i] = response.displacements[i] + stiffness.holds[i].settled;
    }
    return response;
}

} // namespace gusset
