#include "classroom/exercise/variant_code.hpp"

#include <string_view>

namespace gusset {

std::string variantCode(const Exercise& exercise) {
    constexpr std::string_view kLetters = "ACDEFGHJKLMNPQRTUVWXY34679";
    constexpr std::uint64_t kCodes = 26 * 26 * 26 * 26 * 26;
    // It has no divisor in common with the number of codes, so that none comes twice.
    constexpr std::uint64_t kFactor = 4764359;
    static_assert(kLetters.size() == 26 && kFactor % 2 == 1 && kFactor % 13 != 0);
    if (exercise.variant == 0) {
        return {};
    }
    const auto number = static_cast<std::uint64_t>(exercise.variant);
    std::uint64_t left = (exercise.seed % kCodes * 7919 + number * kFactor) % kCodes;
    std::string code;
    for (int i = 0; i < 5; ++i) {
        code += kLetters[left % kLetters.size()];
        left /= kLetters.size();
    }
    return code;
}

} // namespace gusset
