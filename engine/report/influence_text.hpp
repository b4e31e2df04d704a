#pragma once
// Influence lines and envelopes in words and tables, in the model's units and number form.

#include "report/rich_text.hpp"
#include "statics/envelope.hpp"
#include "statics/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

// "the force in member BC", "the vertical reaction at A", "the vertical displacement of C"
[[nodiscard]] std::string effectName(const Truss&, const Effect&);
// An ordinate as it is read, with its sign: "+0.89", "−1.2", "0". Exact if the class writes so and
// it is known: "−√2/2".
[[nodiscard]] std::string ordinateText(const Truss&, const InfluenceReport&, std::size_t joint);
// The same of any value of the line.
[[nodiscard]] std::string signedOrdinate(const Truss&, const InfluenceReport&, double value);
// What the line is, and its greatest and least ordinates: for a caption, and for who can't see it.
[[nodiscard]] std::string influenceSentence(const Truss&, const InfluenceReport&);
// Joints, ordinates, areas, and what the moving loads make of it.
[[nodiscard]] std::string influenceText(const Truss&, const InfluenceReport&);
// A row a member: greatest tension and compression, and what gives them.
[[nodiscard]] std::string envelopeText(const Truss&, const std::vector<MemberEnvelope>&);

} // namespace gusset
