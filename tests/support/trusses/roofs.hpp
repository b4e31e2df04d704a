#pragma once
// Roofs of steel tubes whose members are sized.

#include "core/statement.hpp"
#include "design/loading/outline.hpp"
#include "design/sizing/stock.hpp"
#include "support/random.hpp"

#include <array>
#include <string>
#include <utility>
#include <vector>

namespace gusset {

inline Material steelOf(const Units&) {
    Material steel;
    steel.id = "S235";
    steel.E = 210e3; // MPa
    steel.strength = 235;
    steel.density = 7850;
    return steel;
}

// Circular hollow sections, outer diameter and wall in cm: sizes of EN 10210-2, table B.1, a few of
// them (from memory).
inline std::vector<Section> tubes() {
    std::vector<Section> list;
    const std::vector<std::pair<double, double>> sizes{
        {3.37, 0.26}, {4.24, 0.26}, {4.83, 0.32}, {6.03, 0.32}, {7.61, 0.32},
        {8.89, 0.4},  {11.43, 0.4}, {13.97, 0.5}, {16.83, 0.6}, {21.91, 0.8}};
    for (const auto& [diameter, wall] : sizes) {
        Section tube;
        tube.id = "tube " + std::to_string(list.size());
        tube.material = "S235";
        tube.shape = "chs";
        tube.dimensions = {{"D", diameter}, {"t", wall}};
        list.push_back(tube);
    }
    return list;
}

inline Truss roofOf(const Outline& outline) {
    Truss truss = trussOf(englishPhrases(), outline).value();
    truss.units.section = LengthUnit::cm;
    truss.units.stress = StressUnit::MPa;
    truss.materials = {steelOf(truss.units)};
    truss.checks.formula = ColumnFormula::En1993;
    truss.checks.curve = BucklingCurve::A;
    truss.checks.tensionLimit = truss.checks.compressionLimit = 0; // strength and buckling alone
    return truss;
}

inline Outline randomRoof(support::Random& random) {
    constexpr std::array kKinds{FormKind::HoweRoof,  FormKind::PrattRoof, FormKind::WRoof,
                                FormKind::MonoPitch, FormKind::Warren,    FormKind::Pratt};
    Outline outline;
    outline.form = {.kind = kKinds[std::size_t(random.integer(0, 5))],
                    .span = double(random.integer(6, 20)),
                    .rise = random.integer(10, 30) / 10.0,
                    .panels = random.integer(3, 8)};
    if (choiceOf(outline.form.kind).evenPanels) { // and at least 4
        outline.form.panels += outline.form.panels % 2;
    }
    outline.spacing = random.integer(3, 6);
    outline.loads = {{{"G", LoadSpread::AreaOnSlope, 0.4, 0.4}, "permanent", LoadedChord::Upper},
                     {{"S", LoadSpread::AreaOnPlan, random.integer(2, 12) / 10.0, 0.6},
                      "snow",
                      LoadedChord::Upper},
                     {{"W", LoadSpread::AreaNormal, -random.integer(1, 15) / 10.0, -0.4},
                      "wind",
                      LoadedChord::Upper}};
    outline.selfWeight = random.oneIn(2) ? "G" : "";
    outline.rule = CombinationWish{};
    return outline;
}

} // namespace gusset
