#pragma once

#include <cstdint>
#include <span>
#include <string>

namespace gusset {

[[nodiscard]] std::string base64(std::span<const std::uint8_t> bytes); // RFC 4648, section 4

} // namespace gusset
