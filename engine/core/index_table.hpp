#pragma once
// A hash table of positions in a list that the caller owns: one block of memory with linear probing
// (D. E. Knuth, The Art of Computer Programming 3, 2nd ed., 1998, 6.4). The standard containers
// allocate once per item, which costs several times as much as the search.

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace gusset {

class IndexTable {
public:
    explicit IndexTable(std::size_t expected = 0) { resizeFor(expected); }

    // The index of the item with this hash that `same` accepts, or −1.
    template <class Same>
    [[nodiscard]] int find(std::uint64_t hash, Same same) const {
        return slots_[placeOf(hash, same)].index;
    }

    // Adds an index ≥ 0 and returns −1, or returns the index that is already there.
    template <class Same>
    int insert(std::uint64_t hash, int index, Same same) {
        Slot& slot = slots_[placeOf(hash, same)];
        if (slot.index >= 0) {
            return slot.index;
        }
        slot = {hash, index};
        if (2 * ++used_ > slots_.size()) {
            resizeFor(2 * used_);
        }
        return -1;
    }

private:
    struct Slot {
        std::uint64_t hash = 0;
        int index = -1;
    };

    template <class Same>
    [[nodiscard]] std::size_t placeOf(std::uint64_t hash, Same same) const {
        const std::size_t mask = slots_.size() - 1;
        auto at = static_cast<std::size_t>(hash ^ (hash >> 32)) & mask;
        while (slots_[at].index >= 0 && !(slots_[at].hash == hash && same(slots_[at].index))) {
            at = (at + 1) & mask;
        }
        return at;
    }

    void resizeFor(std::size_t expected) {
        std::size_t size = 16;
        while (size < 2 * expected + 2) {
            size *= 2;
        }
        const std::vector<Slot> old = std::exchange(slots_, std::vector<Slot>(size));
        for (const Slot& slot : old) {
            if (slot.index >= 0) {
                slots_[placeOf(slot.hash, [](int) { return false; })] = slot;
            }
        }
    }

    std::vector<Slot> slots_; // the size is a power of two; at most half are used
    std::size_t used_ = 0;
};

} // namespace gusset
