#pragma once
// Displacements as rows, tables and sentences, in the model's displacement unit; the single source
// for the notebook, the page and the command line.

#include "core/number.hpp"
#include "report/results/table.hpp"
#include "report/text/writer.hpp"
#include "statics/solve/solution.hpp"

#include <optional>
#include <string>
#include <vector>

namespace gusset {

struct MovementRow {
    JointId joint;
    std::string name; // the joint's label
    double size = 0;  // displacement units
    double dx = 0;
    double dy = 0;
    std::string x; // with sign
    std::string y;
    std::string total;
};
struct StretchRow {
    MemberId member;
    std::string name;
    double change = 0;                   // of length, elongation positive; displacement units
    std::optional<double> stressValue{}; // stress units, tension positive; none: no known area
    std::string stretch;
    std::string stress;
};
[[nodiscard]] std::vector<MovementRow> movementRows(const Truss&, const Solution&);
[[nodiscard]] std::vector<StretchRow> stretchRows(const Truss&, const Solution&);
// Two tables; none unless the solution is displaced.
[[nodiscard]] std::vector<TextTable> movementTables(const Writer&, const Solution&);
// The joint with the largest displacement; none if nothing moves.
[[nodiscard]] JointId furthestJoint(const Solution&);
// The largest displacement and the strain energy, or why there are no displacements. One sentence
// per line.
[[nodiscard]] std::vector<std::string> movementLines(const Writer&, const Solution&);
// The displacement of a joint, for the drawing: "3.42 mm".
[[nodiscard]] std::string movementOf(const Truss&, const Solution&, JointId);
[[nodiscard]] std::string timesText(const Truss&, double factor); // "× 200"

} // namespace gusset
