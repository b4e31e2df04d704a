#include "statics/pivot_search.hpp"

namespace gusset {

void CountLists::insert(int item, std::size_t count) {
    const auto at = static_cast<std::size_t>(item);
    if (count >= first_.size()) {
        first_.resize(count + 1, -1);
    }
    const int head = first_[count];
    count_[at] = static_cast<int>(count);
    next_[at] = head;
    previous_[at] = -1;
    if (head >= 0) {
        previous_[static_cast<std::size_t>(head)] = item;
    }
    first_[count] = item;
}

void CountLists::remove(int item) {
    const auto at = static_cast<std::size_t>(item);
    if (count_[at] < 0) {
        return;
    }
    const int before = previous_[at];
    const int after = next_[at];
    if (before >= 0) {
        next_[static_cast<std::size_t>(before)] = after;
    } else {
        first_[static_cast<std::size_t>(count_[at])] = after;
    }
    if (after >= 0) {
        previous_[static_cast<std::size_t>(after)] = before;
    }
    count_[at] = -1;
}

void CountLists::change(int item, std::size_t count) {
    if (count_[static_cast<std::size_t>(item)] < 0) {
        return;
    }
    remove(item);
    insert(item, count);
}

} // namespace gusset
