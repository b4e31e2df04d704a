#pragma once
// What a drawing holds beside straight lines, counted by what the file calls it. Private to
// exchange/drawings.

#include "core/outcome.hpp"

#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace gusset {

enum class WhyPassed { Curve, Text, Space, Paper, InBlock, Hidden, Copy, Other };

class PassedOver {
public:
    void count(std::string_view kind, WhyPassed why) { ++counts_[{std::string(kind), why}]; }
    [[nodiscard]] Issues notes() const;

private:
    std::map<std::pair<std::string, WhyPassed>, std::size_t> counts_;
};

} // namespace gusset
