#include "design/sizing/sizing.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace gusset {
namespace {

// The mass of each group with each profile of its list that passes under the given forces, by id.
using Passing = std::map<std::string, double>;

Passing passingOf(const Sizing& sizing, const Envelope& envelope,
                  const std::vector<LoadChoice>& choices, const SizingGroup& group) {
    Passing passing;
    for (const Section& profile : group.profiles) {
        Truss truss = sizing.truss;
        const auto there = std::find_if(truss.sections.begin(), truss.sections.end(),
                                        [&](const Section& it) { return it.id == profile.id; });
        if (there == truss.sections.end()) {
            truss.sections.push_back(profile);
        }
        for (const MemberId member : group.members) {
            truss.members[member.at()].section = profile.id;
        }
        const MemberChecks checks = checkMembers(truss, envelope, choices);
        const std::vector<double> masses = massesOf(truss);
        double mass = 0;
        bool passes = true;
        for (const MemberId member : group.members) {
            const MemberCheck& check = checks.members[member.at()];
            passes = passes && isChecked(check) && !isOver(check) && !check.tooSlender;
            mass += masses[member.at()];
        }
        if (passes) {
            passing.emplace(profile.id, mass);
        }
    }
    return passing;
}

// The least mass with which one profile serves all groups of a set (a bit each); infinity if none
// does.
std::vector<double> massOfSets(const std::vector<Passing>& groups) {
    std::vector<double> least(std::size_t{1} << groups.size(), INFINITY);
    for (std::size_t set = 1; set < least.size(); ++set) {
        std::map<std::string, std::pair<double, std::size_t>> shared; // mass, groups that take it
        std::size_t wanted = 0;
        for (std::size_t g = 0; g < groups.size(); ++g) {
            if ((set >> g & 1) == 0) {
                continue;
            }
            ++wanted;
            for (const auto& [id, mass] : groups[g]) {
                shared[id].first += mass;
                ++shared[id].second;
            }
        }
        for (const auto& [id, of] : shared) {
            if (of.second == wanted) {
                least[set] = std::min(least[set], of.first);
            }
        }
    }
    return least;
}

} // namespace

std::vector<std::optional<double>> massByProfiles(const Sizing& sizing, const SizingWish& wish) {
    const std::size_t count = wish.groups.size();
    const std::vector<LoadChoice> choices = strengthChoices(sizing.truss);
    const Outcome<Envelope> envelope = envelopeOf(sizing.truss, choices);
    if (!sizing.isEnough || count == 0 || count > kMostSharing || !envelope) {
        return {};
    }
    std::vector<Passing> groups;
    for (const SizingGroup& group : wish.groups) {
        groups.push_back(passingOf(sizing, envelope.value(), choices, group));
    }
    const std::vector<double> one = massOfSets(groups);
    std::vector<double> least = one; // with k profiles, of each set
    std::vector<std::optional<double>> masses;
    for (std::size_t k = 1; k <= count; ++k) {
        const double mass = least.back();
        masses.push_back(std::isfinite(mass) ? std::optional(mass) : std::nullopt);
        std::vector<double> next = least;
        for (std::size_t set = 1; set < least.size(); ++set) {
            for (std::size_t part = (set - 1) & set; part > 0; part = (part - 1) & set) {
                next[set] = std::min(next[set], least[part] + one[set ^ part]);
            }
        }
        least = std::move(next);
    }
    return masses;
}

} // namespace gusset
