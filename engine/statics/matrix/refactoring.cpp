#include "statics/matrix/refactoring.hpp"

#include "core/index.hpp"
#include "core/tolerance.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <queue>

namespace gusset {

namespace {

// Where the factors can have entries, worked out from the pattern alone.
class Planning {
public:
    Planning(const SparseMatrix<double>& matrix, Factors<double>& factors)
        : matrix_(matrix), factors_(factors), stepOf_(matrix.columns, -1),
          mark_(matrix.columns, -1) {
        for (std::size_t k = 0; k < factors.steps.size(); ++k) {
            stepOf_[at(factors.steps[k].column)] = toInt(k);
        }
    }

    Refactoring run() {
        listEntries();
        factors_.beside.clear();
        std::vector<int> uses(factors_.steps.size(), 0); // of each pivot row
        for (int k = 0; k < toInt(factors_.steps.size()); ++k) {
            listRow(k);
            for (int m = plan_.multiplesOf[at(k)].begin; m < plan_.multiplesOf[at(k)].end; ++m) {
                ++uses[at(plan_.multiples[at(m)].step)];
            }
        }
        listBelow(uses);
        return std::move(plan_);
    }

private:
    void listEntries() {
        std::vector<int> stepOfRow(matrix_.rows, -1);
        for (std::size_t k = 0; k < factors_.steps.size(); ++k) {
            stepOfRow[at(factors_.steps[k].row)] = toInt(k);
        }
        plan_.entriesOf.resize(factors_.steps.size());
        for (std::size_t e = 0; e < matrix_.entries.size(); ++e) {
            if (matrix_.entries[e].value == 0) {
                plan_.absent.push_back(toInt(e));
            } else {
                ++plan_.entriesOf[at(stepOfRow[at(matrix_.entries[e].row)])].end;
            }
        }
        int start = 0;
        for (Range& range : plan_.entriesOf) {
            const int count = range.end;
            range = {start, start};
            start += count;
        }
        plan_.entries.resize(at(start));
        for (std::size_t e = 0; e < matrix_.entries.size(); ++e) {
            const MatrixEntry<double>& entry = matrix_.entries[e];
            if (entry.value != 0) {
                Range& range = plan_.entriesOf[at(stepOfRow[at(entry.row)])];
                plan_.entries[at(range.end++)] = {toInt(e), entry.column};
            }
        }
    }

    // An entry of row k in this column: it belongs to an earlier pivot and is eliminated, or it
    // stays.
    void meet(int k, int column) {
        if (mark_[at(column)] == k) {
            return;
        }
        mark_[at(column)] = k;
        const int step = stepOf_[at(column)];
        if (step >= 0 && step < k) {
            due_.push(step);
        } else if (step != k) {
            factors_.beside.push_back({column, 0});
        }
    }

    void listRow(int k) {
        PivotStep<double>& step = factors_.steps[at(k)];
        step.beside.begin = toInt(factors_.beside.size());
        plan_.multiplesOf.push_back({toInt(plan_.multiples.size()), 0});
        for (int e = plan_.entriesOf[at(k)].begin; e < plan_.entriesOf[at(k)].end; ++e) {
            meet(k, plan_.entries[at(e)].column);
        }
        while (!due_.empty()) {
            const int earlier = due_.top();
            due_.pop();
            plan_.multiples.push_back({earlier, 0});
            const Range beside = factors_.steps[at(earlier)].beside;
            for (int e = beside.begin; e < beside.end; ++e) {
                meet(k, factors_.beside[at(e)].index);
            }
        }
        step.beside.end = toInt(factors_.beside.size());
        plan_.multiplesOf.back().end = toInt(plan_.multiples.size());
    }

    void listBelow(const std::vector<int>& uses) {
        int start = 0;
        for (std::size_t k = 0; k < uses.size(); ++k) {
            factors_.steps[k].below = {start, start};
            start += uses[k];
        }
        factors_.below.assign(at(start), {});
        for (std::size_t k = 0; k < uses.size(); ++k) {
            for (int m = plan_.multiplesOf[k].begin; m < plan_.multiplesOf[k].end; ++m) {
                Refactoring::Multiple& multiple = plan_.multiples[at(m)];
                multiple.below = factors_.steps[at(multiple.step)].below.end++;
                factors_.below[at(multiple.below)].index = factors_.steps[k].row;
            }
        }
    }

    const SparseMatrix<double>& matrix_;
    Factors<double>& factors_;
    Refactoring plan_;
    std::vector<int> stepOf_; // of each column, −1: free
    std::vector<int> mark_;   // the last row with an entry in the column
    std::priority_queue<int, std::vector<int>, std::greater<>> due_;
};

// Takes row k's values from `work`, which is zero again afterwards. Whether its pivot is
// acceptable.
bool takeRow(PivotStep<double>& step, std::vector<SparseEntry<double>>& beside,
             std::vector<double>& work) {
    double largest = 0;
    for (int e = step.beside.begin; e < step.beside.end; ++e) {
        SparseEntry<double>& entry = beside[at(e)];
        entry.value = work[at(entry.index)];
        work[at(entry.index)] = 0;
        largest = std::max(largest, std::abs(entry.value));
    }
    step.pivot = work[at(step.column)];
    work[at(step.column)] = 0;
    const double size = std::abs(step.pivot);
    return size > kKeptPivot && size >= kPivotShare * largest;
}

} // namespace

Refactoring planRefactoring(const SparseMatrix<double>& matrix, Factors<double>& factors) {
    assert(factors.steps.size() == factors.rows);
    return Planning(matrix, factors).run();
}

bool refactor(const Refactoring& plan, const SparseMatrix<double>& matrix,
              Factors<double>& factors) {
    const auto isThere = [&](int e) { return matrix.entries[at(e)].value != 0; };
    if (std::any_of(plan.absent.begin(), plan.absent.end(), isThere)) {
        return false;
    }
    std::vector<double> work(matrix.columns, 0);
    for (std::size_t k = 0; k < factors.steps.size(); ++k) {
        for (int e = plan.entriesOf[k].begin; e < plan.entriesOf[k].end; ++e) {
            const Refactoring::Entry& entry = plan.entries[at(e)];
            work[at(entry.column)] = matrix.entries[at(entry.at)].value;
        }
        for (int m = plan.multiplesOf[k].begin; m < plan.multiplesOf[k].end; ++m) {
            const Refactoring::Multiple& multiple = plan.multiples[at(m)];
            const PivotStep<double>& earlier = factors.steps[at(multiple.step)];
            const double factor = work[at(earlier.column)] / earlier.pivot;
            work[at(earlier.column)] = 0;
            factors.below[at(multiple.below)].value = factor;
            if (factor != 0) {
                spread(factors.beside, earlier.beside, factor, work);
            }
        }
        if (!takeRow(factors.steps[k], factors.beside, work)) {
            return false;
        }
    }
    return true;
}

} // namespace gusset
