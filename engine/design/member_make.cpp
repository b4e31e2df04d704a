#include "design/member_make.hpp"

#include "design/flat_parts.hpp"
#include "model/catalogue/section_properties.hpp"
#include "model/catalogue/section_shapes.hpp"

#include <algorithm>
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

void setRadii(const Section& section, double metre, MemberMake& make) {
    const std::optional<SectionFigure> figure = figureOf(section);
    // An angle by itself turns to its weakest axis, whatever is said; a bar or tube has only one.
    if (!figure || section.shape == "angle") {
        return;
    }
    double in = figure->yy; // of a double angle, whose gap is in the plane of the truss
    double out = figure->zz;
    if (!section.inPlane.empty()) {
        const bool isStrong = section.inPlane == "strong";
        in = isStrong ? figure->strong : figure->weak;
        out = isStrong ? figure->weak : figure->strong;
    } else if (section.shape != "double-angle") {
        return;
    }
    // A radius that is typed is that of the weak axis.
    (in <= out ? in : out) = section.radius.value_or(std::min(in, out));
    make.inRadius = in * metre;
    make.outRadius = out * metre;
    if (section.shape == "double-angle") {
        make.pair = PairMake{figure->single * metre, times(section.packing, metre)};
    }
}

// How thick a section is where it has holes, section units: its wall, leg or flange; timber and a
// round bar all through.
std::optional<double> thicknessAtHoles(const Section& section) {
    if (section.shape == "timber") {
        return std::min(*dimensionOf(section, "B"), *dimensionOf(section, "H"));
    }
    return section.shape == "round" ? dimensionOf(section, "D") : dimensionOf(section, "t");
}

void setNet(const Section& section, double metre, MemberMake& make) {
    make.lag = section.lag.value_or(1);
    make.holed = section.holes.has_value();
    make.net = make.area;
    if (!make.holed) {
        return;
    }
    const std::optional<double> thickness =
        section.shape.empty() ? std::nullopt : thicknessAtHoles(section);
    if (!thickness || !make.area) {
        make.net = std::nullopt;
        return;
    }
    const double holes = section.holes->count * section.holes->diameter * *thickness;
    make.net = std::max(*make.area - holes * metre * metre, 0.0);
}

MemberMake makeOf(const Truss& truss, const Section& section, const Material* material) {
    const double metre = toMetre(truss.units.section);
    const double pascal = toPascal(truss.units.stress);
    const SectionProperties properties = propertiesOf(section);
    MemberMake make;
    make.area = times(properties.area, metre * metre);
    make.radius = times(properties.radius, metre);
    setRadii(section, metre, make);
    setNet(section, metre, make);
    if (truss.units.stress != StressUnit::Plain) {
        make.parts = flatPartsOf(section);
    }
    if (material) {
        make.ultimate = times(material->ultimate, pascal);
        if (section.shape == "timber" &&
            (material->tension || material->compression || material->E05)) {
            make.timber =
                TimberMake{times(material->tension, pascal), times(material->compression, pascal),
                           times(material->E05, pascal)};
        }
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
