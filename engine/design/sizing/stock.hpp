#pragma once
// What a sizing chooses from: profiles of one grade, for groups of members by their role.

#include "core/phrase.hpp"
#include "design/sizing/sizing.hpp"
#include "model/profiles/profile_list.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace gusset {

struct Stock {
    std::vector<Material> materials; // of the sections, each once
    std::vector<Section> sections;   // in the truss's unit of sections
    std::size_t leftOut = 0;         // profiles that the grade is not made for
};
// `grade`: a grade of steel or a class of timber (model/catalogue/grades). A section has the
// strength that the grade has for its thickness, as a material of its own: "S355", "S355 over 40
// mm". Those that the grade is not made for, as they are thicker than any or of another material,
// are left out. Fails if there is no such grade.
[[nodiscard]] Outcome<Stock> stockOf(std::string_view grade, const std::vector<Profile>&,
                                     const Units&);
// In place of materials of the same ids, or as more.
void putMaterials(Truss&, const std::vector<Material>&);
// Without those of these materials that no section is made of.
void dropUnused(Truss&, const std::vector<Material>&);

// The own weight of the members as a load of this case, unless the truss has it. False: there is no
// such case; an empty name is the case of loads that name none.
[[nodiscard]] bool addOwnWeight(Truss&, const std::string& caseId);
[[nodiscard]] bool hasOwnWeight(const Truss&);
// The cases that it may be added to: the permanent ones; all of them if no case says what it stands
// for; one without a name if there are no cases.
[[nodiscard]] std::vector<std::string> casesForOwnWeight(const Truss&);

// Upper chord, lower chord, posts and diagonals, those that there are, called as the book calls
// them.
[[nodiscard]] std::vector<SizingGroup> groupsByRole(const PhraseBook&, const Truss&,
                                                    const std::vector<Section>&);
// m: L/x, where L is the distance on plan of the supports that are farthest apart.
[[nodiscard]] double deflectionLimit(const Truss&, double x);

} // namespace gusset
