// What the truss is, in sentences; see results_text.hpp.
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

RichLine number(int value) { return plainLine(std::to_string(value)); }

void add(Sentences& lines, Phrase phrase, std::initializer_list<Part> parts = {}) {
    lines.list.push_back(sayPlain(lines.book, phrase, parts));
}

void addCounted(Sentences& lines, Phrase phrase, const Counting& count) {
    add(lines, phrase,
        {{"degree", number(count.redundants)},
         {"members",
          countedWords(lines.book, count.members, Phrase::OneMember, Phrase::ManyMembers)},
         {"reactions",
          countedWords(lines.book, count.reactions, Phrase::OneReaction, Phrase::ManyReactions)},
         {"joints", countedWords(lines.book, count.joints, Phrase::OneJoint, Phrase::ManyJoints)}});
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
        add(lines, Phrase::LooseJoint, {{"joint", loose.front()}});
    } else if (!loose.empty()) {
        add(lines, Phrase::LooseJoints, {{"joints", listOf(lines.book, loose)}});
    }
}

void addUnstable(Sentences& lines, const Truss& truss, const Solution& solution) {
    const Counting& count = solution.counting;
    if (truss.members.empty()) {
        add(lines, Phrase::NoMember);
        return;
    }
    if (truss.supports.empty()) {
        add(lines, Phrase::NoSupport);
    }
    addLooseJoints(lines, truss);
    const int sum = count.members + count.reactions;
    const int need = 2 * count.joints;
    if (sum < need) {
        add(lines, Phrase::UnstableTooFew,
            {{"m", number(count.members)},
             {"r", number(count.reactions)},
             {"sum", number(sum)},
             {"j", number(count.joints)},
             {"need", number(need)},
             {"missing", number(need - sum)}});
    } else {
        add(lines, Phrase::UnstableEnough,
            {{"m", number(count.members)},
             {"r", number(count.reactions)},
             {"j", number(count.joints)}});
    }
    for (const Mechanism& mechanism : solution.mechanisms) {
        lines.list.push_back(mechanismSentence(lines.book, truss, mechanism));
    }
    if (count.redundants > 0) {
        add(lines, Phrase::UnstableAndRedundant, {{"redundants", number(count.redundants)}});
    }
    if (solution.solved) {
        add(lines, Phrase::BalancedAnyway);
    }
}

RichLine nameOf(const PhraseBook& book, const Truss& truss, const Redundant& redundant) {
    if (redundant.member.valid()) {
        return say(book, Phrase::TheMember,
                   {{"member", plainLine(memberName(truss, redundant.member))}});
    }
    const Restraint restraint =
        structureOf(truss).restraints[static_cast<std::size_t>(redundant.restraint)];
    const bool roller = truss.supports[restraint.support.at()].kind == SupportKind::Roller;
    const Phrase phrase = roller                  ? Phrase::ReactionAlong
                          : restraint.along.x > 0 ? Phrase::ReactionX
                                                  : Phrase::ReactionY;
    return say(book, phrase, {{"joint", plainLine(truss.joints[restraint.joint.at()].label)}});
}

void addRedundants(Sentences& lines, const Truss& truss, const Solution& solution) {
    std::vector<RichLine> names;
    for (const Redundant& redundant : solution.redundants) {
        names.push_back(nameOf(lines.book, truss, redundant));
    }
    const int more = solution.counting.redundants - static_cast<int>(names.size());
    const RichLine list = listOf(lines.book, names);
    if (more > 0) {
        add(lines, Phrase::WithoutTheseAndMore, {{"list", list}, {"n", number(more)}});
    } else if (!names.empty()) {
        add(lines, Phrase::WithoutThese, {{"list", list}});
    }
}

void addIndeterminate(Sentences& lines, const Truss& truss, const Solution& solution) {
    const Counting& count = solution.counting;
    addCounted(lines, Phrase::Indeterminate, count);
    if (count.external > 0 && count.internal > 0) {
        add(lines, Phrase::IndeterminateBoth,
            {{"external", number(count.external)}, {"internal", number(count.internal)}});
    } else if (count.external > 0) {
        add(lines, Phrase::IndeterminateExternal, {{"external", number(count.external)}});
    } else {
        add(lines, Phrase::IndeterminateInternal, {{"internal", number(count.internal)}});
    }
    addRedundants(lines, truss, solution);
    for (std::string& sentence : assumptionSentences(lines.book, solution.assumed)) {
        lines.list.push_back(std::move(sentence));
    }
    const auto isMissing = [](const Issue& error) { return error.code == IssueCode::Missing; };
    if (std::any_of(solution.errors.begin(), solution.errors.end(), isMissing)) {
        add(lines, Phrase::NeedsStiffness);
    }
}

// Rather than that its forces are nothing beside a load or a reaction, or beside rounding.
bool isSurelyUnloaded(const Solution& solution) {
    const Reliance reliance = relianceOf(solution);
    return std::none_of(solution.forces.begin(), solution.forces.end(), [&](double force) {
        return isBelowBound(reliance, force) || isNegligible(reliance, force);
    });
}

void addLargest(Sentences& lines, const Truss& truss, const Solution& solution) {
    const auto rows = forceRows(lines.book, truss, solution);
    const auto named = [&](MemberId member, Phrase phrase) {
        const ForceRow& row = rows[member.at()];
        add(lines, phrase,
            {{"value",
              plainLine(forceText(truss, std::fabs(row.force), forceStyleOf(truss, solution)))},
             {"member", plainLine(row.name)}});
    };
    const LargestForces largest = largestForces(solution);
    if (largest.tension.valid()) {
        named(largest.tension, Phrase::LargestTension);
    }
    if (largest.compression.valid()) {
        named(largest.compression, Phrase::LargestCompression);
    }
    if (!largest.tension.valid() && !largest.compression.valid() && isSurelyUnloaded(solution)) {
        add(lines, Phrase::AllForcesZero);
    }
}

} // namespace

std::vector<std::string> verdict(const PhraseBook& book, const Truss& truss,
                                 const Solution& solution) {
    Sentences lines{book};
    if (truss.joints.empty()) {
        add(lines, Phrase::NothingDrawn);
        return lines.list;
    }
    for (const Issue& error : solution.errors) {
        lines.list.push_back(error.says);
    }
    switch (solution.status) {
    case Status::Invalid:
        break;
    case Status::Mechanism:
        addUnstable(lines, truss, solution);
        break;
    case Status::Indeterminate:
        addIndeterminate(lines, truss, solution);
        break;
    case Status::Determinate:
        addCounted(lines, Phrase::Determinate, solution.counting);
        break;
    }
    for (std::string& sentence : trustSentences(book, truss, solution)) {
        lines.list.push_back(std::move(sentence));
    }
    if (solution.solved) {
        addLargest(lines, truss, solution);
    }
    if (solution.displaced || losesDisplacements(solution)) {
        lines.list.push_back(movementLines(book, truss, solution).front());
    }
    return lines.list;
}

} // namespace gusset
