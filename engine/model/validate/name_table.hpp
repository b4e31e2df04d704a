#pragma once
// The names in one list, of which no two may look the same.

#include "core/index_table.hpp"
#include "model/validate/name_look.hpp"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gusset {

// Does not own the names: they must outlive it.
class NameTable {
public:
    explicit NameTable(std::size_t expected = 0) : table_(expected) {
        names_.reserve(expected);
        looks_.reserve(expected);
    }

    // An earlier name that is the same or looks the same; nothing when there is none, and the name
    // is then added to the table. Precondition: UTF-8.
    std::optional<std::string_view> add(std::string_view name) {
        std::string look = lookOf(name);
        const int index = static_cast<int>(names_.size());
        const int before = table_.insert(hashOf(look), index, IsSame{looks_, look});
        if (before >= 0) {
            return names_[static_cast<std::size_t>(before)];
        }
        names_.push_back(name);
        looks_.push_back(std::move(look));
        return std::nullopt;
    }
    // Whether exactly this name is in the table.
    [[nodiscard]] bool contains(std::string_view name) const {
        const std::string look = lookOf(name);
        const int index = table_.find(hashOf(look), IsSame{looks_, look});
        return index >= 0 && names_[static_cast<std::size_t>(index)] == name;
    }

private:
    struct IsSame {
        const std::vector<std::string>& looks;
        std::string_view look;
        bool operator()(int i) const { return looks[static_cast<std::size_t>(i)] == look; }
    };

    static std::uint64_t hashOf(std::string_view look) {
        return std::hash<std::string_view>{}(look);
    }

    IndexTable table_;
    std::vector<std::string_view> names_;
    std::vector<std::string> looks_; // one per name
};

} // namespace gusset
