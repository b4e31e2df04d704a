#include "statics/matrix/pivot_search.hpp"

namespace gusset {

void CountLists::insert(int item, int count) {
    const auto list = static_cast<std::size_t>(count);
    if (list >= first_.size()) {
        first_.resize(list + 1, -1);
    }
    const int head = first_[list];
    at(item) = {count, head, -1};
    if (head >= 0) {
        at(head).previous = item;
    }
    first_[list] = item;
}

void CountLists::remove(int item) {
    const Link link = at(item);
    if (link.count < 0) {
        return;
    }
    if (link.previous >= 0) {
        at(link.previous).next = link.next;
    } else {
        first_[static_cast<std::size_t>(link.count)] = link.next;
    }
    if (link.next >= 0) {
        at(link.next).previous = link.previous;
    }
    at(item).count = -1;
}

void CountLists::change(int item, int count) {
    const int old = at(item).count;
    if (old < 0 || old == count) {
        return;
    }
    remove(item);
    insert(item, count);
}

} // namespace gusset
