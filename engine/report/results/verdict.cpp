// The verdict on a truss, in sentences; see results_text.hpp.
#include "phrases/results/verdict.hpp"
#include "phrases/results/lists.hpp"
#include "phrases/working/remarks.hpp"
#include "report/results/movement_text.hpp"
#include "report/results/results_text.hpp"
#include "report/results/solution_text.hpp"
#include "report/results/trust_text.hpp"
#include "statics/solve/largest.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

struct Sentences {
    const PhraseBook& book;
    std::vector<std::string> list{};
};

void add(Sentences& lines, Phrase<> phrase) { lines.list.push_back(sayPlain(lines.book, phrase)); }
template <PartName... Names>
void add(Sentences& lines, Phrase<Names...> phrase, const PartsOf<Words, Names...>& parts) {
    lines.list.push_back(sayPlain(lines.book, phrase, parts));
}

void addCount(Sentences& lines, const Counting& count) {
    const PhraseBook& book = lines.book;
    const RichLine members =
        countedWords(book, count.members, phrase::kOneMember, phrase::kManyMembers);
    const RichLine reactions =
        countedWords(book, count.reactions, phrase::kOneReaction, phrase::kManyReactions);
    const RichLine joints =
        countedWords(book, count.joints, phrase::kOneJoint, phrase::kManyJoints);
    if (count.redundants == 0) {
        add(lines, phrase::kDeterminate,
            {{"members", members}, {"reactions", reactions}, {"joints", joints}});
    } else {
        add(lines, phrase::kIndeterminate,
            {{"degree", count.redundants},
             {"members", members},
             {"reactions", reactions},
             {"joints", joints}});
    }
}

void addLooseJoints(Sentences& lines, const Truss& truss) {
    std::vector<bool> held(truss.joints.size());
    for (const Member& member : truss.members) {
        held[member.a.at()] = held[member.b.at()] = true;
    }
    std::vector<RichLine> loose;
    for (std::size_t i = 0; i < truss.joints.size(); ++i) {
        if (!held[i]) {
            loose.push_back(plainLine(truss.joints[i].label));
        }
    }
    if (loose.size() == 1) {
        add(lines, phrase::kLooseJoint, {{"joint", loose.front()}});
    } else if (!loose.empty()) {
        add(lines, phrase::kLooseJoints, {{"joints", listOf(lines.book, loose)}});
    }
}

void addUnstable(Sentences& lines, const Truss& truss, const Solution& solution) {
    const Counting& count = solution.counting;
    if (truss.members.empty()) {
        add(lines, phrase::kNoMember);
        return;
    }
    if (truss.supports.empty()) {
        add(lines, phrase::kNoSupport);
    }
    addLooseJoints(lines, truss);
    const int sum = count.members + count.reactions;
    const int need = 2 * count.joints;
    if (sum < need) {
        add(lines, phrase::kUnstableTooFew,
            {{"m", count.members},
             {"r", count.reactions},
             {"sum", sum},
             {"j", count.joints},
             {"need", need},
             {"missing", need - sum}});
    } else {
        add(lines, phrase::kUnstableEnough,
            {{"m", count.members}, {"r", count.reactions}, {"j", count.joints}});
    }
    for (const Mechanism& mechanism : solution.mechanisms) {
        lines.list.push_back(mechanismSentence({lines.book, truss}, mechanism));
    }
    if (count.redundants > 0) {
        add(lines, phrase::kUnstableAndRedundant, {{"redundants", count.redundants}});
    }
    if (solution.solved) {
        add(lines, phrase::kBalancedAnyway);
    }
}

RichLine nameOf(const Writer& writer, const Redundant& redundant) {
    if (const auto* member = std::get_if<MemberId>(&redundant.what)) {
        return say(writer, phrase::kTheMember, {{"member", memberName(writer.truss, *member)}});
    }
    const Restraint restraint =
        structureOf(writer.truss).restraints[std::get<RestraintId>(redundant.what).at()];
    const bool roller = writer.truss.supports[restraint.support.at()].kind == SupportKind::Roller;
    const auto phrase = roller                  ? phrase::kReactionAlong
                        : restraint.along.x > 0 ? phrase::kReactionX
                                                : phrase::kReactionY;
    return say(writer, phrase, {{"joint", writer.truss.joints[restraint.joint.at()].label}});
}

void addRedundants(Sentences& lines, const Truss& truss, const Solution& solution) {
    std::vector<RichLine> names;
    for (const Redundant& redundant : solution.redundants) {
        names.push_back(nameOf({lines.book, truss}, redundant));
    }
    const int more = solution.counting.redundants - static_cast<int>(names.size());
    const RichLine list = listOf(lines.book, names);
    if (more > 0) {
        add(lines, phrase::kWithoutTheseAndMore, {{"list", list}, {"n", more}});
    } else if (!names.empty()) {
        add(lines, phrase::kWithoutThese, {{"list", list}});
    }
}

void addIndeterminate(Sentences& lines, const Truss& truss, const Solution& solution) {
    const Counting& count = solution.counting;
    addCount(lines, count);
    if (count.external > 0 && count.internal > 0) {
        add(lines, phrase::kIndeterminateBoth,
            {{"external", count.external}, {"internal", count.internal}});
    } else if (count.external > 0) {
        add(lines, phrase::kIndeterminateExternal, {{"external", count.external}});
    } else {
        add(lines, phrase::kIndeterminateInternal, {{"internal", count.internal}});
    }
    addRedundants(lines, truss, solution);
    for (std::string& sentence : assumptionSentences(lines.book, solution.assumed)) {
        lines.list.push_back(std::move(sentence));
    }
    const auto isMissing = [](const Issue& error) { return error.code == IssueCode::Missing; };
    if (std::any_of(solution.errors.begin(), solution.errors.end(), isMissing)) {
        add(lines, phrase::kNeedsStiffness);
    }
}

// Whether all forces really are zero, rather than negligible beside a load or a reaction, or lost
// in rounding error.
bool isSurelyUnloaded(const Solution& solution) {
    const Reliance reliance = relianceOf(solution);
    return std::none_of(solution.forces.begin(), solution.forces.end(), [&](double force) {
        return isBelowBound(reliance, force) || isNegligible(reliance, force);
    });
}

constexpr std::size_t kTiesNamed = 3; // if there are more, two of them

// The members among which a reader can't choose, as their forces are printed alike.
RichLine namesOfTies(const PhraseBook& book, const std::vector<RichLine>& names) {
    if (names.size() <= kTiesNamed) {
        return listOf(book, names);
    }
    const RichLine list = say(book, phrase::kListMore, {{"a", names[0]}, {"b", names[1]}});
    return say(book, phrase::kListAndMore,
               {{"list", list}, {"n", static_cast<int>(names.size()) - 2}});
}

void addLargest(Sentences& lines, const Truss& truss, const Solution& solution) {
    const auto rows = forceRows({lines.book, truss}, solution);
    const NumberStyle style = forceStyleOf(truss, solution);
    const auto named = [&](MemberId member, decltype(phrase::kLargestTension) phrase) {
        const ForceRow& largest = rows[member.at()];
        const std::string value = forceText(truss, std::fabs(largest.force), style);
        std::vector<RichLine> names;
        for (const ForceRow& row : rows) {
            if (row.sense == largest.sense &&
                forceText(truss, std::fabs(row.force), style) == value) {
                names.push_back(plainLine(row.name));
            }
        }
        add(lines, phrase, {{"value", value}, {"members", namesOfTies(lines.book, names)}});
    };
    const LargestForces largest = largestForces(solution);
    if (largest.tension.valid()) {
        named(largest.tension, phrase::kLargestTension);
    }
    if (largest.compression.valid()) {
        named(largest.compression, phrase::kLargestCompression);
    }
    if (!largest.tension.valid() && !largest.compression.valid() && isSurelyUnloaded(solution)) {
        add(lines, phrase::kAllForcesZero);
    }
}

} // namespace

std::vector<std::string> verdict(const Writer& writer, const Solution& solution) {
    Sentences lines{writer};
    if (writer.truss.joints.empty()) {
        add(lines, phrase::kNothingDrawn);
        return lines.list;
    }
    for (const Issue& error : solution.errors) {
        lines.list.push_back(said(writer.book, error.says));
    }
    switch (solution.status) {
    case Status::Invalid:
        break;
    case Status::Mechanism:
        addUnstable(lines, writer.truss, solution);
        break;
    case Status::Indeterminate:
        addIndeterminate(lines, writer.truss, solution);
        break;
    case Status::Determinate:
        addCount(lines, solution.counting);
        break;
    }
    for (std::string& sentence : trustSentences(writer, solution)) {
        lines.list.push_back(std::move(sentence));
    }
    if (solution.solved) {
        addLargest(lines, writer.truss, solution);
    }
    if (solution.displaced || losesDisplacements(solution)) {
        lines.list.push_back(movementLines(writer, solution).front());
    }
    return lines.list;
}

} // namespace gusset
