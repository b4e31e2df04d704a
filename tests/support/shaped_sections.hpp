#pragma once
// Sections of a shape by their dimensions, in mm.

#include "model/catalogue/section_properties.hpp"

#include <string>
#include <utility>
#include <vector>

namespace gusset::support {

using Sizes = std::vector<std::pair<std::string, double>>;

inline Section shaped(const std::string& shape, const Sizes& dimensions) {
    Section section;
    section.shape = shape;
    section.dimensions = dimensions;
    return section;
}

inline SectionFigure figure(const std::string& shape, const Sizes& dimensions) {
    return figureOf(shaped(shape, dimensions)).value();
}

inline Sizes beam(double h, double b, double s, double t, double r) {
    return {{"H", h}, {"B", b}, {"s", s}, {"t", t}, {"R", r}};
}
inline Sizes box(double h, double b, double t, double outer, double inner) {
    return {{"H", h}, {"B", b}, {"t", t}, {"R", outer}, {"Ri", inner}};
}
inline Sizes leg(double h, double b, double t, double r) {
    return {{"H", h}, {"B", b}, {"t", t}, {"R", r}};
}

} // namespace gusset::support
