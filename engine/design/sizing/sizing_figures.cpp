#include "design/sizing/sizing.hpp"
#include "statics/solve/solution.hpp"

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace gusset {
namespace {

double densityOf(const Truss& truss, const Section& section) {
    for (const Material& material : truss.materials) {
        if (material.id == section.material) {
            return material.density.value_or(0);
        }
    }
    return 0;
}

std::vector<LoadChoice> combinationsFor(const Truss& truss, bool service) {
    std::vector<LoadChoice> choices;
    for (const Combination& one : truss.combinations) {
        if ((one.limit == "service") == service) {
            choices.emplace_back(OneCombination{one.id});
        }
    }
    return choices;
}

} // namespace

bool passes(const MemberCheck& check) {
    return isChecked(check) && !isOver(check) && !check.tooSlender && !isLocallySlender(check) &&
           check.packing != Packing::Far;
}

std::vector<LoadChoice> strengthChoices(const Truss& truss) {
    std::vector<LoadChoice> choices = combinationsFor(truss, false);
    return choices.empty() ? serviceChoices(truss) : choices;
}

std::vector<LoadChoice> serviceChoices(const Truss& truss) {
    std::vector<LoadChoice> choices = combinationsFor(truss, true);
    if (choices.empty()) {
        choices = caseChoices(truss);
        choices.emplace_back(EveryLoad{});
    }
    return choices;
}

std::optional<double> deflectionOf(const Truss& truss, const std::vector<LoadChoice>& choices) {
    double largest = 0;
    for (const LoadChoice& choice : choices) {
        const Solution solution = solve(truss, choice);
        if (!solution.displaced) {
            return std::nullopt;
        }
        for (const Vec2 moved : solution.displacements) {
            largest = std::max(largest, std::abs(moved.y));
        }
    }
    return largest;
}

std::vector<double> massesOf(const Truss& truss) {
    const std::vector<MemberMake> makes = makesOf(truss);
    std::unordered_map<std::string_view, double> densities;
    for (const Section& section : truss.sections) {
        densities.emplace(section.id, densityOf(truss, section));
    }
    std::vector<double> masses;
    for (std::size_t i = 0; i < truss.members.size(); ++i) {
        const Vec2 way = memberVector(truss, MemberId{static_cast<int>(i)});
        const auto density = densities.find(truss.members[i].section);
        masses.push_back(std::hypot(way.x, way.y) * toMetre(truss.units.length) *
                         makes[i].area.value_or(0) *
                         (density == densities.end() ? 0 : density->second));
    }
    return masses;
}

} // namespace gusset
