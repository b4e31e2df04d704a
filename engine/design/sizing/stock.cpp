#include "design/sizing/stock.hpp"

#include "design/loading/actions.hpp"
#include "design/sizing/roles.hpp"
#include "model/catalogue/grades.hpp"
#include "model/catalogue/section_shapes.hpp"
#include "phrases/design/sizing.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace gusset {
namespace {

// mm: of the walls, or of a bar.
double thicknessOf(const Profile& profile) {
    double thickest = 0;
    for (const char* key : {"t", "s"}) {
        thickest = std::max(thickest, dimensionOf(profile.section, key).value_or(0));
    }
    if (profile.section.shape == "round") {
        thickest = dimensionOf(profile.section, "D").value_or(0);
    }
    return converted(thickest, profile.unit, LengthUnit::mm);
}

bool hasId(const std::vector<Material>& materials, const std::string& id) {
    return std::any_of(materials.begin(), materials.end(),
                       [&](const Material& it) { return it.id == id; });
}

} // namespace

Outcome<Stock> stockOf(std::string_view grade, const std::vector<Profile>& profiles,
                       const Units& units) {
    const SteelGrade* steel = findSteelGrade(grade);
    const TimberClass* timber = findTimberClass(grade);
    if (!steel && !timber) {
        return Issue{IssueCode::UnknownName, "",
                     statement(phrase::kNoSuchGrade, {{"grade", std::string(grade)}})};
    }
    Stock stock;
    for (const Profile& profile : profiles) {
        const bool isMadeOf = (profile.section.shape == "timber") == (timber != nullptr);
        const std::optional<Material> own = !isMadeOf ? std::nullopt
                                            : steel   ? steelOf(*steel, thicknessOf(profile), units)
                                                      : std::optional(timberOf(*timber, units));
        if (!own) {
            ++stock.leftOut;
            continue;
        }
        stock.sections.push_back(sectionOf(profile, units.section));
        stock.sections.back().material = own->id;
        if (!hasId(stock.materials, own->id)) {
            stock.materials.push_back(*own);
        }
    }
    return stock;
}

void putMaterials(Truss& truss, const std::vector<Material>& materials) {
    std::erase_if(truss.materials, [&](const Material& it) { return hasId(materials, it.id); });
    truss.materials.insert(truss.materials.end(), materials.begin(), materials.end());
}

void dropUnused(Truss& truss, const std::vector<Material>& materials) {
    std::erase_if(truss.materials, [&](const Material& it) {
        return hasId(materials, it.id) &&
               std::none_of(truss.sections.begin(), truss.sections.end(),
                            [&](const Section& section) { return section.material == it.id; });
    });
}

bool hasOwnWeight(const Truss& truss) {
    return std::any_of(truss.loads.begin(), truss.loads.end(), [](const Load& load) {
        return std::holds_alternative<SelfWeight>(load.what);
    });
}

bool addOwnWeight(Truss& truss, const std::string& caseId) {
    const std::vector<std::string> names = caseNames(truss);
    if (!caseId.empty() && std::find(names.begin(), names.end(), caseId) == names.end()) {
        return false;
    }
    if (!hasOwnWeight(truss)) {
        truss.loads.push_back({SelfWeight{}, std::string(caseIdOf(caseId)), {}});
    }
    return true;
}

std::vector<std::string> casesForOwnWeight(const Truss& truss) {
    std::vector<std::string> permanent;
    std::vector<std::string> all;
    bool anyKind = false;
    for (const CaseAction& each : actionsOf(truss)) {
        all.push_back(each.caseId);
        anyKind = anyKind || each.action;
        if (each.action == CaseKind::Permanent) {
            permanent.push_back(each.caseId);
        }
    }
    if (all.empty()) {
        return {""};
    }
    return anyKind ? permanent : all;
}

std::vector<SizingGroup> groupsByRole(const PhraseBook& book, const Truss& truss,
                                      const std::vector<Section>& sections) {
    std::map<MemberRole, SizingGroup> groups;
    const std::vector<MemberRole> roles = rolesOf(truss);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        SizingGroup& group = groups[roles[i]];
        group.name = sentenceIn(book, nameOf(roles[i]).english);
        group.members.push_back(MemberId{static_cast<int>(i)});
        group.profiles = sections;
    }
    std::vector<SizingGroup> all;
    for (auto& [role, group] : groups) {
        all.push_back(std::move(group));
    }
    return all;
}

double deflectionLimit(const Truss& truss, double x) {
    double span = 0;
    for (const Support& a : truss.supports) {
        for (const Support& b : truss.supports) {
            span = std::max(
                span, std::abs(truss.joints[a.joint.at()].at.x - truss.joints[b.joint.at()].at.x));
        }
    }
    return span * toMetre(truss.units.length) / x;
}

} // namespace gusset
