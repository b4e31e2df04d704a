#pragma once
// Many short lists in one block of memory, so that thousands of rows and columns need a few
// allocations instead of one each. A list that outgrows its room moves to the end of the block.

#include <cstddef>
#include <utility>
#include <vector>

namespace gusset {

template <class Item>
class LinePool {
public:
    // Empty lists with room for this many items each.
    explicit LinePool(const std::vector<int>& room) : lines_(room.size()) {
        int start = 0;
        for (std::size_t i = 0; i < room.size(); ++i) {
            lines_[i] = {start, 0, room[i]};
            start += room[i];
        }
        items_.resize(static_cast<std::size_t>(start));
    }

    [[nodiscard]] int count() const { return static_cast<int>(lines_.size()); }
    [[nodiscard]] int size(int line) const { return lineAt(line).size; }
    // Valid until the next push.
    [[nodiscard]] Item* begin(int line) { return items_.data() + lineAt(line).start; }
    [[nodiscard]] Item* end(int line) { return begin(line) + size(line); }

    void push(int line, Item item) {
        Line& it = lines_[static_cast<std::size_t>(line)];
        if (it.size == it.room) {
            moveToEnd(it);
        }
        items_[static_cast<std::size_t>(it.start + it.size++)] = std::move(item);
    }
    void pop(int line) { --lines_[static_cast<std::size_t>(line)].size; }
    void clear(int line) { lines_[static_cast<std::size_t>(line)].size = 0; }

private:
    struct Line {
        int start = 0;
        int size = 0;
        int room = 0;
    };

    [[nodiscard]] const Line& lineAt(int line) const {
        return lines_[static_cast<std::size_t>(line)];
    }

    void moveToEnd(Line& line) {
        const std::size_t start = items_.size();
        line.room = 2 * line.room + 2;
        items_.resize(start + static_cast<std::size_t>(line.room));
        for (int i = 0; i < line.size; ++i) {
            items_[start + static_cast<std::size_t>(i)] =
                std::move(items_[static_cast<std::size_t>(line.start + i)]);
        }
        line.start = static_cast<int>(start);
    }

    std::vector<Line> lines_;
    std::vector<Item> items_;
};

// A view of the items of a list.
template <class Item>
struct LineView {
    Item* first;
    Item* last;
    [[nodiscard]] Item* begin() const { return first; }
    [[nodiscard]] Item* end() const { return last; }
};

} // namespace gusset
