#pragma once
// Envelopes as rows, tables and text, in the model's units and number form: greatest tension and
// compression of each member, over combinations or cases, or under a moving load.

#include "report/results/table.hpp"
#include "report/text/writer.hpp"
#include "statics/moving/envelope.hpp"
#include "statics/moving/influence_report.hpp"

#include <string>
#include <vector>

namespace gusset {

struct EnvelopeRow {
    MemberId member;
    std::string name; // "AB"
    double pull = 0;  // greatest tension; force units, without sign, as is compression
    double push = 0;
    std::string tension;     // "24.75"; "0" when it is never in tension
    std::string tensionBy;   // "strength"; "2 on D →": axle 2 on joint D, facing right
    std::string compression; // likewise, without sign
    std::string compressionBy;
};

// Warnings about its figures; envelopeWarnings begins with what its forces rest on.
[[nodiscard]] std::vector<std::string> trustSentences(const Writer&, const Envelope&);
[[nodiscard]] std::vector<std::string> envelopeWarnings(const Writer&, const Envelope&);
[[nodiscard]] std::vector<EnvelopeRow> envelopeRows(const Truss&, const Envelope&);
// Under one moving load, from statics' membersUnder: the axles and the distributed load are each
// placed where they are worst, and their forces added.
[[nodiscard]] std::vector<EnvelopeRow> movingRows(const Writer&, const std::vector<JointId>& path,
                                                  const std::vector<MovingResult>&);

[[nodiscard]] std::string headOfTension(const Writer&); // "tension, kN"
[[nodiscard]] std::string headOfCompression(const Writer&);
[[nodiscard]] TextTable envelopeTable(const Writer&, const std::string& caption,
                                      const std::vector<EnvelopeRow>&);
[[nodiscard]] std::string captionUnder(const PhraseBook&,
                                       const std::string& load); // of a moving load's table
// What the envelope runs over: combinations, if only one, or cases; or, with a single case and
// nothing to choose from, how to make more.
[[nodiscard]] std::string envelopeSentence(const PhraseBook&, const std::vector<LoadChoice>&);
// Begins with the warnings about the forces.
[[nodiscard]] std::string envelopeText(const Writer&, const Envelope&);

} // namespace gusset
