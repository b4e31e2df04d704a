#include "model/validate/findings.hpp"

namespace gusset {

std::string Place::text() const {
    const std::string whole = within ? within->text() + "." + std::string(name) : std::string(name);
    return index < 0 ? whole : placeOf(whole, static_cast<std::size_t>(index));
}

} // namespace gusset
