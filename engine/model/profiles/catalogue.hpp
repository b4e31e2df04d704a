#pragma once
// The profiles to choose from. Each kind is a table in model/profiles/tables, whose first line says
// by which standard, and from which data its dimensions are; properties follow from the dimensions
// (model/catalogue/section_properties). A chosen profile becomes an ordinary section of the model.

#include "core/phrase.hpp"
#include "model/profiles/profile_list.hpp"

#include <limits>
#include <optional>
#include <span>
#include <string_view>

namespace gusset {

struct ProfileKind {
    std::string_view key; // "ipe", for commands and links
    Phrase<> says;        // "IPE sections"
    std::span<const unsigned char> (*table)();
};

[[nodiscard]] std::span<const ProfileKind> profileKinds();
[[nodiscard]] const ProfileKind* findProfileKind(std::string_view key); // null: no such kind

// kg/m, as if of steel: 7850 kg/m³ (EN 1991-1-1:2002, table A.4); timber as if of 420 kg/m³ (EN
// 338, C24).
struct MassRange {
    double least = 0;
    double most = std::numeric_limits<double>::infinity();
};
[[nodiscard]] double nominalMassOf(const Profile&);
// Of one kind, in the table's order.
[[nodiscard]] ProfileList profilesOf(const ProfileKind&, const MassRange& = {});
// By its name, whatever its case, its spaces and its sign of multiplication: "rhs 100x50x4".
[[nodiscard]] std::optional<Profile> findProfile(std::string_view name);

} // namespace gusset
