#pragma once
// The names of one list, each of which may be there once.

#include "core/index_table.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string_view>
#include <vector>

namespace gusset {

// Does not hold the names: they must outlive it.
class NameTable {
public:
    explicit NameTable(std::size_t expected = 0) : table_(expected) { names_.reserve(expected); }

    bool add(std::string_view name) { // false when it is there already
        const int index = static_cast<int>(names_.size());
        if (table_.insert(hashOf(name), index, IsSame{names_, name}) >= 0) {
            return false;
        }
        names_.push_back(name);
        return true;
    }
    [[nodiscard]] bool contains(std::string_view name) const {
        return table_.find(hashOf(name), IsSame{names_, name}) >= 0;
    }

private:
    struct IsSame {
        const std::vector<std::string_view>& names;
        std::string_view name;
        bool operator()(int i) const { return names[static_cast<std::size_t>(i)] == name; }
    };

    static std::uint64_t hashOf(std::string_view name) {
        return std::hash<std::string_view>{}(name);
    }

    IndexTable table_;
    std::vector<std::string_view> names_;
};

} // namespace gusset
