#pragma once
// What a sizing chooses from: profiles of one grade, for groups of members by their role.

#include "core/phrase.hpp"
#include "design/sizing/sizing.hpp"
#include "model/profiles/profile_list.hpp"

#include <string_view>

namespace gusset {

struct Stock {
    Material material;
    std::vector<Section> sections; // of it, in the truss's unit of sections
    std::size_t leftOut = 0;       // profiles too thick for the strength of the others
};
// `grade`: a grade of steel or a class of timber (model/catalogue/grades). All sections have the
// strength that the grade has for the thinnest; those for which it has less, or which it is not
// made for, are left out. Fails if there is no such grade.
[[nodiscard]] Outcome<Stock> stockOf(std::string_view grade, const std::vector<Profile>&,
                                     const Units&);
// In place of a material of the same id, or as one more.
void putMaterial(Truss&, const Material&);

// Upper chord, lower chord, posts and diagonals, those that there are, called as the book calls
// them.
[[nodiscard]] std::vector<SizingGroup> groupsByRole(const PhraseBook&, const Truss&,
                                                    const std::vector<Section>&);
// m: L/x, where L is the distance on plan of the supports that are farthest apart.
[[nodiscard]] double deflectionLimit(const Truss&, double x);

} // namespace gusset
