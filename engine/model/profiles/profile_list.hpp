#pragma once
// Lists of profiles as tables (core/csv): those of the catalogue and people's own. The first row
// has headings: name, shape, unit, and the letters of dimensions (model/catalogue/section_shapes);
// cells of dimensions that a shape does not have are blank. unit is mm, cm, m, in or ft. Lines
// before it that begin with # say where the list comes from.

#include "core/outcome.hpp"
#include "model/truss/truss.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct Profile {
    Section section; // its id is the profile's name, its dimensions are in `unit`
    LengthUnit unit = LengthUnit::mm;
};

struct ProfileList {
    std::string source; // as the list says it, or empty
    std::vector<Profile> profiles;
    Issues notes; // rows and columns that are left out, with the reason
};

// An issue only if no row can be read as the headings.
[[nodiscard]] Outcome<ProfileList> readProfileList(std::string_view table);

// The same section with its dimensions in another unit.
[[nodiscard]] Section sectionOf(const Profile&, LengthUnit);
// kg per metre of length; density in kg/m³.
[[nodiscard]] double massOf(const Profile&, double density);

} // namespace gusset
