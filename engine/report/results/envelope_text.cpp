#include "report/results/envelope_text.hpp"

#include "core/tolerance.hpp"
#include "phrases/results/envelope.hpp"
#include "phrases/results/tables.hpp"
#include "report/results/influence_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/trust_text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gusset {
namespace {

struct Side {         // of a member's envelope: tension or compression
    double force = 0; // N, without sign
    std::string by;
};

// The force below which a value is zero (N), and the last place of other values.
struct Scale {
    double zero = 0;
    int lastPlace = NumberStyle{}.lastPlace;
};

void put(const Truss& truss, const Side& side, const Scale& scale, double& value, std::string& text,
         std::string& by) {
    const bool isZero = side.force <= scale.zero;
    NumberStyle style = numberStyleOf(truss);
    style.lastPlace = scale.lastPlace;
    value = isZero ? 0 : side.force / toNewton(truss.units.force);
    text = isZero ? std::string("0") : formatNumber(value, style);
    by = isZero ? std::string() : side.by;
}

std::vector<EnvelopeRow> rowsOf(const Truss& truss, const std::vector<Side>& tension,
                                const std::vector<Side>& compression, const Scale& scale) {
    std::vector<EnvelopeRow> rows(tension.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EnvelopeRow& row = rows[i];
        row.member = MemberId{static_cast<int>(i)};
        row.name = memberName(truss, row.member);
        put(truss, tension[i], scale, row.pull, row.tension, row.tensionBy);
        put(truss, compression[i], scale, row.push, row.compression, row.compressionBy);
    }
    return rows;
}

std::string placeOfTrain(const Writer& writer, const std::vector<JointId>& path,
                         const TrainPlace& place) {
    const bool right = leadsRight(writer.truss, path) != place.reversed;
    return sayPlain(writer, phrase::kAxleOn,
                    {{"axle", place.axle + 1},
                     {"joint", writer.truss.joints[path[place.joint].at()].label},
                     {"way", right ? "→" : "←"}});
}

std::string placeOfUniform(const Writer& writer, const UniformPlace& place) {
    if (place.to <= place.from) {
        return sayPlain(writer, phrase::kPlacedWorst);
    }
    return sayPlain(writer, phrase::kPlacedFromTo,
                    {{"from", pathLength(writer.truss, place.from)},
                     {"to", pathLength(writer.truss, place.to)}});
}

// Axles and distributed load together.
double forceOf(const TrainPlace& train, const UniformPlace* uniform) {
    return std::fabs(train.value) + (uniform ? std::fabs(uniform->value) : 0);
}

} // namespace

std::vector<std::string> trustSentences(const Writer& writer, const Envelope& envelope) {
    const Reliance& reliance = envelope.reliance;
    std::vector<double> written; // per member, the force that a column shows as 0, if either does
    for (const MemberEnvelope& each : envelope.members) {
        const double pull = each.tension.force;
        written.push_back(isBelowBound(reliance, pull) ? pull : each.compression.force);
    }
    return trustSentences(writer, reliance, figureSentences(writer, reliance, written));
}

std::vector<std::string> envelopeWarnings(const Writer& writer, const Envelope& envelope) {
    std::vector<std::string> warnings = standingSentences(writer, envelope.reliance);
    for (std::string& sentence : trustSentences(writer, envelope)) {
        warnings.push_back(std::move(sentence));
    }
    return warnings;
}

std::vector<EnvelopeRow> envelopeRows(const Truss& truss, const Envelope& envelope) {
    std::vector<Side> tension;
    std::vector<Side> compression;
    for (const MemberEnvelope& each : envelope.members) {
        tension.push_back({each.tension.force, choiceName(each.tension.choice)});
        compression.push_back({-each.compression.force, choiceName(each.compression.choice)});
    }
    const Reliance& reliance = envelope.reliance;
    return rowsOf(truss, tension, compression,
                  {zeroShareOf(reliance.trust) * reliance.largest,
                   lastPlaceOfForces(truss, forceErrorOf(reliance))});
}

std::vector<EnvelopeRow> movingRows(const Writer& writer, const std::vector<JointId>& path,
                                    const std::vector<MovingResult>& results) {
    std::vector<Side> tension;
    std::vector<Side> compression;
    const auto placeOf = [&](const TrainPlace& train, const UniformPlace* uniform) {
        if (train.value != 0) {
            return placeOfTrain(writer, path, train);
        }
        return uniform ? placeOfUniform(writer, *uniform) : std::string{};
    };
    const auto sideOf = [&](const TrainPlace& train, const UniformPlace* uniform) {
        return Side{forceOf(train, uniform), placeOf(train, uniform)};
    };
    double largest = 0;
    double error = 0;
    for (const MovingResult& each : results) {
        const bool spread = each.uniform.has_value();
        tension.push_back(sideOf(each.train.largest, spread ? &each.uniform->largest : nullptr));
        compression.push_back(
            sideOf(each.train.smallest, spread ? &each.uniform->smallest : nullptr));
        largest = std::max({largest, tension.back().force, compression.back().force});
        error = std::max(error, each.error);
    }
    return rowsOf(writer.truss, tension, compression,
                  {kZeroForce * largest, lastPlaceOfForces(writer.truss, error)});
}

std::string headOfTension(const Writer& writer) {
    return plainText(
        headed(writer, say(writer, phrase::kWordTension), symbolOf(writer.truss.units.force)));
}

std::string headOfCompression(const Writer& writer) {
    return plainText(
        headed(writer, say(writer, phrase::kWordCompression), symbolOf(writer.truss.units.force)));
}

TextTable envelopeTable(const Writer& writer, const std::string& caption,
                        const std::vector<EnvelopeRow>& rows) {
    const RichLine by = say(writer, phrase::kCellBy);
    TextTable table{caption,
                    {say(writer, phrase::kColumnMember), plainLine(headOfTension(writer)), by,
                     plainLine(headOfCompression(writer)), by},
                    {},
                    {false, true, false, true, false}};
    for (const EnvelopeRow& row : rows) {
        table.rows.push_back(
            {row.name, row.tension, row.tensionBy, row.compression, row.compressionBy});
    }
    return table;
}

std::string captionUnder(const PhraseBook& book, const std::string& load) {
    return sayPlain(book, phrase::kEnvelopeUnder, {{"load", load}});
}

std::string envelopeSentence(const PhraseBook& book, const std::vector<LoadChoice>& choices) {
    const bool combined = !choices.empty() && isCombination(choices.front());
    if (choices.size() == 1 && combined) {
        return sayPlain(book, phrase::kEnvelopeOfOneCombination,
                        {{"combination", choiceName(choices.front())}});
    }
    if (choices.size() < 2) {
        return sayPlain(book, phrase::kEnvelopeOfOne);
    }
    std::vector<RichLine> names;
    for (const LoadChoice& choice : choices) {
        names.push_back(plainLine(choiceName(choice)));
    }
    return sayPlain(book, combined ? phrase::kEnvelopeOfCombinations : phrase::kEnvelopeOver,
                    {{"choices", listOf(book, names)}});
}

std::string envelopeText(const Writer& writer, const Envelope& envelope) {
    std::string text;
    for (const std::string& sentence : envelopeWarnings(writer, envelope)) {
        text += sentence + "\n\n";
    }
    return text + tableText(envelopeTable(writer, sayPlain(writer, phrase::kEnvelopeCaption),
                                          envelopeRows(writer.truss, envelope)));
}

} // namespace gusset
