#include "model/profiles/catalogue.hpp"

#include "phrases/model/profiles.hpp"

#include <algorithm>
#include <array>
#include <cassert>
#include <cctype>

namespace gusset {

[[nodiscard]] std::span<const unsigned char> profilesIpe();
[[nodiscard]] std::span<const unsigned char> profilesHea();
[[nodiscard]] std::span<const unsigned char> profilesHeb();
[[nodiscard]] std::span<const unsigned char> profilesUpe();
[[nodiscard]] std::span<const unsigned char> profilesUpn();
[[nodiscard]] std::span<const unsigned char> profilesAnglesEqual();
[[nodiscard]] std::span<const unsigned char> profilesAnglesUnequal();
[[nodiscard]] std::span<const unsigned char> profilesDoubleAngles();
[[nodiscard]] std::span<const unsigned char> profilesChs();
[[nodiscard]] std::span<const unsigned char> profilesShsHot();
[[nodiscard]] std::span<const unsigned char> profilesRhsHot();
[[nodiscard]] std::span<const unsigned char> profilesShsCold();
[[nodiscard]] std::span<const unsigned char> profilesRhsCold();
[[nodiscard]] std::span<const unsigned char> profilesRoundBars();
[[nodiscard]] std::span<const unsigned char> profilesFlatBars();
[[nodiscard]] std::span<const unsigned char> profilesTimber();
[[nodiscard]] std::span<const unsigned char> profilesW();
[[nodiscard]] std::span<const unsigned char> profilesHss();
[[nodiscard]] std::span<const unsigned char> profilesHssRound();
[[nodiscard]] std::span<const unsigned char> profilesPipe();
[[nodiscard]] std::span<const unsigned char> profilesL();
[[nodiscard]] std::span<const unsigned char> profilesDoubleL();
[[nodiscard]] std::span<const unsigned char> profilesLumber();

namespace {

constexpr std::array<ProfileKind, 23> kKinds{{
    {"ipe", phrase::kKindIPE, profilesIpe},
    {"hea", phrase::kKindHEA, profilesHea},
    {"heb", phrase::kKindHEB, profilesHeb},
    {"upe", phrase::kKindUPE, profilesUpe},
    {"upn", phrase::kKindUPN, profilesUpn},
    {"angles-equal", phrase::kKindAnglesEqual, profilesAnglesEqual},
    {"angles-unequal", phrase::kKindAnglesUnequal, profilesAnglesUnequal},
    {"double-angles", phrase::kKindDoubleAngles, profilesDoubleAngles},
    {"chs", phrase::kKindTubes, profilesChs},
    {"shs-hot", phrase::kKindSquareHot, profilesShsHot},
    {"rhs-hot", phrase::kKindRectangularHot, profilesRhsHot},
    {"shs-cold", phrase::kKindSquareCold, profilesShsCold},
    {"rhs-cold", phrase::kKindRectangularCold, profilesRhsCold},
    {"round-bars", phrase::kKindRoundBars, profilesRoundBars},
    {"flat-bars", phrase::kKindFlatBars, profilesFlatBars},
    {"timber", phrase::kKindTimber, profilesTimber},
    {"w", phrase::kKindWide, profilesW},
    {"hss", phrase::kKindHss, profilesHss},
    {"hss-round", phrase::kKindHssRound, profilesHssRound},
    {"pipe", phrase::kKindPipes, profilesPipe},
    {"l", phrase::kKindElls, profilesL},
    {"double-l", phrase::kKindDoubleElls, profilesDoubleL},
    {"lumber", phrase::kKindLumber, profilesLumber},
}};

ProfileList listOf(const ProfileKind& kind) {
    const std::span<const unsigned char> bytes = kind.table();
    Outcome<ProfileList> list =
        readProfileList({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
    assert(list.ok());
    return std::move(list).value();
}

// Without spaces, in small letters, × and * as x.
std::string likenessOf(std::string_view name) {
    constexpr std::string_view kTimes = "\u00D7";
    std::string likeness;
    for (std::size_t i = 0; i < name.size(); ++i) {
        if (name.substr(i).starts_with(kTimes)) {
            likeness += 'x';
            i += kTimes.size() - 1;
        } else if (name[i] == '*') {
            likeness += 'x';
        } else if (name[i] != ' ') {
            likeness += static_cast<char>(std::tolower(static_cast<unsigned char>(name[i])));
        }
    }
    return likeness;
}

} // namespace

std::span<const ProfileKind> profileKinds() { return kKinds; }

const ProfileKind* findProfileKind(std::string_view key) {
    const auto found = std::find_if(kKinds.begin(), kKinds.end(),
                                    [&](const ProfileKind& kind) { return kind.key == key; });
    return found == kKinds.end() ? nullptr : &*found;
}

double nominalMassOf(const Profile& profile) {
    constexpr double kSteel = 7850; // kg/m³
    constexpr double kTimber = 420;
    return massOf(profile, profile.section.shape == "timber" ? kTimber : kSteel);
}

ProfileList profilesOf(const ProfileKind& kind, const MassRange& range) {
    ProfileList list = listOf(kind);
    std::erase_if(list.profiles, [&](const Profile& profile) {
        const double mass = nominalMassOf(profile);
        return mass < range.least || mass > range.most;
    });
    return list;
}

std::optional<Profile> findProfile(std::string_view name) {
    const std::string likeness = likenessOf(name);
    for (const ProfileKind& kind : kKinds) {
        ProfileList list = listOf(kind);
        for (Profile& profile : list.profiles) {
            if (likenessOf(profile.section.id) == likeness) {
                return std::move(profile);
            }
        }
    }
    return std::nullopt;
}

} // namespace gusset
