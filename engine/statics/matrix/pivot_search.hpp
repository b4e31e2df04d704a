#pragma once
// The search for the next pivot of a sparse elimination: rows and columns are kept in lists by
// their number of entries, and the search looks at a few of the shortest.

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <limits>
#include <vector>

namespace gusset {

// Items in doubly linked lists, one for each count.
class CountLists {
public:
    explicit CountLists(std::size_t items) : links_(items), first_(8, -1) {}

    void insert(int item, int count);
    void remove(int item);
    // Does nothing for an item that was removed before.
    void change(int item, int count);

    [[nodiscard]] int count(int item) const { return links_[static_cast<std::size_t>(item)].count; }
    [[nodiscard]] int first(int count) const {
        return count < largestCount() ? first_[static_cast<std::size_t>(count)] : -1;
    }
    [[nodiscard]] int next(int item) const { return links_[static_cast<std::size_t>(item)].next; }
    [[nodiscard]] int largestCount() const { return static_cast<int>(first_.size()); }

private:
    struct Link {
        int count = -1; // −1: not in a list
        int next = -1;
        int previous = -1;
    };
    Link& at(int item) { return links_[static_cast<std::size_t>(item)]; }

    std::vector<Link> links_;
    std::vector<int> first_; // of each list
};

struct Pivot {
    int row = -1;
    int column = -1;
    std::int64_t cost = std::numeric_limits<std::int64_t>::max(); // upper bound on the fill
};

struct PivotSearch {
    PivotSearch(std::size_t rowCount, std::size_t columnCount)
        : rows(rowCount), columns(columnCount) {}

    // The two visitors call offer(index, acceptable) for each entry of a column or a row. No pivot
    // (row −1) when no rows are left: each remaining row has at least one acceptable entry.
    template <class VisitColumn, class VisitRow>
    [[nodiscard]] Pivot next(VisitColumn visitColumn, VisitRow visitRow) const {
        Pivot best;
        const int largest = std::max(rows.largestCount(), columns.largestCount());
        for (int count = 1; count < largest; ++count) {
            const std::int64_t others = count - 1;
            int looks = kLooks;
            for (int j = columns.first(count); j >= 0 && looks-- > 0; j = columns.next(j)) {
                visitColumn(j, [&](int i, bool acceptable) {
                    consider(best, {i, j, others * (rows.count(i) - 1)}, acceptable);
                });
            }
            if (best.cost <= others * others) {
                return best;
            }
            looks = kLooks;
            for (int i = rows.first(count); i >= 0 && looks-- > 0; i = rows.next(i)) {
                visitRow(i, [&](int j, bool acceptable) {
                    consider(best, {i, j, others * (columns.count(j) - 1)}, acceptable);
                });
            }
            if (best.cost <= others * (others + 1)) {
                return best;
            }
        }
        return best;
    }

    CountLists rows;
    CountLists columns;

private:
    static constexpr int kLooks =
        4; // lines inspected for each count: more cost time and save little fill

    static void consider(Pivot& best, Pivot candidate, bool acceptable) {
        if (acceptable && candidate.cost < best.cost) {
            best = candidate;
        }
    }
};

} // namespace gusset
