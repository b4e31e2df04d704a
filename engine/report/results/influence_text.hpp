#pragma once
// Influence lines as sentences and tables, in the model's units and number form: the single source
// for the notebook, the page and the command line.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"
#include "statics/moving/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

// "the force in member BC", "the vertical reaction at A", "the vertical displacement of C"
[[nodiscard]] std::string effectName(const Writer&, const Effect&);
// An ordinate as displayed, with its sign: "+0.89", "−1.2", "0". Exact if the class writes exact
// numbers and it is known: "−√2/2".
[[nodiscard]] std::string ordinateText(const Truss&, const InfluenceReport&, std::size_t joint);
// The same, as decimals, for any value of the line.
[[nodiscard]] std::string signedOrdinate(const Truss&, const InfluenceReport&, double value);
// What the line shows, and its greatest and least ordinates: for a caption and for screen readers.
[[nodiscard]] std::string influenceSentence(const Writer&, const InfluenceReport&);
// The value at a position in m from the start of the path, clamped to its ends: "Load on D, 6 m
// from A: −2/3 = −0.6667" where the exact ordinate is known, "Load 4.2 m from A: −0.35" between
// joints.
[[nodiscard]] std::string readingSentence(const Writer&, const InfluenceReport&, double at);
// The position of the path's joint within `slack` (m) of a position, so that a finger can hit it;
// otherwise the position itself.
[[nodiscard]] double nearJoint(const InfluenceReport&, double at, double slack);

struct OrdinateRow {
    JointId joint;
    double at = 0;        // m from the start of the path
    double value = 0;     // the ordinate, in SI
    std::string name;     // the joint's label
    std::string from;     // distance from the start, in length units
    std::string ordinate; // with sign
    std::string exact;    // "−√2/2"; empty if not known
};
[[nodiscard]] std::vector<OrdinateRow> ordinateRows(const Truss&, const InfluenceReport&);
// Column headings of these rows, with units.
[[nodiscard]] std::string headOfDistance(const Writer&);
[[nodiscard]] std::string headOfOrdinate(const Writer&, const InfluenceReport&);
[[nodiscard]] TextTable ordinateTable(const Writer&, const InfluenceReport&);
[[nodiscard]] std::string areaSentence(const Writer&, const InfluenceReport&);
// Warnings about the figures; empty for an ordinary truss.
[[nodiscard]] std::vector<std::string> lineWarnings(const Writer&, const InfluenceReport&);
// The extremes of the effect under each moving load on this path, and where the load is placed: one
// line for each extreme that is not zero.
[[nodiscard]] std::vector<std::string> movingLines(const Writer&, const InfluenceReport&);
// All of the above.
[[nodiscard]] std::string influenceText(const Writer&, const InfluenceReport&);

// A path as "A–B–D".
[[nodiscard]] std::string pathName(const Truss&, const std::vector<JointId>& path);
// A length in metres as "1.5 m".
[[nodiscard]] std::string pathLength(const Truss&, double metres);
// Whether a train that is not reversed faces right on the board.
[[nodiscard]] bool leadsRight(const Truss&, const std::vector<JointId>& path);

} // namespace gusset
