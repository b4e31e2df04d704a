#include "design/member_make.hpp"

#include "model/catalogue/section_properties.hpp"

#include <string_view>
#include <unordered_map>

namespace gusset {

namespace {

constexpr double kLeastOfSteel = 180e9; // Pa
constexpr double kMostOfSteel = 220e9;

std::optional<double> times(std::optional<double> value, double unit) {
    return value ? std::optional(*value * unit) : std::nullopt;
}

bool isSteel(const Truss& truss, const Section& section, const MemberMake& make) {
    if (section.shape == "timber") {
        return false;
    }
    return truss.units.stress == StressUnit::Plain ||
           (make.modulus && *make.modulus >= kLeastOfSteel && *make.modulus <= kMostOfSteel);
}

MemberMake makeOf(const Truss& truss, const Section& section, const Material* material) {
    const double metre = toMetre(truss.units.section);
    const double pascal = toPascal(truss.units.stress);
    const SectionProperties properties = propertiesOf(section);
    MemberMake make;
    make.area = times(properties.area, metre * metre);
    make.radius = times(properties.radius, metre);
    if (material) {
        make.modulus = times(material->E, pascal);
        make.strength = times(material->strength, pascal);
    }
    make.steel = isSteel(truss, section, make);
    return make;
}

} // namespace

std::vector<MemberMake> makesOf(const Truss& truss) {
    std::unordered_map<std::string_view, const Material*> materials;
    for (const Material& material : truss.materials) {
        materials.emplace(material.id, &material);
    }
    std::unordered_map<std::string_view, MemberMake> sections;
    for (const Section& section : truss.sections) {
        const auto material = materials.find(section.material);
        sections.emplace(
            section.id,
            makeOf(truss, section, material == materials.end() ? nullptr : material->second));
    }
    std::vector<MemberMake> makes(truss.members.size());
    for (std::size_t i = 0; i < makes.size(); ++i) {
        const auto section = sections.find(truss.members[i].section);
        if (section != sections.end()) {
            makes[i] = section->second;
        }
    }
    return makes;
}

} // namespace gusset
