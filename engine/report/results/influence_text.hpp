#pragma once
// Influence lines in words and tables, in the model's units and number form: the one source of the
// notebook's, the page's and the command line's.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"
#include "statics/moving/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

// "the force in member BC", "the vertical reaction at A", "the vertical displacement of C"
[[nodiscard]] std::string effectName(const Writer&, const Effect&);
// An ordinate as it is read, with its sign: "+0.89", "−1.2", "0". Exact if the class writes so and
// it is known: "−√2/2".
[[nodiscard]] std::string ordinateText(const Truss&, const InfluenceReport&, std::size_t joint);
// The same of any value of the line.
[[nodiscard]] std::string signedOrdinate(const Truss&, const InfluenceReport&, double value);
// What the line is, and its greatest and least ordinates: for a caption, and for who can't see it.
[[nodiscard]] std::string influenceSentence(const Writer&, const InfluenceReport&);
// The value at a place, m from the start of the path, held to its ends: "Load on D, 6 m from A:
// −2/3 = −0.6667" where the exact ordinate is known, "Load 4.2 m from A: −0.35" between joints.
[[nodiscard]] std::string readingSentence(const Writer&, const InfluenceReport&, double at);
// The joint of the path that is read within `slack` (m) of a place, so that a finger can hit it;
// else the place.
[[nodiscard]] double nearJoint(const InfluenceReport&, double at, double slack);

struct OrdinateRow {
    JointId joint;
    double at = 0;        // m from the start of the path
    double value = 0;     // the ordinate, in SI
    std::string name;     // the joint's label
    std::string from;     // length units from the start
    std::string ordinate; // with sign
    std::string exact;    // "−√2/2"; empty where it is not known
};
[[nodiscard]] std::vector<OrdinateRow> ordinateRows(const Truss&, const InfluenceReport&);
// Headings of these rows, with units.
[[nodiscard]] std::string headOfDistance(const Writer&);
[[nodiscard]] std::string headOfOrdinate(const Writer&, const InfluenceReport&);
[[nodiscard]] TextTable ordinateTable(const Writer&, const InfluenceReport&);
[[nodiscard]] std::string areaSentence(const Writer&, const InfluenceReport&);
// What must be known of the figures: empty for an ordinary truss.
[[nodiscard]] std::vector<std::string> lineWarnings(const Writer&, const InfluenceReport&);
// What each moving load on this path makes of the effect, and where it stands then: a line an
// extreme that is not zero.
[[nodiscard]] std::vector<std::string> movingLines(const Writer&, const InfluenceReport&);
// All of this.
[[nodiscard]] std::string influenceText(const Writer&, const InfluenceReport&);

// "A–B–D" of a path.
[[nodiscard]] std::string pathName(const Truss&, const std::vector<JointId>& path);
// "1.5 m" of a length in m.
[[nodiscard]] std::string pathLength(const Truss&, double metres);
// Whether a train that is not reversed faces the right of the board.
[[nodiscard]] bool leadsRight(const Truss&, const std::vector<JointId>& path);

} // namespace gusset
