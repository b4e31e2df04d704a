#include "report/results/sizing_text.hpp"

#include "design/sizing/stock.hpp"
#include "phrases/design/sizing.hpp"
#include "phrases/results/lists.hpp"
#include "report/results/check_text.hpp"
#include "report/results/measures.hpp"
#include "report/text/html.hpp"
#include "report/text/phrases.hpp"

#include <algorithm>
#include <cmath>

namespace gusset {
namespace {

void addGroup(const Writer& writer, const SizedGroup& sized, const SizingGroup& group,
              std::vector<std::string>& lines) {
    const MemberId worst = sized.worst;
    const auto say = [&](const auto& phrase) {
        return said(writer.book, statement(phrase, {{"group", group.name},
                                                    {"profile", sized.profile},
                                                    {"worst", memberName(writer.truss, worst)},
                                                    {"use", useText(writer.truss, sized.use)}}));
    };
    if (!sized.isEnough) {
        lines.push_back(
            sized.use > 1
                ? say(phrase::kSizedNotEnough)
                : said(writer.book, statement(phrase::kSizedNotEnoughData,
                                              {{"group", group.name},
                                               {"profile", sized.profile},
                                               {"worst", memberName(writer.truss, worst)}})));
        return;
    }
    const std::string counted =
        plainText(countedWords(writer.book, static_cast<int>(group.members.size()),
                               phrase::kOneMember, phrase::kManyMembers));
    lines.push_back(
        said(writer.book,
             statement(phrase::kSizedGroup, {{"group", group.name},
                                             {"profile", sized.profile},
                                             {"members", counted},
                                             {"length", lengthSumText(writer.truss, sized.length)},
                                             {"mass", massText(writer.truss, sized.mass)},
                                             {"worst", memberName(writer.truss, worst)},
                                             {"use", useText(writer.truss, sized.use)}})));
    if (!sized.nextLighter.empty()) {
        lines.push_back(
            said(writer.book, statement(phrase::kSizedNextLighter,
                                        {{"group", group.name}, {"profile", sized.nextLighter}})));
    }
}

void addDeflection(const Writer& writer, const Sizing& sizing, const SizingWish& wish,
                   std::vector<std::string>& lines) {
    if (!sizing.deflection) {
        lines.push_back(sayPlain(writer, phrase::kSizedMovesUnknown));
        return;
    }
    const std::string moved = movementText(writer.truss, *sizing.deflection);
    const bool tooFar = wish.deflection > 0 && *sizing.deflection > wish.deflection;
    lines.push_back(
        tooFar ? said(writer.book,
                      statement(phrase::kSizedMovesTooFar,
                                {{"moved", moved},
                                 {"allowed", movementText(writer.truss, wish.deflection)}}))
               : said(writer.book, statement(phrase::kSizedMoves, {{"moved", moved}})));
}

constexpr double kSameMass = 1e-9;

// What is chosen for the forces alone can share profiles by the forces alone.
bool isStiffened(const Sizing& sizing) {
    return std::any_of(sizing.path.begin(), sizing.path.end(), [](const SizingStep& step) {
        return step.reason == SizingReason::Deflection || step.reason == SizingReason::Serves;
    });
}

// What fewer different profiles would cost.
void addSharing(const Writer& writer, const Sizing& sizing, const SizingWish& wish,
                std::vector<std::string>& lines) {
    const std::vector<std::optional<double>> masses = massByProfiles(sizing, wish);
    for (std::size_t i = 0; i + 1 < masses.size(); ++i) {
        // Groups may share a profile as they are.
        if (masses[i] && masses.back() && *masses[i] > *masses.back() * (1 + kSameMass)) {
            lines.push_back(
                said(writer.book,
                     statement(phrase::kSizedShares,
                               {{"count", std::to_string(i + 1)},
                                {"mass", massText(writer.truss, *masses[i])},
                                {"more", massText(writer.truss, *masses[i] - *masses.back())}})));
        }
    }
}

} // namespace

std::vector<std::string> sizingLines(const Writer& writer, const Sizing& sizing,
                                     const SizingWish& wish) {
    std::vector<std::string> lines;
    for (std::size_t g = 0; g < sizing.groups.size(); ++g) {
        addGroup(writer, sizing.groups[g], wish.groups[g], lines);
    }
    lines.push_back(said(writer.book, statement(phrase::kSizedMass,
                                                {{"mass", massText(writer.truss, sizing.mass)}})));
    addDeflection(writer, sizing, wish, lines);
    if (!isStiffened(sizing)) {
        addSharing(writer, sizing, wish, lines);
    }
    if (!hasOwnWeight(writer.truss)) {
        lines.push_back(sayPlain(writer, phrase::kSizedNoWeight));
    }
    lines.push_back(formulaLine(writer, sizing.checks));
    return lines;
}

std::vector<std::string> pathLines(const Writer& writer, const Sizing& sizing,
                                   const SizingWish& wish) {
    std::vector<std::string> lines;
    for (const SizingStep& step : sizing.path) {
        const std::string& group = wish.groups[step.group].name;
        const std::string member =
            step.member.valid() ? memberName(writer.truss, step.member) : std::string{};
        const auto tell = [&](const Statement& says) { lines.push_back(said(writer.book, says)); };
        switch (step.reason) {
        case SizingReason::Begins:
            tell(statement(phrase::kPathBegins, {{"group", group}, {"to", step.to}}));
            break;
        case SizingReason::Strength:
            tell(statement(phrase::kPathStrength, {{"group", group},
                                                   {"from", step.from},
                                                   {"member", member},
                                                   {"use", useText(writer.truss, step.use)},
                                                   {"to", step.to}}));
            break;
        case SizingReason::Slenderness:
            tell(statement(
                phrase::kPathSlender,
                {{"group", group}, {"member", member}, {"from", step.from}, {"to", step.to}}));
            break;
        case SizingReason::Uncovered:
            tell(statement(
                phrase::kPathOtherReason,
                {{"group", group}, {"from", step.from}, {"member", member}, {"to", step.to}}));
            break;
        case SizingReason::Deflection:
            tell(statement(phrase::kPathDeflection,
                           {{"group", group}, {"from", step.from}, {"to", step.to}}));
            break;
        case SizingReason::Lighter:
            tell(statement(phrase::kPathLighter,
                           {{"group", group}, {"to", step.to}, {"from", step.from}}));
            break;
        case SizingReason::Serves:
            tell(statement(phrase::kPathServes,
                           {{"group", group}, {"from", step.from}, {"to", step.to}}));
            break;
        case SizingReason::NoneEnough:
            tell(statement(
                phrase::kPathNoneEnough,
                {{"group", group}, {"from", step.from}, {"member", member}, {"to", step.to}}));
            break;
        }
    }
    return lines;
}

std::string sizingText(const Writer& writer, const Sizing& sizing, const SizingWish& wish) {
    std::string text;
    for (const std::string& line : sizingLines(writer, sizing, wish)) {
        text += line + "\n";
    }
    text += "\n";
    for (const std::string& line : pathLines(writer, sizing, wish)) {
        text += line + "\n";
    }
    return text + cautionText(writer.book);
}

} // namespace gusset
