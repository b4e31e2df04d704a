#pragma once
// What a sheet says of a solved truss: forces, displacements, checks. Private to report/sheet.

#include "report/results/table.hpp"
#include "report/sheet/sheet_choices.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/solve/solution.hpp"

#include <string>
#include <vector>

namespace gusset {

// The loads that forces are tabled under: the combinations, or the cases, or all loads at once
// where there is nothing to choose from; before them those that are drawn, if they are others.
struct SheetLoads {
    LoadChoice shown;
    Solution solution; // under these
    std::vector<LoadChoice> enveloped;
    std::vector<LoadChoice> tabled;
};
[[nodiscard]] SheetLoads sheetLoads(const Truss&, const LoadChoice& shown);

struct SheetForces {
    std::vector<std::string> says; // what they rest on, and under which loads there are none
    std::vector<TextTable> tables; // members, reactions, envelope
};
// As many loads to a table as the paper has room for.
[[nodiscard]] SheetForces sheetForces(const Writer&, const SheetLoads&, bool across);
[[nodiscard]] std::vector<TextTable> movingForceTables(const Writer&); // one for each moving load
[[nodiscard]] TextTable displacementsTable(const Writer&, const SheetLoads&);
struct SheetChecks {
    std::vector<std::string> says;
    TextTable table; // without rows if no member can be checked
};
[[nodiscard]] SheetChecks sheetChecks(const Writer&, const SheetLoads&);

[[nodiscard]] std::string forcesHtml(const Writer&, const SheetLoads&, bool across);
[[nodiscard]] std::string displacementsHtml(const Writer&, const SheetLoads&);
// With the sections and their mass, and the caution.
[[nodiscard]] std::string checksPartHtml(const Writer&, const SheetLoads&, bool across);

} // namespace gusset
